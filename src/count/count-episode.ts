/** The cut list of an episode: its rows, where they lie in the running time, and what they come to. */

import type { Counts } from '../solve/solved-shot.js';
import type { CutRow } from './cut-row.js';
import { type PlacedCut, placeCuts } from './running-time.js';

export interface Totals {
  readonly cuts: number;
  /** Times as the cuts name them, dissolves of full times counted twice; frames of the episode. */
  readonly time: number;
  readonly running: number;
  /** Running time beyond the budget, negative: below it; null without a budget. */
  readonly over: number | null;
  readonly rows: number;
  readonly counts: Counts;
  /** New drawings a second of running time, 0 while nothing runs. */
  readonly drawingsASecond: number;
  readonly pages: { readonly sheet: number; readonly all: number };
  readonly problems: { readonly errors: number; readonly warnings: number };
  /** Cuts with errors, and those of them whose time is not known. */
  readonly unsound: number;
  readonly untimed: number;
  readonly withoutArtist: number;
}

/** What one person draws. A cut of several counts for each of them. */
export interface ArtistTotal {
  readonly name: string;
  readonly cuts: number;
  /** Of the cuts, those drawn together with others. */
  readonly shared: number;
  readonly running: number;
  readonly drawings: number;
}

export interface CutList {
  readonly title: string;
  readonly episode: string;
  readonly fps: number;
  readonly overlap: 'half' | 'full';
  /** Running time allowed, frames; null where none is said, or where only some cuts of the episode are listed. */
  readonly budget: number | null;
  readonly rows: readonly CutRow[];
  /** One a row. */
  readonly placed: readonly PlacedCut[];
  readonly totals: Totals;
  /** In the order of their first cuts. */
  readonly artists: readonly ArtistTotal[];
}

export type ListOf = Pick<CutList, 'title' | 'episode' | 'fps' | 'overlap' | 'budget'>;

export function cutList(rows: readonly CutRow[], of: ListOf): CutList {
  const { title, episode, fps, overlap, budget } = of;
  const placed = placeCuts(rows, overlap, fps);
  return {
    ...{ title, episode, fps, overlap, budget, rows, placed },
    totals: totalsOf(rows, placed, of),
    artists: artistsOf(rows, placed),
  };
}

function totalsOf(rows: readonly CutRow[], placed: readonly PlacedCut[], { fps, budget }: ListOf): Totals {
  const sum = (of: (row: CutRow, place: PlacedCut) => number): number =>
    rows.reduce((all, row, i) => all + of(row, placed[i]!), 0);
  const count = (kind: keyof Counts): number => sum(({ counted }) => counted?.counts[kind] ?? 0);
  const running = sum((_, { frames }) => frames);
  const counts = {
    keys: count('keys'),
    breakdowns: count('breakdowns'),
    inbetweens: count('inbetweens'),
    drawings: count('drawings'),
    reused: count('reused'),
    backgrounds: count('backgrounds'),
  };
  return {
    cuts: rows.length,
    time: Math.round(sum(({ counted }, { frameOfRow }) => (counted?.time ?? 0) * frameOfRow)),
    running,
    over: budget === null ? null : running - budget,
    rows: sum(({ counted }) => counted?.rows ?? 0),
    counts,
    drawingsASecond: running > 0 ? (counts.drawings * fps) / running : 0,
    pages: { sheet: sum(({ pages }) => pages?.sheet ?? 0), all: sum(({ pages }) => pages?.all ?? 0) },
    problems: {
      errors: sum(({ problems }) => problems.errors),
      warnings: sum(({ problems }) => problems.warnings),
    },
    unsound: rows.filter(({ sound }) => !sound).length,
    untimed: rows.filter(({ counted }) => counted === null).length,
    withoutArtist: rows.filter(({ artists }) => artists.length === 0).length,
  };
}

function artistsOf(rows: readonly CutRow[], placed: readonly PlacedCut[]): ArtistTotal[] {
  const found = new Map<string, { -readonly [K in keyof ArtistTotal]: ArtistTotal[K] }>();
  rows.forEach(({ artists, counted }, i) => {
    for (const name of artists) {
      const artist = found.get(name) ?? { name, cuts: 0, shared: 0, running: 0, drawings: 0 };
      artist.cuts += 1;
      artist.shared += artists.length > 1 ? 1 : 0;
      artist.running += placed[i]!.lasts;
      artist.drawings += counted?.counts.drawings ?? 0;
      found.set(name, artist);
    }
  });
  return [...found.values()].map((artist) => ({ ...artist, running: Math.round(artist.running) }));
}
