import { expect, test } from 'vitest';
import { runOn } from './run.js';

test('a file that is no text and a text that is no cut', async () => {
  expect((await runOn({ 'a.pdf': '%PDF-1.7\n\u0000' }, 'build', 'a.pdf')).status).toBe(1);
  expect((await runOn({ 'a.txt': 'hello' }, 'build', 'a.txt')).status).toBe(1);
});
