/** From a place in the text to the frames that what stands there is seen on, and back: for editors and live views. Pure. */

import type { Span } from '../language/diagnostic.js';
import { rowsOf } from '../shot/camera/move-kinds.js';
import type { Frames, Shot } from '../shot/shot.js';
import { lay } from './item-placement.js';
import { playPlaced } from './unroll-cycles.js';

/** One stretch of frames on which a level shows what one item of the text says. */
export interface Showing extends Frames {
  readonly level: string;
  /** The item: in the cut, or in a file that it uses. */
  readonly span: Span;
  /** In a cycle, after its first pass. */
  readonly again: boolean;
}

/** What the items of a level's timeline show, in the order of frames; [] for a level that has none. */
export function showingsOf(shot: Shot, level: string): readonly Showing[] {
  const found = shot.levels.find(({ name }) => name === level);
  if (!found?.timeline) return [];
  const showings: Showing[] = [];
  for (const placed of lay(found, found.timeline, shot, () => {})) {
    let from = placed.start;
    for (const { leaf, frames, again } of playPlaced(placed, shot.length).units) {
      showings.push({ level, span: leaf.span, from, to: from + frames - 1, again });
      from += frames;
    }
  }
  return showings;
}

/** Something of a cut that has both a place in its text and frames. */
export interface Stretch extends Frames {
  readonly kind: 'drawing' | 'speech' | 'note' | 'move' | 'light';
  readonly span: Span;
  /** Of drawings. */
  readonly level: string | null;
}

/** All of them: drawings level by level, then words, notes, moves and light. `from` is 1 at least, `to` within the sheet. */
export function stretchesOf(shot: Shot): readonly Stretch[] {
  const within = ({ from, to }: Frames): Frames => ({
    from: Math.max(1, from),
    to: Math.min(shot.length, to),
  });
  const drawings = shot.levels.flatMap(({ name }) =>
    showingsOf(shot, name).map(
      ({ span, from, to, level }): Stretch => ({ kind: 'drawing', span, level, from, to }),
    ),
  );
  const rest: readonly Stretch[] = [
    ...shot.spoken.map(({ span, frames }) => ({ kind: 'speech' as const, span, level: null, ...frames })),
    ...shot.notes.map(({ span, frame }) => ({
      kind: 'note' as const,
      span,
      level: null,
      from: frame,
      to: frame,
    })),
    ...shot.camera.moves.map((move) => ({
      kind: 'move' as const,
      span: move.span,
      level: null,
      ...rowsOf(move),
    })),
    ...shot.camera.light.map(({ span, frames }) => ({
      kind: 'light' as const,
      span,
      level: null,
      ...frames,
    })),
  ];
  return [...drawings, ...rest.map((one) => ({ ...one, ...within(one) }))].filter(
    ({ from, to }) => from <= to,
  );
}

/** What touches the offsets start … end of a file (both equal: a cursor). */
export function stretchesIn(shot: Shot, file: string, start: number, end = start): readonly Stretch[] {
  return stretchesOf(shot).filter(({ span }) => span.file === file && span.start <= end && span.end >= start);
}

/** The frames of stretches, joined where they meet, rising. */
export function joinedFrames(stretches: readonly Frames[]): readonly Frames[] {
  const joined: { from: number; to: number }[] = [];
  for (const { from, to } of [...stretches].sort((a, b) => a.from - b.from)) {
    const last = joined.at(-1);
    if (last && from <= last.to + 1) last.to = Math.max(last.to, to);
    else joined.push({ from, to });
  }
  return joined;
}

/** What is said of a frame: the drawings that are seen on it, words, notes, moves and light. */
export function stretchesAt(shot: Shot, frame: number): readonly Stretch[] {
  return stretchesOf(shot).filter(({ from, to }) => from <= frame && frame <= to);
}

/** What a press on a row means: in a level's column its drawing, else (`level` null) a move, a word, a light, or any drawing. */
export function stretchOn(shot: Shot, frame: number, level: string | null): Stretch | undefined {
  const all = stretchesAt(shot, frame);
  if (level !== null) return all.find((one) => one.level === level);
  return all.find(({ kind }) => kind !== 'drawing') ?? all[0];
}
