import fc from 'fast-check';
import { expect, test } from 'vitest';
import { figure, plural, repeated, share, significant } from '../../src/words/number-format.js';

test('plural: one thing, several, none', () => {
  expect([1, 2, 0].map((count) => plural(count, 'cut'))).toEqual(['1 cut', '2 cuts', '0 cuts']);
});

test.each([
  [25.400000000000002, '25.4'],
  [256.53999999999996, '256.54'],
  [1.005, '1'],
  [100, '100'],
  [-0.001, '0'],
  [-0, '0'],
  [-12.5, '-12.5'],
])('figure of %d', (value, text) => expect(figure(value)).toBe(text));

test.each([
  ['never', ['3', '3.1', '0']],
  ['always', ['3.00', '3.10', '0.00']],
  ['unlessWhole', ['3', '3.10', '0']],
] as const)('zeros at the end: %s', (zeros, texts) => {
  expect([3, 3.1, -0.001].map((value) => figure(value, { zeros }))).toEqual(texts);
});

test('decimals: none leave the zeros of the whole number alone', () => {
  expect(figure(1200.4, { decimals: 0 })).toBe('1200');
  expect(figure(0.0004, { decimals: 3 })).toBe('0');
  expect(figure(1 / 3, { decimals: 4 })).toBe('0.3333');
});

test('a figure says its number to the last decimal that it shows, and never more decimals', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -1e6, max: 1e6, noNaN: true }),
      fc.integer({ min: 0, max: 6 }),
      fc.constantFrom('never', 'always', 'unlessWhole'),
      (value, decimals, zeros) => {
        const text = figure(value, { decimals, zeros });
        expect(Math.abs(Number(text) - value)).toBeLessThanOrEqual(0.5001 * 10 ** -decimals);
        expect(text).toMatch(/^(-(?=.*[1-9]))?\d+(\.\d+)?$/);
        expect(text.split('.')[1]?.length ?? 0).toBeLessThanOrEqual(decimals);
      },
    ),
  );
});

test('significant: as it was typed, whatever its size', () => {
  expect([25.400000000000002, 0.00012, 1234567].map((value) => significant(value, 6))).toEqual([
    '25.4',
    '0.00012',
    '1234570',
  ]);
});

test('repeated: as graduations are typed, of a long row the beginning', () => {
  expect(repeated([0.5, 1, 6, 6, 6, 6.00001, 1])).toBe('0.5 1 6*4 1');
  expect(repeated(Array.from({ length: 20 }, (_, i) => i))).toMatch(/^0 1 2 .* 15 …$/);
});

test('share: a simple fraction, else two decimals', () => {
  expect([0.5, 0.75, 1 / 3, 0.123456].map(share)).toEqual(['1/2', '3/4', '1/3', '0.12']);
});
