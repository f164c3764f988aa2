import { describe, expect, test } from 'vitest';
import type { StatementOf } from '../../src/language/tree.js';
import { hintsIn, solvedTimeline } from '../../src/lsp/timeline-frames.js';
import { type Opened, opened } from './opened.js';

const WHOLE = { start: 0, end: Number.POSITIVE_INFINITY };

async function hints(text: string, within = WHOLE) {
  const { analysis } = await opened(text);
  return hintsIn(analysis, within).map(({ position, label }) => [position.line, position.character, label]);
}
const timelines = ({ analysis }: Opened) =>
  analysis.compiled!.tree!.statements.filter(
    (one): one is StatementOf<'timeline'> => one.kind === 'timeline',
  );

describe('the running frame', () => {
  test('stands at the end of every line of a timeline', async () => {
    expect(await hints('cut 1\ntime 2+0\nA: 1:12 2:12\n   3..\n')).toEqual([
      [2, 12, '= 24 (1+0)'],
      [3, 6, '= 48 (2+0)'],
    ]);
  });

  test('stands before blanks and a comment', async () => {
    expect(await hints('cut 1\ntime 1+0\nA: 1..   # held\n')).toEqual([[2, 6, '= 24 (1+0)']]);
  });

  test('is not told where a line ends inside a group', async () => {
    expect(await hints('cut 1\ntime 1+0\nA: (1:6\n   2:6)*2\n')).toEqual([[3, 9, '= 24 (1+0)']]);
  });

  test('is told of the lines that touch the stretch', async () => {
    const text = 'cut 1\ntime 1+0\nA: 1..\nB: 1..\n';
    const start = text.indexOf('B:');
    expect(await hints(text, { start, end: start + 6 })).toEqual([[3, 6, '= 24 (1+0)']]);
  });
});

describe('a timeline beside its solution', () => {
  test('is filled as far as it says something', async () => {
    const one = await opened('cut 1\ntime 2+0\nA: 1:12 2:6\n');
    const found = solvedTimeline(one.analysis, timelines(one)[0]!)!;
    expect([found.filled, found.shot.length, found.level.name, found.solved!.name]).toEqual([
      18,
      48,
      'A',
      'A',
    ]);
    expect(found.placed.map(({ start, frames }) => [start, frames])).toEqual([
      [1, 12],
      [13, 6],
    ]);
  });

  test('is none where the level has another one', async () => {
    const one = await opened('cut 1\ntime 1+0\nA: 1..\nA: 2..\n');
    const found = timelines(one).map((each) => solvedTimeline(one.analysis, each) !== null);
    expect(found).toEqual([true, false]);
  });

  test('is none where it plays a phrase that is not there', async () => {
    const one = await opened('cut 1\ntime 1+0\nA: walk 1..\n');
    expect(solvedTimeline(one.analysis, timelines(one)[0]!)).toBeNull();
  });
});
