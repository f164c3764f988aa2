/** Puts ladders on pages. */

import { type Columns, lengthOf, type Piece, piecesOf, TITLE_HEIGHT } from './ladder.js';
import type { LevelLadders } from './steps.js';

const LEVEL_HEIGHT = 11;
const BELOW_LADDER = 9;
const BETWEEN_LADDERS = 6;

export interface Body {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface Placed {
  readonly piece: Piece;
  readonly columns: Columns;
  readonly x: number;
  readonly y: number;
  readonly lengthMm: number;
}

export interface Heading {
  readonly entry: LevelLadders;
  readonly y: number;
  /** The level began on a page before. */
  readonly goesOn: boolean;
}

export interface Sheet {
  readonly headings: Heading[];
  readonly placed: Placed[];
}

/** Fills pages row by row; the ladders of a row are equally long. Only the pieces of a very long ladder go over pages. */
export function arrange(
  entries: readonly LevelLadders[],
  body: Body,
  columnsOf: (entry: LevelLadders) => Columns,
): Sheet[] {
  const wide = body.right - body.left + BETWEEN_LADDERS;
  const longest = body.bottom - body.top - LEVEL_HEIGHT - TITLE_HEIGHT - BELOW_LADDER;
  const sheets: Sheet[] = [{ headings: [], placed: [] }];
  let y = body.top;
  for (const entry of entries) {
    let begun = false;
    const columns = columnsOf(entry);
    const across = Math.max(1, Math.floor(wide / (columns.width + BETWEEN_LADDERS)));
    for (const row of rowsOf(entry, across, longest)) {
      const lengthMm = Math.max(...row.map((piece) => lengthOf(piece, longest)));
      const height = TITLE_HEIGHT + lengthMm + BELOW_LADDER;
      const heading = begun ? 0 : LEVEL_HEIGHT;
      if (y + heading + height > body.bottom + 1e-6) {
        sheets.push({ headings: [], placed: [] });
        y = body.top;
      }
      const sheet = sheets.at(-1)!;
      if (!begun || y === body.top) {
        sheet.headings.push({ entry, y, goesOn: begun });
        y += LEVEL_HEIGHT;
        begun = true;
      }
      const top = y;
      row.forEach((piece, i) => {
        sheet.placed.push({ piece, columns, x: body.left + (i * wide) / across, y: top, lengthMm });
      });
      y += height;
    }
  }
  return sheets.filter((sheet) => sheet.placed.length > 0);
}

function rowsOf(entry: LevelLadders, across: number, longest: number): Piece[][] {
  const rows: Piece[][] = [[]];
  for (const ladder of entry.ladders) {
    const pieces = piecesOf(ladder, longest);
    const last = rows.at(-1)!;
    if (last.length > 0 && last.length + pieces.length > across) rows.push([]);
    for (const piece of pieces) {
      if (rows.at(-1)!.length === across) rows.push([]);
      rows.at(-1)!.push(piece);
    }
  }
  return rows;
}
