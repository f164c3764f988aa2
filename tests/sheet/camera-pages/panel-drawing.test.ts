import { describe, expect, test } from 'vitest';
import { chartPanels } from '../../../src/sheet/camera-pages/chart-panels.js';
import { chartTexts } from '../../../src/sheet/camera-pages/chart-texts.js';
import {
  CLOSEST,
  directionAt,
  drawPanel,
  thinning,
  viewOf,
} from '../../../src/sheet/camera-pages/panel-drawing.js';
import type { Mark } from '../../../src/sheet/display-list.js';
import type { Settings } from '../../../src/shot/settings.js';
import { textClashes } from '../clashes.js';
import { boundsOf, linesOf, lookOf, solvedCut, textsOf } from '../laid.js';

/** 1 : 2, the middle of the artwork at 150, 80. */
const box = { x: 50, y: 20, width: 200, height: 120 };

function drawn(lines: string, { n = 2, ...settings }: Partial<Settings> & { n?: number } = {}): Mark[] {
  const solved = solvedCut(`cut 7\ntime 2+0\n${lines}\n`, settings);
  const [panel] = chartPanels(solved, false);
  return drawPanel(panel!, viewOf(panel!, box, n), chartTexts(solved, lookOf(settings)));
}

/** Corners of the outlines, rounded to a tenth of a mm. */
const outlines = (marks: readonly Mark[], dash?: readonly number[]) =>
  marks.flatMap((mark) =>
    mark.kind === 'path' &&
    mark.closed &&
    mark.stroke &&
    JSON.stringify(mark.stroke.dash) === JSON.stringify(dash)
      ? [mark.points.map(([x, y]) => [Math.round(x * 10) / 10, Math.round(y * 10) / 10])]
      : [],
  );
const rectangle = (left: number, top: number, right: number, bottom: number) => [
  [left, top],
  [right, top],
  [right, bottom],
  [left, bottom],
];

const PAN = 'A: 1..\nfield A full\nfield B full at 48,0\npan A@1 > B@25';

describe('a panel at 1 : 2', () => {
  test('has its fields at half their size, what is to the right to the right', () => {
    // 254 × 142.875 mm each, 48 mm apart; the middle of both, x = 24, stands in the middle of the box.
    const [a, b] = outlines(drawn(PAN));
    expect(a).toEqual(rectangle(150 - 75.5, 80 - 35.7, 150 + 51.5, 80 + 35.7));
    expect(b).toEqual(rectangle(150 - 51.5, 80 - 35.7, 150 + 75.5, 80 + 35.7));
  });

  test('has what is higher on the artwork higher on the paper', () => {
    const [a, b] = outlines(drawn(PAN.replace('48,0', '0,48')));
    expect(a![0]![1]! - b![0]![1]!).toBeCloseTo(24, 1);
  });

  test('has the way of the camera as long as it is, with a stroke for each row between its ends', () => {
    const marks = drawn(PAN);
    const way = marks.flatMap((mark) => (mark.kind === 'path' && !mark.closed ? [mark.points] : [])).at(0)!;
    expect(way.at(-1)![0] - way[0]![0]).toBeCloseTo(24, 9);
    expect(way[0]![1]).toBe(80);
    const strokes = linesOf(marks).filter(
      ({ x1, x2, y1, y2 }) => x1 === x2 && Math.abs(y1 + y2 - 160) < 1e-9,
    );
    const onWay = strokes.filter(({ stroke }) => stroke.widthMm === 0.15).map(({ x1 }) => x1 - way[0]![0]);
    expect(onWay).toHaveLength(23);
    onWay.forEach((x, i) => void expect(x).toBeCloseTo(i + 1, 9));
  });

  test('numbers each key of a quick cycle once where their rings would heap up, and all of a slow one', () => {
    const numbers = (timeline: string, on = 'N(40,0)@2+0'): string[] => {
      const marks = drawn(`A: ${timeline}\nslide A M(-40,0)@1 > ${on}`);
      const rings = marks.flatMap((mark) => (mark.kind === 'circle' && mark.fill === 'paper' ? [mark] : []));
      return textsOf(marks)
        .filter(({ x, y, sizeMm }) =>
          rings.some((ring) => Math.hypot(ring.x - x, ring.y - (y - sizeMm * 0.36)) < 0.3),
        )
        .map(({ text }) => text);
    };
    // 40 mm of paper: 24 keys stand 1.7 mm apart, four 10 mm.
    expect(numbers('on 1 (1-2-)..')).toEqual(['1', '2']);
    expect(numbers('on 6 (1-2-)..')).toEqual(['1', '2', '1', '2']);
    // Out in one second and back in the next: each key of the way back stands near one of the way out, if it is the same way.
    expect(numbers('on 6 (1-2-)..', 'N(40,0)@1+0 > O(-40,1)@2+0')).toEqual(['1', '2']);
    expect(numbers('on 6 (1-2-)..', 'N(40,0)@1+0 > O(-40,60)@2+0')).toEqual(['1', '2', '1', '2']);
  });

  test('names the fields in rings, and rows beside the way', () => {
    const marks = drawn(PAN);
    const rings = marks.flatMap((mark) => (mark.kind === 'circle' && mark.fill === 'paper' ? [mark] : []));
    const inRings = textsOf(marks).filter(({ x, y, sizeMm }) =>
      rings.some((ring) => Math.hypot(ring.x - x, ring.y - (y - sizeMm * 0.36)) < 0.3),
    );
    expect(inRings.map(({ text }) => text).sort()).toEqual(['A', 'B']);
    expect(textsOf(marks).map(({ text }) => text)).toContain('0+12');
  });

  test('crosses the corners of a field out that is not used, and those only', () => {
    const crosses = (lines: string) =>
      linesOf(drawn(lines)).filter(
        ({ x1, x2, y1, y2 }) => Math.abs(x2 - x1) === 6 && Math.abs(Math.abs(y2 - y1) - 6) < 1e-9,
      ).length;
    expect(crosses(PAN)).toBe(0);
    expect(crosses(`${PAN}\nfield C 60%`)).toBe(8);
  });

  test('has the standard field dashed where no field of the cut lies on it', () => {
    const standard = [4, 1.2];
    expect(outlines(drawn(PAN), standard)).toEqual([]);
    const marks = drawn('A: 1..\nfield C 60%\nfix C');
    expect(outlines(marks, standard)).toEqual([rectangle(150 - 63.5, 80 - 35.7, 150 + 63.5, 80 + 35.7)]);
  });

  test('has peg holes where they are asked for and lie in it', () => {
    const holes = (pegs: Settings['pegs'], n?: number) =>
      drawn(PAN, { pegs, ...(n ? { n } : {}) }).filter(
        (mark) => mark.kind === 'circle' && mark.fill === null && mark.r > 0.9,
      ).length;
    expect([holes('none'), holes('flat-round-flat'), holes('flat-round-flat', 1)]).toEqual([0, 1, 0]);
  });
});

test.each([
  ['a pan with many fields', `${PAN}\nfield C 60% at 20,10\nfield D 40% at -20,-10\nfield E 90% at 5,5`],
  ['a truck', 'A: 1..\nfield A full\nfield C 40% at 30,12\ntruck A@1 > C@2+0 graduated'],
  ['keys that go along', `level A free\nA: on 2 (1-2-)..\n${PAN} carry A`.replace('A: 1..\n', '')],
  [
    'a rotation about a point',
    'level A size 100x60mm free\nA: 1..\nturn level A 0@1 > 60@2+0 cw about 20,10',
  ],
])('nothing that is written covers anything, and all of it stands in its box: %s', (_, lines) => {
  const marks = drawn(lines);
  expect(textsOf(marks).length).toBeGreaterThan(3);
  expect(textClashes(marks)).toEqual([]);
  for (const text of textsOf(marks)) {
    const { left, right, top, bottom } = boundsOf(text);
    expect([left >= box.x, right <= box.x + box.width, top >= box.y, bottom <= box.y + box.height]).toEqual([
      true,
      true,
      true,
      true,
    ]);
  }
});

describe('strokes of graduations', () => {
  test('are all drawn where they are far enough apart, else every second, fourth …', () => {
    expect(thinning([1, 1, 1])).toEqual([1, 1, 1, 1]);
    expect(thinning(Array(40).fill(CLOSEST / 2))).toEqual(Array(41).fill(2));
    expect(thinning(Array(40).fill(0.3))).toEqual(Array(41).fill(4));
    expect(thinning([])).toEqual([1]);
  });

  test.each([0.2, 0.4, 0.8])('are thinned evenly where steps of %d mm are so by rounding only', (step) => {
    const places = Array.from({ length: 97 }, (_, i) => 7.3 - i * step);
    const gaps = places.slice(1).map((place, i) => Math.abs(place - places[i]!));
    expect(new Set(gaps).size).toBeGreaterThan(1);
    expect(new Set(thinning(gaps))).toEqual(new Set([CLOSEST / step]));
  });

  test('are thinned where the way is slow only', () => {
    const strides = thinning([...Array(20).fill(0.3), ...Array(20).fill(3)]);
    expect([strides[5], strides[35]]).toEqual([4, 1]);
  });

  test('stand across the way there', () => {
    expect(
      directionAt(
        [
          [0, 0],
          [3, 4],
          [6, 8],
        ],
        1,
      ),
    ).toEqual([0.6, 0.8]);
    // At the ends that of the only neighbour; on a point that of the next one that is another.
    expect(
      directionAt(
        [
          [0, 0],
          [0, 5],
          [5, 5],
        ],
        0,
      ),
    ).toEqual([0, 1]);
    expect(
      directionAt(
        [
          [0, 0],
          [0, 0],
          [0, 0],
          [7, 0],
        ],
        0,
      ),
    ).toEqual([1, 0]);
    expect(
      directionAt(
        [
          [2, 2],
          [2, 2],
        ],
        1,
      ),
    ).toEqual([1, 0]);
  });
});
