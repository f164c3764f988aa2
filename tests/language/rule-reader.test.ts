import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Wanted } from '../../src/language/catalogue/message-terms.js';
import { tokensAfter } from '../../src/language/grammar-rule.js';
import { foldCharacters, splitStatements } from '../../src/language/lexer.js';
import { RuleReader } from '../../src/language/rule-reader.js';
import { startsTimeline } from '../../src/language/statement-reader.js';
import { byWord, statementTable, timelineRule } from '../../src/language/statements/statement-table.js';
import { Colon, Comma, Dash, Integer, Name, Percent } from '../../src/language/tokens.js';
import { smallGrammar, tokensOf } from './small-grammar.js';

const reader = new RuleReader();

function entryOf(text: string) {
  const tokens = tokensOf(text);
  return startsTimeline(tokens, 0) ? timelineRule : (byWord.get(tokens[0]?.image ?? '') ?? null);
}

const read = (text: string) => reader.read(entryOf(text)!, tokensOf(text), { file: 'a.cut', text });

describe('the calls of a rule', () => {
  test('give tokens and what rules made of them', () => {
    const { read } = smallGrammar((dsl) => {
      const count = dsl.RULE('count', () => Number(dsl.CONSUME(Integer).image));
      return dsl.RULE('sum', () => {
        let sum = dsl.SUBRULE(count);
        dsl.MANY(() => {
          dsl.CONSUME(Comma);
          sum += dsl.SUBRULE(count);
        });
        return dsl.ACTION(() => sum);
      });
    });
    expect(read('3')).toBe(3);
    expect(read('3, 4, 5')).toBe(12);
    expect(read('3, 4 5')).toEqual({ at: 3, wanted: [] });
    expect(read('3, , 5')).toEqual({ at: 2, wanted: ['whole'] });
  });

  test('know where tokens stand, and what was typed there', () => {
    const { read } = smallGrammar((dsl) =>
      dsl.RULE('places', () => {
        const first = dsl.CONSUME(Name);
        dsl.CONSUME(Comma);
        return [dsl.place(first), dsl.since(first), dsl.typed(dsl.since(first))];
      }),
    );
    expect(read('  AB ,')).toEqual([
      { file: 'a.cut', start: 2, end: 4 },
      { file: 'a.cut', start: 2, end: 6 },
      'AB ,',
    ]);
  });

  test('take the first way that fits and that its gate lets through', () => {
    const { read } = smallGrammar((dsl) =>
      dsl.RULE('ways', () => {
        const minus = dsl.OPTION({ GATE: () => dsl.LA(2).image !== '7', DEF: () => dsl.CONSUME(Dash) });
        return dsl.OR<string>({
          DEF: [
            { GATE: () => minus !== undefined, ALT: () => `-${dsl.CONSUME(Integer).image}` },
            { ALT: () => dsl.CONSUME(Integer).image },
            { GATE: () => minus !== undefined, ALT: () => dsl.CONSUME(Name).image },
          ],
          ERR_MSG: 'angle',
        });
      }),
    );
    expect([read('5'), read('-5'), read('-A')]).toEqual(['5', '-5', 'A']);
    expect(read('A')).toEqual({ at: 0, wanted: ['angle'] });
    expect(read('- 7')).toEqual({ at: 0, wanted: ['angle'] });
  });

  test('say what was wanted in their own words, or else in those of the tokens', () => {
    const ways = (ERR_MSG?: 'side') =>
      smallGrammar((dsl) =>
        dsl.RULE('ways', () => {
          dsl.CONSUME(Dash);
          dsl.CONSUME(Colon, { ERR_MSG: 'chart-end' });
          dsl.AT_LEAST_ONE({ DEF: () => void dsl.CONSUME(Comma), ...(ERR_MSG && { ERR_MSG }) });
          const alternatives = [
            { ALT: () => dsl.CONSUME(Name) },
            {
              ALT: () => {
                dsl.OPTION(() => dsl.CONSUME(Comma));
                return dsl.CONSUME(Percent);
              },
            },
          ];
          dsl.OR(ERR_MSG ? { DEF: alternatives, ERR_MSG } : alternatives);
        }),
      ).read;
    expect(ways()('3')).toEqual({ at: 0, wanted: ['`-`'] });
    expect(ways()('- 3')).toEqual({ at: 1, wanted: ['chart-end'] });
    expect(ways()('- : 3')).toEqual({ at: 2, wanted: ['`,`'] });
    expect(ways()('- : , 3')).toEqual({ at: 3, wanted: ['name', '`,`', 'share'] });
    expect(ways('side')('- : 3')).toEqual({ at: 2, wanted: ['side'] });
    expect(ways('side')('- : , 3')).toEqual({ at: 3, wanted: ['side'] });
  });

  test('stop to repeat where nothing is read any more', () => {
    const { read } = smallGrammar((dsl) =>
      dsl.RULE('idle', () => {
        dsl.MANY(() => void dsl.OPTION(() => dsl.CONSUME(Comma)));
        return dsl.CONSUME(Dash).image;
      }),
    );
    expect(read(', , -')).toBe('-');
  });

  test('are the same in each run, or the rule is faulty', () => {
    let runs = 0;
    const { read } = smallGrammar((dsl) =>
      dsl.RULE('fickle', () => {
        if (runs++ > 0) dsl.OPTION(() => dsl.CONSUME(Dash));
        return dsl.CONSUME(Integer);
      }),
    );
    expect(() => read('3')).toThrow('A rule makes other calls than when it was recorded.');
  });

  test('give each rule a name of its own', () => {
    const two = () =>
      smallGrammar((dsl) => {
        dsl.RULE('twin', () => null);
        return dsl.RULE('twin', () => null);
      });
    expect(two).toThrow('There are two rules called twin.');
  });
});

test.each(statementTable)('reads $example', ({ example, word }) => {
  const found = read(example);
  if (!('statement' in found)) throw new Error(`it wanted ${found.wanted} at ${found.at}`);
  const { statement, problems } = found;
  expect(problems).toEqual([]);
  expect(statement.span).toEqual({ file: 'a.cut', start: 0, end: example.length });
  expect(statement.kind).toBe(word === '' ? 'timeline' : word);
});

describe('a statement that does not fit', () => {
  test.each<[string, string, Wanted[]]>([
    // After its first tokens, before the rest: what was wanted between.
    ['time', '', ['time']],
    ['time 5+0', '6', []],
    ['time', '60%', ['time']],
    ['cut', '', ['cut-number']],
    ['memo', 'Wind', ['text']],
    ['phrase walk', '1', ['phrase-equals']],
    ['phrase walk =', '', ['drawings']],
    ['A: 1 on', 'two', ['frame-count']],
    ['A:', ')', ['drawings']],
    ['A: (1-2', '', ['drawing-or-group-end']],
    ['A: (1-2)*', 'x', ['repeat-count']],
    ['A: 1{', ':8', ['chart']],
    ['A: 1{1/2', ':8', ['chart-end']],
    ['A: 1 >', '2', ['between']],
    ['stack', '3', ['level-names']],
    ['cels A', '', ['drawing-names']],
    ['level A reuse 8', 'B', ['cut-level']],
    ['level A at 3', '4', ['place-comma']],
    ['mouth C "Nao"', 'a', ['drawing-name']],
    ['voice "Nao" 1', '"Wait!"', ['range-dots']],
    ['voice "Nao" 1..9', '', ['quoted-words']],
    ['track "a.wav" from', '3', ['recording-time']],
    ['accept', '"because"', ['message-code']],
    ['scene', ',', ['scene-number']],
    ['field B', '40,-12', ['field-size']],
    ['field B 60% at', 'C', ['field-place']],
    ['fade', '1..24', ['in-or-out']],
    ['wipe in', '1..24', ['side']],
    ['expose B', '1..24', ['share']],
    ['pan', '3@1 > B@5', ['name']],
    ['pan A', '> B@5', ['on-frame']],
    ['pan A@1', 'B@5', ['leg-arrow']],
    ['pan A@1 > B', '', ['on-frame']],
    ['pan A@1 > B', 'steps 1 2', ['direction']],
    ['pan A@1 > B right', '@5', ['`steps`']],
    ['truck', '60%@1 > 80%@9', ['field-on-frame']],
    ['truck level A', '@1', ['scale-on-frame']],
    ['truck level A ア', '100%', ['marked-number']],
    ['turn', 'A 0@1 > 360@2+0', ['turning-levels']],
    ['turn level A 0@1 >', '', ['name', '`-`', 'whole', 'decimal', 'degrees']],
    ['truck level A 100%@1 >', '', ['name', 'share']],
    ['slide A', '@1', ['marked-place']],
    ['slide A (1', '2)@3', ['marked-place-comma']],
    ['slide A (1,2', '@3', ['`)`']],
    ['pull BG down', 'A', ['way']],
    ['sway A 5mm 1..4+0', '', ['sway-length']],
    ['shake', 'A', ['short-length']],
    ['pan A@1 > B@9 ease', 'in', ['whole']],
    ['pan A@1 > B@9 steps', '', ['steps']],
    ['pan A@1 > B@9 about 0,', 'A', ['millimetres']],
  ])('after `%s` before `%s` wanted %j', (begun, rest, wanted) => {
    expect(read(`${begun} ${rest}`)).toEqual({ at: tokensOf(begun).length, wanted });
  });

  test('leaves nothing behind for the next one', () => {
    const codes = (text: string) => {
      const found = read(text);
      return 'statement' in found ? found.problems.map(({ code }) => code) : found;
    };
    expect(codes('level A free free')).toEqual(['part-twice']);
    expect(codes('level A free free 3')).toEqual({ at: 4, wanted: [] });
    expect(codes('level A 3')).toEqual({ at: 2, wanted: [] });
    expect(codes('level A free')).toEqual([]);
  });
});

describe('statements of the examples', () => {
  const statements = [
    ...statementTable.map(({ example }) => example),
    ...['saltmarsh/cuts', 'voices'].flatMap((name) => {
      const folder = join('examples', name);
      return readdirSync(folder)
        .filter((file) => file.endsWith('.cut'))
        .flatMap((file) => {
          const { text } = foldCharacters(readFileSync(join(folder, file), 'utf8'));
          return splitStatements(text).statements.map(({ start, end }) => text.slice(start, end));
        });
    }),
  ];

  test('are read to their ends, each token as one that may come next', () => {
    for (const text of statements) {
      const tokens = tokensOf(text);
      expect(read(text), text).toMatchObject({ statement: { span: { end: text.length } } });
      if (tokens.length > 40) continue;
      const rule = reader.ruleOf(entryOf(text)!);
      for (const [at, { type }] of tokens.entries()) {
        const next = new Set(tokensAfter(rule, tokens.slice(0, at)).map(({ kind }) => kind));
        const fits = [type, ...type.categories].some(({ name }) => next.has(name));
        expect(fits, `${text} at ${at}`).toBe(true);
      }
    }
  });

  test('that are changed fit, or do not fit where nothing that was wanted stands', () => {
    const words = [...new Set(statements.flatMap((text) => tokensOf(text).map(({ image }) => image)))];
    const change = fc.record({
      at: fc.nat(),
      how: fc.constantFrom('without', 'twice', 'other', 'more', 'end'),
      word: fc.constantFrom(...words),
    });
    let fits = 0;
    let misfits = 0;
    fc.assert(
      fc.property(fc.constantFrom(...statements), fc.array(change, { maxLength: 3 }), (text, changes) => {
        const typed = tokensOf(text).map(({ image }) => image);
        for (const { at, how, word } of changes) {
          const place = 1 + (at % typed.length);
          if (how === 'without') typed.splice(place, 1);
          else if (how === 'twice') typed.splice(place, 0, typed[place] ?? word);
          else if (how === 'other') typed.splice(place, 1, word);
          else if (how === 'more') typed.splice(place, 0, word);
          else typed.length = place;
        }
        const changed = typed.join(' ');
        if (!entryOf(changed)) return;
        const found = read(changed);
        if ('statement' in found) {
          fits++;
          expect(found.statement.span.end).toBe(changed.length);
          return;
        }
        misfits++;
        const tokens = tokensOf(changed);
        expect(found.at).toBeLessThanOrEqual(tokens.length);
        // Read only so far, the statement fits, or wants the same where it now ends too soon.
        const before = reader.read(entryOf(changed)!, tokens.slice(0, found.at), { file: '', text: changed });
        if ('at' in before) expect(before.at).toBe(found.at);
        else expect(found.wanted).toEqual([]);
        expect(found.wanted).not.toContain(tokens[found.at]?.type.label);
      }),
      { numRuns: 2000 },
    );
    expect(Math.min(fits, misfits)).toBeGreaterThan(200);
  });
});
