/** CSV (RFC 4180) as rows of cells with their places in the text. Pure. */

import { CsvError, parse } from 'csv-parse/sync';

export interface CsvRow {
  readonly cells: readonly string[];
  /** Where it stands in the text. */
  readonly start: number;
  /** As it was typed, with its line end or a part of it. */
  readonly raw: string;
}

/** The text is no CSV from `start` on; `reason`: null where a quote is never closed, else as the CSV reader gives it. */
export class CsvFault extends Error {
  constructor(
    readonly start: number,
    readonly end: number,
    readonly reason: string | null,
  ) {
    super(reason ?? 'open quote');
  }
}

/** Rows of any number of cells; a line without anything is a row of one empty cell. Throws CsvFault. */
export function csvRows(text: string, delimiter = ','): CsvRow[] {
  try {
    const options = {
      raw: true,
      relax_column_count: true,
      bom: true,
      delimiter,
      record_delimiter: ['\r\n', '\n', '\r'],
    };
    const found = parse(text, options) as unknown as { record: string[]; raw: string }[];
    let start = 0;
    return found.map(({ record, raw }) => {
      // What the reader gives of the line's end is not always all of it.
      const line = raw.replace(/[\r\n]+$/, '');
      const own = { cells: record, start: text.indexOf(line, start), raw };
      start = own.start + line.length;
      return own;
    });
  } catch (fault) {
    if (!(fault instanceof CsvError)) throw fault;
    const lines = Number(fault.lines) || 1;
    const start = text
      .split('\n')
      .slice(0, lines - 1)
      .reduce((sum, line) => sum + line.length + 1, 0);
    const open = fault.code === 'CSV_QUOTE_NOT_CLOSED';
    throw new CsvFault(Math.min(start, text.length), text.length, open ? null : fault.message);
  }
}

/** Where a cell of a row begins in its `raw`. Quotes may hold delimiters. */
export function cellStart(raw: string, column: number, delimiter = ','): number {
  let at = 0;
  let quoted = false;
  for (let left = column; left > 0 && at < raw.length; at++) {
    if (raw[at] === '"') quoted = !quoted;
    else if (raw[at] === delimiter && !quoted) left--;
  }
  return at;
}
