/** The rows of a timeline's items, and how long groups and their items last. */

import type { Messages } from '../language/catalogue/index.js';
import {
  type Diagnostic,
  diagnose,
  type Fix,
  type Report,
  type SourceEdit,
  type Span,
} from '../language/diagnostic.js';
import type { AtItem, Group, Leaf, Level, Shot, ShotItem, Timeline } from '../shot/shot.js';
import { endsOpen } from '../shot/timeline-items.js';

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

// ----
// Lays the items of a timeline on the rows of the sheet: where each starts, how `@` and `..` stretch or cut the item before,
// and whether all of them together fill the sheet exactly.

/** An item at the top of a timeline with the rows that it has: frames start … start + frames - 1. */
export interface PlacedItem {
  readonly item: Leaf | Group;
  readonly start: number;
  frames: number;
}

/** Whether the last pass of a group is cut short, so that what it ends on depends on the timing. */
export function cutShort({ item, frames }: PlacedItem): boolean {
  if (item.kind !== 'group') return false;
  if (item.repeat.form === 'open') return frames % passFrames(item) !== 0;
  return groupCutShort(item);
}

/** The same of a group that is not open, wherever it stands. */
export function groupCutShort(group: Group): boolean {
  return group.repeat.form === 'frames' && group.repeat.frames % passFrames(group) !== 0;
}

/** Where the item before an `@` may be held or trimmed: what it shows last, and whether that has a length of its own. */
function tail(item: Leaf | Group): { readonly start: number; readonly own: boolean } {
  const last = lastLeaf(item);
  return {
    start: last.start,
    own: last.leaf.own || (item.kind === 'group' && item.repeat.form === 'frames'),
  };
}

/** Frames that an open item needs at least: a repeated group may be cut anywhere, what is held must be seen. */
function needed(item: Leaf | Group): number {
  return item.kind === 'group' && item.repeat.form === 'open' ? 1 : tail(item).start + 1;
}

/** Where its `@` says that the item before must end: stretches or cuts that one, or says why it cannot. */
function endBefore(at: AtItem, before: PlacedItem, report: Report): void {
  const { item, start, frames } = before;
  const end = at.frame - 1;
  const wanted = end - start + 1;
  const { start: tailStart, own } = tail(item);
  const opens = endsOpen(item);
  const least = opens ? needed(item) : tailStart + 1;
  before.frames = Math.max(0, wanted);
  if (wanted < least || (own && !opens && wanted < frames)) {
    const parameters: Messages['at-backwards'] =
      wanted < least
        ? { variant: 'unseen', frame: at.frame, seen: start + least - 1 }
        : { variant: 'exposed', frame: at.frame, until: start + frames - 1 };
    report(
      diagnose('at-backwards', at.span, parameters, { notes: [{ note: 'item-before', span: item.span }] }),
    );
    return;
  }
  if (opens || !own || wanted === frames) return;
  const fix = stretch(item, wanted);
  report(
    diagnose(
      'at-gap',
      at.span,
      { last: start + frames - 1, frame: at.frame },
      { notes: [{ note: 'item-before', span: item.span }], ...(fix ? { fix } : {}) },
    ),
  );
}

/** An edit that makes the item last so long, or goes on with it; for the last item before an `@` or the end. */
function stretch(item: Leaf | Group, frames: number): Fix | null {
  const edit = (span: Span, text: string): readonly SourceEdit[] => [{ span, text }];
  const behind = { ...item.span, start: item.span.end };
  if (item.kind === 'group') {
    return {
      action: 'repeat-until',
      edits: item.repeatSpan ? edit(item.repeatSpan, '..') : edit(behind, '..'),
    };
  }
  if (item.lengthSpan) {
    return { action: 'expose-for', frames, edits: edit(item.lengthSpan, String(frames)) };
  }
  return { action: 'hold-until', edits: edit(behind, '..') };
}

/**
 * The placed items, in order. What lies past the end stays in the list. Where the timeline was not bound whole, nothing is said
 * about its length.
 */
export function lay(level: Level, timeline: Timeline, shot: Shot, report: Report): PlacedItem[] {
  const tell = (diagnostic: Diagnostic) => {
    if (timeline.whole) report(diagnostic);
  };
  const placed: PlacedItem[] = [];
  let cursor = 1;
  let at: AtItem | null = null;
  for (const item of timeline.items) {
    const before: PlacedItem | undefined = placed.at(-1);
    if (item.kind === 'at') {
      if (at) tell(atNothing(at));
      else if (before) endBefore(item, before, tell);
      if (item.frame > shot.length) {
        tell(diagnose('at-past-end', item.span, { frame: item.frame, time: shot.time, rows: shot.length }));
      }
      at = item;
      cursor = item.frame;
      continue;
    }
    at = null;
    placed.push({ item, start: cursor, frames: natural(item) });
    cursor += natural(item);
  }
  if (at) {
    tell(atNothing(at));
    return placed;
  }
  const last = placed.at(-1);
  if (!last) {
    tell(nothingShown(level, timeline, shot));
    return placed;
  }
  const room = shot.length - last.start + 1;
  if (endsOpen(last.item)) last.frames = Math.max(room, needed(last.item));
  const filled = last.start + Math.max(last.frames, 1) - 1;
  if (filled < shot.length) tell(tooShort(level, shot, last, filled, room));
  // An `@` past the end has been reported, and says more.
  if (filled > shot.length && !placedPastEnd(timeline, shot))
    tell(tooLong(level, shot, placed, filled, room));
  return placed;
}

function placedPastEnd(timeline: Timeline, shot: Shot): boolean {
  return timeline.items.some((item) => item.kind === 'at' && item.frame > shot.length);
}

function atNothing(at: AtItem): Diagnostic {
  return diagnose(
    'at-nothing',
    at.span,
    {},
    {
      fix: { action: 'take-out', edits: [{ span: at.span, text: '' }] },
    },
  );
}

/** Only `on 2` and the like. */
function nothingShown({ name }: Level, { span }: Timeline, shot: Shot): Diagnostic {
  return diagnose('timeline-short', span, { level: name, shown: 0, time: shot.time, rows: shot.length });
}

function tooShort(level: Level, shot: Shot, last: PlacedItem, filled: number, room: number): Diagnostic {
  const fix = stretch(last.item, room);
  return diagnose(
    'timeline-short',
    last.item.span,
    { level: level.name, shown: filled, time: shot.time, rows: shot.length },
    fix ? { fix } : {},
  );
}

function tooLong(
  level: Level,
  shot: Shot,
  placed: readonly PlacedItem[],
  filled: number,
  room: number,
): Diagnostic {
  const across = placed.find((each) => each.start + each.frames - 1 > shot.length)!;
  const fix =
    across === placed.at(-1) && room >= 1 && !endsOpen(across.item) ? stretch(across.item, room) : null;
  const shown = filled < 1e9 ? filled : null;
  const parameters = { level: level.name, shown, time: shot.time, rows: shot.length };
  return diagnose('timeline-long', across.item.span, parameters, fix ? { fix } : {});
}
