import { describe, expect, test } from 'vitest';
import { type Case, check, only } from './fault-check.js';

describe('a slip that shows what was meant', () => {
  test.each<Case>([
    ['time: 5+0', 'does-not-fit', ':', 'time 5+0'],
    ['cut 1\n  time 5+0', 'indented-statement', 'time', 'cut 1\ntime 5+0'],
    ['cut 1\n  A: 1', 'indented-statement', 'A', 'cut 1\nA: 1'],
    ['A: 1..\n  B: 1..', 'indented-statement', 'B', 'A: 1..\nB: 1..'],
    [
      'A: 1 2\n  walk: 2+0 3\n\tB "scarf": 1..',
      'indented-statement',
      'B',
      'A: 1 2\n  walk: 2+0 3\nB "scarf": 1..',
    ],
    ['truck A 100%@1 > 140%@3+0', 'does-not-fit', '100%', 'truck level A 100%@1 > 140%@3+0'],
    [
      'truck A 100%@1 > 140%@3+0 log about 1,2',
      'does-not-fit',
      '100%',
      'truck level A 100%@1 > 140%@3+0 log about 1,2',
    ],
    ['turn A 0@1 > 360@2+0 cw', 'does-not-fit', 'A', 'turn level A 0@1 > 360@2+0 cw'],
    ['voice Nao 1+6.. "x"', 'missing-quotes', 'Nao', 'voice "Nao" 1+6.. "x"'],
    ['artist M. Arai', 'missing-quotes', 'M', 'artist "M. Arai"'],
    ['cut 12 Rooftop, dusk # night', 'missing-quotes', 'Rooftop', 'cut 12 "Rooftop, dusk" # night'],
    ['use house.cut', 'missing-quotes', 'house', 'use "house.cut"'],
  ])('%s', (...one) => check(one));
});

describe('what may be meant otherwise', () => {
  test.each([
    ['a name without a colon', 'time 1\n  3 A 1'],
    ['a truck without a level', 'truck 100%@1 > 140%@3+0'],
    ['a level that is called like a word', 'time: ?'],
  ])('%s is told of as it stands', (_, text) => {
    expect(only(text)).toMatchObject({ mended: null });
  });
});

test('quotes inside what is to be quoted are escaped', () => {
  expect(only('memo C:\\x').mended).toBe('memo "C:\\\\x"');
});
