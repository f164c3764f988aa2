/** Plays placed items: what is seen for how long, in order, never more than there are rows. */

import type { Group, Leaf, ShotItem } from '../shot/shot.js';
import { natural, type PlacedItem, passFrames } from './item-placement.js';
import type { SolvedCycle } from './solved-shot.js';

export interface Unit {
  readonly leaf: Leaf;
  readonly frames: number;
  /** Inside a cycle, after its first pass. */
  readonly again: boolean;
  /** On the way back of a group. */
  readonly back: boolean;
}

/** `cycles` count their first frame from 0, the beginning of what was played. */
interface Played {
  readonly units: readonly Unit[];
  readonly cycles: readonly SolvedCycle[];
}

/** Exactly `placed.frames` frames of it (none more than `rows` left): cut at the end, or its last drawing held. */
export function playPlaced({ item, start, frames }: PlacedItem, rows: number): Played {
  const wanted = Math.max(0, Math.min(frames, rows - start + 1));
  const { units, cycles } = play(item, wanted, 0);
  const missing = wanted - total(units);
  const last = units.at(-1);
  const filled =
    last && missing > 0 ? [...units.slice(0, -1), { ...last, frames: last.frames + missing }] : units;
  return { units: filled, cycles: cycles.map((cycle) => shifted(cycle, start)) };
}

function total(units: readonly Unit[]): number {
  return units.reduce((sum, unit) => sum + unit.frames, 0);
}

function shifted(cycle: SolvedCycle, by: number): SolvedCycle {
  return { ...cycle, firstFrame: cycle.firstFrame + by, lastFrame: cycle.lastFrame + by };
}

function play(item: Leaf | Group, wanted: number, depth: number): Played {
  if (wanted <= 0) return { units: [], cycles: [] };
  if (item.kind === 'group') return playGroup(item, wanted, depth);
  return {
    units: [{ leaf: item, frames: Math.min(item.frames, wanted), again: false, back: false }],
    cycles: [],
  };
}

function playItems(items: readonly ShotItem[], wanted: number, depth: number): Played {
  const units: Unit[] = [];
  const cycles: SolvedCycle[] = [];
  let frames = 0;
  for (const item of items) {
    if (frames >= wanted) break;
    if (item.kind === 'at') continue;
    const played = play(item, wanted - frames, depth);
    for (const cycle of played.cycles) cycles.push(shifted(cycle, frames));
    for (const unit of played.units) {
      units.push(unit);
      frames += unit.frames;
    }
  }
  return { units, cycles };
}

function playGroup(group: Group, wanted: number, depth: number): Played {
  const open = group.repeat.form === 'open';
  const all = Math.min(open ? wanted : natural(group), wanted);
  const pass = passFrames(group);
  const passes = open ? Number.POSITIVE_INFINITY : Math.ceil(natural(group) / pass);
  const isCycle = open || passes > 1;
  const once = playPass(group, Math.min(all, pass), isCycle ? depth + 1 : depth);
  const units: Unit[] = [];
  const cycles: SolvedCycle[] = [];
  if (isCycle) {
    const { bounce } = group;
    cycles.push({
      firstFrame: 0,
      lastFrame: all - 1,
      passFrames: pass,
      times: open ? null : Math.ceil(all / pass),
      bounce,
      depth,
    });
  }
  for (let frames = 0; frames < all; ) {
    const begin = frames;
    for (const cycle of once.cycles) {
      if (begin + cycle.firstFrame >= all) continue;
      const moved = shifted(cycle, begin);
      cycles.push(moved.lastFrame < all ? moved : { ...moved, lastFrame: all - 1 });
    }
    for (const unit of once.units) {
      if (frames >= all) break;
      const shown = Math.min(unit.frames, all - frames);
      units.push({ ...unit, frames: shown, again: unit.again || begin > 0 });
      frames += shown;
    }
  }
  return { units, cycles };
}

function playPass(group: Group, wanted: number, depth: number): Played {
  const there = playItems(group.items, wanted, depth);
  if (!group.bounce) return there;
  // Whatever is more than wanted is cut by the group.
  const back = there.units.slice(1, -1).map((unit) => ({ ...unit, back: true }));
  const units = [...there.units, ...back.reverse()];
  return { units, cycles: there.cycles };
}
