/** Papers. */

import { expect, test } from 'vitest';
import { largerPrint, PAPER_MM, smallestTextMm } from '../../src/sheet/paper-sizes.js';
import { PAPERS } from '../../src/shot/settings.js';

// ISO 216: the sides of A sizes are as 1 to the square root of 2, to the millimetre; JIS P 0138 the same for B.
test.each(['A3', 'A4', 'B4', 'B5'] as const)('the sides of %s are as 1 to √2', (paper) => {
  const { widthMm, heightMm } = PAPER_MM[paper];
  expect(Math.abs(heightMm - widthMm * Math.SQRT2)).toBeLessThan(1);
});

test('all papers stand upright', () => {
  for (const paper of PAPERS) expect(PAPER_MM[paper].heightMm).toBeGreaterThan(PAPER_MM[paper].widthMm);
});

test('print is as large as on A4, larger on larger papers, up to 1.4 times', () => {
  expect([largerPrint('A4'), largerPrint('B5')]).toEqual([1, 1]);
  expect(largerPrint('B4')).toBeCloseTo(257 / 210);
  expect(largerPrint('A3')).toBe(1.4);
});

test('the smallest print is 5 pt on papers that are copied down, 5.5 pt on the others', () => {
  const points = (paper: 'A3' | 'A4' | 'tabloid' | 'letter') => (smallestTextMm(paper) / 25.4) * 72;
  expect(['A3', 'tabloid'].map((paper) => points(paper as 'A3'))).toEqual([
    expect.closeTo(5),
    expect.closeTo(5),
  ]);
  expect(['A4', 'letter'].map((paper) => points(paper as 'A4'))).toEqual([
    expect.closeTo(5.5),
    expect.closeTo(5.5),
  ]);
});
