/** Levels shared out over the sides of a page. */

import { describe, expect, it } from 'vitest';
import { NO_GUTTERS } from '../../src/sheet/block-columns.js';
import { sheetPages } from '../../src/sheet/exposure-sheet.js';
import { sideLabel, sidesOf } from '../../src/sheet/page-sides.js';
import type { SolvedLevel } from '../../src/solve/solved-shot.js';
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

it('sides are labelled by letters, then by numbers', () => {
  expect([0, 1, 2, 25, 26].map((side) => sideLabel(3, side))).toEqual(['3', '3-b', '3-c', '3-z', '3-27']);
});

describe('sides', () => {
  const asked = { levelMm: 0, labelsMm: 0, voices: 1, sounds: 1, cameraLanes: 1, gutters: NO_GUTTERS };
  const level = (name: string) => ({ name, cycles: [] }) as unknown as SolvedLevel;
  const counts = (levels: number) =>
    sidesOf(
      Array.from({ length: levels }, (_, i) => level(`${i}`)),
      asked,
      95,
      1.4,
    ).map(({ levels: own }) => own.length);

  it('are one where all levels fit, also where there are none', () => {
    expect(counts(8)).toEqual([8]);
    expect(counts(0)).toEqual([0]);
  });

  it('have about as many levels each, the first no more than fit beside dialogue and camera', () => {
    expect(counts(9)).toEqual([5, 4]);
    expect(counts(20)).toEqual([8, 12]);
  });

  it('lose no level and keep their order', () => {
    const names = sidesOf(LETTERS.map(level), asked, 95, 1.4).flatMap(({ levels }) =>
      levels.map(({ name }) => name),
    );
    expect(names).toEqual(LETTERS);
  });
});
