import { createCanvas } from '@napi-rs/canvas';
import { describe, expect, it } from 'vitest';
import { pictureOf } from '../../src/picture/frame-list.js';
import { paintFoot, paintGuides } from '../../src/picture/frame-notes.js';
import { compileText } from '../compile.js';

const SIZE = { width: 480, height: 270 };

function white() {
  const context = createCanvas(SIZE.width, SIZE.height).getContext('2d');
  context.fillStyle = '#fff';
  context.fillRect(0, 0, SIZE.width, SIZE.height);
  const at = (x: number, y: number): number => context.getImageData(x, y, 1, 1).data[1]!;
  return { context, at };
}

describe('the foot', () => {
  it('is dark behind its words, and leaves the picture above alone', () => {
    const { context, at } = white();
    paintFoot(context, ['cut 12', '', '3+07'], { ...SIZE, family: 'sans-serif' });
    expect(at(240, 268)).toBeLessThan(100);
    expect(at(240, 240)).toBe(255);
  });

  it('writes on the left and on the right', () => {
    const { context, at } = white();
    paintFoot(context, ['cut 12', '', '3+07'], { ...SIZE, family: 'sans-serif' });
    const bright = (from: number, to: number): boolean => {
      for (let x = from; x < to; x++) for (let y = 257; y < 270; y++) if (at(x, y) > 200) return true;
      return false;
    };
    expect([bright(0, 100), bright(200, 280), bright(400, 480)]).toEqual([true, false, true]);
  });

  it('sets a long text smaller instead of over its neighbour', () => {
    const { context, at } = white();
    paintFoot(context, ['a very long name of a cut '.repeat(6), '', ''], { ...SIZE, family: 'sans-serif' });
    for (let x = 165; x < 480; x += 5) expect(at(x, 263)).toBeLessThan(100);
  });
});

describe('the guides', () => {
  const cut = pictureOf(compileText('cut 1\ntime 1+0\nstack BG\n').solved!);

  it('cross in the middle, and frame the fields of the chart', () => {
    const { context, at } = white();
    paintGuides(context, cut, SIZE);
    expect(at(240, 70)).toBeLessThan(255);
    // Field 6 of 12 is half as wide: a quarter of the picture from its left.
    expect(at(120, 140)).toBeLessThan(255);
    expect(at(130, 140)).toBe(255);
  });

  it('show the safe areas: 93 % and 90 % of each side (SMPTE ST 2046-1)', () => {
    const { context, at } = white();
    paintGuides(context, cut, SIZE);
    const left = (share: number): number => Math.round(240 - 240 * share);
    for (const share of [0.93, 0.9]) {
      const x = left(share);
      expect(Math.min(at(x - 1, 140), at(x, 140))).toBeLessThan(255);
    }
  });
});
