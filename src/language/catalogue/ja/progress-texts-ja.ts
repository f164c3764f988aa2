import type { Texts } from '../catalogue-entry.js';
import type { ProgressMessages } from '../progress-codes.js';
import { meant, oneOf } from './terms-texts-ja.js';

const by = (person: string): string => (person === '' ? '' : `、「${person}」`);

export const progress: Texts<ProgressMessages> = {
  'progress-faulty': {
    title: '`progress.csv` に読めない行がある',
    explanation:
      '進行表は `CSV` で、カットに起きたことを1行ずつ書きます。1行目は列の名前です。`cut`、`stage`、`date` と、必要なら `state`、`person`、`note` を、どの順に並べてもかまいません。工程は `episode.yaml` のもの、状態は `started`、`done`、`retake` のどれか（空なら `done`）、日付は `2027-03-19` のように年から書きます。場所はファイルの行と列です。読めない行は数えません。ファイルは何も変わりません。',
    message: {
      'open-quote': () => 'ここで開いた引用符が閉じていません。',
      'no-csv': ({ message }) => `\`CSV\` として読めません：\`${message}\`。`,
      'no-column': ({ name, found }) =>
        `1行目に \`${name}\` の列がありません。${found === null ? '' : `\`${found}\` がそれですか？`}`,
      'column-twice': ({ name }) => `\`${name}\` の列はもうあります。`,
      'too-many-cells': ({ cells, columns }) =>
        `${columns}列の表なのに、この行には${cells}個の値があります。コンマの入った文字は引用符で囲みます。`,
      'no-cut': () => 'この行にはカット番号がありません。',
      'no-stage': () => 'この行には工程がありません。',
      stage: ({ found, words, guess }) =>
        `\`${found}\` という工程はありません${guess === null ? `。工程は ${words.map((one) => `\`${one}\``).join('、')} です。` : meant(guess)}`,
      state: ({ found, words, guess }) =>
        `\`${found}\` という状態はありません${guess === null ? `。状態は ${oneOf(words)} です。` : meant(guess)}`,
      day: ({ found }) =>
        found === ''
          ? 'この行には日付がありません。`2027-03-19` のように年から書きます。'
          : `\`${found}\` は日付として読めません。\`2027-03-19\` のように年から書きます。`,
    },
  },
  'progress-cut': {
    title: '存在しないカットの進行が書いてある',
    explanation:
      '`progress.csv` の行か、`episode.yaml` の `due` の日付に、話数にないカット番号があります。数えません。番号の書き間違いか、欠番になったカットでしょう。全角数字と頭の0は区別しません。`12A` と `12` は別のカットです。',
    message: ({ inRow, cut, guess }) =>
      inRow
        ? `この話数にカット${cut}はありません${meant(guess)}`
        : `カット${cut}に締切がありますが、この話数にそのカットはありません${meant(guess)}`,
  },
  'progress-twice': {
    title: '同じ工程が2度済んでいる',
    explanation:
      'この工程は前に済んでいて、2つの行の間に `retake` がありません。最初の行だけを数え、支払いもそれに従います。2人が同じことを書いたか、リテイクの行が抜けているのでしょう。',
    message: ({ state, cut, stage, date, person }) =>
      `カット${cut}の \`${stage}\` は${state === 'done' ? '' : 'また始まっていますが、'}もう済んでいます（${date}${by(person)}）。戻すときは \`retake\` の行を書きます。`,
  },
  'progress-order': {
    title: 'カットの行の順番がおかしい',
    explanation:
      '前の工程が済んでいないのに後の工程が済んでいるか、済む前に戻されています。行が抜けているか、日付の書き間違いでしょう。行は書いてあるとおりに数えます。',
    message: {
      early: ({ cut, stage, date, missing }) =>
        `カット${cut}の \`${stage}\` は${date}に済んでいますが、その前の \`${missing}\` がまだです。`,
      'retake-open': ({ cut, stage }) =>
        `カット${cut}の \`${stage}\` は戻されていますが、まだ済んでいませんでした。`,
    },
  },
  'progress-open': {
    title: '`progress.csv` がほかで使われている',
    explanation:
      '表計算で表を開いていると、横にロックファイルができます。あとでそこで保存すると、いま足した行が消えるので、書きません。表を閉じるか、そこに行を書いてください。どこでも開いていなければ、異常終了で残ったロックファイルです。消してください。別の `cutwright` が書いている間も待ちます。もう一度実行してください。',
    message: {
      spreadsheet: ({ file, lock }) =>
        `\`${file}\` はほかのプログラムで開いていて、いま書く行は消えてしまいます。先に閉じてください。開いていなければ \`${lock}\` を消してください。`,
      process: ({ file, by: process }) =>
        `\`${file}\` には、いま別のプロセス（${process}）が書いています。もう一度実行してください。`,
    },
  },
};
