import { describe, expect, test } from 'vitest';
import { coverMarks, coverPages } from '../../../src/sheet/cover/cover-page.js';
import { coverPlaces } from '../../../src/sheet/cover/shared-cover-page.js';
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

describe('a label, eight to a page', () => {
  const label = (cut: string) => textsOf(coverMarks(solvedCut(cut), lookOf(), coverPlaces('A4', 8)[0]!));
  const texts = (cut: string): string[] => label(cut).map(({ text }) => text);

  test('has the drawings in a line over the words of the camera', () => {
    const found = label(CUT);
    const at = (name: string): number => found.find(({ text }) => text.startsWith(name))!.y;
    expect(texts(CUT)).toContain('B 5   A 7   total 12');
    expect(at('B 5')).toBeLessThan(at('FIX'));
  });

  test('has its lines one behind the other where there is no room for each', () => {
    const memos = Array.from({ length: 6 }, (_, i) => `memo "word ${i + 1}"`).join('\n');
    expect(texts(`cut 1\ntime 1+0\n${memos}\nA: 1..\n`).join(' ')).toContain('word 1  ·  word 2  ·  word 3');
    expect(texts('cut 1\ntime 1+0\nmemo "word 1"\nA: 1..\n')).toEqual(
      expect.arrayContaining(['FIX', 'word 1']),
    );
  });

  test('says where it leaves something out, and that is the caution before the camera', () => {
    const flashing = `cut 1\ntime 3+0\nA: on 1 (1-2)..\npull A left 1mm/f 1..1+0\nmemo "${'word '.repeat(60)}"\nglow A 1..2\nglow A 5..6\nglow A 9..10\nglow A 13..14\n`;
    const whole = textsOf(coverPages(solvedCut(flashing), lookOf())[0]!.marks).map(({ text }) => text);
    expect(whole.join(' ')).toContain('CAUTION: flashing light');
    const shown = texts(flashing);
    expect(shown.join(' ')).toContain('A pull');
    expect(shown.some((text) => text.endsWith(' …'))).toBe(true);
    expect(shown.join(' ')).not.toContain('CAUTION');
  });
});
