/** Where everything stands on a sheet of paper. Nothing here knows what a cut shows. */

import { FRAMES_A_FOOT, type Paper, type Settings } from '../shot/settings.js';
import { type BlockColumns, blockColumns, type Gutters, type WantedColumns } from './block-columns.js';
import type { Box } from './mark-builders.js';

/** A run of rows printed one under the other; a page has one or two. */
export interface RowBlock {
  readonly x: number;
  readonly width: number;
  /** Rows of the page above and before it. */
  readonly before: number;
  readonly rows: number;
  readonly columns: BlockColumns;
}

export interface SheetGeometry {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Sizes of heads and texts against those of A4. */
  readonly scale: number;
  /** The smallest print of this paper, mm. */
  readonly leastTextMm: number;
  /** Frames that the rows are numbered by: a second or a foot. */
  readonly unit: number;
  readonly header: Box;
  readonly memo: Box;
  /** Names and counts over the columns. */
  readonly heads: Box;
  readonly foot: Box;
  /** Top edge of the first row. */
  readonly top: number;
  readonly rowMm: number;
  readonly rowsAPage: number;
  readonly blocks: readonly RowBlock[];
  readonly bracketMm: number;
  readonly gutters: Gutters;
}

/** From the paper's edge: what most office printers cannot reach, and a little. */
const SIDE = 6.5;
const GAP = 1.4;
const BETWEEN_BLOCKS = 3;
/** Rows are not made higher. */
const HIGHEST_ROW = 5.2;
/** A row that still holds the smallest print, ems of it. */
const LOWEST_ROW = 1.08;

/** Frames that rows are numbered and ruled by. */
export function unitOf(settings: Pick<Settings, 'convention'>, fps: number): number {
  return settings.convention === 'west' ? FRAMES_A_FOOT : Math.max(1, Math.round(fps));
}

/**
 * Rows of the blocks of a page, as the convention has them: six seconds in two halves, or six feet in one. Fewer, in whole
 * seconds (feet), where rows would be lower than `lowestRowMm`, by default than print that can be read.
 */
export function rowsOfBlocks(
  settings: Settings,
  fps: number,
  lowestRowMm = lowestRowOf(settings.paper),
): number[] {
  const unit = unitOf(settings, fps);
  const rows = Math.max(1, Math.round(settings.rows ?? 6 * unit));
  const most = mostRowsOfBlock(settings, lowestRowMm);
  const held = (wanted: number): number =>
    wanted <= most ? wanted : most >= unit ? Math.floor(most / unit) * unit : most;
  if (settings.convention === 'west' || (rows <= 3 * unit && rows <= most)) return [held(rows)];
  const half = held(Math.ceil(rows / 2));
  return [half, Math.min(half, Math.floor(rows / 2))];
}

interface Upright {
  readonly scale: number;
  readonly header: Box;
  readonly memo: Box;
  readonly heads: Box;
  readonly foot: Box;
  readonly top: number;
  readonly rowMm: number;
}

/** Heights on A4, mm; the memo's is the least. */
const HEADER = 17.5;
const MEMO = 19;
const HEADS = 20;
const FOOT = 4;

function scaleOf(settings: Settings): number {
  const { widthMm, heightMm } = PAPER_MM[settings.paper];
  return Math.min(1.4, Math.max(0.86, Math.min(widthMm / 210, heightMm / 297)));
}

/** Height that is left for the rows, mm. */
function roomForRows(settings: Settings): number {
  const { heightMm } = PAPER_MM[settings.paper];
  return heightMm - 2 * SIDE - 2 * GAP - (HEADER + MEMO + HEADS + FOOT) * scaleOf(settings);
}

function upright(settings: Settings, rows: number): Upright {
  const scale = scaleOf(settings);
  const room = roomForRows(settings);
  const rowMm = Math.min(HIGHEST_ROW, room / rows);
  const width = PAPER_MM[settings.paper].widthMm - 2 * SIDE;
  const header = { x: SIDE, y: SIDE, width, height: HEADER * scale };
  const memoHeight = MEMO * scale + room - rowMm * rows;
  const memo = { x: SIDE, y: header.y + header.height + GAP, width, height: memoHeight };
  const heads = { x: SIDE, y: memo.y + memo.height + GAP, width, height: HEADS * scale };
  const top = heads.y + heads.height;
  const foot = { x: SIDE, y: top + rowMm * rows, width, height: FOOT * scale };
  return { scale, header, memo, heads, foot, top, rowMm };
}

/** Inner width of a block of rows, mm. */
export function blockWidth(settings: Settings, fps: number): number {
  const blocks = rowsOfBlocks(settings, fps).length;
  return (PAPER_MM[settings.paper].widthMm - 2 * SIDE - (blocks - 1) * BETWEEN_BLOCKS) / blocks;
}

const lowestRowOf = (paper: Paper): number => smallestTextMm(paper) * LOWEST_ROW;

function mostRowsOfBlock(settings: Settings, lowestRowMm: number): number {
  return Math.floor(roomForRows(settings) / lowestRowMm);
}

/** The most rows a page that this paper holds with print that can still be read. */
export function mostRows(settings: Settings): number {
  return mostRowsOfBlock(settings, lowestRowOf(settings.paper)) * (settings.convention === 'west' ? 1 : 2);
}

export function sheetGeometry(
  settings: Settings,
  fps: number,
  wanted: WantedColumns,
  lowestRowMm = lowestRowOf(settings.paper),
): SheetGeometry {
  const { widthMm, heightMm } = PAPER_MM[settings.paper];
  const rows = rowsOfBlocks(settings, fps, lowestRowMm);
  const place = upright(settings, rows[0]!);
  const width = blockWidth(settings, fps);
  let before = 0;
  const blocks = rows.map((count, i): RowBlock => {
    const x = SIDE + i * (width + BETWEEN_BLOCKS);
    const block = { x, width, before, rows: count, columns: blockColumns(wanted, x, width) };
    before += count;
    return block;
  });
  return {
    ...place,
    widthMm,
    heightMm,
    leastTextMm: smallestTextMm(settings.paper),
    unit: unitOf(settings, fps),
    rowsAPage: before,
    blocks,
    bracketMm: wanted.bracketMm,
    gutters: wanted.gutters,
  };
}

/** By what is wanted; cuts of an episode share their settings, and most of them the widths of their columns. */
const shared = new WeakMap<Settings, Map<string, SheetGeometry>>();
/** A cut of which many versions are laid out may want ever other widths. */
const MOST_SHARED = 300;

/** `sheetGeometry`, made once for all sheets that come out alike. */
export function sharedGeometry(settings: Settings, fps: number, wanted: WantedColumns): SheetGeometry {
  const known = shared.get(settings) ?? new Map<string, SheetGeometry>();
  shared.set(settings, known);
  const id = JSON.stringify([fps, wanted]);
  let found = known.get(id);
  if (!found) {
    if (known.size >= MOST_SHARED) known.clear();
    found = sheetGeometry(settings, fps, wanted);
    known.set(id, found);
  }
  return found;
}

/** Top edge of a row of a block; `row` counts from 0, and `block.rows` gives the bottom edge. */
export function rowTop(geometry: SheetGeometry, row: number): number {
  return geometry.top + row * geometry.rowMm;
}

/** Height of the small words over boxes. */
export const captionMm = ({ scale, leastTextMm }: Pick<SheetGeometry, 'scale' | 'leastTextMm'>): number =>
  Math.max(leastTextMm, 1.65 * scale);

/** Upright sizes in mm. Sources: ISO 216 (A), JIS P 0138 (B4, B5), ANSI sizes as in CSS paged media (the others). */
export const PAPER_MM: Readonly<Record<Paper, { readonly widthMm: number; readonly heightMm: number }>> = {
  A4: { widthMm: 210, heightMm: 297 },
  A3: { widthMm: 297, heightMm: 420 },
  B4: { widthMm: 257, heightMm: 364 },
  B5: { widthMm: 182, heightMm: 257 },
  letter: { widthMm: 215.9, heightMm: 279.4 },
  legal: { widthMm: 215.9, heightMm: 355.6 },
  tabloid: { widthMm: 279.4, heightMm: 431.8 },
  // Envelopes, from memory: ISO 269 C4; JIS S 5502 Kaku 2 (角2).
  C4: { widthMm: 229, heightMm: 324 },
  kaku2: { widthMm: 240, heightMm: 332 },
};

const MM_A_POINT = 25.4 / 72;

/** How much larger print may be than on A4: 1 to 1.4. */
export function largerPrint(paper: Paper): number {
  const { widthMm, heightMm } = PAPER_MM[paper];
  return Math.min(1.4, Math.max(1, Math.min(widthMm / 210, heightMm / 297)));
}

/** The smallest em that is printed, mm: 5 pt on the big papers, which are often copied down, 5.5 pt on the others. */
export function smallestTextMm(paper: Paper): number {
  return (paper === 'A3' || paper === 'tabloid' ? 5 : 5.5) * MM_A_POINT;
}
