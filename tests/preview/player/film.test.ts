import { describe, expect, test } from 'vitest';
import { filmOfCut, filmOfEpisode, frameOfRow, rowOf, seenOn } from '../../../src/preview/player/film.js';
import { answer } from './answers.js';

const episode = filmOfEpisode({
  fps: 24,
  frames: 40,
  word: '',
  cuts: [
    { id: 'c1', flashes: false, heard: false, source: { from: 0, frames: 20 }, record: 0, dissolve: null },
    {
      id: 'c2',
      flashes: true,
      heard: true,
      source: { from: 4, frames: 20 },
      record: 20,
      dissolve: { before: 4, after: 4 },
    },
  ],
});

test('a cut is a film of all its rows', () => {
  const film = filmOfCut(answer('c3', 30, { caution: { text: 'CAUTION', language: 'en' } }));
  expect([film.order.frames, film.ids, [...film.flashing], film.heard]).toEqual([30, ['c3'], ['c3'], false]);
});

describe('an episode', () => {
  test('knows which of its cuts flash, and whether anything is heard', () => {
    expect([[...episode.flashing], episode.heard]).toEqual([['c2'], true]);
  });

  test('leads from frames to rows and back', () => {
    expect(rowOf(episode, 21)).toEqual({ id: 'c2', row: 5 });
    expect(frameOfRow(episode, { id: 'c2', row: 5 })).toBe(21);
  });

  test('takes a row of a handle to the nearest one that is in the cut’s own time', () => {
    expect(frameOfRow(episode, { id: 'c2', row: 1 })).toBe(21);
    expect(frameOfRow(episode, { id: 'c2', row: 99 })).toBe(40);
    expect(frameOfRow(episode, { id: 'c9', row: 1 })).toBeNull();
  });

  test('shows two cuts in a dissolve', () => {
    expect([seenOn(episode, 16), seenOn(episode, 17)]).toEqual([['c1'], ['c1', 'c2']]);
  });
});
