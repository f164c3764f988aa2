import { describe, expect, test } from 'vitest';
import {
  joinedFrames,
  showingsOf,
  stretchesAt,
  stretchesIn,
  stretchesOf,
  stretchOn,
} from '../../src/solve/text-to-frames.js';
import { compileText } from '../compile.js';

const text = `cut 1
time 3+0
A: 1:6 2--3:12 (4 5)*2
  x..
B: x:24 1..
note 2+12 "turns"
voice "Pim" 1+1..2+0 "Here."
field N 60%
truck full@1+1 > N@2+0
fade in 1..12
`;
const shot = compileText(text).shot!;
const at = (piece: string, more = 0) =>
  joinedFrames(stretchesIn(shot, 'this.cut', text.indexOf(piece) + more));

describe('frames of a place in the text', () => {
  test('an item has the frames that it is exposed on', () => {
    expect(at('1:6')).toEqual([{ from: 1, to: 6 }]);
    expect(at('3:12', 1)).toEqual([{ from: 13, to: 24 }]);
    expect(at('x..', 1)).toEqual([{ from: 33, to: 72 }]);
  });
  test('an item of a cycle has those of every pass', () => {
    expect(at('4 5')).toEqual([
      { from: 25, to: 26 },
      { from: 29, to: 30 },
    ]);
  });
  test('a cursor between two items touches both, and blanks touch none', () => {
    expect(at('--3', 0)).toEqual([{ from: 7, to: 10 }]);
    expect(at('\nnote')).toEqual([{ from: 25, to: 72 }]);
    expect(at('cut 1')).toEqual([]);
  });
  test('words, notes, moves and light have their rows', () => {
    expect(at('note')).toEqual([{ from: 60, to: 60 }]);
    expect(at('Pim')).toEqual([{ from: 25, to: 48 }]);
    expect(at('truck')).toEqual([{ from: 25, to: 48 }]);
    expect(at('fade')).toEqual([{ from: 1, to: 12 }]);
  });
  test('another file has none', () => {
    expect(stretchesIn(shot, 'other.cut', 30)).toEqual([]);
  });
});

test('a frame knows what is said of it', () => {
  expect(stretchesAt(shot, 60).map(({ kind, level }) => [kind, level])).toEqual([
    ['drawing', 'A'],
    ['drawing', 'B'],
    ['note', null],
  ]);
  expect(stretchesOf(shot).every(({ from, to }) => from >= 1 && to <= 72)).toBe(true);
});

test('a press in the column of a level means its drawing, elsewhere what is no drawing, else any', () => {
  const on = (frame: number, level: string | null) => stretchOn(shot, frame, level);
  expect(on(60, 'A')).toMatchObject({ kind: 'drawing', level: 'A' });
  expect(on(60, null)).toMatchObject({ kind: 'note' });
  expect(on(59, null)).toMatchObject({ kind: 'drawing', level: 'A' });
  expect([on(60, 'Z'), on(73, null)]).toEqual([undefined, undefined]);
});

describe('all stretches of a cut', () => {
  const text = `cut 1
time 1+0
A: 1:4 x:8 2..
note 5 "turns"
sound 3..8 "bell"
level A free
pull A right 1mm/f 20..24
expose A 50% 9..30
`;
  const told = stretchesOf(compileText(text).shot!).map(({ kind, level, from, to, span }) => [
    kind,
    level,
    from,
    to,
    text.slice(span.start, span.end),
  ]);

  test('are its drawings, then words, notes, moves and light, within the sheet', () => {
    expect(told).toEqual([
      ['drawing', 'A', 1, 4, '1:4'],
      ['drawing', 'A', 5, 12, 'x:8'],
      ['drawing', 'A', 13, 24, '2..'],
      ['speech', null, 3, 8, 'sound 3..8 "bell"'],
      ['note', null, 5, 5, 'note 5 "turns"'],
      ['move', null, 20, 24, 'pull A right 1mm/f 20..24'],
      ['light', null, 9, 24, 'expose A 50% 9..30'],
    ]);
  });

  test('have nothing of what lies behind the sheet', () => {
    const late = compileText('cut 1\ntime 1+0\nexpose BG 50% 25..30\n').shot!;
    expect(stretchesOf(late)).toEqual([]);
  });

  test('of a level without a timeline are none, and a cycle shows its items again', () => {
    const { shot } = compileText('cut 1\ntime 12\nA: (1 2)*3\n');
    expect(showingsOf(shot!, 'BG')).toEqual([]);
    expect(showingsOf(shot!, 'A').map(({ from, to, again }) => [from, to, again])).toEqual([
      [1, 2, false],
      [3, 4, false],
      [5, 6, true],
      [7, 8, true],
      [9, 10, true],
      [11, 12, true],
    ]);
  });
});

test('frames that meet or overlap are joined, in whatever order they come', () => {
  const of = (...all: [number, number][]) =>
    joinedFrames(all.map(([from, to]) => ({ from, to }))).map(({ from, to }) => [from, to]);
  expect(of([9, 12], [1, 4], [5, 6], [2, 3])).toEqual([
    [1, 6],
    [9, 12],
  ]);
  expect(of([1, 4], [6, 7])).toEqual([
    [1, 4],
    [6, 7],
  ]);
  expect(of([1, 9], [2, 3])).toEqual([[1, 9]]);
  expect(of()).toEqual([]);
});
