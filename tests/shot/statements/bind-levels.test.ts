import { describe, expect, test } from 'vitest';
import { explained } from '../../explained.js';
import { bindText, withLines } from '../bind.js';

const HEAD = 'cut 1\ntime 5+0\n';

function stack(text: string): string[] {
  return bindText(HEAD + text).shot!.levels.map((level) => level.name);
}

describe('the stack', () => {
  test('that is given is the whole of it', () => {
    expect(stack('stack 空 A BOOK1 B\nB: 1..\nA: 1..\n')).toEqual(['空', 'A', 'BOOK1', 'B']);
  });

  test('with a level outside it is an error that offers to put it in', () => {
    const { codes, diagnostics } = bindText(`${HEAD}stack BG A\nA: 1..\nB: 1..\n`);
    expect(codes).toEqual(['error level-outside']);
    expect(diagnostics[0]!.fix!.edits[0]!.text).toBe(' B');
  });

  test('that cannot be read is not held against the levels', () => {
    expect(bindText(`${HEAD}stack BG 7\nA: 1..\nB: 1..\n`).codes).toEqual([]);
  });
});

describe('a level', () => {
  test('has size, home and what else is said of it', () => {
    const { shot } = bindText(
      `${HEAD}level BG size 560x200mm at 130,0\nlevel B carry free reuse 8/C\nB: 1..\n`,
    );
    expect(shot!.levels).toMatchObject([
      {
        name: 'BG',
        timeline: null,
        sizeMm: { widthMm: 560, heightMm: 200 },
        homeMm: { xMm: 130, yMm: 0 },
        free: false,
        carry: false,
      },
      {
        name: 'B',
        sizeMm: null,
        homeMm: { xMm: 0, yMm: 0 },
        free: true,
        carry: true,
        reuse: { cut: '8', level: 'C' },
      },
    ]);
  });

  test('are drawn to one another, whichever of the two says so, and mask others', () => {
    const { levels } = bindText(
      `${HEAD}stack BG A B C D\nlevel B with A,BG\nlevel D masks A,B\nA: 1..\nB: 1..\nC: 1..\nD: 1..\n`,
    ).shot!;
    expect(levels.map(({ name, drawnWith, masks }) => [name, [...drawnWith].sort(), masks])).toEqual([
      ['BG', ['B'], []],
      ['A', ['B'], []],
      ['B', ['A', 'BG'], []],
      ['C', [], []],
      ['D', [], ['A', 'B']],
    ]);
  });

  test('may be called like a statement', () => {
    expect(stack('note: 1..\n')).toEqual(['BG', 'note']);
  });

  test.each([
    ['level BG size 0x200mm', 'size-zero'],
    ['level A reuse 1/A', 'reuse-self'],
    ['level A with A', 'level-to-itself'],
    ['level A masks BG,A', 'level-to-itself'],
    ['level A with Q', 'unknown-level'],
    ['cels Q 1', 'unknown-level'],
    ['cels A 1 1', 'cels-twice'],
    ['stack BG A A', 'stack-twice'],
  ])('%s gives %s', (line, code) => {
    expect(withLines(line).codes).toEqual([`error ${code}`]);
  });

  test('that reuses its own name of another cut is fine', () => {
    expect(withLines('level A reuse 2/A').codes).toEqual([]);
  });
});

describe('a level that is not there', () => {
  test('is guessed at', () => {
    const { diagnostics } = withLines('HERON: 1..', 'cels HRON 1');
    expect(diagnostics[0]).toMatchObject({ code: 'unknown-level', fix: { edits: [{ text: 'HERON' }] } });
  });

  test('is not told of where an unreadable statement began it', () => {
    expect(withLines('Q: 1 ???', 'cels Q 1').codes).toEqual([]);
  });

  test('is BG only under a given stack', () => {
    expect(withLines('glow BG 1..9').codes).toEqual([]);
    expect(withLines('stack A', 'glow BG 1..9').codes).toEqual(['error unknown-level']);
  });

  test('is left out of a list, and one that is named twice stands once', () => {
    const { shot, codes } = withLines('glow A,Q,A 1..9');
    expect(codes).toEqual(['error unknown-level', 'warning level-repeated']);
    expect(shot!.camera.light).toMatchObject([{ levels: ['A'] }]);
  });
});

describe('a cels line', () => {
  test('that names a drawing twice keeps the first number, the other is unused', () => {
    const { shot } = withLines('cels A 1 1.1 1 _ 1.1');
    const { pinned } = shot!.levels.find(({ name }) => name === 'A')!;
    expect(pinned!.names.map(({ form }) => form)).toEqual(['key', 'between', 'unused', 'unused', 'unused']);
  });

  test('tells drawings with and without a second key apart', () => {
    expect(withLines('cels A 1 1.1 1>2.1 2').codes).toEqual([]);
  });
});

describe('a phrase', () => {
  test('are checked even where nothing plays them', () => {
    expect(withLines('phrase walk = 1:0 2').codes).toEqual(['error length-zero', 'hint phrase-unused']);
  });

  test('that nothing plays is a hint', () => {
    expect(withLines('phrase walk = 1--2--').codes).toEqual(['hint phrase-unused']);
    expect(withLines('phrase walk = 1--2--', 'B: walk..').codes).toEqual([]);
  });

  test('that only another phrase plays counts as played, in whatever order they stand', () => {
    const [both, walk] = ['phrase both = walk walk', 'phrase walk = 1--2--'];
    expect(withLines(both, walk).codes).toEqual(['hint phrase-unused']);
    expect(withLines(walk, both).codes).toEqual(['hint phrase-unused']);
  });
});

describe('a timeline', () => {
  test('gives its level a title and items', () => {
    const { shot } = withLines('B "scarf": x:24 1..');
    expect(shot!.levels.find(({ name }) => name === 'B')).toMatchObject({
      title: 'scarf',
      timeline: {
        whole: true,
        items: [
          { kind: 'empty', frames: 24 },
          { kind: 'key', open: true },
        ],
      },
    });
  });

  test('is exposed as the cut says', () => {
    const { shot } = withLines('on 3', 'B: 1 2..');
    expect(shot!.levels.find(({ name }) => name === 'B')!.timeline!.items).toMatchObject([
      { frames: 3 },
      { frames: 3 },
    ]);
  });
});

describe('what is said of a level, in full', () => {
  test.each<[string, string, string[]]>([
    [
      'a level beyond the stack',
      'time 1+0\nstack BG A\nA: 1..\nB: 1..',
      [
        'error «B» Level `B` is not in the stack.',
        ' + «stack BG A» the stack is given here',
        ' > put `B` on top of the stack: «» → « B»',
      ],
    ],
    [
      'one whose name is nearly right',
      'time 1+0\nstack BG Arm\nArm: 1..\nArn: 1..',
      [
        'error «Arn» Level `Arn` is not in the stack; did you mean `Arm`?',
        ' + «stack BG Arm» the stack is given here',
        ' > put `Arn` on top of the stack: «» → « Arn»',
      ],
    ],
    [
      'a stack with a level twice',
      'time 1+0\nstack BG A A\nA: 1..',
      [
        'error «A» Level `A` stands in the stack twice.',
        ' + «A» it stands first here',
        ' > take it out here: « A» → «»',
      ],
    ],
    [
      'a size of nothing',
      'time 1+0\nlevel BG size 0x200mm',
      ['error «0x200mm» The artwork of level `BG` has no size.'],
    ],
    [
      'another size of nothing',
      'time 1+0\nlevel BG size 200x0mm',
      ['error «200x0mm» The artwork of level `BG` has no size.'],
    ],
    [
      'a cut that reuses itself',
      'time 1+0\nlevel A reuse 1/A\nA: 1..',
      ['error «1/A» Level `A` cannot reuse its own drawings.'],
    ],
    ['another level of this cut', 'time 1+0\nlevel A reuse 1/B\nA: 1..\nB: 1..', []],
    [
      'a level that masks itself',
      'time 1+0\nlevel A masks A\nA: 1..',
      ['error «A» Level `A` cannot mask itself; name the level that it hides.'],
    ],
    [
      'a level that is drawn with itself and another',
      'time 1+0\nlevel A with A,B\nA: 1..\nB: 1..',
      ['error «A» Level `A` cannot be drawn to itself; name the other level.'],
    ],
    [
      'one drawn with what is not there',
      'time 1+0\nlevel A with Q\nA: 1..',
      ['error «Q» This cut has no level `Q`.'],
    ],
    [
      'a name of scans with a part that nobody knows',
      'time 1+0\nlevel A picture "{foo}"\nA: 1..',
      ['error «"{foo}"» `{foo}` means nothing in the name of a scan; write `{cut}`, `{level}`, `{number}`.'],
    ],
    [
      'a level that is said twice',
      'time 1+0\nlevel A free\nlevel A carry\nA: 1..',
      [
        'error «level A carry» `level A` is said twice.',
        ' + «level A free» the first is here',
        ' > say it all in one line: «» → « carry»',
        ' > say it all in one line: «\nlevel A carry» → «»',
      ],
    ],
    [
      'a cels line that is said twice',
      'time 1+0\nA: 1..\ncels A 1\ncels A 1 2',
      ['error «cels A 1 2» `cels A` is said twice.', ' + «cels A 1» the first is here'],
    ],
    ['a cels line of no level', 'time 1+0\nA: 1..\ncels B 1', ['error «B» This cut has no level `B`.']],
    [
      'a cels line with a drawing twice',
      'time 1+0\nA: 1-2..\ncels A 1 1.1 1 2',
      [
        'error «1» Drawing 1 stands in this line twice; a drawing has one number.',
        ' + «1» it stands first here',
        ' > mark the number as not used: «1» → «_»',
      ],
    ],
    ['a cels line with gaps', 'time 1+0\nA: 1-2..\ncels A 1 _ _ 1.1 2', []],
    [
      'a timeline that is said twice',
      'time 1+0\nA: 1..\nA: 2..',
      ['error «A: 2..» The timeline of level `A` is said twice.', ' + «A: 1..» the first is here'],
    ],
    [
      'a phrase that is said twice',
      'time 1+0\nA: 1..\nphrase walk = 1-2\nphrase walk = 1-3\nB: walk..',
      [
        'error «phrase walk = 1-3» There are two of phrase `walk`.',
        ' + «phrase walk = 1-2» the first is here',
      ],
    ],
  ])('%s', (_, lines, said) => expect(explained(`cut 1\n${lines}\n`)).toEqual(said));
});
