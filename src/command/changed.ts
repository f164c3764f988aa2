/** Which pages of a cut differ from an earlier print, and how that is said. */

import type { PrintedPage } from '../episode/record.js';

export interface Difference {
  /** Places of the pages that differ or are new, from 0. */
  readonly pages: readonly number[];
  /** Those of them that were not there before. */
  readonly fresh: ReadonlySet<number>;
  /** Labels of pages that are no more. */
  readonly gone: readonly string[];
}

/** Pages are the same where label and hash are. */
export function differences(before: readonly PrintedPage[], now: readonly PrintedPage[]): Difference {
  const known = new Map(before.map(({ label, hash }) => [label, hash]));
  const labels = new Set(now.map(({ label }) => label));
  const pages: number[] = [];
  const fresh = new Set<number>();
  for (const [i, { label, hash }] of now.entries()) {
    if (known.get(label) === hash) continue;
    pages.push(i);
    if (!known.has(label)) fresh.add(i);
  }
  return { pages, fresh, gone: before.map(({ label }) => label).filter((label) => !labels.has(label)) };
}

/** `cut 12: pages 2-3 of 5`; with the labels that stand on the paper where they are others. `first`: why all pages are new. */
export function saidOf(
  cut: string,
  now: readonly PrintedPage[],
  { pages, fresh, gone }: Difference,
  first: string | null,
): string {
  const count = now.length === 1 ? '1 page' : `${now.length} pages`;
  if (first !== null) return `cut ${cut}: ${now.length === 1 ? count : `all ${count}`}, ${first}`;
  const lost = gone.length === 0 ? '' : `; no more: ${gone.join(', ')}`;
  if (pages.length === 0) return `cut ${cut}: no page of ${now.length} differs${lost}`;
  const plain = pages.every((i) => now[i]!.label === `${i + 1}` && !fresh.has(i));
  const labels = pages.map((i) => `${now[i]!.label}${fresh.has(i) ? ' new' : ''}`);
  const named = plain ? '' : ` (${labels.join(', ')})`;
  const word = pages.length === 1 ? 'page' : 'pages';
  return `cut ${cut}: ${word} ${ranges(pages.map((i) => i + 1))} of ${now.length}${named}${lost}`;
}

/** `1, 3-5`, of ascending numbers. */
export function ranges(numbers: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const number of numbers) {
    const last = runs.at(-1);
    if (last && last[1] === number - 1) last[1] = number;
    else runs.push([number, number]);
  }
  return runs.map(([from, to]) => (from === to ? `${from}` : `${from}-${to}`)).join(', ');
}
