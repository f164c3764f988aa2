/** Tables of a solved cut as CSV (RFC 4180: a header row, CR LF line ends, quotes where they are needed). */

import type { SolvedShot } from '../solve/solved-shot.js';
import { type ExportOptions, pixelsOf } from './cut-json.js';

type Cell = string | number | boolean | null;

interface Table {
  readonly header: readonly string[];
  /** What `--pixels` adds. */
  readonly pixelHeader?: readonly string[];
  readonly rows: (solved: SolvedShot, options: ExportOptions) => Iterable<readonly Cell[]>;
}

/** One entry a table. The cut stands first in each row, so that the tables of many cuts can be put together. */
const tables = {
  /** One row a level and frame. */
  exposures: {
    header: ['cut', 'level', 'frame', 'kind', 'drawing', 'cel', 'starts'],
    *rows({ shot, levels }: SolvedShot) {
      for (const { name, exposures } of levels) {
        for (const { frame, kind, drawing, cel, starts } of exposures) {
          yield [shot.cut, name, frame, kind, drawing, cel, starts];
        }
      }
    },
  },
  /** One row a drawing. */
  drawings: {
    header: ['cut', 'level', 'cel', 'drawing', 'kind', 'firstFrame', 'exposedFrames'],
    *rows({ shot, levels }: SolvedShot) {
      for (const { name, drawings } of levels) {
        for (const { cel, drawing, kind, firstFrame, exposedFrames } of drawings) {
          yield [shot.cut, name, cel, drawing, kind, firstFrame, exposedFrames];
        }
      }
    },
  },
  /** One row a frame. */
  camera: {
    header: ['cut', 'frame', 'x', 'y', 'width', 'percent', 'field', 'rotation'],
    *rows({ shot, camera }: SolvedShot) {
      for (const { frame, x, y, width, percent, field, rotation } of camera.frames) {
        yield [shot.cut, frame, x, y, width, percent, field, rotation];
      }
    },
  },
  /** One row a level of the stack and frame. */
  placement: {
    header: ['cut', 'level', 'frame', 'x', 'y', 'scale', 'rotation', 'screenX', 'screenY'],
    pixelHeader: ['pixelX', 'pixelY'],
    *rows({ shot, camera }: SolvedShot, { pixels = false }: ExportOptions) {
      for (const [name, frames] of camera.placement) {
        for (const [index, placed] of frames.entries()) {
          const { x, y, scale, rotation, screenX, screenY } = placed;
          const row: Cell[] = [shot.cut, name, index + 1, x, y, scale, rotation, screenX, screenY];
          if (pixels) row.push(...Object.values(pixelsOf(placed, shot.settings)));
          yield row;
        }
      }
    },
  },
} satisfies Record<string, Table>;

export type TableName = keyof typeof tables;
export const TABLES = Object.keys(tables) as readonly TableName[];

export function csvHeader(table: TableName, { pixels = false }: ExportOptions = {}): string {
  const { header, pixelHeader = [] }: Table = tables[table];
  return csvLine(pixels ? [...header, ...pixelHeader] : header);
}

export function csvRows(solved: SolvedShot, table: TableName, options: ExportOptions = {}): string {
  const { rows }: Table = tables[table];
  return Array.from(rows(solved, options), csvLine).join('');
}

/** A whole table, header row first. */
export function toCsv(solved: SolvedShot, table: TableName, options: ExportOptions = {}): string {
  return csvHeader(table, options) + csvRows(solved, table, options);
}

/** One line, its end included. */
export function csvLine(cells: readonly Cell[]): string {
  return `${cells.map(field).join(',')}\r\n`;
}

function field(cell: Cell): string {
  const text = cell === null ? '' : String(cell);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
