import { describe, expect, test } from 'vitest';
import { messageOf } from '../../src/language/message.js';
import { existing } from '../../src/solve/inbetween-names.js';
import { explained } from '../explained.js';
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

describe('in-betweens', () => {
  test('a key that leads to several keys names the way', () => {
    expect(shown(14, '1-2 x 1-3:4').level.drawings.map((each) => each.drawing)).toEqual([
      '1',
      '1>2.1',
      '2',
      '1>3.1',
      '3',
    ]);
  });

  test('of a pair of keys with a second count have the count in their names', () => {
    const { level } = shown(16, '1--2 x:2 1-2');
    expect(level.drawings.map((each) => each.drawing)).toContain('1>2.1/1');
  });

  test('pinned with the second key lose it where their key leads to one only', () => {
    expect(shown(6, '1-2', 'cels A 1 1>2.1 2').runs).toBe('1*2 1.1*2 2*2');
  });
});

describe('references', () => {
  test('may stand before their passage', () => {
    expect(shown(10, '1.1 1-2..').runs).toBe('1.1*2 1*2 1.1*2 2*4');
  });

  test('need the other key where there are several', () => {
    expect(shown(18, '1-2 x 1-3 1>3.1..').codes).toEqual([]);
    expect(shown(18, '1-2 x 1-3 1.1..').codes).toEqual(['error reference-ambiguous']);
  });

  test('to what is not there are errors that say what there is', () => {
    const { codes, diagnostics } = shown(14, '1--2 1.3..');
    expect(codes).toEqual(['error reference-missing']);
    expect(messageOf(diagnostics[0]!, 'en')).toBe(
      'Level A has no drawing 1.3: from key 1 to key 2 there are 2 in-betweens.',
    );
    expect(messageOf(shown(14, '1 2 1.1..').diagnostics[0]!, 'en')).toContain(
      'no in-between leads from key 1',
    );
  });
});

describe('a reference', () => {
  test('by its full name means the drawing whatever its key leads to', () => {
    expect(shown(8, '1-2 1>2.1..').runs).toBe('1*2 1.1*2 2*2 1.1*2');
  });

  test('that is ambiguous is mended by the first passage that is written', () => {
    const { diagnostics } = shown(18, '1-2 x 1-3 1.1..');
    expect(diagnostics[0]!.fix!.edits.map(({ text }) => text)).toEqual(['1>2.1']);
  });

  test('to the other count of a pair means the passage that is written first', () => {
    const { runs } = shown(22, '1--2 x:2 1-2 x:2 1>2.1:4');
    expect(runs.endsWith('x*2 1>2.1*4')).toBe(true);
  });
});

describe('what is said of references, in full', () => {
  test.each<[string, string, string[]]>([
    [
      'a reference to a way that is not there',
      'time 1+0\nA: 1--2 1.3..',
      ['error «1.3..» Level A has no drawing 1.3: from key 1 to key 2 there are 2 in-betweens.'],
    ],
    [
      'a reference to a key that leads nowhere',
      'time 1+0\nA: 1 2 1.1..',
      ['error «1.1..» Level A has no drawing 1.1: no in-between leads from key 1.'],
    ],
    [
      'a reference to a way with its second key',
      'time 1+0\nA: 1--2 1>3.1..',
      ['error «1>3.1..» Level A has no drawing 1>3.1: no in-between leads from key 1 to key 3.'],
    ],
    [
      'a reference to another way of a key',
      'time 1+0\nA: 1-2 x 1-3 1>3.2..',
      ['error «1>3.2..» Level A has no drawing 1>3.2: from key 1 to key 3 there is 1 in-between.'],
    ],
    [
      'a reference that may mean two',
      'time 1+0\nA: 1-2 x 1-3 1.1..',
      [
        'error «1.1..» Key 1 of level A leads to several keys (2, 3), so 1.1 could be any of theirs.',
        ' > write `1>2.1`: «1.1» → «1>2.1»',
      ],
    ],
    [
      'a reference that may mean two and means none',
      'time 1+0\nA: 1-2 x 1-3 1.4..',
      ['error «1.4..» Key 1 of level A leads to several keys (2, 3), so 1.4 could be any of theirs.'],
    ],
    [
      'a reference that may mean one and has a length',
      'time 1+0\nA: 1-2 x 1-3 1.1:4 4..',
      [
        'error «1.1:4» Key 1 of level A leads to several keys (2, 3), so 1.1 could be any of theirs.',
        ' > write `1>2.1`: «1.1» → «1>2.1»',
      ],
    ],
  ])('%s', (_, lines, said) => expect(explained(`cut 1\n${lines}\n`)).toEqual(said));
});

describe('a reference to a key that leads to more keys than are told, in full', () => {
  test.each<[string, string, string[]]>([
    [
      'a reference that may mean many',
      'time 3+0\nA: 1-2 x 1-3 x 1-4 x 1-5 x 1-6 x 1-7 x 1-8 1.1..',
      [
        'error «1.1..» Key 1 of level A leads to several keys (2, 3, 4, 5, 6 …), so 1.1 could be any of theirs.',
        ' > write `1>2.1`: «1.1» → «1>2.1»',
      ],
    ],
  ])('%s', (_, lines, said) => expect(explained(`cut 1\n${lines}\n`)).toEqual(said));
});
