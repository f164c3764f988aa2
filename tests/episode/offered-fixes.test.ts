import { describe, expect, test } from 'vitest';
import { withTestedFixes } from '../../src/episode/offered-fixes.js';
import { withEdits } from '../../src/language/statement-reader.js';
import { compileText } from '../compile.js';

/** The codes found in a cut of one line, each with the line after the offered edit, or null where none is offered. */
function offers(line: string): [string, string | null][] {
  const head = 'cut 1\ntime 2+0\n';
  const text = head + line;
  return compileText(text).diagnostics.map(({ code, fix }) => [
    code,
    fix
      ? withEdits(
          text,
          fix.edits.map(({ span, text }) => ({ ...span, text })),
        ).slice(head.length)
      : null,
  ]);
}

describe('no fix is offered', () => {
  test.each([
    ['a dot with another fault behind it', 'A: 1.:… 2.', 'stray-dot'],
    ['a dot with another dot behind it', 'A: 1.c.', 'stray-dot'],
    ['a dot that would hold a drawing before another', 'A: 1. 2..', 'stray-dot'],
    ['a word that leaves the next one without sense', 'field A ful atl 2,0', 'does-not-fit'],
    ['a name that no phrase has, glued to a number', 'A: 1 2late 3..', 'glued-number'],
    ['the only thing in a timeline', 'A: @12', 'at-nothing'],
    ['a first word with another fault right behind it', 'tim | 2', 'unknown-word'],
    [
      'artwork of more than a hundred metres',
      'level BG size 300x200mm\nBG: 1..\nfield A full at 60000,0\nfix A',
      'artwork-edge',
    ],
    ['a line that would spoil the timeline above it', 'phrase walk = A 1--2--\n: wakl..', 'statement-start'],
  ])('for %s', (_, line, code) => {
    const found = offers(line).filter((one) => one[0] === code);
    expect(found.length).toBeGreaterThan(0);
    expect(found.map(([, mended]) => mended)).toEqual(found.map(() => null));
  });
});

describe('the fix mends', () => {
  test.each([
    ['two open groups at once', 'A: (2 (3..', 'unclosed-group', 'A: (2 (3..))'],
    ['a flag as a whole', 'A: 1 🇩🇪 2..', 'unknown-character', 'A: 1  2..'],
    ['a family as a whole', 'A: 1 👩‍👩‍👧 2..', 'unknown-character', 'A: 1  2..'],
    ['a chart between two keys', 'A: 1{late}2--3..', 'chart-unused', 'A: 1 2--3..'],
    ['a chart where another error stays', 'A: 1{late}', 'chart-unused', 'A: 1 '],
    [
      'a word with another fault further on',
      'pull BG rigt 1mm/f 1..24 lo 300mm',
      'does-not-fit',
      'pull BG right 1mm/f 1..24 lo 300mm',
    ],
    ['a dot', 'A: 1.', 'stray-dot', 'A: 1..'],
    ['all commas at once', 'A: 1,2 3 ,,4..', 'does-not-fit', 'A: 1 2 3   4..'],
    ['a first word, though its fields are unknown', 'pann A@1 > B@24', 'unknown-word', 'pan A@1 > B@24'],
  ])('%s', (_, line, code, mended) => {
    expect(offers(line)).toContainEqual([code, mended]);
  });
});

test('a fix in another file is left as it is, one of this file is tried', () => {
  const { tree, diagnostics } = compileText('cut 1\ntime 2+0\nA: 1');
  const [one] = diagnostics.filter(({ fix }) => fix);
  const elsewhere = {
    ...one!,
    fix: { ...one!.fix!, edits: [{ span: { file: 'house.cut', start: 0, end: 0 }, text: '' }] },
  };
  const never = () => null;
  const found = withTestedFixes(
    { tree: tree!, diagnostics: [one!, elsewhere] },
    'cut 1\ntime 2+0\nA: 1',
    never,
  );
  expect(found.map(({ fix }) => fix)).toEqual([undefined, elsewhere.fix]);
});

test('a cut whose messages have no fixes is not compiled again', () => {
  const text = 'cut 1\ntime 2+0\nA: 1..\nglow A 1..2+0\nmemo\n';
  const { tree, diagnostics } = compileText(text);
  expect(diagnostics.map(({ fix }) => fix)).toEqual(diagnostics.map(() => undefined));
  expect(diagnostics.length).toBeGreaterThan(0);
  const found = withTestedFixes({ tree: tree!, diagnostics }, text, () => {
    throw new Error('compiled again');
  });
  expect(found).toEqual(diagnostics);
});

test('of a text with faults without number only the first are tried', () => {
  const text = `cut 1\ntime 2+0\nA: 1\n${'#'.repeat(40_000)}`;
  const { tree, diagnostics } = compileText(text);
  const one = diagnostics.find(({ fix }) => fix)!;
  let tried = 0;
  withTestedFixes({ tree: tree!, diagnostics: Array.from({ length: 9 }, () => one) }, text, () => {
    tried += 1;
    return null;
  });
  expect(tried).toBe(2);
});
