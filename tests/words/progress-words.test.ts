import { expect, test } from 'vitest';
import { NAMED_STAGES, stageWord } from '../../src/words/progress-words.js';
import { wordsOf } from '../../src/words/words.js';

test('a stage has its word in each language; another is printed as it is typed', () => {
  for (const labels of ['en', 'ja'] as const) {
    const words = wordsOf({ labels, convention: 'japan' }).progress;
    for (const stage of NAMED_STAGES) expect(stageWord(words, stage)).toBe(words.stages[stage]);
    expect(stageWord(words, 'colour')).toBe('colour');
  }
});
