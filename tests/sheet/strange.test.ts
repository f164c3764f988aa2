/** Looks and cuts that nobody would print, which must come out all the same. */

import { describe, expect, it } from 'vitest';
import { blankPages } from '../../src/sheet/blank-form.js';
import { offThePaper, tooSmall } from './clashes.js';
import { laid, lookOf, said } from './laid.js';

const LONG = 'Wolkenkratzerfahrstuhlknopfbeschriftung'.repeat(12);
const JAPANESE = '長い長い名前の列車が橋を渡る'.repeat(20);

describe('a sheet', () => {
  it.each([1, 2, 7, 16, 24, 145, 300])('of %i rows a page holds each frame once', (rows) => {
    for (const convention of ['japan', 'west'] as const) {
      const pages = laid('cut 1\ntime 3+1\nA: 1--2..\nvoice "Nao" 1..30 "Wait for me, please!"\n', {
        rows,
        convention,
      });
      const frames = pages.flatMap((page) => page.rows.map(({ frame }) => frame));
      expect(frames).toEqual(Array.from({ length: 73 }, (_, i) => i + 1));
      expect(pages.flatMap(offThePaper)).toEqual([]);
    }
  });

  it.each([1, 8, 12, 25, 60, 120])('at %i frames a second fits its paper', (fps) => {
    const pages = laid(`cut 1\nfps ${fps}\ntime 2+0\nA: on 1 1-2..\n`, { paper: 'A3' });
    expect(pages.flatMap(offThePaper)).toEqual([]);
    expect(pages.flatMap((page) => tooSmall(page, (4 * 25.4) / 72))).toEqual([]);
  });

  it('of very long names and titles keeps inside its paper and tells the rest in the memo', () => {
    for (const name of [LONG, JAPANESE]) {
      const pages = laid(
        `cut 1 "${name}"\ntime 1+0\nartist "${name}"\nscene "${name}"\n${name} "${name}": 1--2..\nvoice "${name}" 1..20 "${name}"\nsound 1..9 "${name}"\nnote 5 "${name}"\nmemo "${name}"\n`,
        { title: name, episode: name },
      );
      expect(pages.flatMap(offThePaper)).toEqual([]);
      const all = pages.map(said).join('').replaceAll(/[\s·]/gu, '');
      // Memo, title, cut's title, artist, level, its title, the voice's name and words, sound, note.
      expect(all.split(name).length - 1).toBeGreaterThanOrEqual(8);
    }
  });

  it('of forty levels takes as many sides as they need', () => {
    const levels = Array.from({ length: 40 }, (_, i) => `L${i + 1}: (1-2-)..`).join('\n');
    const pages = laid(`cut 1\ntime 1+0\n${levels}\n`);
    expect(pages.flatMap(offThePaper)).toEqual([]);
    const names = new Set(pages.flatMap((page) => said(page).match(/\bL\d+\b/g) ?? []));
    expect(names.size).toBe(40);
  });

  it('of cycles in cycles gives each depth its bracket', () => {
    const [page] = laid('cut 1\ntime 2+0\nA: on 1 (((1 2)*2 3)*2 4)..\n');
    expect(said(page!)).toContain('2 times');
    expect(said(page!)).toContain('cycle');
    expect(offThePaper(page!)).toEqual([]);
  });
});

it('blank forms come for any number of levels', () => {
  for (const levels of [0, 1, 26, 100]) {
    const pages = blankPages(lookOf({ convention: 'west', paper: 'B5' }), { levels });
    expect(pages.length).toBeGreaterThan(0);
    expect(pages.flatMap(offThePaper)).toEqual([]);
  }
});
