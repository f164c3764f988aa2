import { expect, test } from 'vitest';
import { saidInJapanese as said } from './said-ja.js';

test('a fault of a table says row and column first, and which frames', () => {
  const cell = { variant: 'frame-missing', row: 4, column: 1, frame: 5, wanted: 4 } as const;
  expect(said('table-faulty', { ...cell, level: null })).toBe(
    '4行1列：5コマ目の前に、シートの4コマ目がありません。',
  );
  expect(said('table-faulty', { ...cell, level: 'B' })).toBe(
    '4行1列：5コマ目の前に、セルBの4コマ目がありません。',
  );
});

test('a watch is this process or another one', () => {
  const watch = { variant: 'second-watch', folder: 'out' } as const;
  expect(said('watch-impossible', { ...watch, by: null })).toContain('（このプロセス）');
  expect(said('watch-impossible', { ...watch, by: 7 })).toContain('（プロセス 7）');
});
