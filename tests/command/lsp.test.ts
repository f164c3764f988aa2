import { afterEach, expect, test } from 'vitest';
import { runOn } from './run.js';

const { isTTY } = process.stdin;
afterEach(() => {
  process.stdin.isTTY = isTTY;
});

test('a person at a terminal is told that an editor starts the server', async () => {
  process.stdin.isTTY = true;
  const { status, out, error } = await runOn({}, 'lsp');
  expect([status, out]).toEqual([2, '']);
  expect(error).toContain('An editor starts `cutwright lsp` and speaks to it;');
});
