import { describe, expect, test } from 'vitest';
import { betweenParts, type ExposureRun, isKeyName, notationOf } from '../../src/draft/exposure-runs.js';

describe('the name of an in-between', () => {
  const parts = { from: '1', to: '', index: 2, letter: '', count: '' };
  test.each([
    ['1.2', parts],
    ['1>3.2', { ...parts, to: '3' }],
    ['1.2a', { ...parts, letter: 'a' }],
    ['1>3.2/4', { ...parts, to: '3', count: '4' }],
    ['1a>3b.2', { ...parts, from: '1a', to: '3b' }],
  ])('%s', (name, wanted) => {
    expect(betweenParts(name)).toEqual(wanted);
  });

  test.each(['1', '1a', '', 'x', '1.', '.2', '1>.2', '1.2ab'])('%j is none', (name) => {
    expect(betweenParts(name)).toBeNull();
  });
});

test.each([
  ['1', true],
  ['12a', true],
  // `x` is an empty level.
  ['1x', false],
  ['1.2', false],
  ['', false],
])('%j is the name of a key: %s', (name, key) => {
  expect(isKeyName(name)).toBe(key);
});

describe('how a drawing can be typed', () => {
  const run = (name: string): ExposureRun => ({
    drawing: name === 'x' ? null : name,
    kind: name === 'x' ? 'empty' : isKeyName(name) ? 'key' : 'inbetween',
    frames: 2,
  });
  const of = (names: string) => notationOf(names.split(' ').map(run));

  test('all in-betweens of a passage, in order, between their keys: by dashes', () => {
    expect(of('1 1.1 1.2 2')).toEqual({
      how: ['key', 'between', 'between', 'key'],
      wraps: [],
      whole: true,
    });
  });

  test('one that comes again: by its name', () => {
    expect(of('1 1.1 1.2 2 1.1 x').how).toEqual(['key', 'between', 'between', 'key', 'reference', 'empty']);
  });

  test('out of order: by their names, and the passage stands nowhere whole', () => {
    expect(of('1 1.2 1.1 2')).toMatchObject({
      how: ['key', 'reference', 'reference', 'key'],
      whole: false,
    });
  });

  test('at the end of a cycle: by dashes in brackets', () => {
    expect(of('1 1.1 2 2>1.1 2>1.2')).toEqual({
      how: ['key', 'between', 'key', 'between', 'between'],
      wraps: [{ first: 0, end: 5 }],
      whole: true,
    });
  });

  test('an added one stands after the one that it is named for', () => {
    expect(of('1 1.1 1.1a 1.2 2').whole).toBe(true);
    expect(of('1 1.1a 1.1 1.2 2').whole).toBe(false);
  });
});
