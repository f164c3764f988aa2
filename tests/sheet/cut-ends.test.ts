/** Running numbers, the end of a cut, handles. */

import { describe, expect, it } from 'vitest';
import { sheetPages } from '../../src/sheet/exposure-sheet.js';
import { laid, linesOf, lookOf, said, solvedCut, textsOf } from './laid.js';

const held = (time: string): string => `cut 1\ntime ${time}\nA: 1..\n`;

describe('running numbers', () => {
  const labels = (page: ReturnType<typeof laid>[number]): Record<string, number> =>
    Object.fromEntries(
      textsOf(page.marks)
        .filter(({ text }) => /^\d+[+']$/.test(text))
        .map(({ text, y }) => [
          text,
          page.rows.filter((row) => row.x === page.rows[0]!.x && row.y < y).length,
        ]),
    );

  it('name the seconds and the frame at each heavy line', () => {
    const [page] = laid(held('4+0'));
    // The frame number on the second's first row, the second one row below; the second block has the fourth second.
    expect(labels(page!)).toEqual({ '0+': 2, '1+': 26, '2+': 50, '3+': 2 });
    const frames = textsOf(page!.marks).filter(({ text }) => ['25', '49', '73'].includes(text));
    expect(frames).toHaveLength(3);
  });

  it('name feet in the west', () => {
    expect(labels(laid(held("3'00"), { convention: 'west' })[0]!)).toEqual({ "0'": 2, "1'": 18, "2'": 34 });
  });

  it('go on on the next page, also where it holds a single row', () => {
    const second = laid(held('6+1'))[1]!;
    expect(said(second)).toMatch(/\b145\b/);
    expect(said(second)).toContain('6+');
  });
});

describe('the end of a cut', () => {
  const hatches = (page: ReturnType<typeof laid>[number]) =>
    page.marks.filter((mark) => mark.kind === 'hatch');

  it('is a double line under the last row, and a hatch from there on', () => {
    const [page] = laid(held('4+6'));
    const last = page!.rows.at(-1)!;
    const [hatch, ...more] = hatches(page!);
    expect(more).toEqual([]);
    expect(hatch!.y).toBeCloseTo(last.y + last.height, 6);
    expect(hatch).toMatchObject({ x: last.x, width: last.width });
    expect(hatch!.y + hatch!.height).toBeCloseTo(page!.rows[0]!.y + 72 * last.height, 6);
    const across = linesOf(page!.marks).filter(
      ({ x1, x2, stroke }) => x2 - x1 === last.width && stroke.ink === 'black',
    );
    expect(across.map(({ y1 }) => y1 - last.y - last.height)).toEqual([
      expect.closeTo(0, 6),
      expect.closeTo(0.7, 6),
    ]);
  });

  it('hatches a whole block that the cut does not reach', () => {
    const [page] = laid(held('2+0'));
    const rows = page!.rows;
    expect(hatches(page!)).toHaveLength(2);
    expect(hatches(page!)[1]).toMatchObject({ y: rows[0]!.y });
    expect(hatches(page!)[1]!.height).toBeCloseTo(72 * rows[0]!.height, 6);
  });

  it('hatches nothing on a full page', () => {
    expect(laid(held('6+0')).flatMap(hatches)).toEqual([]);
  });
});

describe('handles', () => {
  const solved = solvedCut(held('2+12'), {}, (shot) => ({
    ...shot,
    handles: { head: 8, tail: 12 },
    time: 40,
  }));
  const [page] = sheetPages(solved, lookOf());
  const row = (frame: number) => page!.rows[frame - 1]!;

  it('are shaded', () => {
    const tints = page!.marks.filter((mark) => mark.kind === 'tint');
    expect(tints.map(({ y }) => y)).toEqual([row(1).y, expect.closeTo(row(49).y, 6)]);
    expect(tints.map(({ height }) => Math.round(height / row(1).height))).toEqual([8, 12]);
  });

  it('end at ruled cut points with their name beside them', () => {
    const ruled = linesOf(page!.marks).filter(({ stroke }) => stroke.dash);
    expect(ruled.map(({ y1 }) => y1)).toEqual([expect.closeTo(row(9).y, 6), expect.closeTo(row(49).y, 6)]);
    expect(textsOf(page!.marks).filter(({ text }) => text === 'cut point')).toHaveLength(2);
  });

  it('are told in the memo; the head names the time without them', () => {
    expect(said(page!)).toContain(
      'Handles (shaded rows): 0+8 before the cut, 0+12 after it. Sheet 2+12 in all.',
    );
    expect(said(page!)).toContain('1 + 16');
  });
});
