/** Warnings that help, and that stay away from what is normal. */

import { describe, expect, test } from 'vitest';
import { messageOf } from '../../src/language/message.js';
import { shown } from './shown.js';

describe('a one-frame flash', () => {
  test.each([
    ['a drawing between two holds', '1:12 2:1 1..'],
    ['emptiness between two holds', '1:12 x:1 2..'],
    ['what an @ leaves', '1:12 2 @14 3..'],
  ])('%s', (_, items) => {
    expect(shown(24, items).codes).toContain('warning one-frame-flash');
  });

  test.each([
    ['on ones by intent', '1:12 on 1 2 1..'],
    ['an in-between of a fast move', '1:12 -:1 2..'],
    ['on ones throughout', 'on 1 1-2-3-4-5-6-7-8-9..'],
    ['between short neighbours', '(1:3 2:1)..'],
    ['alone on an empty level', 'x:12 1:1 x..'],
    ['the last frame', '1:23 2:1'],
  ])('not: %s', (_, items) => {
    expect(shown(24, items).codes).not.toContain('warning one-frame-flash');
  });

  test('is said once for a cycle', () => {
    const { codes } = shown(48, '(1:6 2:1 3:6)..');
    expect(codes.filter((code) => code === 'warning one-frame-flash')).toHaveLength(1);
  });
});

describe('key numbers', () => {
  test('that jump', () => {
    const { codes, diagnostics } = shown(24, '1--3..');
    expect(codes).toEqual(['warning key-jump']);
    expect(messageOf(diagnostics[0]!, 'en')).toContain('there is no key 2');
  });

  test('that run backwards at first appearance', () => {
    expect(shown(24, '1 3 2..').codes).toEqual(['warning key-backwards']);
    expect(shown(24, '1 2b 2a..').codes).toEqual(['warning key-backwards']);
  });

  test.each([
    ['keys put in later', '1 2 3 3a 3b 4..', ''],
    ['keys that come back', '1 2 3 1 2 4..', ''],
    ['a level that starts at another number', '5 6..', ''],
    ['a key that is dropped, but on paper', '1 3..', 'cels A 1 2 3'],
    ['a reused level', '4 2 9..', 'level A reuse 8/C'],
    ['cycles', '(1-2-3-)*2 4..', ''],
  ])('are fine in %s', (_, items, lines) => {
    expect(shown(48, items, lines).codes).toEqual([]);
  });
});

describe('what is never seen', () => {
  test('a level that is always empty', () => {
    expect(shown(24, 'x..').codes).toEqual(['warning level-empty']);
    expect(shown(24, '@9 x..').codes).toEqual(['warning level-empty']);
  });

  test('a key that a cycle does not come to', () => {
    const { codes, diagnostics } = shown(24, '(1:12 2:12 3)..');
    expect(codes).toEqual(['warning drawing-never-seen']);
    expect(messageOf(diagnostics[0]!, 'en')).toContain('Key 3');
  });

  test('not in-betweens that a cycle does not come to', () => {
    expect(shown(24, '(1:12 2:12--)..').codes).toEqual([]);
  });

  test('counts nothing that is not drawn', () => {
    expect(shown(24, '(1:12 2:12--)..').level.drawings).toHaveLength(2);
  });
});
