/** Dialogue in level scripts: its words and syllables spread over rows, and their marks. */

import type { Ink, Mark, Metrics } from '../display-list.js';
import { textAt } from '../mark-builders.js';
import { type BlockFrames, type PageSide, topOf } from '../sheet-plan.js';
import { NARROWEST_SQUEEZE, wrap } from '../text-fitting.js';
import { placesDown } from './column-places.js';
import { type SpeechLane, tick } from './speech-lanes.js';
import { type ReadStretch, rowAt } from './word-places.js';

/**
 * Words of level scripts on their rows, a list of marks for each stretch; null where one does not fit. A word that the text
 * ties to a row is black and bears a tick; the others are lighter, so that nobody takes a guess for a reading.
 */
export function levelStretches(
  side: PageSide,
  run: BlockFrames,
  all: readonly ReadStretch[],
  lane: SpeechLane,
): (Mark[] | null)[] {
  const { plan, geometry } = side;
  const most = Math.max(geometry.leastTextMm, Math.min(geometry.rowMm * 0.72, 2.5 * geometry.scale));
  const least = geometry.leastTextMm;
  const spread = all.map((stretch) => spreadWords(stretch, lane.wordsWidth, { most, least }, plan.metrics));
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

/** Words on one row: what is known to begin there in black, with a tick, what is spread over its rows in a lighter ink. */
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
  stretch: ReadStretch,
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
  stretch: ReadStretch,
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
  stretch: ReadStretch,
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

/** The words of a stretch that begin on the rows of a run. */
function wordsHere(run: BlockFrames, stretch: ReadStretch): PlacedWord[] {
  return wordsOf(stretch.text)
    .map(({ text, offset }): PlacedWord => {
      const ink = stretch.tied && offset === 0 ? 'black' : 'light';
      return { text, frame: rowAt(stretch, offset), ink };
    })
    .filter(({ frame }) => frame >= run.first && frame <= run.last);
}

/** What stands on a row of its own, or with others on one. */
interface Piece {
  readonly text: string;
  readonly offset: number;
  /** It goes on with the word of the piece before. */
  readonly inWord: boolean;
}

function wordsOf(text: string): Piece[] {
  return [...text.matchAll(/[^ ]+/g)].map(({ 0: word, index }) => ({
    text: word,
    offset: index,
    inWord: false,
  }));
}

/** The syllables of a word, as far as it is known where they begin. */
export function syllables({ places }: Pick<ReadStretch, 'places'>, word: Piece): Piece[] {
  const end = word.offset + word.text.length;
  const within = (places ?? []).filter(({ offset }) => offset > word.offset && offset < end);
  const starts = [word.offset, ...new Set(within.map(({ offset }) => offset))];
  return starts.map((offset, i) => ({
    text: word.text.slice(offset - word.offset, (starts[i + 1] ?? end) - word.offset),
    offset,
    inWord: i > 0,
  }));
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

/** Words on the rows of their stretch, in `width`, in step with how they are spoken; null where even the smallest print does not fit. */
export function spreadWords(
  stretch: ReadStretch,
  width: number,
  { most, least }: TextSizes,
  metrics: Metrics,
): SpreadWords | null {
  const words = wordsOf(stretch.text);
  // Whole words, even if small, read better than large syllables.
  for (const split of [false, true])
    for (let sizeMm = most; sizeMm >= least; sizeMm = smaller(sizeMm, least)) {
      const fits = (text: string): boolean =>
        metrics.width(text, sizeMm, 'regular') * NARROWEST_SQUEEZE <= width;
      const pieces = split
        ? words.flatMap((word) => (fits(word.text) ? [word] : syllables(stretch, word)))
        : words;
      const rows = onRows(pieces, stretch, (line) => fits(lineOf(line, pieces)));
      if (rows) return { sizeMm, rows };
    }
  return null;
}

/** Pieces in a row as they are printed: with blanks between words, and a hyphen where a word goes on in the next row. */
function lineOf(line: readonly Piece[], all: readonly Piece[]): string {
  const text = line.map((piece, i) => (i === 0 || piece.inWord ? piece.text : ` ${piece.text}`)).join('');
  const goesOn = all[all.indexOf(line.at(-1)!) + 1]?.inWord && !/[-\u2010-\u2015]$/u.test(text);
  return goesOn ? `${text}-` : text;
}

/**
 * Where there are rows enough, each piece on its row or as near to it as it can be; else those of one row together, or else as many on a row
 * as it holds.
 */
function onRows(
  pieces: readonly Piece[],
  stretch: ReadStretch,
  fits: (line: readonly Piece[]) => boolean,
): RowOfWords[] | null {
  const rows = stretch.to - stretch.from + 1;
  const rowOf = ({ offset }: Piece): number => rowAt(stretch, offset) - stretch.from;
  const together: ((line: readonly Piece[], piece: Piece) => boolean)[] =
    pieces.length <= rows ? [() => false] : [(line, piece) => rowOf(line[0]!) === rowOf(piece), () => true];
  for (const joins of together) {
    const lines: Piece[][] = [];
    for (const piece of pieces) {
      const last = lines.at(-1);
      if (last && joins(last, piece) && fits([...last, piece])) last.push(piece);
      else lines.push([piece]);
    }
    if (!lines.every(fits)) continue;
    const tops = placesDown(
      lines.map(([first]) => ({ top: rowOf(first!), height: 1 })),
      rows,
    );
    if (tops) return lines.map((line, i) => ({ row: tops[i]!, text: lineOf(line, pieces) }));
  }
  return null;
}
