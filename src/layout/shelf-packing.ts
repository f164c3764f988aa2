/**
 * Boxes on pages: in their order, left to right on shelves, shelves below each other, then on the next page. Knows nothing of
 * what the boxes hold. The same boxes give the same places.
 *
 * A section may have a heading over its boxes, which is repeated on each page that it goes on to. Boxes may come in several
 * sizes: all of them take the best with which no page is added, then, in order, one after the other a better one.
 */

import type { Area } from './table.js';

export interface PackedSize {
  readonly width: number;
  readonly height: number;
}

/** What is packed: its possible sizes, the best first; one at least. */
export interface PackedBox<T> {
  readonly holds: T;
  readonly sizes: readonly PackedSize[];
}

export interface PackedSection<S, T> {
  readonly of: S;
  /** Height of the heading, its distance to the first shelf included; 0 for none. */
  readonly heading: number;
  /** After the section's last shelf, where anything follows on the page. */
  readonly after?: number;
  /** Boxes of one run stand on one shelf where a shelf can hold them. */
  readonly runs: readonly (readonly PackedBox<T>[])[];
}

export interface PackedArea extends Area {
  /** Between neighbours on a shelf, and between shelves. */
  readonly between: number;
  readonly below?: number;
  /** Boxes of a section stand in even columns over the whole width, each as wide as the widest. */
  readonly aligned?: boolean;
}

export interface BoxPlace<T> {
  readonly holds: T;
  /** Which of its sizes it has, and that size. */
  readonly size: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** The height of the highest box of its shelf. */
  readonly shelf: number;
}

export interface PackedPage<S, T> {
  readonly headings: readonly { readonly of: S; readonly y: number; readonly goesOn: boolean }[];
  readonly places: readonly BoxPlace<T>[];
}

const EPSILON = 1e-6;

/** No page without a box. A box that is larger than a page stands out of it, alone on its shelf or its page. */
export function packShelves<S, T>(
  sections: readonly PackedSection<S, T>[],
  area: PackedArea,
): PackedPage<S, T>[] {
  const boxes = sections.flatMap(({ runs }) => runs.flat());
  const steps = boxes.reduce((most, { sizes }) => Math.max(most, sizes.length), 1);
  const atMost = (level: number) => new Map(boxes.map((box) => [box, Math.min(level, box.sizes.length - 1)]));
  let chosen = atMost(steps - 1);
  let pages = packed(sections, area, chosen);
  if (steps === 1) return pages;
  const fewest = pages.length;
  const tried = (choice: Map<PackedBox<T>, number>): boolean => {
    const made = packed(sections, area, choice);
    if (made.length > fewest) return false;
    [chosen, pages] = [choice, made];
    return true;
  };
  for (let level = 0; level < steps - 1; level++) if (tried(atMost(level))) break;
  for (const box of boxes) {
    for (let size = 0; size < chosen.get(box)!; size++) if (tried(new Map(chosen).set(box, size))) break;
  }
  return pages;
}

function packed<S, T>(
  sections: readonly PackedSection<S, T>[],
  area: PackedArea,
  chosen: ReadonlyMap<PackedBox<T>, number>,
): PackedPage<S, T>[] {
  const { below = 0 } = area;
  const bottom = area.y + area.height;
  const pages: { headings: { of: S; y: number; goesOn: boolean }[]; places: BoxPlace<T>[] }[] = [];
  let y = bottom;
  for (const { of, heading, after = 0, runs } of sections) {
    let begun = false;
    for (const shelf of shelvesOf(runs, area, chosen)) {
      const height = Math.max(...shelf.map((one) => one.height));
      const full = y + (begun ? 0 : heading) + height > bottom + EPSILON;
      if (pages.length === 0 || (full && y > area.y)) {
        pages.push({ headings: [], places: [] });
        y = area.y;
      }
      const page = pages.at(-1)!;
      if (heading > 0 && (!begun || y === area.y)) {
        page.headings.push({ of, y, goesOn: begun });
        y += heading;
      }
      begun = true;
      for (const one of shelf) page.places.push({ ...one, y, shelf: height });
      y += height + below;
    }
    if (begun) y += after;
  }
  return pages;
}

type OnShelf<T> = Omit<BoxPlace<T>, 'y' | 'shelf'>;

function shelvesOf<T>(
  runs: readonly (readonly PackedBox<T>[])[],
  { x, width, between, aligned }: PackedArea,
  chosen: ReadonlyMap<PackedBox<T>, number>,
): OnShelf<T>[][] {
  const sizeOf = (box: PackedBox<T>): PackedSize => box.sizes[chosen.get(box)!]!;
  const widest = Math.max(0, ...runs.flat().map((box) => sizeOf(box).width));
  const across = Math.max(1, Math.floor((width + between) / (widest + between)));
  const step = (width + between) / across;
  const shelves: OnShelf<T>[][] = [];
  const room = (count: number, at: number, wide: number): boolean =>
    count === 0 || (aligned ? count < across : at + wide <= x + width + EPSILON);
  let end = x;
  for (const run of runs) {
    const last = shelves.at(-1);
    const whole = run.reduce((sum, box) => sum + sizeOf(box).width + between, -between);
    const together = aligned
      ? (last?.length ?? 0) + run.length <= across
      : room(last?.length ?? 0, end, whole);
    run.forEach((box, i) => {
      const size = sizeOf(box);
      let shelf = shelves.at(-1);
      if (!shelf || (i === 0 && !together) || !room(shelf.length, end, size.width)) {
        shelf = [];
        shelves.push(shelf);
        end = x;
      }
      const at = aligned ? x + shelf.length * step : end;
      shelf.push({ holds: box.holds, size: chosen.get(box)!, x: at, width: size.width, height: size.height });
      end = at + size.width + between;
    });
  }
  return shelves;
}
