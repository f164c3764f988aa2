/** Which cycles of two versions belong together, and what of them can be compared. */

import { align } from './align.js';
import { type ExposureToken, type Named, tokensOf } from './exposure-tokens.js';

/**
 * What two cycles repeat, as far as it can be compared: a pass that is cut short says nothing of its rest, and the way back of one
 * there and back says nothing new.
 */
export function passesOf(
  old: ExposureToken,
  now: ExposureToken,
): readonly [readonly ExposureToken[], readonly ExposureToken[]] {
  const sides = [old, now] as const;
  const whole = wholePasses(old, now);
  const room = Math.min(old.cycle!.played, now.cycle!.played);
  const [a, b] = sides.map(({ start, cycle }) => {
    if (!whole) return clipped(cycle!.pass, start + room);
    return cycle!.bounce ? there(cycle!.pass) : cycle!.pass;
  }) as [readonly ExposureToken[], readonly ExposureToken[]];
  return [a, b];
}

/** Whether all that can be seen of two passes is said by `passesOf`. */
export const wholePasses = (old: ExposureToken, now: ExposureToken): boolean =>
  [old, now].every(({ cycle }) => cycle!.played >= cycle!.passFrames);

function clipped(tokens: readonly ExposureToken[], end: number): ExposureToken[] {
  return tokens
    .filter(({ start }) => start < end)
    .map((token) => ({ ...token, frames: Math.min(token.frames, end - token.start) }));
}

/** The way there of a whole pass there and back; all of it where it does not mirror. */
function there(pass: readonly ExposureToken[]): readonly ExposureToken[] {
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
export function pairCycles(
  old: readonly ExposureToken[],
  now: readonly ExposureToken[],
  names: { old: Named; now: Named },
) {
  const alone = { old: new Set<ExposureToken>(), now: new Set<ExposureToken>() };
  const [cyclesOld, cyclesNow] = [old, now].map((side) => side.filter((token) => token.cycle !== null)) as [
    ExposureToken[],
    ExposureToken[],
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
    alone,
  };
}

/** Of more cycles only those are paired that repeat the same. */
const MOST_PAIRS = 100_000;

/** The pairs of cycles, in order on both sides, that are the most alike in all. */
function inOrder(
  old: readonly ExposureToken[],
  now: readonly ExposureToken[],
): [ExposureToken, ExposureToken][] {
  if (old.length * now.length > MOST_PAIRS) {
    const repeated = (token: ExposureToken) => ({
      symbol: token.cycle!.pass.map(({ symbol }) => symbol).join(),
      frames: 0,
    });
    return align(old.map(repeated), now.map(repeated)).map(([i, j]) => [old[i]!, now[j]!]);
  }
  const drawn = (token: ExposureToken) =>
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
  const pairs: [ExposureToken, ExposureToken][] = [];
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
function written(
  tokens: readonly ExposureToken[],
  alone: ReadonlySet<ExposureToken>,
  named: Named,
): ExposureToken[] {
  if (alone.size === 0) return [...tokens];
  const flat = new Map(tokensOf(named, true).map((token) => [token.start, token]));
  const all: ExposureToken[] = [];
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
function runOver(flat: ReadonlyMap<number, ExposureToken>, frame: number): ExposureToken {
  for (let at = frame; ; at--) {
    const run = flat.get(at);
    if (run) return run;
  }
}

function add(all: ExposureToken[], token: ExposureToken): void {
  const last = all.at(-1);
  if (last && last.cycle === null && token.cycle === null && last.symbol === token.symbol) {
    all[all.length - 1] = { ...last, frames: last.frames + token.frames };
  } else all.push(token);
}

/** The same tokens with those that make up a whole cycle of `alone` joined again. */
export function regrouped(tokens: readonly ExposureToken[], alone: Iterable<ExposureToken>): ExposureToken[] {
  const cycles = new Map([...alone].map((cycle) => [cycle.start, cycle]));
  const all: ExposureToken[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i]!;
    const cycle = cycles.get(token.start);
    const end = cycle ? cycle.start + cycle.frames : 0;
    let last = i;
    while (last < tokens.length && tokens[last]!.start + tokens[last]!.frames < end) last++;
    const whole =
      cycle && last > i && last < tokens.length && tokens[last]!.start + tokens[last]!.frames === end;
    all.push(whole ? cycle : token);
    if (whole) i = last;
  }
  return all;
}

/** A cycle before and after. */
interface Both {
  readonly old: ExposureToken;
  readonly now: ExposureToken;
}

/**
 * Whether a cycle changed in other ways than by what is left for it. One that `yields` is cut by what comes before it: it is
 * played less often then, and nothing has changed in it.
 */
export function differs(pair: Both, yields: boolean): boolean {
  const { old, now } = pair;
  const [a, b] = [old.cycle, now.cycle];
  if (!a || !b) return false;
  if (a.bounce !== b.bounce || otherTimes(pair, yields)) return true;
  if (a.passFrames !== b.passFrames && wholePasses(old, now)) return true;
  const [before, after] = passesOf(old, now);
  if (before.length !== after.length) return true;
  return before.some((token, i) => {
    const other = after[i]!;
    if (token.cycle && other.cycle) return differs({ old: token, now: other }, false);
    return token.symbol !== other.symbol || token.frames !== other.frames;
  });
}

export function otherTimes({ old, now }: Both, yields: boolean): boolean {
  const [a, b] = [old.cycle!, now.cycle!];
  const cut = [a, b].some(({ played, passFrames }) => played % passFrames !== 0);
  if (yields && cut) return false;
  return a.played !== b.played && a.times !== b.times && a.times !== null && b.times !== null;
}

/** What a cycle ends on, as the run that is seen there. */
export function endHeld(token: ExposureToken): ExposureToken {
  const { played, passFrames, pass } = token.cycle!;
  const into = (played - 1) % passFrames;
  const last = pass.findLast(({ start }) => start - token.start <= into) ?? pass.at(-1)!;
  const shownFor = into - (last.start - token.start) + 1;
  const start = token.start + played - shownFor;
  return { ...last, start, frames: token.start + token.frames - start };
}
