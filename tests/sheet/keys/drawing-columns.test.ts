/** Marks of the key and cel columns. */

import { expect, it } from 'vitest';
import { laid, linesOf, said, textsOf } from '../laid.js';

it('draws a stroke under a breakdown, inside its row', () => {
  const [page] = laid('cut 1\ntime 12\nA: 1-=-2..\n', { convention: 'west' });
  const { rowMm } = { rowMm: page!.rows[0]!.height };
  const row = page!.rows[4]!;
  const under = linesOf(page!.marks).filter(
    ({ y1, y2, stroke }) =>
      stroke.ink === 'black' && y1 === y2 && y1 > row.y + rowMm / 2 && y1 < row.y + rowMm,
  );
  expect(under).toHaveLength(1);
});

it('says what is held in square brackets on the first row of each block and page', () => {
  const pages = laid('cut 1\ntime 8+0\nA: 1:4+0 x..\nB: 1--2..\n', { paper: 'A4' });
  expect(pages.map(({ label }) => label)).toEqual(['1', '2']);
  const firstOfPage2 = pages[1]!.rows[0]!;
  const onRow = textsOf(pages[1]!.marks).filter(
    ({ x, y }) =>
      x < firstOfPage2.x + firstOfPage2.width &&
      y > firstOfPage2.y &&
      y < firstOfPage2.y + firstOfPage2.height,
  );
  expect(onRow.map(({ text }) => text).filter((text) => text.startsWith('['))).toEqual([
    '[×]',
    '[2]',
    '[×]',
    '[4]',
  ]);
});

it('draws a hold line from the row below the number to just above the end of the last held row', () => {
  const [page] = laid('cut 1\ntime 10\nA: 1:7 2:1 3:2\n');
  const rows = page!.rows;
  const holds = linesOf(page!.marks).filter(
    ({ x1, x2, y1, stroke }) => stroke.ink === 'black' && x1 === x2 && y1 > rows[0]!.y,
  );
  const h = rows[0]!.height;
  const spans = holds.map(({ y1, y2 }) => [(y1 - rows[0]!.y) / h, (y2 - rows[0]!.y) / h]);
  // Key column and cel column: frames 2–7 and frame 10; nothing for the drawing of one frame.
  expect(spans.map(([from]) => Math.round(from! * 1000) / 1000)).toEqual([1, 9, 1, 9]);
  for (const [, to] of spans) expect(Math.ceil(to!) - to!).toBeCloseTo(0.18, 5);
  expect(spans.map(([, to]) => Math.ceil(to!))).toEqual([7, 10, 7, 10]);
});

it('brackets a cycle with its count, or an arrow where it runs on', () => {
  const arrows = (timeline: string): number =>
    laid(`cut 1\ntime 24\nA: ${timeline}\n`)[0]!.marks.filter(
      (mark) => mark.kind === 'path' && mark.fill === 'black' && mark.points.length === 3,
    ).length;
  expect(said(laid('cut 1\ntime 24\nA: (1-2-)*3\n')[0]!)).toContain('3 times');
  expect(arrows('(1-2-)*3')).toBe(0);
  expect(said(laid('cut 1\ntime 24\nA: (1-2-)..\n')[0]!)).toContain('cycle');
  expect(arrows('(1-2-)..')).toBe(1);
  expect(said(laid('cut 1\ntime 24\nA: (1-2-)*3\n', { labels: 'ja' })[0]!)).toMatch(/3 回/);
});
