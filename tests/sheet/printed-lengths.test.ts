/** Lengths on the artwork in print. */

import { describe, expect, test } from 'vitest';
import { printedLengths } from '../../src/sheet/printed-lengths.js';
import { CONVENTIONAL } from '../../src/shot/settings.js';

describe('in millimetres', () => {
  const mm = printedLengths({ lengths: 'mm' });

  test('have two decimals at most, in columns always', () => {
    expect([mm.figure(12.7), mm.text(12.3456), mm.aligned(12.7)]).toEqual(['12.7', '12.35 mm', '12.70']);
    expect(mm.area(560, 142.875)).toBe('560 × 142.88 mm');
  });

  test('a size that will do is never rounded down', () => {
    expect(mm.up(142.871)).toBeCloseTo(142.88, 10);
    expect(mm.up(142.87)).toBeCloseTo(142.87, 10);
    // Not for what is no more than an error of the arithmetic.
    expect(mm.up(142.87 + 1e-9)).toBeCloseTo(142.87, 8);
  });
});

describe('in inches', () => {
  const inches = printedLengths({ lengths: 'in' });

  test('have three decimals at most, in columns always', () => {
    expect([inches.figure(12.7), inches.text(25.4 / 3), inches.aligned(12.7)]).toEqual([
      '0.5',
      '0.333 in',
      '0.500',
    ]);
    expect(inches.area(254, 127)).toBe('10 × 5 in');
  });

  test('a size that will do is rounded up to a thousandth of an inch, and stays in millimetres', () => {
    expect(inches.up(25.4)).toBeCloseTo(25.4, 10);
    expect(inches.up(25.41)).toBeCloseTo(25.4254, 10);
  });
});

describe('a length', () => {
  test('as a step has whole numbers bare', () => {
    const of = (lengths: 'mm' | 'in') => printedLengths({ lengths });
    expect([of('mm').step(3), of('mm').step(2.5), of('in').step(25.4), of('in').step(2.54)]).toEqual([
      '3',
      '2.50',
      '1',
      '0.100',
    ]);
  });
});

// The field number is the field's width in inches: animationpost.co.uk/doping, “6-simp-trackin”. 16:9 makes 12 in 6.75 in high.
test('a western 12 field is 12 by 6.75 in', () => {
  const { widthMm, heightMm } = CONVENTIONAL.west.field;
  expect(printedLengths({ lengths: 'in' }).area(widthMm, heightMm)).toBe('12 × 6.75 in');
});
