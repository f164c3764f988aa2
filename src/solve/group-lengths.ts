/**
 * Lengths of groups by arithmetic, whatever their counts: nothing here plays a pass, so `((1)*9999)*9999` costs nothing.
 * Lengths saturate at FAR, far beyond any sheet and still exact.
 */

import type { AtItem, Group, Leaf, ShotItem } from '../shot/shot.js';

const FAR = 1e15;

/** A leaf where it is played: `start` frames after the beginning of what was measured, for `frames`. */
export interface PlayedLeaf {
  readonly leaf: Leaf;
  readonly start: number;
  readonly frames: number;
}

// Items are never changed, so what was measured once holds; phrases share their items, and are measured once.
const passes = new WeakMap<readonly ShotItem[], number>();

/** Frames of the items once through, forward. `@` counts nothing: it only stands at the top. */
export function onceThrough(items: readonly ShotItem[]): number {
  let frames = passes.get(items);
  if (frames === undefined) {
    frames = 0;
    for (const item of items) if (item.kind !== 'at') frames = Math.min(frames + natural(item), FAR);
    passes.set(items, frames);
  }
  return frames;
}

const bounced = new WeakMap<Group, number>();

/** Frames of one pass of a group: once through, or there and back with the ends not doubled. */
export function passFrames(group: Group): number {
  const forward = onceThrough(group.items);
  if (!group.bounce) return forward;
  let frames = bounced.get(group);
  if (frames === undefined) {
    const first = leafAt(group.items, 0);
    const last = leafAt(group.items, forward - 1);
    frames = first.frames === forward ? forward : Math.min(2 * forward - first.frames - last.frames, FAR);
    bounced.set(group, frames);
  }
  return frames;
}

/** Frames that an item is exposed for when nothing holds it longer or cuts it short; one pass where it is open. */
export function natural(item: Leaf | Group): number {
  if (item.kind !== 'group') return item.frames;
  if (item.repeat.form === 'frames') return item.repeat.frames;
  const pass = passFrames(item);
  return item.repeat.form === 'times' ? Math.min(pass * item.repeat.times, FAR) : pass;
}

/** What is seen `offset` frames into the items, once through; 0 <= offset < onceThrough(items). */
export function leafAt(items: readonly ShotItem[], offset: number): PlayedLeaf {
  let start = 0;
  let last: Exclude<ShotItem, AtItem> | null = null;
  let lastStart = 0;
  for (const item of items) {
    if (item.kind === 'at') continue;
    last = item;
    lastStart = start;
    start += natural(item);
    if (offset < start) break;
  }
  if (!last) throw new RangeError('no items');
  const inner = last.kind === 'group' ? leafInGroup(last, Math.max(0, offset - lastStart)) : whole(last);
  return { ...inner, start: inner.start + lastStart };
}

function whole(leaf: Leaf): PlayedLeaf {
  return { leaf, start: 0, frames: leaf.frames };
}

function leafInGroup(group: Group, offset: number): PlayedLeaf {
  const pass = passFrames(group);
  const passStart = Math.floor(offset / pass) * pass;
  const found = leafInPass(group, offset - passStart);
  const start = passStart + found.start;
  const end =
    group.repeat.form === 'frames'
      ? Math.min(start + found.frames, group.repeat.frames)
      : start + found.frames;
  return { leaf: found.leaf, start, frames: end - start };
}

function leafInPass(group: Group, offset: number): PlayedLeaf {
  const forward = onceThrough(group.items);
  if (offset < forward) return leafAt(group.items, offset);
  // The way back is the way there mirrored, from its second leaf on.
  const last = leafAt(group.items, forward - 1);
  const there = leafAt(group.items, forward - 1 - (offset - forward + last.frames));
  const start = forward - (there.start + there.frames) + forward - last.frames;
  return { leaf: there.leaf, start, frames: there.frames };
}

/** The leaf that an item, played for its natural length, shows last. */
export function lastLeaf(item: Leaf | Group): PlayedLeaf {
  return item.kind === 'group' ? leafInGroup(item, natural(item) - 1) : whole(item);
}

/** What the way there and back of a group ends on, passing over references, which no passage sees; null: only references. */
export function lastOfPass(group: Group): Leaf | null {
  let offset = passFrames(group) - 1;
  // A passage that far behind nothing but references is of no use to anybody; the bound keeps large counts cheap.
  for (let steps = 0; offset >= 0 && steps < 1000; steps++) {
    const { leaf, start } = leafInPass(group, offset);
    if (leaf.kind !== 'reference') return leaf;
    offset = start - 1;
  }
  return null;
}
