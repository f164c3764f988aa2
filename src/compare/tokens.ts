/** What a level shows as a sequence of runs and cycles, for aligning with another version. */

import type { SolvedCycle, SolvedLevel } from '../solve/solved.js';
import type { Seen } from './change.js';

export interface Token {
  /** The drawing under a name that does not depend on what else the level shows; '' where it is empty. */
  symbol: string;
  readonly seen: Seen;
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
  readonly pass: readonly Token[];
}

/** A level with the lasting names of its drawings. */
export interface Named {
  readonly level: SolvedLevel;
  readonly symbols: ReadonlyMap<string, string>;
}

/** Cycles stand as one token; `flat` writes them out. */
export function tokensOf({ level, symbols }: Named, flat = false): Token[] {
  const kinds = new Map(level.drawings.map((one) => [one.drawing, one]));
  const { exposures } = level;
  const ways = new Map(
    level.passages.flatMap(({ from, to, drawings }) => drawings.map((one) => [one, { from, to }])),
  );

  const seenAt = (frame: number): Seen => {
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
  const run = (from: number, to: number): Token => {
    const { drawing } = exposures[from - 1]!;
    let frame = from;
    while (frame < to && exposures[frame]!.drawing === drawing) frame++;
    const symbol = drawing === null ? '' : symbols.get(drawing)!;
    return { symbol, seen: seenAt(from), start: from, frames: frame - from + 1, cycle: null };
  };
  const between = (from: number, to: number, depth: number): Token[] => {
    const inside = flat
      ? []
      : level.cycles
          .filter((one) => one.depth === depth && one.firstFrame >= from && one.firstFrame <= to)
          .sort((a, b) => a.firstFrame - b.firstFrame);
    const tokens: Token[] = [];
    let next = 0;
    for (let frame = from; frame <= to; ) {
      while (next < inside.length && inside[next]!.firstFrame < frame) next++;
      const cycle = inside[next];
      const token =
        cycle?.firstFrame === frame
          ? cycleToken(cycle, to, depth)
          : run(frame, Math.min(to, cycle ? cycle.firstFrame - 1 : to));
      tokens.push(token);
      frame += token.frames;
    }
    return tokens;
  };
  const cycleToken = (cycle: SolvedCycle, to: number, depth: number): Token => {
    const last = Math.min(cycle.lastFrame, to);
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
      frames: last - cycle.firstFrame + 1,
      cycle: { passFrames, times, bounce, pass },
    };
  };
  return between(1, exposures.length, 0);
}

/**
 * What two cycles repeat, as far as it can be compared: a pass that is cut short says nothing of its rest, and the way back of one
 * there and back says nothing new.
 */
export function passesOf(old: Token, now: Token): readonly [readonly Token[], readonly Token[]] {
  const sides = [old, now] as const;
  const whole = sides.every(({ frames, cycle }) => frames >= cycle!.passFrames);
  const room = Math.min(old.frames, now.frames);
  const [a, b] = sides.map(({ start, cycle }) => {
    if (!whole) return clipped(cycle!.pass, start + room);
    return cycle!.bounce ? there(cycle!.pass) : cycle!.pass;
  }) as [readonly Token[], readonly Token[]];
  return [a, b];
}

/** Whether all that can be seen of two passes is said by `passesOf`. */
export const wholePasses = (old: Token, now: Token): boolean =>
  old.frames >= old.cycle!.passFrames && now.frames >= now.cycle!.passFrames;

function clipped(tokens: readonly Token[], end: number): Token[] {
  return tokens
    .filter(({ start }) => start < end)
    .map((token) => ({ ...token, frames: Math.min(token.frames, end - token.start) }));
}

/** The way there of a whole pass there and back; all of it where it does not mirror. */
function there(pass: readonly Token[]): readonly Token[] {
  const half = pass.length / 2 + 1;
  if (pass.length < 2 || !Number.isInteger(half)) return pass;
  const mirrors = pass.slice(half).every(({ symbol, frames }, i) => {
    const other = pass[half - 2 - i]!;
    return symbol === other.symbol && frames === other.frames;
  });
  return mirrors ? pass.slice(0, half) : pass;
}

/**
 * Gives cycles of both versions that belong together one symbol, and writes out those that stand alone, so that a cycle
 * compares with the same drawings written one by one.
 */
export function pairCycles(old: readonly Token[], now: readonly Token[], names: { old: Named; now: Named }) {
  const alone = { old: new Set<Token>(), now: new Set<Token>() };
  const [cyclesOld, cyclesNow] = [old, now].map((side) => side.filter((token) => token.cycle !== null)) as [
    Token[],
    Token[],
  ];
  const pairs = inOrder(cyclesOld, cyclesNow);
  for (const [count, [a, b]] of pairs.entries()) {
    a.symbol = `cycle ${count}`;
    b.symbol = `cycle ${count}`;
  }
  const paired = new Set(pairs.flat());
  for (const token of cyclesOld) if (!paired.has(token)) alone.old.add(token);
  for (const token of cyclesNow) if (!paired.has(token)) alone.now.add(token);
  return {
    old: written(old, alone.old, names.old),
    now: written(now, alone.now, names.now),
  };
}

/** The pairs of cycles, in order on both sides, that are the most alike in all. */
function inOrder(old: readonly Token[], now: readonly Token[]): [Token, Token][] {
  const drawn = (token: Token) =>
    new Set(token.cycle!.pass.map(({ symbol }) => symbol).filter((one) => one !== ''));
  const sets = { old: old.map(drawn), now: now.map(drawn) };
  const alike = (i: number, j: number): number => {
    const [a, b] = [sets.old[i]!, sets.now[j]!];
    const shared = [...a].filter((one) => b.has(one)).length;
    const all = new Set([...a, ...b]).size;
    return all === 0 ? 0.5 : shared / all + (old[i]!.frames === now[j]!.frames ? 0.05 : 0);
  };
  const width = now.length + 1;
  const sum = new Float64Array((old.length + 1) * width);
  for (let i = 1; i <= old.length; i++) {
    for (let j = 1; j <= now.length; j++) {
      const likeness = alike(i - 1, j - 1);
      const taken = likeness > 0.2 ? sum[(i - 1) * width + j - 1]! + likeness : 0;
      sum[i * width + j] = Math.max(taken, sum[(i - 1) * width + j]!, sum[i * width + j - 1]!);
    }
  }
  const pairs: [Token, Token][] = [];
  let [i, j] = [old.length, now.length];
  while (i > 0 && j > 0) {
    const here = sum[i * width + j]!;
    if (here === sum[(i - 1) * width + j]) i--;
    else if (here === sum[i * width + j - 1]) j--;
    else pairs.push([old[--i]!, now[--j]!]);
  }
  return pairs.reverse();
}

/** Some cycles written out as runs, joined to what they touch. */
function written(tokens: readonly Token[], alone: ReadonlySet<Token>, named: Named): Token[] {
  if (alone.size === 0) return [...tokens];
  const flat = new Map(tokensOf(named, true).map((token) => [token.start, token]));
  const all: Token[] = [];
  for (const token of tokens) {
    if (!alone.has(token)) {
      add(all, token);
      continue;
    }
    for (let frame = token.start; frame < token.start + token.frames; ) {
      const run = flat.get(frame) ?? runOver(flat, frame);
      const end = Math.min(run.start + run.frames, token.start + token.frames);
      add(all, { ...run, start: frame, frames: end - frame });
      frame = end;
    }
  }
  return all;
}

/** The run that a frame lies in. */
function runOver(flat: ReadonlyMap<number, Token>, frame: number): Token {
  for (let at = frame; ; at--) {
    const run = flat.get(at);
    if (run) return run;
  }
}

function add(all: Token[], token: Token): void {
  const last = all.at(-1);
  if (last && last.cycle === null && token.cycle === null && last.symbol === token.symbol) {
    all[all.length - 1] = { ...last, frames: last.frames + token.frames };
  } else all.push(token);
}
