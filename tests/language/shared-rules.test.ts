import { describe, expect, test } from 'vitest';
import { millimetres } from '../../src/language/shared-rules.js';
import { bare, readOne, told } from './read-text.js';

describe('times', () => {
  const time = (text: string): unknown => bare(readOne('time', `time ${text}`).time);
  test.each([
    ['37', { kind: 'length', form: 'frames', frames: 37 }],
    ['5+12', { kind: 'length', form: 'seconds', seconds: 5, frames: 12 }],
    ['5+24', { kind: 'length', form: 'seconds', seconds: 5, frames: 24 }],
    ["8'04", { kind: 'length', form: 'feet', feet: 8, frames: 4 }],
    ['hit', { kind: 'length', form: 'mark', name: 'hit', offset: 0 }],
    ['hit+6', { kind: 'length', form: 'mark', name: 'hit', offset: 6 }],
    ['hit-3', { kind: 'length', form: 'mark', name: 'hit', offset: -3 }],
  ])('%s', (text, expected) => {
    expect(time(text)).toEqual(expected);
  });

  test('in a timeline a dash after a blank is an in-between, not part of the mark', () => {
    expect(bare(readOne('timeline', 'A: 1 @hit -3').items)).toMatchObject([
      { kind: 'key' },
      { kind: 'at', position: { name: 'hit', offset: 0 } },
      { kind: 'between' },
      { kind: 'key', name: '3' },
    ]);
    expect(bare(readOne('timeline', 'A: 1 @hit-3-4').items)).toMatchObject([
      { kind: 'key' },
      { kind: 'at', position: { name: 'hit', offset: -3 } },
      { kind: 'between' },
      { kind: 'key', name: '4' },
    ]);
  });

  test('ranges', () => {
    expect(bare(readOne('sound', 'sound hit-3..hit+6 "x"').range)).toEqual({
      from: { kind: 'position', form: 'mark', name: 'hit', offset: -3 },
      to: { kind: 'position', form: 'mark', name: 'hit', offset: 6 },
    });
    expect(readOne('music', 'music 1+1.. "x"').range.to).toBeNull();
  });

  test('an open range takes what may stand behind a range', () => {
    const open = { from: { kind: 'position', form: 'frames', frames: 1 }, to: null };
    expect(bare(readOne('pull', 'pull BG down 1mm/f 1.. ease 12'))).toMatchObject({
      range: open,
      spacing: [{ form: 'ease', leave: { value: 12 } }],
    });
    expect(bare(readOne('shake', 'shake 4mm 1.. on 2 sideways'))).toMatchObject({
      range: open,
      options: { on: { value: 2 }, sideways: true },
    });
    expect(bare(readOne('sway', 'sway A 5mm 1.. every 24'))).toMatchObject({
      range: open,
      parts: { every: { frames: 24 } },
    });
    expect(bare(readOne('fade', 'fade out 1.. white'))).toMatchObject({ range: open, white: true });
  });

  test('a mark may have the name of an option, right behind the dots', () => {
    const ends = { to: { kind: 'position', form: 'mark', name: 'ease' } };
    expect(bare(readOne('pull', 'pull BG down 1mm/f 1..ease ease 12'))).toMatchObject({
      range: ends,
      spacing: [{ form: 'ease' }],
    });
    expect(bare(readOne('fade', 'fade out 1.. dark'))).toMatchObject({
      range: { to: { name: 'dark' } },
      white: null,
    });
  });
});

describe('sizes', () => {
  test('sizes are millimetres unless they say otherwise', () => {
    const size = (text: string): unknown => bare(readOne('level', `level A size ${text}`).size);
    expect(size('560x200')).toEqual({ widthMm: 560, heightMm: 200 });
    expect(size('10x5.625in')).toEqual({ widthMm: 254, heightMm: 142.875 });
    expect(size('56cmx200mm')).toEqual({ widthMm: 560, heightMm: 200 });
  });
});

describe('millimetres', () => {
  test.each([
    ['12', undefined, 12],
    ['1.5in', undefined, 38.1],
    ['3cm', undefined, 30],
    ['3', 'cm', 30],
    ['3mm', 'cm', 3],
  ])('of %s (%s) are %d', (image, unit, mm) => {
    expect(millimetres(image, unit)).toBeCloseTo(mm, 12);
  });

  test('of what is no length are none', () => {
    expect(millimetres('3ft')).toBeNaN();
  });
});

describe('a text', () => {
  const text = (typed: string): string => readOne('memo', `memo ${typed}`).text.text;

  test.each([
    ['"a\\nb"', 'a\nb'],
    ['"say \\"no\\""', 'say "no"'],
    ['"a\\\\b"', 'a\\b'],
    ['「雨」', '雨'],
    ['“a\\”b”', 'a”b'],
  ])('%s', (typed, read) => {
    expect(text(typed)).toBe(read);
  });

  test('keeps an escape that is none as it was typed, and offers to double its backslash', () => {
    expect(told('memo "C:\\q"')).toMatchObject([
      { code: 'unknown-escape', at: '\\q', mended: 'memo "C:\\\\q"' },
    ]);
  });

  test('is NFC', () => {
    expect(text('"e\u0301"')).toBe('\u00e9');
  });
});

describe('a point', () => {
  const at = (typed: string): unknown => bare(readOne('level', `level A at ${typed}`).at);

  test('has signs of its own, and no negative nought', () => {
    expect(at('-20,-8.5')).toEqual({ xMm: -20, yMm: -8.5 });
    expect(at('-0,1in')).toEqual({ xMm: 0, yMm: 25.4 });
    expect(Object.is(readOne('level', 'level A at -0,0').at!.xMm, 0)).toBe(true);
  });
});
