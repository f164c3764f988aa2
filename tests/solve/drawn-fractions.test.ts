import { describe, expect, test } from 'vitest';
import { messageOf } from '../../src/language/message.js';
import type { ShotChart } from '../../src/shot/shot.js';
import { chartFractions, narrowestGap } from '../../src/solve/drawn-fractions.js';
import { explained } from '../explained.js';
import { shown } from './shown.js';

const of = (form: Exclude<ShotChart['form'], 'fractions'>, count: number) => chartFractions({ form }, count);

describe('a chart as fractions of the way', () => {
  test('even: equal steps', () => {
    expect(of('even', 1)).toEqual([1 / 2]);
    expect(of('even', 3)).toEqual([1 / 4, 1 / 2, 3 / 4]);
  });

  test('late: half of what is left to the second key, again and again', () => {
    expect(of('late', 3)).toEqual([1 / 2, 3 / 4, 7 / 8]);
  });

  test('early: late seen in a mirror', () => {
    expect(of('early', 3)).toEqual([1 / 8, 1 / 4, 1 / 2]);
  });

  test('late and early with one in-between are not even', () => {
    expect(of('late', 1)).toEqual([3 / 4]);
    expect(of('early', 1)).toEqual([1 / 4]);
  });

  test('both: halves from the middle to both keys', () => {
    expect(of('both', 1)).toEqual([1 / 2]);
    expect(of('both', 2)).toEqual([1 / 4, 3 / 4]);
    expect(of('both', 3)).toEqual([1 / 4, 1 / 2, 3 / 4]);
    expect(of('both', 5)).toEqual([1 / 8, 1 / 4, 1 / 2, 3 / 4, 7 / 8]);
  });

  test('as they are written', () => {
    expect(chartFractions({ form: 'fractions', fractions: [0.1, 0.7] }, 2)).toEqual([0.1, 0.7]);
  });

  test('none where as many are not written as there are in-betweens', () => {
    expect(chartFractions({ form: 'fractions', fractions: [0.1, 0.7] }, 3)).toBeNull();
  });

  test.each(['even', 'late', 'early', 'both'] as const)('%s: rising, between the keys', (form) => {
    for (let count = 1; count <= 12; count++) {
      const all = [0, ...of(form, count)!, 1];
      expect(all).toHaveLength(count + 2);
      for (let i = 1; i < all.length; i++) expect(all[i]).toBeGreaterThan(all[i - 1]!);
    }
  });
});

describe('the narrowest gap', () => {
  test.each([
    [[0.5], 0.5],
    [[0.25, 0.5], 0.25],
    [[0.1, 0.9], 0.1],
    [[0.4, 0.95], 0.05],
    [[0.4, 0.45, 0.9], 0.05],
  ])('of %j, keys included, is %d', (fractions, gap) => {
    expect(narrowestGap(fractions)).toBeCloseTo(gap, 12);
  });
});

describe('a drawing that exists stays where it lies on its way', () => {
  const places = (items: string, lines = '') => {
    const { level, codes } = shown(24, items, lines);
    expect(codes.filter((code) => code.startsWith('error'))).toEqual([]);
    return level.passages[0]!.fractions;
  };
  const close = (found: readonly number[], wanted: readonly number[]) => {
    expect(found).toHaveLength(wanted.length);
    for (const [i, one] of found.entries()) expect(one).toBeCloseTo(wanted[i]!, 12);
  };

  test.each([
    ['put in last', '1---2..', '1 1.1 1.2 2 1.2a', [1 / 3, 2 / 3, 5 / 6]],
    ['put in first', '1---2..', '1 1.1 1.2 2 1.0a', [1 / 6, 1 / 3, 2 / 3]],
    ['two between the same', '1----2..', '1 1.1 1.2 2 1.1a 1.1b', [1 / 3, 1 / 2, 7 / 12, 2 / 3]],
    ['the second of two, the first gone', '1---2..', '1 1.1 1.2 2 _ 1.1b', [1 / 3, 7 / 12, 2 / 3]],
    ['one in the middle gone', '1--2..', '1 1.1 _ 1.3 2', [1 / 4, 3 / 4]],
    ['the last gone', '1--2..', '1 1.1 1.2 _ 2', [1 / 4, 1 / 2]],
    ['one gone, one new', '1--2..', '1 _ 1.2 2 1.2a', [2 / 3, 5 / 6]],
    ['late', '1{late}---2..', '1 1.1 1.2 2 1.2a', [1 / 2, 3 / 4, 7 / 8]],
    ['early', '1{early}---2..', '1 1.1 1.2 2 1.2a', [1 / 4, 1 / 2, 3 / 4]],
    ['fractions of the old ones', '1{1/8 1/2}---2..', '1 1.1 1.2 2 1.2a', [1 / 8, 1 / 2, 3 / 4]],
    ['nothing new: the chart of today', '1{late}--2..', '1 1.1 1.2 2', [1 / 2, 3 / 4]],
  ])('%s', (_, items, line, wanted) => {
    close(places(items, `cels A ${line}`), wanted);
  });

  test('is not taken for a chart by its name', () => {
    expect(shown(24, '1{late}---2..', 'cels A 1 1.1 1.2 2 1.0a').level.passages[0]!.chart).toBe('fractions');
  });

  test('by frame a gap is a frame on which nothing starts', () => {
    close(places('1--2..', 'numbering frame\ncels A 1 _ 1.1 _ 1.2 _ 2'), [1 / 3, 2 / 3]);
  });

  test('a gap before another key is not of the passage', () => {
    close(places('1---3..', 'cels A 1 1>3.1 1>3.2 _ 2 3 1>3.2a'), [1 / 3, 2 / 3, 5 / 6]);
  });

  test('fractions of today hold, and what they move is said', () => {
    const { level, diagnostics } = shown(24, '1{1/4 1/2 3/4}---2..', 'cels A 1 1.1 1.2 2 1.2a');
    expect(level.passages[0]!.fractions).toEqual([0.25, 0.5, 0.75]);
    expect(diagnostics.map((one) => [one.code, messageOf(one, 'en')])).toEqual([
      [
        'chart-drawn',
        'On paper A2 (1.1) lies at 1/3 of the way from key 1 to key 2, A3 (1.2) at 2/3; this chart says 1/4, 1/2.',
      ],
    ]);
  });

  test('fractions that agree with either count are taken without a word', () => {
    expect(shown(24, '1{1/3 2/3 4/5}---2..', 'cels A 1 1.1 1.2 2 1.2a').codes).toEqual([]);
    expect(shown(24, '1{1/8 7/8}--2..', 'cels A 1 1.1 _ 2 1.1a').codes).toEqual([]);
  });

  test('a chart that fits neither count is an error', () => {
    expect(shown(24, '1{1/2}---2..', 'cels A 1 1.1 1.2 2 1.2a').codes).toEqual(['error chart-count']);
  });

  test('in the cut that reuses the level too', () => {
    const reused = new Map([['A', shown(24, '1{late}--2..').level]]);
    const { level, codes } = shown(24, '1--2..', 'level A reuse 8/A', { reused });
    expect(level.passages[0]).toMatchObject({ fractions: [1 / 2, 3 / 4], chart: 'late' });
    expect(codes).toEqual([]);
    const other = shown(24, '1{early}--2..', 'level A reuse 8/A', { reused });
    expect(other.level.passages[0]!.fractions).toEqual([1 / 2, 3 / 4]);
    expect(other.codes).toEqual(['warning chart-drawn']);
  });
});
describe('charts', () => {
  test.each([
    ['1{late}--2 x:2 1{early}--2..', 'error chart-twice'],
    ['1{1/2 1/4}--2..', 'error chart-not-rising'],
    ['1{1/2 1}--2..', 'error chart-outside'],
    ['1{0 1/2}--2..', 'error chart-outside'],
    ['1{1/2}--2..', 'error chart-count'],
    ['1{late}-----2..', 'hint chart-narrow'],
    ['1{1/4 1/4}--2..', 'error chart-not-rising'],
    ['1{late} 2..', 'warning chart-unused'],
    ['1{lat}-2..', 'error unknown-chart'],
  ])('%s', (items, code) => {
    expect(shown(24, items).codes).toEqual([code]);
  });

  test('the same chart twice, in whatever words, is one', () => {
    expect(shown(24, '1{late}-2 x:2 1{3/4}-2..').codes).toEqual([]);
    expect(shown(24, '1{late}-2 x:2 1-2..').level.passages[0]).toMatchObject({
      chart: 'late',
      fractions: [0.75],
    });
  });

  test('a chart on the last key of a cycle spaces the way back to its first', () => {
    expect(shown(24, '(1-2{late}--)..').level.passages[1]).toMatchObject({
      from: '2',
      to: '1',
      chart: 'late',
    });
  });

  test('sixteen even in-betweens without a chart are not nagged about', () => {
    expect(shown(60, '1----------------2..').codes).toEqual([]);
  });
});

describe('what is said of a chart, in full', () => {
  test.each<[string, string, string[]]>([
    [
      'a chart of more fractions than in-betweens',
      'time 1+0\nA: 1{1/4 1/2 3/4}--2..',
      ['error «{1/4 1/2 3/4}» The chart has 3 fractions for 2 in-betweens from key 1 to key 2.'],
    ],
    ['a chart of fractions that fit', 'time 1+0\nA: 1{1/4 3/4}--2..', []],
    [
      'a chart with a gap that nobody draws',
      'time 1+0\nA: 1{1/2 0.55}--2..',
      [
        'hint «{1/2 0.55}» A gap of this chart is under 1/16 of the way from key 1 to key 2; hardly anyone can draw it.',
      ],
    ],
    ['a gap of a sixteenth', 'time 1+0\nA: 1{1/2 9/16}--2..', []],
    [
      'a late chart of many',
      'time 2+0\nA: on 1 1{late}-----2..',
      [
        'hint «{late}» A gap of this chart is under 1/16 of the way from key 1 to key 2; hardly anyone can draw it.',
      ],
    ],
    ['two charts of a passage that agree', 'time 1+0\nA: 1{late}-2 x 1{late}-2..', []],
    [
      'two charts of a passage that differ',
      'time 1+0\nA: 1{late}--2 x 1{early}--2..',
      [
        'error «{early}» The passage from key 1 to key 2 has another chart already.',
        ' + «{late}» the other chart',
        ' > take this one out: «{early}» → «»',
      ],
    ],
    [
      'two charts of which the second fits another count',
      'time 1+0\nA: 1{late}--2 x 1{1/2}-2..',
      [
        'warning «-» From key 1 to key 2 there is 1 in-between here and 2 in-betweens before; they are other drawings.',
        ' + «-» 2 in-betweens here',
      ],
    ],
    ['a chart for drawings that were even', 'time 1+0\nA: 1{late}--2..\ncels A 1 1.1 1.2 2', []],
    [
      'fractions for drawings that are on paper',
      'time 1+0\nA: 1{1/4 1/2 3/4}---2..\ncels A 1 1.1 1.2 2 1.1a',
      [
        'warning «{1/4 1/2 3/4}» On paper A2 (1.1) lies at 1/3 of the way from key 1 to key 2, A3 (1.2) at 2/3; this chart says 1/4, 3/4.',
        ' + «cels A 1 1.1 1.2 2 1.1a» 2 in-betweens were pinned here, evenly spaced where no chart says how',
      ],
    ],
    ['fractions for as many as there were', 'time 1+0\nA: 1{1/4 3/4}---2..\ncels A 1 1.1 1.2 2 1.1a', []],
    [
      'fractions that leave the old ones where they were',
      'time 1+0\nA: 1{1/3 1/2 2/3}---2..\ncels A 1 1.1 1.2 2 1.1a',
      [],
    ],
    [
      'a chart that is none',
      'time 1+0\nA: 1{lat}--2..',
      ['error «{lat}» There is no chart `lat`; did you mean `late`?', ' > write `late`: «{lat}» → «{late}»'],
    ],
    [
      'a chart outside its way',
      'time 1+0\nA: 1{0 1/2}--2..',
      ['error «0» A fraction of a chart lies between 0, the first key, and 1, the second one.'],
    ],
    [
      'a chart that ends on the key',
      'time 1+0\nA: 1{1/2 1}--2..',
      ['error «1» A fraction of a chart lies between 0, the first key, and 1, the second one.'],
    ],
    [
      'a chart that does not rise',
      'time 1+0\nA: 1{1/2 1/2}--2..',
      ['error «1/2» The fractions of a chart rise from the first key to the second one.'],
    ],
  ])('%s', (_, lines, said) => expect(explained(`cut 1\n${lines}\n`)).toEqual(said));
});
