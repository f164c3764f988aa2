import { expect, test } from 'vitest';
import { called, leadingTradeWord } from '../../src/language/trade-word-faults.js';
import { tradeWord } from '../../src/language/trade-words.js';
import { plain } from './report/read-report.js';

test.each([
  ['T.U full@1 > B@24', 'truck'],
  ['zoom in on her', 'truck'],
  ['カット12「灯台」', 'cut'],
  ['カットイン 12', undefined],
  ['seven 12', undefined],
  ['se12', undefined],
])('%s begins with a word for %s', (text, here) => expect(leadingTradeWord(text)?.here).toBe(here));

test('what is said of a word depends on what it is here', () => {
  expect(called(tradeWord('dialogue')!, 'Dialogue')).toEqual({
    variant: 'called',
    found: 'Dialogue',
    here: 'voice',
  });
  expect(called(tradeWord('hold')!, 'hold').variant).toBe('drawn');
  expect(called(tradeWord('blur')!, 'blur').variant).toBe('instead');
});

test('a statement in words of the trade is offered as it is written here', () => {
  expect(plain('zoom in full@1 -> B@2 seconds')).toContain('\n    truck full@1 > B@2+0\n');
  expect(plain('zoom in on her')).toMatch(
    /is called `truck` here\.\n.*\n.*\n.*\n {4}note: written like this: truck/,
  );
});

test.each([
  ['指示 1+12 「まばたき」', 'note 1+12 「まばたき」'],
  ['指示 「波は弱く」', 'memo 「波は弱く」'],
  ['同ポジ 3', 'same 3'],
  ['兼用 B 6/B', 'level B reuse 6/B'],
])('%s is mended to %s', (text, mended) => expect(plain(text)).toContain(`\n    ${mended}\n`));

test('what stands in no cut names its command', () => {
  expect(plain('リテイク 3')).toContain('the command is `cutwright progress 12 key retake`');
  expect(plain('兼用 B')).toContain('written like this: level C reuse 8/C');
});

test.each([
  ['wipe in from left 1..12', 'from left', 'wipe in right 1..12'],
  ['wipe from above out 1..12', 'from above', 'wipe out down 1..12'],
  ['pull BG 右から 2mm/f 1..12', '右から', 'pull BG left 2mm/f 1..12'],
])('%s: it goes to the other side, and the message says so', (text, found, mended) => {
  const said = plain(text);
  expect(said).toMatch(`says where it goes to, not where it comes from: \`${found}\` is written`);
  expect(said).toContain(`\n    ${mended}\n`);
});

test('a wipe from the left is offered as neither in nor out', () => {
  expect(plain('wipe from left 1..12')).not.toContain('to mend');
});

test('a word of the language is none of the trade', () => {
  expect(plain('track 5')).not.toContain('is called');
  expect(plain('track in full@1 > B@24')).toContain('`track in` is called `truck` here.');
});

test('a statement of many thousand characters is not looked at', () => {
  expect(plain(`time ${'2 seconds '.repeat(300)}`)).not.toContain('is written');
});
