import { describe, expect, test } from 'vitest';
import {
  joinedFrames,
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
