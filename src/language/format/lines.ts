/** One statement → its lines. */

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
  return displayWidth(heading(statement, tokens, gapsOf(statement, tokens)).text);
}

/** `column`: where the items of a timeline start, counted from 0; null: behind its heading. */
export function linesOf(
  piece: StatementPiece,
  timing: Timing,
  column: number | null,
): { lines: Line[]; indent: string } {
  const { statement, tokens, segments } = piece;
  const gaps = gapsOf(statement, tokens);
  const head = heading(statement, tokens, gaps);
  const start = head.text + ' '.repeat(Math.max(1, (column ?? 0) - displayWidth(head.text)));
  const width = displayWidth(start);
  const indent = ' '.repeat(width > FARTHEST ? FAR_INDENT : width);
  const seconds = secondsOf(statement, timing);
  const depths = depthsOf(statement);
  const lines: Line[] = [];
  for (const { from, to, comment, between } of segments) {
    const atoms: Atom[] = [];
    for (let i = Math.max(from, head.tokens); i < to; i++) {
      const { text, start: at } = tokens[i]!;
      const last = atoms.at(-1);
      const gap = gaps[i]!;
      if (last && (gap === 'none' || gap === 'keep')) {
        atoms[atoms.length - 1] = { ...last, text: last.text + (gap === 'keep' ? ' ' : '') + text };
      } else {
        atoms.push({ text, blank: gap !== 'soft', depth: depths.get(at) ?? 0, second: seconds.has(at) });
      }
    }
    let first = indent;
    if (from === 0) first = to > head.tokens ? start : head.text;
    else if (from < head.tokens) first = '';
    if (from < head.tokens && (from > 0 || to < head.tokens)) {
      // A comment inside the heading: its tokens as they stand.
      const words = tokens.slice(from, Math.min(to, head.tokens));
      first =
        (from > 0 ? indent : '') +
        words.map(({ text }, i) => (i > 0 ? blankOf(gaps[from + i]!) : '') + text).join('');
      if (to > head.tokens) first += ' ';
    }
    const folded = fold(first, atoms, indent);
    for (const [i, text] of folded.entries()) {
      lines.push({ text: text.trimEnd(), comment: i === folded.length - 1 ? comment : null });
    }
    for (const one of between) lines.push({ text: one.text === '' ? '' : indent + one.text, comment: null });
  }
  return { lines, indent };
}

function blankOf(gap: Gap): string {
  return gap === 'blank' || gap === 'keep' ? ' ' : '';
}

/** What stands before that which may go on in further lines, and how many tokens it is. */
function heading(
  statement: Statement,
  tokens: StatementPiece['tokens'],
  gaps: readonly Gap[],
): { text: string; tokens: number } {
  const count = headTokens(statement, tokens);
  const text = tokens.slice(0, count).map((token, i) => (i > 0 ? blankOf(gaps[i]!) : '') + token.text);
  return { text: text.join(''), tokens: count };
}

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
