/** The grammar, put together from the table of statements, and the reading of one statement. */

import {
  EmbeddedActionsParser,
  EOF,
  type IParserErrorMessageProvider,
  type IRecognitionException,
  type IToken,
  LLkLookaheadStrategy,
  tokenLabel,
} from 'chevrotain';
import type { Diagnostic, Span } from './diagnostic.js';
import { type ParsingDsl, type Rule, sharedRules } from './shared-rules.js';
import { type StatementRule, statementTable } from './statements/statement-table.js';
import { vocabulary } from './tokens.js';
import type { Statement } from './tree.js';

/**
 * The messages of the parser library are only what was wanted: keys of the table of terms, signs and words in backquotes, with
 * blanks between. Nothing wanted: the statement was complete.
 */
const wanted: IParserErrorMessageProvider = {
  buildMismatchTokenMessage: ({ expected }) => (expected === EOF ? '' : tokenLabel(expected)),
  buildNotAllInputParsedMessage: () => '',
  buildNoViableAltMessage: ({ customUserDescription, expectedPathsPerAlt }) =>
    customUserDescription ?? firstKinds(expectedPathsPerAlt.flat()),
  buildEarlyExitMessage: ({ customUserDescription, expectedIterationPaths }) =>
    customUserDescription ?? firstKinds(expectedIterationPaths),
};

function firstKinds(paths: readonly (readonly Parameters<typeof tokenLabel>[0][])[]): string {
  const labels = new Set(paths.flatMap(([first]) => (first ? [tokenLabel(first)] : [])));
  return [...labels].join(' ');
}

export class Grammar extends EmbeddedActionsParser {
  readonly #rules = new Map<StatementRule, Rule<Statement>>();
  #file = '';
  #typed = '';
  #problems: Diagnostic[] = [];
  #makeQuick: () => unknown = () => {};

  /** `validate` looks for ambiguities and other faults of the grammar itself; slow, for the tests. */
  constructor({ validate = false } = {}) {
    super(vocabulary(), {
      errorMessageProvider: wanted,
      skipValidations: !validate,
      recoveryEnabled: false,
      maxLookahead: 1,
      lookaheadStrategy: new LateLookahead({ maxLookahead: 1 }),
    });
    const place = (token: IToken): Span => ({
      file: this.#file,
      start: token.startOffset,
      end: token.endOffset! + 1,
    });
    const dsl = Object.assign(this as unknown as ParsingDsl, {
      place,
      since: (first: IToken): Span => ({ ...place(first), end: this.LA(0).endOffset! + 1 }),
      typed: (span: Span) => this.#typed.slice(span.start, span.end),
      report: (diagnostic: Diagnostic) => void this.#problems.push(diagnostic),
    });
    const shared = sharedRules(dsl);
    for (const entry of statementTable) this.#rules.set(entry, entry.add(dsl, shared));
    this.performSelfAnalysis();
    this.#makeQuick();
  }

  /**
   * The library takes each step of its set-up through this. It has V8 make the parser's properties quick to reach first, then takes 90 of
   * them away one by one, after each of which V8 makes the rest quick anew, half of the time of the set-up: so that step comes last.
   */
  TRACE_INIT<Result>(step: string, take: () => Result): Result | undefined {
    if (step !== 'toFastProps') return take();
    this.#makeQuick = take;
    return undefined;
  }

  /** Reads one statement's tokens; the error is the first place where they do not fit. */
  read(
    entry: StatementRule,
    tokens: IToken[],
    source: { file: string; text: string },
  ): { statement: Statement | null; error: IRecognitionException | null; problems: readonly Diagnostic[] } {
    this.#file = source.file;
    this.#typed = source.text;
    this.#problems = [];
    this.input = tokens;
    const statement = this.#rules.get(entry)!.call(this);
    const error = this.errors[0] ?? null;
    return { statement: error ? null : statement, error, problems: this.#problems };
  }
}

let grammar: Grammar | null = null;

/** The one grammar that all statements are read with; made at its first use. */
export function theGrammar(): Grammar {
  grammar ??= new Grammar();
  return grammar;
}

type Strategy = InstanceType<typeof LLkLookaheadStrategy>;
type Ways = Parameters<Strategy['buildLookaheadForAlternation']>[0];
type Part = Parameters<Strategy['buildLookaheadForOptional']>[0];

/** The parser library's own way of looking ahead, each choice worked out when it is first met: a cut meets few of them. */
export class LateLookahead extends LLkLookaheadStrategy {
  override buildLookaheadForAlternation(ways: Ways) {
    return late(() => super.buildLookaheadForAlternation(ways));
  }

  override buildLookaheadForOptional(part: Part) {
    return late(() => super.buildLookaheadForOptional(part));
  }
}

function late<This, Args extends unknown[], Result>(
  make: () => (this: This, ...args: Args) => Result,
): (this: This, ...args: Args) => Result {
  let made: ((this: This, ...args: Args) => Result) | undefined;
  return function (...args) {
    made ??= make();
    return made.apply(this, args);
  };
}
