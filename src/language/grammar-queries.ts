/** What the grammar itself tells: its rules as plain data, the words of a statement, what may come next where one is being typed. */

import { type NextToken, type Production, tokensAfter, wordsOf } from './grammar-rule.js';
import { foldCharacters, splitStatements, tokenize } from './lexer.js';
import { ruleReader } from './rule-reader.js';
import { startsTimeline } from './statement-reader.js';
import { byWord, type StatementRule, statementTable, timelineRule } from './statements/statement-table.js';
import type { Token } from './tokens.js';

let all: ReadonlyMap<string, Production> | null = null;

/** Every rule by its name. */
export function productions(): ReadonlyMap<string, Production> {
  if (all) return all;
  for (const entry of statementTable) ruleReader.ruleOf(entry);
  all = new Map([...ruleReader.rules].map(([name, { production }]) => [name, production]));
  return all;
}

/** The words of the language that may stand in a statement after its first one. */
export function laterWordsOf(entry: StatementRule): readonly string[] {
  return [...wordsOf(ruleReader.ruleOf(entry))].filter((word) => word !== entry.word);
}

/** What may follow the tokens of a statement that is being typed; [] where they do not fit it. */
export function nextTokens(entry: StatementRule, tokens: readonly Token[]): NextToken[] {
  return tokensAfter(ruleReader.ruleOf(entry), tokens);
}

/** The statement that a cursor stands in. */
export interface StatementAtCursor {
  /** Null: its first word is none that the language knows, or is still being typed. */
  readonly entry: StatementRule | null;
  /** All whole tokens before the cursor, without the word that it stands at the end of. */
  readonly tokens: readonly Token[];
  /** Where that word begins; the cursor where there is none. */
  readonly from: number;
  /** The text in quotes that the cursor stands in, from its opening quote on, or null. */
  readonly quoted: number | null;
  readonly start: number;
}

/** Null where the cursor stands in no statement, or in a comment. */
export function statementAtCursor(text: string, cursor: number): StatementAtCursor | null {
  const { text: folded, comments } = foldCharacters(text);
  if (comments.some(({ start, end }) => start < cursor && cursor <= end)) return null;
  const piece = splitStatements(folded).statements.findLast(({ start }) => start < cursor);
  if (!piece) return null;
  const all = tokenize(folded, piece.start, cursor);
  const last = all.at(-1);
  const touching = last && last.end === cursor ? last : null;
  const kind = touching?.type.name;
  const quoted = kind === 'UnclosedText' ? touching!.start : null;
  const word = touching !== null && /^[\p{L}\p{N}_]/u.test(touching.image);
  const tokens = word || quoted !== null ? all.slice(0, -1) : all;
  const from = word ? touching!.start : cursor;
  const first = tokens[0];
  const heading = tokenize(folded, piece.start, piece.end);
  const entry = !first
    ? null
    : startsTimeline(heading, 0)
      ? timelineRule
      : (byWord.get(first.image.normalize('NFC')) ?? null);
  return { entry, tokens, from, quoted, start: piece.start };
}

/** An example cut into what the language fixes and what the writer puts in its place. */
export function exampleParts(example: string): readonly { readonly text: string; readonly fixed: boolean }[] {
  const parts: { text: string; fixed: boolean }[] = [];
  let at = 0;
  for (const [index, { start, image, type }] of tokenize(example, 0, example.length).entries()) {
    if (start > at) parts.push({ text: example.slice(at, start), fixed: true });
    const name = type.name;
    const chosen = name === 'Word' || name === 'Text' || /^\d/.test(image);
    parts.push({ text: image, fixed: index === 0 || !chosen });
    at = start + image.length;
  }
  return parts;
}
