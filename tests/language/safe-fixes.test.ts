import { describe, expect, test } from 'vitest';
import { type Code, catalogue } from '../../src/language/catalogue/index.js';
import { applySafeFixes, safeFix, safeFixes } from '../../src/language/safe-fixes.js';
import { compiled } from '../fuzz/ways.js';

const FILE = 'this.cut';
const HEAD = 'cut 1\ntime 2+0\n';
const look = (text: string) => compiled(text).diagnostics;
const mended = (lines: string): string =>
  applySafeFixes(`${HEAD}${lines}\n`, FILE, look).text.slice(HEAD.length, -1);

describe('fixes that cannot change the meaning', () => {
  test.each([
    ['A: 1..\ndialogue "Pim" 1+1..2+0 "Wait!"', 'A: 1..\nvoice "Pim" 1+1..2+0 "Wait!"'],
    ['A: (1-2-)x3 3..', 'A: (1-2-)*3 3..'],
    ['A: 1 X..\nfade in 1 to 24', 'A: 1 x..\nfade in 1..24'],
    ['A: 1..\nroll A 1mm 1..2+0 every 1+0', 'A: 1..\nsway A 1mm 1..2+0 every 1+0'],
  ])('%s', (typed, expected) => expect(mended(typed)).toBe(expected));

  test.each([
    ['a guess at a word', 'A: 1..\nmemoo "Wait"'],
    ['a hold that is missing', 'A: 1'],
    ['a dissolve: in or out', 'A: 1..\ndissolve 24'],
    ['seconds that were perhaps meant', 'A: (1-2-)3 3..'],
  ])('not %s', (_, typed) => expect(mended(typed)).toBe(typed));

  test('those of one text are taken together, where they do not touch', () => {
    const found = look(`${HEAD}A: 1..\nmemo "a"\nSE 1..24 "bell"\nBGM 1.. "M1"\n`);
    expect(safeFixes(found, FILE)).toHaveLength(2);
    expect(safeFixes(found, 'other.cut')).toEqual([]);
  });

  test('a round that makes errors is taken back', () => {
    const text = `${HEAD}A: 1..\nSE 1..24 "bell"\n`;
    const worse = (typed: string) => [
      ...look(typed),
      ...(typed === text ? [] : [...look('zzz\nzzz\nzzz\n')]),
    ];
    expect(applySafeFixes(text, FILE, worse)).toMatchObject({ text, count: 0 });
  });
});

test('every code that says so has an example in which its fix is applied and mends', () => {
  for (const [code, { safeFix: safe, example }] of Object.entries(catalogue)) {
    if (!safe || example.kind !== 'text') continue;
    const found = look(example.failing).filter((one) => one.code === code);
    expect(found.map(safeFix), code).not.toContain(null);
    const after = look(applySafeFixes(example.failing, FILE, look).text);
    expect(
      after.map((one): Code => one.code),
      code,
    ).not.toContain(code);
  }
});
