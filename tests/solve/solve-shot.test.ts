import { describe, expect, test } from 'vitest';
import { isBackground } from '../../src/solve/solve-shot.js';
import { shown, solveText } from './shown.js';

describe('the whole cut of the reference', () => {
  const { solved, codes } = solveText(`cut 12 "Rooftop, dusk"
time 5+0
artist "M. Arai"
memo "Wind from screen left throughout."
stack BG A BOOK1 B
A "Nao":  1:12 1--2-3:1+0 (4-5-)*3 6..
B "scarf": x:24 (1--2--)..
voice "Nao" 1+6..2+20 "Wait for me!"
sound 3+1..3+8 "door slams"
level BG size 560x200mm at 130,0
`);

  test('has 8 keys, 9 in-betweens, 17 drawings, and nothing to be said', () => {
    expect(solved.counts).toEqual({
      keys: 8,
      breakdowns: 0,
      inbetweens: 9,
      drawings: 17,
      reused: 0,
      backgrounds: 0,
    });
    expect(codes).toEqual([]);
  });

  test('has its stack from bottom to top', () => {
    expect(solved.levels.map((level) => [level.name, level.timed])).toEqual([
      ['BG', false],
      ['A', true],
      ['BOOK1', false],
      ['B', true],
    ]);
  });

  test('shows one thing on each of its 120 frames', () => {
    for (const level of solved.levels.filter((each) => each.timed)) {
      expect(level.exposures.map((each) => each.frame)).toEqual(Array.from({ length: 120 }, (_, i) => i + 1));
    }
  });
});

test('what a background or an overlay shows is counted by itself', () => {
  const cut = 'cut 1\ntime 1+0\nstack BG BGX2 A BOOK1 BOOKER\n';
  const { solved } = solveText(`${cut}BG: 1:12 2..\nBGX2: 1..\nA: 1--2..\nBOOK1: 1..\nBOOKER: 1..\n`);
  expect(solved.counts).toEqual({
    keys: 3,
    breakdowns: 0,
    inbetweens: 2,
    drawings: 5,
    reused: 0,
    backgrounds: 4,
  });
  expect(solved.levels.map(({ background }) => background)).toEqual([true, true, false, true, false]);
});

test('what is wrong with a phrase that two levels play is said once', () => {
  const { codes } = solveText('cut 1\ntime 24\nphrase walk = 1--1{late}\nA: walk 2..\nB: walk 2..\n');
  expect(codes).toEqual(['warning chart-unused']);
});

describe('a level that is recalled', () => {
  const text = 'cut 1\ntime 8\nA: 1..\nB: 1--2\n';

  test('is not solved again, and its messages are told as if it had been', () => {
    const asked: string[] = [];
    const known = solveText(text).solved.levels[2]!;
    const { solved, codes } = solveText('cut 1\ntime 0+8\nA: 1..\nB: 1--3\n', {
      recall: (level, solve, report) => {
        asked.push(level.name);
        return level.name === 'B' ? known : solve(report);
      },
    });
    expect(asked).toEqual(['BG', 'A', 'B']);
    expect(solved.levels[2]).toBe(known);
    expect(codes).toEqual([]);
    expect(solved.counts.drawings).toBe(5);
  });
});

describe('what the camera knows of a level', () => {
  const at = (frames: number, items: string) =>
    solveText(
      `cut 1\ntime ${frames}\nlevel A size 260x150mm\nA: ${items}\nfield B full at 20,0\npan full@1 > B@8\n`,
    );

  test('it shows on the frames on which it is not empty', () => {
    // 7 mm are free to the right, so the edge shows from the fourth frame on.
    expect(at(8, '1..').codes).toContain('warning artwork-edge');
    expect(at(8, '1 x..').codes).not.toContain('warning artwork-edge');
  });

  test('an empty one flashes each time that it appears', () => {
    const flashes = (items: string) =>
      solveText(`cut 1\ntime 1+0\nlevel A flash\nA: ${items}\n`).codes.filter((code) => /flash/.test(code));
    expect(flashes('(x:2 1:2)..')).toContain('warning flashes');
    expect(flashes('x:2 1:2 x..')).not.toContain('warning flashes');
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
      { frame: 1, kind: 'key', drawing: '1', cel: 1, starts: true, again: false, back: false },
      { frame: 2, kind: 'key', drawing: '1', cel: 1, starts: false, again: false, back: false },
      { frame: 3, kind: 'empty', drawing: null, cel: null, starts: true, again: false, back: false },
      { frame: 4, kind: 'key', drawing: '1', cel: 1, starts: true, again: false, back: false },
      { frame: 5, kind: 'key', drawing: '1', cel: 1, starts: false, again: false, back: false },
      { frame: 6, kind: 'key', drawing: '1', cel: 1, starts: false, again: false, back: false },
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
