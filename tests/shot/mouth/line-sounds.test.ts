import { describe, expect, test } from 'vitest';
import { lineStretches, type MouthSound } from '../../../src/shot/mouth/line-sounds.js';
import type { Spoken } from '../../../src/shot/shot.js';

const span = { file: 'c.cut', start: 0, end: 0 };

/** Letters are sounds of an eighth of a second, commas pauses of half of one. */
const letters = (text: string): MouthSound[] | null =>
  text.includes('?')
    ? null
    : [...text].map((letter) =>
        letter === ','
          ? { shown: 'pause', seconds: 0.5 }
          : { shown: letter === 'a' ? 'a' : 'consonant', seconds: 0.125 },
      );

function line(from: number, to: number, parts: readonly [string, number | null][], open = false): Spoken {
  return {
    kind: 'voice',
    speaker: 'Nao',
    manner: 'on',
    frames: { from, to },
    open,
    parts: parts.map(([text, frame]) => ({ text, reading: text, frame, span })),
    span,
  };
}

const starts = (spoken: Spoken) =>
  lineStretches(spoken, 24, letters)!.map(({ from, end, sounds }) => ({
    from,
    end,
    starts: sounds.map(({ start }) => start),
  }));

describe('the sounds of a line', () => {
  test('fill its rows', () => {
    expect(starts(line(7, 18, [['tata', null]]))).toEqual([{ from: 7, end: 19, starts: [7, 10, 13, 16] }]);
    expect(starts(line(7, 12, [['tata', null]]))).toEqual([{ from: 7, end: 13, starts: [7, 8.5, 10, 11.5] }]);
  });

  test('begin anew at each tie, and are spread between ties', () => {
    const spoken = line(1, 24, [
      ['ta', null],
      ['ta', 13],
      ['ta', null],
    ]);
    expect(starts(spoken)).toEqual([
      { from: 1, end: 13, starts: [1, 7] },
      { from: 13, end: 25, starts: [13, 16, 19, 22] },
    ]);
  });

  test('begin at the tie of the first word, not before', () => {
    expect(starts(line(1, 12, [['ta', 7]]))).toEqual([
      { from: 1, end: 7, starts: [] },
      { from: 7, end: 13, starts: [7, 10] },
    ]);
  });

  test('where there is time, pauses grow once sounds are drawn out by half', () => {
    // ta, ta: four sounds of 3 frames and a pause of 12 want 24; of 48 rows sounds take 18, the pause 30.
    expect(starts(line(1, 48, [['ta,ta', null]]))[0]!.starts).toEqual([1, 5.5, 10, 40, 44.5]);
  });

  test('behind the last word there is no pause', () => {
    expect(starts(line(1, 6, [['ta,', null]]))[0]!.starts).toEqual([1, 4]);
  });

  test('of a line that goes on over the end of the cut are at their own pace', () => {
    expect(starts(line(1, 48, [['ta', null]], true))[0]!.starts).toEqual([1, 4]);
  });

  test('are not known where one word cannot be read', () => {
    expect(
      lineStretches(
        line(1, 12, [
          ['ta', null],
          ['?', 7],
        ]),
        24,
        letters,
      ),
    ).toBeNull();
  });
});
