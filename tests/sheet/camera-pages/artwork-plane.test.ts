import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  between,
  boundsOf,
  clip,
  inset,
  rectangle,
  type Segment,
  seen,
  sides,
} from '../../../src/sheet/camera-pages/artwork-plane.js';
import { defaults } from '../../../src/shot/settings.js';

test('a rectangle is given from its top left corner on, clockwise, and so it is turned', () => {
  expect(rectangle(10, 20, 40, 30, 0)).toEqual([
    [-10, 35],
    [30, 35],
    [30, 5],
    [-10, 5],
  ]);
  // A quarter clockwise takes (x, y) to (y, -x): the corner at -20, 15 of the middle goes to 15, 20.
  const quarter = rectangle(10, 20, 40, 30, 90);
  for (const [i, [x, y]] of [
    [25, 40],
    [25, 0],
    [-5, 0],
    [-5, 40],
  ].entries()) {
    expect(quarter[i]![0]).toBeCloseTo(x!, 9);
    expect(quarter[i]![1]).toBeCloseTo(y!, 9);
  }
});

test('the camera sees what is as wide as it is told and shaped as the field', () => {
  // The usual field is 254 mm wide, and 16:9: half of it is 127 × 71.4375 mm.
  expect(seen(100, 0, 127, 0, defaults)[0]).toEqual([36.5, 35.71875]);
  expect(seen(100, 0, 127, 0, defaults)[2]).toEqual([163.5, -35.71875]);
});

test('bounds hold all points, on either side of zero', () => {
  expect(
    boundsOf([
      [3, -8],
      [-2, 5],
      [7, 1],
    ]),
  ).toEqual({ left: -2, right: 7, bottom: -8, top: 5 });
});

test('sides go round, and back to the first corner', () => {
  expect(
    sides([
      [0, 0],
      [4, 0],
      [4, 3],
    ]),
  ).toEqual([
    [0, 0, 4, 0],
    [4, 0, 4, 3],
    [4, 3, 0, 0],
  ]);
});

test('a point between two, and one inside or outside a corner', () => {
  expect(between([10, 0], [30, -8], 0.25)).toEqual([15, -2]);
  const box = rectangle(0, 0, 40, 20, 0);
  expect([0, 1, 2, 3].map((corner) => inset(box, corner, 3))).toEqual([
    [-17, 7],
    [17, 7],
    [17, -7],
    [-17, -7],
  ]);
  expect(inset(box, 0, -3)).toEqual([-23, 13]);
});

const box = { x: 10, y: 20, width: 40, height: 20 };

test.each([
  ['stays whole inside', [12, 22, 40, 38], [12, 22, 40, 38]],
  ['is cut on both sides', [0, 30, 100, 30], [10, 30, 50, 30]],
  ['is cut upright', [30, 0, 30, 25], [30, 20, 30, 25]],
  ['keeps its way', [100, 30, 0, 30], [50, 30, 10, 30]],
  ['is cut askew', [0, 10, 60, 40], [20, 20, 50, 35]],
  ['beside the box has no part', [0, 45, 100, 45], null],
  ['past a corner has no part', [0, 32, 20, 52], null],
  ['that ends before the box has no part', [0, 30, 9, 30], null],
] as const)('a segment %s', (_, segment, part) => {
  expect(clip(segment, box)).toEqual(part);
});

test('of every segment just the points in the box are left', () => {
  const at = fc.integer({ min: -20, max: 80 });
  fc.assert(
    fc.property(at, at, at, at, (x1, y1, x2, y2) => {
      const part = clip([x1, y1, x2, y2], box);
      const share = (k: number): readonly [number, number] => [
        x1 + ((x2 - x1) * k) / 97,
        y1 + ((y2 - y1) * k) / 97,
      ];
      const inBox = ([x, y]: readonly [number, number]) =>
        x >= box.x && x <= box.x + box.width && y >= box.y && y <= box.y + box.height;
      const onPart = ([x, y]: readonly [number, number], [a, b, c, d]: Segment) =>
        Math.abs(Math.hypot(x - a, y - b) + Math.hypot(c - x, d - y) - Math.hypot(c - a, d - b)) < 1e-6;
      const wrong = Array.from({ length: 98 }, (_, k) => share(k)).filter(
        (point) => (part !== null && onPart(point, part)) !== inBox(point),
      );
      expect(wrong).toEqual([]);
    }),
  );
});
