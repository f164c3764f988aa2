/** Paper, head and foot of an episode's list. */

import { expect, test } from 'vitest';
import { frameMarks, lengthText, listPaper } from '../../../src/sheet/cut-list/cut-list-paper.js';
import { listOf, row } from '../../count/rows.js';
import { lookOf, textsOf } from '../laid.js';

test('paper stands upright, or lies on its side', () => {
  expect(listPaper(lookOf({ paper: 'A4' }), false)).toMatchObject({ widthMm: 210, heightMm: 297, scale: 1 });
  expect(listPaper(lookOf({ paper: 'A4' }), true)).toMatchObject({ widthMm: 297, heightMm: 210 });
});

test('the body lies between head and foot', () => {
  const { body, heightMm } = listPaper(lookOf({ paper: 'A3' }), false);
  expect(body.y).toBeCloseTo(6.5 + 11 * 1.4 + 2);
  expect(body.y + body.height).toBeCloseTo(heightMm - 6.5 - 4 * 1.4 - 1);
});

test('lengths are in seconds, in the west in feet', () => {
  expect(lengthText(listPaper(lookOf(), false), 132, 24)).toBe('5+12');
  expect(lengthText(listPaper(lookOf({ convention: 'west' }), false), 132, 24)).toBe("8'04");
});

test('the head says how many cuts there are, how long they run and what was allowed', () => {
  const rows = [row('1', { time: 120 }), row('2', { time: 24 })];
  const texts = (budget: number | null, convention: 'japan' | 'west' = 'japan') => {
    const look = lookOf({ convention });
    return textsOf(frameMarks(listPaper(look, false), listOf(rows, { budget }), look, 'Cut list', 1, 3)).map(
      ({ text }) => text,
    );
  };
  for (const text of ['Samphire Ferry', '3', 'Cut list', '2', '6+0', '7+0', '1 / 3', 'Cut list  page 1 / 3'])
    expect(texts(168)).toContain(text);
  expect(texts(null)).toContain('none');
  expect(texts(168, 'west')).toContain("9'00  (6+0)");
});
