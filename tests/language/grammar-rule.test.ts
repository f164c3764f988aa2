import { describe, expect, test } from 'vitest';
import { type Production, type Rule, tokensAfter, wordsOf } from '../../src/language/grammar-rule.js';
import { RuleReader } from '../../src/language/rule-reader.js';
import type { ParsingDsl } from '../../src/language/shared-rules.js';
import { statementTable } from '../../src/language/statements/statement-table.js';
import { Colon, Comma, Dash, Integer, Key, Name, word } from '../../src/language/tokens.js';
import { ebnf } from '../syntax-page.js';
import { conflictsOf } from './grammar-conflicts.js';
import { smallGrammar, tokensOf } from './small-grammar.js';

const nameRule = (dsl: ParsingDsl) => dsl.RULE('aName', () => dsl.CONSUME(Name));
const rowRule = (dsl: ParsingDsl) => {
  const name = nameRule(dsl);
  return dsl.RULE('row', () => {
    dsl.OPTION(() => dsl.CONSUME(Dash));
    dsl.MANY(() => {
      dsl.SUBRULE(name);
      dsl.CONSUME(Comma);
    });
    dsl.OR([{ ALT: () => dsl.CONSUME(Integer) }, { ALT: () => dsl.CONSUME(Colon) }]);
    dsl.AT_LEAST_ONE({ DEF: () => void dsl.CONSUME(word('level')) });
  });
};

describe('a rule', () => {
  test('is recorded as it is written', () => {
    expect(ebnf(smallGrammar(rowRule).rule.production)).toBe(
      "'-'? ( aName ',' )* ( Integer | ':' ) 'level'+",
    );
  });

  test('knows where more is asked than the next token', () => {
    const { rule } = smallGrammar((dsl) =>
      dsl.RULE('gates', () => {
        dsl.OPTION({ GATE: () => true, DEF: () => dsl.CONSUME(Dash) });
        dsl.MANY({ GATE: () => true, DEF: () => void dsl.CONSUME(Comma) });
        dsl.OR([{ GATE: () => true, ALT: () => dsl.CONSUME(Name) }, { ALT: () => dsl.CONSUME(Name) }]);
        dsl.OPTION(() => dsl.CONSUME(Colon));
      }),
    );
    const parts = rule.production.pieces.flatMap((piece): Production[] =>
      piece.kind === 'choice' ? [...piece.ways] : 'part' in piece ? [piece.part] : [],
    );
    expect(parts.map(({ gated }) => gated)).toEqual([true, true, true, false, false]);
  });

  test('may call one that calls it', () => {
    const { read } = smallGrammar((dsl) => {
      const outer = dsl.RULE('outer', (): number => {
        dsl.CONSUME(Dash);
        return 1 + (dsl.OPTION(() => dsl.SUBRULE(inner)) ?? 0);
      });
      const inner = dsl.RULE('inner', (): number => {
        dsl.CONSUME(Comma);
        return dsl.SUBRULE(outer);
      });
      return outer;
    });
    expect(read('- , - , -')).toBe(3);
  });
});

describe('what a rule may begin with', () => {
  const kinds = ({ beginning }: Production) => [...beginning.kinds].map(({ name }) => name);

  test('is all up to the first piece that must be there', () => {
    const { rule } = smallGrammar(rowRule);
    expect(kinds(rule.production)).toEqual(['Dash', 'Name', 'Integer', 'Colon']);
    expect(rule.production.beginning.skippable).toBe(false);
  });

  test('is everything where it may be nothing at all', () => {
    const { rule } = smallGrammar((dsl) => dsl.RULE('nothing', () => dsl.OPTION(() => dsl.CONSUME(Dash))));
    expect(rule.production.beginning.skippable).toBe(true);
    expect(rule.production.mayBeginWith(tokensOf('3')[0]!)).toBe(true);
  });

  test('goes on behind a choice one way of which is nothing', () => {
    const { rule } = smallGrammar((dsl) =>
      dsl.RULE('perhaps', () => {
        dsl.OR<unknown>([
          { ALT: () => dsl.CONSUME(Comma) },
          { ALT: () => dsl.OPTION(() => dsl.CONSUME(Colon)) },
        ]);
        dsl.CONSUME(Dash);
      }),
    );
    expect(kinds(rule.production)).toEqual(['Comma', 'Colon', 'Dash']);
  });

  test('counts what a token may stand for as well', () => {
    const { rule } = smallGrammar((dsl) => dsl.RULE('key', () => dsl.CONSUME(Key)));
    const fits = (text: string) => rule.production.mayBeginWith(tokensOf(text)[0]!);
    expect(['3', '3a', '8F', 'A', '1.5'].map(fits)).toEqual([true, true, true, false, false]);
  });
});

test('the words of a rule are its own, then those of the rules that it calls', () => {
  const { rule } = smallGrammar((dsl) => {
    const inner: Rule<unknown> = dsl.RULE('inner', () => {
      dsl.CONSUME(word('free'));
      dsl.OPTION(() => dsl.SUBRULE(inner));
    });
    return dsl.RULE('outer', () => {
      dsl.SUBRULE(inner);
      dsl.OPTION(() => dsl.CONSUME(word('at')));
      dsl.OR([{ ALT: () => dsl.CONSUME(word('size')) }, { ALT: () => dsl.CONSUME(Comma) }]);
    });
  });
  expect([...wordsOf(rule)]).toEqual(['at', 'size', 'free']);
});

describe('what may come after tokens', () => {
  const { rule } = smallGrammar(rowRule);
  const comingAfter = (text: string) =>
    tokensAfter(rule, tokensOf(text)).map(({ kind, rules }) => `${rules.join(' ')}: ${kind}`);

  test('is told with the rules that read it', () => {
    expect(comingAfter('')).toEqual(['row: Dash', 'row aName: Name', 'row: Integer', 'row: Colon']);
    expect(comingAfter('A')).toEqual(['row: Comma']);
    expect(comingAfter('- A ,')).toEqual(['row aName: Name', 'row: Integer', 'row: Colon']);
  });

  test('is once more what has to be there at least once', () => {
    expect(comingAfter('3')).toEqual(["row: 'level'"]);
    expect(comingAfter('3 level')).toEqual(["row: 'level'"]);
  });

  test('is on both ways where a gate decides, on the first that fits where none does', () => {
    const kindsAfterA = (gate?: () => boolean) => {
      const { rule } = smallGrammar((dsl) =>
        dsl.RULE('passed', () => {
          const passing = () => {
            dsl.CONSUME(Name);
            dsl.CONSUME(Comma);
          };
          dsl.MANY(gate ? { GATE: gate, DEF: passing } : passing);
          dsl.CONSUME(Name);
          dsl.CONSUME(Colon);
        }),
      );
      return tokensAfter(rule, tokensOf('A')).map(({ kind }) => kind);
    };
    expect(kindsAfterA(() => true).sort()).toEqual(['Colon', 'Comma']);
    expect(kindsAfterA()).toEqual(['Comma']);
  });

  test('is nothing where they do not fit', () => {
    expect(comingAfter('A :')).toEqual([]);
  });
});

describe('one token of lookahead', () => {
  const conflicts = (body: (dsl: ParsingDsl) => unknown) =>
    conflictsOf(smallGrammar((dsl) => dsl.RULE('faulty', () => body(dsl))).rules);

  test('tells all ways of the language apart but one', () => {
    const grammar = new RuleReader();
    for (const entry of statementTable) grammar.ruleOf(entry);
    const rules = [...grammar.rules.values()];
    expect(rules.map(({ name }) => name)).toEqual(
      expect.arrayContaining(statementTable.map(({ rule }) => rule)),
    );
    expect(conflictsOf(rules)).toEqual([
      // The second length has a gate that asks whether there was a first.
      'keyItem: a part and what follows it begin with Colon',
    ]);
  });

  test('does not tell two ways apart that begin alike', () => {
    expect(
      conflicts((dsl) => dsl.OR([{ ALT: () => dsl.CONSUME(Key) }, { ALT: () => dsl.CONSUME(Integer) }])),
    ).toEqual(['faulty: two ways begin with Integer']);
  });

  test('does not tell a part that may be left out from what follows', () => {
    expect(
      conflicts((dsl) => {
        dsl.MANY(() => void dsl.CONSUME(Name));
        dsl.OPTION(() => dsl.CONSUME(Dash));
        dsl.CONSUME(word('level'));
      }),
    ).toEqual(["faulty: a part and what follows it begin with 'level'"]);
  });

  test('looks at what follows a rule where it is called', () => {
    const { rules } = smallGrammar((dsl) => {
      const tail = dsl.RULE('tail', () => dsl.OPTION(() => dsl.CONSUME(Comma)));
      return dsl.RULE('list', () =>
        dsl.AT_LEAST_ONE({
          DEF: () => {
            dsl.CONSUME(Comma);
            dsl.SUBRULE(tail);
          },
        }),
      );
    });
    expect(conflictsOf(rules)).toEqual(['tail: a part and what follows it begin with Comma']);
  });

  test('is not asked alone where there is a gate', () => {
    expect(
      conflicts((dsl) => {
        dsl.OPTION({ GATE: () => true, DEF: () => dsl.CONSUME(Name) });
        dsl.CONSUME(Name);
      }),
    ).toEqual([]);
  });

  test('leads nowhere where nothing at all may stand in a repetition, or before another way', () => {
    const nothing = (dsl: ParsingDsl) => () => void dsl.OPTION(() => dsl.CONSUME(Comma));
    expect(conflicts((dsl) => dsl.MANY(nothing(dsl)))).toContain(
      'faulty: what may be left out may be nothing itself',
    );
    expect(
      conflicts((dsl) => dsl.OR<unknown>([{ ALT: nothing(dsl) }, { ALT: () => dsl.CONSUME(Dash) }])),
    ).toEqual(['faulty: a way is never taken']);
  });

  test('leads nowhere where a rule begins with itself', () => {
    const { rules } = smallGrammar((dsl) => {
      const circle: ReturnType<typeof nameRule> = dsl.RULE('circle', () => {
        dsl.OPTION(() => dsl.CONSUME(Dash));
        return dsl.SUBRULE(circle);
      });
      return circle;
    });
    expect(conflictsOf(rules)).toEqual(['circle begins with itself']);
  });
});
