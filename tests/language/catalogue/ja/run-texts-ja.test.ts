import { expect, test } from 'vitest';
import { loadMessages, runTexts } from '../../../../src/language/message.js';

await loadMessages('ja');
const run = runTexts('ja');

test('what is counted has its counter', () => {
  expect(run.tally(1, 2, 3)).toBe('誤り1件、注意2件、ヒント3件');
  expect(run.tally(0, 0, 0)).toBe('問題なし');
  expect(run.checked(run.cuts(3), run.tally(0, 1, 0))).toBe('3カットを調べました：注意1件');
  expect(run.compared(3, 1)).toBe('3カットを比べました：1カットに違いあり');
});

test('files that were written are named, or counted with their folder', () => {
  expect(run.wrote('c1.pdf', run.pages(3))).toBe('c1.pdf を書きました：3ページ');
  expect(run.wroteFiles(3, 9, 'out')).toBe('out に3ファイル（9ページ）を書きました');
  expect(run.wroteFiles(3, null, null)).toBe('3ファイルを書きました');
});

test('a dry run says what would be done', () => {
  const of = { changed: 1, rest: 2, failed: 1 };
  expect(run.numbered(4, of, true, '誤り1件')).toBe(
    '4カット：1カットの番号を確定する必要あり、2カットは足すものなし、1カットは確定していません（誤り1件）',
  );
  expect(run.heard(1, { changed: 1, rest: 0, failed: 0 }, 'written', '')).toBe(
    '1カット：1カットに書きました',
  );
});

test('a film says what is not drawn yet', () => {
  expect(run.film('5+0', false, 120, 0, 9)).toBe('5+0、120コマ');
  expect(run.film('5+0', true, 120, 2, 9)).toBe('5+0、画像120枚。絵9枚のうち2枚がまだありません');
  expect(run.film('5+0', false, 120, 9, 9)).toBe('5+0、120コマ。絵はまだ1枚もありません');
});

test('which pages of a cut differ from an earlier print, or why none was compared', () => {
  const changes = {
    cut: '12',
    pages: 5,
    differing: [2, 3],
    labels: null,
    gone: [],
    notCompared: null,
  } as const;
  const labels = [{ label: '1b', fresh: true }];
  expect(run.pagesDiffer(changes)).toBe('カット12：5ページのうち 2-3');
  expect(run.pagesDiffer({ ...changes, differing: [2], labels, gone: ['1c'] })).toBe(
    'カット12：5ページのうち 2（1b 新規）。なくなったページ：1c',
  );
  const charts = [{ label: 'charts 1', fresh: true }];
  expect(run.pagesDiffer({ ...changes, differing: [4], labels: charts, gone: ['table 2'] })).toBe(
    'カット12：5ページのうち 4（チャート 1 新規）。なくなったページ：移動表 2',
  );
  expect(run.pagesDiffer({ ...changes, differing: [], gone: ['6'] })).toBe(
    'カット12：5ページとも違いなし。なくなったページ：6',
  );
  expect(run.pagesDiffer({ ...changes, notCompared: { why: 'not-printed' } })).toBe(
    'カット12：全5ページ（初めての印刷）',
  );
  const since = { why: 'new-since', revision: 'v2' } as const;
  expect(run.pagesDiffer({ ...changes, pages: 1, notCompared: since })).toBe(
    'カット12：1ページ（v2 より後の新規）',
  );
});

test.each([
  [{ why: 'new' }, '新規'],
  [{ why: 'no-print' }, '同じ名前のファイルはこのプログラムの印刷ではないので比べられない'],
  [{ why: 'one-cut' }, '同じ名前のファイルは1カットだけの印刷なので比べられない'],
  [{ why: 'several-cuts' }, '同じ名前のファイルは複数カットの印刷なので比べられない'],
  [{ why: 'pages-missing' }, '前のファイルに全部のページがなかったため'],
  [{ why: 'errors-at', revision: 'v2' }, 'v2 では誤りがあったため'],
] as const)('why nothing was compared: %j', (notCompared, said) =>
  expect(
    run.pagesDiffer({ cut: '1', pages: 2, differing: [], labels: null, gone: [], notCompared }),
  ).toContain(said),
);

test('files without a cut, pinned drawings, versions with errors', () => {
  expect(run.orphanedFile('a.pdf', '3', null)).toBe('a.pdf：もう話数にないカット');
  expect(run.orphanedFile('a.pdf', '3', 'b.pdf')).toBe('a.pdf：カット3は今は b.pdf に印刷');
  const stretches = [
    { from: 'A1', to: 'A4' },
    { from: 'B1', to: 'B1' },
  ];
  expect(run.pinned(stretches, true)).toBe('番号を確定していない絵：A1～A4、B1');
  expect(run.named([{ cel: 'A5', name: '3' }], false)).toBe('A5 は 3');
  const idle = [
    { cel: 'A2', name: '1.1' },
    { cel: 'A3', name: '1.2' },
  ];
  expect(run.notUsed(idle.slice(0, 1))).toBe('もう使わない絵：A2（1.1）');
  expect(run.notUsed(idle)).toBe('もう使わない絵：A2（1.1）、A3（1.2）');
  expect(run.gitDiff.notCompared('a.cut', 'old')).toBe('a.cut：前の版に誤りがあるので比べていません');
  expect(run.gitDiff.notCompared('a.cut', 'both')).toBe('a.cut：両方の版に誤りがあるので比べていません');
});
