/**
 * Which mouth for which sound: saraemi.com, 「口パクの作り方」 1608kutipaku (2016): closed for u and n, half for i and e, open for a and o;
 * with a mouth for each vowel, closed ones between. Closed for m, b, p: common practice.
 * A mouth leads its sound by one or two frames and never lags: joshuanava.biz/drawn-animation, "Film animation, dialogue".
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { LineStretch, SeenSound } from '../../../src/shot/mouth/line-sounds.js';
import { readRows, shapeOf, slots, withoutFlashes } from '../../../src/shot/mouth/mouth-rows.js';
import type { MouthShape } from '../../../src/shot/shot.js';

const LETTERS: Readonly<Record<string, SeenSound>> = { m: 'closure', k: 'consonant', '.': 'pause' };
const WRITTEN: Readonly<Partial<Record<MouthShape, string>>> = { closed: '1', half: '2', open: '3' };

/** `kkaaa`: two frames of a consonant, three of a; one stretch from row 1 on. */
function stretch(frames: string, from = 1): LineStretch {
  const sounds: { shown: SeenSound; start: number; end: number }[] = [];
  for (const [i, letter] of [...frames].entries()) {
    const shown = LETTERS[letter] ?? (letter as SeenSound);
    const last = sounds.at(-1);
    if (last?.shown === shown) last.end = from + i + 1;
    else sounds.push({ shown, start: from + i, end: from + i + 1 });
  }
  return { from, end: from + frames.length, sounds };
}

const read = (frames: string, on: number, lead: number, vowels = false): string =>
  readRows([stretch(frames)], { on, lead }, vowels)
    .shapes.map((shape) => WRITTEN[shape] ?? shape)
    .join('');

describe('the mouth of a sound', () => {
  test.each<[SeenSound, MouthShape, MouthShape]>([
    ['a', 'open', 'a'],
    ['o', 'open', 'o'],
    ['i', 'half', 'i'],
    ['e', 'half', 'e'],
    ['u', 'closed', 'u'],
    ['closure', 'closed', 'closed'],
    ['pause', 'closed', 'closed'],
    ['consonant', 'half', 'closed'],
  ])('%s: %s of three, %s of six', (shown, three, six) => {
    expect([shapeOf(shown, false), shapeOf(shown, true)]).toEqual([three, six]);
  });
});

describe('the rows of a mouth', () => {
  test('on ones follow the sounds, and the last row is closed', () => {
    expect(read('kkaaammiiaa', 1, 0)).toBe('22333112231');
  });

  test('begin before the line by the frames that the mouth leads', () => {
    expect(readRows([stretch('aaaa', 13)], { on: 2, lead: 2 }, false)).toEqual({
      from: 11,
      shapes: ['open', 'open', 'open', 'closed'],
    });
  });

  test('on threes show what would be lost otherwise, vowels before consonants', () => {
    expect(read('kaaki.......', 3, 1)).toBe('333222111111');
  });

  test('the same vowel in the next syllable shows its consonant, so that the mouth moves', () => {
    expect(read('kaakaakaakaa', 3, 1)).toBe('333222333221');
  });

  test('a consonant between two half open mouths closes it', () => {
    expect(read('kkiiikkeeekkaaa', 1, 0)).toBe('222221122222331');
    expect(read('kiikiikiikii', 3, 1)).toBe('222111222111');
  });

  test('lips that close between vowels are seen', () => {
    expect(read('aaammaaa', 2, 0)).toContain('311');
  });

  test('with a mouth for each vowel there is a closed one between', () => {
    expect(read('kaaakiiikuuu', 1, 0, true)).toBe('1aaa1iii1uu1');
  });

  test('begin anew at each tie', () => {
    const rows = readRows([stretch('aaaa', 1), stretch('iiii', 5)], { on: 3, lead: 1 }, false);
    expect(rows.shapes.map((shape) => WRITTEN[shape]).join('')).toBe('33332221');
  });

  test('a stretch without words is closed', () => {
    const rows = readRows([{ from: 1, end: 7, sounds: [] }, stretch('aaaa', 7)], { on: 2, lead: 0 }, false);
    expect(rows.shapes.map((shape) => WRITTEN[shape]).join('')).toBe('1111113331');
  });

  test('a line of one row is closed', () => {
    expect(read('a', 2, 0)).toBe('1');
  });
});

describe('slots', () => {
  test('are as long as a drawing is exposed, and no single row is left over', () => {
    const lengths = (end: number, on: number) => slots(1, end + 1, on).map((one) => one.end - one.from);
    expect(lengths(6, 3)).toEqual([3, 3]);
    expect(lengths(7, 3)).toEqual([3, 4]);
    expect(lengths(8, 3)).toEqual([3, 3, 2]);
    expect(lengths(1, 3)).toEqual([1]);
    expect(lengths(3, 1)).toEqual([1, 1, 1]);
  });
});

describe('a mouth that opens for one frame', () => {
  const without = (rows: string) =>
    withoutFlashes([...rows].map((one) => (one === '1' ? 'closed' : 'open')))
      .map((shape) => WRITTEN[shape])
      .join('');
  test('opens a frame earlier', () => expect(without('1113111')).toBe('1133111'));
  test('does not, where it was closed for one frame only', () => expect(without('33131')).toBe('33111'));
});

describe('whatever is said', () => {
  const said = fc.record({
    frames: fc
      .array(
        fc
          .tuple(fc.constantFrom(...'aiueokkkm.'), fc.integer({ min: 1, max: 5 }))
          .map(([letter, long]) => letter.repeat(long)),
        { minLength: 1, maxLength: 24 },
      )
      .map((sounds) => sounds.join('')),
    on: fc.integer({ min: 1, max: 4 }),
    lead: fc.integer({ min: 0, max: 3 }),
    vowels: fc.boolean(),
  });

  test('no mouth opens for one frame between closed ones, and the last row is closed', () => {
    fc.assert(
      fc.property(said, ({ frames, on, lead, vowels }) => {
        const { shapes } = readRows([stretch(frames)], { on, lead }, vowels);
        expect(shapes).toHaveLength(frames.length);
        expect(shapes.at(-1)).toBe('closed');
        const closed = (i: number) => (shapes[i] ?? 'closed') === 'closed';
        expect(shapes.filter((_, i) => !closed(i) && closed(i - 1) && closed(i + 1))).toEqual([]);
      }),
      { numRuns: 500 },
    );
  });

  test('a mouth that opens is not later than the sound that opens it', () => {
    fc.assert(
      fc.property(said, ({ frames, on, lead, vowels }) => {
        const line = stretch(frames);
        const { from, shapes } = readRows([line], { on, lead }, vowels);
        shapes.forEach((shape, i) => {
          if (shape === 'closed' || shape === shapes[i - 1]) return;
          const row = from + i;
          // What it shows is still to come: within the lead, an exposure with a row that was left over, and a row for what would flash.
          const coming = line.sounds.some(
            ({ shown, start }) =>
              shapeOf(shown, vowels) === shape && start >= row && start <= row + lead + on + 1,
          );
          expect(coming, `row ${row} ${shape}`).toBe(true);
        });
      }),
      { numRuns: 500 },
    );
  });
});

describe('the same mouth for another syllable', () => {
  test('goes on where the vowel before it is the same sound, or goes on for long', () => {
    expect(read('aaaaaaaa', 2, 0)).toBe('33333331');
    // Of the second a four frames follow the slot: no consonant is shown for it.
    expect(read('kaakaaaaaa', 2, 0)).toBe('3333333331');
  });

  test('shows the consonant before it where that begins within the slot', () => {
    expect(read('aaakaaakaaa', 3, 0)).toBe('33322233331');
    expect(read('aakaakaa', 3, 0)).toBe('33333331');
  });

  test('has none to show at the beginning of a line', () => {
    expect(read('aaa', 2, 1)).toBe('331');
    expect(read('aaaa', 2, 1)).toBe('3331');
  });
});

describe('between two sounds of a line', () => {
  const rows = (sounds: LineStretch['sounds'], end: number) =>
    readRows([{ from: 1, end, sounds }], { on: 1, lead: 0 }, false)
      .shapes.map((shape) => WRITTEN[shape])
      .join('');
  const a = (start: number, end: number) => ({ shown: 'a' as const, start, end });

  test('the mouth is closed as long as nothing is heard', () => {
    expect(rows([a(1, 4), a(7, 10)], 12)).toBe('33311133311');
  });

  test('it stays as it is on a row where a sound is heard in part', () => {
    expect(rows([a(1, 4.5), a(5.5, 9)], 10)).toBe('333333331');
  });
});

test('a mouth that flashes right behind the first row opens on that row', () => {
  const shapes = (rows: string) =>
    withoutFlashes([...rows].map((one) => (one === '1' ? 'closed' : 'open')))
      .map((shape) => WRITTEN[shape])
      .join('');
  expect(shapes('1311')).toBe('3311');
  expect(shapes('3111')).toBe('1111');
  expect(shapes('1131')).toBe('1331');
  expect(shapes('1113')).toBe('1133');
  expect(shapes('13131')).toBe('33111');
});
