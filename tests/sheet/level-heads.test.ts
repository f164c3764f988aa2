/** What stands over the columns of levels. */

import { expect, it } from 'vitest';
import { headRows, numberRanges } from '../../src/sheet/level-heads.js';
import type { SheetGeometry } from '../../src/sheet/sheet-geometry.js';
import { laid, said, textsOf } from './laid.js';

it('the heads count each level over its column, with what is new, missing and reused', () => {
  const pinned = said(laid('cut 1\ntime 1+0\nA: 1--2-3..\ncels A 1 1.1 1.2 2 4\n')[0]!);
  // Over a narrow column there is no room for the list; the memo has it.
  expect(pinned).toMatch(/A 6 7 (see memo|→ memo)/);
  expect(pinned).toContain('A: added A6–7, not used A5');
  const reused = said(laid('cut 1\ntime 1+0\nC: 1-2..\nlevel C reuse 8/C\n')[0]!);
  expect(reused).toContain('C: reuse of cut 8, level C');
});

it('levels stand bottom-first in Japan and top-first in the west', () => {
  const three = 'cut 1\ntime 1+0\nstack BG A B C\nA: 1..\nB: 1..\nC: 1..\n';
  const order = (convention: 'japan' | 'west'): string => {
    const { marks, rows } = laid(three, { convention })[0]!;
    return textsOf(marks)
      .filter(({ text, y }) => /^[ABC]$/.test(text) && y > rows[0]!.y - 25 && y < rows[0]!.y)
      .sort((a, b) => a.x - b.x)
      .slice(0, 3)
      .map(({ text }) => text)
      .join('');
  };
  expect(order('japan')).toBe('ABC');
  expect(order('west')).toBe('CBA');
});

it('neighbours among numbers are joined', () => {
  expect(numberRanges([4], 'A')).toBe('A4');
  expect(numberRanges([1, 2, 3, 5, 7, 8], 'B')).toBe('B1–3 B5 B7–8');
  expect(numberRanges([], 'A')).toBe('');
});

it('the bands of a head fill it', () => {
  const { heads, scale } = { heads: { x: 0, y: 0, width: 10, height: 20 }, scale: 1 };
  const rows = Object.values(headRows({ heads, scale } as SheetGeometry)).map(({ height }) => height);
  expect(rows.reduce((sum, one) => sum + one)).toBeCloseTo(20);
});
