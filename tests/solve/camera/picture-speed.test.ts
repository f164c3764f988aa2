import { expect, it } from 'vitest';
import { asSeen } from '../../../src/solve/camera/picture-speed.js';

it('sees a move on twos as its whole steps', () => {
  expect([...asSeen(Float64Array.of(0, 2, 0, 2, 0, 2, 0, 0))]).toEqual([0, 2, 2, 2, 2, 2, 0, 0]);
});

it('sees two moves with a rest between them as two', () => {
  expect([...asSeen(Float64Array.of(0, 1, 0, 0, 0, 0, 0, 1))]).toEqual([0, 1, 0, 0, 0, 0, 0, 1]);
});
