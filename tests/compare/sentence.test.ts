/** A change as one sentence. */

import { describe, expect, test } from 'vitest';
import { ON_PAPER, sentence, telling } from '../../src/compare/sentence.js';
import type { Convention } from '../../src/shot/settings.js';
import { solved } from './say.js';

const cut = (convention: Convention, fps = 24) => {
  const it = solved(`cut 1\nfps ${fps}\ntime 2+0\nA: 1..\n`);
  return { ...it, shot: { ...it.shot, settings: { ...it.shot.settings, convention } } };
};

describe('times and rows', () => {
  test('are seconds and frames on a Japanese form', () => {
    const t = telling(cut('japan'), 'en');
    expect([t.length(36), t.row(37)]).toEqual(['1+12', '1+13']);
  });

  test('are feet and frames on a western form, 16 frames a foot', () => {
    const t = telling(cut('west'), 'en');
    expect([t.length(36), t.row(37)]).toEqual(["2'04", "2'05"]);
  });

  test('are long from a second on, whatever a second has', () => {
    const t = telling(cut('japan', 30), 'en');
    expect([t.long(29), t.long(30), t.long(-30)]).toEqual([false, true, true]);
  });
});

describe('a text that is quoted', () => {
  test('is one line', () => {
    expect(telling(cut('japan'), 'en').brief('wind\n  from left')).toBe('wind from left');
  });

  test('is cut where it has more letters than asked for', () => {
    const t = telling(cut('japan'), 'en', ON_PAPER);
    expect(t.brief('a'.repeat(40))).toBe('a'.repeat(40));
    expect(t.brief('a'.repeat(41))).toBe(`${'a'.repeat(38)} …`);
  });

  test('is not cut within a letter of two code units', () => {
    expect(telling(cut('japan'), 'en', 4).brief('𠮷𠮷𠮷𠮷𠮷')).toBe('𠮷𠮷 …');
  });
});

test('a sentence is one line without control characters', () => {
  const change = { kind: 'scene', old: '1', now: 'a\n b\u0007', place: null, rows: null } as const;
  expect(sentence(change, telling(cut('japan'), 'en'))).toBe('scene a b? (was 1)');
});

test('a western form has its own terms', () => {
  const change = { kind: 'fix', old: 'A', now: 'B', place: null, rows: null } as const;
  const time = { kind: 'cut', old: '1', now: '2', place: null, rows: null } as const;
  expect(sentence(time, telling(cut('west'), 'en'))).toBe('scene 2 (was 1)');
  expect(sentence(time, telling(cut('japan'), 'ja'))).toBe('カット 2（旧 1）');
  expect(sentence(change, telling(cut('west'), 'en'))).toBe('FIX on B (was A)');
});
