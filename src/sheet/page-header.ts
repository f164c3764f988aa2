/** The head of every page: which cut, how long, which page, who signs. */

import type { Shot } from '../shot/shot.js';
import { feetAndFrames, secondsAndFrames } from '../shot/time-notation.js';
import type { SheetWords } from '../words/sheet-words.js';
import type { Mark, Metrics } from './display-list.js';
import { type Box, inShares, textAt } from './mark-builders.js';
import { captionMm, type SheetGeometry } from './sheet-geometry.js';
import { fitLine, setInBox } from './text-fitting.js';

export type Cell =
  | 'title'
  | 'episode'
  | 'scene'
  | 'cut'
  | 'time'
  | 'feet'
  | 'take'
  | 'page'
  | 'artist'
  | 'signature';

export interface HeaderCell {
  readonly cell: Cell;
  readonly box: Box;
  readonly caption: string;
}

type Place = Pick<SheetGeometry, 'header' | 'scale' | 'leastTextMm'>;

/** Shares of the width. */
const FIRST: readonly (readonly [Cell, number])[] = [
  ['title', 30],
  ['episode', 9],
  ['scene', 9],
  ['cut', 18],
  ['time', 16],
  ['take', 6],
  ['page', 12],
];

const FIRST_WITH_FEET: readonly (readonly [Cell, number])[] = [
  ['title', 27],
  ['episode', 8],
  ['scene', 8],
  ['cut', 17],
  ['feet', 13],
  ['time', 10],
  ['take', 6],
  ['page', 11],
];

/** By the box of the head, which all pages of a geometry share. */
const known = new WeakMap<Box, { readonly words: SheetWords; readonly cells: readonly HeaderCell[] }>();

/** `west` adds the box for feet. */
export function headerCells(
  { header }: Pick<SheetGeometry, 'header'>,
  words: SheetWords,
  west: boolean,
): readonly HeaderCell[] {
  const found = known.get(header);
  if (found?.words === words && found.cells.some(({ cell }) => cell === 'feet') === west) return found.cells;
  const cells = cellsOf(header, words, west);
  known.set(header, { words, cells });
  return cells;
}

function cellsOf(header: Box, words: SheetWords, west: boolean): HeaderCell[] {
  const upper = header.height * 0.6;
  const first = west ? FIRST_WITH_FEET : FIRST;
  const cells = inARow({ ...header, height: upper }, first).map(
    ([cell, box]): HeaderCell => ({
      cell,
      box,
      caption: words[cell as Exclude<Cell, 'signature'>],
    }),
  );
  const signed = words.signatures.map((): readonly [Cell, number] => ['signature', 13]);
  const second = inARow({ ...header, y: header.y + upper, height: header.height - upper }, [
    ['artist', 22],
    ...signed,
  ]);
  return [
    ...cells,
    ...second.map(
      ([cell, box], i): HeaderCell => ({
        cell,
        box,
        caption: cell === 'artist' ? words.artist : words.signatures[i - 1]!,
      }),
    ),
  ];
}

function inARow(box: Box, shares: readonly (readonly [Cell, number])[]): [Cell, Box][] {
  const boxes = inShares(
    box,
    shares.map(([, share]) => share),
  );
  return shares.map(([cell], i) => [cell, boxes[i]!]);
}

export interface HeaderContent {
  readonly shot: Shot;
  readonly title: string;
  readonly episode: string;
  readonly words: SheetWords;
  readonly metrics: Metrics;
  readonly west: boolean;
  /** The page fraction. */
  readonly page: string;
  readonly leftOver: Set<string>;
}

export function headerMarks(place: Place, headed: HeaderContent): Mark[] {
  const { shot, words, metrics } = headed;
  const { scale, leastTextMm } = place;
  const time = secondsAndFrames(shot.time, shot.fps).replace('+', ' + ');
  const values: Record<Cell, readonly Value[]> = {
    title: [
      { text: headed.title, most: 3.4 },
      { text: shot.title && words.quoted(shot.title), most: 2.7 },
    ],
    episode: [{ text: headed.episode, most: 4 }],
    scene: [{ text: shot.scene, most: 4 }],
    cut: [{ text: shot.cut, most: 7.6, bold: true }],
    time: [{ text: time, most: headed.west ? 4 : 5.2, bold: !headed.west }],
    feet: [{ text: feetAndFrames(shot.time), most: 5.2, bold: true }],
    take: [{ text: shot.take, most: 4 }],
    page: [{ text: headed.page, most: 4.4, bold: true, oneLine: true }],
    artist: [{ text: shot.artists.join(', '), most: 3.2 }],
    signature: [],
  };
  return headerCells(place, words, headed.west).flatMap(({ cell, box, caption }) => {
    const lines = values[cell].filter(({ text }) => text !== '');
    const under = captionMm(place) + 0.5;
    const height = (box.height - under - 0.5) / lines.length;
    return lines.flatMap(({ text, most, bold, oneLine }, i) => {
      const room = { x: box.x + 0.8, y: box.y + under + i * height, width: box.width - 1.6, height };
      const weight = bold ? 'bold' : 'regular';
      const size = { most: most * scale, least: leastTextMm, weight } as const;
      const line = fitLine(metrics, text, room.width, size);
      if (oneLine && line.fits) {
        const { sizeMm, squeeze } = line;
        const at = textAt(room.x + room.width / 2, room.y + height / 2, text, { sizeMm, squeeze, weight });
        return [at];
      }
      const set = setInBox(metrics, text, room, size);
      if (!set.fits) headed.leftOver.add(`${caption}: ${text}`);
      return set.marks;
    });
  });
}

interface Value {
  readonly text: string;
  readonly most: number;
  readonly bold?: boolean;
  /** Never broken: what stands before the break would read as a page of its own. */
  readonly oneLine?: boolean;
}
