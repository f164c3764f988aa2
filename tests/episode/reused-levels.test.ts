import { describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { codes, compiled, compiledIn, readsOf, told } from './episode.js';

const cut = (number: string, lines: string): string => `cut ${number}\ntime 2+0\n${lines}\n`;
/** The numbers of a level's drawings, by name. */
const numbers = (one: { solved: { levels: readonly unknown[] } | null } | undefined, level: string) => {
  const levels = one!.solved!.levels as readonly {
    name: string;
    drawings: readonly { cel: number; drawing: string; reused: boolean }[];
  }[];
  return levels
    .find(({ name }) => name === level)!
    .drawings.map(({ cel, drawing, reused }) => `${cel}=${drawing}${reused ? '' : ' new'}`)
    .join(' ');
};

describe('a level that reuses one', () => {
  test('through several cuts has the numbers of the first', async () => {
    const cuts = await compiled({
      '7.cut': cut('7', 'C: 3-1..'),
      '8.cut': cut('8', 'level D reuse 7/C\nD: 3-1 5..'),
      '9.cut': cut('9', 'level E reuse 8/D\nE: 5 1 6..'),
    });
    expect(numbers(cuts['7.cut'], 'C')).toBe('1=3 new 2=3.1 new 3=1 new');
    expect(numbers(cuts['8.cut'], 'D')).toBe('1=3 2=3.1 3=1 4=5 new');
    expect(numbers(cuts['9.cut'], 'E')).toBe('3=1 4=5 5=6 new');
  });

  test('shows what was drawn for the first cut, though the one between does not', async () => {
    const cuts = await compiled({
      '1.cut': cut('1', 'A: 1--2--3..'),
      '2.cut': cut('2', 'level A reuse 1/A\nA: 1--2..'),
      '3.cut': cut('3', 'level A reuse 2/A\nA: 1--2 3..'),
      '4.cut': cut('4', 'level A reuse 3/A\nA: 2--3 4..'),
    });
    expect(numbers(cuts['3.cut'], 'A')).toBe('1=1 2=1.1 3=1.2 4=2 7=3');
    expect(cuts['3.cut']!.solved!.counts).toMatchObject({ drawings: 0, reused: 5 });
    expect(numbers(cuts['4.cut'], 'A')).toBe('4=2 5=2.1 6=2.2 7=3 8=4 new');
    expect(Object.values(cuts).flatMap((one) => codes(one))).toEqual([]);
  });

  test('has its numbers where something is wrong in the manifest, too', async () => {
    const cuts = await compiled({
      'episode.yaml': 'title: "T"\nduo: 3\nfps: many\ncuts: ["*.cut"]\n',
      '1.cut': cut('1', 'A: 1-2..'),
      '2.cut': cut('2', 'level A reuse 1/A\nA: 2 3..'),
    });
    expect(codes(cuts['2.cut'])).toEqual(['episode-key', 'episode-value']);
    expect(numbers(cuts['2.cut'], 'A')).toBe('3=2 4=3 new');
    expect(cuts['2.cut']!.solved!.counts).toMatchObject({ drawings: 1, reused: 1 });
  });

  test('is warned where another cut adds drawings of the same numbers to it', async () => {
    const cuts = await compiled({
      '1.cut': cut('1', 'A: 1--2..'),
      '2.cut': cut('2', 'level A reuse 1/A\nA: 2 3..'),
      '3.cut': cut('3', 'level D reuse 1/A\nD: 2 4..'),
      '4.cut': cut('4', 'level A reuse 2/A\nA: 2 4..'),
      '5.cut': cut('5', 'level A reuse 1/A\ncels A _ _ _ _ _ _ 5\nA: 2 5..'),
    });
    expect(codes(cuts['2.cut'])).toEqual([]);
    expect(codes(cuts['3.cut'])).toEqual(['reuse-twice']);
    expect(told(cuts['3.cut'], 'reuse-twice')[0]).toMatch(
      /Cut 2 adds A5 to level A of cut 1, and so does this cut: .* Reuse `2\/A`/,
    );
    // Numbered on from those of cut 2, and behind all of them.
    expect(codes(cuts['4.cut'])).toEqual([]);
    expect(codes(cuts['5.cut'])).toEqual([]);
    expect(numbers(cuts['5.cut'], 'A')).toBe('4=2 7=5 new');
  });

  test('goes on behind the highest number of the other cut, also where that is pinned', async () => {
    const cuts = await compiled({
      '8.cut': cut('8', 'cels C 1 _ _ 2\nC: 1 2..'),
      '9.cut': cut('9', 'level C reuse 8/C\nC: 2 3..'),
    });
    expect(numbers(cuts['9.cut'], 'C')).toBe('4=2 5=3 new');
  });

  test('of the same cut is fine, too', async () => {
    const cuts = await compiled({ '8.cut': cut('8', 'C: 1--2..\nlevel D reuse 8/C\nD: 2 1..') });
    expect(numbers(cuts['8.cut'], 'D')).toBe('1=1 4=2');
  });

  test('may lend to a cut from which another level comes', async () => {
    const cuts = await compiled({
      '8.cut': cut('8', 'C: 1-2..\nlevel D reuse 9/D\nD: 4 5..'),
      '9.cut': cut('9', 'level C reuse 8/C\nC: 2 3..\nD: 5 4..'),
    });
    expect([told(cuts['8.cut'], 'reuse'), told(cuts['9.cut'], 'reuse')]).toEqual([[], []]);
    expect(numbers(cuts['8.cut'], 'D')).toBe('1=5 2=4');
    expect(numbers(cuts['9.cut'], 'C')).toBe('3=2 4=3 new');
  });

  test('takes artwork that is simply there, which has no numbers', async () => {
    const cuts = await compiled({
      '8.cut': cut('8', 'A: 1..'),
      '9.cut': cut('9', 'level BG reuse 8/BG\nA: 1..'),
    });
    expect(codes(cuts['9.cut'])).toEqual([]);
  });

  test('finds no drawings on a level without a timeline', async () => {
    const cuts = await compiled({
      '8.cut': cut('8', 'A: 1..'),
      '9.cut': cut('9', 'level A reuse 8/BG\nA: 1..'),
    });
    expect(told(cuts['9.cut'], 'reuse')).toEqual([
      'reuse-unknown 8/BG: Level BG of cut 8 has no timeline, so it has no drawings that could be shown here.',
    ]);
  });

  test('and shows nothing of it gets a hint', async () => {
    const cuts = await compiled({
      '8.cut': cut('8', 'C: 1--2 3 4 5 6..'),
      '9.cut': cut('9', 'level C reuse 8/C\nC: 11..'),
    });
    expect(told(cuts['9.cut'], 'reuse')).toEqual([
      'reuse-nothing 8/C: Level C shows 11, and level C of cut 8 has 1, 1.1, 1.2, 2, 3, 4, …: nothing is reused.',
    ]);
  });

  test('finds its cut by number, written in any way', async () => {
    const cuts = await compiled({
      '8.cut': 'cut ０８\ntime 2+0\nC: 1..\n',
      '9.cut': cut('9', 'level C reuse 8/C\nC: 1..'),
    });
    expect(codes(cuts['9.cut'])).toEqual([]);
  });
});

test('a level may go through a hundred cuts, and the first of them is not compiled for long', async () => {
  const chain = (length: number) =>
    Object.fromEntries(
      Array.from({ length }, (_, i) => {
        const number = length - i;
        const lines = number === 1 ? 'C: 7 8..' : `level C reuse ${number - 1}/C\nC: 8 7..`;
        return [`c${number}.cut`, cut(`${number}`, lines)];
      }),
    );
  const hundred = await compiled(chain(101), 'c101.cut');
  expect(codes(hundred['c101.cut'])).toEqual([]);
  expect(numbers(hundred['c101.cut'], 'C')).toBe('1=7 2=8');
  const more = await compiled(chain(102), 'c102.cut');
  expect(told(more['c102.cut'], 'reuse')).toEqual([
    'reuse-unknown 101/C: The level goes through more than 100 cuts, so the numbers of `101/C` are not known here.',
  ]);
});

describe('levels that reuse each other', () => {
  const round = {
    '7.cut': cut('7', 'level C reuse 9/C\nC: 1..'),
    '8.cut': cut('8', 'level C reuse 7/C\nC: 1..'),
    '9.cut': cut('9', 'level C reuse 8/C\nC: 1..'),
    '10.cut': cut('10', 'level C reuse 9/C\nC: 1..'),
  };

  test('in a circle are an error of each, with the chain from there', async () => {
    const cuts = await compiled(round);
    const words = 'The levels reuse each other in a circle';
    expect(told(cuts['7.cut'], 'reuse')).toEqual([`reuse-circle 9/C: ${words}, 7/C → 9/C → 8/C → 7/C.`]);
    expect(told(cuts['8.cut'], 'reuse')).toEqual([`reuse-circle 7/C: ${words}, 8/C → 7/C → 9/C → 8/C.`]);
    expect(told(cuts['9.cut'], 'reuse')).toEqual([`reuse-circle 8/C: ${words}, 9/C → 8/C → 7/C → 9/C.`]);
  });

  test('lead a level that only hangs on them nowhere', async () => {
    const cuts = await compiled(round);
    expect(told(cuts['10.cut'], 'reuse')).toEqual([
      'reuse-unknown 9/C: The levels reuse each other in a circle, 9/C → 8/C → 7/C → 9/C, so the numbers of `9/C` are not known here.',
    ]);
  });

  test('are told the same in whatever order they are looked at', async () => {
    const all = await compiled(round);
    for (const name of Object.keys(round)) {
      expect(told((await compiled(round, name))[name], 'reuse')).toEqual(told(all[name], 'reuse'));
    }
  });

  test('a level of its own cut, by two ways of writing the number', async () => {
    const one = (await compiled({ '8.cut': cut('08', 'level C reuse 8/C\nC: 1..') }))['8.cut'];
    expect(told(one, 'reuse')).toEqual([
      'reuse-circle 8/C: The levels reuse each other in a circle, 8/C → 8/C.',
    ]);
  });
});

describe('what a cut lends', () => {
  const lent = async (files: Record<string, string>, name = '8.cut') =>
    (await compiled(files, name))[name]!.surroundings.lent;

  test('stands on its own sheet, in story order', async () => {
    expect(
      await lent({
        '8.cut': cut('8', 'C: 1..\nD: 1..'),
        '12.cut': cut('12', 'level C reuse 8/C\nC: 1..'),
        '9.cut': cut(
          '9',
          'level E size 300x200mm\n  reuse 8/D  # the rain\nE: 1..\nlevel F reuse 8/C\nF: 1..',
        ),
        '10.cut': cut('10', 'level A reuse 9/E\nA: 1..'),
      }),
    ).toEqual([
      { level: 'D', cut: '9', as: 'E' },
      { level: 'C', cut: '9', as: 'F' },
      { level: 'C', cut: '12', as: 'C' },
    ]);
  });

  test('is only what it has', async () => {
    const files = { '8.cut': cut('8', 'C: 1..'), '9.cut': cut('9', 'level C reuse 8/X\nC: 1..') };
    expect(await lent(files)).toEqual([]);
  });

  test('is found where a house file says it, of levels that the cut has', async () => {
    const files = {
      'house.cut': 'level C reuse 8/C\nlevel X reuse 8/D\n',
      '8.cut': cut('8', 'C: 1..\nD: 1..'),
      '9.cut': cut('9', 'use "house.cut"\nC: 1..'),
      '10.cut': cut('10', 'use "house.cut"\nlevel C size 300x200mm\nC: 1..'),
    };
    expect(await lent(files)).toEqual([{ level: 'C', cut: '9', as: 'C' }]);
  });

  test('changes the stamp of the sheet on which it is printed, and of no other', async () => {
    const before = { '8.cut': cut('8', 'C: 1..'), '9.cut': cut('9', 'level C reuse 8/C\nC: 1..') };
    const after = { ...before, '10.cut': cut('10', 'level C reuse 8/C\nC: 1..') };
    const stamps = async (files: Record<string, string>) => {
      const cuts = await compiled(files);
      return [cuts['8.cut']!.digest, cuts['9.cut']!.digest];
    };
    const [[eight, nine], [eightLater, nineLater]] = [await stamps(before), await stamps(after)];
    expect(eightLater).not.toBe(eight);
    expect(nineLater).toBe(nine);
  });
});

test('a change of the drawings of the other cut changes the stamp', async () => {
  const nine = cut('9', 'level C reuse 8/C\nC: 1..');
  const stamp = async (eight: string) => (await compiled({ '8.cut': eight, '9.cut': nine }))['9.cut']!.digest;
  expect(await stamp(cut('8', 'C: 1--2..'))).not.toBe(await stamp(cut('8', 'C: 2--1..')));
});

test('a check of a cut that refers to none reads only its neighbours, outside an episode nothing', async () => {
  const cuts = Object.fromEntries(
    Array.from({ length: 50 }, (_, i) => [`${i + 1}.cut`, cut(`${i + 1}`, 'A: 1..')]),
  );
  const host = memoryHost({ 'episode.yaml': '', ...cuts });
  const reads = readsOf(host);
  await compiledIn(host, '20.cut');
  expect(reads.sort()).toEqual(['19.cut', '20.cut', '21.cut', 'episode.yaml']);
  const alone = memoryHost(cuts);
  const few = readsOf(alone);
  await compiledIn(alone, '20.cut');
  expect(few).toEqual(['20.cut']);
});
