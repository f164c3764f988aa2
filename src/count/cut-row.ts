/** One line of the cut list: what is counted of a cut. Small, so that thousands are kept while the solved cuts are dropped. */

import type { Frames, Shot } from '../shot/shot.js';
import type { Counts, SolvedShot } from '../solve/solved-shot.js';

export interface Problems {
  readonly errors: number;
  readonly warnings: number;
}

/** Printed pages: those of the sheet, and all of the cut. */
export interface PageCounts {
  readonly sheet: number;
  readonly all: number;
}

/** What of a cut is seen where, for the picture of the episode. Frames are rows of its sheet. */
export interface Rhythm {
  /** Rows on which camera or levels move, in order, apart from each other. */
  readonly moving: readonly Frames[];
  /** Rows on which somebody speaks, in order, apart from each other. */
  readonly spoken: readonly Frames[];
  /** First frames of the drawings that are drawn for this cut, rising; one for each drawing. */
  readonly fresh: readonly number[];
}

export interface CutRow {
  /** What messages call its file. */
  readonly file: string;
  readonly cut: string;
  readonly title: string;
  readonly scene: string;
  readonly artists: readonly string[];
  readonly problems: Problems;
  /** Null while errors leave nothing to count: no time, or no cut at all. */
  readonly counted: CutCount | null;
  /** Whether everything of the cut could be read. With errors the counts hold what was found. */
  readonly sound: boolean;
  /** Null for a cut that is not printed because of its errors. */
  readonly pages: PageCounts | null;
}

export interface CutCount {
  /** Its own: the frames below are counted by it. */
  readonly fps: number;
  /** Without handles. */
  readonly time: number;
  /** Of the sheet: time and handles. */
  readonly rows: number;
  readonly handles: { readonly head: number; readonly tail: number };
  /** Lengths of the dissolves with the cut before and the next, 0 where there is none. */
  readonly overlap: { readonly in: number; readonly out: number };
  /** Levels that have a timeline. */
  readonly levels: number;
  readonly counts: Counts;
  /** What moves and what the light does, each name once, in the order of the first rows. */
  readonly moves: readonly string[];
  readonly rhythm: Rhythm;
}

/** What the solved cut does not know: where it stands, and what others have found of it. */
export interface RowContext {
  readonly file: string;
  readonly problems: Problems;
  readonly sound: boolean;
  readonly pages: PageCounts | null;
  /** Names of the moves, in the language in which the list is read. */
  readonly moves: readonly string[];
}

export function cutRow(solved: SolvedShot, known: RowContext): CutRow {
  const { shot, levels, counts } = solved;
  const { file, problems, sound, pages, moves } = known;
  return {
    ...{ file, problems, sound, pages },
    ...named(shot),
    counted: {
      fps: shot.fps,
      time: shot.time,
      rows: shot.length,
      handles: { head: shot.handles.head, tail: shot.handles.tail },
      overlap: { in: dissolve(shot, 'in'), out: dissolve(shot, 'out') },
      levels: levels.filter(({ timed }) => timed).length,
      counts: { ...counts },
      moves: [...moves],
      rhythm: rhythmOf(solved),
    },
  };
}

/** A cut of which errors leave nothing but names. */
export function uncountedRow(
  names: Pick<CutRow, 'cut' | 'title' | 'scene' | 'artists'>,
  { file, problems }: Pick<RowContext, 'file' | 'problems'>,
): CutRow {
  const { cut, title, scene, artists } = names;
  return { file, problems, cut, title, scene, artists, counted: null, sound: false, pages: null };
}

function named({ cut, title, scene, artists }: Shot): Pick<CutRow, 'cut' | 'title' | 'scene' | 'artists'> {
  return { cut, title, scene, artists: [...new Set(artists)] };
}

function dissolve({ camera }: Shot, way: 'in' | 'out'): number {
  const found = camera.light.find((light) => light.kind === 'overlap' && light.way === way);
  return found?.kind === 'overlap' ? found.length : 0;
}

function rhythmOf({ shot, levels, camera }: SolvedShot): Rhythm {
  const moving = camera.moves.map(({ start, end }) => ({ from: start + 1, to: end }));
  const spoken = shot.spoken.filter(({ kind }) => kind === 'voice').map(({ frames }) => frames);
  const fresh = levels.flatMap(({ background, drawings }) =>
    background ? [] : drawings.filter(({ reused }) => !reused).map(({ firstFrame }) => firstFrame),
  );
  return {
    moving: apart(moving, shot.length),
    spoken: apart(spoken, shot.length),
    fresh: fresh.sort((a, b) => a - b),
  };
}

/** The frames that any of the ranges takes of a sheet with so many rows, as ranges that do not touch. */
function apart(ranges: readonly Frames[], rows: number): Frames[] {
  const out: { from: number; to: number }[] = [];
  const inside = ranges
    .map(({ from, to }) => ({ from: Math.max(1, from), to: Math.min(rows, to) }))
    .filter(({ from, to }) => to >= from)
    .sort((a, b) => a.from - b.from);
  for (const range of inside) {
    const last = out.at(-1);
    if (last && range.from <= last.to + 1) last.to = Math.max(last.to, range.to);
    else out.push({ ...range });
  }
  return out;
}
