import { describe, expect, test } from 'vitest';
import { coverPages } from '../../../src/sheet/cover/cover-page.js';
import { lookOf, solvedCut, textsOf } from '../laid.js';
import { CUT, crowded } from './covers.js';

/** The texts on the line of a text, left to right. */
function lineOf(cut: string, name: string): string[] {
  const [page] = coverPages(solvedCut(cut), lookOf());
  const texts = textsOf(page!.marks);
  const first = texts.find(({ text }) => text.startsWith(name))!;
  return texts
    .filter(({ y, x }) => Math.abs(y - first.y) < 1 && x >= first.x && x < 120)
    .sort((a, b) => a.x - b.x)
    .map(({ text }) => text);
}

describe('the levels', () => {
  test('have keys, in-betweens with breakdowns, and both together, counted by hand', () => {
    // A: keys 1 2 3 4; two and one in-between. B: keys 1 2; three, one of them a breakdown.
    expect(lineOf(CUT, 'A “Pim”')).toEqual(['A “Pim”', '4', '3', '7']);
    expect(lineOf(CUT, 'B “scarf”').slice(0, 4)).toEqual(['B “scarf”', '2', '3', '5']);
    expect(lineOf(CUT, 'total')).toEqual(['total', '6', '6', '12']);
  });

  test('stand from the top of the stack to its bottom, painted ones without a number', () => {
    const [page] = coverPages(solvedCut(CUT), lookOf());
    const at = (name: string): number => textsOf(page!.marks).find(({ text }) => text === name)!.y;
    expect(at('B “scarf”')).toBeLessThan(at('A “Pim”'));
    expect(at('A “Pim”')).toBeLessThan(at('BG'));
    expect(lineOf(CUT, 'BG')).toEqual(['BG', 'painted']);
  });

  test('are all there, in several columns where there are many', () => {
    const [page] = coverPages(solvedCut(crowded(24)), lookOf());
    const names = textsOf(page!.marks).map(({ text }) => text);
    for (let i = 1; i <= 24; i++)
      expect(
        names.some((one) => one.startsWith(`L${i} `)),
        `L${i}`,
      ).toBe(true);
    // Two keys and two in-betweens each.
    expect(names).toContain('96');
  });
});

test('the words of the memo are on the cover', () => {
  const texts = (cut: string): string =>
    textsOf(coverPages(solvedCut(cut), lookOf())[0]!.marks)
      .map(({ text }) => text)
      .join(' ');
  expect(texts(CUT)).toContain('FIX Rests on both ends.');
  const long = `cut 1\ntime 1+0\nmemo "${'word '.repeat(300)}"\nA: 1..\n`;
  expect(texts(long)).toContain('word');
});
