/** What a rule of the grammar may use: the parser library's words, open to the modules that hold the statements. */

import type { IToken, TokenType } from 'chevrotain';
import type { Expected } from './catalogue/message-terms.js';
import type { Report, Span } from './diagnostic.js';

/** What a message says was wanted. */
interface Wanting {
  readonly ERR_MSG?: Expected;
}

interface Alternative<T> {
  readonly ALT: () => T;
  readonly GATE?: () => boolean;
}
type Alternatives<T> = Alternative<T>[] | ({ readonly DEF: Alternative<T>[] } & Wanting);
type Part<T> = (() => T) | { readonly DEF: () => T; readonly GATE?: () => boolean };
type AtLeastOne = { readonly DEF: () => void } & Wanting;

/** A rule of the grammar; only to be called through `SUBRULE`. */
export interface Rule<T> {
  (): T;
  readonly ruleName: string;
}

type Consume = (kind: TokenType, options?: Wanting) => IToken;
type Subrule = <T>(rule: Rule<T>) => T;
type Option = <T>(part: Part<T>) => T | undefined;

/**
 * The numbers only tell apart several uses of one kind in one rule. Rules run once while the grammar is recorded, with empty
 * tokens and results: what they build must come from tokens, or stand in an ACTION.
 */
export interface ParsingDsl {
  RULE<T>(name: string, body: () => T): Rule<T>;
  ACTION<T>(body: () => T): T;
  LA(howMuch: number): IToken;
  readonly CONSUME: Consume;
  readonly CONSUME1: Consume;
  readonly CONSUME2: Consume;
  readonly CONSUME3: Consume;
  readonly CONSUME4: Consume;
  readonly SUBRULE: Subrule;
  readonly SUBRULE1: Subrule;
  readonly SUBRULE2: Subrule;
  readonly SUBRULE3: Subrule;
  readonly OPTION: Option;
  readonly OPTION1: Option;
  readonly OPTION2: Option;
  readonly OPTION3: Option;
  readonly OPTION4: Option;
  OR<T>(alternatives: Alternatives<T>): T;
  OR1<T>(alternatives: Alternatives<T>): T;
  OR2<T>(alternatives: Alternatives<T>): T;
  MANY(part: Part<void>): void;
  AT_LEAST_ONE(part: AtLeastOne): void;

  /** The place of a token. */
  place(token: IToken): Span;
  /** From a token to the last one read. */
  since(first: IToken): Span;
  /** What was typed, before folding. */
  typed(span: Span): string;
  /** For faults that leave a statement readable. */
  readonly report: Report;
}

/** Whether a token stands straight after another, with nothing between. */
export function touches(before: IToken, after: IToken): boolean {
  return before.endOffset! + 1 === after.startOffset;
}
