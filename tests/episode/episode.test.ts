import { describe, expect, test } from 'vitest';
import { artistsOf, cutKey, cutNumberOf, type Episode, noEpisode } from '../../src/episode/episode.js';
import { parse } from '../../src/language/parse.js';

const written = (text: string) => ({ text, span: { file: 'episode.yaml', start: 0, end: 0 } });

test('numbers are the same cut in full width, with zeros before them, in small letters', () => {
  expect(['12', '012', '１２', ' 12 '].map(cutKey)).toEqual(['12', '12', '12', '12']);
  expect(['12a', '12A', '１２ａ'].map(cutKey)).toEqual(['12A', '12A', '12A']);
  expect(['0', '00', '0A', '10'].map(cutKey)).toEqual(['0', '0', '0A', '10']);
});

describe('who draws a cut', () => {
  const episode: Episode = {
    ...noEpisode,
    artists: [
      { name: written('M. Arai'), cuts: [written('012'), written('13')] },
      { name: written('汐見'), cuts: [written('12')] },
    ],
  };

  test('is everybody whom the manifest names for its number, in the order of writing', () => {
    expect(artistsOf(episode, '１２')).toEqual(['M. Arai', '汐見']);
    expect(artistsOf(episode, '13')).toEqual(['M. Arai']);
  });

  test('is nobody for a cut that the manifest does not name', () => {
    expect(artistsOf(episode, '1')).toEqual([]);
  });
});

test('a number is that of the first `cut`, as it is written; none where there is no such line', () => {
  const number = (text: string) => cutNumberOf(parse('c.cut', text).tree);
  expect(number('time zzz\ncut 012\ncut 13\n')).toBe('012');
  expect(number('time 1+0\n')).toBeUndefined();
  expect(number('cut "no number"\n')).toBeUndefined();
  expect(cutNumberOf(null)).toBeUndefined();
});
