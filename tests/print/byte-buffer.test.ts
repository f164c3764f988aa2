import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Writer } from '../../src/print/byte-buffer.js';

function written(write: (writer: Writer) => void): string {
  const writer = new Writer();
  write(writer);
  return Buffer.from(writer.take()).toString('latin1');
}

describe('numbers of a content stream', () => {
  test.each([
    [0, '0 '],
    [-0, '0 '],
    [7, '7 '],
    [10, '10 '],
    [120, '120 '],
    [0.5, '0.5 '],
    [0.05, '0.05 '],
    [-0.005, '-0.005 '],
    [1.0004, '1 '],
    [-0.0004, '0 '],
    [841.889, '841.889 '],
    [99.9996, '100 '],
    [-1234.5, '-1234.5 '],
  ])('%d', (value, text) => {
    expect(written((writer) => writer.number(value))).toBe(text);
  });

  test.each([
    [0, '0 '],
    [12_340, '12.34 '],
    [-7, '-0.007 '],
  ])('%d thousandths', (count, text) => {
    expect(written((writer) => writer.thousandths(count))).toBe(text);
  });

  test('bytes as they stand, beyond what there was room for', () => {
    const bytes = Buffer.alloc(1 << 17, 'q');
    expect(written((writer) => writer.copy(bytes))).toBe(bytes.toString('latin1'));
  });

  test('any number, to a thousandth, in the plain form that PDF has', () => {
    fc.assert(
      fc.property(fc.double({ min: -100_000, max: 100_000, noNaN: true }), (value) => {
        const text = written((writer) => writer.number(value));
        expect(text).toMatch(/^-?(0|[1-9]\d*)(\.\d{0,2}[1-9])? $/);
        expect(Math.abs(Number(text) - value)).toBeLessThanOrEqual(0.0005 + 1e-9);
      }),
      { numRuns: 2000 },
    );
  });

  test('factors, to a hundred-thousandth', () => {
    expect(written((writer) => writer.factor(Math.SQRT1_2))).toBe('0.70711 ');
    expect(written((writer) => writer.factor(-1))).toBe('-1 ');
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, 1e9])('%d is refused', (value) => {
    expect(() => written((writer) => writer.number(value))).toThrow(RangeError);
  });

  test('what is longer than the first buffer', () => {
    const text = written((writer) => {
      for (let i = 0; i < 100_000; i++) writer.number(i);
    });
    expect(text).toBe(Array.from({ length: 100_000 }, (_, i) => `${i} `).join(''));
  });

  test('taking it starts afresh, and leaves what was taken alone', () => {
    const writer = new Writer();
    writer.ascii('q ');
    const first = writer.take();
    writer.ascii('Q ');
    expect([first, writer.take()].map((one) => Buffer.from(one).toString())).toEqual(['q ', 'Q ']);
  });
});
