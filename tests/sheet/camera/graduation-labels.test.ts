/** Places and graduations beside a move's line. */

import { describe, expect, test } from 'vitest';
import type { Page } from '../../../src/sheet/display-list.js';
import { laid, textsOf } from '../laid.js';

const HEAD = 'stack BG A\nA: 1..\nlevel BG free\nfield P full\nfield Q full at 120,10\n';
const pages = (time: string, text: string) =>
  laid(`cut 1\ntime ${time}\n${HEAD}${text}\n`, { convention: 'west', paper: 'legal' });

/** What stands in the right half of the row of a frame. */
function beside(page: Page, frame: number): string[] {
  const row = page.rows.find((one) => one.frame === frame)!;
  return textsOf(page.marks)
    .filter(({ x, y, turn }) => !turn && y > row.y && y < row.y + row.height && x > page.widthMm / 2)
    .sort((a, b) => a.x - b.x)
    .map(({ text }) => text);
}

describe('graduations', () => {
  const [page] = pages('3+0', 'pull BG left 24mm 13..24 graduated');

  test('are numbered on every row, from 0 on the row before the first', () => {
    const numbers = Array.from({ length: 13 }, (_, i) => beside(page!, 12 + i)[0]);
    expect(numbers).toEqual(Array.from({ length: 13 }, (_, i) => String(i)));
    expect(beside(page!, 25)).toEqual([]);
  });

  test('say a step once while it stays the same', () => {
    const steps = Array.from({ length: 13 }, (_, i) => beside(page!, 12 + i)[1]).filter(
      (text) => text !== undefined,
    );
    expect(new Set(steps).size).toBe(steps.length);
    expect(steps.join(' ')).toMatch(/2(\.00?)?/);
  });

  test('are bold, for the ring about them, on the first and the last', () => {
    const bold = textsOf(page!.marks).filter(
      ({ x, y, weight, text }) =>
        weight === 'bold' && y > page!.rows[0]!.y && x > page!.widthMm / 2 && /^\d+$/.test(text),
    );
    expect(bold.map(({ text }) => text)).toEqual(['0', '12']);
  });
});

describe('places', () => {
  test('are named on their rows', () => {
    const [page] = pages('3+0', 'pan P@13 > Q@2+0');
    expect([beside(page!, 13), beside(page!, 48), beside(page!, 30)]).toEqual([['P'], ['Q'], []]);
  });

  test('are named again after a break: from where to where', () => {
    const [, second] = pages("8'00", 'pan P@13 > Q@5+0');
    expect(beside(second!, 97)[0]).toBe('[P→Q]');
  });
});
