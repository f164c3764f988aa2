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
