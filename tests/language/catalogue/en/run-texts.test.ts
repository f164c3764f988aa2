import { expect, test } from 'vitest';
import { runTexts } from '../../../../src/language/message.js';

const run = runTexts('en');

test('what is counted is one or many', () => {
  expect(run.tally(1, 2, 0)).toBe('1 error, 2 warnings');
  expect(run.tally(0, 0, 0)).toBe('nothing wrong');
  expect(run.compared(3, 1)).toBe('3 cuts compared: 1 differs');
  expect(run.compared(1, 0)).toBe('1 cut compared: all the same');
  expect(run.addToManifest(2, 'episode.yaml')).toBe(
    'the manifest does not list them all yet: add them to `cuts:` in episode.yaml',
  );
});

test('files that were written are named, or counted with their folder', () => {
  expect(run.wrote('c1.pdf', run.pages(3))).toBe('wrote c1.pdf: 3 pages');
  expect(run.wroteFiles(3, 9, 'out')).toBe('wrote 3 files, 9 pages, in out');
  expect(run.wroteFiles(3, null, 'out')).toBe('wrote 3 files in out');
  expect(run.wroteFiles(3, null, null)).toBe('wrote 3 files');
});

test('of many cuts that are not printed the rest is counted', () => {
  expect(run.notPrinted(['cut 1 (1 error)'], 0)).toBe('not printed: cut 1 (1 error)');
  expect(run.notPrinted(['cut 1 (1 error)'], 4)).toBe('not printed: cut 1 (1 error) and 4 more');
});

test('a dry run says what would be done', () => {
  const of = { changed: 1, rest: 0, failed: 0 };
  expect(run.numbered(1, of, true, '')).toBe('1 cut: 1 to be numbered');
  expect(run.heard(1, of, 'dry', '')).toBe('1 cut: 1 to be written');
  expect(run.heard(1, of, 'lines', '')).toBe('1 cut: 1 listened to');
  expect(run.formatted(2, { changed: 0, same: 2, unread: 0, failed: 0 }, false)).toBe(
    '2 files: 2 as they should be',
  );
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
  expect(run.pagesDiffer(changes)).toBe('cut 12: pages 2-3 of 5');
  expect(run.pagesDiffer({ ...changes, differing: [2], labels, gone: ['1c'] })).toBe(
    'cut 12: page 2 of 5 (1b new); no more: 1c',
  );
  expect(run.pagesDiffer({ ...changes, differing: [], gone: ['6'] })).toBe(
    'cut 12: no page of 5 differs; no more: 6',
  );
  expect(run.pagesDiffer({ ...changes, notCompared: { why: 'not-printed' } })).toBe(
    'cut 12: all 5 pages, not printed before',
  );
  const since = { why: 'new-since', revision: 'v2' } as const;
  expect(run.pagesDiffer({ ...changes, pages: 1, notCompared: since })).toBe('cut 12: 1 page, new since v2');
});

test.each([
  [{ why: 'new' }, 'new'],
  [{ why: 'no-print' }, 'as the file there is no print to compare with'],
  [{ why: 'one-cut' }, 'as the file there is of one cut'],
  [{ why: 'several-cuts' }, 'as the file there is of several cuts'],
  [{ why: 'pages-missing' }, 'as the file did not hold all'],
  [{ why: 'errors-at', revision: 'v2' }, 'as it had errors at v2'],
] as const)('why nothing was compared: %j', (notCompared, said) =>
  expect(
    run.pagesDiffer({ cut: '1', pages: 2, differing: [], labels: null, gone: [], notCompared }),
  ).toContain(said),
);

test('files without a cut, pinned drawings, versions with errors', () => {
  expect(run.orphanedFile('a.pdf', '3', null)).toBe('a.pdf: no cut of the episode any more');
  expect(run.orphanedFile('a.pdf', '3', 'b.pdf')).toBe('a.pdf: cut 3 goes to b.pdf now');
  const stretches = [
    { from: 'A1', to: 'A4' },
    { from: 'B1', to: 'B1' },
  ];
  expect(run.pinned(stretches, true)).toBe('not pinned: A1 to A4, B1');
  expect(run.named([{ cel: 'A5', name: '3' }], false)).toBe('A5 is 3');
  const idle = [
    { cel: 'A2', name: '1.1' },
    { cel: 'A3', name: '1.2' },
  ];
  expect(run.notUsed(idle.slice(0, 1))).toBe('A2 (1.1) is not used any more');
  expect(run.notUsed(idle)).toBe('A2 (1.1), A3 (1.2) are not used any more');
  expect(run.gitDiff.notCompared('a.cut', 'old')).toBe('a.cut: not compared, the old version has errors');
  expect(run.gitDiff.notCompared('a.cut', 'both')).toBe('a.cut: not compared, both versions have errors');
});
