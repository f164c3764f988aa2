import { describe, expect, test } from 'vitest';
import { reelsOf } from '../../src/export/reel-names.js';

describe('the reel of a cut', () => {
  test.each([
    ['12', 'C12'],
    ['12a', 'C12A'],
    ['4-B', 'C4B'],
    ['１２', 'C12'],
    ['夜', 'C'],
    ['123456789', 'C3456789'],
  ])('%s: %s', (cut, reel) => {
    expect(reelsOf([cut])).toEqual([reel]);
  });

  test('is of one cut only', () => {
    expect(reelsOf(['4-B', '4B', '4 B'])).toEqual(['C4B', 'C4BX2', 'C4BX3']);
  });

  test('stays within eight characters where a number is added', () => {
    const reels = reelsOf(Array.from({ length: 12 }, () => '123456789'));
    expect(reels.slice(0, 2)).toEqual(['C3456789', 'C34567X2']);
    expect(reels.at(-1)).toBe('C3456X12');
    expect(new Set(reels).size).toBe(12);
  });
});
