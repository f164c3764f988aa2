/** A rule of the grammar as data: what it is made of, and what its parts may begin with. */

import { isKind, type Token, type TokenType } from './tokens.js';

export type Piece =
  | { readonly kind: 'token'; readonly type: TokenType }
  | { readonly kind: 'rule'; readonly rule: Rule<unknown> }
  /** The first of them that may begin with the token that comes next. */
  | { readonly kind: 'choice'; readonly ways: readonly Production[] }
  /** May be left out; any number of times, none too; once or more. */
  | { readonly kind: 'optional' | 'many' | 'some'; readonly part: Production };

interface Beginning {
  readonly kinds: ReadonlySet<TokenType>;
  /** The production may be nothing at all. */
  readonly skippable: boolean;
}

/** Pieces that stand one behind the other: a rule, a way of a choice, a part that may be left out or comes again. */
export class Production {
  private known: Beginning | null = null;

  /** `gated`: more is asked than the next token before it is read. */
  constructor(
    readonly pieces: readonly Piece[],
    readonly gated: boolean,
  ) {}

  /** Worked out when it is first asked for: a cut meets few of them. */
  get beginning(): Beginning {
    this.known ??= beginningOf(this.pieces);
    return this.known;
  }

  mayBeginWith(token: Token): boolean {
    const { kinds, skippable } = this.beginning;
    if (skippable || kinds.has(token.type)) return true;
    for (const category of token.type.categories) if (kinds.has(category)) return true;
    return false;
  }
}

function beginningOf(pieces: readonly Piece[]): Beginning {
  const kinds = new Set<TokenType>();
  for (const piece of pieces) {
    if (piece.kind === 'token') {
      kinds.add(piece.type);
      return { kinds, skippable: false };
    }
    const parts =
      piece.kind === 'rule' ? [piece.rule.production] : piece.kind === 'choice' ? piece.ways : [piece.part];
    for (const { beginning } of parts) for (const kind of beginning.kinds) kinds.add(kind);
    const skippable =
      piece.kind === 'optional' ||
      piece.kind === 'many' ||
      parts.some(({ beginning }) => beginning.skippable);
    if (!skippable) return { kinds, skippable };
  }
  return { kinds, skippable: true };
}

/** Only to be called through `SUBRULE`. */
export class Rule<T> {
  private recorded: Production | null = null;

  constructor(
    readonly name: string,
    readonly body: () => T,
    private readonly record: (body: () => unknown) => Production,
  ) {}

  get production(): Production {
    this.recorded ??= this.record(this.body);
    return this.recorded;
  }
}

// ---- what a statement may hold, and what may come next in one

/** The words of the language that a rule asks for, itself or through others: first its own. */
export function wordsOf(rule: Rule<unknown>): ReadonlySet<string> {
  const words = new Set<string>();
  const seen = new Set<Rule<unknown>>();
  const visit = (one: Rule<unknown>): void => {
    if (seen.has(one)) return;
    seen.add(one);
    const called: Rule<unknown>[] = [];
    collect(one.production);
    for (const each of called) visit(each);

    function collect({ pieces }: Production): void {
      for (const piece of pieces) {
        if (piece.kind === 'token' && piece.type.name.startsWith("'")) words.add(piece.type.text!);
        else if (piece.kind === 'rule') called.push(piece.rule);
        else if (piece.kind === 'choice') for (const way of piece.ways) collect(way);
        else if (piece.kind !== 'token') collect(piece.part);
      }
    }
  };
  visit(rule);
  return words;
}

/** A kind of token that may come next, with the names of the rules that it would be read by, outermost first. */
export interface NextToken {
  readonly kind: string;
  readonly rules: readonly string[];
}

/** What is left to be read of a statement, piece by piece; `rules`: those that the piece stands in, outermost first. */
interface Rest {
  readonly piece: Piece;
  readonly rules: readonly string[];
  readonly next: Rest | null;
}

/** A kind of token that is wanted next, and what is left behind it. */
interface Wish extends Rest {
  readonly piece: Piece & { readonly kind: 'token' };
}

function before(next: Rest | null, { pieces }: Production, rules: readonly string[]): Rest | null {
  return pieces.reduceRight<Rest | null>((rest, piece) => ({ piece, rules, next: rest }), next);
}

/** Every kind of token that may follow; [] where the tokens do not fit the rule. Where a gate decides, both ways count. */
export function tokensAfter({ name, production }: Rule<unknown>, tokens: readonly Token[]): NextToken[] {
  let wishes = wishesOf(before(null, production, [name]));
  for (const token of tokens) {
    // The reader takes the first that fits and does not go back.
    const taken = wishes.flatMap((group) => group.find(({ piece }) => isKind(token, piece.type)) ?? []);
    wishes = taken.flatMap(({ next }) => wishesOf(next));
  }
  const found = new Map<string, NextToken>();
  for (const { piece, rules } of wishes.flat())
    found.set(`${piece.type.name} ${rules.join(' ')}`, { kind: piece.type.name, rules });
  return [...found.values()];
}

/** What may come next, in groups: what stands behind a gate is one of its own, since the token alone does not decide. */
function wishesOf(left: Rest | null): Wish[][] {
  const first: Wish[] = [];
  const groups = [first];
  const look = (rest: Rest | null, group: Wish[]): void => {
    if (!rest) return;
    const { piece, rules, next } = rest;
    const enter = (part: Production, behind: Rest | null): void => {
      const own = part.gated ? [] : group;
      if (part.gated) groups.push(own);
      look(before(behind, part, rules), own);
    };
    switch (piece.kind) {
      case 'token':
        group.push({ piece, rules, next });
        break;
      case 'rule':
        look(before(next, piece.rule.production, [...rules, piece.rule.name]), group);
        break;
      case 'choice':
        for (const way of piece.ways) enter(way, next);
        break;
      case 'optional':
        enter(piece.part, next);
        look(next, group);
        break;
      case 'many':
        enter(piece.part, rest);
        look(next, group);
        break;
      case 'some':
        enter(piece.part, { ...rest, piece: { ...piece, kind: 'many' } });
        break;
    }
  };
  look(left, first);
  return groups;
}
