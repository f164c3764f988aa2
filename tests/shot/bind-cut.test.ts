import { describe, expect, test } from 'vitest';
import { bindText, withLines } from './bind.js';

const HEAD = 'cut 1\ntime 5+0\n';

function stack(text: string): string[] {
  return bindText(HEAD + text).shot!.levels.map((level) => level.name);
}

describe('the stack', () => {
  test('is BG, then the levels in the order of writing', () => {
    expect(stack('B: 1..\nA: 1..\n')).toEqual(['BG', 'B', 'A']);
    expect(stack('B: 1..\nlevel BOOK1 free\nA: 1..\n')).toEqual(['BG', 'B', 'BOOK1', 'A']);
    expect(stack('A: 1..\nBG: 1..\n')).toEqual(['BG', 'A']);
  });
});

describe('used files', () => {
  test('give phrases, and levels that the cut has', () => {
    const house = 'phrase walk = 1--2--\nlevel BG size 560x200mm\nlevel Z free\n';
    const { shot, codes } = bindText(`${HEAD}use "house.cut"\nA: walk..\n`, [house]);
    expect(codes).toEqual([]);
    expect(shot!.levels.map((level) => [level.name, level.sizeMm?.widthMm ?? null])).toEqual([
      ['BG', 560],
      ['A', null],
    ]);
  });

  test("are overruled by the cut's own words", () => {
    const { shot, codes } = bindText(`${HEAD}phrase walk = 1:9\nlevel BG free\nA: walk..\n`, [
      'phrase walk = 1--2--\nlevel BG size 560x200mm\n',
    ]);
    expect(codes).toEqual([]);
    expect(shot!.levels[0]).toMatchObject({ free: true, sizeMm: null });
  });

  test('that both define a phrase are an error', () => {
    const { codes, diagnostics } = bindText(`${HEAD}A: walk..\n`, [
      'phrase walk = 1-2-\n',
      'phrase walk = 1--2--\n',
    ]);
    expect(codes).toEqual(['error name-twice']);
    expect(diagnostics[0]!.span.file).toBe('used1.cut');
    expect(diagnostics[0]!.notes[0]!.span!.file).toBe('used0.cut');
  });
});

describe('what is missing', () => {
  test('number and time of the cut', () => {
    expect(bindText('A: 1..\n').codes).toEqual(['error cut-missing', 'error time-missing']);
    expect(bindText('').codes).toEqual(['error cut-missing', 'error time-missing']);
  });

  test('a cut without a number is bound all the same', () => {
    expect(bindText('time 5+0\nA: 1..\n').shot).toMatchObject({ cut: '', time: 120 });
  });

  test('the first of two statements holds', () => {
    expect(bindText('cut 1\ntime 5+0\ntime 6+0\nA: 1..\n').shot!.time).toBe(120);
  });

  test('every fault of a text is told in one run', () => {
    const { codes } = bindText('time 5+0\nfps 0\nA: 1:0 wlk @0 2..\nnote nowhere "x"\nvoice "N" 9..3 "y"\n');
    expect([...codes].sort()).toEqual([
      'error cut-missing',
      'error fps-range',
      'error length-zero',
      'error position-zero',
      'error range-backwards',
      'error unknown-mark',
      'error unknown-phrase',
    ]);
  });
});

describe('a statement that may stand once', () => {
  test.each([
    ['A: 2..', 'statement-twice'],
    ['time 4+0', 'statement-twice'],
    ['level A free\nlevel A carry', 'statement-twice'],
  ])('%s gives %s', (line, code) => {
    expect(withLines(line).codes).toEqual([`error ${code}`]);
  });
});

test('the order of statements does not matter', () => {
  const lines = [
    'note hit "x"',
    'mark hit 2+6',
    'A: walk..',
    'phrase walk = 1--2--',
    'time 5+0',
    'fps 12',
    'cut 1',
  ];
  const { shot, codes } = bindText(lines.join('\n'));
  expect(codes).toEqual([]);
  expect(shot).toMatchObject({ fps: 12, time: 60, notes: [{ frame: 30 }] });
});

test('what is said of one place is said once, in however many ways it is found', () => {
  // The phrase is bound for the level that plays it on twos, and for the one on threes.
  expect(withLines('phrase walk = 1:0 2', 'B: walk..', 'C: on 3 walk..').codes).toEqual([
    'error length-zero',
  ]);
});

test('words on one row stand in the order of what they say, whatever the order of writing', () => {
  const spoken = (...lines: string[]) => withLines(...lines).shot!.spoken.map(({ speaker }) => speaker);
  const [a, b] = ['voice "A" 1..9 "x"', 'voice "B" 1..9 "x"'];
  expect(spoken(a, b)).toEqual(['A', 'B']);
  expect(spoken(b, a)).toEqual(['A', 'B']);
});
