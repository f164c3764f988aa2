import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { theGrammar } from '../../src/language/grammar.js';
import { foldCharacters, splitStatements, tokenize } from '../../src/language/lexer.js';
import { RuleReader } from '../../src/language/rule-reader.js';
import { startsTimeline } from '../../src/language/statement-reader.js';
import { byWord, statementTable, timelineRule } from '../../src/language/statements/statement-table.js';

const reader = new RuleReader();

/** What both make of a statement; null where its first word is none of the language. */
function both(text: string): { own: unknown; library: unknown } | null {
  const tokens = tokenize(text, 0, text.length);
  const entry = startsTimeline(tokens, 0) ? timelineRule : byWord.get(tokens[0]?.image ?? '');
  if (!entry) return null;
  const source = { file: 'a.cut', text };
  const own = reader.read(entry, tokens, source);
  const { statement, problems } = theGrammar().read(entry, tokens, source);
  return { own, library: statement && { statement, problems } };
}

/** Statements of the language: each rule's example, and those of the examples' cuts. */
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

describe('the reader', () => {
  test.each(statementTable.map(({ example }) => example))(
    'reads what the parser library reads: %s',
    (example) => {
      const { own, library } = both(example)!;
      expect(own).not.toBeNull();
      expect(own).toEqual(library);
    },
  );

  test('reads the cuts of the examples as the parser library does', () => {
    for (const text of statements) {
      const read = both(text);
      expect(read?.own).toEqual(read?.library);
    }
  });

  test('takes and refuses what the parser library takes and refuses, whatever is typed', () => {
    const words = [
      ...new Set(statements.flatMap((text) => tokenize(text, 0, text.length).map(({ image }) => image))),
    ];
    const change = fc.record({
      at: fc.nat(),
      how: fc.constantFrom('without', 'twice', 'other', 'more', 'end'),
      word: fc.constantFrom(...words),
    });
    let taken = 0;
    let refused = 0;
    fc.assert(
      fc.property(fc.constantFrom(...statements), fc.array(change, { maxLength: 3 }), (text, changes) => {
        const typed = tokenize(text, 0, text.length).map(({ image }) => image);
        for (const { at, how, word } of changes) {
          const place = 1 + (at % typed.length);
          if (how === 'without') typed.splice(place, 1);
          else if (how === 'twice') typed.splice(place, 0, typed[place] ?? word);
          else if (how === 'other') typed.splice(place, 1, word);
          else if (how === 'more') typed.splice(place, 0, word);
          else typed.length = place;
        }
        const read = both(typed.join(' '));
        expect(read?.own).toEqual(read?.library);
        if (read?.own) taken++;
        else refused++;
      }),
      { numRuns: 3000 },
    );
    expect(Math.min(taken, refused)).toBeGreaterThan(300);
  });

  test('reads on after a statement that does not fit', () => {
    expect(both('time')!.own).toBeNull();
    expect(both('time 5+0')!.own).toMatchObject({ statement: { kind: 'time' }, problems: [] });
  });
});
