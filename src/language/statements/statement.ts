import type { IToken, TokenType } from 'chevrotain';
import type { Kit, Rule } from '../kit.js';
import type { Shared } from '../shared.js';
import { word } from '../tokens.js';
import type { Statement } from '../tree.js';

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

/** A word's statement. `read` gets the first word's token and gives what is particular to the kind. */
export function statement(
  first: string,
  example: string,
  read: (kit: Kit, shared: Shared) => () => object & { kind: Statement['kind'] },
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
      const rest = read(kit, shared);
      return kit.RULE(rule, () => {
        const token: IToken = kit.CONSUME(kind);
        const parts = rest();
        return { ...parts, word: kit.place(token), span: kit.since(token) } as Statement;
      });
    },
  };
}
