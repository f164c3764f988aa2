import type { Texts } from '../catalogue-entry.js';
import type { WordMessages } from '../syntax-codes.js';
import { anyOf, codePoint, meant, misplaced, statementName } from './terms-texts-ja.js';

/** What belongs together in a number. */
const PARTS = {
  seconds: '秒とコマ',
  feet: 'フィートとコマ',
  unit: '数値と単位',
} as const;

/** What something is said twice of. */
const PART_OF = { level: 'セル', move: '動き', mouth: '口' } as const;

export const words: Texts<WordMessages> = {
  'control-character': {
    title: '印刷できない文字',
    explanation:
      'NUL や BELL などの制御文字、または壊れた文字が入っています。画面にも紙にも出ません。多くはコピーの失敗です。消してください。',
    message: ({ character }) => `目に見えず印刷もできない文字（${codePoint(character)}）が入っています。`,
  },
  'unclosed-text': {
    title: '閉じていない引用符',
    explanation: '文字は1行の中で "…" か 「…」 で囲みます。文字の中の改行は \\n、引用符は \\" と書きます。',
    message: {
      text: () => 'この文字の閉じる引用符が、同じ行にありません。',
      statement: () => 'この行の引用符が対になっていません。どれか1つ足りません。',
    },
  },
  'unknown-escape': {
    title: '意味のない円記号（バックスラッシュ）',
    explanation:
      '文字の中のバックスラッシュは、次の文字が特別だという印です。\\" は引用符、\\\\ はバックスラッシュ、\\n は改行です。ほかの組み合わせに意味はありません。',
    message: ({ pair }) =>
      `文字の中の \`${pair}\` に意味はありません。バックスラッシュそのものは2つ重ねて書きます。`,
  },
  'unknown-character': {
    title: '使えない文字',
    explanation:
      '文字列とコメントの外では、英数字とかな漢字の名前、決まった記号だけを使います。全角の数字や記号、ふつうのダッシュも読めますが、この文字は読めません。',
    message: ({ found, guess }) => `\`${found}\` は引用符の外では使えません${meant(guess)}`,
  },
  'indented-start': {
    title: '最初の行の字下げ',
    explanation:
      '字下げした行は、上の行の続きになります。テキストの先頭には続ける行がありません。左端から書いてください。',
    message: () => 'この行は字下げされていますが、上に続ける行がありません。',
  },
  'indented-statement': {
    title: '字下げされた行',
    explanation:
      '新しい指定は左端から書きます。字下げした行は上の行の続きになります。この行は、新しい指定のように見えます。',
    message: {
      unread: ({ found, statement }) =>
        `\`${found}\` は字下げされているので、上の${statementName(statement)}の続きになりますが、そこには書けません。`,
      phrase: ({ name }) =>
        `\`${name}\` は字下げされているので、上のタイムラインのフレーズになりますが、その名前のフレーズはありません。`,
    },
  },
  'statement-start': {
    title: '言葉で始まらない行',
    explanation:
      '左端から書く行は新しい指定で、言語の言葉かセルの名前で始まります。上の行の続きなら字下げしてください。',
    message: ({ found }) => `左端から書く行は言葉で始まりますが、この行は \`${found}\` で始まっています。`,
  },
  'unknown-word': {
    title: '知らない言葉で始まる行',
    explanation:
      '行は言語の言葉（`time`、`stack`、`voice` など）で始まります。タイムラインなら、セルの名前とコロンで始まります。',
    message: ({ found, guess }) => `\`${found}\` という言葉はありません${meant(guess)}`,
  },
  'trade-word': {
    title: 'ここでは別の言い方をする言葉',
    explanation:
      '現場には1つのものにいくつもの言葉がありますが、誰にでも読めるように、ここではそのうちの1つだけを使います。`cutwright explain T.U` のように、現場の言葉でもページを探せます。',
    message: {
      called: ({ found, here }) => `\`${found}\` は、ここでは \`${here}\` と書きます。`,
      drawn: ({ found, here }) => `\`${found}\` は、タイムラインでは \`${here}\` のように記号で書きます。`,
      manifest: ({ found, here }) =>
        `\`${found}\` は、全カット共通で \`episode.yaml\` に \`${here}\` のように書きます。`,
      instead: ({ found, here }) =>
        `\`${found}\` のための行はありません。\`${here}\` と書いて撮影に伝えます。`,
      command: ({ found, here }) =>
        `\`${found}\` は、カットのテキストには書きません。コマンド \`${here}\` を使います。`,
      written: ({ found, here }) => `\`${found}\` は、ここでは \`${here}\` と書きます。`,
      towards: ({ found, here }) =>
        `方向には、来る側ではなく進む先を書きます。\`${found}\` は、ここでは \`${here}\` と書きます。`,
      'either-end': ({ found }) =>
        `\`${found}\` は人によって逆の意味になります。\`ease 12 0\` は12コマかけて動き出し、\`ease 0 12\` は12コマかけて止まります。`,
      'left-out': ({ found }) => `\`${found}\` は、ここでは書きません。`,
    },
  },
  'missing-colon': {
    title: 'コロンのないタイムライン',
    explanation: 'タイムラインは、セルの名前、あればその題、コロン、絵の順に書きます。',
    message: ({ found }) =>
      `\`${found}\` という言葉はありません。タイムラインなら、セルの名前の後にコロンを付けます。`,
  },
  'spaced-number': {
    title: '数値の中の空白',
    explanation:
      "シートには 5 + 0 と印刷されますが、テキストでは秒とコマ、フィートとコマを 5+0、8'04 のように続けて書きます。空白があると、並んだ時間と足し算の区別がつきません。",
    message: ({ parts, joined }) => `${PARTS[parts]}の間に空白は入れません。${joined} と書きます。`,
  },
  'glued-number': {
    title: '数値に付いた余計なもの',
    explanation:
      '数値のすぐ後に書けるのは単位（mm、cm、in、deg、%）と、原画番号の英字1つ（3a）だけです。ほかのものとの間には空白を入れます。',
    message: {
      'feet-alone': ({ found }) => `\`${found}\` はフィートだけで、コマがありません。`,
      glued: ({ found }) => `\`${found}\` は数値でも名前でもありません。数値に何か付いています。`,
    },
  },
  'number-too-large': {
    title: '大きすぎる数値',
    explanation: '数値は9桁までです。カットの中に、それより大きな数はありません。',
    message: ({ found }) => `\`${found}\` は大きすぎます。`,
  },
  'stray-dot': {
    title: 'ドットの過不足',
    explanation:
      'ドット2つは範囲（1+1..5+0）か止メ（6..）です。ドット1つは数値か中割りの名前（1.2）の中に書きます。数値の先頭や末尾にドットは付きません。',
    message: {
      'too-many': () => 'ドットが多すぎます。範囲も止メもドット2つです。',
      single: () =>
        'ここのドット1つに意味はありません。数値ならドットの両側に数字を書き、止メならドットを2つ書きます。',
      leading: ({ number }) => `数値はドットで始まりません。${number} と書きます。`,
    },
  },
  'times-sign': {
    title: '× で書いたリピート',
    explanation:
      'リピートの回数は (1--2-)*3 のように * で書きます。× は空セルの記号なので、回数には使えません。',
    message: ({ times }) => `グループのリピートは * で書きます。*${times} としてください。`,
  },
  'missing-quotes': {
    title: '引用符のない文字',
    explanation: 'そのまま印刷される文字（話者、セリフ、メモ、人の名前）は引用符で囲みます。',
    message: ({ found }) => `文字列は「…」か \`"…"\` で囲みます。\`${found}\` は囲まれていません。`,
  },
  'unclosed-group': {
    title: '閉じていないグループ',
    explanation: 'リピートする絵のグループは ( と ) で囲みます。閉じる括弧がありません。',
    message: () => 'このグループが閉じていません。`)` がありません。',
  },
  'nested-too-deep': {
    title: '深すぎるグループ',
    explanation:
      'グループの中にグループを書けますが、括弧が多すぎると読めません。内側のグループに `phrase` で名前を付けてください。',
    message: ({ most }) => `グループの入れ子が${most}段を超えています。`,
  },
  'stops-short': {
    title: '途中で終わった行',
    explanation: 'この行に必要なものが、まだ書かれていません。注に完全な例があります。',
    message: ({ statement, wanted, last }) =>
      `${statementName(statement)}が途中で終わっています。\`${last}\` の後に必要なもの：${anyOf(wanted)}。`,
  },
  'does-not-fit': {
    title: '場所の違うもの',
    explanation:
      'この行はここまで読めましたが、ここにあるものが合いません。注に書き方の例があります。ほかの行はすべて読みました。',
    message: {
      'level-meant': ({ found, statement }) =>
        `\`${found}\` はここには書けません。セルを動かすなら、前に \`level\` と書きます${statement === 'truck' ? '（`truck` だけでは、カメラがフレームからフレームへ動きます）' : ''}。`,
      'word-with-colon': ({ word }) =>
        `コロンがあるので、\`${word}\` という名前のセルのタイムラインになります。${statementName(word)}にコロンは付きません。`,
      'word-meant': ({ found, guess }) => `\`${found}\` はここには書けません。\`${guess}\` のことですか？`,
      wanted: ({ found, wanted }) => `\`${found}\` はここには書けません。ここに書くもの：${anyOf(wanted)}。`,
      misplaced: ({ found, why }) => `\`${found}\` はここには書けません。${misplaced[why]}。`,
      'not-shown': ({ found }) => `タイムラインに \`${found}\` は書けません。`,
      'too-much': ({ found, statement }) =>
        `\`${found}\` は余分です。${statementName(statement)}は、その前で終わっています。`,
    },
  },
  'part-twice': {
    title: 'セル・口・動きに同じ指定が2つ',
    explanation:
      '`size`、`at`、`free`、`carry`、`flash`、`reuse`、`picture` は1つのセルに1回、`on`、`lead`、`flaps` は1つの口に1回、`on 2` などの指定は1つの動きに1回だけ書きます。',
    message: ({ part, of }) => `1つの${PART_OF[of]}に \`${part}\` が2回書かれています。`,
  },
  'word-renamed': {
    title: '名前の変わった言葉',
    explanation:
      '1つのものは、テキストでも紙でもメッセージでも1つの言葉で呼びます。前の言葉も同じ意味で読みますが、次にファイルを開いた時に新しい言葉に直してください。',
    message: ({ word, written }) => `\`${word}\` は、今は \`${written}\` と書きます。`,
  },
  'quick-level': {
    title: 'セルのクイックT.U',
    explanation:
      'クイック（Q.T.U / Q.T.B）はカメラの動きで、フェアリングはフレームで計算します。セルの拡大・縮小は `truck level` に加減速かカーブを付けて書きます。',
    message: () => 'クイックT.U はカメラの動きです。セルには使えません。',
  },
  'reading-stopped': {
    title: '読めない行が多すぎる',
    explanation:
      '読めない行が千を超えたので、残りは読んでいません。カットのテキストではないか、初めの方の1つの間違いが全体に響いています。',
    message: ({ most }) => `読めない行が${most}を超えました。残りは読んでいません。`,
  },
};
