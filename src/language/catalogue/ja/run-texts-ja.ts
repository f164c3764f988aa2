import { ranges } from '../../../words/number-format.js';
import type { Activity, NoEarlierPrint, PageChanges, RunTexts } from '../catalogue-entry.js';

const cuts = (count: number): string => `${count}カット`;
const errors = (count: number): string => `誤り${count}件`;
const warnings = (count: number): string => `注意${count}件`;

const ACTIVITIES: Readonly<Record<Activity, string>> = {
  printing: '印刷中',
  comparing: '比較中',
  painting: '撮影中',
};

function notCompared(reason: NoEarlierPrint): string {
  switch (reason.why) {
    case 'not-printed':
      return '初めての印刷';
    case 'new':
      return '新規';
    case 'no-print':
      return '同じ名前のファイルはこのプログラムの印刷ではないので比べられない';
    case 'one-cut':
      return '同じ名前のファイルは1カットだけの印刷なので比べられない';
    case 'several-cuts':
      return '同じ名前のファイルは複数カットの印刷なので比べられない';
    case 'pages-missing':
      return '前のファイルに全部のページがなかったため';
    case 'new-since':
      return `${reason.revision} より後の新規`;
    case 'errors-at':
      return `${reason.revision} では誤りがあったため`;
  }
}

/** Pages as they are called on Japanese paper; a label itself is the same in all languages. */
const PAGES: Readonly<Record<string, string>> = {
  charts: 'チャート',
  camera: 'カメラ図',
  table: '移動表',
  strip: '目盛り',
  overlay: 'フレーム',
};

const pageName = (label: string): string => label.replace(/^[a-z]+(?= \d)/, (word) => PAGES[word] ?? word);

function pagesDiffer({ cut, pages, differing, labels, gone, notCompared: why }: PageChanges): string {
  if (why !== null) return `カット${cut}：${pages === 1 ? '' : '全'}${pages}ページ（${notCompared(why)}）`;
  const lost = gone.length === 0 ? '' : `。なくなったページ：${gone.map(pageName).join('、')}`;
  if (differing.length === 0) return `カット${cut}：${pages}ページとも違いなし${lost}`;
  const called = labels?.map(({ label, fresh }) => `${pageName(label)}${fresh ? ' 新規' : ''}`);
  const named = called ? `（${called.join('、')}）` : '';
  return `カット${cut}：${pages}ページのうち ${ranges(differing)}${named}${lost}`;
}

export const run: RunTexts = {
  cuts,
  sharedFiles: (count) => `共有ファイル${count}個`,
  pages: (count) => `${count}ページ`,
  files: (count) => `${count}ファイル`,
  errors,
  warnings,
  tally: (errorCount, warningCount, hints) =>
    [
      ...(errorCount > 0 ? [errors(errorCount)] : []),
      ...(warningCount > 0 ? [warnings(warningCount)] : []),
      ...(hints > 0 ? [`ヒント${hints}件`] : []),
    ].join('、') || '問題なし',
  checked: (what, tally) => `${what}を調べました：${tally}`,
  wrote: (name, what) => `${name} を書きました${what === undefined ? '' : `：${what}`}`,
  wroteToStandardOutput: (what) => `${what}を標準出力に書きました`,
  wroteFiles: (files, pages, folder) =>
    `${folder === null ? '' : `${folder} に`}${files}ファイル${pages === null ? '' : `（${pages}ページ）`}を書きました`,
  notPrinted: (names, more) => `印刷していません：${names.join('、')}${more > 0 ? ` ほか${more}カット` : ''}`,
  cut: (number) => `カット${number}`,
  seeManifest: (file) => `${file} を見る`,
  nothingToPrint: '印刷するものなし',
  faultOfProgram: 'プログラムの失敗',
  notWritten: '書けません',
  unchanged: (count, revision) => `${cuts(count)}は${revision === null ? '' : `${revision} から`}変更なし`,
  pagesDiffer,
  cutGone: (number) => `カット${number}：もう話数にないカット`,
  cutsReordered: 'カットの順が変わりました',
  orphanedFile: (file, cut, now) =>
    `${file}：${now === null ? 'もう話数にないカット' : `カット${cut}は今は ${now} に印刷`}`,
  progress: (activity, done, total, of) =>
    `${ACTIVITIES[activity]}：${total}${of === 'cuts' ? 'カット' : 'コマ'}のうち${done}`,
  progressBar: (activity, done, total) => `${ACTIVITIES[activity]} ${done}/${total}`,
  shard: (part, count, all) => `分割 ${part}：${cuts(all)}のうち${cuts(count)}`,
  wrotePlan: (file, count, command) => `${file} を書きました：${cuts(count)}。\`${command}\` で印刷します`,
  notExported: (count, tally) => `${cuts(count)}は書き出していません：${tally}`,
  noEdit: (withErrors, tally) =>
    `編集は書いていません：${withErrors > 0 ? `${cuts(withErrors)}に誤りあり、` : ''}${tally}`,
  tableOf: (table, count) => `${cuts(count)}の ${table}`,
  notShot: (count, tally) => `${cuts(count)}は撮影していません：${tally}`,
  film: (length, pictures, frames, missing, asked) => {
    const drawn =
      missing === 0
        ? ''
        : missing === asked
          ? '。絵はまだ1枚もありません'
          : `。絵${asked}枚のうち${missing}枚がまだありません`;
    return `${length}、${pictures ? `画像${frames}枚` : `${frames}コマ`}${drawn}`;
  },
  noNote: '違いがないので、リテイク票は印刷しません',
  mendsWritten: (count) => `${count}か所を直しました`,
  nothingWritten: '何も書き込みませんでした',
  rowWritten: (file, { cut, stage, state, date, person }) =>
    `${file}：カット${cut}：${stage} ${state}、${date}${person === '' ? '' : `、${person}`}`,
  compared: (count, differ) =>
    `${cuts(count)}を比べました：${differ === 0 ? '違いなし' : `${cuts(differ)}に違いあり`}`,
  unreadStatements: (file, count) => `${file}：読めない${count}行は、そのままにしました`,
  formatted: (files, { changed, same, unread, failed }, dry) =>
    `${files}ファイル：${[
      ...(changed > 0 ? [`${changed}個を${dry ? '整える必要あり' : '整えました'}`] : []),
      ...(same > 0 ? [`変更なし ${same}個`] : []),
      ...(unread > 0 ? [`${unread}個に読めない行あり`] : []),
      ...(failed > 0 ? [`${failed}個は整えていません`] : []),
    ].join('、')}`,
  numbered: (count, { changed, rest, failed }, dry, tally) =>
    `${cuts(count)}：${[
      ...(changed > 0 ? [`${changed}カットの番号を${dry ? '確定する必要あり' : '確定しました'}`] : []),
      ...(rest > 0 ? [`${rest}カットは足すものなし`] : []),
      ...(failed > 0 ? [`${failed}カットは確定していません（${tally}）`] : []),
    ].join('、')}`,
  heard: (count, { changed, rest, failed }, how, tally) =>
    `${cuts(count)}：${[
      ...(how === 'lines' ? [`${rest + changed}カットを聞きました`] : []),
      ...(how !== 'lines' && changed > 0
        ? [`${changed}カット${how === 'written' ? 'に書きました' : 'に書くものあり'}`]
        : []),
      ...(how !== 'lines' && rest > 0 ? [`${rest}カットは書くものなし`] : []),
      ...(failed > 0 ? [`${failed}カットは聞けません（${tally}）`] : []),
    ].join('、')}`,
  pinned: (stretches, dry) =>
    `${dry ? '番号を確定していない絵' : '番号を確定'}：${stretches.map(({ from, to }) => (from === to ? from : `${from}～${to}`)).join('、')}`,
  named: (drawings, dry) =>
    `${dry ? '番号を確定していない絵：' : ''}${drawings.map(({ cel, name }) => `${cel} は ${name}`).join('、')}`,
  notUsed: (drawings) => `もう使わない絵：${drawings.map(({ cel, name }) => `${cel}（${name}）`).join('、')}`,
  sayWhich: (file, count, of, command, answers) =>
    `${file}：${of === 'new' ? '増えた' : '減った'}${count}枚がどれかを指定してください：${command} ${answers.join(' または ')}`,
  sayPassage: (file) =>
    `${file}：どの中割りが紙にあるかを \`cels\` の行に書いてから、もう一度番号を確定してください`,
  gitDiff: {
    unsettled: (path) => `${path}：マージが済んでいません`,
    notCompared: (file, broken) =>
      `${file}：${{ old: '前の版に', new: '新しい版に', both: '両方の版に' }[broken]}誤りがあるので比べていません`,
    nothingChanges: (file) => `${file}：シートは変わりません`,
    cutNew: (file, cut) => `${file}：カット${cut} 新規`,
    cutDropped: (file, cut) => `${file}：カット${cut} 欠番`,
    onlyShared: (file) => `${file}：カットが共有する内容だけです`,
  },
  next: (command) => `次は：${command}`,
  addToManifest: (_, file) => `まだ episode.yaml のカットにありません。${file} の \`cuts:\` に足してください`,
  watching: (count, withErrors) =>
    `${cuts(count)}を監視しています${withErrors > 0 ? `（${cuts(withErrors)}に誤りあり）` : ''}。Ctrl-C で終わります`,
  nothingChanges: (name) => `${name}：紙は変わりません`,
  stillHolds: (file, count) => `${file}：${errors(count)}。前の内容のまま続けます`,
  lost: (name, gone) => `${name} ${gone ? 'がなくなりました' : 'はもう見張りません'}`,
  leftAsItIs: (pdf) => `。${pdf} はそのままです`,
  kept: (name, what, kept) =>
    `${name}：${what}。${kept === null ? '印刷していません' : `${kept} は前のままです`}`,
  noPage: (name) => `${name}：印刷するページがありません`,
  printed: (name, pdf, pages) => `${name} → ${pdf}、${pages}ページ`,
  shownAt: (url) => `ブラウザーでは ${url} で見られます`,
  leftOutOfFilm: (count) => `テキストに誤りがあるので、${cuts(count)}を除いています。`,
};
