/** Tables of any columns and rows, for property tests. */

import fc from 'fast-check';
import {
  cellByCell,
  fromTheWidest,
  inProportion,
  inTurn,
  type Sharing,
  type TableColumn,
  type TableSetting,
} from '../../src/layout/table.js';

export const sharings = fc.constantFrom<Sharing>(inTurn, inProportion, cellByCell, fromTheWidest);

/** Columns in whole units, with rows of one to three lines; the text of a cell names its column and row. */
export function tables(most: { groups: boolean; optional: boolean }) {
  const column = fc.record({
    least: fc.integer({ min: 1, max: 12 }),
    more: fc.integer({ min: 0, max: 20 }),
    group: fc.constantFrom(undefined, 'a', 'b'),
    optional: fc.constantFrom(undefined, 1, 2, 3),
    align: fc.constantFrom<'start' | 'end'>('start', 'end'),
  });
  return fc
    .record({
      made: fc.array(column, { minLength: 1, maxLength: 9 }),
      rows: fc.integer({ min: 0, max: 60 }),
      names: fc.integer({ min: 0, max: 2 }),
      lines: fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 60, maxLength: 60 }),
      gap: fc.integer({ min: 0, max: 3 }),
      edge: fc.integer({ min: 0, max: 2 }),
      height: fc.integer({ min: 6, max: 40 }),
      width: fc.integer({ min: 60, max: 140 }),
      across: fc.integer({ min: 1, max: 5 }),
      between: fc.integer({ min: 0, max: 4 }),
      down: fc.integer({ min: 0, max: 3 }),
      sharing: sharings,
    })
    .map(({ made, lines, names, height, down, width, ...rest }) => {
      const columns = made.map(
        (
          { least, more, group, optional, align },
          c,
        ): TableColumn & { heads: string[]; align: 'start' | 'end' } => ({
          heads: [`h${c}`],
          align,
          least,
          wanted: least + more,
          ...(most.groups && group !== undefined && c >= names ? { group } : {}),
          ...(most.optional && optional !== undefined && c >= names ? { optional } : {}),
          cells: () =>
            Array.from({ length: rest.rows }, (_, row) =>
              Array.from({ length: lines[row]! }, (_, n) => `${c}/${row}/${n}`),
            ),
        }),
      );
      return {
        ...rest,
        columns,
        names: Math.min(names, columns.length - 1),
        rowHeight: (count: number) => count,
        headHeight: 2,
        area: { x: 7, y: 11, width, height },
        top: 11 + down,
      } satisfies TableSetting<TableColumn>;
    });
}
