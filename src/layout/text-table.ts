/** Tables as lines of text for a terminal: columns are laid out in its cells, rows are one line each. */

import stringWidth from 'string-width';
import { brokenLines } from './line-breaking.js';
import { type LaidTable, layTable, type TableColumn, type TableSet, type TableSetting } from './table.js';

export interface TextColumn extends TableColumn {
  /** Lines over the rows. */
  readonly heads: readonly string[];
  readonly align?: 'start' | 'end';
}

/** What stands left of the columns, between two of them and right of them, on the lines of a table. */
interface Edges {
  readonly left: string;
  readonly between: string;
  readonly right: string;
}

interface Rule extends Edges {
  readonly dash: string;
}

/** `light` is also the rule under the heads. */
export interface Border {
  readonly row: Edges;
  readonly rules: { readonly light: Rule; readonly double: Rule };
  readonly top?: Rule;
  readonly bottom?: Rule;
}

/** A frame of box-drawing lines. */
export const BOXED: Border = {
  row: { left: '│ ', between: ' │ ', right: ' │' },
  rules: {
    light: { left: '├─', between: '─┼─', right: '─┤', dash: '─' },
    double: { left: '╞═', between: '═╪═', right: '═╡', dash: '═' },
  },
  top: { left: '┌─', between: '─┬─', right: '─┐', dash: '─' },
  bottom: { left: '└─', between: '─┴─', right: '─┘', dash: '─' },
};

/** Columns two blanks apart, dashes under the heads. */
export const OPEN: Border = {
  row: { left: '', between: '  ', right: '' },
  rules: {
    light: { left: '', between: '  ', right: '', dash: '-' },
    double: { left: '', between: '  ', right: '', dash: '=' },
  },
};

type TextSetting<C extends TextColumn> = Pick<
  TableSetting<C>,
  'columns' | 'names' | 'rows' | 'sharing' | 'tooWide'
> & {
  readonly border: Border;
  /** Cells of the terminal; may be infinite. */
  readonly width: number;
};

/** A table of any height: a page for each set of columns that fits side by side. */
export function layTextTable<C extends TextColumn>(setting: TextSetting<C>): LaidTable<C> {
  const { border, width, ...table } = setting;
  return layTable({
    ...table,
    rowHeight: (lines) => lines,
    headHeight: headLines(setting.columns),
    gap: border.row.between.length,
    edge: border.row.left.length,
    area: { x: 0, y: 0, width, height: Number.POSITIVE_INFINITY },
  })!;
}

const headLines = (columns: readonly TextColumn[]): number =>
  Math.max(0, ...columns.map(({ heads }) => heads.findLastIndex((head) => head !== '') + 1));

/** The lines of a set, all equally wide. Texts are cut to their columns; `ruleOver` says which rule stands over a row. */
export function tableLines<C extends TextColumn>(
  { columns, rows }: TableSet<C>,
  border: Border,
  ruleOver: (row: number) => 'light' | 'double' | null,
): string[] {
  const joined = ({ left, between, right }: Edges, texts: readonly string[]): string =>
    left + texts.join(between) + right;
  const ruled = (rule: Rule): string =>
    joined(
      rule,
      columns.map(({ width }) => rule.dash.repeat(width)),
    );
  const line = (texts: readonly string[]): string =>
    joined(
      border.row,
      columns.map(({ column, width }, i) =>
        inWidth(texts[i] ?? '', width, column.align === 'end' ? 'right' : 'left'),
      ),
    );
  const lines = border.top ? [ruled(border.top)] : [];
  for (let i = 0; i < headLines(columns.map(({ column }) => column)); i++)
    lines.push(line(columns.map(({ column }) => column.heads[i] ?? '')));
  lines.push(ruled(border.rules.light));
  rows.forEach(({ row, height, cells }) => {
    const over = ruleOver(row);
    if (over) lines.push(ruled(border.rules[over]));
    for (let n = 0; n < height; n++) lines.push(line(cells.map((cell) => cell[n] ?? '')));
  });
  if (border.bottom) lines.push(ruled(border.bottom));
  return lines;
}

// ---- text measured in the columns of a terminal, where a Chinese character or a kana takes two

/** Most of a sheet: one column a character, known without asking the library, which takes a thousand times as long. */
const NARROW = /^[\x20-\x7e│┊╮╯┌├└╶×…–“”→←↑↓°]*$/;

export function widthOf(text: string): number {
  return NARROW.test(text) ? text.length : stringWidth(text);
}

/** Lines of at most `width` columns, broken as the printed sheet breaks them; line breaks of the text are kept. */
export function broken(text: string, width: number): string[] {
  return brokenLines(plain(text), Math.max(2, width), widthOf);
}

/** Without what a terminal would obey instead of show. */
export function plain(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}]/gu, (character) => (character === '\n' ? '\n' : ' '));
}

/** Exactly `width` columns: filled with blanks, or cut with `…`. */
export function inWidth(text: string, width: number, side: 'left' | 'right' = 'left'): string {
  const short = shortened(plain(text).replaceAll('\n', ' '), width);
  const blanks = ' '.repeat(width - widthOf(short));
  return side === 'left' ? short + blanks : blanks + short;
}

function shortened(text: string, width: number): string {
  if (widthOf(text) <= width) return text;
  let kept = '';
  for (const { segment } of new Intl.Segmenter().segment(text)) {
    if (widthOf(kept + segment) > width - 1) break;
    kept += segment;
  }
  return `${kept}…`;
}

/** Wrapped, with what follows the first line set in by `indent`. */
export function hanging(text: string, width: number, indent: number): string[] {
  return broken(text, width - indent).map((line, i) => (i === 0 ? line : ' '.repeat(indent) + line));
}
