import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foldCharacters } from '../../src/language/character-folding.js';
import { bare, readAll, readOne } from './read-text.js';

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
