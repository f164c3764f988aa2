/** The lines of a speaker → the timeline of the level that is the speaker's mouth: keys with their exposures, and nothing else. */

import type { Span } from '../../language/diagnostic.js';
import type { Mouth, MouthShape, ShotItem, Spoken, Timeline } from '../shot.js';
import { lineStretches, type Pronounce } from './line-sounds.js';
import { flapRows } from './mouth-flaps.js';
import { type MouthRows, readRows } from './mouth-rows.js';

export interface MouthWish {
  readonly drawings: ReadonlyMap<MouthShape, string>;
  readonly on: number;
  readonly lead: number;
  /** The words are not read. */
  readonly flaps: boolean;
  readonly span: Span;
}

export interface MouthCut {
  /** Its number. */
  readonly cut: string;
  readonly fps: number;
  readonly rows: number;
  readonly pronounce: Pronounce;
}

export interface MadeMouth {
  readonly timeline: Timeline;
  readonly lines: Mouth['lines'];
}

/** `lines`: those that the speaker says in the picture, in any order. Of two that overlap, the one that begins later is seen. */
export function mouthTimeline(wish: MouthWish, lines: readonly Spoken[], cut: MouthCut): MadeMouth {
  const rows: MouthShape[] = Array.from({ length: cut.rows }, () => 'closed');
  const made: { span: Span; read: boolean }[] = [];
  const inOrder = [...lines].sort((a, b) => a.frames.from - b.frames.from || a.frames.to - b.frames.to);
  for (const line of inOrder) {
    const { shown, read } = lineRows(line, wish, cut);
    made.push({ span: line.span, read });
    for (const [i, shape] of shown.shapes.entries()) {
      const row = shown.from + i;
      if (row >= 1 && row <= cut.rows) rows[row - 1] = shape;
    }
  }
  return {
    timeline: { span: wish.span, items: itemsOf(closedFlashes(rows), wish), whole: true, direct: [] },
    lines: made,
  };
}

function lineRows(line: Spoken, wish: MouthWish, cut: MouthCut): { shown: MouthRows; read: boolean } {
  const stretches = wish.flaps ? null : lineStretches(line, cut.fps, cut.pronounce);
  if (stretches) return { shown: readRows(stretches, wish, wish.drawings.has('a')), read: true };
  // Not the row: a line keeps its mouths when it is moved.
  const seed = JSON.stringify([cut.cut, line.speaker, line.parts.map(({ text }) => text)]);
  return { shown: flapRows(line.frames, wish, [...wish.drawings.keys()], seed), read: false };
}

/** Where lines overlap, one may leave a single open frame of another. */
function closedFlashes(rows: readonly MouthShape[]): MouthShape[] {
  return rows.map((shape, i) => (rows[i - 1] === 'closed' && rows[i + 1] === 'closed' ? 'closed' : shape));
}

function itemsOf(rows: readonly MouthShape[], { drawings, span }: MouthWish): ShotItem[] {
  const runs: { name: string; frames: number }[] = [];
  for (const shape of rows) {
    const name = drawings.get(shape)!;
    const last = runs.at(-1);
    if (last?.name === name) last.frames++;
    else runs.push({ name, frames: 1 });
  }
  return runs.map(
    ({ name, frames }): ShotItem => ({
      kind: 'key',
      name,
      chart: null,
      span,
      frames,
      own: false,
      lengthSpan: null,
      open: false,
    }),
  );
}
