/** Tables of a solved cut as CSV (RFC 4180: a header row, CR LF line ends, quotes where they are needed). */

import type { SolvedShot } from '../solve/solved-shot.js';
import { type ExportOptions, pixelsOf } from './cut-json.js';
import { sheetColumns, sheetRows } from './sheet-table.js';

type Cell = string | number | boolean | null;

interface Table {
  /** Those of one cut; where cuts differ, they differ behind what all of them have. */
  readonly columns: (solved: SolvedShot, options: ExportOptions) => readonly string[];
  readonly rows: (solved: SolvedShot, options: ExportOptions) => Iterable<readonly Cell[]>;
}

/** One entry a table. The cut stands first in each row, so that the tables of many cuts can be put together. */
const tables = {
  /** One row a level and frame. */
  exposures: {
    columns: () => ['cut', 'level', 'frame', 'kind', 'drawing', 'cel', 'starts'],
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
    columns: () => ['cut', 'level', 'cel', 'drawing', 'kind', 'firstFrame', 'exposedFrames'],
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
    columns: () => ['cut', 'frame', 'x', 'y', 'width', 'percent', 'field', 'rotation'],
    *rows({ shot, camera }: SolvedShot) {
      for (const { frame, x, y, width, percent, field, rotation } of camera.frames) {
        yield [shot.cut, frame, x, y, width, percent, field, rotation];
      }
    },
  },
  /** One row a level of the stack and frame. */
  placement: {
    columns: (_, { pixels = false }) => [
      ...['cut', 'level', 'frame', 'x', 'y', 'scale', 'rotation', 'screenX', 'screenY'],
      ...(pixels ? ['pixelX', 'pixelY'] : []),
    ],
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
  /** One row a frame, one column a level: the sheet for who has no such program. */
  sheet: { columns: sheetColumns, rows: sheetRows },
} satisfies Record<string, Table>;

export type TableName = keyof typeof tables;
export const TABLES = Object.keys(tables) as readonly TableName[];

/** A table of one cut, or of many with one header row: a column that a cut does not have is empty on its rows. */
export class CsvTable {
  private readonly columns: string[] = [];
  private readonly cuts: { readonly lines: readonly string[]; readonly columns: number }[] = [];
  private readonly table: Table;

  constructor(
    name: TableName,
    private readonly options: ExportOptions = {},
  ) {
    this.table = tables[name];
  }

  add(solved: SolvedShot): this {
    const { columns, options, table } = this;
    const own = table.columns(solved, options);
    for (const name of own) if (!columns.includes(name)) columns.push(name);
    const places = own.map((name) => columns.indexOf(name));
    const width = columns.length;
    const inTurn = places.every((place, i) => place === i) && own.length === width;
    this.cuts.push({
      columns: width,
      lines: Array.from(table.rows(solved, options), (row) => {
        if (inTurn) return csvLine(row);
        const cells: Cell[] = new Array(width).fill(null);
        row.forEach((cell, i) => {
          cells[places[i]!] = cell;
        });
        return csvLine(cells);
      }),
    });
    return this;
  }

  /** Header row first; '' where no cut was added. */
  get text(): string {
    if (this.cuts.length === 0) return '';
    const width = this.columns.length;
    const parts = this.cuts.flatMap(({ lines, columns }) => {
      const missing = ','.repeat(width - columns);
      return missing === ''
        ? lines
        : lines.map((line) => `${line.slice(0, -LINE_END.length)}${missing}${LINE_END}`);
    });
    return csvLine(this.columns) + parts.join('');
  }
}

/** A whole table of one cut, header row first. */
export function toCsv(solved: SolvedShot, table: TableName, options: ExportOptions = {}): string {
  return new CsvTable(table, options).add(solved).text;
}

const LINE_END = '\r\n';

/** One line, its end included. */
export function csvLine(cells: readonly Cell[]): string {
  return cells.map(field).join(',') + LINE_END;
}

function field(cell: Cell): string {
  const text = cell === null ? '' : String(cell);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
