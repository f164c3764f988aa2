import { expect, test } from 'vitest';
import { catalogue } from '../../src/language/catalogue/index.js';
import { laterWordsOf } from '../../src/language/grammar-queries.js';
import { byWord } from '../../src/language/statements/statement-table.js';
import { drawnTradeWord, TRADE_WORDS, tradeWord, tradeWordKey } from '../../src/language/trade-words.js';
import { statementPages } from '../../src/reference/statement-pages.js';

test('every entry leads to a page of the reference, and a statement begins with a word of the language', () => {
  const inside = new Set([...byWord.values()].flatMap(laterWordsOf));
  for (const { page, here, as, starts = [] } of TRADE_WORDS) {
    expect([...Object.keys(statementPages), ...inside, ...Object.keys(catalogue)], here).toContain(page);
    for (const start of as === 'statement' ? [here, ...starts] : [])
      expect([...byWord.keys()]).toContain(start.split(' ')[0]);
  }
});

test('no word is a statement of the language, and none stands twice', () => {
  const keys = TRADE_WORDS.flatMap(({ typed }) => typed.map(tradeWordKey));
  expect(keys.filter((key) => key === '' || byWord.has(key))).toEqual([]);
  const once = TRADE_WORDS.map(({ typed }) => new Set(typed.map(tradeWordKey)));
  const twice = once.flatMap((own, i) =>
    [...own].filter((key) => once.some((other, j) => j < i && other.has(key))),
  );
  expect(twice).toEqual([]);
  expect(TRADE_WORDS.length).toBeGreaterThan(60);
});

test.each([
  ['T.U', 'truck'],
  ['t/u', 'truck'],
  ['ＴＵ', 'truck'],
  ['zoom-in', 'truck'],
  ['Zoom In', 'truck'],
  ['つけPAN', 'follow'],
  ['セリフ', 'voice'],
  ['O.L', 'overlap'],
])('%s is %s', (typed, here) => expect(tradeWord(typed)?.here).toBe(here));

test('原画 is whoever draws the keys at the start of a line, and a key in a timeline', () => {
  expect(tradeWord('原画')?.here).toBe('artist');
  expect(drawnTradeWord('原画')?.here).toBe('1');
  expect(drawnTradeWord('止メ')?.here).toBe('1..');
  expect(drawnTradeWord('セリフ')).toBeUndefined();
});

test.each([
  ['同ポジ', 'same'],
  ['指示', 'note'],
  ['欠番', '_'],
  ['BOOK', 'stack BG A BOOK'],
  ['リテイク', 'cutwright progress 12 key retake'],
  ['進行', 'cutwright progress'],
])('%s is written %s', (typed, here) => expect(tradeWord(typed)?.here).toBe(here));

test('作監 is a stage of the manifest', () => {
  expect(tradeWord('作監')?.here).toMatch(/^stages: \[.*\bsupervisor\b/);
});

test('other words are none', () => expect(tradeWord('lantern')).toBeUndefined());
