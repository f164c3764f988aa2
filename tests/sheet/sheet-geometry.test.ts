/** Where everything stands on a sheet of paper. */

import { describe, expect, it, test } from 'vitest';
import { NO_GUTTERS } from '../../src/sheet/block-columns.js';
import {
  largerPrint,
  mostRows,
  PAPER_MM,
  rowsOfBlocks,
  rowTop,
  type SheetGeometry,
  sheetGeometry,
  smallestTextMm,
  unitOf,
} from '../../src/sheet/sheet-geometry.js';
import { defaults, PAPERS, type Settings } from '../../src/shot/settings.js';

describe('geometry', () => {
  const wanted = {
    levels: 5,
    main: true,
    bracketMm: 1.6,
    levelMm: 0,
    labelsMm: 0,
    voices: 1,
    sounds: 1,
    cameraLanes: 1,
    gutters: NO_GUTTERS,
  };

  it.each(PAPERS)('fills %s without running over', (paper) => {
    for (const convention of ['japan', 'west'] as const) {
      const place = sheetGeometry({ ...defaults, paper, convention }, 24, wanted);
      for (const { x, width, columns, rows } of place.blocks) {
        const all = [
          columns.labels,
          columns.numbers,
          ...columns.keys,
          columns.dialogue!,
          columns.numbersAgain,
          ...columns.cels,
          columns.camera!,
          columns.notes,
        ];
        all.slice(1).forEach((column, i) => {
          expect(column.x).toBeCloseTo(all[i]!.x + all[i]!.width, 6);
        });
        expect(all[0]!.x).toBeCloseTo(x, 6);
        expect(columns.notes.x + columns.notes.width).toBeCloseTo(x + width, 6);
        expect(Math.min(...columns.keys.map((key) => key.width - 1.6))).toBeGreaterThanOrEqual(3 - 1e-9);
        expect(Math.min(...columns.cels.map((cel) => cel.width))).toBeGreaterThanOrEqual(3 - 1e-9);
        expect(columns.cels.length).toBeGreaterThan(5);
        expect(place.top + rows * place.rowMm).toBeLessThanOrEqual(place.foot.y + 1e-9);
      }
      expect(place.foot.y + place.foot.height).toBeLessThan(place.heightMm - 5);
    }
  });

  it('knows the rows that a paper can hold', () => {
    for (const paper of PAPERS)
      for (const convention of ['japan', 'west'] as const) {
        const most = mostRows({ ...defaults, paper, convention });
        const settings = { ...defaults, paper, convention, rows: most };
        const place = sheetGeometry(settings, 24, wanted);
        expect(most).toBeGreaterThanOrEqual(
          rowsOfBlocks({ ...settings, rows: null }, 24).reduce((a, b) => a + b),
        );
        expect(place.foot.y + place.foot.height).toBeLessThan(place.heightMm - 5);
      }
  });
});

describe('rows of a page', () => {
  const rows = (settings: Partial<Settings>, fps = 24) => rowsOfBlocks({ ...defaults, ...settings }, fps);

  it('are numbered by the second, in the west by the foot', () => {
    expect(unitOf(defaults, 24)).toBe(24);
    expect(unitOf(defaults, 29.97)).toBe(30);
    expect(unitOf({ ...defaults, convention: 'west' }, 24)).toBe(16);
  });

  it('are six seconds in two halves, or six feet in one', () => {
    expect(rows({})).toEqual([72, 72]);
    expect(rows({ convention: 'west' })).toEqual([96]);
    expect(rows({}, 30)).toEqual([90, 90]);
  });

  it('are in one block up to three seconds', () => {
    expect(rows({ rows: 72 })).toEqual([72]);
    expect(rows({ rows: 73 })).toEqual([37, 36]);
  });

  it('are fewer, in whole seconds, where they would be too low', () => {
    const low = rowsOfBlocks({ ...defaults, paper: 'B5' }, 24, 4);
    expect(low.every((count) => count % 24 === 0 && count < 72)).toBe(true);
  });
});

it('a row begins where the one above it ends', () => {
  const place = { top: 80, rowMm: 3 } as SheetGeometry;
  expect([0, 1, 72].map((row) => rowTop(place, row))).toEqual([80, 83, 296]);
});

// ---- papers

// ISO 216: the sides of A sizes are as 1 to the square root of 2, to the millimetre; JIS P 0138 the same for B.
test.each(['A3', 'A4', 'B4', 'B5'] as const)('the sides of %s are as 1 to √2', (paper) => {
  const { widthMm, heightMm } = PAPER_MM[paper];
  expect(Math.abs(heightMm - widthMm * Math.SQRT2)).toBeLessThan(1);
});

test('all papers stand upright', () => {
  for (const paper of PAPERS) expect(PAPER_MM[paper].heightMm).toBeGreaterThan(PAPER_MM[paper].widthMm);
});

test('print is as large as on A4, larger on larger papers, up to 1.4 times', () => {
  expect([largerPrint('A4'), largerPrint('B5')]).toEqual([1, 1]);
  expect(largerPrint('B4')).toBeCloseTo(257 / 210);
  expect(largerPrint('A3')).toBe(1.4);
});

test('the smallest print is 5 pt on papers that are copied down, 5.5 pt on the others', () => {
  const points = (paper: 'A3' | 'A4' | 'tabloid' | 'letter') => (smallestTextMm(paper) / 25.4) * 72;
  expect(['A3', 'tabloid'].map((paper) => points(paper as 'A3'))).toEqual([
    expect.closeTo(5),
    expect.closeTo(5),
  ]);
  expect(['A4', 'letter'].map((paper) => points(paper as 'A4'))).toEqual([
    expect.closeTo(5.5),
    expect.closeTo(5.5),
  ]);
});
