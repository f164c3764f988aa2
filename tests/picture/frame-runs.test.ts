import { describe, expect, test } from 'vitest';
import { pictureOf } from '../../src/picture/frame-list.js';
import { packPicture, unpackPicture } from '../../src/picture/frame-runs.js';
import { compileText } from '../compile.js';
import { MOVING_CUTS } from './moving-cuts.js';

const solvedOf = (text: string) => compileText(text).solved!;
const packed = (text: string) => packPicture(pictureOf(solvedOf(text)));

describe('a picture that was packed', () => {
  test.each(MOVING_CUTS)('is the same again, to a millionth of a millimetre: %s', (_, text) => {
    const picture = pictureOf(solvedOf(text));
    const { cut } = unpackPicture(JSON.parse(JSON.stringify(packPicture(picture))));
    const { frames, ...rest } = cut;
    const { frames: before, ...restBefore } = picture;
    expect(rest).toEqual(restBefore);
    expect(frames.map(({ frame }) => frame)).toEqual(before.map(({ frame }) => frame));
    frames.forEach((frame, i) => {
      expect(frame.layers.map(({ level, number }) => [level, number])).toEqual(
        before[i]!.layers.map(({ level, number }) => [level, number]),
      );
      frame.layers.forEach(({ matrix }, k) => {
        matrix.forEach((value, m) => {
          expect(value).toBeCloseTo(before[i]!.layers[k]!.matrix[m]!, 5);
        });
      });
    });
  });

  test('says once what is seen again and again', () => {
    const { seen, runs, layers } = packed('cut 1\ntime 2+0\nA: on 3 (1 2)..\n');
    expect([seen.length, layers.length, runs.length]).toEqual([2, 3, 16]);
    expect(runs.slice(0, 3)).toEqual([
      [0, 3],
      [1, 3],
      [0, 3],
    ]);
  });

  test('tells which frames look alike', () => {
    const { places } = unpackPicture(packed('cut 1\ntime 0+6\nA: 1:2 2:2 1:2\n'));
    expect(places).toEqual([0, 0, 1, 1, 0, 0]);
  });
});
