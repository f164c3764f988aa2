/** Camera columns that a person at the far end of a copier can read. */

import { describe, expect, it } from 'vitest';
import type { Page } from '../../../src/sheet/display-list.js';
import { sheetPages } from '../../../src/sheet/exposure-sheet.js';
import { PAPERS, type Settings } from '../../../src/shot/settings.js';
import { everyMark, offThePaper, struckOut, textClashes, tooSmall, touchedRings } from '../clashes.js';
import { type Bounds, boundsOf, lookOf, solvedCut, textsOf } from '../laid.js';
import { CAMERAS } from './cuts.js';

const LOOKS: Partial<Settings>[] = PAPERS.flatMap((paper, i) =>
  (['japan', 'west'] as const).map((convention, j) => ({
    paper,
    convention,
    labels: (i + j) % 2 === 0 ? ('en' as const) : ('ja' as const),
  })),
);

const solved = Object.entries(CAMERAS).map(([name, text]) => ({ name, cut: solvedCut(text) }));

describe.each(LOOKS)('$paper $convention $labels', (look) => {
  const pages = solved.flatMap(({ name, cut }) =>
    sheetPages(cut, lookOf(look)).map((page) => ({ where: `${name} page ${page.label}`, page })),
  );
  const leastMm = ((look.paper === 'A3' || look.paper === 'tabloid' ? 5 : 4) * 25.4) / 72;

  it('keeps print apart, in reach, large enough and free of lines', () => {
    const faults = (page: Page): string[] => [
      ...offThePaper(page),
      ...tooSmall(page, leastMm),
      ...textClashes(everyMark(page)),
      ...touchedRings(page),
      ...struckOut(page),
      ...throughSlants(page),
    ];
    expect(pages.flatMap(({ where, page }) => faults(page).map((fault) => `${where}: ${fault}`))).toEqual([]);
  });
});

/** How far along a stretch of a sign it is looked at. */
const SHARES = Array.from({ length: 41 }, (_, k) => k / 40);

/** Texts that a wedge, a zigzag or a wave runs through. */
function throughSlants(page: Page): string[] {
  const texts = textsOf(page.marks).map((text) => ({ text: text.text, bounds: boundsOf(text) }));
  const paths = page.marks.filter(
    (mark) => mark.kind === 'path' && !mark.closed && mark.stroke?.ink === 'black',
  );
  return paths.flatMap((path) => {
    if (path.kind !== 'path') return [];
    return path.points.slice(1).flatMap(([x2, y2], i) => {
      const [x1, y1] = path.points[i]!;
      const about = {
        left: Math.min(x1, x2),
        right: Math.max(x1, x2),
        top: Math.min(y1, y2),
        bottom: Math.max(y1, y2),
      };
      const near = ({ left, right, top, bottom }: Bounds): boolean =>
        left < about.right && about.left < right && top < about.bottom && about.top < bottom;
      return texts
        .filter(({ bounds }) => near(bounds))
        .filter(({ bounds }) =>
          SHARES.some((share) => {
            const [x, y] = [x1 + (x2 - x1) * share, y1 + (y2 - y1) * share];
            return (
              x > bounds.left + 0.05 &&
              x < bounds.right - 0.05 &&
              y > bounds.top + 0.05 &&
              y < bounds.bottom - 0.05
            );
          }),
        )
        .map(({ text }) => `a sign runs through “${text}”`);
    });
  });
}
