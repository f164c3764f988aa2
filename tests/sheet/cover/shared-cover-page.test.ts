import { describe, expect, test } from 'vitest';
import { coverMarks } from '../../../src/sheet/cover/cover-page.js';
import {
  type CoversAPage,
  coverPlaces,
  sharedCoverPage,
} from '../../../src/sheet/cover/shared-cover-page.js';
import { smallestTextMm } from '../../../src/sheet/sheet-geometry.js';
import { PAPERS } from '../../../src/shot/settings.js';
import { offThePaper, struckOut, textClashes, tooSmall } from '../clashes.js';
import { boundsOf, linesOf, lookOf, solvedCut, textsOf } from '../laid.js';
import { CUT, crowded, PRODUCTION, retakes } from './covers.js';

const COUNTS: readonly CoversAPage[] = [2, 4, 8];

test('places are read left to right, then down', () => {
  // A4, 210 × 297 mm, in 2 × 4 fields of 105 × 74.25 mm.
  const places = coverPlaces('A4', 8);
  expect(places.map(({ x, y }) => [x, y])).toEqual(
    [0, 74.25, 148.5, 222.75].flatMap((y) => [
      [6, y + 6],
      [111, y + 6],
    ]),
  );
  expect([places[0]!.width, places[0]!.height]).toEqual([93, 62.25]);
  expect(COUNTS.map((count) => coverPlaces('letter', count).length)).toEqual(COUNTS);
});

test('rules between the places lead from edge to edge, also where places are left', () => {
  const rules = linesOf(sharedCoverPage([[]], 'A4', 4, '12').marks);
  expect(rules.map(({ x1, y1, x2, y2 }) => [x1, y1, x2, y2])).toEqual([
    [0, 148.5, 210, 148.5],
    [105, 0, 105, 297],
  ]);
});

describe.each(PAPERS)('%s', (paper) => {
  for (const labels of ['en', 'ja'] as const)
    for (const count of COUNTS)
      test(`${count} covers in ${labels} stand apart, each in its place, large enough to read`, () => {
        const places = coverPlaces(paper, count);
        const covers = places.map((place, i) => {
          const text = [CUT, crowded(24), crowded(1)][i % 3]!;
          const convention = i % 2 ? ('west' as const) : ('japan' as const);
          const look = lookOf({ paper, labels, convention, title: 'Samphire Ferry', episode: '3' });
          const production = { ...PRODUCTION, retakes: retakes(i % 3 === 0 ? 1 : 30) };
          return coverMarks(solvedCut(text), { ...look, production }, place);
        });
        const page = sharedCoverPage(covers, paper, count, '1–8');
        const { marks } = page;
        const faults = [
          ...offThePaper(page),
          ...tooSmall(page, smallestTextMm(paper)),
          ...textClashes(marks),
          ...struckOut(page),
        ];
        expect(faults).toEqual([]);
        const outside = covers.flatMap((cover, i) => {
          const { x, y, width, height } = places[i]!;
          return textsOf(cover).filter((text) => {
            const { left, right, top, bottom } = boundsOf(text);
            return left < x || right > x + width || top < y || bottom > y + height;
          });
        });
        expect(outside).toEqual([]);
      });
});
