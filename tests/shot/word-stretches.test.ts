import { describe, expect, test } from 'vitest';
import { wordStretches } from '../../src/shot/word-stretches.js';
import { solvedCut } from '../sheet/laid.js';

const shotOf = (text: string) => solvedCut(`cut 1\ntime 4+0\nA: 1..\n${text}\n`).shot;

describe('words', () => {
  const stretches = (text: string) =>
    wordStretches(shotOf(text).spoken[0]!).map(({ from, to, text: words, tied }) => [from, to, words, tied]);

  test('that are tied to a row begin a stretch there, the others go on with the one before', () => {
    expect(stretches('voice "Nao" 1..24 "Wait" @9 "for" "me!"')).toEqual([
      [1, 8, 'Wait', true],
      [9, 24, 'for me!', true],
    ]);
  });

  test('that are tied to the first row are one stretch, tied', () => {
    expect(stretches('voice "Nao" 1..24 @1 "Wait for me!"')).toEqual([[1, 24, 'Wait for me!', true]]);
  });
});
