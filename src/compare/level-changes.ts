/** The levels of two versions: which came, went, were renamed; the stack; and of each what it shows and what it lies on. */

import type { Level, Timeline } from '../shot/shot.js';
import type { SolvedLevel, SolvedShot } from '../solve/solved-shot.js';
import type { Change, ChangeBody, LevelSeen } from './change.js';
import { exposureChanges } from './exposure-changes.js';
import { type Names, nameBoth } from './exposure-tokens.js';
import { chartChanges, comparePassages, drawingChanges, placeChanges } from './passage-changes.js';

interface Side {
  readonly solved: SolvedLevel;
  readonly level: Level;
  readonly flashes: boolean;
}

/** `names`: what the levels of the old version are called now. */
export interface Levels {
  readonly changes: readonly Change[];
  readonly names: ReadonlyMap<string, string>;
}

export function compareLevels(old: SolvedShot, now: SolvedShot): Levels {
  const [before, after] = [old, now].map(sidesOf) as [Map<string, Side>, Map<string, Side>];
  const names = namesOf(before, after);
  const changes: Change[] = [...stackChanges([...before.keys()], [...after.keys()], names)];
  const back = new Map([...names].map(([from, to]) => [to, from]));
  const order = [...after.keys()];
  for (const [name, side] of after) {
    const other = before.get(back.get(name) ?? '');
    if (other) changes.push(...levelChanges(name, other, side, names));
    else {
      const below = order[order.indexOf(name) - 1] ?? null;
      const rows = side.solved.timed ? { from: 1, to: now.shot.length } : null;
      changes.push({
        kind: 'level-added',
        above: below,
        ...seen(side),
        place: { kind: 'level', level: name },
        rows,
      });
    }
  }
  for (const [name, side] of before) {
    if (!names.has(name)) changes.push({ kind: 'level-dropped', ...seen(side), place: null, rows: null });
  }
  return { changes, names };
}

function sidesOf({ shot, levels }: SolvedShot): Map<string, Side> {
  const flashing = new Set(shot.camera.flashing);
  return new Map(
    levels.map((solved, i) => [
      solved.name,
      { solved, level: shot.levels[i]!, flashes: flashing.has(solved.name) },
    ]),
  );
}

function seen({ solved: { name, title, drawings } }: Side): LevelSeen {
  return { level: name, title, drawings: drawings.filter(({ reused }) => !reused).length };
}

/** The same names, and those of levels that only changed their name: they show the same throughout. */
function namesOf(old: ReadonlyMap<string, Side>, now: ReadonlyMap<string, Side>): Map<string, string> {
  const names = new Map([...old.keys()].filter((name) => now.has(name)).map((name) => [name, name]));
  const come = [...now].filter(([name]) => !old.has(name));
  const taken = new Set<string>();
  for (const [name, side] of old) {
    if (names.has(name)) continue;
    const twin = come.find(([other, it]) => !taken.has(other) && alike(side, it));
    if (!twin) continue;
    names.set(name, twin[0]);
    taken.add(twin[0]);
  }
  return names;
}

function alike(a: Side, b: Side): boolean {
  if (a.solved.timed !== b.solved.timed) return false;
  // What is simply there can be told by nothing but its artwork.
  if (!a.solved.timed)
    return a.level.sizeMm !== null && equal(sizeOf(a), sizeOf(b)) && equal(a.level.homeMm, b.level.homeMm);
  return sameRows(nameBoth(a.solved, b.solved));
}

function stackChanges(
  old: readonly string[],
  now: readonly string[],
  names: ReadonlyMap<string, string>,
): Change[] {
  const kept = old.flatMap((name) => names.get(name) ?? []);
  const left = now.filter((name) => kept.includes(name));
  if (kept.every((name, i) => name === left[i])) return [];
  return [{ kind: 'stack', old, now, place: null, rows: null }];
}

function levelChanges(name: string, old: Side, now: Side, names: ReadonlyMap<string, string>): Change[] {
  const place = { kind: 'level', level: name } as const;
  const changes: Change[] = [];
  const add = (body: ChangeBody) => changes.push({ ...body, place, rows: null } as Change);
  if (old.level.name !== name) add({ kind: 'level-renamed', level: name, old: old.level.name });
  if (old.solved.title !== now.solved.title)
    add({ kind: 'level-title', level: name, old: old.solved.title, now: now.solved.title });
  if (!equal(old.solved.reuse, now.solved.reuse))
    add({ kind: 'reuse', level: name, old: old.solved.reuse, now: now.solved.reuse });
  const called = (others: readonly string[]) => others.map((one) => names.get(one) ?? one);
  const set = (others: readonly string[]) => [...others].sort().join(' ');
  const others = [
    ['with', called(old.level.drawnWith), now.level.drawnWith],
    ['masks', called(old.level.masks), now.level.masks],
  ] as const;
  for (const [part, was, is] of others) {
    if (set(was) !== set(is)) add({ kind: 'level-others', level: name, part, old: was, now: is });
  }
  if (!equal(sizeOf(old), sizeOf(now)))
    add({ kind: 'artwork-size', level: name, old: sizeOf(old), now: sizeOf(now) });
  if (!equal(old.level.homeMm, now.level.homeMm))
    add({ kind: 'artwork-home', level: name, old: point(old.level.homeMm), now: point(now.level.homeMm) });
  const manners = {
    free: [old.level.free, now.level.free],
    carry: [old.level.carry, now.level.carry],
    flash: [old.flashes, now.flashes],
  } as const;
  for (const manner of ['free', 'carry', 'flash'] as const) {
    const [was, is] = manners[manner];
    if (was !== is) add({ kind: 'level-manner', level: name, manner, now: is });
  }
  changes.push(...timelineChanges(name, old, now));
  return changes;
}

function timelineChanges(name: string, old: Side, now: Side): Change[] {
  const place = { kind: 'level', level: name } as const;
  const length = now.solved.exposures.length;
  if (old.solved.timed !== now.solved.timed) {
    const rows = now.solved.timed ? { from: 1, to: length } : null;
    return [{ kind: 'level-timed', level: name, now: now.solved.timed, place, rows }];
  }
  if (!now.solved.timed) return [];
  if (now.solved.drawings.length === 0 && old.solved.drawings.length > 0)
    return [{ kind: 'level-emptied', level: name, place, rows: { from: 1, to: length } }];
  const names = nameBoth(old.solved, now.solved);
  const passages = comparePassages(names);
  const keys = [...names.replaced].map(([was, is]): Change => {
    const frame = now.solved.drawings.find(({ drawing }) => drawing === is)!.firstFrame;
    return { kind: 'key', level: name, old: was, now: is, frame, place, rows: { from: frame, to: frame } };
  });
  const direct = directChanges(name, old, now);
  const same = sameRows(names);
  const anchors = { old: anchorsOf(old.level.timeline), now: anchorsOf(now.level.timeline) };
  const shown = same ? [] : exposureChanges(name, names, anchors, passages.counts);
  const { breakdowns, renumbered } = drawingChanges(name, names);
  // Until numbers are pinned nothing is on paper that would lie in the wrong place.
  const places = now.level.pinned ? placeChanges(name, passages, names) : [];
  const all = [...keys, ...direct, ...shown, ...chartChanges(name, passages), ...places, ...breakdowns];
  if (!same && all.length === 0 && old.solved.exposures.length === length)
    all.push({ kind: 'rows', level: name, place, rows: differing(names) });
  return [...all.sort((a, b) => (a.rows?.from ?? 0) - (b.rows?.from ?? 0)), ...renumbered];
}

function directChanges(name: string, old: Side, now: Side): Change[] {
  const pairs = ({ level }: Side) => level.timeline?.direct ?? [];
  const missing = (some: ReturnType<typeof pairs>, others: ReturnType<typeof pairs>) =>
    some.filter(({ from, to }) => !others.some((one) => one.from === from && one.to === to));
  const told = (some: ReturnType<typeof pairs>, is: boolean) =>
    some.map(({ from, to }): Change => {
      const frame = now.solved.drawings.find(({ drawing }) => drawing === to)?.firstFrame;
      const rows = frame === undefined ? null : { from: frame, to: frame };
      return { kind: 'direct', level: name, from, to, now: is, place: { kind: 'level', level: name }, rows };
    });
  return [...told(missing(pairs(now), pairs(old)), true), ...told(missing(pairs(old), pairs(now)), false)];
}

/** Whether both show the same on every row. */
function sameRows(names: Names): boolean {
  const { old, now } = names;
  return old.level.exposures.length === now.level.exposures.length && differing(names) === null;
}

function differing({ old, now }: Names) {
  const differs = now.level.exposures.map(({ drawing }, i) => {
    const was = old.level.exposures[i]?.drawing ?? null;
    const symbol = drawing === null ? '' : now.symbols.get(drawing);
    return symbol !== (was === null ? '' : old.symbols.get(was));
  });
  const from = differs.indexOf(true);
  return from < 0 ? null : { from: from + 1, to: differs.lastIndexOf(true) + 1 };
}

function anchorsOf(timeline: Timeline | null): Set<number> {
  return new Set((timeline?.items ?? []).flatMap((item) => (item.kind === 'at' ? [item.frame] : [])));
}

function sizeOf({ level }: Side) {
  return level.sizeMm && { widthMm: level.sizeMm.widthMm, heightMm: level.sizeMm.heightMm };
}

const point = ({ xMm, yMm }: { xMm: number; yMm: number }) => ({ xMm, yMm });

/** Of flat records of words and measures. */
function equal<T extends object>(a: T | null, b: T | null): boolean {
  if (a === null || b === null) return a === b;
  return Object.entries(a).every(([key, value]) => {
    const other = (b as Record<string, unknown>)[key];
    return typeof value === 'number' && typeof other === 'number'
      ? Math.abs(value - other) < 1e-6
      : value === other;
  });
}
