import { expect, test } from 'vitest';
import { saidInJapanese as said } from './said-ja.js';

test('a timeline that is there twice is told by its level, other statements by their words', () => {
  expect(said('statement-twice', { statement: '', name: 'A' })).toBe(
    'セル `A` のタイムラインが2つあります。',
  );
  expect(said('statement-twice', { statement: 'time', name: null })).toBe('`time` の行が2つあります。');
  expect(said('statement-twice', { statement: 'cels', name: 'A' })).toBe('`cels A` の行が2つあります。');
});

test('words past the end start there, or last until there', () => {
  expect(said('dialogue-past-end', { heard: 'voice', from: 30, to: 40, rows: 24 })).toBe(
    'このセリフは30コマ目から始まり、シートの最後（24コマ）を越えます。',
  );
  expect(said('dialogue-past-end', { heard: 'sound', from: 3, to: 40, rows: 24 })).toMatch(
    /^このSEは40コマ目まで続き、/,
  );
});
