/** Counts that no paper could hold: an error or a full sheet, at once. */

import { describe, expect, test } from 'vitest';
import { shown, solveText } from './shown.js';

describe('large counts', () => {
  test.each([
    '(1)*999999999',
    '((1-2-)*9999)*9999',
    `${'('.repeat(30)}1-2-${')*9999'.repeat(30)}`,
    '(1.1 1-2)<>*999999999',
    '((1-2)<>*99999999 3)<>*99999999',
  ])('%s are measured, not played', (items) => {
    const { codes, level } = shown(48, items);
    expect(codes.filter((code) => code.startsWith('error')).length).toBeGreaterThan(0);
    expect(level.exposures).toHaveLength(48);
  });

  test('phrases that play each other ten times each are small', () => {
    const phrases = Array.from(
      { length: 30 },
      (_, i) => `phrase p${i} = ${Array.from({ length: 10 }, () => `p${i + 1}`).join(' ')}`,
    );
    const { codes, level } = shown(48, 'p0..', `${phrases.join('\n')}\nphrase p30 = 1-2-`);
    expect(codes).toEqual([]);
    expect(level.drawings).toHaveLength(4);
  });

  test('a phrase chain without end is refused', () => {
    const phrases = Array.from({ length: 5000 }, (_, i) => `phrase p${i} = p${i + 1}`);
    expect(shown(48, 'p0..', `${phrases.join('\n')}\nphrase p5000 = 1`).codes).toContain('error too-deep');
  });

  test('a hundred thousand items are one error', () => {
    const { codes } = shown(48, Array.from({ length: 50_000 }, () => '1-').join(''));
    expect(codes.filter((code) => code.startsWith('error')).sort()).toEqual([
      'error between-to',
      'error timeline-long',
    ]);
  });

  test('a hundred thousand keys on a sheet of ten minutes', () => {
    const items = Array.from({ length: 14_400 }, (_, i) => i + 1).join(' ');
    const { solved, codes } = solveText(`cut 1\ntime 600+0\non 1\nA: ${items}\n`);
    expect(codes).toEqual([]);
    expect(solved.counts.keys).toBe(14_400);
  });

  test('five thousand ways from one key, and as many references', () => {
    const ways = Array.from({ length: 5000 }, (_, i) => `1-${i + 2} 1>${i + 2}.1`).join(' ');
    expect(shown(48, ways).codes.filter((code) => code.startsWith('error'))).toEqual(['error timeline-long']);
  });

  test('three thousand unknown phrases among as many known ones', () => {
    const phrases = Array.from({ length: 3000 }, (_, i) => `phrase walk${i} = 1-2-\n`).join('');
    const { codes } = shown(48, Array.from({ length: 3000 }, (_, i) => `wlak${i}`).join(' '), phrases);
    expect(codes.filter((code) => code === 'error unknown-phrase')).toHaveLength(3000);
  });

  test('a chain of a thousand marks', () => {
    const marks = Array.from({ length: 1000 }, (_, i) => `mark m${i} m${i + 1}`);
    const { codes } = shown(48, '1 @m0 2..', `${marks.join('\n')}\nmark m1000 9`);
    expect(codes).toEqual([]);
  });
});
