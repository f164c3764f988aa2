/** Items as the text of a timeline. */

import { splitSeconds } from '../shot/time.js';
import type { Length, Piece } from './items.js';
import { betweenParts } from './runs.js';

/** `fps`: lengths of a second or more are written in seconds and frames. */
export function itemsText(pieces: readonly Piece[], fps: number): string {
  let text = '';
  for (const piece of pieces) {
    const next = pieceText(piece, fps);
    // A dash needs no blank beside it, as long as no length or hold stands before what it would be read with.
    const close =
      text === '' ||
      (next.startsWith('-') || next.startsWith('=') ? !text.endsWith('..') : /[-=]$/.test(text));
    text += close ? next : ` ${next}`;
  }
  return text;
}

function pieceText(piece: Piece, fps: number): string {
  if (piece.kind === 'on') return `on ${piece.frames}`;
  if (piece.kind === 'item') {
    const { run, how } = piece;
    const sign =
      how === 'empty'
        ? 'x'
        : how === 'between'
          ? run.kind === 'breakdown'
            ? '='
            : '-'
          : nameText(run.drawing!);
    return sign + lengthText(piece.length, fps);
  }
  const { body, bounce, repeat } = piece;
  const times = repeat === 'open' ? '..' : repeat.times > 1 ? `*${repeat.times}` : '';
  return `(${itemsText(body, fps)})${bounce ? '<>' : ''}${times}`;
}

/** A drawing's name as it is typed: without the count that only tells two passages apart. */
function nameText(name: string): string {
  return betweenParts(name)?.count ? name.replace(/\/.*/, '') : name;
}

function lengthText(length: Length, fps: number): string {
  if (length === 'on') return '';
  if (length === 'open') return '..';
  return `:${framesText(length, fps)}`;
}

/** `18`, `1+6`: seconds where there is one. */
export function framesText(frames: number, fps: number): string {
  if (frames < fps) return String(frames);
  const split = splitSeconds(frames, fps);
  return `${split.seconds}+${split.frames}`;
}
