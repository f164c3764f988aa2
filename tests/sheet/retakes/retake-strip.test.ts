/** Rows before and after a change. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { RowPlace } from '../../../src/sheet/page-look.js';
import { retakeStrip, rowsShown } from '../../../src/sheet/retakes/retake-strip.js';
import { linesOf, lookOf, solvedCut, textsOf } from '../laid.js';

/** Bars beside these rows of the sheet. */
const barred = (from: number, to: number) =>
  Array.from({ length: 30 }, (_, i) => i + 1 >= from && i + 1 <= to);
const SIZE = { namesMm: 10, versionMm: 24, rowMm: 3.7, leastTextMm: 1.6 };

describe('rows shown', () => {
  const never = () => false;

  test('are those of the change and two around it', () => {
    expect(rowsShown({ from: 7, to: 9 }, 24, never, [])).toEqual([5, 6, 7, 8, 9, 10, 11]);
    expect(rowsShown({ from: 1, to: 2 }, 24, never, [])).toEqual([1, 2, 3, 4]);
    expect(rowsShown({ from: 23, to: 24 }, 24, never, [])).toEqual([21, 22, 23, 24]);
  });

  test('of a long change are its ends and those on which something begins', () => {
    expect(rowsShown({ from: 10, to: 60 }, 72, (frame) => frame % 20 === 0, [])).toEqual([
      8, 10, 20, 40, 60, 62,
    ]);
  });

  test('of a long change are the first and the last of those that differ, too', () => {
    expect(rowsShown({ from: 10, to: 60 }, 72, never, barred(30, 30))).toEqual([8, 10, 30, 62]);
    expect(rowsShown({ from: 10, to: 60 }, 72, never, barred(20, 24))).toEqual([8, 10, 20, 24, 62]);
  });

  test('rise, lie on the sheet, begin near the change and are never more than fourteen', () => {
    fc.assert(
      fc.property(
        fc.nat(200),
        fc.nat(200),
        fc.integer({ min: 1, max: 300 }),
        fc.nat(5),
        (a, b, length, every) => {
          const from = Math.min(a, b) + 1;
          const rows = rowsShown(
            { from, to: Math.max(a, b) + 1 },
            length,
            (frame) => frame % (every + 1) === 0,
            barred(a % 30, b % 30),
          );
          expect(rows.length).toBeGreaterThan(0);
          expect(rows.length).toBeLessThanOrEqual(14);
          expect(rows).toEqual([...new Set(rows)].sort((x, y) => x - y));
          expect(rows[0]).toBe(Math.max(1, Math.min(from, length) - 2));
          expect(rows.at(-1)).toBeLessThanOrEqual(length);
        },
      ),
    );
  });
});

describe('a strip', () => {
  const was = solvedCut('cut 9\ntime 1+0\nA: 1:4-2..\nvoice "Rill" 3..9 "Lower it"\nnote 5 "dust"\n');
  const is = solvedCut(
    'cut 9\ntime 1+6\nA: 1:6-2..\nvoice "Rill" 4..9 "Raise it"\nfield N full at 0,40\npan full@3 > N@8\n',
  );

  /** Texts of a strip by its three columns, and rows: `row column text`. */
  function told(place: RowPlace, rows: { from: number; to: number }, earlierLevel: string | null = null) {
    const strip = retakeStrip(
      was,
      is,
      { place, rows, earlierLevel, differs: [], camera: null },
      lookOf(),
      SIZE,
    );
    return textsOf(strip.at(100, 50)).map(({ x, y, text, anchor }) => {
      const column = anchor === 'end' || x < 110 ? 'row' : x < 134 ? 'before' : 'after';
      return `${Math.floor((y - 50) / SIZE.rowMm)} ${column} ${text}`;
    });
  }

  test('of a level has signs and finished numbers of both versions, row beside row', () => {
    const all = told({ kind: 'level', level: 'A' }, { from: 5, to: 6 });
    // Rows 3 to 8. The first one shows what is held there; key 2 is the third finished drawing, the in-between the second.
    expect(all.filter((one) => one.includes(' before '))).toEqual([
      '0 before [1]',
      '0 before 1',
      '2 before 2',
      '4 before 2',
      '4 before 3',
    ]);
    expect(all.filter((one) => one.includes(' after '))).toEqual(['0 after [1]', '0 after 1', '4 after 2']);
  });

  test('names its rows as the sheet does', () => {
    expect(told({ kind: 'notes' }, { from: 5, to: 5 }).filter((one) => one.includes(' row '))).toEqual([
      '0 row 0+3',
      '1 row 0+4',
      '2 row 0+5',
      '3 row 0+6',
      '4 row 0+7',
    ]);
  });

  test('of speech, camera and notes has their words where they begin', () => {
    const words = (place: RowPlace, rows: { from: number; to: number }) =>
      told(place, rows).filter((one) => !one.includes(' row '));
    expect(words({ kind: 'speech' }, { from: 3, to: 4 })).toEqual([
      '2 before Rill: Lower it',
      '3 after Rill: Raise it',
    ]);
    expect(words({ kind: 'notes' }, { from: 5, to: 5 })).toEqual(['2 before dust']);
    expect(words({ kind: 'camera' }, { from: 3, to: 8 })).toEqual([
      '0 before FIX',
      '2 after PAN (full)',
      '7 after (N)',
    ]);
  });

  test('of a move has that move alone, and nothing where a version does not have it', () => {
    const two = solvedCut(
      'cut 9\ntime 1+0\nA: 1..\nshake 3mm 1..12\nfield N full at 0,40\npan full@3 > N@8\n',
    );
    const pan = two.camera.moves.find(({ move }) => move.kind === 'pan')!;
    const where = {
      place: { kind: 'camera' },
      rows: { from: 3, to: 8 },
      differs: [],
      earlierLevel: null,
    } as const;
    const strip = retakeStrip(is, two, { ...where, camera: { was: null, is: pan } }, lookOf(), SIZE);
    const words = textsOf(strip.at(100, 50)).filter(({ anchor }) => anchor === 'start');
    expect(words.map(({ text }) => text)).toEqual(['PAN (full)', '(N)']);
  });

  test('has nothing where a version has no such level, but for one that was called otherwise', () => {
    const earlierTexts = (earlier: string | null) =>
      told({ kind: 'level', level: 'A' }, { from: 1, to: 2 }, earlier).filter((one) =>
        one.includes('before'),
      );
    expect(earlierTexts('Q')).toEqual([]);
    expect(earlierTexts(null).length).toBeGreaterThan(0);
  });

  test('has a bar beside the rows that differ and no others', () => {
    const strip = retakeStrip(
      was,
      is,
      {
        place: { kind: 'level', level: 'A' },
        rows: { from: 5, to: 8 },
        differs: barred(5, 6),
        camera: null,
        earlierLevel: null,
      },
      lookOf(),
      SIZE,
    );
    const bars = strip.at(100, 50).filter((mark) => mark.kind === 'path' && mark.fill === 'black');
    const tops = bars.map((mark) =>
      mark.kind === 'path' ? Math.floor((mark.points[0]![1] - 50) / SIZE.rowMm) : 0,
    );
    expect(tops).toEqual([2, 3]);
    expect(strip.heightMm).toBeCloseTo(8 * SIZE.rowMm, 9);
  });

  test('is grey where a version has no such row, and torn where rows are left out', () => {
    const long = retakeStrip(
      was,
      is,
      {
        place: { kind: 'level', level: 'A' },
        rows: { from: 1, to: 30 },
        differs: [],
        camera: null,
        earlierLevel: null,
      },
      lookOf(),
      SIZE,
    ).at(0, 0);
    // The sheet before has 24 rows; the last row shown is 30.
    expect(long.filter((mark) => mark.kind === 'tint')).toHaveLength(1);
    expect(long.filter((mark) => mark.kind === 'path' && !mark.closed).length).toBeGreaterThan(0);
    expect(linesOf(long).length).toBeGreaterThan(0);
  });
});
