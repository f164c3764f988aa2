/** Where everything stands on a sheet of paper. */

import { describe, expect, it } from 'vitest';
import { NO_GUTTERS } from '../../src/sheet/block-columns.js';
import {
  mostRows,
  rowsOfBlocks,
  rowTop,
  type SheetGeometry,
  sheetGeometry,
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
