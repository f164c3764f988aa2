/** What the grammar itself tells: its rules as plain data, the words of a statement, what may come next where one is being typed. */

import {
  Alternation,
  type Alternative,
  type IProduction,
  type ISerializedGast,
  type IToken,
  NonTerminal,
  Option,
  Repetition,
  RepetitionMandatory,
  Terminal,
  tokenMatcher,
} from 'chevrotain';
import { theGrammar } from './grammar.js';
import { foldCharacters, splitStatements, tokenize } from './lexer.js';
import { startsTimeline } from './statement-reader.js';
import { byWord, type StatementRule, timelineRule } from './statements/statement-table.js';

export type Production =
  /** Typed as it stands: a word of the language, or a sign. */
  | { readonly kind: 'literal'; readonly text: string }
  /** A kind of token, by its name in the lexer: `Integer`, `Text`. */
  | { readonly kind: 'token'; readonly name: string }
  | { readonly kind: 'rule'; readonly name: string }
  | { readonly kind: 'sequence'; readonly pieces: readonly Production[] }
  | { readonly kind: 'choice'; readonly pieces: readonly Production[] }
  /** May be left out; any number of times, none too; once or more. */
  | { readonly kind: 'optional' | 'many' | 'some'; readonly piece: Production };

type Node = ISerializedGast & { readonly name?: string; readonly pattern?: unknown };

let rules: ReadonlyMap<string, Production> | null = null;

/** Every rule by its name, in the order in which the grammar was put together. */
export function productions(): ReadonlyMap<string, Production> {
  rules ??= new Map(
    (theGrammar().getSerializedGastProductions() as Node[]).map((rule) => [rule.name!, inside(rule)]),
  );
  return rules;
}

function inside({ definition = [] }: Node): Production {
  const pieces = definition.map(pieceOf);
  return pieces.length === 1 ? pieces[0]! : { kind: 'sequence', pieces };
}

function pieceOf(node: Node): Production {
  switch (node.type) {
    case 'Terminal': {
      const name = node.name!;
      if (name.startsWith("'")) return { kind: 'literal', text: name.slice(1, -1) };
      return typeof node.pattern === 'string'
        ? { kind: 'literal', text: node.pattern }
        : { kind: 'token', name };
    }
    case 'NonTerminal':
      return { kind: 'rule', name: node.name! };
    case 'Alternation':
      return { kind: 'choice', pieces: (node.definition ?? []).map(inside) };
    case 'Option':
      return { kind: 'optional', piece: inside(node) };
    case 'Repetition':
      return { kind: 'many', piece: inside(node) };
    case 'RepetitionMandatory':
      return { kind: 'some', piece: inside(node) };
    default:
      return inside(node);
  }
}

// ---- Which words of the language a statement may hold, taken from the grammar itself

let found: Map<string, readonly string[]> | null = null;

/** The words that may stand in a statement after its first one. */
export function laterWordsOf(entry: StatementRule): readonly string[] {
  found ??= collect();
  return (found.get(entry.rule) ?? []).filter((word) => word !== entry.word);
}

function collect(): Map<string, readonly string[]> {
  const rules = theGrammar().getSerializedGastProductions();
  const direct = new Map<string, { words: Set<string>; calls: Set<string> }>();
  for (const rule of rules) {
    const own = { words: new Set<string>(), calls: new Set<string>() };
    walk(rule, own);
    direct.set((rule as ISerializedGast & { name: string }).name, own);
  }
  const all = new Map<string, readonly string[]>();
  for (const name of direct.keys()) {
    const words = new Set<string>();
    const seen = new Set<string>();
    const visit = (rule: string): void => {
      if (seen.has(rule)) return;
      seen.add(rule);
      const own = direct.get(rule);
      for (const word of own?.words ?? []) words.add(word);
      for (const call of own?.calls ?? []) visit(call);
    };
    visit(name);
    all.set(name, [...words]);
  }
  return all;
}

/** Words of the language are the tokens whose names stand in single quotes. */
function walk(node: ISerializedGast, own: { words: Set<string>; calls: Set<string> }): void {
  const { type, name, definition } = node as ISerializedGast & { name?: string };
  if (type === 'NonTerminal' && name) own.calls.add(name);
  if (type === 'Terminal' && name?.startsWith("'")) own.words.add(name.slice(1, -1));
  for (const child of definition ?? []) walk(child, own);
}

// ---- What may come next in a statement that is being typed, out of the grammar itself

/** A kind of token that may come next, with the rules that it would be read by, outermost first. */
export interface NextToken {
  readonly kind: string;
  readonly rules: readonly string[];
}

/** The statement that a cursor stands in. */
export interface StatementAtCursor {
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
export function statementAtCursor(text: string, cursor: number): StatementAtCursor | null {
  const { text: folded, comments } = foldCharacters(text);
  if (comments.some(({ start, end }) => start < cursor && cursor <= end)) return null;
  const piece = splitStatements(folded).statements.findLast(({ start }) => start < cursor);
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

/** What is left to be read of a statement, piece by piece; `rules`: those that the piece stands in, outermost first. */
interface Rest {
  readonly piece: IProduction;
  readonly rules: readonly string[];
  readonly next: Rest | null;
}

function before(next: Rest | null, pieces: readonly IProduction[], rules: readonly string[]): Rest | null {
  return pieces.reduceRight<Rest | null>((rest, piece) => ({ piece, rules, next: rest }), next);
}

/**
 * Every kind of token that may follow; [] where the tokens do not fit the statement. The parser never goes back, so of ways that part
 * before the last token only the first that reads them all counts.
 */
export function nextTokens(entry: StatementRule, tokens: readonly IToken[]): NextToken[] {
  const found = new Map<string, NextToken>();
  const { definition } = theGrammar().getGAstProductions()[entry.rule]!;
  // Those that are still to be tried, the first of them last.
  const ways = [{ read: 0, rest: before(null, definition, [entry.rule]) }];
  for (let way = ways.pop(); way; way = ways.pop()) {
    const { read, rest } = way;
    if (!rest || (found.size > 0 && read < tokens.length)) continue;
    const { piece, rules, next } = rest;
    const tryNext = (left: Rest | null): void => void ways.push({ read, rest: left });
    if (piece instanceof Terminal) {
      const { name } = piece.terminalType;
      if (read === tokens.length) found.set(`${name} ${rules.join(' ')}`, { kind: name, rules });
      else if (tokenMatcher(tokens[read]!, piece.terminalType)) ways.push({ read: read + 1, rest: next });
    } else if (piece instanceof Alternation) {
      for (const each of piece.definition.toReversed() as Alternative[])
        tryNext(before(next, each.definition, rules));
    } else if (piece instanceof NonTerminal) {
      tryNext(before(next, piece.definition, [...rules, piece.nonTerminalName]));
    } else if (piece instanceof Option) {
      tryNext(next);
      tryNext(before(next, piece.definition, rules));
    } else if (piece instanceof Repetition) {
      tryNext(next);
      tryNext(before(rest, piece.definition, rules));
    } else if (piece instanceof RepetitionMandatory) {
      const { definition } = piece;
      tryNext(before({ ...rest, piece: new Repetition({ definition }) }, definition, rules));
    }
  }
  return [...found.values()];
}

/** An example cut into what the language fixes and what the writer puts in its place. */
export function exampleParts(example: string): readonly { readonly text: string; readonly fixed: boolean }[] {
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
