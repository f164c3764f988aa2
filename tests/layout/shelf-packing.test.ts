/** Boxes of any sizes on pages: all there, in order, apart, inside, no page more than there must be. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type PackedArea, type PackedSection, packShelves } from '../../src/layout/shelf-packing.js';

const AREA = { x: 5, y: 9, width: 100, height: 80 };
const areas = fc
  .record({
    between: fc.integer({ min: 0, max: 6 }),
    below: fc.integer({ min: 0, max: 6 }),
    aligned: fc.boolean(),
  })
  .map((one): PackedArea => ({ ...AREA, ...one }));

/** Boxes numbered through, each in up to three sizes, the best first. */
const sections = fc
  .array(
    fc.record({
      heading: fc.integer({ min: 0, max: 9 }),
      after: fc.integer({ min: 0, max: 5 }),
      runs: fc.array(
        fc.array(
          fc.record({
            width: fc.integer({ min: 5, max: 100 }),
            height: fc.integer({ min: 4, max: 65 }),
            scales: fc.constantFrom([1], [1, 0.7], [1, 0.8, 0.5]),
          }),
          { minLength: 1, maxLength: 4 },
        ),
        { minLength: 1, maxLength: 4 },
      ),
    }),
    { minLength: 1, maxLength: 4 },
  )
  .map((made) => {
    let holds = 0;
    return made.map(
      ({ heading, after, runs }, of): PackedSection<number, number> => ({
        of,
        heading,
        after,
        runs: runs.map((run) =>
          run.map(({ width, height, scales }) => ({
            holds: holds++,
            sizes: scales.map((scale) => ({ width: width * scale, height: height * scale })),
          })),
        ),
      }),
    );
  });

interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}
const apart = (a: Rectangle, b: Rectangle): boolean =>
  a.x + a.width <= b.x + 1e-6 ||
  b.x + b.width <= a.x + 1e-6 ||
  a.y + a.height <= b.y + 1e-6 ||
  b.y + b.height <= a.y + 1e-6;

/** One size each: the one with the given index, or the last. */
const only = (
  made: readonly PackedSection<number, number>[],
  size: number,
): PackedSection<number, number>[] =>
  made.map((section) => ({
    ...section,
    runs: section.runs.map((run) =>
      run.map((box) => ({ ...box, sizes: [box.sizes[Math.min(size, box.sizes.length - 1)]!] })),
    ),
  }));

describe('boxes of any sizes', () => {
  test('are all there, in order, reading shelf by shelf and page by page', () => {
    fc.assert(
      fc.property(sections, areas, (made, area) => {
        const pages = packShelves(made, area);
        const boxes = made.flatMap(({ runs }) => runs.flat());
        expect(pages.flatMap(({ places }) => places.map(({ holds }) => holds))).toEqual(
          boxes.map(({ holds }) => holds),
        );
        for (const { places } of pages) {
          expect(places.length).toBeGreaterThan(0);
          places.forEach((one, i) => {
            const { width, height } = boxes[one.holds]!.sizes[one.size]!;
            expect([one.width, one.height]).toEqual([width, height]);
            const before = places[i - 1];
            if (before) expect(one.y > before.y || (one.y === before.y && one.x > before.x)).toBe(true);
          });
        }
      }),
    );
  });

  test('stand apart from each other and from headings, inside the page, their gaps between them', () => {
    fc.assert(
      fc.property(sections, areas, (made, area) => {
        for (const { headings, places } of packShelves(made, area)) {
          const over = headings.map(({ of, y }) => ({
            x: area.x,
            y,
            width: area.width,
            height: made[of]!.heading,
          }));
          const all: Rectangle[] = [...places, ...over];
          all.forEach((one, i) => {
            expect(one.x).toBeGreaterThanOrEqual(area.x - 1e-6);
            expect(one.y).toBeGreaterThanOrEqual(area.y - 1e-6);
            expect(one.x + one.width).toBeLessThanOrEqual(area.x + area.width + 1e-6);
            expect(one.y + one.height).toBeLessThanOrEqual(area.y + area.height + 1e-6);
            for (const other of all.slice(i + 1)) expect(apart(one, other)).toBe(true);
          });
          places.forEach((one, i) => {
            const next = places[i + 1];
            if (next?.y === one.y)
              expect(next.x - one.x - one.width).toBeGreaterThanOrEqual(area.between - 1e-6);
            else if (next) expect(next.y - one.y - one.shelf).toBeGreaterThanOrEqual(area.below! - 1e-6);
          });
        }
      }),
    );
  });

  test('have the heading of their section over them on every page', () => {
    fc.assert(
      fc.property(sections, areas, (made, area) => {
        const begun = new Set<number>();
        for (const { headings, places } of packShelves(made, area)) {
          const there = new Set(
            places.flatMap(({ holds }) =>
              made
                .filter(({ heading, runs }) => heading > 0 && runs.flat().some((box) => box.holds === holds))
                .map(({ of }) => of),
            ),
          );
          expect(headings.map(({ of }) => of)).toEqual([...there]);
          for (const { of, goesOn } of headings) {
            expect(goesOn).toBe(begun.has(of));
            begun.add(of);
          }
        }
      }),
    );
  });

  test('take no more pages than their smallest sizes do, and the best ones where these take no more', () => {
    fc.assert(
      fc.property(sections, areas, (made, area) => {
        const pages = packShelves(made, area);
        const smallest = packShelves(only(made, 2), area).length;
        expect(pages.length).toBeLessThanOrEqual(smallest);
        if (packShelves(only(made, 0), area).length <= smallest)
          expect(
            pages.flatMap(({ places }) => places.map(({ size }) => size)).every((size) => size === 0),
          ).toBe(true);
      }),
    );
  });

  // A second, simpler reading of the rules: text breaks the same way. Each box is a word, each shelf a line.
  test('of one size fill shelves as words fill lines, and pages as lines do', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({ width: fc.integer({ min: 5, max: 100 }), height: fc.integer({ min: 4, max: 80 }) }),
        ),
        (boxes) => {
          const section = { of: 0, heading: 0, runs: boxes.map((size, i) => [{ holds: i, sizes: [size] }]) };
          const lines: number[][] = [];
          let used = Number.POSITIVE_INFINITY;
          boxes.forEach(({ width }, i) => {
            if (used + 2 + width > AREA.width) {
              lines.push([]);
              used = -2;
            }
            lines.at(-1)!.push(i);
            used += 2 + width;
          });
          const pages: number[][][] = [];
          let full = Number.POSITIVE_INFINITY;
          for (const line of lines) {
            const height = Math.max(...line.map((i) => boxes[i]!.height));
            if (full + height > AREA.height) {
              pages.push([]);
              full = 0;
            }
            pages.at(-1)!.push(line);
            full += height;
          }
          const shelves = packShelves([section], { ...AREA, between: 2 }).map(({ places }) =>
            [...new Set(places.map(({ y }) => y))].map((y) =>
              places.filter((place) => place.y === y).map(({ holds }) => holds),
            ),
          );
          expect(shelves).toEqual(pages);
        },
      ),
    );
  });

  test('of one run start a shelf of their own rather than be parted', () => {
    const box = (holds: string, width: number) => ({ holds, sizes: [{ width, height: 10 }] });
    const runs = [[box('a', 60)], [box('b', 30), box('c', 30)], [box('d', 30)]];
    const [page] = packShelves([{ of: 0, heading: 0, runs }], { ...AREA, between: 0 });
    expect(page!.places.map(({ holds, x, y }) => [holds, x, y])).toEqual([
      ['a', 5, 9],
      ['b', 5, 19],
      ['c', 35, 19],
      ['d', 65, 19],
    ]);
  });

  test('of no section take no page', () => {
    expect(packShelves([], { ...AREA, between: 0 })).toEqual([]);
  });
});
