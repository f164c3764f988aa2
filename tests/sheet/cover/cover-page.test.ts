import { describe, expect, test } from 'vitest';
import { coverMarks, coverPages } from '../../../src/sheet/cover/cover-page.js';
import type { Page } from '../../../src/sheet/display-list.js';
import { smallestTextMm } from '../../../src/sheet/sheet-geometry.js';
import { PAPERS, type Paper } from '../../../src/shot/settings.js';
import { everyMark, offThePaper, struckOut, textClashes, tooSmall } from '../clashes.js';
import { lookOf, said, solvedCut, textsOf } from '../laid.js';
import { CUT, crowded, PRODUCTION, retakes } from './covers.js';

const faults = (page: Page, paper: Paper): string[] => [
  ...offThePaper(page),
  ...tooSmall(page, smallestTextMm(paper)),
  ...textClashes(everyMark(page)),
  ...struckOut(page),
];

describe.each(PAPERS)('%s', (paper) => {
  for (const labels of ['en', 'ja'] as const)
    for (const convention of ['japan', 'west'] as const)
      test(`print in ${labels} for ${convention} is apart, in reach, large enough and free of lines`, () => {
        for (const text of [CUT, crowded(1), crowded(24)]) {
          const look = lookOf({ paper, labels, convention, title: 'Samphire Ferry', episode: '3' });
          const production = { ...PRODUCTION, retakes: retakes(text === CUT ? 1 : 30) };
          const [page, ...more] = coverPages(solvedCut(text), { ...look, production });
          expect(more).toEqual([]);
          expect(faults(page!, paper), text).toEqual([]);
        }
      });
});

describe('a cover', () => {
  const cover = (settings = {}) =>
    coverPages(solvedCut(CUT), { ...lookOf(settings), production: PRODUCTION })[0]!;

  test('says which cut, how long, of which scene, who draws it', () => {
    const text = said(cover({ title: 'Ferry', episode: '3' }));
    for (const one of ['12A', '5 + 12', '132 frames', '6', '2', 'H. Tarn', '“Along the sea wall”', 'Ferry'])
      expect(text).toContain(one);
  });

  test('has its number larger than anything else', () => {
    const largest = textsOf(cover().marks).reduce((a, b) => (b.sizeMm > a.sizeMm ? b : a));
    expect(largest.text).toBe('12A');
  });

  test('tells the time in feet first on a western form', () => {
    // 132 frames are 8 feet 4 (16 frames a foot).
    expect(said(cover({ convention: 'west' }))).toMatch(/8'04.*\(5 \+ 12\)/);
  });

  test('is there without an episode, with nothing to sign', () => {
    expect(said(coverPages(solvedCut(CUT), lookOf())[0]!)).toContain('retakes: 0');
  });

  test('goes into a label: counts in a line, nothing smaller than print may be', () => {
    const look = { ...lookOf({ title: 'Ferry' }), production: PRODUCTION };
    for (const [width, height] of [
      [97, 140],
      [97, 68],
    ] as const) {
      const marks = coverMarks(solvedCut(CUT), look, { x: 10, y: 10, width, height });
      const page: Page = { ...cover(), marks };
      expect([...offThePaper(page), ...tooSmall(page, smallestTextMm('A4')), ...textClashes(marks)]).toEqual(
        [],
      );
      const outside = textsOf(marks).filter(
        ({ x, y }) => x < 10 || x > 10 + width || y < 10 || y > 10 + height,
      );
      expect(outside).toEqual([]);
      expect(said(page)).toContain('total 12');
    }
  });
});
