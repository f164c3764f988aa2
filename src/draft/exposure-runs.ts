/** What a table of exposures says of one level: runs of frames that show one drawing, and which drawings are one passage. */

import type { DrawingKind } from '../solve/solved-shot.js';

/** Frames in a row that show the same. */
export interface ExposureRun {
  /** The drawing's name, or null: the level is empty. */
  readonly drawing: string | null;
  readonly kind: DrawingKind | 'empty';
  readonly frames: number;
}

/** A level as a table has it. */
export interface TableLevel {
  readonly name: string;
  readonly runs: readonly ExposureRun[];
  /** Finished numbers by drawing; null: the table does not say. */
  readonly cels: ReadonlyMap<string, number> | null;
}

export interface BetweenParts {
  readonly from: string;
  /** The key that it leads to, '' where the name does not say. */
  readonly to: string;
  readonly index: number;
  readonly letter: string;
  /** `/4`: of four in-betweens; '' where the name does not say. */
  readonly count: string;
}

/** `1.2`, `1>3.2`, `1.2a`, `1>3.2/4`; null for a key, or what is no name. */
export function betweenParts(name: string): BetweenParts | null {
  const found = /^(\d+[a-wyz]?)(?:>(\d+[a-wyz]?))?\.(\d+)([a-z]?)(?:\/(\d+))?$/.exec(name);
  if (!found) return null;
  const [, from = '', to = '', index = '', letter = '', count = ''] = found;
  return { from, to, index: Number(index), letter, count };
}

export const isKeyName = (name: string): boolean => /^\d+[a-wyz]?$/.test(name);

/** How a run is typed: by its name, as an in-between of the passage that it stands in, or as an empty level. */
export type RunNotation = 'key' | 'between' | 'reference' | 'empty';

export interface LevelNotation {
  readonly how: readonly RunNotation[];
  /** Runs first … end - 1 that must stand in brackets: their last in-betweens lead to their first key. */
  readonly wraps: readonly { readonly first: number; readonly end: number }[];
  /** False where some passage stands nowhere as a whole: then its names cannot be made by dashes. */
  readonly whole: boolean;
}

/**
 * How each run can be typed, seen from its neighbours: an in-between is a dash where all in-betweens of its passage stand in
 * order, between two keys, or at the end of a cycle that was left after one pass.
 */
export function notationOf(runs: readonly ExposureRun[]): LevelNotation {
  const names = new Map<string, Set<string>>();
  const groupOf = (name: string): string => {
    const { from, to, count } = betweenParts(name)!;
    return `${from}>${to}/${count}`;
  };
  for (const { drawing, kind } of runs) {
    if (drawing === null || kind === 'key') continue;
    const group = groupOf(drawing);
    names.set(group, (names.get(group) ?? new Set()).add(drawing));
  }
  const how = runs.map(({ kind }): RunNotation => (kind === 'key' || kind === 'empty' ? kind : 'reference'));
  /** The key that each passage leads to, as it first stands whole. */
  const made = new Map<string, string>();
  const left: { at: number; end: number; group: string }[] = [];
  for (let at = 0; at < runs.length; at++) {
    if (runs[at]!.kind !== 'key') continue;
    const first = runs[at + 1]?.drawing ?? '';
    if (betweenParts(first) === null) continue;
    const group = groupOf(first);
    const all = names.get(group)!;
    let end = at + 2;
    while (end < runs.length && end - at - 1 < all.size && all.has(runs[end]!.drawing ?? '')) end++;
    const from = runs[at]!.drawing!;
    const to = runs[end]?.kind === 'key' ? runs[end]!.drawing! : null;
    const between = runs.slice(at + 1, end).map(({ drawing }) => drawing!);
    if (to !== null && (made.get(group) ?? to) === to && isPassage(between, from, to, all)) {
      how.fill('between', at + 1, end);
      made.set(group, to);
    } else if (isPassage(between, from, betweenParts(first)!.to, all)) left.push({ at, end, group });
  }
  const wraps: { first: number; end: number }[] = [];
  for (const { at, end, group } of left) {
    if (made.has(group)) continue;
    const { to } = betweenParts(runs[at + 1]!.drawing!)!;
    const first = to === '' ? at : backTo(runs, at, to);
    if (first === null || wraps.some((one) => one.end > first)) continue;
    how.fill('between', at + 1, end);
    made.set(group, to);
    wraps.push({ first, end });
  }
  return { how, wraps, whole: [...names.keys()].every((group) => made.has(group)) };
}

/** The nearest run before that shows a key, with nothing empty on the way. */
function backTo(runs: readonly ExposureRun[], at: number, key: string): number | null {
  for (let i = at; i >= 0 && runs[i]!.kind !== 'empty'; i--) if (runs[i]!.drawing === key) return i;
  return null;
}

/** Whether these are all in-betweens of one passage from one key to another, in order. */
function isPassage(between: readonly string[], from: string, to: string, all: ReadonlySet<string>): boolean {
  if (between.length !== all.size || !between.every((name) => all.has(name))) return false;
  const parts = between.map((name) => betweenParts(name)!);
  return parts.every(
    (one, i) =>
      one.from === from &&
      (one.to === '' || one.to === to) &&
      (one.letter === '' ? one.index === (lastWhole(parts, i) ?? 0) + 1 : true) &&
      (i === 0 || before(parts[i - 1]!, one)),
  );
}

/** Index of the last in-between before place i that has no letter. */
function lastWhole(parts: readonly BetweenParts[], i: number): number | undefined {
  return parts.slice(0, i).findLast(({ letter }) => letter === '')?.index;
}

const before = (a: BetweenParts, b: BetweenParts): boolean =>
  a.index < b.index || (a.index === b.index && a.letter < b.letter);
