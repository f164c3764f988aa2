import { describe, expect, test } from 'vitest';
import { newLexer, tokenize } from '../../src/language/lexer.js';
import '../../src/language/statements/statement-table.js';
import { bare, readAll } from './read-text.js';

const kinds = (text: string): string =>
  tokenize(text, 0, text.length)
    .map(({ image, tokenType }) => `${tokenType.name} ${image}`)
    .join(' | ');

describe('numbers, first match wins', () => {
  test.each([
    ['560x200mm', 'Size 560x200mm'],
    ['22x8.5in', 'Size 22x8.5in'],
    ['3mm/f', 'Rate 3mm/f'],
    ['0.5cm/f', 'Rate 0.5cm/f'],
    ['120mm', 'Length 120mm'],
    ['30deg', 'Degrees 30deg'],
    ['60%', 'Percent 60%'],
    ['62.5%', 'Percent 62.5%'],
    ['8F', 'FieldNumber 8F'],
    ['8.5F', 'FieldPart 8.5F'],
    ['2N', 'ChartStep 2N'],
    ['2.5E', 'ChartPart 2.5E'],
    ['5+12', 'Seconds 5+12'],
    ["8'04", "Feet 8'04"],
    ['1/2', 'Fraction 1/2'],
    ['1.2', 'Decimal 1.2'],
    ['1.1a', 'BetweenName 1.1a'],
    ['3a.1', 'BetweenName 3a.1'],
    ['3a', 'KeyName 3a'],
    ['12', 'Integer 12'],
    ['BOOK1', 'Word BOOK1'],
    ['空_2', 'Word 空_2'],
  ])('%s', (text, expected) => {
    expect(kinds(text)).toBe(expected);
  });
});

describe('dots', () => {
  test.each([
    ['1..5', 'Integer 1 | DotDot .. | Integer 5'],
    ['3..', 'Integer 3 | DotDot ..'],
    ['1.2..', 'Decimal 1.2 | DotDot ..'],
    ['1+1..5+0', 'Seconds 1+1 | DotDot .. | Seconds 5+0'],
    ['1...5', 'Glued 1...5'],
    ['.5', 'Glued .5'],
    ['1.2.3', 'Glued 1.2.3'],
    ['1.', 'Integer 1 | Unknown .'],
  ])('%s', (text, expected) => {
    expect(kinds(text)).toBe(expected);
  });
});

describe('what is glued to a number', () => {
  test.each(['12abc', '3mmm', '3ab', '5+12ab', '1+2+3', "8'", '1234567890', '2x3y'])(
    '%s is no token of use',
    (text) => {
      expect(kinds(text)).toBe(`Glued ${text}`);
    },
  );

  test('an x is an empty level, not a letter of the key', () => {
    expect(kinds('3x')).toBe("Integer 3 | 'x' x");
    expect(kinds('1+0x:8')).toBe("Seconds 1+0 | 'x' x | Colon : | Integer 8");
  });

  test('an x with a count after a group is a wrong sign', () => {
    expect(kinds('(1)x3')).toBe('Open ( | Integer 1 | Close ) | Glued x3');
    expect(kinds('(1) x3')).toBe('Open ( | Integer 1 | Close ) | Word x3');
  });
});

test('a dash is always a token of its own', () => {
  expect(kinds('1---2')).toBe('Integer 1 | Dash - | Dash - | Dash - | Integer 2');
  expect(kinds('hit-3')).toBe('Word hit | Dash - | Integer 3');
});

test('words of the language are known, and longer names are not cut', () => {
  expect(kinds('on on2 off office')).toBe("'on' on | Word on2 | 'off' off | Word office");
});

test('offsets count in the whole text', () => {
  expect(
    tokenize('cut 1 A: 12', 6, 11).map(({ startOffset, endOffset }) => [startOffset, endOffset]),
  ).toEqual([
    [6, 6],
    [7, 7],
    [9, 10],
  ]);
});

test('the kinds have no fault of their own, and each says what it starts with', () => {
  expect(newLexer({ validate: true }).lexerDefinitionErrors).toEqual([]);
});

test('names of every script are found, whatever their first letter', () => {
  const letters = ['z', 'é', 'ÿ', 'ж', 'ā', 'ア', 'ー', '空', '가', 'ﾅ', '𠮷', '𐐀', 'ﬀ'];
  for (const letter of letters) expect(kinds(`${letter}1`)).toBe(`Word ${letter}1`);
  for (const odd of ['¿', '→', '　？'.slice(1), '😀', '€']) expect(kinds(odd)).toBe(`Unknown ${odd}`);
});

describe('splitting', () => {
  test('a statement goes on over indented lines, blank lines and comments', () => {
    const { tree } = readAll('A: 1\n  2\n\n# remark\n\t3\n\u3000\u30004\ncut 1');
    expect(tree.statements.map(({ kind }) => kind)).toEqual(['timeline', 'cut']);
    expect(bare(tree.statements[0])).toMatchObject({
      items: [{ name: '1' }, { name: '2' }, { name: '3' }, { name: '4' }],
    });
  });

  test('lines may end as on any machine', () => {
    for (const end of ['\n', '\r\n', '\r'])
      expect(readAll(`cut 1${end}time 5+0${end}`).tree.statements).toHaveLength(2);
  });

  test('an empty text is a tree with nothing in it', () => {
    for (const text of ['', '\n\n', '# only this', '\ufeff'])
      expect(readAll(text).tree.statements).toEqual([]);
  });
});
