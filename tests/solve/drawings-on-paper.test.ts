import { describe, expect, test } from 'vitest';
import { existing } from '../../src/solve/drawings-on-paper.js';
import { shown, solveText } from './shown.js';

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

describe('what can be reused of a level', () => {
  const first = solveText('cut 8\ntime 1+0\nC: 1-2-3..\n').solved.levels[1]!;
  const second = shown(24, '1-2..', 'level A reuse 8/C', { reused: new Map([['A', first]]) }).level;

  test('is what it shows and what it could have shown itself', () => {
    const names = ({ drawings }: Pick<typeof first, 'drawings'>) => drawings.map(({ drawing }) => drawing);
    expect(names(existing(first) as typeof first)).toEqual(['1', '1.1', '2', '2.1', '3']);
    expect(names(second)).toEqual(['1', '1.1', '2']);
    expect(names(existing(second) as typeof first)).toEqual(['1', '1.1', '2', '2.1', '3']);
    expect(existing(second).passages.map(({ from, to }) => `${from}>${to}`)).toEqual(['1>2', '2>3']);
  });

  test('keeps its number over two cuts', () => {
    const third = shown(24, '3 4..', 'level A reuse 9/A', { reused: new Map([['A', second]]) }).level;
    expect(third.drawings).toMatchObject([
      { drawing: '3', cel: 5, reused: true },
      { drawing: '4', cel: 6, reused: false },
    ]);
  });
});
