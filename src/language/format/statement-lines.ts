/** One statement → its lines. */

import { LINE_COLUMNS } from '../cels-line.js';
import { displayWidth } from '../source.js';
import type { Item, Statement } from '../tree.js';
import type { FormatPiece, WrittenToken } from './format-pieces.js';
import type { ItemTiming } from './item-frames.js';

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
    const atoms = atomsOf(piece, gaps, timing, rest, to);
    const broken = breakLines(first, atoms, indent);
    for (const [i, text] of broken.entries()) {
      lines.push({ text: text.trimEnd(), comment: i === broken.length - 1 ? comment : null });
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
  const drawings = drawingsOf(statement);
  const atoms: LineAtom[] = [];
  for (let i = from; i < to; ) {
    let end = i + 1;
    while (end < to && (gaps[end] === 'none' || gaps[end] === 'keep')) end++;
    const { start, startsLine } = tokens[i]!;
    // A place stands before its text: `@2+1 "and more"`.
    const drawing = gaps[i] === 'blank' && tokens.slice(i, end).some((one) => drawings.has(one.start));
    atoms.push({
      text: textOf(tokens, gaps, i, end),
      blank: gaps[i] !== 'soft',
      depth: depths.get(start) ?? 0,
      second: seconds.has(start),
      drawing,
      startsLine,
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

/** The offsets before which a line that the writer has broken stays so: drawings, and what is said of several texts. */
function drawingsOf(statement: Statement): ReadonlySet<number> {
  const starts = new Set<number>();
  const visit = (items: readonly Item[]): void => {
    for (const item of items) {
      starts.add(item.span.start);
      if (item.kind === 'group') visit(item.items);
    }
  };
  if (statement.kind === 'timeline' || statement.kind === 'phrase') visit(statement.items);
  if ('words' in statement) for (const { span } of statement.words) starts.add(span.start);
  return starts;
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
  /** A drawing, or a text of several. */
  readonly drawing: boolean;
  /** The writer has begun a line with it. */
  readonly startsLine: boolean;
}

/** A line is broken at a whole second only where it is at least this full. */
const REACH = 0.6;

/**
 * `head` and the atoms behind it; lines after the first start with `indent`. A line that the writer has begun with a drawing stays one.
 * Where a line grows too long it is broken, of the places that fit: at the last whole second within reach; at the last blank;
 * between a key and its in-betweens, at a whole second before others; inside a group. What would not fit into a line of its own
 * stays where it is.
 */
export function breakLines(head: string, atoms: readonly LineAtom[], indent: string): string[] {
  const begun = atoms.flatMap(({ drawing, startsLine }, i) => (i > 0 && drawing && startsLine ? [i] : []));
  return pieces(atoms, begun).flatMap((part, i) => stableLines(i === 0 ? head : indent, part, indent));
}

/** Laid out anew, a break at a drawing is one that is kept: so what lies between two of them is broken by itself. */
function stableLines(head: string, atoms: readonly LineAtom[], indent: string): string[] {
  const starts = overflowBreaks(head, atoms, indent);
  const atDrawings = starts.filter((i) => atoms[i]!.drawing);
  if (atDrawings.length > 0)
    return pieces(atoms, atDrawings).flatMap((part, i) => stableLines(i === 0 ? head : indent, part, indent));
  return pieces(atoms, starts).map((part, i) => (i === 0 ? head : indent) + joined(part));
}

/** `starts`: the indices at which a new piece begins. */
function pieces(atoms: readonly LineAtom[], starts: readonly number[]): LineAtom[][] {
  return [0, ...starts].map((from, i) => atoms.slice(from, starts[i]));
}

/** The indices of the atoms that begin a further line. */
function overflowBreaks(head: string, atoms: readonly LineAtom[], indent: string): number[] {
  const starts: number[] = [];
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
    starts.push(at);
    width = margin;
    first = at;
    places = [];
    i = at - 1;
  }
  return starts;
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

// ---- where a statement has blanks between its tokens

/**
 * What stands before a token: nothing, a blank at which no line is broken, a place without a blank at which one may be, or a blank
 * at which one may be.
 */
type Gap = 'none' | 'keep' | 'soft' | 'blank';

const SIGNS = new Set(
  'DotDot Bounce Colon Dash Equals Open Close OpenBrace CloseBrace Star Greater At Comma Slash Plus'.split(
    ' ',
  ),
);
const NONE_BEFORE = new Set(
  'Comma Close OpenBrace CloseBrace Colon DotDot Star Bounce Slash Plus'.split(' '),
);
const NONE_BEHIND = new Set('Open OpenBrace At Comma Colon Star Slash Plus'.split(' '));

/** Parts of a statement that are no longer than this are not broken. */
const SHORT = 32;

interface Node {
  readonly span: { readonly start: number; readonly end: number };
}

/**
 * The gap before each token; the first has none. Whatever the tree holds as one thing is written without blanks where it can be
 * (`1+1..5+0`, `A@1+1`, `-20,8`); where two names or numbers would run into each other, its parts are looked at. So a statement
 * that is added to the language has a sensible form with no entry here.
 */
export function gapsOf(statement: Statement, tokens: readonly WrittenToken[]): Gap[] {
  const index = new Map(tokens.map(({ start }, i) => [start, i]));
  const { inner, together } = joinedParts(statement, tokens, index);
  const gaps = tokens.map((token, i): Gap => {
    const before = tokens[i - 1];
    if (!before || inner[i]) return 'none';
    if (token.kind === 'Greater' || before.kind === 'Greater') {
      // Between single numbers, as in `0%>100%`; between places, as in `A@1 > B@24`, it stands free.
      const sign = token.kind === 'Greater' ? i : i - 1;
      if (!inner[sign - 1] && !inner[sign + 2]) return 'none';
      return token.kind === 'Greater' ? 'blank' : 'keep';
    }
    if (NONE_BEFORE.has(token.kind) || NONE_BEHIND.has(before.kind)) return 'none';
    return together[i] || (isWord(before) && !isWord(token)) ? 'keep' : 'blank';
  });
  if ('words' in statement) {
    for (const { at, span } of statement.words) if (at) gaps[index.get(span.start)!] = 'keep';
  }
  if (statement.kind === 'timeline' || statement.kind === 'phrase') {
    for (let i = 0; i < gaps.length; i++) if (gaps[i] === 'blank') gaps[i] = 'keep';
    itemGaps(statement.items, gaps, index);
  }
  return gaps;
}

/** A word of the language, which stays with what it is said of: `carry A`, `at 130,0`. */
function isWord({ kind }: WrittenToken): boolean {
  return kind.startsWith("'");
}

/** For each token: whether it stands inside something that is written as one; inside something short that stays in one line. */
function joinedParts(
  statement: Statement,
  tokens: readonly WrittenToken[],
  index: ReadonlyMap<number, number>,
): { inner: boolean[]; together: boolean[] } {
  const ends = new Map(tokens.map(({ end }, i) => [end, i]));
  const inner = tokens.map(() => false);
  const together = tokens.map(() => false);
  const join = (start: number, end: number): void => {
    const from = index.get(start);
    const to = ends.get(end);
    if (from === undefined || to === undefined) return;
    const length = tokens.slice(from, to + 1).reduce((sum, { text }) => sum + text.length + 1, 0);
    if (length <= SHORT) together.fill(true, from + 1, to + 1);
    for (let i = from + 1; i <= to; i++) {
      if (!SIGNS.has(tokens[i]!.kind) && !SIGNS.has(tokens[i - 1]!.kind)) return;
    }
    inner.fill(true, from + 1, to + 1);
  };
  const visit = (value: unknown): void => {
    if (value === null || typeof value !== 'object') return;
    if (Array.isArray(value)) for (const one of value) visit(one);
    else {
      // What belongs to a part may stand outside of it: the `@hit-4` before a word.
      if (isNode(value) && value !== statement && !isGroup(value)) join(value.span.start, value.span.end);
      // Of a fairing mark, the name and its frame are one.
      if (isFair(value)) join(value.mark.span.start, value.at.span.end);
      for (const key in value)
        if (key !== 'span' && key !== 'word') visit((value as Record<string, unknown>)[key]);
    }
  };
  visit(statement);
  return { inner, together };
}

function isNode(value: object): value is Node {
  const { span } = value as Partial<Node>;
  return typeof span === 'object' && span !== null && typeof span.start === 'number';
}

function isGroup(value: object): boolean {
  return (value as { kind?: unknown }).kind === 'group';
}

function isFair(value: object): value is { readonly mark: Node; readonly at: Node } {
  return (value as { form?: unknown }).form === 'fair';
}

/** In-betweens stand close to the keys that they lie between; everything else stands apart. */
function itemGaps(items: readonly Item[], gaps: Gap[], index: ReadonlyMap<number, number>): void {
  for (const [i, item] of items.entries()) {
    const before = items[i - 1];
    if (before) gaps[index.get(item.span.start)!] = itemGap(before, item);
    if (item.kind === 'group') itemGaps(item.items, gaps, index);
  }
}

function itemGap(before: Item, item: Item): Gap {
  if (before.kind === 'at' || before.kind === 'on') return 'keep';
  if (!close(before) || !close(item) || (before.kind !== 'between' && item.kind !== 'between'))
    return 'blank';
  // A mark's name before a `-` would take it for its own.
  if (endsInName(before)) return 'blank';
  // The figures of a length would run into those of the key: `-:3 2`.
  if (item.kind !== 'between' && 'length' in before && (before.length !== null || before.open !== null))
    return 'blank';
  return item.kind === 'between' && before.kind !== 'between' ? 'soft' : 'none';
}

function close(item: Item): boolean {
  return item.kind === 'between' || item.kind === 'key' || item.kind === 'group';
}

function endsInName(item: Item): boolean {
  if (item.kind === 'group') return item.repeat.form === 'length' && item.repeat.length.form === 'mark';
  return 'length' in item && item.length?.form === 'mark';
}
