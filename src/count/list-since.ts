/** What has become of an episode since an earlier state of it: cuts that run longer or shorter, came or went, and the budget. */

import type { CutList } from './count-episode.js';

/** Of one cut at one time. */
export interface CutFigures {
  /** Its share of the running time, frames of the episode; null while errors hide its time. */
  readonly running: number | null;
  readonly drawings: number | null;
  /** Whether all of it could be read. */
  readonly sound: boolean;
}

export interface CutSince {
  readonly cut: string;
  readonly title: string;
  /** Null: there was none, there is none now. */
  readonly before: CutFigures | null;
  readonly now: CutFigures | null;
  /** Frames of the episode by which the running time grew through it, before they are rounded; null while a time is not known. */
  readonly change: number | null;
}

export interface EpisodeFigures {
  readonly cuts: number;
  readonly fps: number;
  readonly running: number;
  readonly drawings: number;
  readonly budget: number | null;
  /** Beyond the budget; negative: below it. */
  readonly over: number | null;
  readonly unsound: number;
  /** Of those the ones whose time is not known: it is missing in `running`. */
  readonly untimed: number;
}

export interface ListSince {
  readonly before: EpisodeFigures;
  readonly now: EpisodeFigures;
  /** Only what differs, in the order of now; what is gone stands where it stood. */
  readonly cuts: readonly CutSince[];
  readonly unchanged: number;
  /** The cuts of both stand in another order. */
  readonly reordered: boolean;
}

/** `keyOf` makes two writings of one number the same: 7 and 007. Frames are those of the episode now. */
export function listSince(before: CutList, now: CutList, keyOf: (cut: string) => string): ListSince {
  const scale = now.fps / before.fps;
  const old = figuresByCut(before, keyOf, scale);
  const is = figuresByCut(now, keyOf, 1);
  const cuts = inOrder([...old.keys()], [...is.keys()])
    .map((key): CutSince => {
      const [one, other] = [old.get(key), is.get(key)];
      const unknown = one?.lasts === null || other?.lasts === null;
      return {
        ...{ cut: (other ?? one)!.cut, title: (other ?? one)!.title },
        ...{ before: one?.figures ?? null, now: other?.figures ?? null },
        change: unknown ? null : (other?.lasts ?? 0) - (one?.lasts ?? 0),
      };
    })
    .filter(differs);
  const common = (all: ReadonlyMap<string, unknown>, others: ReadonlyMap<string, unknown>): string[] =>
    [...all.keys()].filter((key) => others.has(key));
  return {
    ...{ before: figuresOf(before), now: figuresOf(now), cuts },
    unchanged: common(is, old).length - cuts.filter((one) => one.before && one.now).length,
    reordered: common(is, old).join('\n') !== common(old, is).join('\n'),
  };
}

interface Placed {
  readonly cut: string;
  readonly title: string;
  readonly lasts: number | null;
  readonly figures: CutFigures;
}

/** In story order. Of two cuts with one number the last counts. */
function figuresByCut(list: CutList, keyOf: (cut: string) => string, scale: number): Map<string, Placed> {
  return new Map(
    list.rows.map(({ cut, title, counted, sound }, i) => {
      const { frames, lasts } = list.placed[i]!;
      const figures = {
        running: counted ? Math.round(frames * scale) : null,
        drawings: counted?.counts.drawings ?? null,
        sound,
      };
      return [keyOf(cut), { cut, title, lasts: counted ? lasts * scale : null, figures }];
    }),
  );
}

/** A time is another where it differs by more than what adding up binary fractions leaves. */
const SAME = 1e-6;

function differs({ before, now, change }: CutSince): boolean {
  if (!before || !now) return true;
  if (before.drawings !== now.drawings || before.sound !== now.sound) return true;
  return change === null ? (before.running === null) !== (now.running === null) : Math.abs(change) > SAME;
}

/** All of `after`; what only `before` has comes behind the one that it stood behind. */
function inOrder(before: readonly string[], after: readonly string[]): string[] {
  const order = [...after];
  const there = new Set(after);
  before.forEach((key, i) => {
    if (there.has(key)) return;
    const behind = before.slice(0, i).findLast((one) => there.has(one));
    order.splice(behind === undefined ? 0 : order.indexOf(behind) + 1, 0, key);
    there.add(key);
  });
  return order;
}

function figuresOf({ fps, budget, totals }: CutList): EpisodeFigures {
  const { cuts, running, counts, over, unsound, untimed } = totals;
  return { ...{ cuts, fps, running, budget, over, unsound, untimed }, drawings: counts.drawings };
}
