import type { Texts } from '../catalogue-entry.js';
import type { StatementMessages } from '../statements-codes.js';
import { around, meant } from './terms-texts-ja.js';

const HEARD = { voice: 'セリフ', sound: 'SE', music: '音楽' } as const;
const NAMED = { mark: 'マーク', field: 'フレーム', phrase: 'フレーズ' } as const;

export const statements: Texts<StatementMessages> = {
  'cut-missing': {
    title: 'カット番号がない',
    explanation:
      'どのファイルにも、コンテどおりのカット番号を `cut` で書きます。番号がないと、後の工程の誰にも、どのカットの紙か分かりません。',
    message: () => 'カット番号がありません。最初に `cut` と番号を書いてください。',
  },
  'time-missing': {
    title: '尺がない',
    explanation:
      'どのカットにも `time` で尺を書きます。秒+コマ、コマ数、フィートのどれでもかまいません。シートはその行数になります。',
    message: () => 'カットの尺がありません。`time 5+0` のように書いてください。',
  },
  'time-zero': {
    title: '0コマのカット',
    explanation: 'カットは1コマ以上です。`time 5+0` のように尺を書いてください。',
    message: () => 'カットの尺は1コマ以上です。',
  },
  'time-too-long': {
    title: '10分を超えるカット',
    explanation:
      '1カット10分はシート百枚になるので、分と秒、またはコマ数と秒の書き間違いとみなします。本当に長いものは、いくつかのカットに分けてください。',
    message: ({ longest }) =>
      `1カットは10分（\`${longest}\`）までです。コマ数ですか、それとも秒+コマですか？`,
  },
  'statement-twice': {
    title: '1回だけの行が2つある',
    explanation:
      'カット番号、尺、セル重ねはカットに1つ、タイムライン、`level`、`cels` の行は1つのセルに1つです。どちらが正しいか分からないので、先の方を読み、残りを調べました。',
    message: ({ statement, name }) =>
      statement === ''
        ? `セル \`${name}\` のタイムラインが2つあります。`
        : `\`${name === null ? statement : `${statement} ${name}`}\` の行が2つあります。`,
  },
  'name-twice': {
    title: '同じ名前のマークかフレーズが2つ',
    explanation:
      'マークは1つの位置、フレーズは1つのタイミングです。後の方に別の名前を付け、使う所もその名前にしてください。',
    message: ({ of, name }) => `${NAMED[of]} \`${name}\` が2つあります。`,
  },
  'position-zero': {
    title: '1コマ目より前の行',
    explanation:
      'シートの最初の行が1コマ目です。0コマ目も、それより前もありません。マークから引いた位置も、シートの中に収めてください。',
    message: {
      zero: () => '0コマ目はありません。シートの最初の行が1コマ目です。',
      before: ({ frames }) => `1コマ目より${frames}コマ前になっています。`,
    },
  },
  'length-mark': {
    title: '長さの所に書いたマーク',
    explanation:
      'マークはシートの上の位置です。長さは何コマ続くかです。マークまで続けるなら、次の絵の前に `@` とマークを書きます。',
    message: ({ mark }) =>
      `マークは位置で、長さではありません。\`${mark}\` まで続けるなら \`..\` と書き、次の絵の前に \`@${mark}\` と書きます。`,
  },
  'unknown-mark': {
    title: '存在しないマーク',
    explanation: '行に名前を付けるには、`mark hit 2+6` のように `mark` と位置を書きます。',
    message: ({ name, guess }) =>
      `マーク \`${name}\` はありません${meant(guess, '。`mark` で位置を書いてください。')}`,
  },
  'mark-circle': {
    title: '互いに依存するマーク',
    explanation:
      'マークの位置は別のマークで書けるので、一緒に動かせます。ただし、どれか1つは行を直接書いてください。',
    message: ({ marks }) => `マークの位置が一周しています：${around(marks)}。`,
  },
  'mark-unused': {
    title: '使われていないマーク',
    explanation:
      'このマークを使うものがありません。害はありませんが、消し忘れか、名前の書き間違いかもしれません。',
    message: ({ mark }) => `マーク \`${mark}\` はどこにも使われていません。`,
  },
  'range-backwards': {
    title: '終わりが始まりより前の範囲',
    explanation: '`a..b` はどちらもシートの先頭から数えた行です。`b` は長さではありません。',
    message: ({ from, to }, _, row) => `範囲の終わりが${row(to)}で、始まりの${row(from)}より前です。`,
  },
  'time-in-frames': {
    title: '数コマしかないカット',
    explanation:
      '数字だけならコマ数です。`time 5` は5コマで、4分の1秒もありません。5秒は `5+0` と書きます。本当にそれだけ短いカットなら、`0+5` のように秒も書いてください。',
    message: ({ frames, seconds }) =>
      `このカットは${frames}コマです。秒のつもりなら \`${seconds}\` と書きます。`,
  },
  'frames-past-second': {
    title: '1秒より多いコマ数',
    explanation:
      '`+` の後には秒に満たないコマ数を書きます。1秒は24コマか、`fps` に書いたコマ数です。`3+30` は3秒と30コマ、つまり `4+6` と読みます。書き間違いか、別の数え方の尺かもしれません。',
    message: ({ seconds, frames, fps, meant }) =>
      `1秒は${fps}コマなので、\`${seconds}+${frames}\` は \`${meant}\` です。`,
  },
  'range-starts-late': {
    title: '秒の最後のコマから始まる範囲',
    explanation:
      '`1+0` は1秒目の最後のコマです。次の秒の頭から始めるなら `1+1` です。最後のコマでよければ、`24` のように番号で書いてください。',
    message: ({ seconds }) =>
      `\`${seconds}+0\` は秒の最後のコマです。次の秒の頭の \`${seconds}+1\` のことですか？`,
  },
  'fps-range': {
    title: 'ありえないコマ数／秒',
    explanation: '`fps` には毎秒のコマ数を `fps 24`、`fps 25` のように整数で書きます。',
    message: ({ most }) => `\`fps\` は毎秒のコマ数で、1 から ${most} までの整数です。`,
  },
  'on-range': {
    title: '`on` に書けないコマ数',
    explanation:
      '`on 2` は2コマ打ちです。1以上の整数を書きます。長く見せるものは止メなので、`3:1+0` のように絵の後に書きます。',
    message: ({ most }) => `\`on\` は 1 から ${most} までの整数です。`,
  },
  'unknown-numbering': {
    title: '存在しない番号の付け方',
    explanation:
      '動画番号は、出る順に 1、2、3 … と付けるか（`numbering sequence`）、初めて出るコマの番号にします（`numbering frame`）。',
    message: ({ name }) => `番号の付け方は \`sequence\` か \`frame\` です。\`${name}\` はありません。`,
  },
  'unknown-level': {
    title: '存在しないセル',
    explanation: 'セルは、タイムライン、セル重ね（`stack`）、`level` の行のどれかに出てくれば使えます。',
    message: ({ name, guess }) => `このカットにセル \`${name}\` はありません${meant(guess)}`,
  },
  'level-outside': {
    title: 'セル重ねにないセル',
    explanation:
      'セル重ね（`stack`）を書いたら、そのカットのセルはそれで全部です。ないセルは重ねる場所が決まりません。下から上の順に、入る所に名前を書いてください。',
    message: ({ name, guess }) => `セル \`${name}\` がセル重ねにありません${meant(guess)}`,
  },
  'stack-twice': {
    title: 'セル重ねに2回出るセル',
    explanation: '1つのセルの場所は1つです。間違っている方を消してください。',
    message: ({ level }) => `セル \`${level}\` がセル重ねに2回出てきます。`,
  },
  'size-zero': {
    title: '大きさのない用紙',
    explanation: 'セルの大きさは用紙の幅と高さです。cm や in と書かなければ mm です。',
    message: ({ level }) => `セル \`${level}\` の用紙に大きさがありません。`,
  },
  'reuse-self': {
    title: '自分自身の兼用',
    explanation:
      '`reuse` は、ほかのカットか、このカットのほかのセルの絵を兼用します。自分の絵はそのまま使えます。',
    message: ({ level }) => `セル \`${level}\` は自分の絵を兼用できません。`,
  },
  'level-to-itself': {
    title: '自分自身を指すセル',
    explanation: '`with` には組みになる相手のセル、`masks` には隠すセルを書きます。自分の名前は書きません。',
    message: ({ part, level }) =>
      part === 'with'
        ? `セル \`${level}\` は自分自身と組めません。相手のセルを書いてください。`
        : `セル \`${level}\` は自分自身のマスクになれません。隠すセルを書いてください。`,
  },
  'cels-twice': {
    title: '1枚の絵に番号が2つ',
    explanation:
      '`cels` の行では並び順が番号です。3番目の名前が3番です。1枚の絵の番号は1つです。使わない番号の所には `_` を書くと、ほかの番号は変わりません。',
    message: ({ drawing }) => `絵 ${drawing} がこの行に2回あります。1枚の絵の番号は1つです。`,
  },
  'words-outside': {
    title: '範囲の外の行に付けたセリフ',
    explanation: '`@` で行に付ける言葉は、そのセリフの最初の行から最後の行までの間に置きます。',
    message: ({ frame, from, to }, _, row) =>
      `この言葉は${row(frame)}に付いていますが、セリフの範囲は${row(from, to)}です。`,
  },
  'words-not-rising': {
    title: '順番が逆の言葉',
    explanation: '言葉は書いた順に話されるので、行も前の言葉より後になります。',
    message: ({ frame, before }, _, row) => `この言葉は${row(frame)}ですが、前の言葉は${row(before)}です。`,
  },
  'dialogue-past-end': {
    title: '尻を越えるセリフ・SE',
    explanation:
      'カットが終わっても言葉が続いています。シートには最後の行まで印刷します。短くするか、カットを延ばすか、残りを次のカットに回してください。',
    message: ({ heard, from, to, rows }, _, row) =>
      `この${HEARD[heard]}は${from > rows ? `${row(from)}から始まり` : `${row(to)}まで続き`}、シートの最後（${rows}コマ）を越えます。`,
  },
  'note-past-end': {
    title: '尻を越える指示',
    explanation: 'シートにその行がないので、指示は印刷されません。場所を変えるか、`memo` にしてください。',
    message: ({ frame, rows }, _, row) =>
      `この指示は${row(frame)}で、シートの最後（${rows}コマ）を越えます。`,
  },
  'unknown-phrase': {
    title: '存在しないフレーズ',
    explanation:
      'タイムラインの絵の間にある言葉はフレーズです。このファイルか、読み込むファイルに `phrase` で書きます。',
    message: ({ name, guess }) => `フレーズ \`${name}\` はありません${meant(guess)}`,
  },
  'phrase-circle': {
    title: '自分自身を使うフレーズ',
    explanation:
      'フレーズは別のフレーズを使えますが、回り回って自分自身を使うと終わりません。つながりはメッセージに出ています。',
    message: ({ phrases }) => `フレーズが自分自身を使っています：${around(phrases)}。`,
  },
  'phrase-unused': {
    title: '使われていないフレーズ',
    explanation:
      'このカットのどのタイムラインでも使われていません。害はありませんが、消し忘れかもしれません。',
    message: ({ phrase }) => `フレーズ \`${phrase}\` は使われていません。`,
  },
  'accept-unknown': {
    title: '存在しない注意',
    explanation:
      '`accept` には、注意かヒントのコードを書きます。コードはメッセージの2行目、場所の後に出ています。`cutwright explain` で全部を一覧できます。',
    message: ({ name, guess }) => `\`${name}\` というメッセージはありません${meant(guess)}`,
  },
  'accept-error': {
    title: '誤りは了承できない',
    explanation:
      '誤りのあるカットは印刷できないので、了承して進めることはできません。注意とヒントは、分かっていてそうする場合があるので、了承できます。',
    message: ({ accepted }) =>
      `\`${accepted}\` は誤りなので、直す必要があります。了承できるのは注意とヒントだけです。`,
  },
  'accept-unused': {
    title: '何も抑えていない `accept`',
    explanation:
      'このカットには、もうその注意は出ません。行を消してください。残すと、誰も了承していない次の同じ注意まで隠します。',
    message: ({ accepted }) => `このカットに \`${accepted}\` は出ないので、了承するものがありません。`,
  },
};
