/** Rows of a cut list made by hand. */

import { type CutList, cutList, type ListOf } from '../../src/count/count-episode.js';
import type { CutCount, CutRow } from '../../src/count/cut-row.js';

export const NOTHING: CutCount = {
  fps: 24,
  time: 24,
  rows: 24,
  handles: { head: 0, tail: 0 },
  overlap: { in: 0, out: 0 },
  levels: 0,
  counts: { keys: 0, breakdowns: 0, inbetweens: 0, drawings: 0, reused: 0, backgrounds: 0 },
  moves: ['FIX'],
  rhythm: { moving: [], spoken: [], fresh: [] },
};

export function row(cut: string, counted: Partial<CutCount> | null, more: Partial<CutRow> = {}): CutRow {
  return {
    file: `${cut}.cut`,
    cut,
    title: '',
    scene: '',
    artists: [],
    problems: { errors: 0, warnings: 0 },
    counted: counted && { ...NOTHING, ...counted, rows: counted.rows ?? counted.time ?? NOTHING.rows },
    sound: true,
    pages: { sheet: 1, all: 2 },
    ...more,
  };
}

export function listOf(rows: readonly CutRow[], more: Partial<ListOf> = {}): CutList {
  return cutList(rows, {
    title: 'Samphire Ferry',
    episode: '3',
    fps: 24,
    overlap: 'half',
    budget: null,
    ...more,
  });
}
