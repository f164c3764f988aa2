import { describe, expect, test } from 'vitest';
import { MOST_OVERLAY_PAGES, overlayPages } from '../../../src/sheet/camera-pages/field-overlay.js';
import { OVERLAP_MM } from '../../../src/sheet/camera-pages/strip-marks.js';
import type { Page } from '../../../src/sheet/display-list.js';
import type { Settings } from '../../../src/shot/settings.js';
import { offThePaper, textClashes } from '../clashes.js';
import { linesOf, lookOf, said, solvedCut, textsOf } from '../laid.js';

function overlay(fields: string, settings: Partial<Settings> = {}): Page[] {
  return overlayPages(solvedCut(`cut 7\ntime 2+0\nA: 1..\n${fields}\n`, settings), lookOf(settings));
}

/** Long thin lines of fields that are used: sides, or what of them lies on the page. */
const edges = (page: Page) =>
  linesOf(page.marks).filter(
    ({ x1, y1, x2, y2, stroke }) =>
      stroke.ink === 'black' && stroke.widthMm === 0.3 && Math.hypot(x2 - x1, y2 - y1) > 12,
  );
const lengths = (page: Page) => edges(page).map(({ x1, y1, x2, y2 }) => Math.hypot(x2 - x1, y2 - y1));

describe('a field that has room on the paper', () => {
  test('is drawn as large as it is', () => {
    // 60 % of 254 × 142.875 mm.
    const all = overlay('field C 60%\nfix C');
    expect(all).toHaveLength(1);
    expect(lengths(all[0]!).map((mm) => mm.toFixed(3))).toEqual(['152.400', '85.725', '152.400', '85.725']);
  });

  test('is turned as it is', () => {
    const [page] = overlay('field C 40% cw 30\nfix C', { paper: 'A3' });
    const slopes = edges(page!).map(({ x1, y1, x2, y2 }) => Math.atan2(y2 - y1, x2 - x1) * (180 / Math.PI));
    // Clockwise on the paper, where y goes down: the upper side falls by 30° to the right.
    expect(slopes[0]).toBeCloseTo(30, 6);
  });

  test('is as far from another one as it lies from it, and named by its letter', () => {
    const [page] = overlay('field A full\nfield B full at 30,-20\npan A@1 > B@2+0', { paper: 'A3' });
    const [a, , , , b] = edges(page!);
    expect([b!.x1 - a!.x1, b!.y1 - a!.y1]).toEqual([30, expect.closeTo(20, 9)]);
    expect(textsOf(page!.marks).filter(({ text }) => /^[AB]$/.test(text))).toHaveLength(2);
  });

  test('is crossed out at its corners where it is not used', () => {
    const crosses = (page: Page) =>
      linesOf(page.marks).filter(
        ({ x1, y1, x2, y2 }) =>
          Math.abs(Math.abs(x2 - x1) - 8) < 1e-6 && Math.abs(Math.abs(y2 - y1) - 8) < 1e-6,
      ).length;
    expect(crosses(overlay('field C 60%\nfix C', { paper: 'A3' })[0]!)).toBe(8);
    expect(crosses(overlay('field A full\nfield C 60%\nfix C\n', { paper: 'A3' })[0]!)).toBe(8);
    expect(crosses(overlay('field A full\nfield C 60%\ntruck A@1 > C@2+0', { paper: 'A3' })[0]!)).toBe(0);
  });
});

describe('what is larger than the paper', () => {
  const LONG = 'field A full\nfield B full at 300,0\npan A@1 > B@2+0';
  const pages = overlay(LONG);

  test('goes on, with what both pages have in the same place when the joins are laid on one another', () => {
    expect(pages.length).toBeGreaterThan(1);
    // The sides of fields that are upright, by their place from the first page's left.
    const window = Math.max(...pages.flatMap((page) => joinsOf(page)));
    const upright = pages.flatMap((page, i) =>
      edges(page)
        .filter(({ x1, x2 }) => x1 === x2)
        .map(({ x1 }) => x1 + i * window),
    );
    const left = Math.min(...upright);
    const places = [...new Set(upright.map((x) => Math.round((x - left) * 100) / 100))];
    expect(places.sort((a, b) => a - b)).toEqual([0, 254, 300, 554]);
  });

  /** From the window's left edge, where the first cut mark is, to the dashed join. */
  function joinsOf(page: Page): number[] {
    const joins = linesOf(page.marks).filter(({ stroke, x1, x2 }) => x1 === x2 && stroke.dash?.[1] === 2);
    const cuts = linesOf(page.marks).filter(
      ({ stroke, x1, x2 }) => x1 === x2 && stroke.widthMm === 0.12 && !stroke.dash,
    );
    const left = Math.min(...cuts.map(({ x1 }) => x1));
    return joins.map(({ x1 }) => x1 - left);
  }

  test('repeats 10 mm, with the join dashed there on all pages but the last', () => {
    expect(OVERLAP_MM).toBe(10);
    const right = (page: Page) =>
      Math.max(
        ...linesOf(page.marks)
          .filter(({ stroke }) => stroke.widthMm === 0.12 && !stroke.dash)
          .map(({ x1 }) => x1),
      );
    expect(pages.map((page) => joinsOf(page).length)).toEqual(
      pages.map((_, i) => (i < pages.length - 1 ? 1 : 0)),
    );
    const [first] = pages;
    const [join] = linesOf(first!.marks).filter(({ stroke }) => stroke.dash?.[1] === 2);
    // Cut marks stand half a mm outside.
    expect(right(first!) - join!.x1).toBeGreaterThanOrEqual(10);
    expect(right(first!) - join!.x1).toBeLessThan(10.6);
  });

  test('says on each page which part it is', () => {
    pages.forEach((page, i) => void expect(said(page)).toContain(`column ${i + 1} of ${pages.length}`));
  });

  test('has no page without a line on it', () => {
    // 400 % is 1016 × 571.5 mm: the middle is empty.
    const all = overlay('field C 400%\nfix C\n', { paper: 'A4' });
    expect(
      all.every((page) =>
        linesOf(page.marks).some(({ stroke }) => stroke.ink === 'black' && stroke.widthMm === 0.3),
      ),
    ).toBe(true);
  });

  test('ends where it would be a poster, and says so', () => {
    const all = overlay('field C 2000%\nfix C\n');
    expect(all).toHaveLength(MOST_OVERLAY_PAGES);
    expect(said(all[0]!)).toContain(String(MOST_OVERLAY_PAGES));
  });
});

test('there are none without camera work or fields', () => {
  expect(overlay('')).toEqual([]);
  expect(overlay('field A full')).toEqual([]);
  expect(overlay('shake 2mm 1..12')).toEqual([]);
});

test.each(['A4', 'B5', 'A3'] as const)('nothing covers anything on %s', (paper) => {
  const fields = [...'ABCDEF'].map((name, i) => `field ${name} ${50 + 8 * i}% at ${i * 25},${(i % 3) * 12}`);
  for (const page of overlay(`${fields.join('\n')}\ntruck A@1 > F@2+0`, { paper, pegs: 'flat-round-flat' })) {
    expect(textClashes(page.marks)).toEqual([]);
    expect(offThePaper(page)).toEqual([]);
  }
});

describe('what lies on a page of fields', () => {
  /** Cut marks are 2 mm long beside the window, and 1.3 mm above and below it. */
  const marksOf = (page: Page) =>
    linesOf(page.marks).filter(
      ({ stroke }) => stroke.ink === 'black' && stroke.widthMm === 0.12 && !stroke.dash,
    );
  const [page] = overlay('field C 40%\nfix C');
  const levels = marksOf(page!).filter(({ y1, y2 }) => y1 === y2);

  test('has cut marks outside of its corners, which leave the corners free', () => {
    const lying = levels.map(({ x1, x2 }) => [Math.min(x1, x2), Math.max(x1, x2)]);
    expect(lying).toHaveLength(4);
    for (const [from, to] of lying) expect(to! - from!).toBeCloseTo(2, 9);
    const standing = marksOf(page!).filter(({ x1, x2 }) => x1 === x2);
    for (const { y1, y2 } of standing) expect(Math.abs(y2 - y1)).toBeCloseTo(1.3, 9);
    // The corner itself is half a millimetre further in.
    const corners = [...new Set(standing.map(({ x1 }) => x1))].sort((a, b) => a - b);
    expect(corners).toHaveLength(2);
    for (const [from, to] of lying)
      expect(to! < corners[1]! ? corners[0]! - to! : from! - corners[1]!).toBeCloseTo(0.5, 9);
    const heights = [...new Set(levels.map(({ y1 }) => y1))];
    for (const { y1, y2 } of standing)
      expect(Math.min(...heights.map((y) => Math.min(Math.abs(y - y1), Math.abs(y - y2))))).toBeCloseTo(
        0.3,
        9,
      );
  });

  test('begins 6 mm beside what reaches farthest', () => {
    // The standard field of 254 × 142.875 mm, in the middle of which the field of 101.6 × 57.15 mm lies.
    const [upper] = edges(page!);
    const left = Math.min(...marksOf(page!).flatMap(({ x1, x2 }) => (x1 === x2 ? [x1] : [])));
    expect(Math.min(upper!.x1, upper!.x2) - left).toBeCloseTo(76.2 + 6, 9);
    expect(upper!.y1 - Math.min(...levels.map(({ y1 }) => y1))).toBeCloseTo(42.8625 + 6, 9);
  });

  test('has a cross in the middle of each field, along its sides, and none of the standard field', () => {
    const crosses = (one: Page) =>
      linesOf(one.marks).filter(
        ({ stroke, x1, x2, y1, y2 }) =>
          stroke.ink === 'black' &&
          stroke.widthMm === 0.15 &&
          Math.abs(Math.hypot(x2 - x1, y2 - y1) - 8) < 1e-6,
      );
    expect(crosses(page!)).toHaveLength(2);
    const [side] = edges(page!);
    const [along, down] = crosses(page!);
    // The middle of a field of 101.6 × 57.15 mm.
    expect([(along!.x1 + along!.x2) / 2 - side!.x1, (along!.y1 + along!.y2) / 2 - side!.y1]).toEqual([
      expect.closeTo(50.8, 9),
      expect.closeTo(28.575, 9),
    ]);
    expect([along!.y1 - along!.y2, down!.x1 - down!.x2]).toEqual([
      expect.closeTo(0, 9),
      expect.closeTo(0, 9),
    ]);
  });
});

test('of fields in rows and columns each page lies where its number says', () => {
  // 400 % is 1016 × 571.5 mm.
  const all = overlay('field C 400%\nfix C\n');
  const places = all.map((one) =>
    /column (\d+) of (\d+), row (\d+) of (\d+)/.exec(said(one))!.slice(1).map(Number),
  );
  const [, columns, , rows] = places[0]!;
  expect(Math.max(...places.map(([column]) => column!))).toBe(columns);
  expect(Math.max(...places.map(([, , row]) => row!))).toBe(rows);
  // The field's left side stands on the pages of the first column only, 6 mm from the edge; its right side on the last column's.
  const upright = (one: Page) => edges(one).filter(({ x1, x2 }) => x1 === x2).length;
  const inside = all.filter((_, i) => places[i]![0]! > 1 && places[i]![0]! < columns!);
  expect(inside.length).toBeGreaterThan(0);
  expect(inside.every((one) => upright(one) === 0)).toBe(true);
  expect(all.filter((_, i) => [1, columns].includes(places[i]![0]!)).every((one) => upright(one) === 1)).toBe(
    true,
  );
  const level = (one: Page) => edges(one).filter(({ y1, y2 }) => y1 === y2).length;
  expect(all.every((one, i) => level(one) === ([1, rows].includes(places[i]![2]!) ? 1 : 0))).toBe(true);
  // All but the last say that there is more to lay on.
  expect(all.map((one) => said(one).includes('lay the next')).indexOf(false)).toBe(all.length - 1);
});
