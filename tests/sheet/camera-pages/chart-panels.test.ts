import { describe, expect, test } from 'vitest';
import {
  chartPanels,
  fieldsOf,
  hasCamera,
  panelBounds,
} from '../../../src/sheet/camera-pages/chart-panels.js';
import { solvedCut } from '../laid.js';

/** The usual field is 254 × 142.875 mm. */
const HALF = { w: 127, h: 71.4375 };

const cut = (lines: string) => solvedCut(`cut 7\ntime 2+0\n${lines}\n`);
const panels = (lines: string) => chartPanels(cut(lines), false);
const FIELDS = 'field A full\nfield B full at 48,0\nfield C 50%\n';

describe('a cut without camera work', () => {
  test('has no panel and no camera page', () => {
    expect(panels('A: 1..')).toEqual([]);
    expect(hasCamera(cut('A: 1..\nfield A full'))).toBe(false);
    expect(hasCamera(cut('A: 1..\nfield C 50%'))).toBe(true);
    expect(hasCamera(cut('A: 1..\nfield A full\nfield B full at 48,0\npan A@1 > B@2+0'))).toBe(true);
  });

  test('has the camera panel where it stands on a field of its own', () => {
    expect(panels('A: 1..\nfield C 50%\nfix C')).toMatchObject([{ levels: null, ways: [], moves: [] }]);
  });
});

describe('fields', () => {
  const about = (lines: string) =>
    fieldsOf(cut(`A: 1..\n${lines}`)).map(({ name, used, bare, standard }) => ({
      name,
      used,
      bare,
      standard,
    }));

  test('come with the standard field before them, unless one of them lies on it', () => {
    expect(about('field C 50%\nfix C')).toEqual([
      { name: '', used: false, bare: true, standard: true },
      { name: 'C', used: true, bare: false, standard: false },
    ]);
    expect(about('field A full\nfield C 50%\nfix C')).toEqual([
      { name: 'A', used: false, bare: false, standard: true },
      { name: 'C', used: true, bare: false, standard: false },
    ]);
  });

  test('stand where they are on the artwork', () => {
    const [, field] = fieldsOf(cut('A: 1..\nfield B 50% at 48,10'));
    expect(field).toMatchObject({
      centre: [48, 10],
      corners: [[48 - HALF.w / 2, 10 + HALF.h / 2], {}, {}, {}],
    });
  });
});

describe('the way of the camera', () => {
  test('is that of its middle in a pan: a point a frame, named at its ends', () => {
    const [panel] = panels(`A: 1..\n${FIELDS}pan A@1 > B@25`);
    const [way] = panel!.ways;
    expect(way).toMatchObject({ counted: false, ofCorner: null });
    expect(way!.points).toHaveLength(25);
    way!.points.forEach(({ at: [x, y], frame, count }, i) => {
      // 48 mm in 24 steps.
      expect(x).toBeCloseTo(2 * i, 9);
      expect([y, frame, count]).toEqual([0, i + 1, i]);
    });
    expect(way!.points.map(({ name }) => name).filter(Boolean)).toEqual(['A', 'B']);
  });

  test('is that of a corner in a truck, with its corners joined', () => {
    const [panel] = panels(`A: 1..\n${FIELDS}truck A@1 > C@25`);
    const [way] = panel!.ways;
    // All corners go as far: the upper right one is taken.
    expect(way!.ofCorner).toBe('topRight');
    expect(way!.points[0]!.at).toEqual([HALF.w, HALF.h]);
    expect(way!.points.at(-1)!.at).toEqual([HALF.w / 2, HALF.h / 2]);
    expect(panel!.between.map((pair) => pair.map(([corner]) => corner))).toEqual([
      [
        [-HALF.w, HALF.h],
        [-HALF.w / 2, HALF.h / 2],
      ],
    ]);
  });

  test('is that of the corner which goes farthest where they do not go alike', () => {
    // The lower left corner stays; the upper right one goes a whole half field.
    const lines = `A: 1..\nfield A full\nfield C 50% at ${HALF.w / 2},${HALF.h / 2}\ntruck A@1 > C@25`;
    expect(panels(lines)[0]!.ways[0]!.ofCorner).toBe('bottomLeft');
  });

  test('has the keys of levels that go along on the rows where they appear', () => {
    const lines = `level A free\nA: 1:12 2:12 3..\n${FIELDS}pan A@1 > B@2+0 carry A`;
    const keys = panels(lines)[0]!.ways[0]!.points.filter((point) => point.keys.length > 0);
    expect(keys.map(({ frame, keys: names }) => [frame, ...names])).toEqual([
      [1, '1'],
      [13, '2'],
      [25, '3'],
    ]);
  });
});

describe('levels that move by themselves', () => {
  const TWO = 'stack A B\nlevel A free\nlevel B free\nA: 1..\nB: 1..\n';

  test('have a panel each, or one together where they lie alike on every frame', () => {
    const levels = (lines: string) => panels(`${TWO}${lines}`).map((panel) => panel.levels);
    expect(levels('slide A (0,0)@1 > (24,0)@2+0\nslide B (0,0)@1 > (24,0)@2+0')).toEqual([['A', 'B']]);
    expect(levels('slide A (0,0)@1 > (24,0)@2+0\nslide B (0,0)@1 > (24,0)@1+0')).toEqual([['A'], ['B']]);
    expect(levels(`${FIELDS}pan A@1 > B@2+0\nslide A (0,0)@1 > (24,0)@2+0`)).toEqual([null, ['A']]);
  });

  test('have their swings told on their panel, and those of the camera on its own', () => {
    const lines = `${TWO}${FIELDS}pan A@1 > B@2+0\nslide A (0,0)@1 > (24,0)@2+0\n`;
    const kinds = (more: string) =>
      panels(lines + more).map(({ moves }) => moves.map(({ move }) => move.kind));
    expect(kinds('shake 2mm 1..12')).toEqual([['pan', 'shake'], ['slide']]);
    expect(kinds('sway A 2mm 1..24 every 12')).toEqual([['pan'], ['slide', 'sway']]);
    expect(kinds('sway B 2mm 1..24 every 12')).toEqual([['pan', 'sway'], ['slide']]);
  });

  test('are outlined at their start and their end', () => {
    const [panel] = panels('level A size 100x50mm free\nA: 1..\nslide A (0,0)@1 > (24,6)@2+0');
    expect(panel!.outlines).toMatchObject([
      { label: 'A', is: 'start', corners: [[-50, 25], {}, {}, {}] },
      { label: 'A', is: 'end', corners: [[-26, 31], {}, {}, {}] },
    ]);
    expect(panel!.ways[0]!.points.at(-1)!.at).toEqual([24, 6]);
  });

  test('scaled and turned on the same rows go one way of a corner, with the marks of both', () => {
    const level = 'level A size 120x90mm at 20,-10 free\nA: 1..\n';
    const both = `${level}truck level A ア(100%)@1 > イ(50%)@25\nturn level A ア(0)@1 > ウ(90)@25 cw`;
    const ways = panels(both).flatMap((panel) => panel.ways);
    expect(ways).toHaveLength(1);
    const { points } = ways[0]!;
    expect([points[0]!.name, points.at(-1)!.name]).toEqual(['ア', 'イ/ウ']);
    // A corner 60, 45 from the middle at 20, -10; half as far at the end, a quarter turn clockwise: (x, y) → (y, -x).
    const [x, y] = [points[0]!.at[0] - 20, points[0]!.at[1] + 10];
    expect([Math.abs(x), Math.abs(y)]).toEqual([60, 45]);
    const [endX, endY] = points.at(-1)!.at;
    expect([endX - 20, endY + 10]).toEqual([expect.closeTo(y / 2, 9), expect.closeTo(-x / 2, 9)]);
    const apart = `${level}truck level A ア(100%)@1 > イ(50%)@25\nturn level A ア(0)@1 > ウ(90)@26 cw`;
    expect(panels(apart).flatMap((panel) => panel.ways)).toHaveLength(2);
  });

  test('begin a pull one step before its first row', () => {
    const [panel] = panels('level A size 100x50mm free\nA: 1..\npull A right 2mm/f 1..24');
    const { points } = panel!.ways[0]!;
    expect(points.map(({ at: [x] }) => x)).toEqual(Array.from({ length: 25 }, (_, i) => 2 * i));
    expect([points[0]!.frame, points.at(-1)!.frame]).toEqual([0, 24]);
    expect(panel!.outlines.map(({ corners }) => corners[0]![0])).toEqual([-50, -2]);
  });

  test('show the field that the camera stands on meanwhile, with its row where there are two', () => {
    const fields = (lines: string) =>
      panels(`${TWO}${FIELDS}${lines}`)
        .at(-1)!
        .fields.map(({ name, bare, row }) => ({ name, bare, row }));
    expect(fields('pan A@1 > B@25\nslide A (0,0)@1 > (24,0)@25')).toEqual([
      { name: 'A', bare: false, row: 1 },
      { name: 'B', bare: false, row: 25 },
    ]);
    expect(fields('pan A@1 > B@25\nslide A (0,0)@25 > (24,0)@2+0')).toEqual([
      { name: 'B', bare: false, row: null },
    ]);
    expect(fields('pan A@1 > B@25\nslide A (0,0)@13 > (24,0)@2+0')[0]).toEqual({
      name: '',
      bare: true,
      row: 13,
    });
  });
});

describe('sheets of artwork', () => {
  test('are outlined where they have a size, and together where they lie on one another', () => {
    const lines = `stack A B C\nlevel A size 400x200mm\nlevel B size 400x200mm\nA: 1..\nB: 1..\nC: 1..\n${FIELDS}pan A@1 > B@25`;
    const outlines = panels(lines)[0]!.outlines;
    // C is as large as the field, so its edge would show.
    expect(outlines.map(({ label, is }) => `${label} ${is}`)).toEqual(['A, B sheet', 'A, B, C needed']);
    expect(outlines[0]!.corners[0]).toEqual([-200, 100]);
    // From the left edge of field A to the right edge of field B: 254 and 48 mm, painted over by a margin or not.
    const [left, right] = [outlines[1]!.corners[0]![0], outlines[1]!.corners[1]![0]];
    expect(left).toBeLessThanOrEqual(-127);
    expect(right).toBeGreaterThanOrEqual(175);
  });

  test('and all else give the bounds of the panel', () => {
    const fields = panelBounds(panels('A: 1..\nfield C 50%\nfix C')[0]!);
    expect(fields).toEqual({ left: -HALF.w, right: HALF.w, bottom: -HALF.h, top: HALF.h });
    const turned = panels('level A size 100x50mm free\nA: 1..\nturn level A 0@1 > 9@2+0 cw about 300,-200');
    expect(panelBounds(turned[0]!)).toMatchObject({ right: 300, bottom: -200 });
    const [panel] = panels(`level A size 400x100mm\nA: 1..\n${FIELDS}pan A@1 > B@25`);
    const { left, right, bottom, top } = panelBounds(panel!);
    expect([left, right]).toEqual([-200, 200]);
    expect([bottom, top].map(Math.abs).every((y) => y >= HALF.h)).toBe(true);
  });
});
