/** Where a statement has blanks between its tokens. */

import type { Item, Statement } from '../tree.js';
import type { WrittenToken } from './format-pieces.js';

/**
 * What stands before a token: nothing, a blank at which no line is broken, a place without a blank at which one may be, or a blank
 * at which one may be.
 */
export type Gap = 'none' | 'keep' | 'soft' | 'blank';

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
  const { inner, together } = joined(statement, tokens, index);
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
function joined(
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
