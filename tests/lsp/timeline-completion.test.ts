import { describe, expect, test } from 'vitest';
import type { Item } from '../../src/language/tree.js';
import { itemLabel } from '../../src/lsp/timeline-completion.js';
import { labelsOffered, offeredIn } from './offered.js';
import { opened } from './opened.js';

test('an item is called by what it shows', async () => {
  const { analysis } = await opened('cut 1\ntime 1+0\nphrase walk = 1-2\nA: 1-2 1>2.1 x (3) walk..\n');
  const statement = analysis.compiled!.tree!.statements.find(({ kind }) => kind === 'timeline')!;
  const { items } = statement as unknown as { items: readonly Item[] };
  expect(items.map(itemLabel)).toEqual([
    '1',
    'the in-between',
    '2',
    '1>2.1',
    'the empty level',
    'the group',
    'walk',
  ]);
});

describe('in a timeline', () => {
  test('are phrases and the two words', async () => {
    expect(await labelsOffered('cut 1\ntime 1+0\nphrase walk = 1-2\nA: 1.. |\n')).toEqual(
      expect.arrayContaining(['walk', 'on', 'x']),
    );
  });

  test('behind `@` are the marks, and nothing else', async () => {
    expect(
      await labelsOffered('cut 1\ntime 2+0\nmark hit 1+0\nmark miss 1+6\nphrase walk = 1-2\nA: 1 @|\n'),
    ).toEqual(['hit', 'miss']);
  });

  test('inside a brace are the charts', async () => {
    expect(await labelsOffered('cut 1\ntime 1+0\nA: 1--{|\n')).toEqual(['even', 'early', 'late', 'both']);
  });

  test('`..` holds the last drawing of a timeline that is too short', async () => {
    const [first] = await offeredIn('cut 1\ntime 1+0\nA: 1:12 2 |\n');
    expect(first).toEqual({
      label: '..',
      detail: 'hold 2 to the end: 10 frames',
      sortText: ' ',
      text: 'cut 1\ntime 1+0\nA: 1:12 2..\n',
    });
  });

  test('a blank is no question', async () => {
    const blank = { blank: true };
    expect(await labelsOffered('cut 1\ntime 1+0\nphrase walk = 1-2\nA: 1.. |\n', blank)).toEqual([]);
    expect(await labelsOffered('cut 1\ntime 1+0\nA: 1 |\n', blank)).toEqual([]);
  });

  test('what is half typed is no phrase', async () => {
    expect(await labelsOffered('cut 1\ntime 1+0\nphrase walk = 1-2\nA: wa|\n')).not.toContain('wa');
  });

  test('behind the `*` of a group are numbers, first the one that fills the cut', async () => {
    const found = await offeredIn('cut 1\ntime 2+0\nA: 5:6 (1-2-)*|\n');
    expect(found.map(({ label, detail }) => [label, detail])).toEqual(
      [
        ['5', '2 frames before the end of the cut'],
        ['2', '26 frames before the end of the cut'],
        ['3', '18 frames before the end of the cut'],
        ['4', '10 frames before the end of the cut'],
      ].map(([label, detail]) => [label, expect.stringContaining(detail!)]),
    );
    expect(found[0]!.text).toBe('cut 1\ntime 2+0\nA: 5:6 (1-2-)*5\n');
    const [whole] = await offeredIn('cut 1\ntime 2+0\nA: (1-2-)*|\n');
    expect(whole).toMatchObject({ label: '6', detail: 'to the end of the cut' });
  });

  test('items behind the group count, and a group that fits once only has no number', async () => {
    expect(await labelsOffered('cut 1\ntime 1+0\nA: (1-2-)*| 3:8\n')).toEqual(['2']);
    expect(await labelsOffered('cut 1\ntime 0+12\nA: (1-2-)*|\n')).toEqual([]);
  });
});
