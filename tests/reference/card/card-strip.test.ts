/** Pieces of a sheet on the card. */

import { expect, test } from 'vitest';
import { ROWS, strips } from '../../../src/reference/card/card-content.js';
import { drawnStrip } from '../../../src/reference/card/card-strip.js';
import { compileText, said } from '../../compile.js';
import { testFonts } from '../../fonts.js';

const { metrics } = testFonts();

test.each(strips)('$typed prints over ten frames what stands on the card', ({ typed }) => {
  const { diagnostics, solved } = compileText(`cut 1\ntime ${ROWS}\nA: ${typed}\n`);
  expect(said(diagnostics.filter(({ severity }) => severity !== 'hint'))).toEqual([]);
  const { marks } = drawnStrip(typed, 20, 30, 1, metrics);
  const keys = new Set(
    solved!.levels[0]!.exposures.flatMap(({ kind, drawing }) => (kind === 'key' ? [drawing!] : [])),
  );
  const texts = marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
  for (const key of keys) expect(texts).toContain(key);
});

const ringOf = (k: number) => {
  const { marks, heightMm } = drawnStrip('1:4 2..', 20, 30, k, metrics);
  const ring = marks.find((mark) => mark.kind === 'circle');
  if (ring?.kind !== 'circle') throw new Error('no ring');
  return { ring, heightMm };
};

test('the first key stands in the middle of its column, on the first row', () => {
  const { ring, heightMm } = ringOf(1);
  expect(ring.x).toBeCloseTo(20);
  expect(ring.y).toBeCloseTo(30 + heightMm / ROWS / 2, 1);
});

test('twice as large is twice as high, with rings of twice the size', () => {
  const [once, twice] = [ringOf(1), ringOf(2)];
  expect(twice.heightMm).toBeCloseTo(2 * once.heightMm);
  expect(twice.ring.r).toBeCloseTo(2 * once.ring.r);
  expect(twice.ring.x).toBeCloseTo(20);
});

test('what is no timeline of so many frames is refused with the message of the language', () => {
  expect(() => drawnStrip('1:4 2:', 20, 30, 1, metrics)).toThrow();
  expect(() => drawnStrip('x..', 20, 30, 1, metrics)).toThrow('no key on the first row');
});
