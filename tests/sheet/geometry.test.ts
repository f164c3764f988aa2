/** Where everything stands on a sheet of paper. */

import { describe, expect, it } from 'vitest';
import { NO_GUTTERS } from '../../src/sheet/columns.js';
import { geometry, mostRows, rowsOfBlocks } from '../../src/sheet/geometry.js';
import { defaults, PAPERS } from '../../src/shot/settings.js';

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
      const place = geometry({ ...defaults, paper, convention }, 24, wanted);
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
        const place = geometry(settings, 24, wanted);
        expect(most).toBeGreaterThanOrEqual(
          rowsOfBlocks({ ...settings, rows: null }, 24).reduce((a, b) => a + b),
        );
        expect(place.foot.y + place.foot.height).toBeLessThan(place.heightMm - 5);
      }
  });
});
