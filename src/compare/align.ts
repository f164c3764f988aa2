/** Alignment of two sequences: which elements are the same, which came in, which went. */

import { diffArrays } from 'diff';

/** A thing in a sequence: the same where the symbols are equal, though it may last for longer or shorter. */
export interface Element {
  readonly symbol: string;
  readonly frames: number;
}

/** Places of two elements that are the same, rising on both sides. */
export type Pair = readonly [old: number, now: number];

/** The costs of Gotoh's alignment: what stays but lasts otherwise, a run of others begun, one more in it. */
const OTHER_LENGTH = 4;
const OPEN = 5;
const EXTEND = 2;

/** Cells of the exact alignment; what is larger is aligned by the shortest edit script. */
const MOST_CELLS = 3_000_000;
const MOST_EDITS = 1500;

export function align(old: readonly Element[], now: readonly Element[]): Pair[] {
  const same = (a: Element, b: Element) => a.symbol === b.symbol && a.frames === b.frames;
  let head = 0;
  while (head < old.length && head < now.length && same(old[head]!, now[head]!)) head++;
  let tail = 0;
  while (
    tail < old.length - head &&
    tail < now.length - head &&
    same(old[old.length - 1 - tail]!, now[now.length - 1 - tail]!)
  )
    tail++;
  const middle = inner(old.slice(head, old.length - tail), now.slice(head, now.length - tail));
  return [
    ...Array.from({ length: head }, (_, i): Pair => [i, i]),
    ...middle.map(([i, j]): Pair => [i + head, j + head]),
    ...Array.from({ length: tail }, (_, i): Pair => [old.length - tail + i, now.length - tail + i]),
  ];
}

function inner(old: readonly Element[], now: readonly Element[]): Pair[] {
  if (old.length === 0 || now.length === 0) return [];
  return (old.length + 1) * (now.length + 1) <= MOST_CELLS ? exact(old, now) : shortest(old, now);
}

/**
 * Gotoh's algorithm (affine gaps): state 0 ends in a pair, 1 in an element of `old` that went, 2 in one of `now` that came.
 * A hold that lasts otherwise costs less than one that goes while another comes.
 */
function exact(old: readonly Element[], now: readonly Element[]): Pair[] {
  const width = now.length + 1;
  const cells = (old.length + 1) * width;
  const cost = [new Int32Array(cells), new Int32Array(cells), new Int32Array(cells)] as const;
  const from = [new Uint8Array(cells), new Uint8Array(cells), new Uint8Array(cells)] as const;
  const never = 1 << 28;
  for (const each of cost) each.fill(never);
  cost[0][0] = 0;
  const best = (cell: number, opens: readonly [number, number, number]): [number, number] => {
    let state = 0;
    let least = never;
    for (let s = 0; s < 3; s++) {
      const here = cost[s]![cell]! + opens[s]!;
      if (here < least) {
        least = here;
        state = s;
      }
    }
    return [least, state];
  };
  for (let i = 0; i <= old.length; i++) {
    for (let j = 0; j <= now.length; j++) {
      const cell = i * width + j;
      if (i > 0 && j > 0 && old[i - 1]!.symbol === now[j - 1]!.symbol) {
        const [least, state] = best(cell - width - 1, [0, 0, 0]);
        cost[0][cell] = least + (old[i - 1]!.frames === now[j - 1]!.frames ? 0 : OTHER_LENGTH);
        from[0][cell] = state;
      }
      if (i > 0) {
        const [least, state] = best(cell - width, [OPEN, EXTEND, OPEN]);
        cost[1][cell] = least;
        from[1][cell] = state;
      }
      if (j > 0) {
        // One run in another's place is one change: coming after going opens no new run.
        const [least, state] = best(cell - 1, [OPEN, EXTEND, EXTEND]);
        cost[2][cell] = least;
        from[2][cell] = state;
      }
    }
  }
  const pairs: Pair[] = [];
  let i = old.length;
  let j = now.length;
  let state = best(i * width + j, [0, 0, 0])[1];
  while (i > 0 || j > 0) {
    const before = from[state]![i * width + j]!;
    if (state === 0) pairs.push([--i, --j]);
    else if (state === 1) i--;
    else j--;
    state = before;
  }
  return pairs.reverse();
}

/** The shortest edit script (Myers); nothing is paired where even that is too long. */
function shortest(old: readonly Element[], now: readonly Element[]): Pair[] {
  const parts = diffArrays(
    old.map(({ symbol }) => symbol),
    now.map(({ symbol }) => symbol),
    { maxEditLength: MOST_EDITS },
  );
  const pairs: Pair[] = [];
  let [i, j] = [0, 0];
  for (const { added, removed, value } of parts ?? []) {
    if (added) j += value.length;
    else if (removed) i += value.length;
    else for (const _ of value) pairs.push([i++, j++]);
  }
  return pairs;
}

/**
 * Pairs what belongs together of two small sets, the likeliest first. `cost` is null where two can never be the same.
 * Returns places; each stands in one pair at most.
 */
export function match<T>(old: readonly T[], now: readonly T[], cost: (a: T, b: T) => number | null): Pair[] {
  const all: [number, number, number][] = [];
  const taken = [new Set<number>(), new Set<number>()] as const;
  const large = old.length * now.length > 250_000;
  for (const [i, a] of old.entries()) {
    // Far too many to try each with each: neighbours in the order of the sheet must do.
    const [first, end] = large ? [Math.max(0, i - 50), i + 50] : [0, now.length];
    for (let j = first; j < Math.min(end, now.length); j++) {
      const here = cost(a, now[j]!);
      if (here !== null) all.push([here, i, j]);
    }
  }
  all.sort((a, b) => a[0] - b[0] || Math.abs(a[1] - a[2]) - Math.abs(b[1] - b[2]) || a[1] - b[1]);
  const pairs: Pair[] = [];
  for (const [, i, j] of all) {
    if (taken[0].has(i) || taken[1].has(j)) continue;
    taken[0].add(i);
    taken[1].add(j);
    pairs.push([i, j]);
  }
  return pairs.sort((a, b) => a[1] - b[1]);
}
