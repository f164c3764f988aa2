/** Times, places and names as sentences have them. */

import type { Frames, Point, SeenThing, Was } from '../../compare/change.js';
import { isLater, lasts } from '../change-parts.js';
import type { SentenceFormat } from '../change-sentences.js';
import { figure } from '../number-format.js';

export const was = (text: string | number) => `（旧 ${text}）`;
export const quoted = (text: string, t: SentenceFormat) => `「${t.brief(text)}」`;
export const none = (text: string, t: SentenceFormat) => (text === '' ? 'なし' : quoted(text, t));

/** `12コマ`, from a second on `1+12`. */
export function time(frames: number, t: SentenceFormat): string {
  return t.long(frames) ? t.length(Math.abs(frames)) : `${Math.abs(frames)}コマ`;
}

export function times({ old, now }: Was<number>, t: SentenceFormat): string {
  if (t.long(old) || t.long(now)) return `${t.length(now)}${was(t.length(old))}`;
  return `${now}コマ${was(old)}`;
}

export const later = (by: number, t: SentenceFormat) => `${time(by, t)}${by > 0 ? '後ろへ' : '前へ'}`;
export const longer = (by: number, t: SentenceFormat) => `${time(by, t)}${by > 0 ? '長く' : '短く'}`;
export const range = ({ from, to }: Frames, t: SentenceFormat) =>
  from === to ? t.row(from) : `${t.row(from)}～${t.row(to)}`;

export function seen(it: SeenThing, level: string): string {
  if (it.form === 'empty') return '空セル';
  if (it.form === 'cycle')
    return it.first === it.last ? `リピート${it.first}` : `リピート${it.first}～${it.last}`;
  return it.kind === 'key' ? `原画${it.drawing}` : `${level}${it.cel}（${it.drawing}）`;
}

export function by({ xMm, yMm }: Point): string {
  const sides = [
    Math.abs(xMm) < 5e-3 ? '' : `${xMm > 0 ? '右' : '左'}へ${figure(Math.abs(xMm))} mm`,
    Math.abs(yMm) < 5e-3 ? '' : `${yMm > 0 ? '上' : '下'}へ${figure(Math.abs(yMm))} mm`,
  ].filter(Boolean);
  return sides.join('、') || 'わずかに移動';
}

export const at = ({ xMm, yMm }: Point) => `${figure(xMm)},${figure(yMm)}`;

export const size = (it: { widthMm: number; heightMm: number } | null) =>
  it ? `${figure(it.widthMm)}×${figure(it.heightMm)} mm` : '標準用紙';

export function timed(name: string, frames: Was<Frames>, t: SentenceFormat): string {
  const shift = isLater(frames);
  const span = `${range(frames.now, t)}${was(range(frames.old, t))}`;
  if (shift !== null) return `${name} ${later(shift, t)}：${span}`;
  if (frames.now.to === frames.old.to)
    return `${name} 始まりを${later(frames.now.from - frames.old.from, t)}：${span}`;
  const grown = lasts(frames.now) - lasts(frames.old);
  return grown === 0 ? `${name}：${span}` : `${name} ${longer(grown, t)}：${span}`;
}
