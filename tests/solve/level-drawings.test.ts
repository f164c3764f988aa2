import { expect, test } from 'vitest';
import { makeDrawing } from '../../src/solve/level-drawings.js';

const span = { file: 'this.cut', start: 3, end: 5 };

test('a key has its name from the start, and leads nowhere', () => {
  expect(makeDrawing('key', '3a', span)).toEqual({
    kind: 'key',
    name: '3a',
    cel: 0,
    key: '3a',
    to: null,
    index: 0,
    letter: '',
    reused: false,
    pinned: false,
    span,
    firstFrame: 0,
    exposedFrames: 0,
  });
});

test('an in-between has a place on its way, and no name before all ways are known', () => {
  expect(makeDrawing('inbetween', '1', span, { to: '2', index: 3, letter: 'a' })).toMatchObject({
    name: '',
    key: '1',
    to: '2',
    index: 3,
    letter: 'a',
  });
});
