/** Rows and pages of a sheet. */

import { describe, expect, it } from 'vitest';
import { sheetPages } from '../../src/sheet/exposure-sheet.js';
import { laid, lookOf, solvedCut } from './laid.js';

const held = (time: string): string => `cut 1\ntime ${time}\nA: 1..\n`;

describe('rows and pages', () => {
  it('holds six seconds a page in Japan, in two blocks', () => {
    expect(laid(held('6+0'))).toHaveLength(1);
    expect(laid(held('6+1'))).toHaveLength(2);
    const xs = new Set(laid(held('6+0'))[0]!.rows.map(({ x }) => x));
    expect(xs.size).toBe(2);
  });

  it('holds three seconds in one block where 72 rows are asked for', () => {
    const pages = laid(held('6+0'), { rows: 72 });
    expect(pages).toHaveLength(2);
    expect(new Set(pages[0]!.rows.map(({ x }) => x)).size).toBe(1);
  });

  it('holds six feet in one block in the west', () => {
    const pages = laid(held("12'01"), { convention: 'west' });
    expect(pages.map(({ rows }) => rows.length)).toEqual([96, 96, 1]);
    expect(new Set(pages[0]!.rows.map(({ x }) => x)).size).toBe(1);
  });

  it('has as many rows as six seconds have frames at other rates', () => {
    const solved = solvedCut('cut 1\nfps 30\ntime 6+0\nA: 1..\n');
    expect(sheetPages(solved, lookOf()).map(({ rows }) => rows.length)).toEqual([180]);
  });

  it('gives each frame its row once, in order', () => {
    const frames = laid(held('13+5')).flatMap(({ rows }) => rows.map(({ frame }) => frame));
    expect(frames).toEqual(Array.from({ length: 13 * 24 + 5 }, (_, i) => i + 1));
  });
});
