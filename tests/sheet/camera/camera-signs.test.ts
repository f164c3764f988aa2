/** Where a move stands in the camera column. */

import { describe, expect, test } from 'vitest';
import { NO_GUTTERS } from '../../../src/sheet/block-columns.js';
import { laneOf, lanesShown } from '../../../src/sheet/camera/camera-signs.js';
import type { Mark } from '../../../src/sheet/display-list.js';
import { sheetPages } from '../../../src/sheet/exposure-sheet.js';
import type { BlockFrames, PageSide } from '../../../src/sheet/sheet-plan.js';
import type { MoveKind } from '../../../src/shot/camera/camera-model.js';
import { moveKinds } from '../../../src/shot/camera/move-kinds.js';
import { lookOf, solvedCut } from '../laid.js';

describe('lanes that are shown', () => {
  test('are as many as have their least width', () => {
    // 2.5 ems of the smallest print each, and twice that for a wide one.
    expect(lanesShown([1, 1, 1], 7.8, 1.04)).toBe(3);
    expect(lanesShown([1, 1, 1], 7.7, 1.04)).toBe(2);
    expect(lanesShown([2, 1], 7.7, 1.04)).toBe(1);
  });

  test('are at least one', () => {
    expect(lanesShown([2, 1], 1, 1.04)).toBe(1);
    expect(lanesShown([], 10, 1.04)).toBe(0);
  });
});

describe('a lane', () => {
  function lanes(widths: readonly number[], width: number, gutter = 0, wishes = widths.map(() => 0)) {
    const side = {
      plan: { camera: { lanes: widths, wishes } },
      geometry: { scale: 1, leastTextMm: 1.4, gutters: { ...NO_GUTTERS, camera: gutter } },
    } as unknown as PageSide;
    const run = { block: { columns: { camera: { x: 100, width } } } } as unknown as BlockFrames;
    return widths.map((_, i) => laneOf(side, run, i));
  }

  test('has its share of the column', () => {
    const [wide, narrow] = lanes([2, 1], 12);
    expect([wide!.x, wide!.width]).toEqual([100, 8]);
    expect([narrow!.x, narrow!.width]).toEqual([108, 4]);
  });

  test('stands beside the gutter for change bars', () => {
    expect(lanes([1], 6, 2)[0]).toMatchObject({ x: 102, width: 4 });
  });

  test('is not made wider than it needs: the rest is the pencil’s', () => {
    expect(lanes([1], 30)[0]!.width).toBe(9);
  });

  test('that has more to say takes of the rest, never of its neighbours', () => {
    const widths = (column: number) => lanes([2, 1], column, 0, [0.5, 0]).map((lane) => lane!.width);
    expect(widths(60)).toEqual([22.5, 9]);
    expect(widths(29)[0]).toBeCloseTo(20);
    expect(widths(29)[1]).toBeCloseTo(9);
    expect(lanes([2, 1], 60, 0, [0.5, 0])[1]!.x).toBe(122.5);
    expect(widths(12)).toEqual([8, 4]);
  });

  test('has its line, its names and its words from left to right', () => {
    const [lane] = lanes([1], 6);
    const { x, width, lineX, zoneX, zoneEnd, strip } = lane!;
    expect([x, lineX, zoneX, zoneEnd, strip.x]).toEqual(
      [x, lineX, zoneX, zoneEnd, strip.x].sort((p, q) => p - q),
    );
    expect(strip.x + strip.width).toBeLessThan(x + width);
    expect(strip.width).toBeGreaterThan(1.4);
  });

  test('is none where there is no room', () => {
    expect(lanes([1, 1], 5)[1]).toBeNull();
  });
});

// ---- each kind of move stands in the camera column with a sign, bars at both ends, and a name

const BARE = 'cut 1\ntime 4+0\nfield P full\nfield Q full at 20,0\nfield R 80%\nlevel A free\nA: 1..\n';

/** From row 13 to row 48. */
const TYPED: { readonly [K in MoveKind]: string } = {
  pan: 'pan P@13 > Q@48',
  truck: 'truck P@13 > R@48',
  pull: 'pull A right 1mm/f 13..48',
  follow: 'follow A right 1mm/f 13..48',
  slide: 'slide A (0,0)@13 > (20,0)@48',
  levelTruck: 'truck level A 100%@13 > 120%@48',
  turn: 'turn level A 0@13 > 90@48 cw',
  shake: 'shake 4mm>1mm 13..48',
  sway: 'sway A 5mm 13..48 every 12',
};

describe.each(['en', 'ja'] as const)('a wipe and an iris, in %s', (labels) => {
  const cut = (line: string) => `cut 1\ntime 4+0\nA: 1..\n${line}\n`;
  const marksOf = (line: string) =>
    sheetPages(solvedCut(cut(line)), lookOf({ labels })).flatMap(({ marks }) => marks);
  const texts = (line: string) => marksOf(line).flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));

  test('are named in the column and told in the memo', () => {
    const names = labels === 'en' ? ['WIPE IN to the left', 'IRIS OUT'] : ['ワイプイン', 'アイリスアウト'];
    const all = [...texts('wipe in left 1+1..3+0'), ...texts('iris out 1+1..3+0 at 40,-10')];
    // In a Japanese column the letters stand one below the other.
    const read = labels === 'en' ? all.join(' ') : all.join('').replace(/ー|｜/g, '');
    for (const name of names) expect(read).toContain(name.replace(/ー/g, ''));
    expect(all.join(' ')).toContain('40,-10 mm');
  });

  test('have a slanting line and a ring as their signs', () => {
    const bare = new Set(marksOf('').map((mark) => JSON.stringify(mark)));
    const added = (line: string) => marksOf(line).filter((mark) => !bare.has(JSON.stringify(mark)));
    const slanting = added('wipe in left 1+1..2+0').filter(
      (mark) => mark.kind === 'line' && mark.x1 !== mark.x2 && mark.y1 !== mark.y2,
    );
    expect(slanting).toHaveLength(1);
    expect(added('iris in 1+1..2+0').filter(({ kind }) => kind === 'circle')).toHaveLength(1);
  });
});

const linesOf = (text: string): Mark[] =>
  sheetPages(solvedCut(text), lookOf({})).flatMap(({ marks }) => marks.filter(({ kind }) => kind !== 'text'));

const textOf = (mark: Mark): string => JSON.stringify(mark);

test.each(Object.keys(moveKinds) as MoveKind[])('%s', (kind) => {
  const before = new Set(linesOf(BARE).map(textOf));
  const added = linesOf(`${BARE}${TYPED[kind]}\n`).filter((mark) => !before.has(textOf(mark)));
  const points = added.map((mark) =>
    mark.kind === 'line'
      ? ([
          [mark.x1, mark.y1],
          [mark.x2, mark.y2],
        ] as const)
      : mark.kind === 'path'
        ? mark.points
        : [],
  );
  const level = (one: (typeof points)[number]) => one.length === 2 && one[0]![1] === one[1]![1];
  // Bars above and below, arrows between them, and a sign that reaches from one bar to the other.
  const heights = points.filter(level).map(([start]) => start![1]);
  const [top, bottom] = [Math.min(...heights), Math.max(...heights)];
  expect(bottom - top).toBeGreaterThan(30);
  expect(points.some((one) => one.some(([, y]) => y === top) && one.some(([, y]) => y === bottom))).toBe(
    true,
  );
});
