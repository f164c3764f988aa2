/** The memo: what the cut says in words, the stack, and what found no room elsewhere. */

import { cameraMemo } from './camera/memo.js';
import type { Box } from './draw.js';
import { line, pale, textAt } from './draw.js';
import { wrap } from './fit.js';
import type { Geometry } from './geometry.js';
import { captionMm } from './geometry.js';
import type { Mark } from './marks.js';
import { pileMarks, pileWidth } from './pile.js';
import type { Plan } from './plan.js';
import { secondsAndFrames } from './times.js';

const LEADING = 1.22;

/** The lines of a memo as paragraphs, in the order in which they are printed. */
export function memoTexts(plan: Plan): string[] {
  const { shot, levels } = plan.solved;
  const { words } = plan;
  const { head, tail } = shot.handles;
  const length = (frames: number): string => (frames > 0 ? secondsAndFrames(frames, shot.fps) : '');
  return [
    ...cameraMemo(plan.camera),
    ...shot.memos.map((memo) => memo.text),
    ...levels.flatMap((level) =>
      level.reuse ? [words.reuse(level.name, level.reuse.cut, level.reuse.level)] : [],
    ),
    ...(head > 0 || tail > 0
      ? [words.handles(length(head), length(tail), secondsAndFrames(shot.length, shot.fps))]
      : []),
  ];
}

export interface MemoSet {
  readonly marks: Mark[];
  /** Lines that found no room. */
  readonly rest: readonly string[];
}

interface Place {
  readonly box: Box;
  readonly geometry: Geometry;
  readonly plan: Plan;
}

/** The stack at the right of a memo box; gives the box that is left for words. */
export function stackMarks({ box, geometry, plan }: Place): { marks: Mark[]; left: Box } {
  const { scale, leastTextMm } = geometry;
  const under = captionMm(geometry) + 0.8;
  const inner = { ...box, y: box.y + under, height: box.height - under - 0.4 };
  const levels = plan.solved.levels.map(({ name, timed }) => ({ name, art: !timed }));
  const width = Math.min(box.width * 0.6, pileWidth(levels.length, inner.height, scale, leastTextMm));
  const x = box.x + box.width - width;
  const sizeMm = captionMm(geometry);
  return {
    marks: [
      line(x, box.y, x, box.y + box.height, pale(0.18)),
      textAt(x + 0.7, box.y + 0.4 + sizeMm / 2, plan.words.stack, { sizeMm, ink: 'grey', anchor: 'start' }),
      ...pileMarks(levels, { ...inner, x, width }, scale, leastTextMm, plan.metrics),
    ],
    left: { ...box, width: width > 0 ? box.width - width : box.width },
  };
}

/** Sets paragraphs in a memo box, smaller where there are many; two columns where the box is wide. */
export function memoMarks({ box, geometry, plan }: Place, paragraphs: readonly string[]): MemoSet {
  const under = captionMm(geometry) + 0.7;
  const room = { x: box.x + 1.2, y: box.y + under, width: box.width - 2.4, height: box.height - under - 0.5 };
  const { leastTextMm, scale } = geometry;
  const smallest = Math.max(leastTextMm, 1.75 * scale);
  for (let sizeMm = 2.5 * scale; ; sizeMm = Math.max(smallest, sizeMm * 0.94)) {
    const lines = paragraphs.flatMap((text) => broken(text, room.width, sizeMm));
    const fitting = Math.max(1, Math.floor(room.height / (sizeMm * LEADING)));
    if (lines.length > fitting && sizeMm > smallest) continue;
    const here = lines.slice(0, fitting);
    const marks = here.map(({ text, indent }, i) =>
      textAt(room.x + indent, room.y + (i + 0.5) * sizeMm * LEADING, text, { sizeMm, anchor: 'start' }),
    );
    return { marks, rest: joined(lines.slice(fitting)) };
  }

  function broken(
    text: string,
    width: number,
    sizeMm: number,
  ): { text: string; indent: number; first: boolean }[] {
    const hang = sizeMm * 0.9;
    return wrap(plan.metrics, text, width - hang, sizeMm).map((one, i) => ({
      text: i === 0 ? `· ${one}` : one,
      indent: i === 0 ? 0 : hang,
      first: i === 0,
    }));
  }
}

/** Lines that are left as paragraphs again, for a box of another width. */
function joined(lines: readonly { text: string; first: boolean }[]): string[] {
  const paragraphs: string[] = [];
  for (const { text, first } of lines) {
    if (first) paragraphs.push(text.slice(2));
    else if (paragraphs.length === 0) paragraphs.push(`… ${text}`);
    else paragraphs[paragraphs.length - 1] += ` ${text}`;
  }
  return paragraphs;
}

/** A word at the foot of a memo box, at its right. */
export function memoPointer(box: Box, geometry: Geometry, plan: Plan, text: string): Mark {
  const sizeMm = captionMm(geometry);
  const squeeze = Math.min(1, (box.width - 2) / plan.metrics.width(text, sizeMm, 'bold'));
  return textAt(box.x + box.width - 1, box.y + box.height - sizeMm * 0.8, text, {
    sizeMm,
    weight: 'bold',
    anchor: 'end',
    squeeze,
  });
}
