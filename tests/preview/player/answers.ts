import type { CutPlayAnswer } from '../../../src/preview/play-data.js';

/** A cut of so many rows in which nothing is seen. */
export function answer(id: string, rows: number, more: Partial<CutPlayAnswer> = {}): CutPlayAnswer {
  return {
    id,
    version: 1,
    picture: {
      cut: '1',
      fps: 24,
      field: { widthMm: 254, heightMm: 142.875 },
      fields: 12,
      handles: { head: 0, tail: 0 },
      levels: [],
      layers: [],
      seen: [{ layers: [], black: 0, white: 0, opening: null, share: 1 }],
      runs: [[0, rows]],
    },
    feet: false,
    caution: null,
    sound: null,
    drawings: [],
    scanDpi: 200,
    ...more,
  };
}
