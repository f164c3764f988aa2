/** Dissolves from cut to cut: rows of the two sheets and the running time, against common practice. */

import { describe, expect, test } from 'vitest';
import { compiled } from '../episode/episode.js';

/** Two cuts that dissolve, under a rule: rows of their sheets, their handles, and frames that both run for. */
async function sheets(rule: 'half' | 'full', one: string, two: string, dissolve: string) {
  const cuts = await compiled({
    'episode.yaml': `overlap: ${rule}\n`,
    '1.cut': `cut 1\ntime ${one}\noverlap out ${dissolve}\nA: 1..\n`,
    '2.cut': `cut 2\ntime ${two}\noverlap in ${dissolve}\nA: 1..\n`,
  });
  const [first, second] = [cuts['1.cut']!, cuts['2.cut']!];
  expect([...first.diagnostics, ...second.diagnostics]).toEqual([]);
  return [first.shot!, second.shot!];
}

describe('overlap: half (common practice)', () => {
  test('4+00 and 3+00 with a dissolve of 1+00: sheets of 4+12 and 3+12', async () => {
    const [one, two] = await sheets('half', '4+0', '3+0', '1+0');
    expect([one!.length, two!.length]).toEqual([4 * 24 + 12, 3 * 24 + 12]);
    expect([one!.handles, two!.handles]).toEqual([
      { head: 0, tail: 12 },
      { head: 12, tail: 0 },
    ]);
  });

  test('of an odd length the outgoing cut gets the smaller half, and no frame is lost or shown twice', async () => {
    const [one, two] = await sheets('half', '4+0', '3+0', '25');
    expect([one!.handles.tail, two!.handles.head]).toEqual([12, 13]);
  });
});

describe('overlap: full (common practice)', () => {
  test('both times contain the whole dissolve: no handles', async () => {
    const [one, two] = await sheets('full', '4+0', '3+0', '1+0');
    expect([one!.length, two!.length]).toEqual([96, 72]);
  });
});

describe.each(['half', 'full'] as const)('overlap: %s', (rule) => {
  /** Where the rows of the second sheet begin, in rows of the first, when both lie on top of each other as they are shot. */
  test.each(['2', '1+0', '25', '33'])(
    'with a dissolve of %s both sheets show it on the same frames',
    async (length) => {
      const [one, two] = await sheets(rule, '4+0', '3+0', length);
      const out = one!.camera.light.find(({ kind }) => kind === 'overlap')!;
      const into = two!.camera.light.find(({ kind }) => kind === 'overlap')!;
      if (out.kind !== 'overlap' || into.kind !== 'overlap') throw new Error('no dissolve');
      const shift = out.frames.from - into.frames.from;
      expect(out.frames.to - into.frames.to).toBe(shift);
      // The running time is the rows of both together, as the trade's sums have it: 96 + 72, or 96 + 72 - the dissolve.
      const frames = out.length;
      expect(shift + two!.length).toBe(rule === 'half' ? 96 + 72 : 96 + 72 - frames);
    },
  );
});
