import { expect, test } from 'vitest';
import { phraseActions } from '../../src/lsp/phrase-actions.js';
import { opened, uri } from './opened.js';

/** The text with what is selected made a phrase; null where it is not offered. */
async function made(typed: string, selected: string): Promise<string | null> {
  const { workspace, analysis, at } = await opened(typed);
  const start = at(selected);
  const [action] = phraseActions(workspace, analysis, { start, end: start + selected.length });
  if (!action) return null;
  let { text } = analysis;
  for (const { range, newText } of [...action.edit!.changes![uri('c1.cut')]!].reverse())
    text = text.changed(range, newText);
  return text.text;
}

const HEAD = 'cut 1\ntime 2+0\n';

test('items become a phrase above the timeline that plays it', async () => {
  expect(await made(`${HEAD}A: 9:6 1--2--3-- 4..\n`, ' 1--2--3-- ')).toBe(
    `${HEAD}phrase part1 = 1--2--3--\nA: 9:6 part1 4..\n`,
  );
});

test('the name is one that no phrase has', async () => {
  expect(await made(`${HEAD}phrase part1 = 8 9\nA: part1 (1-2-)*3 4..\n`, '(1-2-)*3')).toBe(
    `${HEAD}phrase part1 = 8 9\nphrase part2 = (1-2-)*3\nA: part1 part2 4..\n`,
  );
});

test('inside of a group as well', async () => {
  expect(await made(`${HEAD}A: (1 2 3 4)..\n`, '2 3')).toBe(`${HEAD}phrase part1 = 2 3\nA: (1 part1 4)..\n`);
});

test.each([
  ['one drawing', `A: 1:6 2..\n`, '1:6'],
  ['half an item', `A: 12:6 3..\n`, '2:6 3'],
  ['nothing', `A: 1:6  2..\n`, '  '],
  ['another statement', `A: 1..\nmemo "1 2"\n`, '1 2'],
  ['what would show something else', `A: 1 -- 2 -- 3..\n`, '-- 2'],
])('%s is not', async (_, text, selected) => {
  expect(await made(HEAD + text, selected)).toBe(null);
});
