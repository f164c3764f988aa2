/** What is allowed, but looks like a slip. Cycles, there-and-back and keys that come back are normal, and nothing is said of them. */

import type { Report } from '../language/diagnostic.js';
import { diagnose, guessFix } from '../language/diagnostic.js';
import type { Leaf, Level, Timeline } from '../shot/shot.js';
import type { Passages } from './inbetween-resolution.js';
import type { Drawing, Passage } from './level-drawings.js';

/** A drawing (or emptiness) over the frames on which it is seen without a break. */
export interface SeenRun {
  readonly drawing: Drawing | null;
  readonly firstFrame: number;
  lastFrame: number;
  /** The item that it starts with. */
  readonly leaf: Leaf;
}

export interface SeenTimeline {
  readonly level: Level;
  readonly timeline: Timeline;
  readonly passages: Passages;
  readonly runs: readonly SeenRun[];
  /** In the order in which they are first seen. */
  readonly drawings: readonly Drawing[];
  readonly pinnedKeys: ReadonlySet<string>;
  /** In-betweens that a reference shows. */
  readonly referred: ReadonlySet<Drawing>;
}

/** Only for levels whose rows are certain: after an error of their timeline it would be guessing. */
export function warn(seen: SeenTimeline, report: Report): void {
  if (seen.drawings.length === 0) {
    const { level, timeline } = seen;
    report(diagnose('level-empty', timeline.span, { level: level.name }));
    return;
  }
  neverSeen(seen, report);
  zero(seen, report);
  flashes(seen, report);
  // Which drawing of a mouth is seen first is a matter of the words.
  if (!seen.level.reuse && !seen.level.mouth) keyOrder(seen, report);
  waysBack(seen, report);
}

/** Only keys: in-betweens of a cycle that the end cuts short need not be drawn, which is no loss. */
function neverSeen({ level, passages }: SeenTimeline, report: Report): void {
  const lost = [...passages.keys.values()].filter((key) => key.firstFrame === 0);
  if (lost.length === 0) return;
  report(
    diagnose('drawing-never-seen', lost[0]!.span, { level: level.name, keys: lost.map((key) => key.name) }),
  );
}

/** A key of the number 0 that is not on paper: a time table in figures has 0 where a level is empty. */
function zero({ level, passages }: SeenTimeline, report: Report): void {
  const key = passages.keys.get('0');
  if (!key || key.pinned) return;
  const span = { ...key.span, end: key.span.start + 1 };
  report(diagnose('key-zero', span, { level: level.name }, guessFix('x', span)));
}

/** Frames from which on a drawing counts as held. */
const HELD = 4;

/**
 * A drawing or emptiness seen for one frame between two held drawings, not exposed on ones by `on 1`, and not an in-between on the
 * way between those two (a fast move may have one). At the very start and end of the cut nothing flashes.
 */
function flashes({ level, runs }: SeenTimeline, report: Report): void {
  for (const [i, run] of runs.entries()) {
    const before = runs[i - 1];
    const after = runs[i + 1];
    if (!before?.drawing || !after?.drawing || frames(run) !== 1) continue;
    if (frames(before) < HELD || frames(after) < HELD) continue;
    if (!run.leaf.own && run.leaf.frames === 1) continue;
    if (run.drawing && onTheWay(run.drawing, before.drawing) && onTheWay(run.drawing, after.drawing))
      continue;
    report(
      diagnose('one-frame-flash', run.leaf.span, {
        level: level.name,
        drawing: run.drawing?.name ?? null,
        frame: run.firstFrame,
      }),
    );
  }
}

function frames(run: SeenRun): number {
  return run.lastFrame - run.firstFrame + 1;
}

function onTheWay(between: Drawing, other: Drawing): boolean {
  if (between.kind === 'key') return false;
  if (other.kind === 'key') return other.key === between.key || other.key === between.to;
  return other.key === between.key && other.to === between.to;
}

interface Numbered {
  readonly number: number;
  readonly letter: string;
  readonly drawing: Drawing;
}

/** Keys at their first appearance: 1 then 3 with no 2 anywhere, or 3 before 2. The first key of a level may have any number. */
function keyOrder({ level, drawings, pinnedKeys, passages }: SeenTimeline, report: Report): void {
  // Of a key 0 `zero` has spoken.
  const keys = drawings.filter(({ kind, key }) => kind === 'key' && key !== '0').map(numbered);
  const numbers = [...passages.keys.keys(), ...pinnedKeys]
    .map((name) => Number.parseInt(name, 10))
    .sort((a, b) => a - b);
  let highest = keys[0];
  for (const key of keys.slice(1)) {
    if (!highest) break;
    if (key.number < highest.number || (key.number === highest.number && key.letter < highest.letter)) {
      if (key.drawing.pinned) continue;
      report(
        diagnose('key-backwards', key.drawing.span, {
          key: key.drawing.name,
          level: level.name,
          frame: key.drawing.firstFrame,
          after: highest.drawing.name,
        }),
      );
      continue;
    }
    const next = highest.number + 1;
    if (key.number > next && !skippedExists(next, key.number, numbers)) {
      report(
        diagnose('key-jump', key.drawing.span, {
          key: key.drawing.name,
          level: level.name,
          after: highest.drawing.name,
          first: next,
          last: key.number - 1,
        }),
      );
    }
    highest = key;
  }
}

/** Whether any of the rising numbers is from `from` up to `below`: a key that is seen later, or on paper only. */
function skippedExists(from: number, below: number, numbers: readonly number[]): boolean {
  let low = 0;
  for (let high = numbers.length; low < high; ) {
    const middle = (low + high) >> 1;
    if (numbers[middle]! < from) low = middle + 1;
    else high = middle;
  }
  return low < numbers.length && numbers[low]! < below;
}

function numbered(drawing: Drawing): Numbered {
  const [, number = '0', letter = ''] = /^(\d+)(.*)$/u.exec(drawing.key) ?? [];
  return { number: Number(number), letter, drawing };
}

/**
 * `2--1` after `1--2`: the way back as new drawings, which may be meant. Not where it leads a cycle back to its first key, nor
 * where the drawings exist.
 */
function waysBack({ level, passages: { passages }, referred }: SeenTimeline, report: Report): void {
  const first = new Map<string, Passage>();
  for (const passage of passages) {
    const there = first.get(`${passage.to}>${passage.from}`);
    const id = `${passage.from}>${passage.to}`;
    if (!first.has(id)) first.set(id, passage);
    if (!there || passage.from === passage.to || passage.wrapped) continue;
    if (passage.drawings.every((drawing) => drawing.pinned)) continue;
    const names = [...there.drawings].reverse().map((drawing) => drawing.name);
    const fits =
      names.length === passage.written.length &&
      names.every((name) => !name.includes('/')) &&
      !passage.drawings.some((drawing) => referred.has(drawing));
    report(
      diagnose(
        'way-back',
        passage.written[0]!.span,
        { level: level.name, from: passage.from, to: passage.to, count: passage.drawings.length, names },
        fits
          ? {
              fix: {
                action: 'show-backwards',
                edits: passage.written.map((leaf, i) => ({
                  span: { ...leaf.span, end: leaf.span.start + 1 },
                  text: ` ${names[i]}${leaf.own || leaf.open ? '' : ' '}`,
                })),
              },
            }
          : {},
      ),
    );
  }
}
