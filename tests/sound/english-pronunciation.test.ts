import { describe, expect, test } from 'vitest';
import { englishWords, figures, spelt } from '../../src/sound/english-pronunciation.js';

const known: Record<string, string> = {
  wait: 'W EY1 T',
  "don't": 'D OW1 N T',
  mister: 'M IH1 S T ER0',
  twelve: 'T W EH1 L V',
  fox: 'F AA1 K S',
  cat: 'K AE1 T',
  house: 'HH AW1 S',
};
const read = (typed: string) => {
  const { sounds, beats } = englishWords(typed, (word) => known[word] ?? null);
  return [sounds.map(({ sound }) => sound).join(' '), beats];
};

describe('a word', () => {
  test.each([
    ['Wait', 'W EY T', 1],
    ['WAIT', 'W EY T', 1],
    ['don’t', 'D OW N T', 1],
    ['Mr.', 'M IH S T ER', 2],
    ['12', 'T W EH L V', 1],
    ["cat's", 'K AE T S', 1],
    ["fox's", 'F AA K S IH Z', 2],
    ["Ann's", 'AE N Z', 1],
    ['TV', 'T IY V IY', 2],
    ['%', 'P ER S EH N T', 2],
    ['&', 'AH N D', 1],
  ])('%s', (typed, sounds, beats) => {
    expect(read(typed)).toEqual([sounds, beats]);
  });
});

describe('by its spelling, where no dictionary has it', () => {
  test.each([
    ['glish', 'G L IH1 SH'],
    ['phone', 'F OW1 N'],
    ['knight', 'N AY1 T'],
    ['brack', 'B R AE1 K'],
    ['zoop', 'Z UW1 P'],
    ['nation', 'N AE1 SH AH0 N'],
    ['tame', 'T EY1 M'],
    ['quill', 'K W IH1 L'],
  ])('%s', (letters, sounds) => {
    expect(spelt(letters).join(' ')).toBe(sounds);
  });
});

describe('figures', () => {
  test.each([
    ['7', 'seven'],
    ['12', 'twelve'],
    ['45', 'forty five'],
    ['100', 'one hundred'],
    ['1,024', 'one thousand twenty four'],
    ['3.14', 'three point one four'],
    ['2500000', 'two million five hundred thousand'],
    ['0', 'zero'],
  ])('%s', (typed, words) => {
    expect(figures(typed).join(' ')).toBe(words);
  });
});

test('consonants between two vowels belong to the next syllable, by halves', () => {
  const { sounds } = englishWords('x', () => 'AH0 N T AH1 L D');
  expect(sounds.map(({ beat }) => beat)).toEqual([0, 0, 1, 1, 1, 1]);
});
