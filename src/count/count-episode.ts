/** The cut list of an episode: its rows, where they lie in the running time, and what they come to. */

import type { Counts } from '../solve/solved-shot.js';
import type { CutCount, CutRow } from './cut-row.js';

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

// ----
// Running time under the two rules for dissolves (common practice). `half`: a cut's time runs to the middle of the dissolve,
// so the times add up as they are. `full`: both times hold the whole dissolve, which runs once; each cut gives up the part
// that lies beyond the middle, the outgoing one the smaller part of an odd length, as with handles.

/** What the rule looks at; null where it is not known. */
export interface Timed {
  readonly counted: Pick<CutCount, 'fps' | 'time' | 'handles' | 'overlap'> | null;
}

/** Where a cut lies in the running time, in frames of the episode. */
export interface PlacedCut {
  /** Frames that have run when it begins. */
  readonly start: number;
  /** Its share of the running time, 0 while its time is not known. */
  readonly frames: number;
  /** The same before it is rounded to whole frames of the episode. */
  readonly lasts: number;
  /** Frames of its picture before that share and behind it, under dissolves. */
  readonly before: number;
  readonly after: number;
  /** Frames of the episode that one row of its sheet takes: not 1 where the cut has an `fps` of its own. */
  readonly frameOfRow: number;
}

/** A dissolve of full times is one where both cuts name it; where they differ, as far as they agree. */
function dissolved(out: Timed | undefined, next: Timed | undefined): number {
  return Math.min(out?.counted?.overlap.out ?? 0, next?.counted?.overlap.in ?? 0);
}

/**
 * `rows` in story order. `fps`: of the episode. Times add up exactly and each cut point is rounded by itself, so that five cuts of
 * ten frames at 25 a second run for 48 frames of 24, not for 50.
 */
export function placeCuts(rows: readonly Timed[], rule: 'half' | 'full', fps: number): PlacedCut[] {
  let run = 0;
  return rows.map((row, i): PlacedCut => {
    const { counted } = row;
    const start = Math.round(run);
    if (!counted) return { start, frames: 0, lasts: 0, before: 0, after: 0, frameOfRow: 1 };
    const frameOfRow = fps / counted.fps;
    const given =
      rule === 'half'
        ? { head: 0, tail: 0 }
        : {
            head: Math.ceil(dissolved(rows[i - 1], row) / 2),
            tail: Math.floor(dissolved(row, rows[i + 1]) / 2),
          };
    const before = rule === 'half' ? counted.handles.head : given.head;
    const after = rule === 'half' ? counted.handles.tail : given.tail;
    const lasts = Math.max(0, ((counted.time - given.head - given.tail) * fps) / counted.fps);
    run += lasts;
    return {
      ...{ start, frames: Math.round(run) - start, lasts },
      ...{ before: before * frameOfRow, after: after * frameOfRow, frameOfRow },
    };
  });
}
