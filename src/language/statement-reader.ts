/** One statement's tokens → its node, or the first place where they do not fit. */

import type { Diagnostic } from './diagnostic.js';
import { foldCharacters, splitStatements, tokenize } from './lexer.js';
import { currentWord } from './retired-words.js';
import { type Misfit, ruleReader } from './rule-reader.js';
import type { TextRange } from './source.js';
import { byWord, type StatementRule, timelineRule } from './statements/statement-table.js';
import { Close, Colon, isKind, Name, Open, Text, type Token } from './tokens.js';
import type { Statement } from './tree.js';

/** Groups inside groups; deeper ones are slips, and would exhaust the stack. */
export const DEEPEST = 40;

export interface SourceText {
  readonly file: string;
  /** As typed, the byte-order mark left out. */
  readonly text: string;
}

export interface ReadingFailure extends Misfit {
  readonly reason: 'first-word' | 'unknown-word' | 'too-deep' | 'misfit';
  /** The statement that was being read, if that was clear. */
  readonly entry: StatementRule | null;
}

export type StatementReading =
  | { readonly statement: Statement; readonly problems: readonly Diagnostic[] }
  | { readonly failure: ReadingFailure };

export function isName(token: Token | undefined): token is Token {
  return token !== undefined && isKind(token, Name);
}

/** Whether a name, optional text and a colon stand at `index`: the start of a timeline. */
export function startsTimeline(tokens: readonly Token[], index: number): boolean {
  const next = tokens[index + 1]?.type;
  return isName(tokens[index]) && (next === Colon || (next === Text && tokens[index + 2]?.type === Colon));
}

function tooDeep(tokens: readonly Token[]): number {
  let depth = 0;
  return tokens.findIndex(({ type }) => {
    if (type === Open) depth++;
    else if (type === Close) depth--;
    return depth > DEEPEST;
  });
}

export function readStatement(tokens: readonly Token[], source: SourceText): StatementReading {
  const fail = (
    reason: ReadingFailure['reason'],
    entry: StatementRule | null,
    { at, wanted }: Misfit = { at: 0, wanted: [] },
  ): StatementReading => ({ failure: { reason, entry, at, wanted } });
  const first = tokens[0];
  if (!isName(first)) return fail('first-word', null);
  const entry = startsTimeline(tokens, 0) ? timelineRule : byWord.get(currentWord(first.image));
  if (!entry) return fail('unknown-word', null);
  const deep = tooDeep(tokens);
  if (deep >= 0) return fail('too-deep', entry, { at: deep, wanted: [] });
  const read = ruleReader.read(entry, tokens, source);
  return 'statement' in read ? read : fail('misfit', entry, read);
}

/** An offset below which a stretch of text reads without fault: the text's length where all of it does. */
export function readsUpTo(text: string): number {
  const folded = foldCharacters(text);
  const { statements, stray } = splitStatements(folded.text);
  if (folded.controls.length > 0 || stray) return 0;
  for (const { start, end } of statements) {
    const tokens = tokenize(folded.text, start, end);
    const reading = readStatement(tokens, { file: '', text });
    if ('failure' in reading) return tokens[reading.failure.at]?.start ?? end - 0.5;
  }
  return text.length;
}

/** Applies edits that do not overlap to a text. */
export function withEdits(text: string, edits: readonly (TextRange & { readonly text: string })[]): string {
  let out = text;
  for (const edit of [...edits].sort((a, b) => b.start - a.start)) {
    out = out.slice(0, edit.start) + edit.text + out.slice(edit.end);
  }
  return out;
}
