import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  between,
  checkRule,
  clip,
  holeMark,
  holes,
  inset,
  boundsOf as planeBounds,
  RULE_ROOM,
  rectangle,
  type Segment,
  seen,
  sides,
} from '../../../src/sheet/camera-pages/artwork-plane.js';
import { smallestTextMm } from '../../../src/sheet/sheet-geometry.js';
import { defaults } from '../../../src/shot/settings.js';
import { wordsOf } from '../../../src/words/words.js';
import { boundsOf, linesOf, lookOf, textsOf } from '../laid.js';

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
    planeBounds([
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

test('peg holes are three in a row when they are asked for: over the field in Japan, under it in the west', () => {
  expect(holes(defaults)).toEqual([]);
  // Four inches apart; the middle one is the round one.
  const japan = holes({ ...defaults, pegs: 'flat-round-flat', convention: 'japan' });
  expect(japan).toEqual([
    { x: -101.6, y: 104.775, round: false },
    { x: 0, y: 104.775, round: true },
    { x: 101.6, y: 104.775, round: false },
  ]);
  const west = holes({ ...defaults, pegs: 'flat-round-flat', convention: 'west' });
  expect(west.map(({ y }) => y)).toEqual([-104.775, -104.775, -104.775]);
});

test('peg holes are drawn at the scale of the page', () => {
  const place = ([x, y]: readonly [number, number]): [number, number] => [100 + x / 2, 50 - y / 2];
  expect(holeMark({ x: 0, y: 20, round: true }, place, 2)).toMatchObject({
    kind: 'circle',
    x: 100,
    y: 40,
    // A quarter of an inch across, at half its size.
    r: 6.35 / 4,
  });
  // Half an inch by an eighth, at half its size.
  expect(holeMark({ x: 20, y: 0, round: false }, place, 2)).toMatchObject({
    kind: 'path',
    closed: true,
    points: [
      [110 - 3.175, 50 - 0.79375],
      [110 + 3.175, 50 - 0.79375],
      [110 + 3.175, 50 + 0.79375],
      [110 - 3.175, 50 + 0.79375],
    ],
  });
});

const paper = { x: 12, y: 40, width: 150, height: 100 };

describe.each(['en', 'ja'] as const)('the rule that shows the true size (%s)', (labels) => {
  const look = lookOf({ labels });
  const marks = checkRule(paper, look, wordsOf(look.settings).cameraPages);
  const lines = linesOf(marks);

  test('is 100 mm long, with a stroke every 10 mm and a longer one every 50', () => {
    const [rule, ...strokes] = lines;
    expect(Math.abs(rule!.x2 - rule!.x1)).toBe(100);
    expect(rule!.y1).toBe(rule!.y2);
    expect(strokes.map(({ x1 }) => x1 - rule!.x1)).toEqual([0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100]);
    for (const { x1, x2, y1 } of strokes) expect([x1, y1]).toEqual([x2, rule!.y1]);
    const heights = strokes.map(({ y1, y2 }) => y1 - y2);
    const long = heights.map((high) => high > 3);
    expect(long).toEqual([0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100].map((mm) => mm % 50 === 0));
  });

  test('stands with its words in the room that is left for it', () => {
    const [text, ...more] = textsOf(marks);
    expect(more).toEqual([]);
    const { left, right, top, bottom } = boundsOf(text!);
    expect(left).toBeGreaterThan(lines[0]!.x2);
    expect(right).toBeLessThanOrEqual(paper.x + paper.width);
    expect(text!.sizeMm).toBeGreaterThanOrEqual(smallestTextMm(look.settings.paper));
    const ys = [top, bottom, ...lines.flatMap(({ y1, y2 }) => [y1, y2])];
    expect(Math.min(...ys)).toBeGreaterThanOrEqual(paper.y + paper.height - RULE_ROOM);
    expect(Math.max(...ys)).toBeLessThanOrEqual(paper.y + paper.height);
  });
});
