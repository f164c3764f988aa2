/** Puts ladders on pages. */

import { packShelves } from '../../layout/shelf-packing.js';
import type { LevelLadders } from './chart-ladders.js';
import { type LadderColumns, type LadderPiece, lengthOf, piecesOf, TITLE_HEIGHT } from './ladder-marks.js';

const LEVEL_HEIGHT = 11;
const BELOW_LADDER = 9;
const BETWEEN_LADDERS = 6;

export interface ChartBody {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface PlacedLadder {
  readonly piece: LadderPiece;
  readonly columns: LadderColumns;
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

export interface LadderPage {
  readonly headings: readonly Heading[];
  readonly placed: readonly PlacedLadder[];
}

/** Fills pages row by row; the ladders of a row are equally long. Only the pieces of a very long ladder go over pages. */
export function placeLadders(
  entries: readonly LevelLadders[],
  { left, right, top, bottom }: ChartBody,
  columnsOf: (entry: LevelLadders) => LadderColumns,
): LadderPage[] {
  const longest = bottom - top - LEVEL_HEIGHT - TITLE_HEIGHT - BELOW_LADDER;
  const around = TITLE_HEIGHT + BELOW_LADDER;
  const sections = entries.map((entry) => {
    const columns = columnsOf(entry);
    const runs = entry.ladders.map((ladder) =>
      piecesOf(ladder, longest).map((piece) => ({
        holds: { piece, columns },
        sizes: [{ width: columns.width, height: around + lengthOf(piece, longest) }],
      })),
    );
    return { of: entry, heading: LEVEL_HEIGHT, runs };
  });
  const area = { x: left, y: top, width: right - left, height: bottom - top };
  return packShelves(sections, { ...area, between: BETWEEN_LADDERS, aligned: true }).map(
    ({ headings, places }): LadderPage => ({
      headings: headings.map(({ of, y, goesOn }) => ({ entry: of, y, goesOn })),
      placed: places.map(({ holds, x, y, shelf }) => ({ ...holds, x, y, lengthMm: shelf - around })),
    }),
  );
}
