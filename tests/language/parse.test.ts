/** What holds for any text at all. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foldCharacters } from '../../src/language/lexer.js';
import { messageOf } from '../../src/language/message.js';
import { type CachedStatement, movedSpans, parse, ReadingCache } from '../../src/language/parse.js';
import { human } from '../../src/language/report/human-report.js';
import { withEdits } from '../../src/language/statement-reader.js';
import { statementTable } from '../../src/language/statements/statement-table.js';
import { readAll } from './read-text.js';

const piece = fc.constantFrom(
  ...statementTable.flatMap(({ word, example }) => [`${word} `, example, `\n${example}\n`]),
  ...[
    'A:',
    '1',
    '--',
    '=',
    '1.2',
    '1>3.2',
    '3a',
    'x',
    'on 2',
    '@5+0',
    '..',
    '(',
    ')',
    '*3',
    '<>',
    ':8',
    '{late}',
    '{1/2',
    '}',
  ],
  ...[
    '"text"',
    '"',
    '「',
    '」',
    '“',
    '#',
    '\n',
    '\n  ',
    '\t',
    '　',
    'ー',
    '１',
    '：',
    'size',
    '560x200mm',
    '-',
    ',',
    '.',
    '5 + 0',
  ],
  ...[
    '\ufeff',
    '\u0000',
    '\ud800',
    '\\',
    '𠮷',
    '\u0301',
    '12abc',
    '...',
    '60%',
    'hit-3',
    '8/C',
    '_',
    '\r',
    "8'",
  ],
);
const made = fc.array(piece, { maxLength: 30 }).map((parts) => parts.join(''));
const anyText = fc.oneof(made, fc.string({ unit: 'binary' }), fc.string({ unit: 'grapheme' }));

describe('any text', () => {
  test('is read without failing, each fault inside it, and can be printed', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const { diagnostics, tree } = parse('this.cut', text);
        for (const one of diagnostics) {
          const { span, fix } = one;
          expect(span.start).toBeGreaterThanOrEqual(0);
          expect(span.end).toBeGreaterThanOrEqual(span.start);
          expect(span.end).toBeLessThanOrEqual(text.length);
          // What is between backquotes was typed.
          expect(messageOf(one, 'en').replace(/`.*`/s, '')).not.toMatch(/token|expect|undefined|NaN|EOF/i);
          for (const edit of fix?.edits ?? []) expect(edit.span.end).toBeLessThanOrEqual(text.length);
        }
        for (const { span } of tree.statements) expect(text.length).toBeGreaterThanOrEqual(span.end);
        human(diagnostics, new Map([['this.cut', text]]), { colour: true, language: 'en' });
      }),
      { numRuns: 600 },
    );
  });

  test('gives one error a statement at most, and is wholly told of', () => {
    fc.assert(
      fc.property(made, (text) => {
        const { diagnostics, tree } = parse('this.cut', text);
        const lost = diagnostics.filter(
          ({ code }) => !/control-character|unknown-escape|part-twice|indented-start/.test(code),
        );
        expect(lost).toHaveLength(tree.broken.length);
      }),
      { numRuns: 400 },
    );
  });

  test('has its tokens in order, each at its place, and nothing but blanks and comments between', () => {
    fc.assert(
      fc.property(made, (raw) => {
        const text = raw.replace(/^\ufeff/, '');
        const folded = foldCharacters(text);
        const { tokens, diagnostics } = parse('this.cut', text);
        fc.pre(!diagnostics.some(({ code }) => code === 'indented-start'));
        const units = folded.text.split('');
        let last = 0;
        for (const { span } of tokens) {
          expect(span.start).toBeGreaterThanOrEqual(last);
          last = span.end;
          for (let at = span.start; at < span.end; at++) units[at] = ' ';
        }
        expect(units.join('').trim()).toBe('');
      }),
      { numRuns: 400 },
    );
  });

  test('is mended at the fault by every edit that is offered', () => {
    fc.assert(
      fc.property(made, (raw) => {
        const text = raw.replace(/^\ufeff/, '');
        const before = parse('this.cut', text).diagnostics;
        for (const { fix } of before) {
          if (!fix) continue;
          const edits = fix.edits.map((edit) => ({ ...edit.span, text: edit.text }));
          const mended = withEdits(text, edits);
          const after = parse('this.cut', mended).diagnostics;
          expect(after.length).toBeLessThanOrEqual(before.length);
          expect(mended).not.toBe(text);
        }
      }),
      { numRuns: 300 },
    );
  });
});

const read = (text: string, start = 0): CachedStatement => {
  const { tree, tokens } = readAll(text);
  const known = { statement: tree.statements[0]!, tokens: tokens.length, problems: [] };
  return { ...movedSpans(known, start), start };
};

test('a statement is found by what was typed, with every place moved to where it stands now', () => {
  const cache = new ReadingCache();
  cache.begin();
  cache.keep('A: 1--2', read('A: 1--2'));
  const found = cache.find('A: 1--2', 10)!;
  expect(found.start).toBe(10);
  expect(found.statement.span).toEqual({ file: 'this.cut', start: 10, end: 17 });
  expect(found.tokens).toBe(6);
});

test('one that stands where it stood is the same', () => {
  const cache = new ReadingCache();
  cache.begin();
  const known = read('cut 1', 4);
  cache.keep('cut 1', known);
  expect(cache.find('cut 1', 4)).toBe(known);
});

test('only what the text before held is known', () => {
  const cache = new ReadingCache();
  cache.begin();
  cache.keep('cut 1', read('cut 1'));
  cache.begin();
  expect(cache.find('time 5', 0)).toBeNull();
  cache.begin();
  expect(cache.find('cut 1', 0)).toBeNull();
});

test('what is found again is kept for the next text', () => {
  const cache = new ReadingCache();
  cache.begin();
  cache.keep('cut 1', read('cut 1'));
  for (const at of [3, 6, 9]) {
    cache.begin();
    expect(cache.find('cut 1', at)?.statement.span.start).toBe(at);
  }
});

test('places are moved in a copy, those alone for which it holds', () => {
  const tree = {
    name: 'A',
    all: [
      { file: 'a.cut', start: 1, end: 2 },
      { file: 'b.cut', start: 1, end: 2 },
    ],
  };
  expect(movedSpans(tree, 5, ({ file }) => file === 'b.cut')).toEqual({
    name: 'A',
    all: [
      { file: 'a.cut', start: 1, end: 2 },
      { file: 'b.cut', start: 6, end: 7 },
    ],
  });
  expect(tree.all[1]!.start).toBe(1);
});
