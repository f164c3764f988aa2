import { describe, expect, test } from 'vitest';
import {
  anyOf,
  around,
  capital,
  codePoint,
  drawingList,
  frameList,
  meant,
  neighbourName,
  notLent,
  oneOf,
  paperMm,
  percent,
  rows,
  sheetRows,
  statementName,
  taken,
} from '../../../../src/language/catalogue/en/terms-texts.js';

test('a guess ends a sentence, or what stands there without one', () => {
  expect(meant('walk')).toBe('; did you mean `walk`?');
  expect(meant(null)).toBe('.');
  expect(meant(null, '; say it.')).toBe('; say it.');
});

test('a statement is named by its word, a timeline by its kind', () => {
  expect([statementName('pan'), statementName('')]).toEqual(['`pan` statement', 'timeline']);
});

test('what is wanted is told by its name, a sign as it is', () => {
  expect(anyOf(['name', '`:`'])).toBe('a name or `:`');
  // No key of the table, but of every object.
  expect(anyOf(['toString' as never])).toBe('toString');
});

test('lists', () => {
  expect(around(['a', 'b', 'a'])).toBe('`a` → `b` → `a`');
  expect(oneOf(['A4', 'A3', 'B4'])).toBe('A4, A3 or B4');
  expect(drawingList([])).toBe('none');
  expect(drawingList(['1', '2', '3', '4', '5', '6'])).toBe('1, 2, 3, 4, 5, 6');
  expect(drawingList(['1', '2', '3', '4', '5', '6', '7'])).toBe('1, 2, 3, 4, 5, 6, …');
});

test('rows of handles are told apart from the time', () => {
  expect(sheetRows(96, 96)).toBe('96');
  expect(sheetRows(96, 108)).toBe('96 + 12 handle');
});

test('names and characters', () => {
  expect(capital('the file')).toBe('The file');
  expect(neighbourName({ cut: '8', file: 'c.cut' })).toBe('cut 8');
  expect(neighbourName({ cut: '', file: 'c.cut' })).toBe('`c.cut`');
  expect([codePoint(7), codePoint(0x1f3ac)]).toEqual(['U+0007', 'U+1F3AC']);
});

test('shares have one decimal at most, paper is never too small', () => {
  expect([percent(0.5), percent(0.8265)]).toEqual(['50 %', '82.7 %']);
  expect([paperMm(142.875), paperMm(301.001), paperMm(24)]).toEqual(['142.88', '301.01', '24']);
  // Rounding of the machine is no paper.
  expect(paperMm(24 + 1e-10)).toBe('24');
});

test.each([
  [[3], 'frame 3'],
  [[3, 4], 'frames 3-4'],
  [[3, 4, 5, 6, 7, 12, 15, 16], 'frames 3-7, 12, 15-16'],
  [[1, 3, 5, 7, 9], 'frames 1, 3, 5, 7 and others'],
])('frames %j are %s', (frames, text) => {
  expect(frameList(frames, rows.plain)).toBe(text);
});

describe('why a level is not lent', () => {
  test.each([
    [
      { why: 'circle', links: ['8/C', '9/A', '8/C'] },
      'the levels reuse each other in a circle, 8/C → 9/A → 8/C',
    ],
    [{ why: 'no-cut', cut: '80' }, 'the episode has no cut 80'],
    [{ why: 'too-far', most: 9 }, 'the level goes through more than 9 cuts'],
    [{ why: 'errors', cut: '8' }, 'cut 8 has errors'],
    [{ why: 'no-level', cut: '8', level: 'C', guess: null }, 'cut 8 has no level C'],
    [{ why: 'no-level', cut: '8', level: 'C', guess: 'CC' }, 'cut 8 has no level C (did you mean CC?)'],
    [
      { why: 'not-lent-either', cut: '8', level: 'C' },
      'level C of cut 8 itself reuses one that is not to be found',
    ],
  ] as const)('%j', (reason, text) => {
    expect(notLent(reason)).toBe(text);
  });
});

describe('what a key of the manifest takes', () => {
  test.each([
    [{ value: 'whole', least: 1, most: 120 }, 'a whole number from 1 to 120'],
    [{ value: 'choice', words: ['ja', 'en'] }, 'ja or en'],
    [{ value: 'dpi' }, 'a resolution such as `200dpi`, from 10 to 10000'],
    [{ value: 'pixels' }, 'a width and a height in pixels such as `1920x1080`, each from 16 to 32768'],
    [
      { value: 'running-time' },
      'a running time such as `1320+0` (seconds + frames), of one frame to ten hours',
    ],
    [{ value: 'cuts-of-artist' }, 'the cuts that the artist draws, such as `[12, 13]`'],
    [{ value: 'cuts' }, 'a file or a pattern such as `cuts/*.cut`, or a list of them'],
    [
      { value: 'size', least: 1, most: 9 },
      'a width and a height such as `254mm x 142.875mm`, each from 1 to 9 mm',
    ],
    [
      { value: 'rows', fault: { unit: 'seconds', rows: 24, most: 144, near: 72, paper: 'A4' } },
      'a number of rows: a page has whole seconds of 24 rows, on A4 from 24 to 144; 72 would do',
    ],
  ] as const)('%j', (takes, text) => {
    expect(taken(takes)).toBe(text);
  });
});

test('rows that the sheet names have their frames behind them', () => {
  expect(rows.named('2+9', 57)).toBe('frame 2+9 (57)');
  expect(
    frameList([3, 4, 57], (from, to) => (from < 24 ? rows.plain(from, to) : rows.named('2+9', from, to))),
  ).toBe('frames 3 to 4, frame 2+9 (57)');
});
