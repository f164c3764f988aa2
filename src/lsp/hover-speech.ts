/** Hovers of what is spoken: how long a line wants to be, and what a mouth makes of it. */

import type { StatementOf } from '../language/tree.js';
import { lineLength } from '../shot/line-length.js';
import { secondsAndFrames } from '../shot/time-notation.js';
import { hoverWords } from './hover-words.js';
import type { Analysis } from './workspace.js';

/** What a line of dialogue is made of, how long it wants to be and how long it has; null where nothing can be said of it. */
export function lineText({ compiled, language }: Analysis, { span }: StatementOf<'voice'>): string | null {
  const { shot } = compiled ?? {};
  const line = shot?.spoken.find((one) => one.span.start === span.start);
  const length = shot && line && lineLength(line, shot.fps);
  if (!shot || !line || !length) return null;
  const { unit, count, wantedFrames } = length;
  const frames = line.frames.to - line.frames.from + 1;
  const words = hoverWords(language);
  const has = line.open ? '' : words.lineHas(secondsAndFrames(frames, shot.fps), (count * shot.fps) / frames);
  return words.line(unit, count, secondsAndFrames(wantedFrames, shot.fps)) + has;
}

/** A mouth: whose it is, which drawing is seen for how long, how its lines were made. */
export function mouthText({ compiled, language }: Analysis, name: string): string | null {
  const { solved, shot } = compiled ?? {};
  const mouth = shot?.levels.find((one) => one.name === name)?.mouth;
  const level = solved?.levels.find((one) => one.name === name);
  if (!shot || !mouth || !level) return null;
  const words = hoverWords(language);
  const seen = [...mouth.drawings].map(([shape, key]) => {
    const drawing = level.drawings.find((one) => one.drawing === key);
    return words.seenAs(
      shape,
      key,
      drawing
        ? { cel: `${name}${drawing.cel}`, length: words.lasting(drawing.exposedFrames, shot.fps) }
        : null,
    );
  });
  const head = words.mouth({
    speaker: mouth.speaker,
    lines: mouth.lines.length,
    flapping: mouth.lines.filter(({ read }) => !read).length,
    drawings: level.drawings.length,
    on: mouth.on,
    lead: mouth.lead,
  });
  return [head, ...seen].join('  \n');
}
