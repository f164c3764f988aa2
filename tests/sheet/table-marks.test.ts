/** Tables as marks. */

import { describe, expect, test } from 'vitest';
import { inTurn, layTable } from '../../src/layout/table.js';
import { black, pale, textAt } from '../../src/sheet/mark-builders.js';
import { type PaperColumn, type TableStyle, tableMarks } from '../../src/sheet/table-marks.js';
import { linesOf, textsOf } from './laid.js';
import { plainMetrics } from './plain-metrics.js';

const column = (align: 'start' | 'end', texts: readonly (readonly string[])[]): PaperColumn => ({
  align,
  least: 20,
  wanted: 20,
  cells: () => texts.map((lines) => [...lines]),
});
const left = column('start', [['a', 'b'], ['c']]);
const right = column('end', [['1'], ['']]);
const SET = layTable({
  columns: [left, right],
  rows: 2,
  rowHeight: (lines) => 4 + (lines - 1) * 3,
  headHeight: 5,
  sharing: inTurn,
  area: { x: 10, y: 100, width: 40, height: 100 },
})!.pages[0]!.sets[0]!;

const STYLE: TableStyle<PaperColumn> = {
  metrics: plainMetrics,
  sizeMm: 2,
  rowMm: 4,
  leadingMm: 3,
  inset: [1, 2],
  least: null,
  bold: (_, row) => row === 1,
  head: (_, { x, y }) => [textAt(x, y, 'head', { sizeMm: 2 })],
  headRule: pale(0.4),
  ruleUnder: (_, __, last) => (last ? black(0.3) : pale(0.1)),
  upright: () => null,
  edge: null,
};
const marks = (over: Partial<TableStyle<PaperColumn>> = {}) => tableMarks(SET, { ...STYLE, ...over });
const cellsOf = (over: Partial<TableStyle<PaperColumn>> = {}) =>
  textsOf(marks(over)).filter(({ text }) => text !== 'head');

describe('texts', () => {
  test('stand at the inset of their column, an empty one nowhere', () => {
    expect(cellsOf().map(({ text, x, anchor }) => [text, x, anchor])).toEqual([
      ['a', 11, 'start'],
      ['b', 11, 'start'],
      ['1', 48, 'end'],
      ['c', 11, 'start'],
    ]);
  });

  test('of one cell stand a leading apart, below the head', () => {
    const [a, b, , c] = cellsOf();
    expect(a!.y).toBeCloseTo(105 + 2 + 0.37 * 2);
    expect(b!.y - a!.y).toBeCloseTo(3);
    expect(c!.y - a!.y).toBeCloseTo(7);
  });

  test('are bold where that is asked for', () => {
    expect(cellsOf().map(({ weight }) => weight)).toEqual(['regular', 'regular', 'regular', 'bold']);
  });

  test('that are too wide are set smaller only where a least size is given', () => {
    const wide = { ...SET, rows: [{ ...SET.rows[0]!, cells: [['x'.repeat(30)], ['1']] }] };
    const sizes = (least: number | null) =>
      textsOf(tableMarks(wide, { ...STYLE, least })).filter(({ text }) => text.startsWith('x'));
    expect(sizes(null)[0]).toMatchObject({ sizeMm: 2 });
    expect(sizes(1)[0]!.sizeMm).toBeLessThan(2);
  });
});

describe('rules', () => {
  test('stand over and under the heads and under each row', () => {
    expect(linesOf(marks()).map(({ y1, stroke }) => [y1, stroke.widthMm])).toEqual([
      [100, 0.4],
      [105, 0.4],
      [112, 0.1],
      [116, 0.3],
    ]);
  });

  test('stand upright only where there is a stroke for them', () => {
    const upright = linesOf(marks({ upright: () => pale(0.2), edge: black(0.5) })).filter(
      ({ x1, x2 }) => x1 === x2,
    );
    expect(upright.map(({ x1, y1, y2 }) => [x1, y1, y2])).toEqual([
      [10, 100, 116],
      [30, 100, 116],
      [50, 100, 116],
    ]);
  });
});
