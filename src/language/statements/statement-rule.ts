import type { Span } from '../diagnostic.js';
import type { Rule } from '../grammar-rule.js';
import { reportRetired } from '../retired-words.js';
import type { ParsingDsl, SharedRules } from '../shared-rules.js';
import { type Token, type TokenType, word } from '../tokens.js';
import type { Statement, StatementOf } from '../tree.js';

/** One entry of the table of statements: a word of the language and the rule that reads what starts with it. */
export interface StatementRule {
  /** The first word; '' for timelines, which start with their level's name. */
  readonly word: string;
  /** The rule's name in the grammar. */
  readonly rule: string;
  /** One statement as it should look. */
  readonly example: string;
  /** Whether its second word is a name that others may refer to. */
  readonly defines: boolean;
  /** Adds the rule to the grammar. */
  readonly add: (dsl: ParsingDsl, shared: SharedRules) => Rule<Statement>;
}

/** Where a statement and its first word stand: the fields that every statement has. */
interface Places {
  readonly word: Span;
  readonly span: Span;
}

/** What is particular to a kind of statement: its node without the places. */
export type Particulars<K extends Statement['kind'] = Statement['kind']> = K extends unknown
  ? Omit<StatementOf<K>, keyof Places | 'kind'> & { readonly kind: K }
  : never;

/** Asks that `P` has no field that its kind of node has not; the compiler itself lets those of a function's result pass. */
type NoOthers<P extends Particulars> = {
  readonly [Field in Exclude<keyof P, keyof Particulars<P['kind']>>]: never;
};

/**
 * A word's statement. `read` gets the first word's token and gives what is particular to the kind: exactly the fields of the node,
 * by its `kind`, or it does not compile.
 */
export function statement<P extends Particulars>(
  first: string,
  example: string,
  read: (dsl: ParsingDsl, shared: SharedRules) => () => P & NoOthers<P>,
  options: { defines?: boolean } = {},
): StatementRule {
  const kind: TokenType = word(first);
  const rule = `${first}Statement`;
  return {
    word: first,
    rule,
    example,
    defines: options.defines ?? false,
    add: (dsl, shared) => {
      const rest: () => P = read(dsl, shared);
      return dsl.RULE(rule, (): Statement => {
        const token: Token = dsl.CONSUME(kind);
        reportRetired(dsl, token);
        const parts = rest();
        return { ...parts, word: dsl.place(token), span: dsl.since(token) };
      });
    },
  };
}

// ---- names of drawings, as typed in timelines and `cels` lines

/** A key's name; leading zeros do not count. */
export function keyName(image: string): string {
  return image.normalize('NFC').replace(/^0+(?=\d)/, '');
}

export interface InPassage {
  readonly key: string;
  readonly to: string | null;
  readonly index: number;
  readonly letter: string;
}

/** The name of an in-between: `1.2`, `1.1a`; with `from` typed before a `>`, as in `1>3.2`, it starts with the later key. */
export function betweenName(image: string, from: string | null = null): InPassage {
  const [, key = '', index = '', letter = ''] = /^(\d+(?:\p{L}\p{M}*)?)\.(\d+)([a-z]?)$/u.exec(image) ?? [];
  const named = keyName(key);
  return { key: from ?? named, to: from === null ? null : named, index: Number(index), letter };
}
