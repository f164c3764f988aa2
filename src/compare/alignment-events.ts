/** What happened between two aligned sequences of exposures: the places where time is added, taken or filled otherwise. */

import { align } from './align.js';
import type { Follow } from './change.js';
import type { ExposureToken } from './exposure-tokens.js';

export interface Aligned {
  readonly old: ExposureToken;
  readonly now: ExposureToken;
}

export type Event =
  /** `first` … `last` of the aligned ones are held otherwise, each by the same; `delta` frames in all. */
  | { readonly type: 'length'; readonly first: number; readonly last: number; readonly delta: number }
  /** Between `after` (-1: the beginning) and the next one something else is shown. */
  | {
      readonly type: 'region';
      readonly after: number;
      readonly old: readonly ExposureToken[];
      readonly now: readonly ExposureToken[];
      readonly delta: number;
    }
  /** A cycle that differs in itself. */
  | { readonly type: 'cycle'; readonly first: number; readonly last: number; readonly delta: number }
  /** What the text ties to a frame stands `delta` frames from where it stood. */
  | { readonly type: 'anchor'; readonly first: number; readonly delta: number };

/** A whole level, one pass of a cycle, or as much of one as there is room for. */
export type Scope = 'level' | 'pass' | 'part';

export interface LevelEvents {
  readonly aligned: readonly Aligned[];
  readonly events: readonly Event[];
  readonly scope: Scope;
}

/** Frames on which the text itself puts what comes next (`@`). */
export interface Anchors {
  readonly old: ReadonlySet<number>;
  readonly now: ReadonlySet<number>;
}

/**
 * But for a whole pass, the end of both sequences is the end of the room that there is, so that what is shown last takes up what
 * is left. So does what stands before an anchor. `differs`: whether two cycles differ in themselves; one that `yields` may be cut by what came before it.
 */
export function story(
  old: readonly ExposureToken[],
  now: readonly ExposureToken[],
  anchors: Anchors,
  scope: Scope,
  differs: (pair: Aligned, yields: boolean) => boolean,
): LevelEvents {
  const pinned = scope !== 'pass';
  const pairs = align(old, now);
  const aligned = pairs.map(([i, j]): Aligned => ({ old: old[i]!, now: now[j]! }));
  const events: Event[] = [];
  /** How much later things come, by what has been told so far. */
  let told = (now[0]?.start ?? 0) - (old[0]?.start ?? 0);
  const base = told;
  for (let k = -1; k < pairs.length; k++) {
    const [i, j] = pairs[k] ?? [-1, -1];
    const [nextI, nextJ] = pairs[k + 1] ?? [old.length, now.length];
    const here = aligned[k];
    const next = aligned[k + 1];
    const [gone, come] = [old.slice(i + 1, nextI), now.slice(j + 1, nextJ)];
    const region = gone.length + come.length > 0;
    const regionDelta = sum(come) - sum(gone);
    const ownDelta = here ? here.now.frames - here.old.frames : 0;
    const shift = next ? next.now.start - next.old.start : null;
    const anchored = next !== undefined && anchors.old.has(next.old.start) && anchors.now.has(next.now.start);
    const absorbed = here !== undefined && absorbs();
    if (here && differs(here, absorbed && here.now.start - here.old.start !== base))
      events.push({ type: 'cycle', first: k, last: k, delta: ownDelta });
    else if (here && ownDelta !== 0 && !absorbed) {
      events.push({ type: 'length', first: k, last: k, delta: ownDelta });
    }
    if (region && !pushedOut())
      events.push({ type: 'region', after: k, old: gone, now: come, delta: regionDelta });
    if (anchored && shift !== 0 && shift !== told + regionDelta) {
      events.push({ type: 'anchor', first: k + 1, delta: shift! });
    }
    told = shift ?? told;

    /** What the end of the sheet cuts off, or leaves room for, because all of it comes later, or earlier. */
    function pushedOut(): boolean {
      if (next !== undefined || scope !== 'part' || (gone.length > 0 && come.length > 0)) return false;
      const shifted = told - base + ownDelta;
      return gone.length > 0 ? shifted > 0 : shifted < 0;
    }

    function absorbs(): boolean {
      if (anchored) return true;
      if (next !== undefined || !pinned) return false;
      return !region || gone.length === 0 || come.length === 0;
    }
  }
  return { aligned, events: joined(events, aligned), scope };
}

/** Neighbours that are all held for the same other time are one event: twos become threes. */
function joined(events: readonly Event[], aligned: readonly Aligned[]): Event[] {
  const all: Event[] = [];
  for (const event of events) {
    const before = all.at(-1);
    if (event.type === 'length' && before?.type === 'length' && before.last + 1 === event.first) {
      const [a, b] = [aligned[before.last]!, aligned[event.first]!];
      const plain = a.now.cycle === null && b.now.cycle === null;
      if (plain && a.old.frames === b.old.frames && a.now.frames === b.now.frames) {
        all[all.length - 1] = { ...before, last: event.last, delta: before.delta + event.delta };
        continue;
      }
    }
    all.push(event);
  }
  return all;
}

const sum = (tokens: readonly ExposureToken[]): number =>
  tokens.reduce((frames, token) => frames + token.frames, 0);

/** The last aligned one before the event after this one. */
export function lastAlignedBefore({ events, aligned }: LevelEvents, e: number): number {
  const next = events[e + 1];
  if (!next) return aligned.length - 1;
  if (next.type === 'region') return next.after;
  return next.type === 'anchor' ? next.first - 1 : next.first;
}

/** What an event moves that is not said elsewhere. */
export function followOf(event: Event, { aligned, events, scope }: LevelEvents, e: number): Follow | null {
  const first =
    event.type === 'region' ? event.after + 1 : event.type === 'anchor' ? event.first : event.last + 1;
  if (event.delta === 0 || first >= aligned.length) return null;
  // Where the next thing happens at once, there is nothing between the two.
  const next = events[e + 1];
  if (next && (next.type === 'region' ? next.after + 1 : next.first) <= first) return null;
  // Up to where things stand again as they did without it.
  const away = (k: number) => aligned[k]!.now.start - aligned[k]!.old.start;
  const without = away(first) - event.delta;
  if (away(first) === 0 && scope !== 'pass') return null;
  let last = first;
  while (last + 1 < aligned.length && away(last + 1) !== without) last++;
  return { by: event.delta, last: last === aligned.length - 1 ? null : aligned[last]!.now.seen };
}
