/** Times, places and names as sentences have them. */

import type { Frames, Point, SeenThing, Was } from '../../compare/change.js';
import { isLater, lasts } from '../change-parts.js';
import type { SentenceFormat } from '../change-sentences.js';
import { figure, plural } from '../number-format.js';

export const was = (text: string | number) => `(was ${text})`;
export const quoted = (text: string, t: SentenceFormat) => `“${t.brief(text)}”`;
export const none = (text: string, t: SentenceFormat) => (text === '' ? 'none' : quoted(text, t));

/** `12 frames`, from a second on `1+12`. */
export function time(frames: number, t: SentenceFormat): string {
  return t.long(frames) ? t.length(Math.abs(frames)) : plural(Math.abs(frames), 'frame');
}

/** `16 frames (was 12)`. */
export function times({ old, now }: Was<number>, t: SentenceFormat): string {
  if (t.long(old) || t.long(now)) return `${t.length(now)} ${was(t.length(old))}`;
  return `${plural(now, 'frame')} ${was(old)}`;
}

export const later = (by: number, t: SentenceFormat) => `${time(by, t)} ${by > 0 ? 'later' : 'earlier'}`;
export const longer = (by: number, t: SentenceFormat) => `${time(by, t)} ${by > 0 ? 'longer' : 'shorter'}`;
export const range = ({ from, to }: Frames, t: SentenceFormat) =>
  from === to ? t.row(from) : `${t.row(from)} to ${t.row(to)}`;

export function seen(it: SeenThing, level: string): string {
  if (it.form === 'empty') return 'empty';
  if (it.form === 'cycle')
    return it.first === it.last ? `the cycle on ${it.first}` : `the cycle ${it.first}-${it.last}`;
  return it.kind === 'key' ? `key ${it.drawing}` : `${level}${it.cel} (${it.drawing})`;
}

export function by({ xMm, yMm }: Point): string {
  const sides = [
    Math.abs(xMm) < 5e-3 ? '' : `${figure(Math.abs(xMm))} mm ${xMm > 0 ? 'right' : 'left'}`,
    Math.abs(yMm) < 5e-3 ? '' : `${figure(Math.abs(yMm))} mm ${yMm > 0 ? 'up' : 'down'}`,
  ].filter(Boolean);
  return sides.join(', ') || 'moved by a hair';
}

export const at = ({ xMm, yMm }: Point) => `${figure(xMm)},${figure(yMm)}`;

export const size = (it: { widthMm: number; heightMm: number } | null) =>
  it ? `${figure(it.widthMm)} x ${figure(it.heightMm)} mm` : 'the usual sheet';

export function timed(name: string, frames: Was<Frames>, t: SentenceFormat): string {
  const shift = isLater(frames);
  const span = `${range(frames.now, t)} ${was(range(frames.old, t))}`;
  if (shift !== null) return `${name} ${later(shift, t)}: ${span}`;
  if (frames.now.to === frames.old.to)
    return `${name} begins ${later(frames.now.from - frames.old.from, t)}: ${span}`;
  const grown = lasts(frames.now) - lasts(frames.old);
  return grown === 0 ? `${name}: ${span}` : `${name} ${longer(grown, t)}: ${span}`;
}
