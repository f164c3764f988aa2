/** Finished numbers, pinned and new, and levels that reuse another cut's drawings. */

import { describe, expect, test } from 'vitest';
import { messageOf } from '../../src/language/message.js';
import { shown, solveText } from './shown.js';

describe('a cels line', () => {
  test('pins numbers; an in-between put in later is named by its place and numbered last', () => {
    const { cels, codes } = shown(10, '1---2', 'cels A 1 1.1 1.2 2 1.1a');
    expect(cels).toBe('1*2 2*2 5*2 3*2 4*2');
    expect(codes).toEqual([]);
  });

  test('gives the drawings of its passages their names on paper', () => {
    const { level, runs } = shown(14, '1---2 1.1a 1.2', 'cels A 1 1.1 1.2 2 1.1a');
    expect(level.passages[0]!.drawings).toEqual(['1.1', '1.1a', '1.2']);
    expect(runs).toBe('1*2 1.1*2 1.1a*2 1.2*2 2*2 1.1a*2 1.2*2');
  });

  test('a zeroth name lies before the first', () => {
    expect(shown(10, '1---2', 'cels A 1 1.1 1.2 2 1.0a').cels).toBe('1*2 5*2 2*2 3*2 4*2');
  });

  test('leaves numbers unused with _', () => {
    const { cels, level } = shown(6, '1-2', 'cels A 1 _ 1.1 2');
    expect(cels).toBe('1*2 3*2 4*2');
    expect(level.missing).toEqual([{ cel: 2, drawing: '' }]);
  });

  test('new drawings go on behind its highest number, also where numbers go by frame', () => {
    const lines = 'cels A 1 1.1 _ 2';
    expect(shown(12, '3 1-2 3..', lines).cels).toContain('5*2');
    expect(shown(10, '1-2-3', `${lines}\nnumbering frame`).cels).toBe('1*2 2*2 4*2 5*2 6*2');
  });

  test('what it names and no frame shows is missing', () => {
    const { level, codes } = shown(6, '1-2', 'cels A 1 1.1 2 3');
    expect(level.missing).toEqual([{ cel: 4, drawing: '3' }]);
    expect(codes).toEqual([]);
  });

  test('a passage that is pinned no longer stands in the timeline may still be shown by reference', () => {
    const { cels, codes } = shown(8, '1 1.2 1.1 2', 'cels A 1 1.1 1.2 2');
    expect([cels, codes]).toEqual(['1*2 3*2 2*2 4*2', []]);
  });

  test.each([
    ['more', '1---2..', 'cels A 1 1.1 1.2 2', ' 1.2a'],
    ['fewer', '1-2..', 'cels A 1 1.1 1.2 2', '_'],
  ])('%s in-betweens than names are an error with an edit', (_, items, line, edit) => {
    const { codes, diagnostics } = shown(24, items, line);
    expect(codes).toEqual(['error cels-count']);
    expect(diagnostics[0]!.fix!.edits.map((each) => each.text)).toEqual([edit]);
  });

  test('a name without its second key leads to the key behind it, where its key leads to several', () => {
    for (const line of ['cels A 1 1.1 1.2 2', 'cels A 1 1>2.1 1>2.2 2']) {
      const { cels, codes } = shown(18, '1--2 x:2 1-3..', line);
      expect([cels, codes]).toEqual(['1*2 2*2 3*2 4*2 x*2 1*2 5*2 6*4', []]);
    }
    expect(shown(18, '1-3 x:2 1-2..', 'cels A 1 1.1 2').cels).toBe('1*2 4*2 5*2 x*2 1*2 2*2 3*6');
  });

  test('where none of them stands behind it, that is an error', () => {
    const { codes, diagnostics } = shown(18, '1--2 x:2 1-3..', 'cels A 1 2 1.1 1.2');
    expect(codes).toContain('error cels-ambiguous');
    expect(diagnostics[0]!.fix!.edits.map(({ text }) => text)).toEqual(['1>2.1', '1>2.2']);
  });
});

describe('numbering', () => {
  test('by sequence in the order of first showing, a drawing keeping its number', () => {
    expect(shown(12, '1-2 1 3 1').cels).toBe('1*2 2*2 3*2 1*2 4*2 1*2');
  });

  test('by frame, two drawings never share one', () => {
    expect(shown(6, 'on 1 1-2 x 1 3', 'numbering frame').cels).toBe('1*1 2*1 3*1 x*1 1*1 6*1');
  });
});

describe('a reused level', () => {
  const source = solveText('cut 8\ntime 1+12\nC: 1-=-2--3..\n').solved.levels.find(
    (level) => level.name === 'C',
  )!;
  const reuse = (items: string, lines = '') =>
    shown(36, items, `level A reuse 8/C\n${lines}`, { reused: new Map([['A', source]]) });

  test('keeps names and numbers of the other cut, whatever is shown first', () => {
    const { level, codes } = reuse('3 2--3..');
    expect(level.drawings).toMatchObject([
      { drawing: '2', cel: 5, reused: true },
      { drawing: '2.1', cel: 6, reused: true },
      { drawing: '2.2', cel: 7, reused: true },
      { drawing: '3', cel: 8, reused: true },
    ]);
    expect([level.missing, codes]).toEqual([[], []]);
  });

  test('numbers on what the other cut lacks, and counts only that', () => {
    const given = { reused: new Map([['A', source]]) };
    const { solved } = solveText('cut 9\ntime 1+12\nlevel A reuse 8/C\nA: 1---2--3-4..\n', given);
    const level = solved.levels.find((each) => each.name === 'A')!;
    expect(level.drawings.filter((each) => !each.reused)).toMatchObject([
      { drawing: '3.1', cel: 9, added: true },
      { drawing: '4', cel: 10, added: true },
    ]);
    expect(solved.counts).toEqual({
      keys: 1,
      breakdowns: 0,
      inbetweens: 1,
      drawings: 2,
      reused: 8,
      backgrounds: 0,
    });
  });

  test('knows its breakdowns, and shows single drawings by reference', () => {
    expect(reuse('1.2 1..').level.drawings).toMatchObject([
      { drawing: '1', cel: 1 },
      { drawing: '1.2', cel: 3, kind: 'breakdown' },
    ]);
  });

  test('another count of in-betweens is drawn anew, with a warning', () => {
    const { level, codes } = reuse('1-2..');
    expect(codes).toEqual(['warning reuse-count']);
    expect(level.drawings.filter((each) => !each.reused)).toMatchObject([{ cel: 9 }]);
    expect(new Set(level.drawings.map((each) => each.drawing)).size).toBe(level.drawings.length);
  });

  test('a cels line beside it may go on from the other cut, not against it', () => {
    const all = '1 1.1 1.2 1.3 2 2.1 2.2 3';
    expect(reuse('1---2--3 4..', `cels A ${all} _ 4`).level.drawings.at(-1)).toMatchObject({
      drawing: '4',
      cel: 10,
      reused: false,
    });
    expect(reuse('1---2--3..', 'cels A 1 1.2').codes).toEqual(['error reuse-number']);
  });

  test('by itself, without the other cut, counts everything as reused', () => {
    const { solved } = solveText('cut 9\ntime 1+12\nlevel A reuse 8/C\nA: 2--3..\n');
    expect(solved.counts).toEqual({
      keys: 0,
      breakdowns: 0,
      inbetweens: 0,
      drawings: 0,
      reused: 4,
      backgrounds: 0,
    });
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
