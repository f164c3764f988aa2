import { expect, test } from 'vitest';
import { saidInJapanese as said } from './said-ja.js';

test('who does speak is named', () => {
  const silent = { variant: 'no-lines', speaker: 'ナオ' } as const;
  expect(said('mouth-silent', { ...silent, guess: 'なお', speakers: ['なお'] })).toBe(
    'このカットに「ナオ」のセリフはありません。`なお` のことですか？',
  );
  expect(said('mouth-silent', { ...silent, guess: null, speakers: ['リン', 'ケン'] })).toMatch(
    /話者は「リン」「ケン」です。$/,
  );
  expect(said('mouth-silent', { ...silent, guess: null, speakers: [] })).toMatch(
    /セリフが1つもありません。$/,
  );
});
