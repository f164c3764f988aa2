/** The cut list as CSV (a row a cut) and as JSON (with totals and artists). cut-list.schema.json describes the JSON. */

import type { CutList, PlacedCut } from '../count/count-episode.js';
import type { CutRow, Rhythm } from '../count/cut-row.js';
import { feetAndFrames, secondsAndFrames } from '../shot/time-notation.js';
import type { Counts } from '../solve/solved-shot.js';
import { csvLine } from './cut-csv.js';
import { jsonText } from './cut-json.js';

/** Raised when something that is there changes its meaning or goes; additions leave it. */
export const CUT_LIST_VERSION = 1;

type Cell = string | number | null | undefined;

/** One entry a column. Empty where it is not known. Several names in one cell have `; ` between them. */
const columns: readonly (readonly [name: string, of: (row: CutRow, placed: PlacedCut) => Cell])[] = [
  ['cut', ({ cut }) => cut],
  ['title', ({ title }) => title],
  ['scene', ({ scene }) => scene],
  ['time', ({ counted }) => (counted ? secondsAndFrames(counted.time, counted.fps) : null)],
  ['feet', ({ counted }) => (counted ? feetAndFrames(counted.time) : null)],
  ['frames', ({ counted }) => counted?.time],
  ['rows', ({ counted }) => counted?.rows],
  ['start', ({ counted }, { start }) => (counted ? start : null)],
  ['running', ({ counted }, { frames }) => (counted ? frames : null)],
  ['levels', ({ counted }) => counted?.levels],
  ['keys', ({ counted }) => counted?.counts.keys],
  ['breakdowns', ({ counted }) => counted?.counts.breakdowns],
  ['inbetweens', ({ counted }) => counted?.counts.inbetweens],
  ['drawings', ({ counted }) => counted?.counts.drawings],
  ['reused', ({ counted }) => counted?.counts.reused],
  ['backgrounds', ({ counted }) => counted?.counts.backgrounds],
  ['camera', ({ counted }) => counted?.moves.join('; ')],
  ['sheetPages', ({ pages }) => pages?.sheet],
  ['pages', ({ pages }) => pages?.all],
  ['artists', ({ artists }) => artists.join('; ')],
  ['errors', ({ problems }) => problems.errors],
  ['warnings', ({ problems }) => problems.warnings],
];

export function cutListCsv({ rows, placed }: CutList): string {
  const head = csvLine(columns.map(([name]) => name));
  return head + rows.map((row, i) => csvLine(columns.map(([, of]) => of(row, placed[i]!) ?? null))).join('');
}

export interface ExportedCut {
  readonly cut: string;
  readonly title: string;
  readonly scene: string;
  readonly artists: readonly string[];
  /** False: errors keep parts of the cut from being counted, and it is not printed. */
  readonly sound: boolean;
  readonly errors: number;
  readonly warnings: number;
  /** Null where errors leave nothing to count. */
  readonly counted: {
    readonly fps: number;
    /** Frames without handles, and the same as it is written. */
    readonly time: number;
    readonly seconds: string;
    readonly feet: string;
    readonly rows: number;
    /** Running frames before it, and its own share. */
    readonly start: number;
    readonly running: number;
    readonly levels: number;
    readonly counts: Counts;
    readonly camera: readonly string[];
    readonly rhythm: Rhythm;
  } | null;
  readonly pages: { readonly sheet: number; readonly all: number } | null;
}

export interface ExportedList {
  readonly version: typeof CUT_LIST_VERSION;
  readonly title: string;
  readonly episode: string;
  readonly fps: number;
  readonly overlap: 'half' | 'full';
  /** Frames, or null: none is said, or only some cuts are listed. */
  readonly budget: number | null;
  readonly totals: {
    readonly cuts: number;
    readonly time: number;
    readonly running: number;
    /** Frames beyond the budget, negative: below it. */
    readonly over: number | null;
    readonly counts: Counts;
    readonly drawingsASecond: number;
    readonly sheetPages: number;
    readonly pages: number;
    readonly errors: number;
    readonly warnings: number;
    readonly unsound: number;
    readonly untimed: number;
    readonly withoutArtist: number;
  };
  readonly artists: readonly {
    readonly name: string;
    readonly cuts: number;
    readonly shared: number;
    readonly running: number;
    readonly drawings: number;
  }[];
  readonly cuts: readonly ExportedCut[];
}

export function toExportedList(list: CutList): ExportedList {
  const { title, episode, fps, overlap, budget, totals, artists, rows, placed } = list;
  return {
    ...{ version: CUT_LIST_VERSION, title, episode, fps, overlap, budget },
    totals: {
      cuts: totals.cuts,
      time: totals.time,
      running: totals.running,
      over: totals.over,
      counts: totals.counts,
      drawingsASecond: totals.drawingsASecond,
      sheetPages: totals.pages.sheet,
      pages: totals.pages.all,
      errors: totals.problems.errors,
      warnings: totals.problems.warnings,
      unsound: totals.unsound,
      untimed: totals.untimed,
      withoutArtist: totals.withoutArtist,
    },
    artists: artists.map(({ name, cuts, shared, running, drawings }) => ({
      name,
      cuts,
      shared,
      running,
      drawings,
    })),
    cuts: rows.map((row, i) => exportedCut(row, placed[i]!)),
  };
}

function exportedCut(
  { cut, title, scene, artists, sound, problems, counted, pages }: CutRow,
  placed: PlacedCut,
): ExportedCut {
  return {
    ...{ cut, title, scene, artists, sound },
    errors: problems.errors,
    warnings: problems.warnings,
    counted: counted && {
      fps: counted.fps,
      time: counted.time,
      seconds: secondsAndFrames(counted.time, counted.fps),
      feet: feetAndFrames(counted.time),
      rows: counted.rows,
      start: placed.start,
      running: placed.frames,
      levels: counted.levels,
      counts: counted.counts,
      camera: counted.moves,
      rhythm: counted.rhythm,
    },
    pages,
  };
}

export function cutListJson(list: CutList): string {
  return jsonText(toExportedList(list));
}
