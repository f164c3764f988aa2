/**
 * Reads statements by the rules of the grammar, with one token of lookahead and without going back. Before its first use a rule is
 * run once with empty tokens and results, which records what it is made of.
 */

import type { Wanted } from './catalogue/message-terms.js';
import type { Diagnostic, Span } from './diagnostic.js';
import { type Piece, Production, Rule } from './grammar-rule.js';
import {
  type Alternatives,
  type AtLeastOne,
  type ParsingDsl,
  type Part,
  type SharedRules,
  sharedRules,
  type Wanting,
} from './shared-rules.js';
import type { StatementRule } from './statements/statement-rule.js';
import { isKind, type Token, type TokenType } from './tokens.js';
import type { Statement } from './tree.js';

/** The first place where tokens do not fit a rule. */
export interface Misfit {
  /** The index of the token; the number of tokens where they end too soon. */
  readonly at: number;
  /** What was wanted in its place, any of these; nothing where the rule was complete. */
  readonly wanted: readonly Wanted[];
}

/** One for all, since only that it is thrown matters. */
const MISFIT = new Error('the statement does not fit its rule');

/** What is looked at behind the last token and before the first, and all that a rule gets while it is recorded. No rule asks for it. */
const END: Token = {
  image: '',
  start: Number.NaN,
  end: Number.NaN,
  type: { name: 'End', label: 'unknown', text: null, categories: [] },
};

function labelsOf(ways: readonly Production[]): Wanted[] {
  return [...new Set(ways.flatMap(({ beginning }) => [...beginning.kinds].map(({ label }) => label)))];
}

export class RuleReader implements ParsingDsl {
  private readonly statements = new Map<StatementRule, Rule<Statement>>();
  private readonly named = new Map<string, Rule<unknown>>();
  private shared: SharedRules | null = null;
  private file = '';
  private text = '';
  private tokens: readonly Token[] = [];
  private at = 0;
  private problems: Diagnostic[] = [];
  private wanted: readonly Wanted[] = [];
  /** Of the production that is read: each call of the rule reads the next of them. */
  private pieces: readonly Piece[] = [];
  private next = 0;
  /** What was found of the production that is recorded; null while reading. */
  private recorded: Piece[] | null = null;

  read(
    entry: StatementRule,
    tokens: readonly Token[],
    { file, text }: { readonly file: string; readonly text: string },
  ): { readonly statement: Statement; readonly problems: readonly Diagnostic[] } | Misfit {
    const rule = this.ruleOf(entry);
    this.file = file;
    this.text = text;
    this.tokens = tokens;
    this.at = 0;
    this.problems = [];
    this.wanted = [];
    try {
      const statement = this.readBy(rule.production, rule.body);
      if (this.at === tokens.length) return { statement, problems: this.problems };
    } catch (fault) {
      if (fault !== MISFIT) throw fault;
    }
    return { at: this.at, wanted: this.wanted };
  }

  /** The rule of a statement; made when it is first asked for. */
  ruleOf(entry: StatementRule): Rule<Statement> {
    this.shared ??= sharedRules(this);
    let rule = this.statements.get(entry);
    if (!rule) {
      rule = entry.add(this, this.shared);
      this.statements.set(entry, rule);
    }
    return rule;
  }

  /** By their names: those that were made so far. */
  get rules(): ReadonlyMap<string, Rule<unknown>> {
    return this.named;
  }

  private record(part: () => unknown, gated = false): Production {
    const outer = this.recorded;
    const own: Piece[] = [];
    this.recorded = own;
    part();
    this.recorded = outer;
    return new Production(own, gated);
  }

  private readBy<T>({ pieces }: Production, part: () => T): T {
    const outer = this.pieces;
    const { next } = this;
    this.pieces = pieces;
    this.next = 0;
    const result = part();
    this.pieces = outer;
    this.next = next;
    return result;
  }

  private nextPiece<K extends Piece['kind']>(kind: K): Piece & { readonly kind: K } {
    const piece = this.pieces[this.next++];
    if (piece?.kind !== kind) throw new Error('A rule makes other calls than when it was recorded.');
    return piece as Piece & { readonly kind: K };
  }

  private misfit(wanted: readonly Wanted[]): Error {
    this.wanted = wanted;
    return MISFIT;
  }

  // ---- the calls of the rules

  RULE<T>(name: string, body: () => T): Rule<T> {
    if (this.named.has(name)) throw new Error(`There are two rules called ${name}.`);
    const rule = new Rule(name, body, (part) => this.record(part));
    this.named.set(name, rule);
    return rule;
  }

  ACTION<T>(body: () => T): T {
    return this.recorded ? (undefined as T) : body();
  }

  LA(howMuch: number): Token {
    return this.recorded ? END : (this.tokens[this.at + howMuch - 1] ?? END);
  }

  CONSUME(type: TokenType, { ERR_MSG }: Wanting = {}): Token {
    if (this.recorded) {
      this.recorded.push({ kind: 'token', type });
      return END;
    }
    this.nextPiece('token');
    const token = this.tokens[this.at];
    if (!token || !isKind(token, type)) throw this.misfit([ERR_MSG ?? type.label]);
    this.at++;
    return token;
  }

  SUBRULE<T>(rule: Rule<T>): T {
    if (this.recorded) {
      this.recorded.push({ kind: 'rule', rule });
      return {} as T;
    }
    this.nextPiece('rule');
    return this.readBy(rule.production, rule.body);
  }

  OPTION<T>(part: Part<T>): T | undefined {
    const act = typeof part === 'function' ? part : part.DEF;
    const gate = typeof part === 'function' ? undefined : part.GATE;
    if (this.recorded) {
      this.recorded.push({ kind: 'optional', part: this.record(act, gate !== undefined) });
      return {} as T;
    }
    const { part: production } = this.nextPiece('optional');
    if (gate && !gate()) return undefined;
    return production.mayBeginWith(this.LA(1)) ? this.readBy(production, act) : undefined;
  }

  OR<T>(alternatives: Alternatives<T>): T {
    const all = Array.isArray(alternatives) ? alternatives : alternatives.DEF;
    if (this.recorded) {
      const ways = all.map(({ ALT, GATE }) => this.record(ALT, GATE !== undefined));
      this.recorded.push({ kind: 'choice', ways });
      return {} as T;
    }
    const { ways } = this.nextPiece('choice');
    const token = this.LA(1);
    for (let i = 0; i < all.length; i++) {
      const { GATE, ALT } = all[i]!;
      if ((!GATE || GATE()) && ways[i]!.mayBeginWith(token)) return this.readBy(ways[i]!, ALT);
    }
    const wanted = Array.isArray(alternatives) ? undefined : alternatives.ERR_MSG;
    throw this.misfit(wanted ? [wanted] : labelsOf(ways));
  }

  MANY(part: Part<void>): void {
    if (typeof part === 'function') this.repeat('many', part);
    else this.repeat('many', part.DEF, part.GATE);
  }

  AT_LEAST_ONE({ DEF, ERR_MSG }: AtLeastOne): void {
    this.repeat('some', DEF, undefined, ERR_MSG);
  }

  private repeat(kind: 'many' | 'some', act: () => void, gate?: () => boolean, wanted?: Wanted): void {
    if (this.recorded) {
      this.recorded.push({ kind, part: this.record(act, gate !== undefined) });
      return;
    }
    const { part } = this.nextPiece(kind);
    let times = 0;
    for (let before = -1; this.at > before && (!gate || gate()) && part.mayBeginWith(this.LA(1)); times++) {
      before = this.at;
      this.readBy(part, act);
    }
    if (kind === 'some' && times === 0) throw this.misfit(wanted ? [wanted] : labelsOf([part]));
  }

  // ---- places

  place = ({ start, end }: Token): Span => ({ file: this.file, start, end });

  since = ({ start }: Token): Span => ({ file: this.file, start, end: this.LA(0).end });

  typed = ({ start, end }: Span): string => this.text.slice(start, end);

  report = (diagnostic: Diagnostic): void => {
    if (!this.recorded) this.problems.push(diagnostic);
  };
}

/** The one that all statements are read with. */
export const ruleReader = new RuleReader();
