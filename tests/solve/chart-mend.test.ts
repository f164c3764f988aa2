import { expect, test } from 'vitest';
import { compiled } from '../fuzz/ways.js';

test.each([
  ['1{late}2--3..', '1 2--3..'],
  ['1{late}:3 2--3..', '1:3 2--3..'],
  ['1{late}..', '1..'],
])('a chart that is taken out joins no keys: %s', (items, mended) => {
  const text = `cut 1\ntime 1+0\nA: ${items}\n`;
  const { fix } = compiled(text).diagnostics.find(({ code }) => code === 'chart-unused')!;
  const [edit] = fix!.edits;
  const after = text.slice(0, edit!.span.start) + edit!.text + text.slice(edit!.span.end);
  expect(after).toBe(`cut 1\ntime 1+0\nA: ${mended}\n`);
  expect(compiled(after).diagnostics).toEqual([]);
});
