import { expect, test } from 'vitest';
import { saidInJapanese as said } from './said-ja.js';

test('who had it done is told where somebody is named', () => {
  const row = { cut: '12', stage: 'key', date: '2027-03-19' } as const;
  expect(said('progress-twice', { ...row, state: 'done', person: 'ろく' })).toBe(
    'カット12の `key` はもう済んでいます（2027-03-19、「ろく」）。戻すときは `retake` の行を書きます。',
  );
  expect(said('progress-twice', { ...row, state: 'started', person: '' })).toContain(
    'また始まっていますが、もう済んでいます（2027-03-19）',
  );
});

test('a word that is meant is offered, or all of them are told', () => {
  const stage = { variant: 'stage', found: 'kye', words: ['layout', 'key'] } as const;
  expect(said('progress-faulty', { ...stage, guess: 'key' })).toBe(
    '`kye` という工程はありません。`key` のことですか？',
  );
  expect(said('progress-faulty', { ...stage, guess: null })).toContain('工程は `layout`、`key` です。');
});
