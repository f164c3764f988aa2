/** Reads sheets in the terminal back: tables, rows, and what each level shows. Shares nothing with what writes them. */

/** Columns that a character takes, by its script: what the tests use takes two, one or none. */
export function columnsOf(text: string): number {
  let columns = 0;
  for (const character of text.normalize('NFC')) {
    if (/\p{Mn}/u.test(character)) continue;
    columns += /[\p{sc=Han}\p{sc=Hiragana}\p{sc=Katakana}\u3000-\u303f\u30fb\u30fc\uff01-\uff60]/u.test(
      character,
    )
      ? 2
      : 1;
  }
  return columns;
}

export interface Table {
  /** Over the columns: the first line, by column. */
  readonly heads: readonly string[];
  /** By the frame's number, the text of each column with its blanks. */
  readonly rows: ReadonlyMap<number, readonly string[]>;
  /** The frames under a double line. */
  readonly cutPoints: readonly number[];
  readonly lines: readonly string[];
}

/** The tables of one sheet, and the lines over and under them. */
export function readSheet(lines: readonly string[]): { tables: Table[]; others: string[] } {
  const tables: Table[] = [];
  const others: string[] = [];
  let open: string[] | null = null;
  for (const line of lines) {
    if (line.startsWith('┌─')) open = [];
    if (!open) {
      others.push(line);
      continue;
    }
    open.push(line);
    if (!line.startsWith('└─')) continue;
    tables.push(readTable(open));
    open = null;
  }
  if (open) throw new Error('a table without an end');
  return { tables, others };
}

function readTable(lines: readonly string[]): Table {
  const [top] = lines;
  const ends = [...top!].flatMap((character, i) => ('┌┬┐'.includes(character) ? [i] : []));
  const rows = new Map<number, string[]>();
  const cutPoints: number[] = [];
  let heads: string[] | null = null;
  let ruled = false;
  let double = false;
  for (const line of lines.slice(1)) {
    if (/^[├╞└]/.test(line)) {
      ruled = true;
      double = line.startsWith('╞');
      continue;
    }
    const cells = ends.slice(1).map((end, i) => between(line, ends[i]! + 1, end));
    if (!ruled) {
      heads ??= cells.map((cell) => cell.trim());
      continue;
    }
    const frame = Number(/ (\d+) $/.exec(cells[0]!)?.[1]);
    rows.set(frame, cells);
    if (double) cutPoints.push(frame);
    double = false;
  }
  return { heads: heads ?? [], rows, cutPoints, lines };
}

/** Columns from … to of a line; throws where a wide character lies across an end. */
function between(line: string, from: number, to: number): string {
  let at = 0;
  let text = '';
  for (const character of line) {
    const width = columnsOf(character);
    if (at < to && at + width > to) throw new Error(`a character across column ${to}: ${line}`);
    if (at >= from && at < to) text += character;
    at += width;
  }
  return text;
}

export type Seen =
  | { readonly kind: 'empty' }
  | { readonly kind: 'key'; readonly name: string; readonly cel: number }
  | { readonly kind: 'breakdown' | 'inbetween' | 'again' | 'held'; readonly cel: number }
  | { readonly kind: 'named'; readonly name: string; readonly cel: number };

/** What a level shows on each row: by frame. */
export function readLevel(tables: readonly Table[], level: string): Map<number, Seen> {
  const table = tables.find(({ heads }) => heads.includes(level));
  if (!table) throw new Error(`no column ${level}`);
  const column = table.heads.indexOf(level);
  const seen = new Map<number, Seen>();
  let last: Seen = { kind: 'empty' };
  for (const [frame, cells] of table.rows) {
    last = readCell(cells[column]!, last);
    seen.set(frame, last);
  }
  return seen;
}

function readCell(cell: string, last: Seen): Seen {
  // A mark begins in the first three columns behind the blank; brackets of cycles may stand further right.
  const blank = cell.slice(0, 4).trim() === '';
  const [, bare = '', number = ''] = blank ? [] : (/^ +(\S+) *(\d*)/u.exec(cell) ?? []);
  const cel = Number(number);
  if (bare === '' || bare === '│') {
    if ((bare === '') !== (last.kind === 'empty')) throw new Error(`neither held nor empty: ${cell}`);
    return last;
  }
  if (bare === '×') return { kind: 'empty' };
  if (bare === '-') return { kind: 'inbetween', cel };
  if (bare === '=') return { kind: 'breakdown', cel };
  if (bare === 'o') return { kind: 'again', cel };
  const key = /^\((.+)\)$/.exec(bare)?.[1];
  if (key !== undefined) return { kind: 'key', name: key, cel };
  if (bare === '[×]') return { kind: 'empty' };
  if (/^\[.+\]$/.test(bare)) return { kind: 'held', cel };
  return { kind: 'named', name: bare, cel };
}
