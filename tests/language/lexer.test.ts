import { describe, expect, test } from 'vitest';
import { foldCharacters, tokenize } from '../../src/language/lexer.js';
import '../../src/language/statements/statement-table.js';
import fc from 'fast-check';
import { Glued, kindsFrom, Word } from '../../src/language/tokens.js';
import { bare, readAll, readOne } from './read-text.js';

const kinds = (text: string): string =>
  tokenize(text, 0, text.length)
    .map(({ image, type }) => `${type.name} ${image}`)
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
  expect(tokenize('cut 1 A: 12', 6, 11).map(({ start, end }) => [start, end])).toEqual([
    [6, 7],
    [7, 8],
    [9, 11],
  ]);
});

/** What the kinds say when all of them are tried in their order, whole numbers too, with the expressions for any script. */
function allTried(text: string): string[] {
  const found: string[] = [];
  for (let at = 0; at < text.length; ) {
    if (/\s/.test(text[at]!) || text[at]! < ' ') {
      at++;
      continue;
    }
    const ends = kindsFrom(text.charCodeAt(at)).map(({ end }) => end(text, at, false));
    const first = ends.findIndex((end) => end >= 0);
    found.push(`${kindsFrom(text.charCodeAt(at))[first]!.type.name} ${text.slice(at, ends[first])}`);
    at = ends[first]!;
  }
  return found;
}

test('whole numbers, which are found by themselves, and ASCII are read like all the rest', () => {
  const parts = [
    ...'0179.+\'/%:x-=(){}<>*@,_"「」\\ \n\t#é空𠮷アー\u0301\u00a0\u0001\u007f\ud800',
    ...['12', '1234567890', '..', '...', ':12', '/f', 'mm', 'in', 'F', 'N', 's', 'deg', 'A1'],
  ];
  fc.assert(
    fc.property(fc.array(fc.constantFrom(...parts), { maxLength: 14 }), (chosen) => {
      const text = chosen.join('');
      const read = tokenize(text, 0, text.length).map(({ image, type }) => {
        const kind = type === Glued && /^x/.test(image) ? Word : type;
        return `${kind.name.startsWith("'") ? Word.name : kind.name} ${image}`;
      });
      expect(read).toEqual(allTried(text));
    }),
    { numRuns: 2000 },
  );
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

describe('what a Japanese keyboard types', () => {
  test.each([
    ['Ａ：１－－２', 'A:1--2'],
    ['（１）＊３', '(1)*3'],
    ['５＋１２', '5+12'],
    ['Ａ　：', 'A :'],
    ['１ーー２', '1--2'],
    ['１−２–３—４', '1-2-3-4'],
    ['６。。', '6..'],
    ['１３０、０', '130,0'],
    ['８・Ｃ', '8/C'],
    ['１：２×：３', '1:2x:3'],
    ['８’０４', "8'04"],
    ['５６０×２００ｍｍ', '560x200mm'],
  ])('%s is %s', (typed, meant) => {
    expect(foldCharacters(typed).text).toBe(meant);
  });

  test('the long-vowel sign is a letter after kana and a dash elsewhere', () => {
    expect(foldCharacters('ループ').text).toBe('ループ');
    expect(foldCharacters('コーーヒ').text).toBe('コーーヒ');
    expect(foldCharacters('うー').text).toBe('うー');
    expect(foldCharacters('空ー').text).toBe('空-');
  });

  test('a whole timeline is the same in both', () => {
    const wide = readOne(
      'timeline',
      'Ａ「ナオ」：１：１２　１ーー２｛ｌａｔｅ｝ー３：１＋０（４ー５ー）＊３　６。。',
    );
    const narrow = readOne('timeline', 'A "ナオ": 1:12 1--2{late}-3:1+0 (4-5-)*3 6..');
    expect(bare(wide)).toEqual(bare(narrow));
  });
});

describe('quotes', () => {
  const text = (typed: string): string => readOne('memo', `memo ${typed}`).text.text;

  test.each([
    ['"plain"', 'plain'],
    ['“curly”', 'curly'],
    ['”the same”', 'the same'],
    ['＂wide＂', 'wide'],
    ['“mixed"', 'mixed'],
    ['「角」', '角'],
    ['｢half｣', 'half'],
    ['"he said “no”"', 'he said “no”'],
    ['"１－２"', '１－２'],
    ['"a # b"', 'a # b'],
    ['「a " b」', 'a " b'],
    ['"a\\"b"', 'a"b'],
    ['“a\\”b”', 'a”b'],
    ['「a\\」b」', 'a」b'],
    ['"a\\\\"', 'a\\'],
    ['"a\\nb"', 'a\nb'],
  ])('%s', (typed, meant) => {
    expect(text(typed)).toBe(meant);
  });

  test('text is in one normal form, as names are', () => {
    expect(text('"か\u3099"')).toBe('が');
  });
});

test('a comment runs to the end of its line, full-width sign or not', () => {
  const { tree, comments } = readAll('# one\ntime 5+0 # two "\n  ＃ three\ncut 1');
  expect(tree.statements.map(({ kind }) => kind)).toEqual(['time', 'cut']);
  expect(comments.map(({ start, end }) => [start, end])).toEqual([
    [0, 5],
    [15, 22],
    [25, 32],
  ]);
});

test('a byte-order mark is skipped, and offsets count what follows it', () => {
  expect(readOne('cut', '\ufeffcut 1').span).toMatchObject({ start: 0, end: 5 });
});

test('names are compared in NFC', () => {
  expect(readOne('stack', 'stack か\u3099').levels[0]!.text).toBe('が');
});

describe('properties', () => {
  const character = fc.constantFrom(...'Ａ１：ー－−（）「」“”＂"\\#＃　 \n\t。、・×’カかa1x-.𠮷\u0301');

  test('folding keeps every offset', () => {
    fc.assert(
      fc.property(fc.string({ unit: character }), fc.string({ unit: 'binary' }), (made, any) => {
        expect(foldCharacters(made).text.length).toBe(made.length);
        expect(foldCharacters(any).text.length).toBe(any.length);
      }),
    );
  });

  test('folding what is folded changes nothing', () => {
    fc.assert(
      fc.property(fc.string({ unit: character }), (made) => {
        const once = foldCharacters(made).text;
        expect(foldCharacters(once).text).toBe(once);
      }),
    );
  });

  test('full-width typing never changes the tree', () => {
    const item = fc.constantFrom(
      '1',
      '2:3',
      '-',
      '=',
      '3a',
      '1.2',
      '1>3.2',
      'x',
      '(1--2-)*2',
      '@5+0',
      '4..',
      'on 3',
      '{late}',
    );
    const wide = (text: string): string =>
      text.replace(/[!-~]/g, (one) => String.fromCharCode(one.charCodeAt(0) + 0xfee0));
    fc.assert(
      fc.property(fc.array(item, { minLength: 1 }), (items) => {
        const text = `A: ${items.filter((one, i) => one !== '{late}' || /^\d$/.test(items[i - 1] ?? '')).join(' ') || '1'}`;
        expect(bare(readOne('timeline', wide(text)))).toEqual(bare(readOne('timeline', text)));
      }),
    );
  });
});
