import { expect, test } from 'vitest';
import { formatEdits } from '../../src/lsp/format-edits.js';
import { opened } from './opened.js';

/** Two lines that are laid out otherwise, with one between them that is not. */
const UNTIDY = 'cut   1\ntime 1+0\n\nA:  1--2..\n';

const lines = (start: number, end: number) => ({
  start: { line: start, character: 0 },
  end: { line: end, character: 0 },
});

test('only the lines that change are edited', async () => {
  const { analysis } = await opened(UNTIDY);
  expect(formatEdits(analysis)).toEqual([
    { range: lines(0, 1), newText: 'cut 1\n' },
    { range: lines(3, 4), newText: 'A: 1--2..\n' },
  ]);
});

test('a stretch has only the edits that touch it', async () => {
  const { analysis, at } = await opened(UNTIDY);
  const start = at('1--2');
  expect(formatEdits(analysis, { start, end: start + 1 })).toEqual([
    { range: lines(3, 4), newText: 'A: 1--2..\n' },
  ]);
  expect(formatEdits(analysis, { start: at('+0'), end: at('+0') })).toEqual([]);
});

test('a text that is laid out already has no edits, whatever its line ends', async () => {
  for (const end of ['\n', '\r\n']) {
    const { analysis } = await opened(`cut 1${end}time 1+0${end}${end}A: 1--2..${end}`);
    expect(formatEdits(analysis)).toEqual([]);
  }
});

test('an edit has the line ends of the text', async () => {
  const { analysis } = await opened(UNTIDY.replaceAll('\n', '\r\n'));
  expect(formatEdits(analysis).map(({ newText }) => newText)).toEqual(['cut 1\r\n', 'A: 1--2..\r\n']);
});

test('a manifest is left as it is', async () => {
  const { analysis } = await opened('title:   Ferry\n', {}, { name: 'episode.yaml' });
  expect(formatEdits(analysis)).toEqual([]);
});
