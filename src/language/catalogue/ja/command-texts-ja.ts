import type { Texts } from '../catalogue-entry.js';
import type { TypingMessages } from '../command-codes.js';
import { meant, reasonInJapanese } from './terms-texts-ja.js';

/** Row and column are said, since a table is looked at in a program that shows them. */
const inCell =
  <P extends { readonly row: number; readonly column: number }>(sentence: (parameters: P) => string) =>
  (parameters: P): string =>
    `${parameters.row}行${parameters.column}列：${sentence(parameters)}`;

/** Of which frames one is missing or stands twice. */
const ofWhat = (level: string | null): string => (level === null ? 'シートの' : `セル${level}の`);

export const typing: Texts<TypingMessages> = {
  'number-two-counts': {
    title: '同じ原画間で枚数が2通りあり、番号を確定できない',
    explanation:
      'セルが同じ原画間を2回、違う枚数の中割りで通っています。別の絵ですが、後の方には `cels` の行に書ける名前がないので、番号を確定できません。枚数を合わせるか、後の方の行き先を 2a のような別の原画にしてください。このカットには何も書きませんでした。',
    message: ({ from, to, level, count }) =>
      `セル${level}の原画${from}→${to} の中割りが、ここでは${count}枚で、前と違います。番号を確定する名前がありません。`,
  },
  'would-overwrite': {
    title: 'ファイルがもうある',
    explanation:
      '新しいファイルを作るコマンドは、前のファイルに上書きしません。1つでもあると、何も書きません。別の名前かフォルダーにするか、前のファイルを移してください。',
    message: {
      'file-for-folder': ({ path }) => `\`${path}\` はファイルです。話数にはフォルダーが必要です。`,
      there: ({ paths }) =>
        `${paths.map((path) => `\`${path}\``).join('、')} がもうあるので、何も書きませんでした。`,
    },
  },
  'number-taken': {
    title: 'その番号のカットがもうある',
    explanation:
      '新しいカットには新しい番号が必要です。全角や先頭の 0 の違いは区別しません。012 は 12 です。間に入れるカットには、12A のように英字を付けます。',
    message: ({ cut, file }) => `カット${cut}はもうあります：\`${file}\`。`,
  },
  'watch-impossible': {
    title: 'ファイルを見張れない',
    explanation:
      '見張りを始められないか、続けられません。2つの `watch` が同じフォルダーに書くと互いに上書きするので、後の方を断ります。先の方を終えるか、1回で全部のカットを指定してください。ほかに、フォルダーがなくなった、ポートが使われている、これ以上見張れない、という場合があります。',
    message: {
      'second-watch': ({ folder, by }) =>
        `\`${folder}\` には、もう別の watch（${by === null ? 'このプロセス' : `プロセス ${by}`}）が書いています。それを終えるか、1回で全部のカットを指定してください。`,
      'folder-gone': ({ folder }) => `フォルダー \`${folder}\` がなくなったので、もう監視していません。`,
      system: ({ reason }) => `フォルダーを見張れません：${reasonInJapanese(reason)}。`,
      port: ({ port, kept }) =>
        `ポート ${port} では見せられません。${kept ? 'システムが取ってあります' : 'ほかのプログラムが使っています'}。ポートを書かなければ、空いているものを使います。`,
    },
  },
  'table-faulty': {
    title: '読めないコマ打ちの表',
    explanation:
      'カットの元にする CSV に問題があります。列の数が違う、コマが抜けている、同じコマが2回ある、絵でないものが書いてある、などです。場所は行と列で示します。表は `cutwright export --table exposures` の形か、1コマ1行・1セル1列で見出しが `frame,A,B` の形です。何も書きませんでした。',
    message: {
      empty: () => '表が空です。最初の行に列の名前を書いてください。',
      'open-quote': () => 'ここで開いた引用符が閉じていません。',
      'no-csv': ({ message }) => `CSV として読めません：\`${message}\`。`,
      'no-rows': inCell(() => '見出しの下に行がありません。'),
      'no-frame-column': inCell(
        () =>
          '最初の行に `frame` の列がありません。見出しは `frame,A,B`、書き出した表なら `cut,level,frame,…` です。',
      ),
      'no-level-column': inCell(() => 'コマの横にセルの列がありません。'),
      'row-length': inCell(({ columns, header }) => `この行は${columns}列ですが、見出しは${header}列です。`),
      'unknown-column': inCell(({ name, guess }) => `\`${name}\` という列は使いません${meant(guess)}`),
      'no-column': inCell(({ name }) => `\`${name}\` の列がありません。`),
      'no-cut-number': inCell(({ found }) => `\`${found}\` はカット番号ではありません。`),
      'no-level-name': inCell(({ found }) => `\`${found}\` はセルの名前（A、BG、ア など）ではありません。`),
      'no-frame': inCell(({ found }) => `\`${found}\` は 1 から数えるコマではありません。`),
      'no-drawing': inCell(
        ({ found }) =>
          `\`${found}\` は絵ではありません。原画は 3 か 3a、中割りは 1.2 か 1>3.2、空セルは x です。`,
      ),
      'no-kind': inCell(
        ({ found }) =>
          `\`${found}\` は \`key\`（原画）、\`breakdown\`（中割り参考）、\`inbetween\`（中割り）、\`empty\`（空セル）のどれでもありません。`,
      ),
      'no-cel': inCell(({ found }) => `\`${found}\` は動画番号ではありません。`),
      'cel-twice': inCell(({ drawing }) => `絵 ${drawing} か、その番号が、前と食い違っています。`),
      'level-twice': inCell(({ level }) => `セル${level}の列が2つあります。`),
      uneven: inCell(
        ({ cut, level, frames, longest, most }) =>
          `${cut === '' ? '' : `カット${cut}の`}セル${level}は${frames}コマ、セル${longest}は${most}コマです。`,
      ),
      'too-many-frames': inCell(({ most }) => `1カットは${most}コマまでです。`),
      'frame-again': inCell(
        ({ frame, wanted, level }) =>
          `${ofWhat(level)}${frame}コマ目がもう一度あります。次は${wanted}コマ目です。`,
      ),
      'frame-missing': inCell(
        ({ frame, wanted, level }) => `${frame}コマ目の前に、${ofWhat(level)}${wanted}コマ目がありません。`,
      ),
      'kind-without-drawing': inCell(({ kind }) => `\`${kind}\` の行に絵がありません。`),
      'kind-unfit': inCell(({ drawing, kind }) => `絵 ${drawing} は \`${kind}\` にできません。`),
    },
  },
  'draft-unlike': {
    title: '表のとおりには書けないセル',
    explanation:
      '表から作ったテキストは同じコマを見せますが、このセルの絵の名前、中割り参考、番号に違う所があります。表には原画間の一部しかなく、ほかの中割りの場所がテキストにないためです。セルを見て、手で直してください。',
    message: ({ level, cut }) =>
      `カット${cut}のセル${level}：名前、中割り参考、番号の一部が、表のとおりには書けませんでした。`,
  },
};
