/** Which move or light a change of the camera is about, in both versions. */

import { kindOf } from '../shot/camera/move-kinds.js';
import type { Frames } from '../shot/shot.js';
import type { SolvedLight, SolvedMove } from '../solve/camera/solved-camera.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import type { Change, Was } from './change.js';
import { placeNamesOf, sheetRowsOf } from './move-pair.js';

export type CameraThing = SolvedMove | SolvedLight;

/** Null: the version has no such thing. */
export interface CameraSubject {
  readonly was: CameraThing | null;
  readonly is: CameraThing | null;
}

/**
 * Null: the change is about no move and no light. `called`: what levels of the old version are called now. Where several things would do,
 * it is the one that is likest to what the change says, then the one that begins nearest.
 */
export function subjectOf(
  { camera: old }: SolvedShot,
  { camera: now }: SolvedShot,
  change: Change,
  called: (level: string) => string,
): CameraSubject | null {
  if (!('move' in change || 'light' in change)) return null;
  const frames = ('frames' in change ? change.frames : null) as Frames | Was<Frames> | null;
  const [before, after] =
    frames && 'old' in frames ? [frames.old, frames.now] : [frames, frames ?? change.rows];
  const same = (level: string) => level;
  if (change.kind.endsWith('-dropped'))
    return { was: likest([...old.moves, ...old.light], change, same, before), is: null };
  const is = likest([...now.moves, ...now.light], change, same, after);
  if (change.kind.endsWith('-added')) return { was: null, is };
  return { was: likest([...old.moves, ...old.light], change, called, before ?? (is && rowsOfThing(is))), is };
}

export const rowsOfThing = (thing: CameraThing): Frames =>
  'move' in thing ? sheetRowsOf(thing) : thing.light.frames;

type Called = (level: string) => string;

function likest(
  things: readonly CameraThing[],
  change: Change,
  called: Called,
  frames: Frames | null,
): CameraThing | null {
  let [best, least] = [null as CameraThing | null, Number.POSITIVE_INFINITY];
  for (const thing of things) {
    const unlike = unlikeness(thing, change, called);
    if (unlike === null) continue;
    const rows = rowsOfThing(thing);
    const away = frames ? Math.abs(rows.from - frames.from) + Math.abs(rows.to - frames.to) : 0;
    if (unlike + away < least) [best, least] = [thing, unlike + away];
  }
  return best;
}

/** More than any distance in rows. */
const FAR = 1e6;

/** Null: the change cannot be about it. */
function unlikeness(thing: CameraThing, change: Change, called: Called): number | null {
  const all = (levels: readonly string[]) => [...levels].sort().join();
  if ('move' in thing && 'move' in change) {
    const { kind, target } = thing.move;
    const levels = target.levels.map(called);
    const shared = levels.some((level) => change.levels.includes(level));
    // A pan may have been a truck, and no other move has been one.
    const fields = [kind, change.move].every((one) => kindOf({ kind: one }).quantity === 'field');
    if (kind !== change.move && !fields) return null;
    if (!shared && levels.length + change.levels.length > 0) return null;
    return (
      (kind === change.move ? 0 : 4 * FAR) +
      (all(levels) === all(change.levels) ? 0 : 2 * FAR) +
      (placeNamesOf(thing.move).join() === change.places.join() ? 0 : FAR)
    );
  }
  if ('light' in thing && 'light' in change) {
    const { light } = thing;
    if (light.kind !== change.light || ('way' in light && light.way !== change.way)) return null;
    const levels = 'levels' in light ? light.levels.map(called) : [];
    return (
      (all(levels) === all(change.levels) ? 0 : 2 * FAR) +
      (light.kind !== 'effect' || light.text === change.text ? 0 : FAR)
    );
  }
  return null;
}
