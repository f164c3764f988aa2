import { describe, expect, test } from 'vitest';
import { solveText } from './shown.js';

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
    const { solved, codes } = solveText('cut 1\ntime 8\nA: 1..\nB: 1--3\n', {
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
