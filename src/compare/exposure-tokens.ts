/** What a level shows as a sequence of runs and cycles, for aligning with another version. */

import type { SolvedCycle, SolvedLevel } from '../solve/solved-shot.js';
import { align } from './align.js';
import type { SeenThing } from './change.js';

export interface ExposureToken {
  /** The drawing under a name that does not depend on what else the level shows; '' where it is empty. */
  symbol: string;
  readonly seen: SeenThing;
  readonly start: number;
  frames: number;
  /** What a cycle repeats, or null. */
  readonly cycle: CycleToken | null;
}

export interface CycleToken {
  readonly passFrames: number;
  readonly times: number | null;
  readonly bounce: boolean;
  /** Its first pass, as far as there is room for it. */
  readonly pass: readonly ExposureToken[];
  /** Frames that it is played; what the token has more is the hold of the drawing that it ends on. */
  readonly played: number;
}

/** A level with the lasting names of its drawings. */
export interface Named {
  readonly level: SolvedLevel;
  readonly symbols: ReadonlyMap<string, string>;
}

/** Cycles stand as one token; `flat` writes them out. */
export function tokensOf({ level, symbols }: Named, flat = false): ExposureToken[] {
  const kinds = new Map(level.drawings.map((one) => [one.drawing, one]));
  const { exposures } = level;
  const ways = new Map(
    level.passages.flatMap(({ from, to, drawings }) => drawings.map((one) => [one, { from, to }])),
  );

  const seenAt = (frame: number): SeenThing => {
    const { drawing, cel } = exposures[frame - 1]!;
    if (drawing === null) return { form: 'empty' };
    return {
      form: 'drawing',
      drawing,
      kind: kinds.get(drawing)!.kind,
      cel: cel!,
      way: ways.get(drawing) ?? null,
    };
  };
  const run = (from: number, to: number): ExposureToken => {
    const { drawing } = exposures[from - 1]!;
    let frame = from;
    while (frame < to && exposures[frame]!.drawing === drawing) frame++;
    const symbol = drawing === null ? '' : symbols.get(drawing)!;
    return { symbol, seen: seenAt(from), start: from, frames: frame - from + 1, cycle: null };
  };
  const between = (from: number, to: number, depth: number): ExposureToken[] => {
    const inside = flat
      ? []
      : level.cycles
          .filter((one) => one.depth === depth && one.firstFrame >= from && one.firstFrame <= to)
          .sort((a, b) => a.firstFrame - b.firstFrame);
    const tokens: ExposureToken[] = [];
    let next = 0;
    for (let frame = from; frame <= to; ) {
      while (next < inside.length && inside[next]!.firstFrame < frame) next++;
      const cycle = inside[next];
      const token =
        cycle?.firstFrame === frame
          ? cycleToken(cycle, to, inside[next + 1]?.firstFrame ?? to + 1, depth)
          : run(frame, Math.min(to, cycle ? cycle.firstFrame - 1 : to));
      tokens.push(token);
      frame += token.frames;
    }
    return tokens;
  };
  /** `end`: the first frame that something else has for itself. */
  const cycleToken = (cycle: SolvedCycle, to: number, end: number, depth: number): ExposureToken => {
    const last = Math.min(cycle.lastFrame, to);
    let held = last;
    while (held + 1 < end && held < to && exposures[held]!.drawing === exposures[last - 1]!.drawing) held++;
    const passEnd = Math.min(last, cycle.firstFrame + cycle.passFrames - 1);
    const pass = between(cycle.firstFrame, passEnd, depth + 1);
    const names = pass.flatMap(({ seen }) =>
      seen.form === 'drawing' ? [seen.drawing] : seen.form === 'cycle' ? [seen.first, seen.last] : [],
    );
    const keys = pass.flatMap(({ seen }) =>
      seen.form === 'drawing' && seen.kind === 'key' ? [seen.drawing] : [],
    );
    const { passFrames, times, bounce } = cycle;
    const furthest = bounce
      ? (keys[Math.floor(keys.length / 2)] ?? names.at(-1))
      : (keys.at(-1) ?? names.at(-1));
    return {
      symbol: '',
      seen: { form: 'cycle', first: keys[0] ?? names[0] ?? '', last: furthest ?? '' },
      start: cycle.firstFrame,
      frames: held - cycle.firstFrame + 1,
      cycle: { passFrames, times, bounce, pass, played: last - cycle.firstFrame + 1 },
    };
  };
  return between(1, exposures.length, 0);
}

// ----
// Names of drawings that last from one version to the next. What a text calls `1.1` is called `1>2.1` as soon as its key leads to
// another key too; here an in-between is always named by both keys. Keys that took another's place keep its name.

export interface Names {
  readonly old: Named;
  readonly now: Named;
  /** Keys in whose place another one stands: the new name by the old one. */
  readonly replaced: ReadonlyMap<string, string>;
}

export function nameBoth(old: SolvedLevel, now: SolvedLevel): Names {
  const replaced = replacedKeys(old, now);
  return {
    old: { level: old, symbols: symbolsOf(old, (key) => replaced.get(key) ?? key) },
    now: { level: now, symbols: symbolsOf(now, (key) => key) },
    replaced,
  };
}

/** By what drawings are called in their text. Another key in a key's place is another drawing, and so are the in-betweens to it. */
export const lastingNames = (level: SolvedLevel): ReadonlyMap<string, string> =>
  symbolsOf(level, (key) => key);

function symbolsOf(level: SolvedLevel, key: (name: string) => string): Map<string, string> {
  const symbols = new Map<string, string>();
  const pairs = new Map<string, number>();
  for (const { from, to, drawings } of level.passages) {
    const pair = `${key(from)}>${key(to)}`;
    // Passages of one pair of keys with another count are other drawings.
    const count = pairs.get(pair) ?? 0;
    pairs.set(pair, count + 1);
    for (const drawing of drawings) {
      const place = /\.([^./]+)(\/\d+)?$/.exec(drawing)?.[1] ?? drawing;
      if (!symbols.has(drawing))
        symbols.set(drawing, `${pair}.${place}${count > 0 ? `/${drawings.length}` : ''}`);
    }
  }
  for (const { drawing, kind } of level.drawings) {
    if (!symbols.has(drawing)) symbols.set(drawing, kind === 'key' ? key(drawing) : drawing);
  }
  return symbols;
}

/** Keys that stand wherever another one stood, which is gone. */
function replacedKeys(old: SolvedLevel, now: SolvedLevel): Map<string, string> {
  const [keysOld, keysNow] = [old, now].map(keysOf) as [Set<string>, Set<string>];
  const gone = new Set([...keysOld].filter((key) => !keysNow.has(key)));
  const come = new Set([...keysNow].filter((key) => !keysOld.has(key)));
  if (gone.size === 0 || come.size === 0) return new Map();
  // Keys that went and keys that came are aligned as if all of them were one.
  const [shownOld, shownNow] = [shownKeys(old, gone), shownKeys(now, come)];
  const places = new Map<string, Map<string, number>>();
  for (const [i, j] of align(shownOld, shownNow)) {
    const [a, b] = [shownOld[i]!, shownNow[j]!];
    if (a.symbol !== OTHER) continue;
    const counts = places.get(a.name) ?? new Map<string, number>();
    places.set(a.name, counts.set(b.name, (counts.get(b.name) ?? 0) + 1));
  }
  const count = (shown: readonly { name: string }[], name: string) =>
    shown.filter((one) => one.name === name).length;
  const replaced = new Map<string, string>();
  for (const [name, counts] of places) {
    const [other] = [...counts.keys()];
    const times = counts.get(other!)!;
    const everywhere = times === count(shownOld, name) && times === count(shownNow, other!);
    if (counts.size === 1 && everywhere && ![...replaced.values()].includes(other!))
      replaced.set(name, other!);
  }
  return replaced;
}

/** Stands for every key that the other version does not have; no name is like it. */
const OTHER = '?';

function shownKeys(level: SolvedLevel, alone: ReadonlySet<string>) {
  const shown: { name: string; symbol: string; frames: number }[] = [];
  for (const { drawing, kind, starts } of level.exposures) {
    if (kind === 'empty' && starts) shown.push({ name: '', symbol: '', frames: 1 });
    if (kind !== 'key' || !starts) continue;
    shown.push({ name: drawing!, symbol: alone.has(drawing!) ? OTHER : drawing!, frames: 1 });
  }
  return shown;
}

function keysOf(level: SolvedLevel): Set<string> {
  return new Set(level.drawings.filter(({ kind }) => kind === 'key').map(({ drawing }) => drawing));
}
