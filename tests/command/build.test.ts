import { expect, test } from 'vitest';
import { runOn } from './run.js';

test('a file that is no text and a text that is no cut', async () => {
  expect((await runOn({ 'a.pdf': '%PDF-1.7\n\u0000' }, 'build', 'a.pdf')).status).toBe(1);
  expect((await runOn({ 'a.txt': 'hello' }, 'build', 'a.txt')).status).toBe(1);
});

test('a name of a picture is refused: what is built is a PDF', async () => {
  const { status, error } = await runOn(
    { 'a.cut': 'cut 1\ntime 1+0\nA: 1..\n' },
    'build',
    'a.cut',
    '-o',
    'x.png',
  );
  expect(status).toBe(2);
  expect(error).toContain('Error: `--output` takes a file whose name ends in .pdf.');
});
