import { figure } from '../../../words/number-format.js';
import type { Texts } from '../catalogue-entry.js';
import type { FileMessages } from '../files-codes.js';
import { codePoint, meant, notLent, reasonInJapanese, taken } from './terms-texts-ja.js';

/** The YAML reader's commonest errors; of the others its own words, as a quotation. */
function plainYaml(code: string, message: string): string {
  switch (code) {
    case 'BLOCK_AS_IMPLICIT_KEY':
      return 'コロンのある値は引用符で囲みます。キーの一覧なら、1行に1つ書きます。';
    case 'TAB_AS_INDENT':
      return '字下げにタブがあります。YAML では空白だけを使います。';
    case 'MULTIPLE_DOCS':
      return 'episode.yaml は1つの文書です。この --- の行を消してください。';
    case 'MISSING_CHAR':
      return message.includes('quote')
        ? '引用符が閉じていません。'
        : message.startsWith('Implicit')
          ? KEY_AND_VALUE
          : `開いたものが閉じていません：\`${message}\`。`;
    case 'MULTILINE_IMPLICIT_KEY':
      return KEY_AND_VALUE;
    case 'BAD_INDENT':
      return '一覧が閉じていません。`]` か `}` がないか、この行の字下げが足りません。';
    case 'UNEXPECTED_TOKEN':
      return '値はこの前で終わっています。引用符のある文字は、全体を引用符で囲みます。';
    case 'RESOURCE_EXHAUSTION':
      return '入れ子が深すぎて読めません。';
    default:
      return `YAML として読めません：\`${message}\`。`;
  }
}

const KEY_AND_VALUE = 'キーと値の間には、半角のコロンと空白を書きます：`fps: 24`。';

/** A character with its code point; one that would not show, or would spoil the line, by its code point alone. */
function characterName(character: string): string {
  const code = codePoint(character.codePointAt(0)!);
  if (character === '\t') return `タブ（${code}）`;
  return /[\p{C}\p{M}\p{Z}]/u.test(character) ? `文字 ${code} ` : `\`${character}\`（${code}）`;
}

function fileSize(bytes: number): string {
  const mega = bytes / (1024 * 1024);
  return mega >= 1 ? `${figure(mega, { decimals: 1 })} MB` : `${Math.ceil(bytes / 1024)} kB`;
}

const FOR = { print: '印刷する', list: '表にする', number: '番号を付ける' } as const;

export const files: Texts<FileMessages> = {
  'file-missing': {
    title: 'ファイルがない',
    explanation:
      '指定したファイルかフォルダーがありません。同じフォルダーに似た名前のファイルがあれば、メッセージに出します。ほかのカットは処理します。',
    message: {
      missing: ({ file, guess }) => `ファイル \`${file}\` がありません${meant(guess)}`,
      nothing: ({ guess }) => `そのファイルもフォルダーもありません${meant(guess)}`,
      folder: ({ folder }) =>
        `\`${folder}\` はフォルダーです。中のカットは \`${folder.replace(/\/$/, '')}/*.cut\` です。`,
    },
  },
  'file-unreadable': {
    title: 'ファイルが読めない',
    explanation: 'ファイルはありますが、中身が読めません。権限がないか、ディスクのエラーです。',
    message: {
      unreadable: ({ file, reason }) => `\`${file}\` が読めません：${reasonInJapanese(reason)}。`,
      folder: ({ folder, reason }) => `フォルダー \`${folder}\` が読めません：${reasonInJapanese(reason)}。`,
    },
  },
  'file-too-large': {
    title: 'カットにしては大きすぎるファイル',
    explanation:
      'カットは1ページほどのテキストです。2 MB（episode.yaml は 256 kB）を超えるものは、たいてい別のファイルの指定間違いなので、読まずに断ります。',
    message: ({ file, bytes }) =>
      `${file === null ? 'このファイル' : `\`${file}\` `}は ${fileSize(bytes)} を超えています。テキストにしては大きすぎます。`,
  },
  'wrong-encoding': {
    title: '文字コードが違う',
    explanation:
      'カットと episode.yaml は UTF-8 のテキストです。示した所のバイトは UTF-8 ではないので、エディターが古い文字コードで保存しています。UTF-8 で保存し直してください。ほかは変えなくてかまいません。',
    message: {
      other: ({ encoding }) => `このファイルの文字コードは ${encoding} です。UTF-8 で保存してください。`,
      byte: ({ place, byte }) =>
        `${place}バイト目（0x${byte.toString(16).toUpperCase().padStart(2, '0')}）が UTF-8 ではありません。UTF-8 で保存してください。`,
    },
  },
  'not-marked': {
    title: '変更の印が付かない',
    explanation:
      'ある版からの変更をシートに印すはずでしたが、その版のカットに誤りがあり、比べられません。印なしで印刷します。誤りのなかった版を指定してください。',
    message: ({ cut, against }) =>
      `カット${cut}は ${against} の時に誤りがあったので、シートに変更の印は付きません。`,
  },
  'not-text': {
    title: 'テキストでないファイル',
    explanation:
      'テキストにはない NUL バイトがあります。画像か圧縮ファイル、または壊れたファイルです。エディターで何を保存したか確かめてください。',
    message: ({ count }) =>
      `ここに NUL バイトがあります${count === 1 ? '' : `（全部で${count}個）`}。テキストではないか、壊れています。`,
  },
  'no-cuts': {
    title: 'カットが見つからない',
    explanation:
      'フォルダーか episode.yaml を調べましたが、カットがありません。カットは名前が .cut で終わるファイルです。episode.yaml では `cuts` に書きます。',
    message: {
      folder: () => 'このフォルダーに、名前が .cut で終わるファイルがありません。',
      'manifest-list': () => 'episode.yaml にカットがありません。',
      'manifest-folder': () => 'episode.yaml のフォルダーに、名前が .cut で終わるファイルがありません。',
      shared: (parameters) =>
        `このファイルには、ほかのカットが使うものしかありません。${FOR[parameters.for]}ものはありません。`,
    },
  },
  'pattern-empty': {
    title: 'どのカットにも当たらないパターン',
    explanation:
      '`cuts` に書いたパターンの1つが、話数のどのファイルにも当たりません。フォルダーの名前を変えたのかもしれません。パターンの `*` は名前の中の何文字でも、`?` は1文字、`**` は何段のフォルダーでも当たります。',
    message: ({ pattern }) => `\`${pattern}\` に当たるファイルがありません。`,
  },
  'cut-twice': {
    title: '同じカット番号のファイルが2つ',
    explanation:
      '話数の2つのファイルが同じカット番号です。紙では見分けがつきません。たいていは、番号を変え忘れたコピーです。',
    message: ({ cut, file, compared }) =>
      `カット${cut}は \`${file}\` の番号です${compared ? '。比べるのはそのファイルだけです' : ''}。`,
  },
  'episode-syntax': {
    title: 'episode.yaml が読めない',
    explanation:
      'episode.yaml は YAML で、1行に1つ「キー: 値」を書きます。示した所から YAML として読めません。コロンのある文字や、`*` や `@` などの記号で始まる文字は引用符で囲みます。',
    message: {
      yaml: ({ code, message }) => plainYaml(code, message),
      'no-colon': ({ written }) => `キーと値の間には、半角のコロンと空白を書きます：\`${written}\`。`,
      'too-deep': () => '入れ子が深すぎて読めません。',
      'no-keys': () => 'episode.yaml には、`fps: 24` のようにキーを1行に1つ書きます。',
      'no-anchor': ({ name }) => `これより前に \`&${name}\` という値がありません。`,
    },
  },
  'episode-key': {
    title: 'episode.yaml にないキー',
    explanation:
      '書き間違いが黙って効かないことのないよう、キーはすべて調べます。似たキーがあればメッセージに出します。キーは1回だけ書けます。',
    message: {
      unknown: ({ key, guess }) =>
        `episode.yaml に${key === null ? 'このような' : ` \`${key}\` という`}キーはありません${meant(guess)}`,
      twice: ({ key }) => `キー \`${key}\` が2回書かれています。`,
    },
  },
  'episode-value': {
    title: 'キーに合わない値',
    explanation:
      'キーは正しいのですが、値が合いません。種類が違うか、知らない言葉か、範囲を外れた数です。何を書けばよいかはメッセージに出ています。',
    message: {
      nothing: ({ key }) => `\`${key}\` に値がありません。値を書くか、行を消してください。`,
      artists: () => '`artists` には `{ M. Arai: [12, 13] }` のように、名前と担当カットを書きます。',
      'artist-name': () => '担当者の名前がありません。',
      words: () => 'ここは文字です。引用符で囲んでください。',
      other: ({ found, takes }) =>
        `${found === null ? 'この値' : `\`${found}\` `}は書けません。ここに書くもの：${taken(takes)}。`,
      twice: ({ found }) => `\`${found}\` はもうあります。`,
      stage: ({ found, stages, orCut, guess }) =>
        guess === null
          ? `\`${found}\` は工程${orCut ? 'でもカット' : ''}でもありません。工程は ${stages.map((one) => `\`${one}\``).join('、')} です。`
          : `\`${found}\` という工程はありません${meant(guess)}`,
      comma: ({ written }) => `金額にコンマは書きません。小数は点で書きます：\`${written}\`。`,
      guess: ({ found, guess }) => `ここに \`${found}\` はありません。\`${guess}\` のことですか？`,
    },
  },
  'episode-outside': {
    title: 'episode.yaml がフォルダーの外を指している',
    explanation:
      '話数とは、そのフォルダーと下のことです。`cuts` のパターンは、`../` でも、絶対パスでも、リンクでも外に出られません。話数をまるごとコピーでき、よそのファイルを読むこともありません。',
    message: ({ path }) => `\`${path}\` は話数のフォルダーの外です。`,
  },
  'artist-without-cut': {
    title: '存在しないカットの担当',
    explanation:
      'episode.yaml に、話数にないカット番号の担当が書かれています。その名前はどこにも印刷されません。番号の書き間違いかもしれません。',
    message: ({ cut }) => `この話数にカット${cut}はありません。`,
  },
  'use-missing': {
    title: '読み込むファイルがない',
    explanation:
      '`use` に書いたファイルが読めません。パスは `use` を書いたファイルのフォルダーから書きます。',
    message: {
      'too-many': ({ most }) => `読み込むファイルが${most}個を超えたので、これは読みません。`,
      missing: ({ file, guess }) => `ファイル \`${file}\` がありません${meant(guess)}`,
      unreadable: ({ file, reason }) => `\`${file}\` が読めません：${reasonInJapanese(reason)}。`,
    },
  },
  'use-outside': {
    title: '読み込むファイルが話数の外にある',
    explanation:
      'カットが読み込めるのは、自分のフォルダーのファイルと、話数のフォルダー（episode.yaml のある所）の下のファイルだけです。話数をまるごとコピーでき、届いたカットがよそのファイルを読むこともありません。',
    message: ({ path, inEpisode }) =>
      inEpisode
        ? `\`${path}\` は、このフォルダーにも話数のフォルダーの下にもないので、読み込めません。`
        : `\`${path}\` はこのフォルダーにありません。episode.yaml がないときは、同じフォルダーのファイルだけを読み込めます。`,
  },
  'use-circle': {
    title: '循環する読み込み',
    explanation:
      '`use` をたどると、読んでいる途中のファイルに戻ります。つながりはメッセージに出ています。どこか1つを消してください。',
    message: ({ files: names }) =>
      names.length === 2
        ? 'このファイルが自分自身を読み込んでいます。'
        : `ファイルの読み込みが一周しています：${names.join(' → ')}。`,
  },
  'same-unknown': {
    title: '同ポジの相手のカットがない',
    explanation:
      '`same` には、画面を合わせる同じ話数のほかのカットを書きます。描く人はそのカットを見て合わせるので、実在しなければなりません。',
    message: {
      itself: ({ cut }) => `カット ${cut} はこのカット自身です。\`same\` には相手のカットを書きます。`,
      'no-cut': ({ cut }) => `この話数に、同ポジの相手のカット ${cut} がありません。`,
    },
  },
  'reuse-unknown': {
    title: '兼用元のセルが見つからない',
    explanation:
      'ほかのカットの絵を兼用することになっていますが、そのカットかセルが使えません。episode.yaml のカットにないか、誤りがあるか、兼用が一周しています。番号は自分の絵として付けるので、紙の番号と違うことがあります。',
    message: {
      'not-lent': ({ reason, cut, level }) =>
        `${notLent(reason)}。\`${cut}/${level}\` の番号が分かりません。`,
      'no-timeline': ({ cut, level }) =>
        `カット${cut}のセル${level}にはタイムラインがないので、兼用できる絵がありません。`,
    },
  },
  'missing-glyph': {
    title: '印刷できない文字',
    explanation:
      '印刷に使う書体に、この文字（絵文字、制御文字、珍しい記号）がありません。シートに空の四角が出ると読み違えるので、カットは印刷しません。別の言葉で書いてください。絵やセルの名前も同じです。改行できるのは、メモ、指示、セリフ、SE だけです。',
    message: ({ character }) =>
      character === '\n'
        ? '題と名前は1行なので、改行できません。'
        : `${characterName(character)}は書体にないので印刷できません。`,
  },
  'text-too-long': {
    title: 'シートに入らない長さの文字',
    explanation:
      '1つの文字は4,000字まで、カット全体で100,000字までです。それより長いものは、間違って貼り付けたか、シートとは別の紙に書くものです。',
    message: {
      one: ({ characters, most }) => `${characters}字はシートに入りません。${most}字までです。`,
      all: ({ most }) => `ここでカットの文字が合計${most}字を超えます。シートに入りません。`,
    },
  },
  'levels-too-many': {
    title: 'シートに入らない数のセル',
    explanation: '1カットのセルは200までです。それより多い群衆は、1つのセルに何人か描きます。',
    message: ({ count, most }) => `このカットのセルは${count}です。${most}までです。`,
  },
  'cut-too-large': {
    title: '計算できない大きさのカット',
    explanation:
      '同じ種類の行は10,000、タイムラインの項目は100,000、1つの動きの区間は10,000、セルの数×行数は300,000、動き全部のコマの合計は300,000までです。1つの行は150,000字、テキストは300,000語までです。それより大きいものは書き間違いか作り間違いなので、計算せずに断ります。本当に必要なら、カットを分けてください。',
    message: {
      statement: ({ characters, most }) =>
        `${figure(characters)}字の行は長すぎて読めません。${figure(most)}字までです。`,
      pieces: ({ most }) => `ここでテキストが${figure(most)}語を超えます。残りは読みません。`,
      statements: ({ kind, most }) =>
        `同じ種類の行は${figure(most)}までです。\`${kind}\` がそれを超えました。`,
      items: ({ count, most }) =>
        `ここでタイムラインの項目が${figure(count)}になります。1カット${figure(most)}までです。`,
      legs: ({ count, most }) => `この動きの区間は${figure(count)}です。${figure(most)}までです。`,
      'level-frames': ({ levels, rows, most }) =>
        `${levels}セル × ${figure(rows)}行で${figure(levels * rows)}マスになります。1カット${figure(most)}までです。`,
      'move-frames': ({ most }) =>
        `ここで動きのコマ数の合計（セルごとに数えます）が${figure(most)}を超えます。`,
      'held-frames': ({ most }) => `ここで動きの数×シートの行数が${figure(most)}を超え、計算できません。`,
    },
  },
  'same-output': {
    title: '2つのカットが同じファイルになる',
    explanation:
      '2つのカットの出力先が同じ名前のファイルで、後の方が先の方を黙って消してしまいます。どちらも書きません。',
    message: ({ other, output }) => `このカットと \`${other}\` の出力先が、どちらも \`${output}\` です。`,
  },
  'output-is-input': {
    title: '出力がテキストを消してしまう',
    explanation: '出力先が、読んでいるテキストの1つです。カットの原稿を消してしまうので、書きません。',
    message: {
      read: ({ output }) => `\`${output}\` は今読んでいるテキストなので、上書きしません。`,
      named: ({ output }) => `\`${output}\` はテキストの名前なので、上書きしません。`,
    },
  },
  'output-unwritable': {
    title: '出力を書けない',
    explanation:
      'フォルダーに書けないか、じゃまなものがあるか、ディスクがいっぱいです。ないフォルダーは作ります。出力は別の名前で書いてから付け替えるので、前のファイルは無事です。',
    message: ({ output, reason }) =>
      `${output === null ? '標準出力' : `\`${output}\` `}に書けません：${reason === null ? '書く間に別に保存されました' : reasonInJapanese(reason)}。`,
  },
};
