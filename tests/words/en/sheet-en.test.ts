/** The form in English. */

import { describe, expect, test } from 'vitest';
import { sheetIn } from '../../../src/words/en/sheet-en.js';
import { JAPAN_TERMS, WEST_TERMS } from '../../../src/words/en/terms-en.js';

const sheet = sheetIn(JAPAN_TERMS);
const west = sheetIn(WEST_TERMS);

describe('cuts that show a level again', () => {
  const lent = (...cuts: string[]) =>
    sheet.lent(
      'A',
      cuts.map((cut) => ({ cut, as: 'B' })),
    );

  test('are listed, the last one after “and”', () => {
    expect(lent('12')).toBe('A is shown again in cut 12 (as B)');
    expect(lent('12', '15')).toBe('A is shown again in cuts 12 (as B) and 15 (as B)');
    expect(lent('12', '15', '20')).toBe('A is shown again in cuts 12 (as B), 15 (as B) and 20 (as B)');
  });

  test('are short over a column', () => {
    expect(sheet.lentShort(['12', '15'])).toBe('again in c12 c15');
  });
});

describe('handles', () => {
  test('name the ends that there are', () => {
    expect(sheet.handles('0+12', '1+0', '6+12')).toBe(
      'Handles (shaded rows): 0+12 before the cut, 1+0 after it. Sheet 6+12 in all.',
    );
    expect(sheet.handles('', '1+0', '6+0')).toBe('Handles (shaded rows): 1+0 after it. Sheet 6+0 in all.');
    expect(sheet.handles('0+12', '', '5+12')).toBe(
      'Handles (shaded rows): 0+12 before the cut. Sheet 5+12 in all.',
    );
  });

  test('in a line of the terminal, of a western form about a scene', () => {
    expect(sheet.handlesLine('', '1+0', '6+0')).toBe('handles 1+0 after the cut; sheet 6+0 in all');
    expect(west.handlesLine('0+12', '', '5+12')).toBe('handles 0+12 before the scene; sheet 5+12 in all');
  });
});

test('only kinds of drawings that there are are counted, reused and painted ones besides', () => {
  const counts = { keys: 1, breakdowns: 2, inbetweens: 9, reused: 3, backgrounds: 1 };
  expect(sheet.drawingCounts(counts)).toBe(
    '1 key, 2 breakdowns, 9 in-betweens, 3 reused besides, 1 background besides',
  );
  expect(sheet.drawingCounts({ keys: 0, breakdowns: 0, inbetweens: 4, reused: 0, backgrounds: 0 })).toBe(
    '4 in-betweens',
  );
  expect(sheet.drawingCounts({ keys: 0, breakdowns: 0, inbetweens: 0, reused: 0, backgrounds: 0 })).toBe('');
});

test('change bars are explained where there are some', () => {
  expect(sheet.changed('HEAD', true)).toBe('Changed against HEAD (bar: rows that differ)');
  expect(sheet.changed('HEAD', false)).toBe('Changed against HEAD');
});
