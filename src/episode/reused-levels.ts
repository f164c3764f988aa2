/** `level C reuse 8/C`: the drawings of another cut of the episode, with the numbers that they have there. */

import { type Diagnostic, diagnose, hasErrors } from '../language/diagnostic.js';
import { nearest } from '../language/suggest.js';
import type { Level, Shot } from '../shot/shot.js';
import type { SolvedLevel, SolvedShot } from '../solve/solved-shot.js';
import type { Compiled } from './compile-cut.js';
import { type BorrowedLevel, cutKey, type EpisodeCache } from './episode.js';
import type { Borrowed, StoryCut, StoryOrder } from './story.js';

export interface Reused {
  /** For levels of the shot that reuse one: that level, solved. */
  readonly levels: ReadonlyMap<string, SolvedLevel>;
  /** Hashes of the cuts that they come from, made when they are asked for. */
  readonly digests: readonly (() => string)[];
  readonly diagnostics: readonly Diagnostic[];
}

export const nothingReused: Reused = { levels: new Map(), digests: [], diagnostics: [] };

/** A cut that reuses levels. */
export interface Reuser {
  readonly shot: Shot;
  /** Only this level is wanted, since another cut reuses it; null: all of them. */
  readonly only: string | null;
}

/** Looks up the levels that a shot reuses. `others`: compiles another cut of the episode, for one of its levels. */
export function findReused(
  { shot, only }: Reuser,
  story: StoryOrder,
  cache: EpisodeCache,
  others: (path: string, level: string) => Compiled,
): Reused {
  const levels = new Map<string, SolvedLevel>();
  const digests: (() => string)[] = [];
  const diagnostics: Diagnostic[] = [];

  const lend = (level: Level, reuse: NonNullable<Level['reuse']>): BorrowedLevel => {
    const way = follow({ level: level.name, cut: reuse.cut, from: reuse.level }, shot.cut, story);
    if (way.circle) {
      return { reason: { why: 'circle', links: way.circle.links }, round: way.circle.own };
    }
    if (way.links.length === 0) return { reason: { why: 'no-cut', cut: reuse.cut } };
    if (way.links.length > MOST_LINKS) return { reason: { why: 'too-far', most: MOST_LINKS } };
    // From the far end, so that however long the way is, no cut is compiled while another one is.
    let lent: BorrowedLevel | null = null;
    for (const { cut, from } of way.links.toReversed()) {
      const id = JSON.stringify([cut.path, from]);
      lent = cache.levels.get(id) ?? borrow(others(cut.path, from), cut.number, from);
      cache.levels.set(id, lent);
    }
    return lent!;
  };

  for (const level of shot.levels) {
    const { name, reuse, timeline } = level;
    if (!reuse || (only !== null && only !== name)) continue;
    // Said where the text was bound.
    if (reuse.level === name && reuse.cut === shot.cut) continue;
    const lent = lend(level, reuse);
    if ('reason' in lent) {
      if (lent.round && lent.reason.why === 'circle') {
        diagnostics.push(diagnose('reuse-circle', reuse.span, { links: lent.reason.links }));
        continue;
      }
      diagnostics.push(
        diagnose('reuse-unknown', reuse.span, {
          variant: 'not-lent',
          reason: lent.reason,
          cut: reuse.cut,
          level: reuse.level,
        }),
      );
      continue;
    }
    digests.push(lent.digest);
    if (lent.level.timed) {
      levels.set(name, lent.level);
      continue;
    }
    // Artwork that is simply there has no numbers, and none are asked for.
    if (timeline === null) continue;
    diagnostics.push(
      diagnose('reuse-unknown', reuse.span, { variant: 'no-timeline', cut: reuse.cut, level: reuse.level }),
    );
  }
  return { levels, digests, diagnostics };
}

/** Levels that were to reuse drawings, and show none that the other cut has. */
export function reusedInVain({ shot, levels }: SolvedShot, { levels: found }: Reused): Diagnostic[] {
  return shot.levels.flatMap(({ name, reuse }) => {
    if (!reuse || !found.has(name)) return [];
    const solved = levels.find((one) => one.name === name);
    if (!solved || solved.drawings.some(({ reused }) => reused)) return [];
    const here = solved.drawings.map(({ drawing }) => drawing);
    const there = found.get(name)!.drawings.map(({ drawing }) => drawing);
    return [
      diagnose('reuse-nothing', reuse.span, { level: name, here, cut: reuse.cut, of: reuse.level, there }),
    ];
  });
}

/**
 * Drawings that this cut adds to a level which another cut, earlier in the story, adds to as well: both are numbered on from the same
 * highest number, so that two drawings have one. Asked only of levels that add any.
 */
export function addedTwice(
  { shot, levels }: SolvedShot,
  story: StoryOrder,
  cache: EpisodeCache,
  others: (path: string, level: string) => Compiled,
): Diagnostic[] {
  return shot.levels.flatMap((level) => {
    const { name, reuse } = level;
    const own = levels.find((one) => one.name === name);
    const fresh = new Set(own?.drawings.flatMap(({ cel, reused }) => (reused ? [] : [cel])));
    if (!reuse || fresh.size === 0) return [];
    const way = follow({ level: name, cut: reuse.cut, from: reuse.level }, shot.cut, story);
    const root = way.links.at(-1);
    if (!root || way.circle || way.links.length > MOST_LINKS) return [];
    const end = story.placeOf(shot.cut) ?? story.length;
    for (const { cut, level: as } of sharersBefore(end, root, story)) {
      if (way.links.some((link) => link.cut.path === cut.path && link.from === as)) continue;
      const id = JSON.stringify([cut.path, as]);
      const lent = cache.levels.get(id) ?? borrow(others(cut.path, as), cut.number, as);
      cache.levels.set(id, lent);
      if ('reason' in lent) continue;
      const both = lent.level.drawings.filter(({ cel, reused }) => !reused && fresh.has(cel));
      if (both.length === 0) continue;
      const cels = both.map(({ cel }) => cel);
      return [
        diagnose('reuse-twice', reuse.span, {
          ...{ cut: cut.number, as, cels, from: root.cut.number, of: root.from },
        }),
      ];
    }
    return [];
  });
}

/** A level of a cut that shows drawings of another, and the cut's place in the story. */
interface Sharer {
  readonly cut: StoryCut;
  readonly level: string;
  readonly place: number;
}

/** Levels that share drawings, by the level that those are made on, for the first `read` places of a story. */
interface Sharers {
  read: number;
  readonly byRoot: Map<string, Sharer[]>;
}

const known = new WeakMap<StoryOrder, Sharers>();

/** Those of a level that stand before a place, in story order. Reads each cut once, and no further. */
function sharersBefore(end: number, root: Way['links'][number], story: StoryOrder): readonly Sharer[] {
  const sharers: Sharers = known.get(story) ?? { read: 0, byRoot: new Map() };
  known.set(story, sharers);
  for (; sharers.read < end; sharers.read++) {
    const place = sharers.read;
    const cut = story.at(place);
    for (const borrowed of cut ? story.borrowed(cut) : []) {
      const { links, circle } = follow(borrowed, cut!.number, story);
      const last = links.at(-1);
      if (circle || !last) continue;
      const one = { cut: cut!, level: borrowed.level, place };
      const own = sharers.byRoot.get(levelId(last));
      if (own) own.push(one);
      else sharers.byRoot.set(levelId(last), [one]);
    }
  }
  return (sharers.byRoot.get(levelId(root)) ?? []).filter(({ place }) => place < end);
}

const levelId = ({ cut, from }: Way['links'][number]): string => JSON.stringify([cut.path, from]);

/** A level that goes through more cuts than this is no reuse but a slip. */
const MOST_LINKS = 100;

/** The way of a level from cut to cut, to where its drawings are made. */
interface Way {
  /** The levels that it comes from, the nearest first; more than MOST_LINKS are not followed. */
  readonly links: readonly { readonly cut: StoryCut; readonly from: string }[];
  /** Where the way comes back: links such as `9/C`; `own`: the level that it begins with is one of them. */
  readonly circle: { readonly links: readonly string[]; readonly own: boolean } | null;
}

function follow(start: Borrowed, number: string, story: StoryOrder): Way {
  const shown = (cut: string, level: string): string => `${cutKey(cut)}/${level}`;
  const passed = [shown(number, start.level)];
  const links: { cut: StoryCut; from: string }[] = [];
  let next: Borrowed | undefined = start;
  while (next && links.length <= MOST_LINKS) {
    const from: string = next.from;
    const cut = story.find(next.cut);
    if (!cut) break;
    const link = shown(cut.number, from);
    const begun = passed.indexOf(link);
    if (begun >= 0) return { links, circle: { links: [...passed.slice(begun), link], own: begun === 0 } };
    passed.push(link);
    links.push({ cut, from });
    next = story.borrowed(cut).find(({ level }) => level === from);
  }
  return { links, circle: null };
}

/**
 * Keeps the levels of a cut that others reuse, so that it is not compiled once more for them. `compiled`: as a cut of the story. One
 * with errors, or which reuses levels itself, may lend something else than it shows, and is left to `findReused`.
 */
export function keepLent(
  { solved, shot, diagnostics, ownDigest }: Compiled,
  path: string,
  story: StoryOrder,
  cache: EpisodeCache,
): void {
  if (!solved || !shot || shot.levels.some(({ reuse }) => reuse) || hasErrors(diagnostics)) return;
  if (story.find(shot.cut)?.path !== path) return;
  for (const { level } of story.takenFrom(shot.cut)) {
    const lent = solved.levels.find(({ name }) => name === level);
    if (lent) cache.levels.set(JSON.stringify([path, level]), { level: lent, digest: ownDigest });
  }
}

function borrow(
  { solved, shot, diagnostics, ownDigest }: Compiled,
  cut: string,
  level: string,
): BorrowedLevel {
  if (!solved || hasErrors(diagnostics)) return { reason: { why: 'errors', cut } };
  const found = solved.levels.find(({ name }) => name === level);
  const span = shot?.levels.find(({ name }) => name === level)?.reuse?.span;
  const lost = diagnostics.some((one) => one.code === 'reuse-unknown' && one.span.start === span?.start);
  if (lost) return { reason: { why: 'not-lent-either', cut, level } };
  if (found) return { level: found, digest: ownDigest };
  const offer = nearest(
    level,
    solved.levels.map(({ name }) => name),
  );
  return { reason: { why: 'no-level', cut, level, guess: offer ?? null } };
}
