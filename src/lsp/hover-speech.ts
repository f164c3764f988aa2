/** Hovers of what is spoken: how long a line wants to be, and what a mouth makes of it. */

import type { StatementOf } from '../language/tree.js';
import { lineLength } from '../shot/line-length.js';
import { inFrames, secondsAndFrames } from '../shot/time-notation.js';
import { figure, plural } from '../words/number-format.js';
import { lasting } from './hover-texts.js';
import type { Analysis } from './workspace.js';

/** What a line of dialogue is made of, how long it wants to be and how long it has; null where nothing can be said of it. */
export function lineText({ compiled }: Analysis, { span }: StatementOf<'voice'>): string | null {
  const { shot } = compiled ?? {};
  const line = shot?.spoken.find((one) => one.span.start === span.start);
  const length = shot && line && lineLength(line, shot.fps);
  if (!shot || !line || !length) return null;
  const { unit, count, wantedFrames } = length;
  const frames = line.frames.to - line.frames.from + 1;
  const has = line.open
    ? ''
    : `; it has ${secondsAndFrames(frames, shot.fps)}, ${figure((count * shot.fps) / frames, { decimals: 1 })} a second`;
  return `${count} ${unit === 'mora' ? 'morae' : 'syllables'}: the line wants about ${secondsAndFrames(wantedFrames, shot.fps)}${has}`;
}

/** A mouth: whose it is, which drawing is seen for how long, how its lines were made. */
export function mouthText({ compiled }: Analysis, name: string): string | null {
  const { solved, shot } = compiled ?? {};
  const mouth = shot?.levels.find((one) => one.name === name)?.mouth;
  const level = solved?.levels.find((one) => one.name === name);
  if (!shot || !mouth || !level) return null;
  const seen = [...mouth.drawings].map(([shape, key]) => {
    const drawing = level.drawings.find((one) => one.drawing === key);
    return `${shape} ${key}: ${drawing ? `${name}${drawing.cel}, ${lasting(drawing.exposedFrames, shot.fps)}` : 'not seen'}`;
  });
  const flapping = mouth.lines.filter(({ read }) => !read).length;
  const how = flapping === 0 ? '' : flapping === mouth.lines.length ? ', not read' : `, ${flapping} not read`;
  return [
    `Mouth of “${mouth.speaker}”: ${plural(mouth.lines.length, 'line')}${how}; ${plural(level.drawings.length, 'drawing')}, on ${mouth.on}, leads by ${inFrames(mouth.lead)}`,
    ...seen,
  ].join('  \n');
}
