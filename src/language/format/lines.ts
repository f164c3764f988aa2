/** One statement → its lines. */

import { LINE_COLUMNS } from '../cels-line.js';
import { displayWidth } from '../source.js';
import type { Item, Statement } from '../tree.js';
import { type Atom, fold } from './fold.js';
import type { Timing } from './frames.js';
import { type Gap, gapsOf } from './gaps.js';
import type { Piece } from './pieces.js';

/** A line of the new text, and the comment behind it. */
export interface Line {
  readonly text: string;
  readonly comment: string | null;
}

type StatementPiece = Extract<Piece, { kind: 'statement' }>;

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
  timing: Timing,
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
        : fold(first, atomsOf(piece, gaps, timing, rest, to), indent);
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
  timing: Timing,
  from: number,
  to: number,
): Atom[] {
  const seconds = secondsOf(statement, timing);
  const depths = depthsOf(statement);
  const atoms: Atom[] = [];
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
function secondsOf(statement: Statement, timing: Timing): ReadonlySet<number> {
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
