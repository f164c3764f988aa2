import { describe, expect, test } from 'vitest';
import { lengthActions } from '../../src/lsp/length-actions.js';
import { opened, uri } from './opened.js';

/** Titles, and the text as it is with each of them. */
async function offered(typed: string) {
  const { workspace, analysis, cursor } = await opened(typed);
  return lengthActions(workspace, analysis, { start: cursor, end: cursor }).map(({ title, edit }) => {
    const [{ range, newText } = { range: undefined, newText: '' }] = edit!.changes![uri('c1.cut')]!;
    return [title, analysis.text.changed(range, newText).text];
  });
}

describe('a level that is too short', () => {
  test('can have its cut as long as it is, or nothing from there on', async () => {
    expect(await offered('cut 1\ntime 4+0\nA: 1:1+12 2:1+12|\n')).toEqual([
      ['Make the cut 3+0', 'cut 1\ntime 3+0\nA: 1:1+12 2:1+12\n'],
      ['Show nothing from there', 'cut 1\ntime 4+0\nA: 1:1+12 2:1+12 x..\n'],
    ]);
  });

  test('keeps the cut where another level would then be too long', async () => {
    expect((await offered('cut 1\ntime 4+0\nA: 1:3+0|\nB: 2:4+0\n')).map(([title]) => title)).toEqual([
      'Show nothing from there',
    ]);
  });
});

test('a level that is too long can have its cut as long as it is, in the notation of the cut', async () => {
  expect(await offered('cut 1\ntime 30\nA: 1:20 2:20|\n')).toEqual([
    ['Make the cut 40', 'cut 1\ntime 40\nA: 1:20 2:20\n'],
  ]);
  expect((await offered("cut 1\ntime 3'00\nA: 1:60|\n")).map(([title]) => title)).toEqual([
    "Make the cut 3'12",
  ]);
});

test('elsewhere nothing is offered', async () => {
  expect(await offered('cut 1|\ntime 4+0\nA: 1:3+0\n')).toEqual([]);
});
