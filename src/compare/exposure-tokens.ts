/** What a level shows as a sequence of runs and cycles, for aligning with another version. */

import type { SolvedCycle, SolvedLevel } from '../solve/solved-shot.js';
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
