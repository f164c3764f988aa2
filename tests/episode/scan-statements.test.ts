import { describe, expect, test } from 'vitest';
import { mentions, plainNumber, scan, usesIn } from '../../src/episode/scan-statements.js';
import { parse } from '../../src/language/parse.js';

describe('a number that needs no grammar', () => {
  test.each([
    ['cut 12\ntime 1+0\n', '12'],
    ['cut 12A "Rooftop, dusk"   # a remark\ntime 1+0\n', '12A'],
    ['# first\n\ncut  7\n', '7'],
    ['\ufeffcut 7\r\ntime 1+0\r\n', '7'],
  ])('%j', (text, number) => {
    expect(plainNumber(text)).toBe(number);
  });

  test.each([
    ['in full width', 'ｃｕｔ 12\n'],
    ['behind another one', 'cut "x" 1\ncut 12\n'],
    ['that goes on in the next line', 'cut 12\n  "Rooftop"\n'],
    ['with a quote in its title', 'cut 12 "a \\" b"\n'],
    ['that is not there', 'time 1+0\nA: 1..\n'],
    ['with a control character in the text', 'cut 12\n\u0007\n'],
  ])('one %s is left to the grammar', (_, text) => {
    expect(plainNumber(text)).toBeNull();
  });
});

test('a word is mentioned where it stands, or where full-width letters may hide it', () => {
  expect(mentions('level A reuse 8/C', 'reuse')).toBe(true);
  expect(mentions('A: 1..', 'reuse')).toBe(false);
  expect(mentions('ｌｅｖｅｌ A', 'reuse')).toBe(true);
});

test('statements that may be a `use` are given as they stand there', () => {
  expect(
    usesIn('cut 1\nuse "a.cut"\nＡ: 1..\nｕｓｅ "b.cut"\n  # more\nmemo "use it"\n').map((one) => one.trim()),
  ).toEqual(['use "a.cut"', expect.stringMatching(/^ｕｓｅ "b\.cut"/)]);
  expect(usesIn('cut 1\nA: 1..\n')).toEqual([]);
});

describe('a scan', () => {
  const TEXT =
    '\ufeffcut 12 "Quay"\ntime 4+0\nfps 25\nuse "h.cut"\nlevel A reuse 8/C\nlevel BG size 5x2mm\noverlap in 12\nA: 1--2..\nmemo "cut 9"\n';

  test('reads what concerns other cuts, as the whole grammar does, and nothing else', () => {
    const kinds = ['cut', 'time', 'fps', 'use', 'overlap'];
    const { statements } = parse('c.cut', TEXT).tree;
    const expected = statements.filter(
      (one) => kinds.includes(one.kind) || (one.kind === 'level' && one.reuse !== null),
    );
    expect(expected).toHaveLength(6);
    expect(scan('c.cut', TEXT)).toEqual({ file: 'c.cut', statements: expected, broken: [] });
  });

  test('keeps what it could not read, with the word that it begins with', () => {
    const { statements, broken } = scan('c.cut', 'cut\ntime 1+0\noverlap sideways\n');
    expect(statements.map(({ kind }) => kind)).toEqual(['time']);
    expect(broken.map(({ word }) => word)).toEqual(['cut', 'overlap']);
    expect(broken[1]!.span).toMatchObject({ file: 'c.cut', start: 13 });
  });

  test('takes a level with the name of a statement for what it is', () => {
    expect(scan('c.cut', 'time: 1..\n').statements).toEqual([]);
  });
});
