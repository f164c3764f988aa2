/** One statement → its lines. */

import { LINE_COLUMNS } from '../cels-line.js';
import { displayWidth } from '../source.js';
import type { Item, Statement } from '../tree.js';
import type { FormatPiece } from './format-pieces.js';
import type { ItemTiming } from './item-frames.js';
import { type Gap, gapsOf } from './token-gaps.js';

/** A line of the new text, and the comment behind it. */
export interface Line {
  readonly text: string;
  readonly comment: string | null;
}

type StatementPiece = Extract<FormatPiece, { kind: 'statement' }>;

/** What is broken goes on under the items, unless those start far to the right. */
const FARTHEST = 48;
const FAR_INDENT = 4;

/** How wide the heading of a timeline is, up to its `:`. */
export function headingWidth({ statement, tokens }: StatementPiece): number {
  const words = tokens.slice(0, headTokens(statement, tokens) - 1).map(({ text }) => text);
  return displayWidth(`${words.join(' ')}:`);
}

/** `column`: where the items of a timeline start, counted from 0; null: behind its heading. */
export function linesOf(
  piece: StatementPiece,
  timing: ItemTiming,
  column: number | null,
): { lines: Line[]; indent: string } {
  const { statement, tokens, segments } = piece;
  const gaps = gapsOf(statement, tokens);
  const head = headTokens(statement, tokens);
  const heading = textOf(tokens, gaps, 0, head);
  const start = heading + ' '.repeat(Math.max(1, (column ?? 0) - displayWidth(heading)));
  const width = displayWidth(start);
  const indent = ' '.repeat(width > FARTHEST ? FAR_INDENT : width);
  const lines: Line[] = [];
  for (const { from, to, comment, between } of segments) {
    let first = indent;
    if (from === 0 && to >= head) first = start;
    // A comment inside the heading: what is left of it goes on like the rest.
    else if (from < head)
      first = `${from > 0 ? indent : ''}${textOf(tokens, gaps, from, Math.min(to, head))} `;
    const rest = Math.max(from, head);
    const whole = first + textOf(tokens, gaps, rest, to);
    const folded =
      displayWidth(whole) <= LINE_COLUMNS
        ? [whole]
        : breakLines(first, atomsOf(piece, gaps, timing, rest, to), indent);
    for (const [i, text] of folded.entries()) {
      lines.push({ text: text.trimEnd(), comment: i === folded.length - 1 ? comment : null });
    }
    for (const one of between) lines.push({ text: one.text === '' ? '' : indent + one.text, comment: null });
  }
  return { lines, indent };
}

/** Tokens with their gaps; the first has none. */
function textOf(tokens: StatementPiece['tokens'], gaps: readonly Gap[], from: number, to: number): string {
  let text = '';
  for (let i = from; i < to; i++) text += (i > from ? blankOf(gaps[i]!) : '') + tokens[i]!.text;
  return text;
}

function atomsOf(
  { statement, tokens }: StatementPiece,
  gaps: readonly Gap[],
  timing: ItemTiming,
  from: number,
  to: number,
): LineAtom[] {
  const seconds = secondsOf(statement, timing);
  const depths = depthsOf(statement);
  const atoms: LineAtom[] = [];
  for (let i = from; i < to; ) {
    let end = i + 1;
    while (end < to && (gaps[end] === 'none' || gaps[end] === 'keep')) end++;
    const { start } = tokens[i]!;
    atoms.push({
      text: textOf(tokens, gaps, i, end),
      blank: gaps[i] !== 'soft',
      depth: depths.get(start) ?? 0,
      second: seconds.has(start),
    });
    i = end;
  }
  return atoms;
}

function blankOf(gap: Gap): string {
  return gap === 'blank' || gap === 'keep' ? ' ' : '';
}

/** How many tokens stand before that which may go on in further lines. */
function headTokens(statement: Statement, tokens: StatementPiece['tokens']): number {
  if (statement.kind === 'timeline' || statement.kind === 'phrase') {
    const first = statement.items[0]!.span.start;
    return tokens.findIndex(({ start }) => start === first);
  }
  return statement.kind === 'cels' ? 2 : 1;
}

/** The offsets of the items on whose start a second of the timeline is full. */
function secondsOf(statement: Statement, timing: ItemTiming): ReadonlySet<number> {
  if (statement.kind !== 'timeline') return new Set();
  const full = [...timing.before(statement.items)].filter(
    ([, frames]) => frames > 0 && frames % timing.fps === 0,
  );
  return new Set(full.map(([at]) => at));
}

/** Groups around the place before each item that has any. */
function depthsOf(statement: Statement): ReadonlyMap<number, number> {
  const depths = new Map<number, number>();
  const visit = (items: readonly Item[], depth: number): void => {
    for (const [i, item] of items.entries()) {
      if (depth > 0 && i > 0) depths.set(item.span.start, depth);
      if (item.kind === 'group') visit(item.items, depth + 1);
    }
  };
  if (statement.kind === 'timeline' || statement.kind === 'phrase') visit(statement.items, 0);
  return depths;
}

// ---- Breaks what is too long for one line

/** What stays together in one line, and what comes before it: a blank, or nothing. */
export interface LineAtom {
  readonly text: string;
  readonly blank: boolean;
  /** Groups around the place before it. */
  readonly depth: number;
  /** A whole second of the timeline begins here. */
  readonly second: boolean;
}

/** A line is broken at a whole second only where it is at least this full. */
const REACH = 0.6;

/**
 * `head` and the atoms behind it; lines after the first start with `indent`. Where a line grows too long it is broken, of the
 * places that fit: at the last whole second within reach; at the last blank; between a key and its in-betweens, at a whole second
 * before others; inside a group. What would not fit into a line of its own stays where it is.
 */
export function breakLines(head: string, atoms: readonly LineAtom[], indent: string): string[] {
  const done: string[] = [];
  let line = head;
  let width = displayWidth(head);
  let first = 0;
  let places: { readonly at: number; readonly width: number }[] = [];
  const margin = displayWidth(indent);
  const widths = atoms.map(({ text }) => displayWidth(text));
  for (let i = 0; i < atoms.length; i++) {
    const { blank } = atoms[i]!;
    const gap = i > first && blank ? 1 : 0;
    if (i > first && margin + widths[i]! <= LINE_COLUMNS) places.push({ at: i, width });
    width += gap + widths[i]!;
    if (width <= LINE_COLUMNS) continue;
    const at = choose(places, atoms, margin);
    if (at === null) continue;
    done.push(line + joined(atoms.slice(first, at)));
    line = indent;
    width = margin;
    first = at;
    places = [];
    i = at - 1;
  }
  return [...done, line + joined(atoms.slice(first))];
}

function choose(
  places: readonly { readonly at: number; readonly width: number }[],
  atoms: readonly LineAtom[],
  margin: number,
): number | null {
  const fitting = places.filter(({ width }) => width <= LINE_COLUMNS);
  const far = fitting.filter(({ width }) => width - margin >= (LINE_COLUMNS - margin) * REACH);
  const last = (of: typeof places, fits: (atom: LineAtom) => boolean) =>
    of.findLast(({ at }) => fits(atoms[at]!))?.at;
  const outside = ({ depth }: LineAtom): boolean => depth === 0;
  return (
    last(far, ({ second, blank }) => second && blank) ??
    last(far, (atom) => outside(atom) && atom.blank) ??
    last(far, ({ second }) => second) ??
    last(far, outside) ??
    last(far, ({ blank }) => blank) ??
    last(fitting, outside) ??
    last(fitting, () => true) ??
    places[0]?.at ??
    null
  );
}

function joined(atoms: readonly LineAtom[]): string {
  return atoms.map(({ text, blank }, i) => (i > 0 && blank ? ` ${text}` : text)).join('');
}
