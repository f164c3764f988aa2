import { describe, expect, test } from 'vitest';
import { parse } from '../../src/language/parse.js';
import { bind } from '../../src/shot/bind-cut.js';
import { defaults } from '../../src/shot/settings.js';
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

describe('what a level is', () => {
  const levelsOf = (...lines: string[]) => withLines(...lines).shot!.levels;
  const named = (name: string, ...lines: string[]) => levelsOf(...lines).find((one) => one.name === name)!;

  test('with nothing said of it', () => {
    expect(named('BG')).toMatchObject({
      title: '',
      timeline: null,
      mouth: null,
      pinned: null,
      reuse: null,
      sizeMm: null,
      homeMm: { xMm: 0, yMm: 0 },
      free: false,
      carry: false,
      picture: null,
      masks: [],
      drawnWith: [],
    });
  });

  test('with all that can be said of it', () => {
    const all =
      'level B size 300x200mm at 5,6 free carry flash reuse 7/C picture "{level}{number}" masks A,B';
    const B = named('B', 'B "arm": 1..', all);
    expect(B).toMatchObject({
      title: 'arm',
      homeMm: { xMm: 5, yMm: 6 },
      free: true,
      carry: true,
      masks: ['A'],
    });
    expect(B.sizeMm).toMatchObject({ widthMm: 300, heightMm: 200 });
    expect(B.reuse).toMatchObject({ cut: '7', level: 'C' });
    expect(B.picture?.text).toBe('{level}{number}');
  });

  test('of no size it is as if none were said', () => {
    expect(named('BG', 'level BG size 0x200mm').sizeMm).toBeNull();
    expect(named('BG', 'level BG size 200x0mm').sizeMm).toBeNull();
  });

  test('drawn with others: each knows the other, whichever says so, and none itself or what is not there', () => {
    const levels = levelsOf('B: 1..', 'C: 1..', 'level B with A,C,B,Q');
    expect(levels.map(({ name, drawnWith }) => [name, [...drawnWith].sort()])).toEqual([
      ['BG', []],
      ['A', ['B']],
      ['B', ['A', 'C']],
      ['C', ['B']],
    ]);
  });

  test('that flashes is known to the camera, in the order of the stack', () => {
    const { shot } = withLines('B: 1..', 'level B flash', 'level A flash', 'level BG free');
    expect(shot!.camera.flashing).toEqual(['A', 'B']);
  });

  test('of a given stack: those outside it lie on top', () => {
    expect(levelsOf('stack A BG', 'B: 1..').map(({ name }) => name)).toEqual(['A', 'BG', 'B']);
    expect(levelsOf('stack A').map(({ name }) => name)).toEqual(['A']);
  });
});

describe('the order of what is written', () => {
  test('of notes is that of their frames, on one frame that of their words', () => {
    const { notes } = withLines('note 9 "b"', 'note 9 "a"', 'note 3 "z"').shot!;
    expect(notes.map(({ frame, text }) => `${frame}${text}`)).toEqual(['3z', '9a', '9b']);
  });

  test('of lines is that of their first rows, then of their last ones', () => {
    const { spoken } = withLines('voice "A" 9..20 "x"', 'voice "B" 9..12 "x"', 'voice "C" 3..30 "x"').shot!;
    expect(spoken.map(({ speaker }) => speaker)).toEqual(['C', 'B', 'A']);
  });

  test('of artists is that of their names', () => {
    expect(withLines('artist "Uta"', 'artist "Bo"', 'artist "Bo"').shot!.artists).toEqual([
      'Bo',
      'Bo',
      'Uta',
    ]);
  });
});

test('a file that is used by two ways, or that uses the cut, is read once', () => {
  const text = 'cut 1\ntime 5+0\nA: walk..\nphrase walk = 1-2\n';
  const house = 'phrase run = 1-2\n';
  const trees = [
    parse('house.cut', house).tree,
    parse('house.cut', house).tree,
    parse('this.cut', text).tree,
  ];
  expect(bind(parse('this.cut', text).tree, trees, defaults).diagnostics).toEqual([]);
});

test('a mark on which another one hangs is used, the last of them is not', () => {
  const unused = (...lines: string[]) =>
    withLines(...lines).diagnostics.flatMap(({ code, parameters }) =>
      code === 'mark-unused' ? [parameters] : [],
    );
  expect(unused('mark a 3', 'mark b a+2', 'mark c 9')).toEqual([{ mark: 'b' }, { mark: 'c' }]);
  expect(unused('mark a 3', 'mark b a+2', 'note b "x"')).toEqual([]);
});
