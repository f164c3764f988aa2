/** Values of the manifest: what is typed behind a key, read into what the key takes. Pure functions of text. */

import type { Takes } from '../language/catalogue/message-terms.js';
import { millimetres } from '../language/shared-rules.js';

/** A value, or what the key takes. */
export type Value<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly takes: Takes };

/** `254mm x 142.875mm`, `254x142.875mm`, `10in x 5.625in`; each side within the limits, in mm. */
export function sizeMm(
  text: string,
  least: number,
  most: number,
): Value<{ widthMm: number; heightMm: number }> {
  const takes = { value: 'size', least, most } as const;
  const match = /^(\d+(?:\.\d+)?) ?(mm|cm|in)? ?[x×] ?(\d+(?:\.\d+)?) ?(mm|cm|in)?$/.exec(plain(text));
  if (!match) return { ok: false, takes };
  const second = match[4] ?? match[2];
  const widthMm = millimetres(match[1]!, match[2] ?? second);
  const heightMm = millimetres(match[3]!, second);
  const fine = [widthMm, heightMm].every((side) => side >= least && side <= most);
  return fine ? { ok: true, value: { widthMm, heightMm } } : { ok: false, takes };
}

/** `1920x1080`. */
export function pixels(text: string): Value<{ width: number; height: number }> {
  const takes = { value: 'pixels' } as const;
  const match = /^(\d+) ?[x×] ?(\d+)$/.exec(plain(text));
  if (!match) return { ok: false, takes };
  const [width, height] = [Number(match[1]), Number(match[2])];
  const fine = [width, height].every((side) => side >= 16 && side <= 32768);
  return fine ? { ok: true, value: { width, height } } : { ok: false, takes };
}

/** `200dpi` or `200`. */
export function dpi(text: string): Value<number> {
  const match = /^(\d+(?:\.\d+)?) ?(?:dpi)?$/.exec(plain(text));
  const value = Number(match?.[1]);
  return value >= 10 && value <= 10000 ? { ok: true, value } : { ok: false, takes: { value: 'dpi' } };
}

/** `1320+0`, `1980'00` or a number of frames: a running time in frames, up to ten hours. */
export function runningTime(text: string, fps: number, framesAFoot: number): Value<number> {
  const takes = { value: 'running-time' } as const;
  const match = /^(\d+)(?:([+'])(\d+))?$/.exec(plain(text));
  if (!match) return { ok: false, takes };
  const unit = match[2] === '+' ? fps : match[2] === "'" ? framesAFoot : 1;
  const value = Number(match[1]) * unit + Number(match[3] ?? 0);
  return value >= 1 && value <= 36000 * fps ? { ok: true, value } : { ok: false, takes };
}

export function whole(text: string, least: number, most: number): Value<number> {
  const value = /^\d+$/.test(plain(text)) ? Number(plain(text)) : Number.NaN;
  return value >= least && value <= most
    ? { ok: true, value }
    : { ok: false, takes: { value: 'whole', least, most } };
}

/** What a Japanese keyboard gives means its ASCII twin here, too. */
function plain(text: string): string {
  return text.normalize('NFKC').trim().replace(/’/g, "'").replace(/\s+/g, ' ');
}
