/** Dialogue in level scripts: its words and syllables spread over rows, and their marks. */

import type { Ink, Mark, Metrics } from '../display-list.js';
import { textAt } from '../mark-builders.js';
import { type BlockFrames, type PageSide, topOf } from '../sheet-plan.js';
import { NARROWEST_SQUEEZE, wrap } from '../text-fitting.js';
import { placesDown } from './column-places.js';
import { type SpeechLane, tick, type WordStretch } from './speech-lanes.js';

/**
 * Words of level scripts on their rows, a list of marks for each stretch; null where one does not fit. A word that the text
 * ties to a row is black and bears a tick; the others are lighter, so that nobody takes a guess for a reading.
 */
export function levelStretches(
  side: PageSide,
  run: BlockFrames,
  all: readonly WordStretch[],
  lane: SpeechLane,
): (Mark[] | null)[] {
  const { plan, geometry } = side;
  const most = Math.max(geometry.leastTextMm, Math.min(geometry.rowMm * 0.72, 2.5 * geometry.scale));
  const least = geometry.leastTextMm;
  const spread = all.map((stretch) =>
    spreadWords(stretch.text, stretch.to - stretch.from + 1, lane.wordsWidth, { most, least }, plan.metrics),
  );
  const fitting = spread.filter((one) => one !== null);
  const sizeMm = Math.min(most, ...fitting.map((one) => one.sizeMm));
  return all.map((stretch, i) => {
    const words = spread[i];
    if (!words) return turnedStretch(side, run, stretch, lane, { most, least });
    return words.rows.flatMap(({ row, text }): Mark[] => {
      const frame = stretch.from + row;
      if (frame < run.first || frame > run.last) return [];
      const y = topOf(side, run, frame) + geometry.rowMm / 2;
      if (row > 0 || !stretch.tied) return rowOfWords(side, lane, y, sizeMm, '', text);
      const [first = ''] = text.split(' ');
      return rowOfWords(side, lane, y, sizeMm, first, text.slice(first.length));
    });
  });
}

/** Words on one row: what is known to begin there in black, with a tick, what is spread evenly in a lighter ink. */
function rowOfWords(
  { plan, geometry }: PageSide,
  lane: SpeechLane,
  y: number,
  sizeMm: number,
  known: string,
  spread: string,
): Mark[] {
  const width = (text: string): number => plan.metrics.width(text, sizeMm, 'regular');
  const squeeze = Math.min(1, lane.wordsWidth / width(known + spread));
  const set = { sizeMm, squeeze, anchor: 'start' } as const;
  const x = lane.wordsX + (lane.wordsWidth - width(known + spread) * squeeze) / 2;
  const words = spread.trimStart();
  const blank = width(known + spread) - width(known) - width(words);
  return [
    ...(known === '' ? [] : [tick(x - 0.25, y, geometry), textAt(x, y, known, set)]),
    ...(words === ''
      ? []
      : [textAt(x + (width(known) + blank) * squeeze, y, words, { ...set, ink: 'light' as const })]),
  ];
}

/**
 * Words that find no room across the lane: set on their side. In one line each begins on its row, as far as there is room; in several,
 * as a block.
 */
function turnedStretch(
  side: PageSide,
  run: BlockFrames,
  stretch: WordStretch,
  lane: SpeechLane,
  sizes: TextSizes,
): Mark[] | null {
  const words = wordsHere(run, stretch);
  if (words.length === 0) return [];
  const here = stretch.tied && stretch.from >= run.first && stretch.from <= run.last;
  const set =
    turnedOnRows(side, run, stretch, lane, words, sizes) ??
    turnedLines(side, run, stretch, lane, words, sizes);
  if (!set || !here) return set;
  const { geometry } = side;
  return [tick(lane.wordsX - 0.1, topOf(side, run, stretch.from) + geometry.rowMm / 2, geometry), ...set];
}

/** Height of print, mm. */
interface TextSizes {
  readonly most: number;
  readonly least: number;
}

interface PlacedWord {
  readonly text: string;
  readonly frame: number;
  readonly ink: Ink;
}

/** How far a word that stands on its side keeps off the edges of rows, mm. */
const OFF_EDGE = 0.5;

/** One word below the other; of the sizes in which all of them begin on their rows the largest, else of those that fit. */
function turnedOnRows(
  side: PageSide,
  run: BlockFrames,
  stretch: WordStretch,
  lane: SpeechLane,
  words: readonly PlacedWord[],
  { most, least }: TextSizes,
): Mark[] | null {
  const { metrics } = side.plan;
  const { rowMm } = side.geometry;
  const end = topOf(side, run, Math.min(stretch.to, run.last) + 1) - OFF_EDGE;
  const x = lane.wordsX + lane.wordsWidth / 2;
  let fitting: Mark[] | null = null;
  for (let sizeMm = Math.min(most, lane.wordsWidth); sizeMm >= least; sizeMm = smaller(sizeMm, least)) {
    const blank = metrics.width(' ', sizeMm, 'regular');
    const wanted = words.map(({ text, frame }) => ({
      top: topOf(side, run, frame) + OFF_EDGE,
      height: metrics.width(text, sizeMm, 'regular') + blank,
    }));
    const tops = placesDown(wanted, end + blank);
    if (!tops) continue;
    const marks = words.map(({ text, ink }, i) =>
      textAt(x, tops[i]!, text, { sizeMm, turn: 90, anchor: 'start', ink }),
    );
    if (tops.every((top, i) => Math.abs(top - wanted[i]!.top) < rowMm - OFF_EDGE)) return marks;
    fitting ??= marks;
  }
  return fitting;
}

/** The next size to try; below `least` there is none. */
const smaller = (sizeMm: number, least: number): number =>
  sizeMm > least ? Math.max(least, sizeMm * 0.92) : -Infinity;

/** More words than one line holds: as many lines as the lane holds. */
function turnedLines(
  side: PageSide,
  run: BlockFrames,
  stretch: WordStretch,
  lane: SpeechLane,
  words: readonly PlacedWord[],
  { most, least }: TextSizes,
): Mark[] | null {
  const { metrics } = side.plan;
  const text = words.map((word) => word.text).join(' ');
  const known = words[0]!.ink === 'black' ? words[0]!.text : '';
  const top = topOf(side, run, Math.max(stretch.from, run.first)) + OFF_EDGE;
  const room = topOf(side, run, Math.min(stretch.to, run.last) + 1) - OFF_EDGE - top;
  for (let sizeMm = most; sizeMm >= least; sizeMm = smaller(sizeMm, least)) {
    const pitch = sizeMm * 1.12;
    const lines = wrap(metrics, text, room / 0.85, sizeMm);
    if ((lines.length - 1) * pitch + sizeMm > lane.wordsWidth) continue;
    const middle = lane.wordsX + lane.wordsWidth / 2 + ((lines.length - 1) * pitch) / 2;
    const width = (one: string): number => metrics.width(one, sizeMm, 'regular');
    return lines.flatMap((one, i) => {
      const squeeze = Math.min(1, room / width(one));
      const set = { sizeMm, squeeze, turn: 90, anchor: 'start' } as const;
      const x = middle - i * pitch;
      const first = i === 0 ? one.slice(0, known.length) : '';
      const rest = one.slice(first.length).trimStart();
      const at = top + (width(one) - width(rest)) * squeeze;
      return [
        ...(first === '' ? [] : [textAt(x, top, first, set)]),
        ...(rest === '' ? [] : [textAt(x, at, rest, { ...set, ink: 'light' as const })]),
      ];
    });
  }
  return null;
}

/** The words of a stretch whose beats fall on the rows of a run. */
function wordsHere(run: BlockFrames, stretch: WordStretch): PlacedWord[] {
  const words = stretch.text.split(' ');
  const all = words.reduce((so, word) => so + beats(word), 0);
  const rows = stretch.to - stretch.from + 1;
  let before = 0;
  return words
    .map((text, i): PlacedWord => {
      const frame = stretch.from + Math.floor((rows * before) / all);
      before += beats(text);
      return { text, frame, ink: stretch.tied && i === 0 ? 'black' : 'light' };
    })
    .filter(({ frame }) => frame >= run.first && frame <= run.last);
}

/** Groups of vowels: near enough to the beats of a word to share out rows by. */
export function beats(word: string): number {
  return Math.max(1, word.match(/[aeiouyàâäåæéèêëíîïóôöøœúûüý]+/giu)?.length ?? 1);
}

/** Pieces of a word that may stand on rows of their own, hyphens included; cut between a vowel and the next consonant. */
export function syllables(word: string): string[] {
  const parts = word.match(/[^aeiouy]*[aeiouy]+(?:[^aeiouy]+$|[^aeiouy](?=[^aeiouy]))?/giu) ?? [word];
  const left = word.slice(parts.join('').length);
  const all = left === '' ? [...parts] : [...parts.slice(0, -1), parts.at(-1)! + left];
  // A last syllable of a consonant and e is silent.
  if (all.length > 1 && /^[^aeiouy]+e[^a-z]*$/iu.test(all.at(-1)!))
    all.splice(-2, 2, all.at(-2)! + all.at(-1)!);
  return all.map((part, i) => (i < all.length - 1 ? `${part}-` : part));
}

export interface RowOfWords {
  /** From 0, within the stretch. */
  readonly row: number;
  readonly text: string;
}

export interface SpreadWords {
  readonly sizeMm: number;
  readonly rows: readonly RowOfWords[];
}

/** Words on at most `rows` rows of `width`, in step with their beats; null where even the smallest print does not fit. */
export function spreadWords(
  text: string,
  rows: number,
  width: number,
  { most, least }: TextSizes,
  metrics: Metrics,
): SpreadWords | null {
  const words = text.split(' ');
  // Whole words, even if small, read better than large syllables.
  for (const split of [false, true])
    for (let sizeMm = most; ; sizeMm = Math.max(least, sizeMm * 0.92)) {
      const fits = (one: string): boolean =>
        metrics.width(one, sizeMm, 'regular') * NARROWEST_SQUEEZE <= width;
      const pieces = split ? words.flatMap((word) => (fits(word) ? [word] : syllables(word))) : words;
      const set = pieces.every(fits) ? (inStep(pieces, rows, fits) ?? packed(pieces, rows, fits)) : null;
      if (set) return { sizeMm, rows: set };
      if (sizeMm === least) break;
    }
  return null;
}

const join = (text: string, piece: string): string =>
  text === '' ? piece : /[^-]-$/.test(text) ? text.slice(0, -1) + piece : `${text} ${piece}`;

/** Each piece on the row where its beat falls, or on the next one that is free. */
function inStep(
  pieces: readonly string[],
  rows: number,
  fits: (text: string) => boolean,
): RowOfWords[] | null {
  const all = pieces.reduce((so, piece) => so + beats(piece), 0);
  const set: { row: number; text: string }[] = [];
  const roomy = pieces.length <= rows;
  let before = 0;
  for (const [i, piece] of pieces.entries()) {
    let row = Math.floor((rows * before) / all);
    before += beats(piece);
    const last = set.at(-1);
    if (roomy) {
      row = Math.min(rows - (pieces.length - i), Math.max(row, last ? last.row + 1 : 0));
      set.push({ row, text: piece });
    } else if (last && row <= last.row) {
      const joined = join(last.text, piece);
      if (fits(joined)) last.text = joined;
      else set.push({ row: last.row + 1, text: piece });
    } else set.push({ row, text: piece });
  }
  return set.at(-1)!.row < rows ? set : null;
}

/** As many pieces a row as it holds, the rows spread evenly. */
function packed(
  pieces: readonly string[],
  rows: number,
  fits: (text: string) => boolean,
): RowOfWords[] | null {
  const lines: string[] = [];
  for (const piece of pieces) {
    const joined = join(lines.at(-1) ?? '', piece);
    if (lines.length > 0 && fits(joined)) lines[lines.length - 1] = joined;
    else lines.push(piece);
  }
  if (lines.length > rows) return null;
  return lines.map((text, i) => ({ row: Math.floor((i * rows) / lines.length), text }));
}
