/** Levels shared out over the sides of a page. */

import { describe, expect, it } from 'vitest';
import { sheetPages } from '../../src/sheet/sheet.js';
import { laid, lookOf, said, solvedCut, textsOf } from './laid.js';

const LETTERS = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'];

describe('many levels', () => {
  const crowd = (count: number): string =>
    `cut 1\ntime 7+0\nstack BG ${LETTERS.slice(0, count).join(' ')}\n${LETTERS.slice(0, count)
      .map((name) => `${name}: 1--2..`)
      .join('\n')}\n`;

  it('go on on further sides, none left out', () => {
    for (const paper of ['A4', 'A3', 'B5'] as const)
      for (const convention of ['japan', 'west'] as const) {
        const pages = laid(crowd(26), { paper, convention });
        for (const sheet of ['1', '2']) {
          const sides = pages.filter(({ label }) => label === sheet || label.startsWith(`${sheet}-`));
          const top = (page: (typeof pages)[number]): number => page.rows[0]!.y;
          const heads = sides.flatMap((page) =>
            textsOf(page.marks)
              .filter(({ text, y }) => /^[A-Z]$/.test(text) && y < top(page) && y > top(page) - 30)
              .map(({ text }) => text),
          );
          expect([...new Set(heads)].sort()).toEqual(LETTERS);
        }
      }
  });

  it('say in the memo where they are', () => {
    const pages = laid(crowd(26), { paper: 'A4' });
    expect(pages.map(({ label }) => label)).toEqual(['1', '1-b', '1-c', '2', '2-b', '2-c']);
    expect(said(pages[0]!)).toMatch(/Levels [A-Z]–[A-Z]: page 1-b/);
  });

  it('have dialogue and camera on the first side only', () => {
    const solved = solvedCut(`${crowd(26)}voice "Nao" 1..24 "Wait"\n`);
    const pages = sheetPages(solved, lookOf());
    expect(pages.filter((page) => said(page).includes('Wait')).map(({ label }) => label)).toEqual(['1']);
    const headed = pages.map(({ form }) => textsOf(form!.marks).some(({ text }) => text === 'camera'));
    expect(headed).toEqual([true, false, false, true, false, false]);
  });
});
