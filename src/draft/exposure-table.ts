/** A table of exposures as CSV (RFC 4180), read into cuts. Pure. */

import type { CellFault } from '../language/catalogue/command-codes.js';
import type { Messages } from '../language/catalogue/index.js';
import { CsvFault, type CsvRow, cellStart, csvRows } from '../language/csv-rows.js';
import { type Diagnostic, diagnose, type Span } from '../language/diagnostic.js';
import { nearest } from '../language/suggest.js';
import type { DrawingKind } from '../solve/solved-shot.js';
import type { TableCut } from './cut-text.js';
import { betweenParts, type ExposureRun, isKeyName, type TableLevel } from './exposure-runs.js';

export interface ExposureTable {
  /** In the order in which they first stand in the table. `cut` is '' where the table has no numbers. */
  readonly cuts: readonly TableCut[];
  readonly diagnostics: readonly Diagnostic[];
}

/** The header of `export --table exposures`. */
const COLUMNS = ['cut', 'level', 'frame', 'kind', 'drawing', 'cel', 'starts'] as const;
/** The most frames of a cut that are taken, ten minutes at 120 a second. */
const MOST_FRAMES = 72_000;

/** Reads either form: a row a level and frame, as it is exported, or a row a frame with a column a level. The first fault ends it. */
export function readExposureTable(file: string, text: string): ExposureTable {
  try {
    const records = recordsOf(file, text);
    const [header, ...rows] = records;
    if (!header || (header.cells.length === 1 && header.cells[0]!.trim() === ''))
      throw new TableFault({ file, start: 0, end: 0 }, { variant: 'empty' });
    const reader = new TableReader(file, header, rows);
    return { cuts: reader.cuts(), diagnostics: [] };
  } catch (fault) {
    if (!(fault instanceof TableFault)) throw fault;
    return { cuts: [], diagnostics: [diagnose('table-faulty', fault.span, fault.parameters)] };
  }
}

class TableFault extends Error {
  constructor(
    readonly span: Span,
    readonly parameters: Messages['table-faulty'],
  ) {
    super(parameters.variant);
  }
}

function recordsOf(file: string, text: string): CsvRow[] {
  try {
    return csvRows(text);
  } catch (fault) {
    if (!(fault instanceof CsvFault)) throw fault;
    const { start, end, reason } = fault;
    throw new TableFault(
      { file, start, end },
      reason === null ? { variant: 'open-quote' } : { variant: 'no-csv', message: reason },
    );
  }
}

class TableReader {
  private readonly names: readonly string[];

  constructor(
    private readonly file: string,
    private readonly header: CsvRow,
    private readonly rows: readonly CsvRow[],
  ) {
    this.names = header.cells.map((cell) => cell.trim());
  }

  cuts(): TableCut[] {
    if (this.rows.length === 0) this.fail(this.header, 0, { variant: 'no-rows' });
    for (const row of this.rows)
      if (row.cells.length !== this.names.length)
        this.fail(row, Math.min(row.cells.length, this.names.length) - 1, {
          variant: 'row-length',
          columns: row.cells.length,
          header: this.names.length,
        });
    return this.names.includes('level') || this.names.includes('drawing') ? this.exported() : this.grid();
  }

  /** A row a level and frame. */
  private exported(): TableCut[] {
    for (const [i, name] of this.names.entries()) {
      if ((COLUMNS as readonly string[]).includes(name)) continue;
      this.fail(this.header, i, { variant: 'unknown-column', name, guess: nearest(name, COLUMNS) ?? null });
    }
    const at = Object.fromEntries(COLUMNS.map((name) => [name, this.names.indexOf(name)]));
    for (const name of ['level', 'frame', 'drawing'] as const)
      if (at[name]! < 0) this.fail(this.header, 0, { variant: 'no-column', name });
    const cuts = new Map<string, Map<string, LevelBuilder>>();
    for (const row of this.rows) {
      const cell = (name: (typeof COLUMNS)[number]): string =>
        at[name]! < 0 ? '' : row.cells[at[name]!]!.trim();
      const cut = cell('cut');
      const levels = cuts.get(cut) ?? new Map<string, LevelBuilder>();
      cuts.set(cut, levels);
      if (cut !== '' && !/^[\p{L}\p{Nd}_]+$/u.test(cut))
        this.fail(row, at.cut!, { variant: 'no-cut-number', found: cut });
      const level = this.level(row, at.level!, cell('level'));
      const builder = levels.get(level) ?? new LevelBuilder(level);
      levels.set(level, builder);
      const frame = this.frame(row, at.frame!, cell('frame'), builder.frames + 1, level);
      const drawing = cell('drawing') === '' ? null : this.drawing(row, at.drawing!, cell('drawing'));
      const kind = this.kind(row, at.kind!, cell('kind'), drawing);
      const cel = at.cel! < 0 || drawing === null ? null : this.cel(row, at.cel!, cell('cel'));
      if (!builder.add(frame, drawing, kind, cel))
        this.fail(row, at.cel!, { variant: 'cel-twice', drawing: drawing! });
    }
    return [...cuts].map(([cut, levels]) => this.cut(cut, [...levels.values()]));
  }

  /** A row a frame; what a cell leaves empty goes on. */
  private grid(): TableCut[] {
    const frameAt = this.names.findIndex((name) => name.toLowerCase() === 'frame');
    if (frameAt < 0) this.fail(this.header, 0, { variant: 'no-frame-column' });
    const levels = this.names.flatMap((name, i) =>
      i === frameAt ? [] : [{ i, builder: new LevelBuilder(this.level(this.header, i, name)) }],
    );
    const twice = levels.find(({ builder, i }) => this.names.indexOf(builder.name) < i);
    if (twice) this.fail(this.header, twice.i, { variant: 'level-twice', level: twice.builder.name });
    if (levels.length === 0) this.fail(this.header, frameAt, { variant: 'no-level-column' });
    for (const [index, row] of this.rows.entries()) {
      this.frame(row, frameAt, row.cells[frameAt]!.trim(), index + 1, null);
      for (const { i, builder } of levels) {
        const cell = row.cells[i]!.trim();
        const before = builder.last;
        if (cell === '') builder.add(index + 1, before?.drawing ?? null, before?.kind ?? 'empty', null);
        else if (cell === 'x' || cell === '×') builder.add(index + 1, null, 'empty', null);
        else {
          const name = this.drawing(row, i, cell.replace(/=$/, ''));
          const kind = isKeyName(name)
            ? 'key'
            : cell.endsWith('=')
              ? 'breakdown'
              : (builder.kinds.get(name) ?? 'inbetween');
          builder.add(index + 1, name, kind, null);
        }
      }
    }
    return [
      this.cut(
        '',
        levels.map(({ builder }) => builder),
      ),
    ];
  }

  private cut(cut: string, builders: readonly LevelBuilder[]): TableCut {
    const longest = builders.reduce((a, b) => (b.frames > a.frames ? b : a));
    const short = builders.find(({ frames }) => frames < longest.frames);
    if (short)
      this.fail(this.rows.at(-1)!, 0, {
        variant: 'uneven',
        cut,
        level: short.name,
        frames: short.frames,
        longest: longest.name,
        most: longest.frames,
      });
    return { cut, title: '', levels: builders.map((builder) => builder.drawn()) };
  }

  private level(row: CsvRow, column: number, name: string): string {
    const known = name.normalize('NFC');
    if (!/^\p{L}[\p{L}\p{M}\p{Nd}_]*$/u.test(known))
      this.fail(row, column, { variant: 'no-level-name', found: name });
    return known;
  }

  /** `level`: whose frame it is, null for one of the whole sheet. */
  private frame(row: CsvRow, column: number, text: string, wanted: number, level: string | null): number {
    if (!/^\d{1,6}$/.test(text) || Number(text) < 1)
      this.fail(row, column, { variant: 'no-frame', found: text });
    const frame = Number(text);
    if (frame > MOST_FRAMES) this.fail(row, column, { variant: 'too-many-frames', most: MOST_FRAMES });
    if (frame === wanted) return frame;
    const variant = frame < wanted ? 'frame-again' : 'frame-missing';
    return this.fail(row, column, { variant, frame, wanted, level });
  }

  private drawing(row: CsvRow, column: number, name: string): string {
    if (isKeyName(name) || betweenParts(name)) return name;
    return this.fail(row, column, { variant: 'no-drawing', found: name });
  }

  private kind(row: CsvRow, column: number, text: string, drawing: string | null): ExposureRun['kind'] {
    if (column < 0) return drawing === null ? 'empty' : isKeyName(drawing) ? 'key' : 'inbetween';
    const kinds = ['key', 'breakdown', 'inbetween', 'empty'] as const;
    const kind = kinds.find((one) => one === text);
    if (!kind) return this.fail(row, column, { variant: 'no-kind', found: text });
    const fits =
      drawing === null
        ? kind === 'empty'
        : isKeyName(drawing)
          ? kind === 'key'
          : kind === 'inbetween' || kind === 'breakdown';
    if (!fits)
      this.fail(
        row,
        column,
        drawing === null
          ? { variant: 'kind-without-drawing', kind }
          : { variant: 'kind-unfit', drawing, kind },
      );
    return kind;
  }

  private cel(row: CsvRow, column: number, text: string): number {
    if (/^\d{1,6}$/.test(text) && Number(text) > 0) return Number(text);
    return this.fail(row, column, { variant: 'no-cel', found: text });
  }

  private fail(row: CsvRow, column: number, fault: CellFault): never {
    const start = row.start + cellStart(row.raw, column);
    const cell = row.cells[Math.max(0, column)] ?? '';
    const span = { file: this.file, start, end: start + Math.max(cell.length, 0) };
    throw new TableFault(span, {
      ...fault,
      row: this.rows.indexOf(row) + 2,
      column: Math.max(0, column) + 1,
    });
  }
}

/** The runs of one level, frame by frame. */
class LevelBuilder {
  frames = 0;
  readonly kinds = new Map<string, DrawingKind>();
  private readonly runs: { drawing: string | null; kind: ExposureRun['kind']; frames: number }[] = [];
  private readonly cels = new Map<string, number>();
  private readonly byCel = new Map<number, string>();

  constructor(readonly name: string) {}

  get last(): ExposureRun | undefined {
    return this.runs.at(-1);
  }

  /** False where a drawing has two numbers, or a number two drawings. */
  add(frame: number, drawing: string | null, kind: ExposureRun['kind'], cel: number | null): boolean {
    this.frames = frame;
    if (drawing !== null && kind !== 'empty') this.kinds.set(drawing, kind);
    const last = this.runs.at(-1);
    if (last && last.drawing === drawing && last.kind === kind) last.frames++;
    else this.runs.push({ drawing, kind, frames: 1 });
    if (drawing === null || cel === null) return true;
    const fits = (this.cels.get(drawing) ?? cel) === cel && (this.byCel.get(cel) ?? drawing) === drawing;
    this.cels.set(drawing, cel);
    this.byCel.set(cel, drawing);
    return fits;
  }

  drawn(): TableLevel {
    // A breakdown that is marked once is one everywhere.
    const runs = this.runs.map((run) =>
      run.drawing === null ? run : { ...run, kind: this.kinds.get(run.drawing) ?? run.kind },
    );
    return { name: this.name, runs, cels: this.cels.size > 0 ? this.cels : null };
  }
}
