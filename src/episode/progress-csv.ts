/** `progress.csv` beside the manifest: what has happened to each cut, read into rows, and a row more. */

import { dirname, join } from 'node:path';
import { STAGE_STATES, type StageRow } from '../count/stage-states.js';
import type { Host } from '../host/host.js';
import type { ProgressColumn } from '../language/catalogue/message-terms.js';
import type { ProgressMessages } from '../language/catalogue/progress-codes.js';
import { CsvFault, type CsvRow, cellStart, csvRows } from '../language/csv-rows.js';
import { type Diagnostic, diagnose, type Fix, type Span } from '../language/diagnostic.js';
import { nearest } from '../language/suggest.js';
import { cutKey, type Episode } from './episode.js';
import { PROGRESS_FILE } from './find-cuts.js';
import { isoDay } from './manifest-stages.js';
import { readText } from './read-text.js';

/** In the order in which a new file has them. */
export const PROGRESS_COLUMNS = [
  'cut',
  'stage',
  'state',
  'date',
  'person',
  'note',
] as const satisfies readonly ProgressColumn[];
const NEEDED = ['cut', 'stage', 'date'] as const;

/** Some 100,000 rows. */
const LARGEST_PROGRESS_BYTES = 8 * 1024 * 1024;

export interface ProgressFile {
  /** Absolute, and what messages call it. */
  readonly path: string;
  readonly name: string;
  /** Without its byte-order mark; '' where there is no file. */
  readonly text: string;
  /** In the order of writing. */
  readonly rows: readonly StageRow[];
  /** Its columns in their order, null for one that is of no use here; null: the table cannot be read at all. */
  readonly columns: readonly (ProgressColumn | null)[] | null;
  readonly delimiter: string;
  readonly diagnostics: readonly Diagnostic[];
}

/** Where the table of an episode lies, absolute, and what messages call it. Null for cuts without an episode. */
export function progressPlace({ folder, file }: Episode): Pick<ProgressFile, 'path' | 'name'> | null {
  if (folder === null || file === null) return null;
  return { path: join(folder, PROGRESS_FILE), name: join(dirname(file), PROGRESS_FILE) };
}

/** Null for cuts without an episode. A file that is not there is an empty table. */
export function readProgress(host: Host, episode: Episode): ProgressFile | null {
  const place = progressPlace(episode);
  if (place === null) return null;
  const { path, name } = place;
  if (host.kind(path) === 'none')
    return { path, name, ...parseProgress(name, '', episode.production.stages) };
  const { text, ok, diagnostics } = readText(host, path, name, { largest: LARGEST_PROGRESS_BYTES });
  return ok
    ? { path, name, ...parseProgress(name, text, episode.production.stages) }
    : { path, name, text, rows: [], columns: null, delimiter: ',', diagnostics };
}

type Parsed = Omit<ProgressFile, 'path' | 'name'>;

/** Reads the text of a table. Columns may stand in any order and there may be others; commas, semicolons or tabs divide them. Never throws. */
export function parseProgress(name: string, text: string, stages: readonly string[]): Parsed {
  const delimiter = delimiterOf(text);
  try {
    return { text, delimiter, ...new ProgressReader(name, text, delimiter, stages).read() };
  } catch (fault) {
    if (!(fault instanceof CsvFault)) throw fault;
    const { start, end, reason } = fault;
    const why =
      reason === null
        ? ({ variant: 'open-quote' } as const)
        : ({ variant: 'no-csv', message: reason } as const);
    const diagnostics = [diagnose('progress-faulty', { file: name, start, end }, why)];
    return { text, delimiter, rows: [], columns: null, diagnostics };
  }
}

/** What divides the names of the first row: spreadsheets of many countries write semicolons. */
function delimiterOf(text: string): string {
  const [first = ''] = text.split(/[\r\n]/, 1);
  const times = (sign: string): number => first.split(sign).length;
  return [',', ';', '\t'].reduce((most, sign) => (times(sign) > times(most) ? sign : most));
}

class ProgressReader {
  private readonly diagnostics: Diagnostic[] = [];
  private columns: (ProgressColumn | null)[] = [];

  constructor(
    private readonly file: string,
    private readonly text: string,
    private readonly delimiter: string,
    private readonly stages: readonly string[],
  ) {}

  read(): Pick<ProgressFile, 'rows' | 'columns' | 'diagnostics'> {
    const { diagnostics } = this;
    if (this.text.trim() === '') return { rows: [], columns: PROGRESS_COLUMNS, diagnostics };
    const [header, ...rows] = csvRows(this.text, this.delimiter);
    if (!this.header(header!)) return { rows: [], columns: null, diagnostics };
    return { rows: rows.flatMap((row) => this.row(row) ?? []), columns: this.columns, diagnostics };
  }

  private header(row: CsvRow): boolean {
    const names = row.cells.map((cell) => cell.normalize('NFKC').trim().toLowerCase());
    this.columns = names.map((name) => PROGRESS_COLUMNS.find((one) => one === name) ?? null);
    const before = this.diagnostics.length;
    this.columns.forEach((name, i) => {
      if (name !== null && this.columns.indexOf(name) < i)
        this.fail(row, i, { variant: 'column-twice', name });
    });
    for (const name of NEEDED) {
      if (this.columns.includes(name)) continue;
      const unknown = names.filter((_, i) => this.columns[i] === null);
      const found = nearest(name, unknown) ?? null;
      this.fail(row, found === null ? 0 : names.indexOf(found), { variant: 'no-column', name, found });
    }
    return this.diagnostics.length === before;
  }

  /** Null for a row that says nothing, or cannot be read. */
  private row(row: CsvRow): StageRow | null {
    const { cells } = row;
    if (cells.every((cell) => cell.trim() === '')) return null;
    const at = (name: ProgressColumn): number => this.columns.indexOf(name);
    const cell = (name: ProgressColumn): string => (cells[at(name)] ?? '').trim();
    const before = this.diagnostics.length;
    const beyond = cells.findIndex((one, i) => i >= this.columns.length && one.trim() !== '');
    if (beyond >= 0)
      this.fail(row, beyond, {
        variant: 'too-many-cells',
        cells: cells.length,
        columns: this.columns.length,
      });
    const cut = cell('cut').normalize('NFC');
    if (cut === '') this.fail(row, at('cut'), { variant: 'no-cut' });
    const stage = cell('stage').normalize('NFKC');
    if (stage === '') this.fail(row, at('stage'), { variant: 'no-stage' });
    else if (!this.stages.includes(stage)) this.unknown(row, at('stage'), 'stage', this.stages);
    const said = cell('state').normalize('NFKC').toLowerCase();
    const state = said === '' ? 'done' : STAGE_STATES.find((one) => one === said);
    if (state === undefined) this.unknown(row, at('state'), 'state', STAGE_STATES);
    const date = isoDay(cell('date'));
    if (date === null) this.fail(row, at('date'), { variant: 'day', found: cell('date') });
    if (this.diagnostics.length > before || date === null || state === undefined) return null;
    const places = {
      cut: this.place(row, at('cut')),
      stage: this.place(row, at('stage')),
      state: this.place(row, Math.max(at('state'), at('stage'))),
    };
    const [person, note] = [cell('person').normalize('NFC'), cell('note').normalize('NFC')];
    return { cut, key: cutKey(cut), stage, state, date, person, note, places };
  }

  private unknown(row: CsvRow, column: number, variant: 'stage' | 'state', words: readonly string[]): void {
    const found = row.cells[column]!.trim();
    const guess = nearest(found, words) ?? null;
    const span = this.place(row, column);
    const fix: Fix | undefined =
      guess === null ? undefined : { action: 'write-plain', written: guess, edits: [{ span, text: guess }] };
    this.diagnostics.push(diagnose('progress-faulty', span, { variant, found, words, guess }, { fix }));
  }

  private place({ raw, start, cells }: CsvRow, column: number): Span {
    const from = start + cellStart(raw, column, this.delimiter);
    return { file: this.file, start: from, end: from + (cells[column]?.length ?? 0) };
  }

  private fail(row: CsvRow, column: number, fault: ProgressMessages['progress-faulty']): void {
    this.diagnostics.push(diagnose('progress-faulty', this.place(row, column), fault));
  }
}

/** What a row may say. */
export type ProgressCells = Partial<Readonly<Record<ProgressColumn, string>>>;

/**
 * The text of a table with a row more at its end, divided and ended as the others are; a column that says something and is not there comes
 * back as a name. Every row ends with a line end, so that two branches of a repository can be joined line by line.
 */
export function withRow(
  { text, columns, delimiter }: Pick<ProgressFile, 'text' | 'columns' | 'delimiter'>,
  cells: ProgressCells,
): { readonly text: string } | { readonly missing: ProgressColumn } {
  const order = columns ?? PROGRESS_COLUMNS;
  for (const name of PROGRESS_COLUMNS) {
    const needed = name === 'state' ? cells.state !== 'done' : (cells[name] ?? '') !== '';
    if (needed && !order.includes(name)) return { missing: name };
  }
  const newline = /\r\n|\n|\r/.exec(text)?.[0] ?? '\r\n';
  const quoted = (cell: string): string =>
    /["\r\n]|^\s|\s$/.test(cell) || cell.includes(delimiter) ? `"${cell.replaceAll('"', '""')}"` : cell;
  const line = order.map((name) => quoted(name === null ? '' : (cells[name] ?? ''))).join(delimiter);
  const head = text.trim() === '' ? PROGRESS_COLUMNS.join(delimiter) : text.replace(/[\r\n]+$/, '');
  return { text: `${head}${newline}${line}${newline}` };
}
