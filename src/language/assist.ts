/** What may come next in a statement that is being typed, out of the grammar itself. */

import type { IToken } from 'chevrotain';
import { tokenize } from './lexer.js';
import { fold } from './normal.js';
import { theGrammar } from './parser.js';
import { startsTimeline } from './read.js';
import { split } from './split.js';
import type { StatementRule } from './statements/index.js';
import { byWord, timelineRule } from './statements/index.js';

/** A kind of token that may come next, with the rules that it would be read by, outermost first. */
export interface Next {
  readonly kind: string;
  readonly rules: readonly string[];
}

/** The statement that a cursor stands in. */
export interface Begun {
  /** Null: its first word is none that the language knows, or is still being typed. */
  readonly entry: StatementRule | null;
  /** All whole tokens before the cursor, without the word that it stands at the end of. */
  readonly tokens: readonly IToken[];
  /** Where that word begins; the cursor where there is none. */
  readonly from: number;
  /** The text in quotes that the cursor stands in, from its opening quote on, or null. */
  readonly quoted: number | null;
  readonly start: number;
}

/** Null where the cursor stands in no statement, or in a comment. */
export function begunAt(text: string, cursor: number): Begun | null {
  const { text: folded, comments } = fold(text);
  if (comments.some(({ start, end }) => start < cursor && cursor <= end)) return null;
  const piece = split(folded).statements.findLast(({ start }) => start < cursor);
  if (!piece) return null;
  const all = tokenize(folded, piece.start, cursor);
  const last = all.at(-1);
  const touching = last && last.endOffset! + 1 === cursor ? last : null;
  const kind = touching?.tokenType.name;
  const quoted = kind === 'UnclosedText' ? touching!.startOffset : null;
  const word = touching !== null && /^[\p{L}\p{N}_]/u.test(touching.image);
  const tokens = word || quoted !== null ? all.slice(0, -1) : all;
  const from = word ? touching!.startOffset : cursor;
  const first = tokens[0];
  const heading = tokenize(folded, piece.start, piece.end);
  const entry = !first
    ? null
    : startsTimeline(heading, 0)
      ? timelineRule
      : (byWord.get(first.image.normalize('NFC')) ?? null);
  return { entry, tokens, from, quoted, start: piece.start };
}

/** Every kind of token that may follow; [] where the tokens do not fit the statement. */
export function nextIn(entry: StatementRule, tokens: readonly IToken[]): Next[] {
  const found = new Map<string, Next>();
  for (const { nextTokenType, ruleStack } of theGrammar().computeContentAssist(entry.rule, [...tokens])) {
    const next = { kind: nextTokenType.name, rules: ruleStack };
    found.set(`${next.kind} ${ruleStack.join(' ')}`, next);
  }
  return [...found.values()];
}

/** An example cut into what the language fixes and what the writer puts in its place. */
export function partsOf(example: string): readonly { readonly text: string; readonly fixed: boolean }[] {
  const parts: { text: string; fixed: boolean }[] = [];
  let at = 0;
  for (const [index, { startOffset, image, tokenType }] of tokenize(example, 0, example.length).entries()) {
    if (startOffset > at) parts.push({ text: example.slice(at, startOffset), fixed: true });
    const name = tokenType.name;
    const chosen = name === 'Word' || name === 'Text' || /^\d/.test(image);
    parts.push({ text: image, fixed: index === 0 || !chosen });
    at = startOffset + image.length;
  }
  return parts;
}
