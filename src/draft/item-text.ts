/** Items as the text of a timeline, and the phrases that timelines share. */

import { splitSeconds } from '../shot/time-notation.js';
import { betweenParts } from './exposure-runs.js';
import type { DraftItem, DraftLength } from './item-search.js';

/** `fps`: lengths of a second or more are written in seconds and frames. */
export function itemsText(pieces: readonly DraftItem[], fps: number): string {
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

function pieceText(piece: DraftItem, fps: number): string {
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

function lengthText(length: DraftLength, fps: number): string {
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

// ---- cycles that stand in several places, made into phrases

/** More of them than this make no text clearer. */
const MOST_PHRASES = 6;

export interface SharedPhrases {
  /** `phrase` statements. */
  readonly phrases: readonly string[];
  /** Items of the levels that play one. */
  readonly items: ReadonlyMap<string, string>;
}

/** `texts`: the items of each level. What stands between the brackets of a group can be a phrase: it means the same by itself. */
export function sharePhrases(texts: ReadonlyMap<string, string>): SharedPhrases {
  const count = new Map<string, number>();
  for (const text of texts.values())
    for (const body of bodies(text)) count.set(body, (count.get(body) ?? 0) + 1);
  const chosen = [...count]
    .map(([body, times]) => ({ body, saved: (times - 1) * body.length - 'phrase cycle1 = '.length }))
    .filter(({ saved }) => saved > 0)
    .sort((a, b) => b.saved - a.saved || (a.body < b.body ? -1 : 1))
    .slice(0, MOST_PHRASES)
    .map(({ body }, i) => ({ body, name: `cycle${i + 1}` }));
  const items = new Map<string, string>();
  for (const [level, text] of texts) {
    const played = chosen.reduce((so, { body, name }) => so.replaceAll(`(${body})`, name), text);
    if (played !== text) items.set(level, played);
  }
  return { phrases: chosen.map(({ body, name }) => `phrase ${name} = ${body}`), items };
}

/** What stands between the outermost brackets. */
function bodies(text: string): string[] {
  return [...text.matchAll(/\(([^()]*)\)/g)].map(([, body]) => body!);
}
