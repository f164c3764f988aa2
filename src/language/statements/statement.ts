import type { IToken, TokenType } from 'chevrotain';
import type { Span } from '../diagnostic.js';
import type { Kit, Rule } from '../kit.js';
import type { Shared } from '../shared.js';
import { word } from '../tokens.js';
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
  readonly add: (kit: Kit, shared: Shared) => Rule<Statement>;
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
  read: (kit: Kit, shared: Shared) => () => P & NoOthers<P>,
  options: { defines?: boolean } = {},
): StatementRule {
  const kind: TokenType = word(first);
  const rule = `${first}Statement`;
  return {
    word: first,
    rule,
    example,
    defines: options.defines ?? false,
    add: (kit, shared) => {
      const rest: () => P = read(kit, shared);
      return kit.RULE(rule, (): Statement => {
        const token: IToken = kit.CONSUME(kind);
        const parts = rest();
        return { ...parts, word: kit.place(token), span: kit.since(token) };
      });
    },
  };
}
