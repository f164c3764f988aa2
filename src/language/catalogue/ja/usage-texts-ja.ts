import type { Texts } from '../catalogue-entry.js';
import type { PrintedPart } from '../message-terms.js';
import type { UsageMessages } from '../usage-codes.js';
import { meant, oneOf, reasonInJapanese, rowsFault } from './terms-texts-ja.js';

/** Why a part has no page. */
const NO_PAGE: Readonly<Record<PrintedPart, string>> = {
  cover: 'カット袋の表書きがありません',
  sheet: 'シートがありません',
  charts: '中割りがないので、チャートがありません',
  camera: 'カメラワークがないので、カメラ図がありません',
  table: '等速の動きと揺れのほかに動くものがないので、移動表がありません',
  strip: '目盛りがないので、目盛りの紙がありません',
  overlay: 'カメラワークがないので、フレームの紙がありません',
};

/** What a command needs that stands alone, by the argument's name. */
const NEEDED: Readonly<Record<string, string>> = {
  files: 'ファイル',
  shell: 'シェルの名前',
  what: '`episode`（話数）か `cut`（カット）',
};

export const usage: Texts<UsageMessages> = {
  'unknown-command': {
    title: '存在しないコマンド',
    explanation: '最初の言葉がコマンドではありません。`cutwright --help` で一覧が出ます。',
    message: {
      guess: ({ name, guess }) => `コマンド \`${name}\` はありません${meant(guess)}`,
      file: ({ name }) => `\`${name}\` はコマンドではありません。\`cutwright build ${name}\` のことですか？`,
      none: ({ name, commands }) =>
        `コマンド \`${name}\` はありません。コマンドは ${commands.join('、')} です。`,
    },
  },
  'unknown-option': {
    title: 'コマンドにないオプション',
    explanation: 'オプションはコマンドごとに違います。`--help` で例と一緒に出ます。',
    message: {
      'of-command': ({ command, option, guess }) =>
        `\`${command}\` に \`${option}\` というオプションはありません${meant(guess)}`,
      'before-command': ({ option }) =>
        `先にコマンド、次にオプションを書きます：\`cutwright build ${option} …\`。`,
    },
  },
  'option-value': {
    title: 'オプションに合わない値',
    explanation:
      'オプションは正しいのですが、値がないか、知らない言葉か、範囲の外か、印刷するものに合いません。',
    message: {
      'no-value': ({ option }) => `\`${option}\` に値は付きません。`,
      'value-missing': ({ option }) => `\`${option}\` に値が必要です。`,
      choice: ({ option, words, guess }) => `\`${option}\` に書けるのは ${oneOf(words)} です${meant(guess)}`,
      whole: ({ option, least, most }) => `\`${option}\` は ${least} から ${most} までの整数です。`,
      count: ({ option, most }) => `\`${option}\` は 1 から ${most} までの数です。`,
      'rows-number': () => '`--rows` は 144 のような行数です。',
      rows: ({ rows, fault }) => `\`--rows ${rows}\` は使えません。${rowsFault(fault)}。`,
      'page-range': () => '`--pages` は 1 から数えたページです。2、2-3、2-、1,4-6 のように書きます。',
      'output-empty': () => '`--output` の後に、ファイルかフォルダーが必要です。',
      'part-empty': ({ part, cuts }) => `${NO_PAGE[part]}（${cuts}カット）。`,
      'pages-empty': ({ pages, cuts }) =>
        `\`--pages ${pages}\` に当たるページがありません（${cuts}カット）。`,
      'pdf-ending': () => '`--output` には .pdf で終わるファイル名を指定します。',
      'list-ending': () => '`--output` は、名前が .pdf、.csv、.json で終わるファイルです。',
      revision: ({ option, revision, reason }) =>
        `\`${option} ${revision}\` は使えません：${reasonInJapanese(reason)}。`,
      'compared-revision': ({ revision, reason }) =>
        `\`${revision}\` が読めません：${reasonInJapanese(reason)}。`,
      'revision-without-cuts': ({ revision }) => `\`${revision}\` の時には、まだカットがありません。`,
      'sheet-place': ({ option }) =>
        `\`${option}\` はシートの場所です。37、1+12、2'08 のように書きます。最初が1コマ目です。`,
      'to-before-from': ({ from, to }) => `\`--to ${to}\` が \`--from ${from}\` より前です。`,
      'from-behind-end': ({ from, sheets, frames }) =>
        `\`--from ${from}\` は最後を越えています。${sheets > 1 ? '一番長いシートは' : 'シートは'}${frames}コマです。`,
      'film-ending': ({ endings }) =>
        `\`--output\` は、名前が ${oneOf(endings)} で終わる動画ファイルか、フォルダー、または \`frames/%04d.png\` のような画像の名前です。`,
      'picture-names': () =>
        '画像の名前には番号が1つ必要で、`.png` で終わります。`frames/%04d.png` のように書きます。',
      'picture-size': ({ least, most }) =>
        `\`--size\` は幅と高さのピクセル数です。どちらも ${least} から ${most} までで、960x540 のように書きます。`,
      'home-missing': () => '`--home` のフォルダーがありません。',
      'level-not-shown': ({ level, guess }) => `ここにセル \`${level}\` はありません${meant(guess)}`,
      'level-not-numbered': ({ level, guess }) => `セル \`${level}\` はありません${meant(guess)}`,
      'start-time': () => '`--start` は時、分、秒、コマです。01:00:00:00 のように書きます。',
      'start-frames': ({ fps }) => `毎秒${fps}コマなので、\`--start\` のコマは ${fps - 1} までです。`,
      'inbetween-name': ({ option }) =>
        `\`${option}\` はセルと中割りの名前です。\`A:1.1a\` のように書きます。`,
      'new-without-letter': ({ example }) =>
        `後から足した中割りは、前の中割りの名前に英字を付けます。\`${example}\` のように書きます。`,
      'not-pinned': ({ level }) => `セル${level}には \`cels\` の行がないので、番号が確定していません。`,
      'not-in-cels': ({ level, drawing }) => `セル${level}の \`cels\` の行に ${drawing} がありません。`,
      'drawing-not-shown': () =>
        'この絵はタイムラインに出ません。先にタイムラインに中割りを書いてから、番号を付けてください。',
      'still-shown': ({ level, from, to }) =>
        `セル${level}の原画${from}から${to}までの中割りは、紙にある枚数のまま減っていません。先にタイムラインからその絵を消してから、\`--gone\` を指定してください。`,
      'cut-number': () => 'カット番号は、13 や 12A のような英数字です。',
      'cut-file-name': () => 'カットのファイル名は .cut で終わります。',
      'new-levels': () => '`--levels` はセルの名前です。A,B のようにコンマで区切ります。',
      'new-time': ({ fault }, sentence) =>
        `\`--time\` は尺です。5+0、120、8'04 のように書きます。${sentence(fault)}`,
      'new-cut': ({ fault }, sentence) => `新しいカットになりません。${sentence(fault)}`,
      'like-unknown': ({ cut, guess }) =>
        `この話数にカット${cut}はありません${guess === null ? '。' : `。\`${guess}\` のことですか？`}`,
      'like-nothing': ({ file }) => `ここには話数も、手本にするファイル \`${file}\` もありません。`,
      'progress-word': ({ what, found, words, guess }) =>
        `\`${found}\` という${what === 'stage' ? '工程' : '状態'}はありません${guess === null ? `。${oneOf(words)} のどれかです。` : meant(guess)}`,
      day: ({ option }) => `\`${option}\` は日付です。\`2027-03-19\` のように年から書きます。`,
      shell: ({ shells, guess }) => `\`completion\` は ${oneOf(shells)} のためのものです${meant(guess)}`,
      shard: () => '`--shard` は、いくつかに分けたうちの1つです。1/8 から 8/8 のように書きます。',
      jobs: ({ most }) => `\`--jobs\` はスレッドの数です。1 から ${most} までを書きます。`,
      port: () => '`--preview` は 1 から 65535 までのポートです。書かなくてもかまいません。',
    },
  },
  'wrong-arguments': {
    title: '足りない、多すぎる、合わない指定',
    explanation:
      'コマンドに必要なものがないか、余分なものがあるか、一緒に使えないものがあります。どれかはメッセージに出ています。',
    message: {
      missing: ({ command, argument }) =>
        `\`${command}\` には${NEEDED[argument] ?? ` ${argument} `}が必要です。\`${command} --help\` を見てください。`,
      'too-many': ({ command }) => `\`${command}\` に書いた言葉が多すぎます。\`--help\` を見てください。`,
      'no-episode': ({ command }) =>
        `\`${command}\` にはファイルが必要です。このフォルダーは話数の中にありません（ここにも上にも episode.yaml がありません）。\`${command} --help\` を見てください。`,
      library: ({ message }) => `コマンドの書き方が違います：\`${message}\`。`,
      'needs-output': ({ option }) => `\`${option}\` は印刷用です。\`--output\` と一緒に使います。`,
      'not-together': ({ one, other }) => `\`${one}\` と \`${other}\` は一緒に使えません。`,
      'one-output': ({ cuts, standardOutput }) =>
        `${cuts}カットは${standardOutput ? '標準出力' : '1つのファイル'}に入りません。フォルダーを指定してください。`,
      'one-json': ({ cuts }) =>
        `${cuts}カットは1つの JSON に入りません。\`--output\` にフォルダーを指定してください。`,
      'output-nameless': ({ ending }) =>
        `これらのカットは1つの話数の全部ではないので、ファイル名が決まりません。\`--output\` に \`cuts${ending}\` のような名前を指定してください。`,
      'film-standard-output': () =>
        '動画ファイルは標準出力に出せません。`--output` にファイルかフォルダーを指定してください。',
      'input-nameless': () => '標準入力には名前がありません。`--output` にファイルを指定してください。',
      'two-comparisons': () => '`--changed` と `--since` は別の比べ方です。どちらかにしてください。',
      'pages-changed-alone': () =>
        '`--pages changed` には比べる相手が必要です。`--changed`（前回の build）か `--since REV` を付けてください。',
      'changed-standard-output': () =>
        '`--changed` は前回の build のファイルと比べます。標準出力にはありません。',
      'pages-found': ({ option }) =>
        `\`${option}\` は自分でページを見つけます。一緒に使えるのは \`--pages changed\` だけです。`,
      'input-revisions': ({ option }) =>
        `標準入力には前の版がありません。\`${option}\` にはファイルが必要です。`,
      'marks-without-sheet': ({ part }) =>
        `\`--marked-against\` はシートに印を付けますが、\`--only ${part}\` ではシートを印刷しません。`,
      'marks-changed-pages': () =>
        '`--marked-against` は印の場所を空けるので、カット全体を印刷します。`--pages changed` を外してください。',
      'up-without-cover': () =>
        '`--up` は何カットかのカット袋の表書きを1ページに並べます。`--only cover` と一緒に使います。',
      'plan-folder': () =>
        '`--plan` はカットごとに1つのファイルに印刷します。`--output` にフォルダーを指定してください。',
      'plan-name': ({ tool, file }) => `この名前のファイルは ${tool} で扱えません：\`${file}\`。`,
      'versions-missing': () => '前の版と今の版、または `--since` と版を指定してください。',
      'versions-three': () => '比べるのは、前の版と今の版の2つです。',
      'versions-both-input': () => '標準入力は、2つのうち片方だけに使えます。',
      'input-past': () => '標準入力に過去はありません。`--since` にはファイルを指定してください。',
      'bare-revision': ({ revision }) =>
        `\`${revision}\` は版の名前です。全部なら \`${revision}:\`、一部なら \`${revision}:PATH\` と書くか、\`--since ${revision}\` で比べてください。`,
      'version-unreadable': ({ version, reason }) =>
        `\`${version}\` が読めません：${reasonInJapanese(reason)}。`,
      'version-without-cut': ({ version, cut }) => `\`${version}\` にカット${cut}はありません。`,
      'version-shared': () =>
        'このファイルには、カットが共有するものしかありません。比べるカットがありません。',
      'git-words': () =>
        '`--git` には、git が `diff` のコマンドに渡す7つの言葉が必要です。git が呼び出すもので、手では使いません。',
      'list-episodes': ({ manifests }) =>
        `カット表は1つの話数のものですが、${manifests.length}つの話数のカットがあります：${manifests.map((file) => (file === null ? '話数なし' : `\`${file}\``)).join('、')}。`,
      'edit-episodes': ({ episodes }) =>
        `1つの編集は1つの話数のものですが、${episodes}つの話数のカットがあります。`,
      'only-without-pdf': () =>
        '`--only` は印刷するものの指定です。`--output` に .pdf で終わる名前を指定してください。',
      'start-without-edit': () => '`--start` は編集のものです。`--edit` と一緒に使います。',
      'progress-words': ({ states }) =>
        `\`progress\` には話数か、カット、工程、状態（${oneOf(states)}）を書きます。例：\`cutwright progress 12 key done\`。`,
      'progress-option': ({ option }) =>
        `\`${option}\` は行を書くときのものです。例：\`cutwright progress 12 key done\`。`,
      'new-what': ({ guess }) =>
        `\`new\` で作るのは、\`episode\`（話数）か \`cut\`（カット）です${meant(guess, '。次にどちらかを書いてください。')}`,
      'new-cut-option': ({ option }) => `\`${option}\` は新しいカットのものです。話数には使えません。`,
      'new-cut-number': () => '新しいカットには番号が必要です。`cutwright new cut 13` のように書きます。',
      'table-without-number': () =>
        '表にカット番号がありません。`cutwright new cut 13 --from-csv grid.csv` のように番号を書いてください。',
      'table-one-file': ({ cuts }) => `表に${cuts}カットあります。フォルダーを指定してください。`,
      'table-one-number': ({ cuts }) =>
        `表に${cuts}カットあり、番号も付いています。この番号を消してください。`,
      'retimed-several': () => '足した絵となくした絵は、1回に1カットずつ指定します。',
      'watch-input': () => '標準入力は保存されません。ファイルを指定してください。',
      'watch-output': () => '`watch` は何度も書きます。`--output` にファイルかフォルダーを指定してください。',
      'lsp-terminal': () =>
        '`cutwright lsp` はエディターが起動して使うものです。カットを調べるのは `cutwright check` です。',
      'explain-unknown': ({ word, guess }) =>
        `\`${word}\` という行も、言葉も、コードもありません${meant(guess, '。`cutwright explain` で一覧が出ます。')}`,
    },
  },
  'internal-fault': {
    title: 'プログラム自体の失敗',
    explanation:
      'テキストではなく、プログラムの誤りです。ほかのカットは処理します。このカットと一緒に報告してください。直るまでは、最後に書き足した所を消すと、たいてい動きます。',
    message: ({ onCut, error }) => `${onCut ? 'このカットで' : ''}プログラムの不具合です：\`${error}\`。`,
  },
};
