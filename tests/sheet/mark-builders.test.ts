/** Short hands for marks. */

import { describe, expect, test } from 'vitest';
import { black, ring, TO_BASELINE, textAt } from '../../src/sheet/mark-builders.js';

describe('a text', () => {
  test('has its middle where it is put: its baseline is lower', () => {
    expect(textAt(10, 20, 'a', { sizeMm: 2 })).toEqual({
      kind: 'text',
      x: 10,
      y: 20 + TO_BASELINE * 2,
      text: 'a',
      sizeMm: 2,
      weight: 'regular',
      ink: 'black',
      anchor: 'middle',
    });
  });

  test('that reads down has its baseline to the left, one that reads up to the right', () => {
    const down = textAt(10, 20, 'a', { sizeMm: 2, turn: 90 });
    expect(down).toMatchObject({ x: 10 - TO_BASELINE * 2, turn: 90 });
    expect(down.kind === 'text' && down.y).toBeCloseTo(20);
    expect(textAt(10, 20, 'a', { sizeMm: 2, turn: -90 })).toMatchObject({ x: 10 + TO_BASELINE * 2 });
  });

  test('is squeezed, never stretched', () => {
    expect(textAt(0, 0, 'a', { sizeMm: 2, squeeze: 0.8 })).toMatchObject({ squeeze: 0.8 });
    expect(textAt(0, 0, 'a', { sizeMm: 2, squeeze: 1.2 })).not.toHaveProperty('squeeze');
  });
});

describe('a ring', () => {
  test('is a circle where it need not be wider', () => {
    expect(ring(5, 6, 2, 4, black(0.2))).toMatchObject({ kind: 'circle', x: 5, y: 6, r: 2, fill: null });
    expect(ring(5, 6, 2, 3, black(0.2))).toMatchObject({ kind: 'circle', r: 2 });
  });

  test('is a pill as wide as asked for, and as high as a circle', () => {
    const pill = ring(5, 6, 2, 10, black(0.2));
    if (pill.kind !== 'path') throw new Error('no pill');
    const [xs, ys] = [pill.points.map(([x]) => x), pill.points.map(([, y]) => y)];
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([expect.closeTo(0), expect.closeTo(10)]);
    expect([Math.min(...ys), Math.max(...ys)]).toEqual([expect.closeTo(4), expect.closeTo(8)]);
    expect(pill.closed).toBe(true);
  });
});
