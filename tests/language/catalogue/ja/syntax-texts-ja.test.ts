import { expect, test } from 'vitest';
import { saidInJapanese as said } from './said-ja.js';

test('a truck of a level is told what `truck` alone does', () => {
  const level = { variant: 'level-meant', found: 'A' } as const;
  expect(said('does-not-fit', { ...level, statement: 'truck' })).toContain(
    'カメラがフレームからフレームへ動きます',
  );
  expect(said('does-not-fit', { ...level, statement: 'turn' })).toBe(
    '`A` はここには書けません。セルを動かすなら、前に `level` と書きます。',
  );
});

test('what should stand at a place is listed', () => {
  expect(said('stops-short', { statement: 'time', wanted: ['time'], last: 'time' })).toBe(
    '`time` の行が途中で終わっています。`time` の後に必要なもの：時間（5+0 など）。',
  );
});
