/** One statement's tokens → its node, or the first place where they do not fit. */

import { EOF, type IToken, tokenMatcher } from 'chevrotain';
import type { Wanted } from './catalogue/message-terms.js';
import type { Diagnostic } from './diagnostic.js';
import { theGrammar } from './grammar.js';
import { foldCharacters, splitStatements, tokenize } from './lexer.js';
import { currentWord } from './retired-words.js';
import { RuleReader } from './rule-reader.js';
import type { TextRange } from './source.js';
import { byWord, type StatementRule, timelineRule } from './statements/statement-table.js';
import { Close, Colon, Name, Open, Text } from './tokens.js';
import type { Statement } from './tree.js';

/** Groups inside groups; deeper ones are slips, and would exhaust the stack. */
export const DEEPEST = 40;

export interface SourceText {
  readonly file: string;
  /** As typed, the byte-order mark left out. */
  readonly text: string;
}

export interface ReadingFailure {
  readonly reason: 'first-word' | 'unknown-word' | 'too-deep' | 'misfit';
  /** The statement that was being read, if that was clear. */
  readonly entry: StatementRule | null;
  /** The index of the token that does not fit; the number of tokens where the statement stops too soon. */
  readonly at: number;
  /** What was wanted in its place, any of these; nothing where the statement was complete. */
  readonly wanted: readonly Wanted[];
}

export type StatementReading =
  | { readonly statement: Statement; readonly problems: readonly Diagnostic[] }
  | { readonly failure: ReadingFailure };

export function isName(token: IToken | undefined): token is IToken {
  return token !== undefined && tokenMatcher(token, Name);
}

/** Whether a name, optional text and a colon stand at `index`: the start of a timeline. */
export function startsTimeline(tokens: readonly IToken[], index: number): boolean {
  const next = tokens[index + 1]?.tokenType;
  return (
    isName(tokens[index]) && (next === Colon || (next === Text && tokens[index + 2]?.tokenType === Colon))
  );
}

function tooDeep(tokens: readonly IToken[]): number {
  let depth = 0;
  return tokens.findIndex(({ tokenType }) => {
    if (tokenType === Open) depth++;
    else if (tokenType === Close) depth--;
    return depth > DEEPEST;
  });
}

let reader: RuleReader | null = null;

export function readStatement(tokens: IToken[], source: SourceText): StatementReading {
  const fail = (
    reason: ReadingFailure['reason'],
    entry: StatementRule | null,
    at: number,
    wanted: readonly Wanted[] = [],
  ): StatementReading => ({
    failure: { reason, entry, at, wanted },
  });
  const first = tokens[0];
  if (!isName(first)) return fail('first-word', null, 0);
  const entry = startsTimeline(tokens, 0) ? timelineRule : byWord.get(currentWord(first.image));
  if (!entry) return fail('unknown-word', null, 0);
  const deep = tooDeep(tokens);
  if (deep >= 0) return fail('too-deep', entry, deep);
  reader ??= new RuleReader();
  const read = reader.read(entry, tokens, source);
  if (read) return read;
  const { statement, error, problems } = theGrammar().read(entry, tokens, source);
  if (statement) return { statement, problems };
  const at = error!.token.tokenType === EOF ? tokens.length : tokens.indexOf(error!.token);
  return fail('misfit', entry, at, error!.message.split(' ').filter(Boolean) as Wanted[]);
}

/** An offset below which a stretch of text reads without fault: the text's length where all of it does. */
export function readsUpTo(text: string): number {
  const folded = foldCharacters(text);
  const { statements, stray } = splitStatements(folded.text);
  if (folded.controls.length > 0 || stray) return 0;
  for (const { start, end } of statements) {
    const tokens = tokenize(folded.text, start, end);
    const reading = readStatement(tokens, { file: '', text });
    if ('failure' in reading) return tokens[reading.failure.at]?.startOffset ?? end - 0.5;
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
