import { describe, expect, test } from 'vitest';
import type { Playing } from '../../../src/preview/player/play-clock.js';
import { heardBetween } from '../../../src/preview/player/sound-schedule.js';

const playing: Playing = {
  start: 100,
  from: 0,
  fps: 24,
  speed: 1,
  range: { first: 1, last: 96 },
  loop: false,
};
const one = [{ before: 0, frames: 96, rowsBefore: 0 }];
/** The second cut has two seconds of handle before what is shown. */
const two = [
  { before: 0, frames: 48, rowsBefore: 0 },
  { before: 48, frames: 48, rowsBefore: 48 },
];

test('a cut is heard from where it begins to its end', () => {
  expect(heardBetween({ ...playing, from: 24 }, one, 100, 100.5)).toEqual([
    { key: '0/0', part: 0, from: 100, to: 103, offset: 1 },
  ]);
});

test('at half the speed it lasts twice as long', () => {
  expect(heardBetween({ ...playing, speed: 1 / 2 }, one, 100, 101)).toMatchObject([
    { from: 100, to: 108, offset: 0 },
  ]);
});

describe('an episode', () => {
  test('hands over from cut to cut at the cut point, handles left out', () => {
    expect(heardBetween(playing, two, 101.8, 102.3)).toEqual([
      { key: '0/0', part: 0, from: 100, to: 102, offset: 0 },
      { key: '0/1', part: 1, from: 102, to: 104, offset: 2 },
    ]);
  });

  test('says nothing of what is over or comes later', () => {
    expect(heardBetween(playing, two, 102.1, 102.6).map(({ part }) => part)).toEqual([1]);
    expect(heardBetween(playing, two, 104.1, 104.6)).toEqual([]);
  });
});

test('a loop is heard again each time, at its time', () => {
  const loop = { ...playing, from: 30, range: { first: 25, last: 48 }, loop: true };
  const heard = heardBetween(loop, one, 100, 103);
  expect(heard.map(({ key, from, to, offset }) => [key, from, to, offset])).toEqual([
    ['0/0', 100, 100.75, 1.25],
    ['1/0', 100.75, 101.75, 1],
    ['2/0', 101.75, 102.75, 1],
    ['3/0', 102.75, 103.75, 1],
  ]);
});
