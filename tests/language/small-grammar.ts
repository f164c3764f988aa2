import type { Rule } from '../../src/language/grammar-rule.js';
import { tokenize } from '../../src/language/lexer.js';
import { RuleReader } from '../../src/language/rule-reader.js';
import type { ParsingDsl } from '../../src/language/shared-rules.js';

/** A grammar of a few rules; `rules` gives the one that reads texts. */
export function smallGrammar(rules: (dsl: ParsingDsl) => Rule<unknown>) {
  const reader = new RuleReader();
  const entry = {
    word: '',
    rule: '',
    example: '',
    defines: false,
    add: (dsl: ParsingDsl) => rules(dsl) as Rule<never>,
  };
  const rule = reader.ruleOf(entry);
  return {
    rule,
    /** Without those that every grammar has. */
    rules: [...reader.rules.values()].slice(SHARED),
    /** What is read of a text, or where it does not fit. */
    read: (text: string) => {
      const read = reader.read(entry, tokensOf(text), { file: 'a.cut', text });
      return 'statement' in read ? (read.statement as unknown) : read;
    },
  };
}

const empty = new RuleReader();
empty.ruleOf({ word: '', rule: '', example: '', defines: false, add: () => null as never });
const SHARED = empty.rules.size;

export const tokensOf = (text: string) => tokenize(text, 0, text.length);
