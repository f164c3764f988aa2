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
