/** What makes a grammar unreadable for one token of lookahead without going back, however its rules are read. */

import type { Piece, Production, Rule } from '../../src/language/grammar-rule.js';
import {
  Between,
  isKind,
  Key,
  kindsFrom,
  languageWords,
  Name,
  PhraseName,
  type Token,
  type TokenType,
} from '../../src/language/tokens.js';

/** Every kind that a token can have; categories are none. */
export function everyKind(): TokenType[] {
  const lexed = Array.from({ length: 129 }, (_, code) => kindsFrom(code).map(({ type }) => type));
  return [...new Set([...lexed.flat(), ...languageWords().values()])];
}

/** The kinds of token that may come next. */
type Kinds = ReadonlySet<TokenType>;

/** One sentence a fault of the grammar; what a gate decides is none. */
export function conflictsOf(rules: readonly Rule<unknown>[]): string[] {
  const circles = rules.filter(beginsWithItself).map(({ name }) => `${name} begins with itself`);
  if (circles.length > 0) return circles;
  const every = everyKind();
  const found = new Set<string>();
  const behind = new Map(rules.map((rule) => [rule, new Set<TokenType>()]));
  const all = new Map(
    [...every, Name, PhraseName, Key, Between].map((kind) => [
      kind,
      every.filter((type) => isKind({ type } as Token, kind)),
    ]),
  );
  const ofKind = (kind: TokenType): readonly TokenType[] => all.get(kind)!;
  const first = ({ beginning }: Production): Kinds => new Set([...beginning.kinds].flatMap(ofKind));

  const walk = ({ pieces }: Production, rule: Rule<unknown>, after: Kinds): void => {
    let next = after;
    for (const piece of pieces.toReversed()) {
      look(piece, rule, next);
      const own = piece.kind === 'token' ? new Set(ofKind(piece.type)) : union(partsOf(piece).map(first));
      next = isSkippable(piece) ? union([own, next]) : own;
    }
  };
  const look = (piece: Piece, rule: Rule<unknown>, next: Kinds): void => {
    const tell = (what: string, kinds: Kinds): void => {
      if (kinds.size > 0)
        found.add(`${rule.name}: ${what} begin with ${[...kinds].map(({ name }) => name).join(' ')}`);
    };
    if (piece.kind === 'rule') for (const kind of next) behind.get(piece.rule)!.add(kind);
    if (piece.kind === 'token' || piece.kind === 'rule') return;
    if (piece.kind === 'choice') {
      for (const [at, way] of piece.ways.entries()) {
        walk(way, rule, next);
        for (const other of piece.ways.slice(0, at)) {
          if (other.beginning.skippable && !other.gated) found.add(`${rule.name}: a way is never taken`);
          if (!way.gated && !other.gated) tell('two ways', both(first(way), first(other)));
        }
      }
      return;
    }
    const { part, kind } = piece;
    if (part.beginning.skippable) found.add(`${rule.name}: what may be left out may be nothing itself`);
    if (!part.gated) tell('a part and what follows it', both(first(part), next));
    walk(part, rule, kind === 'optional' ? next : union([first(part), next]));
  };

  // What may stand behind a rule is known once nothing is added any more.
  for (let size = -1; size < total(behind); ) {
    size = total(behind);
    found.clear();
    for (const rule of rules) walk(rule.production, rule, behind.get(rule)!);
  }
  return [...found];
}

function total(sets: ReadonlyMap<unknown, Kinds>): number {
  return [...sets.values()].reduce((sum, { size }) => sum + size, 0);
}

function partsOf(piece: Piece): readonly Production[] {
  if (piece.kind === 'token') return [];
  if (piece.kind === 'rule') return [piece.rule.production];
  return piece.kind === 'choice' ? piece.ways : [piece.part];
}

function isSkippable(piece: Piece): boolean {
  if (piece.kind === 'optional' || piece.kind === 'many') return true;
  return partsOf(piece).some(({ beginning }) => beginning.skippable);
}

const union = (sets: readonly Kinds[]): Kinds => new Set(sets.flatMap((one) => [...one]));
const both = (one: Kinds, other: Kinds): Kinds => new Set([...one].filter((kind) => other.has(kind)));

/** Asked without beginnings, which would have no end. */
function beginsWithItself(rule: Rule<unknown>): boolean {
  const seen = new Set<Rule<unknown>>();
  let circle = false;
  /** Whether all of it may be nothing. */
  const skips = ({ pieces }: Production): boolean => pieces.every(skipsPiece);
  const skipsPiece = (piece: Piece): boolean => {
    if (piece.kind === 'token') return false;
    if (piece.kind === 'rule') {
      circle ||= piece.rule === rule;
      if (seen.has(piece.rule)) return false;
      seen.add(piece.rule);
    }
    const skipped = partsOf(piece).map(skips);
    return piece.kind === 'optional' || piece.kind === 'many' || skipped.includes(true);
  };
  skips(rule.production);
  return circle;
}
