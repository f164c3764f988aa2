import { describe, expect, test } from 'vitest';
import { isBackground } from '../../src/solve/solve-level.js';
import { shown, solveText } from './shown.js';

describe('numbering', () => {
  test('by sequence in the order of first showing, a drawing keeping its number', () => {
    expect(shown(12, '1-2 1 3 1').cels).toBe('1*2 2*2 3*2 1*2 4*2 1*2');
  });

  test('by frame, two drawings never share one', () => {
    expect(shown(6, 'on 1 1-2 x 1 3', 'numbering frame').cels).toBe('1*1 2*1 3*1 x*1 1*1 6*1');
  });
});
describe('the rows of a level', () => {
  test('shown again straight after itself, a drawing is one hold', () => {
    expect(shown(20, '1:12 1--2').runs).toBe('1*14 1.1*2 1.2*2 2*2');
    expect(shown(6, '(1)*3').runs).toBe('1*6');
    expect(shown(6, 'x:2 x:2 x').runs).toBe('x*6');
  });
});

describe('a background', () => {
  test.each(['BG', 'BG2', 'BGB', 'BGX2', 'BOOK', 'BOOK1', 'BOOK_A', 'BG_far'])('is %s', (name) => {
    expect(isBackground(name)).toBe(true);
  });

  test.each(['A', 'BOOKER', 'BGAB', 'bg', 'ABG', 'BG1A', 'BO'])('is not %s', (name) => {
    expect(isBackground(name)).toBe(false);
  });
});

describe('an exposure', () => {
  test('starts where another drawing is seen, and says what and with which number', () => {
    const { exposures } = shown(6, '1 x:1 1..').level;
    expect(exposures).toEqual([
      { frame: 1, kind: 'key', drawing: '1', cel: 1, starts: true, again: false },
      { frame: 2, kind: 'key', drawing: '1', cel: 1, starts: false, again: false },
      { frame: 3, kind: 'empty', drawing: null, cel: null, starts: true, again: false },
      { frame: 4, kind: 'key', drawing: '1', cel: 1, starts: true, again: false },
      { frame: 5, kind: 'key', drawing: '1', cel: 1, starts: false, again: false },
      { frame: 6, kind: 'key', drawing: '1', cel: 1, starts: false, again: false },
    ]);
  });
});

describe('the drawings of a level', () => {
  test('have the frame on which each is first seen and how many it is seen on in all', () => {
    expect(shown(16, '2 1:4 2 1-2:4').level.drawings).toEqual([
      { cel: 1, drawing: '2', kind: 'key', firstFrame: 1, exposedFrames: 8, added: false, reused: false },
      { cel: 2, drawing: '1', kind: 'key', firstFrame: 3, exposedFrames: 6, added: false, reused: false },
      {
        cel: 3,
        drawing: '1.1',
        kind: 'inbetween',
        firstFrame: 11,
        exposedFrames: 2,
        added: false,
        reused: false,
      },
    ]);
  });

  test('that no frame shows are none, and the last number is the highest of the others', () => {
    const { drawings, lastCel } = shown(4, '(1 2 3)..').level;
    expect(drawings.map(({ drawing }) => drawing)).toEqual(['1', '2']);
    expect(lastCel).toBe(2);
  });

  test('new beside pinned ones are called added', () => {
    const { drawings } = shown(8, '1-2 3', 'cels A 1 1.1 2').level;
    expect(drawings.map(({ drawing, added }) => [drawing, added])).toEqual([
      ['1', false],
      ['1.1', false],
      ['2', false],
      ['3', true],
    ]);
  });

  test('pinned and seen no more are missing, by number', () => {
    expect(shown(4, '2..', 'cels A 1 1.1 2 _ 3').level.missing).toEqual([
      { cel: 1, drawing: '1' },
      { cel: 2, drawing: '1.1' },
      { cel: 4, drawing: '' },
      { cel: 5, drawing: '3' },
    ]);
  });

  test('a number that the cut before gives is none missing here', () => {
    const source = solveText('cut 8\ntime 1+0\nC: 1-2..\n').solved.levels[1]!;
    const missing = (line: string) =>
      shown(24, '2..', `level A reuse 8/C\n${line}`, { reused: new Map([['A', source]]) }).level.missing;
    expect(missing('cels A _ 1.1 2')).toEqual([]);
    expect(missing('cels A _ 1.1 2 _')).toEqual([{ cel: 4, drawing: '' }]);
  });

  test('by frame a number that is left out is none missing', () => {
    expect(shown(4, '1 2', 'cels A 1 _ 2\nnumbering frame').level.missing).toEqual([]);
  });
});

test('passages stand in the order in which they are first shown; those never shown are left out', () => {
  const { passages } = shown(16, '(1-2 3-4):8 4-3..').level;
  expect(passages.map(({ from, to, firstFrame }) => [from, to, firstFrame])).toEqual([
    ['1', '2', 3],
    ['4', '3', 11],
  ]);
});

test('a level without a timeline is simply there', () => {
  const { levels } = solveText('cut 1\ntime 8\nlevel BG reuse 8/BG\nA: 1..\n').solved;
  expect(levels[0]).toMatchObject({
    name: 'BG',
    background: true,
    timed: false,
    exposures: [],
    drawings: [],
    lastCel: 0,
    reuse: { cut: '8', level: 'BG' },
  });
});
