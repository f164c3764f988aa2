/**
 * Reads statements that are written as the grammar has them, by the same rules as the parser library and in a fraction of its time:
 * nearly all statements are. What does not fit is left to the library (`grammar.ts`), which says what was wanted in its place.
 */

import { EOF, type IToken, type TokenType } from 'chevrotain';
import type { Diagnostic, Span } from './diagnostic.js';
import {
  type Alternatives,
  type AtLeastOne,
  type ParsingDsl,
  type Part,
  type Rule,
  type SharedRules,
  sharedRules,
} from './shared-rules.js';
import type { StatementRule } from './statements/statement-rule.js';
import type { Statement } from './tree.js';

/** What a part of a rule may begin with; `skippable`: it may be nothing at all. */
interface Beginning {
  readonly kinds: Set<TokenType>;
  skippable: boolean;
}

/** A rule with what its choices may begin with, by the number in the name of the call (`OPTION1`). */
class ReaderRule {
  beginning: Beginning | null = null;
  readonly options: Beginning[] = [];
  readonly repetitions: Beginning[] = [];
  readonly alternatives: (readonly Beginning[])[] = [];

  constructor(
    readonly ruleName: string,
    readonly body: () => unknown,
  ) {}
}

/** One for all, since only that it is thrown matters. */
const MISFIT = new Error('the statement does not fit its rule');

const END: IToken = {
  image: '',
  startOffset: Number.NaN,
  endOffset: Number.NaN,
  tokenType: EOF,
  tokenTypeIdx: EOF.tokenTypeIdx!,
};

function begins({ tokenType }: IToken, { kinds }: Beginning): boolean {
  if (kinds.has(tokenType)) return true;
  for (const category of tokenType.CATEGORIES!) if (kinds.has(category)) return true;
  return false;
}

/** One token of lookahead, as the grammar asks for it. */
export class RuleReader implements ParsingDsl {
  private readonly statements = new Map<StatementRule, ReaderRule>();
  private shared: SharedRules | null = null;
  private file = '';
  private text = '';
  private tokens: readonly IToken[] = [];
  private at = 0;
  private problems: Diagnostic[] = [];
  private rule: ReaderRule | null = null;
  /** While a rule is looked at before its first use: what the part that is run may begin with, so far. */
  private recorded: Beginning | null = null;

  /** Null where the tokens do not fit. */
  read(
    entry: StatementRule,
    tokens: readonly IToken[],
    { file, text }: { readonly file: string; readonly text: string },
  ): { readonly statement: Statement; readonly problems: readonly Diagnostic[] } | null {
    this.shared ??= sharedRules(this);
    let rule = this.statements.get(entry);
    if (!rule) {
      rule = entry.add(this, this.shared) as unknown as ReaderRule;
      this.statements.set(entry, rule);
    }
    this.file = file;
    this.text = text;
    this.tokens = tokens;
    this.at = 0;
    this.problems = [];
    this.rule = null;
    try {
      const statement = this.run(rule) as Statement;
      return this.at === tokens.length ? { statement, problems: this.problems } : null;
    } catch (fault) {
      if (fault !== MISFIT) throw fault;
      return null;
    }
  }

  private run(rule: ReaderRule): unknown {
    if (!rule.beginning) this.beginningOf(rule);
    const outer = this.rule;
    this.rule = rule;
    const result = rule.body();
    this.rule = outer;
    return result;
  }

  // ---- what parts may begin with: each rule is run once with empty tokens and results

  private beginningOf(rule: ReaderRule): Beginning {
    if (rule.beginning) return rule.beginning;
    const outer = this.rule;
    this.rule = rule;
    rule.beginning = this.record(rule.body);
    this.rule = outer;
    return rule.beginning;
  }

  private record(part: () => unknown): Beginning {
    const outer = this.recorded;
    const own: Beginning = { kinds: new Set(), skippable: true };
    this.recorded = own;
    part();
    this.recorded = outer;
    return own;
  }

  /** Such a part comes next in the one that is recorded. */
  private append({ kinds, skippable }: Beginning): void {
    const whole = this.recorded!;
    if (!whole.skippable) return;
    for (const kind of kinds) whole.kinds.add(kind);
    whole.skippable = skippable;
  }

  // ---- the calls of the rules

  RULE<T>(name: string, body: () => T): Rule<T> {
    return new ReaderRule(name, body) as unknown as Rule<T>;
  }

  /** @returns nothing while a rule is recorded, as in the parser library. */
  ACTION<T>(body: () => T): T {
    return this.recorded ? (undefined as T) : body();
  }

  LA(howMuch: number): IToken {
    return this.recorded ? END : (this.tokens[this.at + howMuch - 1] ?? END);
  }

  CONSUME(kind: TokenType): IToken {
    if (this.recorded) {
      this.append({ kinds: new Set([kind]), skippable: false });
      return END;
    }
    const token = this.tokens[this.at];
    if (!token || (token.tokenType !== kind && !token.tokenType.CATEGORIES!.includes(kind))) throw MISFIT;
    this.at++;
    return token;
  }
  CONSUME1 = this.CONSUME;
  CONSUME2 = this.CONSUME;
  CONSUME3 = this.CONSUME;
  CONSUME4 = this.CONSUME;

  SUBRULE<T>(called: Rule<T>): T {
    const rule = called as unknown as ReaderRule;
    if (!this.recorded) return this.run(rule) as T;
    // What stands behind something that must be there is of no account, and may be the rule that is recorded.
    if (this.recorded.skippable) this.append(this.beginningOf(rule));
    return {} as T;
  }
  SUBRULE1 = this.SUBRULE;
  SUBRULE2 = this.SUBRULE;
  SUBRULE3 = this.SUBRULE;

  private option<T>(index: number, part: Part<T>): T | undefined {
    const act = typeof part === 'function' ? part : part.DEF;
    if (this.recorded) {
      const own = this.record(act);
      this.rule!.options[index] = own;
      this.append({ kinds: own.kinds, skippable: true });
      return {} as T;
    }
    if (typeof part !== 'function' && part.GATE && !part.GATE()) return undefined;
    return begins(this.LA(1), this.rule!.options[index]!) ? act() : undefined;
  }
  OPTION<T>(part: Part<T>): T | undefined {
    return this.option(0, part);
  }
  OPTION1<T>(part: Part<T>): T | undefined {
    return this.option(1, part);
  }
  OPTION2<T>(part: Part<T>): T | undefined {
    return this.option(2, part);
  }
  OPTION3<T>(part: Part<T>): T | undefined {
    return this.option(3, part);
  }
  OPTION4<T>(part: Part<T>): T | undefined {
    return this.option(4, part);
  }

  private choice<T>(index: number, alternatives: Alternatives<T>): T {
    const all = Array.isArray(alternatives) ? alternatives : alternatives.DEF;
    if (this.recorded) {
      const each = all.map(({ ALT }) => this.record(ALT));
      this.rule!.alternatives[index] = each;
      const kinds = new Set(each.flatMap((one) => [...one.kinds]));
      this.append({ kinds, skippable: each.some(({ skippable }) => skippable) });
      return {} as T;
    }
    const token = this.LA(1);
    const beginnings = this.rule!.alternatives[index]!;
    for (let i = 0; i < all.length; i++) {
      const { GATE, ALT } = all[i]!;
      if (GATE && !GATE()) continue;
      if (beginnings[i]!.skippable || begins(token, beginnings[i]!)) return ALT();
    }
    throw MISFIT;
  }
  OR<T>(alternatives: Alternatives<T>): T {
    return this.choice(0, alternatives);
  }
  OR1<T>(alternatives: Alternatives<T>): T {
    return this.choice(1, alternatives);
  }
  OR2<T>(alternatives: Alternatives<T>): T {
    return this.choice(2, alternatives);
  }

  /** `index`: of its own for each repetition of a rule. */
  private repeat(index: number, part: Part<void>, least: 0 | 1): void {
    const act = typeof part === 'function' ? part : part.DEF;
    if (this.recorded) {
      const own = this.record(act);
      this.rule!.repetitions[index] = own;
      this.append({ kinds: own.kinds, skippable: least === 0 || own.skippable });
      return;
    }
    const { rule } = this;
    const gate = typeof part === 'function' ? undefined : part.GATE;
    const beginning = rule!.repetitions[index]!;
    let times = 0;
    for (let before = -1; this.at > before && (!gate || gate()) && begins(this.LA(1), beginning); times++) {
      before = this.at;
      act();
    }
    if (times < least) throw MISFIT;
  }
  MANY(part: Part<void>): void {
    this.repeat(0, part, 0);
  }
  MANY1(part: Part<void>): void {
    this.repeat(1, part, 0);
  }
  AT_LEAST_ONE(part: AtLeastOne): void {
    this.repeat(2, part, 1);
  }

  // ---- places

  place = ({ startOffset, endOffset }: IToken): Span => ({
    file: this.file,
    start: startOffset,
    end: endOffset! + 1,
  });

  since = ({ startOffset }: IToken): Span => ({
    file: this.file,
    start: startOffset,
    end: this.LA(0).endOffset! + 1,
  });

  typed = ({ start, end }: Span): string => this.text.slice(start, end);

  report = (diagnostic: Diagnostic): void => {
    if (!this.recorded) this.problems.push(diagnostic);
  };
}
