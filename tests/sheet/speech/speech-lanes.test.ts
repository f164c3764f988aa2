/** Lanes of the dialogue column. */

import { describe, expect, test } from 'vitest';
import { speakerOf, speechOf, wholeText } from '../../../src/sheet/speech/speech-lanes.js';
import { wordsOf } from '../../../src/words/words.js';
import { laid, said, solvedCut, textsOf } from '../laid.js';

test('gives lines at the same time lanes of their own, and tells the memo what finds none', () => {
  const voices = ['Ann', 'Bo', 'Cy', 'Di'].map((name) => `voice "${name}" 1..24 "yes"`).join('\n');
  const [page] = laid(`cut 1\ntime 1+0\nA: 1..\n${voices}\n`);
  const xs = textsOf(page!.marks)
    .filter(({ text }) => text === 'yes')
    .map(({ x }) => x);
  expect(new Set(xs).size).toBe(3);
  expect(said(page!)).toContain('0+1–0+24 Di: yes');
});

const shotOf = (text: string) => solvedCut(`cut 1\ntime 4+0\nA: 1..\n${text}\n`).shot;

describe('lanes', () => {
  test('are shared by lines that do not overlap by a single row', () => {
    const lanes = (text: string) => speechOf(shotOf(text)).placed.map(({ lane }) => lane);
    expect(lanes('voice "Nao" 1..6 "Wait"\nvoice "Pim" 7..9 "No"')).toEqual([0, 0]);
    expect(lanes('voice "Nao" 1..6 "Wait"\nvoice "Pim" 6..9 "No"')).toEqual([0, 1]);
  });

  test('of sounds come after those of voices, music outside of them', () => {
    const speech = speechOf(shotOf('music 1..48 "flute"\nsound 5..9 "bell"\nvoice "Nao" 1..6 "Wait"'));
    expect([speech.voices, speech.sounds]).toEqual([1, 2]);
    expect(speech.placed.map(({ spoken, lane }) => [spoken.kind, lane])).toEqual([
      ['voice', 0],
      ['sound', 1],
      ['music', 2],
    ]);
  });

  test('are one of each at least', () => {
    expect(speechOf(shotOf(''))).toEqual({ voices: 1, sounds: 1, placed: [], without: [] });
  });
});

test('names who speaks, and how', () => {
  const words = wordsOf({ labels: 'en', convention: 'japan' }).sheet;
  const speakers = (text: string) => shotOf(text).spoken.map((one) => speakerOf(one, words));
  expect(speakers('voice "Nao" 1..6 "Wait"')).toEqual(['Nao:']);
  expect(speakers('voice "Nao" off 1..6 "Wait"')).toEqual(['Nao OFF:']);
  expect(speakers('sound 1..6 "bell"')).toEqual(['']);
});

test('tells the words of a line whole, with single blanks', () => {
  expect(wholeText(shotOf('voice "Nao" 1..24 "Wait  for" @9 "me!"').spoken[0]!)).toBe('Wait for me!');
});
