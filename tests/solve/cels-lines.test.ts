import { describe, expect, test } from 'vitest';
import { displayWidth, lines } from '../../src/language/source.js';
import { betweenText, pinsFor, unpinnable, unused } from '../../src/solve/cels-lines.js';
import type { SolvedLevel, SolvedShot } from '../../src/solve/solved-shot.js';
import { compileText } from '../compile.js';
import { explained } from '../explained.js';
import { pin } from './pin.js';
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

describe('the name of an in-between', () => {
  test.each([
    [{ key: '1', to: null, index: 2, letter: '' }, '1.2'],
    [{ key: '3a', to: '4', index: 10, letter: '' }, '3a>4.10'],
    [{ key: '1', to: null, index: 0, letter: 'b' }, '1.0b'],
  ])('%o', (name, text) => {
    expect(betweenText(name)).toBe(text);
  });
});

describe('the edit for a passage that has grown', () => {
  const added = (items: string, line: string) => {
    const { diagnostics } = shown(96, items, line);
    return diagnostics.find(({ code }) => code === 'cels-count')!.fix?.edits.map(({ text }) => text);
  };

  test('goes on behind the letter of its last name', () => {
    expect(added('1----2..', 'cels A 1 1.1 1.2 2 1.2a')).toEqual([' 1.2b']);
  });

  test('has a name for each new in-between', () => {
    expect(added('1----2..', 'cels A 1 1.1 1.2 2')).toEqual([' 1.2a 1.2b']);
  });

  test('is none where there are no more than 26 letters', () => {
    expect(added(`1${'-'.repeat(27)}2..`, 'cels A 1 1.1 2')).toEqual([
      ` ${Array.from('abcdefghijklmnopqrstuvwxyz', (letter) => `1.1${letter}`).join(' ')}`,
    ]);
    expect(added(`1${'-'.repeat(28)}2..`, 'cels A 1 1.1 2')).toBeUndefined();
  });
});

// ---- pinned numbers: what a `cels` line must say, and that no drawing changes its number by it

const HEAD = 'cut 1\ntime 2+0\n';
const pinned = (rest: string) => pin(HEAD + rest).slice(HEAD.length);

describe('what is pinned', () => {
  test('names in the order of their numbers, under the timeline', () => {
    expect(pinned('A: 1--2-3..\nmemo "x"\n')).toBe('A: 1--2-3..\ncels A 1 1.1 1.2 2 2.1 3\nmemo "x"\n');
  });

  test('a level that shows nothing has none', () => {
    expect(pinned('A: x..\nB: 1..\n')).toBe('A: x..\nB: 1..\ncels B 1\n');
  });

  test('names with their second key where a key leads to several', () => {
    expect(pinned('A: 1-2 x 1-3..\n')).toContain('cels A 1 1>2.1 2 1>3.1 3\n');
  });

  test('in-betweens that the cycle ends before are not pinned, and that is no fault', () => {
    const text = pinned('A: (1--2--):10 3..\n');
    expect(text).toContain('cels A 1 1.1 1.2 2 2>1.1 3\n');
    expect(shown(48, '(1--2--):10 3..', 'cels A 1 1.1 1.2 2 2>1.1 3').codes).toEqual([]);
  });

  test('the same in-betweens are a fault once they are shown', () => {
    const { codes } = shown(48, '(1--2--):12 3..', 'cels A 1 1.1 1.2 2 2>1.1 3');
    expect(codes).toEqual(['error cels-count']);
  });

  test('names of a way back with their second key', () => {
    expect(pinned('A: (1-2-)*2 3-4..\n')).toContain('cels A 1 1.1 2 2>1.1 3 3.1 4\n');
  });

  test('when a key is taken out, it is asked whether the new way is the old one', () => {
    const { cels, codes, diagnostics } = shown(48, '1-3..', 'cels A 1 1.1 2 2.1 3');
    expect([cels, codes]).toEqual(['1*2 2*2 5*44', ['warning cels-passage']]);
    expect(diagnostics[0]!.fix!.edits.map(({ text }) => text)).toEqual(['1>2.1']);
    const said = 'cels A 1 1>2.1 2 2.1 3';
    const { level, ...now } = shown(48, '1-3..', said);
    expect([now.cels, now.codes]).toEqual(['1*2 6*2 5*44', []]);
    expect(level.missing.map(({ drawing }) => drawing)).toEqual(['1>2.1', '2', '2.1']);
    expect(pinned(`A: 1-3..\n${said}\n`)).toContain(`${said} 1>3.1\n`);
  });

  test('a way back that may be another one is asked for, too', () => {
    const { codes, diagnostics, cels } = shown(24, '1-2-1 3..', 'cels A 1 1.1 2 2.1 3');
    expect([codes, cels]).toEqual([['warning cels-passage'], '1*2 2*2 3*2 4*2 1*2 5*14']);
    expect(diagnostics[0]!.fix!.edits.map(({ text }) => text)).toEqual(['2>1.1']);
    expect(shown(24, '1-2-1 3..', 'cels A 1 1.1 2 2>1.1 3').codes).toEqual([]);
  });

  test('names on paper with their second key are shown without it where a key leads to one only', () => {
    expect(shown(24, '1-2..', 'cels A 1 1>2.1 2').level.drawings.map(({ drawing }) => drawing)).toEqual([
      '1',
      '1.1',
      '2',
    ]);
  });

  test('new drawings go to the end of the line, after a retime', () => {
    expect(pinned('A: 1--2-3..\ncels A 1 1.1 1.2 2\n')).toContain('cels A 1 1.1 1.2 2 2.1 3\n');
  });

  test('numbers by frame leave out those on which no drawing starts, without a word on the sheet', () => {
    const text = pinned('numbering frame\nA: 1-2 on 1 3 4..\n');
    expect(text).toContain('cels A 1 _ 1.1 _ 2 _ 3 4\n');
    expect(solveText(HEAD + text).solved.levels.flatMap(({ missing }) => missing)).toEqual([]);
  });

  test('two counts for one pair of keys have no names to be pinned by', () => {
    const level = shown(48, '1--2 x 1---2..').level;
    expect(unpinnable(level)).toMatchObject({
      from: '1',
      to: '2',
      drawings: ['1>2.1/3', '1>2.2/3', '1>2.3/3'],
    });
    expect(unpinnable(shown(48, '1--2 x 1--2..').level)).toBeNull();
  });

  test('what is pinned and not shown is named', () => {
    expect(unused(shown(48, '1--2..', 'cels A 1 1.1 1.2 2 _ 3').level)).toEqual([{ cel: 6, drawing: '3' }]);
  });
});

describe('a level that reuses another cut', () => {
  const eight = (items: string) =>
    solveText(`cut 8\ntime 2+0\nC: ${items}\n`).solved.levels.find(({ name }) => name === 'C')!;
  const source = eight('1--2-3..');
  const given = { reused: new Map<string, SolvedLevel>([['A', source]]) };
  const levelA = ({ levels }: SolvedShot) => levels.find(({ name }) => name === 'A')!;
  const nine = (more: string) => `cut 9\ntime 2+0\nlevel A reuse 8/C\nA: ${more}\n`;

  test('pins what is new only; the numbers of the other cut are left alone and not called missing', () => {
    const { solved } = solveText(nine('1--2 4-5..'), given);
    const [pins] = pinsFor(solved);
    expect(pins).toEqual({ level: 'A', before: 0, names: ['_', '_', '_', '_', '_', '_', '4', '4.1', '5'] });
    const again = solveText(`${nine('1--2 4-5..')}cels A ${pins!.names.join(' ')}\n`, given);
    expect(again.codes).toEqual([]);
    expect(levelA(again.solved).missing).toEqual([]);
    expect(levelA(again.solved).drawings.map(({ cel, drawing }) => `${cel} ${drawing}`)).toEqual(
      levelA(solved).drawings.map(({ cel, drawing }) => `${cel} ${drawing}`),
    );
  });

  test('has nothing to pin where all is reused', () => {
    expect(pinsFor(solveText(nine('1--2-3..'), given).solved)).toEqual([]);
    expect(pinsFor(solveText(nine('1--2-3..')).solved)).toEqual([]);
  });

  test('says so when the other cut grows into a number that is on paper here', () => {
    const grown = eight('1--2-3-6..');
    const text = `${nine('1--2 4-5..')}cels A _ _ _ _ _ _ 4 4.1 5\n`;
    expect(solveText(text, { reused: new Map([['A', grown]]) }).codes).toContain('error reuse-number');
  });
});

describe('where the line is written', () => {
  test('under the timelines that stand together, in their order', () => {
    expect(pinned('A: 1..\nB: 1-2..\n\nC: 1..\n')).toBe(
      'A: 1..\nB: 1-2..\ncels A 1\ncels B 1 1.1 2\n\nC: 1..\ncels C 1\n',
    );
  });

  test('behind a comment at the end of the timeline, and behind lines that go on with it', () => {
    expect(pinned('A: 1-    # one\n   2..   # two\n')).toBe(
      'A: 1-    # one\n   2..   # two\ncels A 1 1.1 2\n',
    );
  });

  test('where the file ends without a line end', () => {
    expect(pinned('A: 1-2..')).toBe('A: 1-2..\ncels A 1 1.1 2');
  });

  test.each(['\r\n', '\r'])('with the line ends of the file (%j)', (end) => {
    const text = `${HEAD}A: 1-2..\n`.replaceAll('\n', end);
    expect(pin(text)).toBe(`${text}cels A 1 1.1 2${end}`);
  });

  test('an old line is added to in front of its comment', () => {
    expect(pinned('cels A 1 1.1   # on paper\nA: 1-2..\n')).toBe('cels A 1 1.1 2   # on paper\nA: 1-2..\n');
  });

  test('a long line goes on in an indented one, and so does that', () => {
    const keys = Array.from({ length: 80 }, (_, i) => i + 1);
    const text = pin(`cut 1\ntime 10+0\nA: ${keys.join(' ')}..\n`);
    const written = text.split('\n').filter((line) => /^cels|^ {7}\d/.test(line));
    expect(written).toHaveLength(3);
    expect(written.every((line) => displayWidth(line) <= 100)).toBe(true);
    const more = pin(
      text.replace(' 80..', ` 80 ${keys.map((key) => key + 80).join(' ')}..`).replace('10+0', '20+0'),
    );
    expect(more.startsWith(text.slice(0, text.indexOf('A:')).replace('10+0', '20+0'))).toBe(true);
    expect(
      lines(more)
        .text.split('\n')
        .filter((line) => displayWidth(line) > 100 && !line.startsWith('A')),
    ).toEqual([]);
    expect(compileText(more).solved!.levels.some(({ drawings }) => drawings.some(({ added }) => added))).toBe(
      false,
    );
  });

  test('the next indented line is indented as the last one is', () => {
    const names = Array.from({ length: 30 }, (_, i) => i + 1).join(' ');
    const long = `cels A 1\n\t${names.slice(2)}   # up to here, and much more than would fit into one line with it`;
    const text = pin(`cut 1\ntime 4+0\nA: ${names} 31..\n${long}\n`);
    expect(text.split('\n').slice(3)).toEqual([...long.split('\n'), '\t31', '']);
  });
});

describe('what is said of a cels line, in full', () => {
  test.each<[string, string, string[]]>([
    [
      'more in-betweens than names',
      'time 1+0\nA: 1---2..\ncels A 1 1.1 1.2 2',
      [
        'error «-» From key 1 to key 2 there are 3 in-betweens here, but 2 on paper (1.1 1.2).',
        ' + «cels A 1 1.1 1.2 2» numbers are pinned here',
        ' + a new in-between is named by its place, as 1.1a comes after 1.1, and stands at the end of that line',
        ' > add 1.2a to the pinned numbers: «» → « 1.2a»',
      ],
    ],
    [
      'many more',
      'time 1+0\nA: 1-----2..\ncels A 1 1.1 1.1a 1.2 2',
      [
        'error «-» From key 1 to key 2 there are 5 in-betweens here, but 3 on paper (1.1 1.1a 1.2).',
        ' + «cels A 1 1.1 1.1a 1.2 2» numbers are pinned here',
        ' + a new in-between is named by its place, as 1.1a comes after 1.1, and stands at the end of that line',
        ' > add 1.2a 1.2b to the pinned numbers: «» → « 1.2a 1.2b»',
      ],
    ],
    [
      'more than there are letters',
      'time 2+0\nA: on 1 1{even}----------------------------2..\ncels A 1 1.1 2',
      [
        'error «-» From key 1 to key 2 there are 28 in-betweens here, but 1 on paper (1.1).',
        ' + «cels A 1 1.1 2» numbers are pinned here',
        ' + a new in-between is named by its place, as 1.1a comes after 1.1, and stands at the end of that line',
      ],
    ],
    [
      'fewer in-betweens than names',
      'time 1+0\nA: 1-2..\ncels A 1 1.1 1.2 1.3 2',
      [
        'error «-» From key 1 to key 2 there is 1 in-between here, but 3 on paper (1.1 1.2 1.3).',
        ' + «cels A 1 1.1 1.2 1.3 2» numbers are pinned here',
        ' + a drawing that is dropped leaves `_` in that line, so that the other numbers stay',
        ' > mark the numbers of 1.2 1.3 as not used: «1.2» → «_»',
        ' > mark the numbers of 1.2 1.3 as not used: «1.3» → «_»',
      ],
    ],
    [
      'names before another key than they lead to',
      'time 1+0\nA: 1-2..\ncels A 1 1.1 3 2',
      [
        'warning «1.1» Key 1 leads to key 2, but in this line 1.1 stands before key 3: is it the passage to 2 that is on paper?',
        ' > name it `1>3.1`: «1.1» → «1>3.1»',
      ],
    ],
    [
      'names before another key, after the one that they lead to',
      'time 1+0\nA: 2 1--2..\ncels A 2 1 1.1 1.2 3',
      [
        'warning «1.1» Key 1 leads to key 2, but in this line 1.1 stands before key 3: is it the passage to 2 that is on paper?',
        ' > name them `1>2.1` and so on: «1.1» → «1>2.1»',
        ' > name them `1>2.1` and so on: «1.2» → «1>2.2»',
      ],
    ],
    [
      'names that may belong to two ways',
      'time 1+0\nA: 1-2 x 1--3..\ncels A 1 2 3 1.1 1.2',
      [
        'error «1.1» Key 1 leads to several keys (2, 3); name its in-betweens with the key that they lead to.',
        ' > name them `1>3.1` and so on: «1.1» → «1>3.1»',
        ' > name them `1>3.1` and so on: «1.2» → «1>3.2»',
      ],
    ],
    [
      'names that may belong to two ways and fit none',
      'time 1+0\nA: 1-2 x 1--3..\ncels A 1 2 3 1.1 1.2 1.3 1.4',
      [
        'error «-» From key 1 to key 2 there is 1 in-between here, but 4 on paper (1.1 1.2 1.3 1.4).',
        ' + «cels A 1 2 3 1.1 1.2 1.3 1.4» numbers are pinned here',
        ' + a drawing that is dropped leaves `_` in that line, so that the other numbers stay',
        ' > mark the numbers of 1.2 1.3 1.4 as not used: «1.2» → «_»',
        ' > mark the numbers of 1.2 1.3 1.4 as not used: «1.3» → «_»',
        ' > mark the numbers of 1.2 1.3 1.4 as not used: «1.4» → «_»',
        'error «1.1» Key 1 leads to several keys (2, 3); name its in-betweens with the key that they lead to.',
        ' > name them `1>2.1` and so on: «1.1» → «1>2.1»',
        ' > name them `1>2.1` and so on: «1.2» → «1>2.2»',
        ' > name them `1>2.1` and so on: «1.3» → «1>2.3»',
        ' > name them `1>2.1` and so on: «1.4» → «1>2.4»',
      ],
    ],
    ['names with their second key', 'time 1+0\nA: 1-2 x 1--3..\ncels A 1 2 3 1>2.1 1>3.1 1>3.2', []],
    ['names in any order', 'time 1+0\nA: 1---2..\ncels A 1 1.2 1.1a 1.1 2', []],
    [
      'names of a cycle that ends before its last',
      'time 1+0\nA: (1---2):4 @9 3..\ncels A 1 1.1 2 3',
      [
        'error «@9» The item before stops on frame 4, and nothing is said for the 4 frames before frame 9.',
        ' + «(1---2):4» the item before',
        ' > repeat it until there: «:4» → «..»',
      ],
    ],
    ['a chart drawn for another count', 'time 1+0\nA: 1{late}--2..\ncels A 1 1.1 _ 1.3 2', []],
    ['even in-betweens of which one is lost', 'time 1+0\nA: 1--2..\ncels A 1 1.1 1.2 _ 2', []],
  ])('%s', (_, lines, said) => expect(explained(`cut 1\n${lines}\n`)).toEqual(said));
});

describe('the number of each drawing under a cels line', () => {
  /** `1=1 1.1=2`: drawing and number, in the order of first showing. */
  const numbers = (items: string, cels: string): string =>
    shown(24, items, cels)
      .level.drawings.map(({ drawing, cel }) => `${drawing}=${cel}`)
      .join(' ');

  test.each([
    [
      'new in-betweens go behind the last number',
      '1---2..',
      'cels A 1 1.1 1.2 2',
      '1=1 1.1=2 1.2=3 2=4 1.3=5',
    ],
    [
      'names with their second key',
      '1-2 x 1--3..',
      'cels A 1 2 3 1>2.1 1>3.1 1>3.2',
      '1=1 2=2 3=3 1>2.1=4 1>3.1=5 1>3.2=6',
    ],
    ['names in any order', '1---2..', 'cels A 1 1.2 1.1a 1.1 2', '1=1 1.2=2 1.1a=3 1.1=4 2=5'],
    [
      'names that fit one of two ways',
      '1-2 x 1--3..',
      'cels A 1 2 3 1.1 1.2',
      '1=1 2=2 3=3 1.1=4 1.2=5 1>2.1=6',
    ],
    [
      'names that fit no way',
      '1-2 x 1--3..',
      'cels A 1 2 3 1.1 1.2 1.3 1.4',
      '1=1 2=2 3=3 1>2.1=8 1>3.1=9 1>3.2=10',
    ],
    ['a drawing in the middle that is lost', '1{late}--2..', 'cels A 1 1.1 _ 1.3 2', '1=1 1.1=2 1.3=4 2=5'],
  ])('%s', (_, items, cels, expected) => {
    // Where numbers stand is told in the order of the drawings on paper.
    const sorted = (text: string) => text.split(' ').sort().join(' ');
    expect(sorted(numbers(items, cels))).toBe(sorted(expected));
  });
});
