/** Rows of a page, against the paper of the trade. */

import { describe, expect, test } from 'vitest';
import { sheetPages } from '../../src/sheet/exposure-sheet.js';
import { rowsOfBlocks } from '../../src/sheet/sheet-geometry.js';
import { defaults, type Settings } from '../../src/shot/settings.js';
import { solveText } from '../solve/shown.js';

const metrics = { width: (text: string, sizeMm: number) => text.length * sizeMm * 0.55 };

function rowsOfPages(time: string, settings: Partial<Settings>): number[] {
  const { solved } = solveText(`cut 1\ntime ${time}\nA: 1..\n`, {}, settings);
  const pages = sheetPages(solved, { settings: { ...defaults, ...settings }, metrics, stamp: '' });
  return pages.map((page) => page.rows.length);
}

describe('rows of a page', () => {
  test('Japan: two blocks of three seconds; 6+00 is one page, 6+01 two', () => {
    // Sources: gyakusan-enshutsu (two blocks of 3 s, 3 s variant); kotoluna-08, 2022-07-05 (144 rows a page).
    expect(rowsOfBlocks(defaults, 24)).toEqual([72, 72]);
    expect(rowsOfPages('6+00', {})).toEqual([144]);
    expect(rowsOfPages('6+01', {})).toEqual([144, 1]);
    expect(rowsOfPages('3+00', { rows: 72 })).toEqual([72]);
    expect(rowsOfPages('3+01', { rows: 72 })).toEqual([72, 1]);
  });

  test('United States: 80 or 96 rows in one block, five or six feet', () => {
    // From memory: sheets of 5 ft and of 6 ft.
    expect(rowsOfPages("6'00", { convention: 'west' })).toEqual([96]);
    expect(rowsOfPages("6'01", { convention: 'west' })).toEqual([96, 1]);
    expect(rowsOfPages("10'00", { convention: 'west', rows: 80 })).toEqual([80, 80]);
  });
});
