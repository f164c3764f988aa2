/** What a person at the far end of a copier must be able to count on, for every look and many kinds of cut. */

import { describe, expect, it } from 'vitest';
import type { Mark, Page } from '../../src/sheet/marks.js';
import { sheetPages } from '../../src/sheet/sheet.js';
import { PAPERS, type Settings } from '../../src/shot/settings.js';
import { CUTS } from './cuts.js';
import {
  type Bounds,
  boundsOf,
  type Line,
  laid,
  linesOf,
  lookOf,
  overlap,
  solvedCut,
  textsOf,
} from './laid.js';

const CONVENTIONS = ['japan', 'west'] as const;
/** Every paper in both conventions; every mix of convention and labels on several papers. */
const LOOKS: Partial<Settings>[] = PAPERS.flatMap((paper, i) =>
  CONVENTIONS.map((convention, j) => ({
    paper,
    convention,
    labels: (i >> j) % 2 === 0 ? ('en' as const) : ('ja' as const),
    title: 'Samphire Ferry',
    episode: '3',
  })),
);

const solved = Object.entries(CUTS).map(([name, text]) => ({ name, cut: solvedCut(text) }));

const MM_A_POINT = 25.4 / 72;

const all = (page: Page): readonly Mark[] => [...(page.form?.marks ?? []), ...page.marks];

function ringsOf(page: Page): Bounds[] {
  return page.marks.flatMap((mark): Bounds[] => {
    if (mark.kind === 'circle')
      return [
        { left: mark.x - mark.r, right: mark.x + mark.r, top: mark.y - mark.r, bottom: mark.y + mark.r },
      ];
    if (mark.kind !== 'path' || !mark.closed || mark.points.length < 10) return [];
    const xs = mark.points.map(([x]) => x);
    const ys = mark.points.map(([, y]) => y);
    return [{ left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) }];
  });
}

describe.each(LOOKS)('$paper $convention $labels', (look) => {
  const pages = solved.flatMap(({ name, cut }) =>
    sheetPages(cut, lookOf(look)).map((page) => ({ where: `${name} page ${page.label}`, page })),
  );

  it('stays on the paper', () => {
    for (const { where, page } of pages)
      for (const text of textsOf(all(page))) {
        const { left, right, top, bottom } = boundsOf(text);
        const inside = left > 5 && top > 5 && right < page.widthMm - 5 && bottom < page.heightMm - 5;
        expect(inside, `${where}: “${text.text}” at ${text.x}, ${text.y}`).toBe(true);
      }
  });

  it('prints nothing smaller than 5 pt on the big papers and 4 pt on the others', () => {
    const least = (look.paper === 'A3' || look.paper === 'tabloid' ? 5 : 4) * MM_A_POINT;
    for (const { where, page } of pages)
      for (const { text, sizeMm } of textsOf(all(page)))
        expect(sizeMm, `${where}: “${text}”`).toBeGreaterThanOrEqual(least - 1e-9);
  });

  it('sets no text over another', () => {
    expect(
      pages.flatMap(({ where, page }) => textClashes(all(page)).map((clash) => `${where}: ${clash}`)),
    ).toEqual([]);
  });

  it('keeps rings apart from each other', () => {
    const clashes = pages.flatMap(({ where, page }) => {
      const rings = ringsOf(page).sort((a, b) => a.top - b.top);
      return rings.flatMap((ring, i) =>
        rings
          .slice(i + 1)
          .filter((other) => overlap(ring, other, 0))
          .map((other) => `${where}: rings at ${ring.left}, ${ring.top} and ${other.left}, ${other.top}`),
      );
    });
    expect(clashes).toEqual([]);
  });

  it('runs no black line through a text', () => {
    const clashes = pages.flatMap(({ where, page }) => {
      const texts = textsOf(page.marks).map((text) => ({ text: text.text, bounds: boundsOf(text) }));
      return linesOf(page.marks)
        .filter(({ stroke }) => stroke.ink === 'black')
        .flatMap((line) =>
          texts
            .filter(({ bounds }) => overlap(bounds, strokeBounds(line), 0.02))
            .map(({ text }) => `${where}: line from ${line.x1}, ${line.y1} through “${text}”`),
        );
    });
    expect(clashes).toEqual([]);
  });
});

it('sees a text that is set over another', () => {
  const [page] = laid(CUTS['one level']!);
  const marks = all(page!);
  const first = textsOf(page!.marks).find(({ text }) => text === 'Blink')!;
  expect(textClashes([...marks, { ...first, x: first.x + 1, text: 'Blot' }])).toEqual(['“Blink” and “Blot”']);
});

function textClashes(marks: readonly Mark[]): string[] {
  const texts = textsOf(marks)
    .map((text) => ({ text: text.text, bounds: boundsOf(text) }))
    .sort((a, b) => a.bounds.top - b.bounds.top);
  return texts.flatMap(({ text, bounds }, i) => {
    const clash: string[] = [];
    for (const other of texts.slice(i + 1)) {
      if (other.bounds.top > bounds.bottom) break;
      if (overlap(bounds, other.bounds, 0.15)) clash.push(`“${text}” and “${other.text}”`);
    }
    return clash;
  });
}

/** Lines run along the paper's edges, and end bluntly. */
function strokeBounds({ x1, y1, x2, y2, stroke }: Line): Bounds {
  const half = stroke.widthMm / 2;
  const level = y1 === y2;
  return {
    left: Math.min(x1, x2) - (level ? 0 : half),
    right: Math.max(x1, x2) + (level ? 0 : half),
    top: Math.min(y1, y2) - (level ? half : 0),
    bottom: Math.max(y1, y2) + (level ? half : 0),
  };
}
