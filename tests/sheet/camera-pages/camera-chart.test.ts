import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  cameraChartPages,
  chartWithTable,
  type PanelSize,
  placePanels,
  SCALES,
} from '../../../src/sheet/camera-pages/camera-chart.js';
import type { Page } from '../../../src/sheet/display-list.js';
import type { Settings } from '../../../src/shot/settings.js';
import { offThePaper, textClashes } from '../clashes.js';
import { lookOf, said, solvedCut, textsOf } from '../laid.js';

const body = { x: 10, y: 40, width: 277, height: 150 };
const panel = (widthMm: number, heightMm: number): PanelSize => ({
  widthMm,
  heightMm,
  aroundMm: { across: 17, down: 11 },
  captionMm: () => 15,
});

test('a single panel has the largest scale that has room', () => {
  expect(placePanels([panel(254, 120)], body)).toMatchObject([{ page: 0, n: 1 }]);
  expect(placePanels([panel(254, 142.875)], body)).toMatchObject([{ page: 0, n: 1.25 }]);
  expect(placePanels([panel(1300, 142.875)], body)).toMatchObject([{ page: 0, n: 5 }]);
});

describe('panels on a page of 277 × 150 mm', () => {
  // Each needs 15 mm for its lines and 11 mm around its drawing; 4 mm lie between two.
  const placed = (...sizes: readonly (readonly [number, number])[]) =>
    placePanels(
      sizes.map(([width, height]) => panel(width, height)),
      body,
    ).map(({ page, n, box: { x, y, width, height } }) => [page, n, x, y, width, height]);

  test('stand side by side where that leaves them as large as they are', () => {
    // Half of 273 mm; 120 + 26 mm high.
    expect(placed([100, 120], [100, 120])).toEqual([
      [0, 1, 10, 40, 136.5, 146],
      [0, 1, 150.5, 40, 136.5, 146],
    ]);
  });

  test('stand one below the other where they are wide, both a little smaller, and share what room is left', () => {
    // 55 / 1.25 = 44 mm, with the rest 70 mm; twice that and 4 mm leave 6 mm.
    expect(placed([254, 55], [254, 55])).toEqual([
      [0, 1.25, 10, 40, 277, 73],
      [0, 1.25, 10, 117, 277, 73],
    ]);
  });

  test('take a further page where they would have to be smaller than that is worth', () => {
    // Two of 60 mm have room at 1:1.25 and 1:1.5 only: 1.875 times, and a page is worth 1.8.
    expect(placed([254, 60], [254, 60])).toEqual([
      [0, 1, 10, 40, 277, 86],
      [1, 1, 10, 40, 277, 86],
    ]);
  });

  test('are six at the most that are shared out together: the seventh begins a page', () => {
    const seven = placed(...Array.from({ length: 7 }, () => [50, 40] as const));
    expect(seven.map(([page, n]) => [page, n])).toEqual([...Array(6).fill([0, 1]), [1, 1]]);
    // Three columns of two.
    expect(new Set(seven.slice(0, 6).map(([, , x]) => x)).size).toBe(3);
  });

  test('of which no scale is small enough have the smallest', () => {
    expect(placed([1e9, 10])[0]![1]).toBe(SCALES.at(-1));
  });
});

test('panels stand inside the page, apart from one another, in their order, and have room for their drawing', () => {
  const sizes = fc.array(fc.tuple(fc.integer({ min: 50, max: 3000 }), fc.integer({ min: 50, max: 1500 })), {
    minLength: 1,
    maxLength: 8,
  });
  fc.assert(
    fc.property(sizes, (all) => {
      const panels = all.map(([width, height]) => panel(width, height));
      const placed = placePanels(panels, body);
      expect(placed.map((one) => one.panel)).toEqual(panels.map((_, i) => i));
      expect(placed.map(({ page }) => page)).toEqual(placed.map(({ page }) => page).sort((a, b) => a - b));
      for (const { panel: i, box, n } of placed) {
        expect(SCALES).toContain(n);
        expect(box.x).toBeGreaterThanOrEqual(body.x - 1e-6);
        expect(box.y).toBeGreaterThanOrEqual(body.y - 1e-6);
        expect(box.x + box.width).toBeLessThanOrEqual(body.x + body.width + 1e-6);
        expect(box.y + box.height).toBeLessThanOrEqual(body.y + body.height + 1e-6);
        expect(panels[i]!.widthMm / n + 17).toBeLessThanOrEqual(box.width + 1e-6);
        expect(panels[i]!.heightMm / n + 11 + 15).toBeLessThanOrEqual(box.height + 1e-6);
      }
      placed.forEach((a, i) => {
        for (const b of placed.slice(i + 1)) {
          if (a.page !== b.page) continue;
          const apart =
            a.box.x + a.box.width <= b.box.x + 1e-6 ||
            b.box.x + b.box.width <= a.box.x + 1e-6 ||
            a.box.y + a.box.height <= b.box.y + 1e-6 ||
            b.box.y + b.box.height <= a.box.y + 1e-6;
          expect(apart).toBe(true);
        }
      });
    }),
    { numRuns: 60 },
  );
});

const FIELDS = 'A: 1..\nfield A full\nfield B full at 48,0\n';
/** The chart's pages, and how many the table of moves has besides. */
function chart(lines: string, settings: Partial<Settings> = {}): { pages: Page[]; tables: number } {
  const solved = solvedCut(`cut 7\ntime 4+0\n${lines}\n`, settings);
  const { pages, tablePages } = chartWithTable(solved, lookOf(settings));
  return { pages, tables: tablePages().length };
}

/** So many levels that slide, each another way. */
const slides = (count: number) =>
  `stack ${[...'ABCDEFGH'].slice(0, count).join(' ')}\n${[...'ABCDEFGH']
    .slice(0, count)
    .map(
      (name, i) =>
        `level ${name} free\n${name}: 1..\nslide ${name} (0,0)@1 > (${40 + 10 * i},0)@4+0 ease 12 12`,
    )
    .join('\n')}`;

/** Outlines of the usual field: how wide each is on the paper. */
const fieldWidths = (page: Page): number[] =>
  page.marks.flatMap((mark) => {
    if (mark.kind !== 'path' || !mark.closed || mark.points.length !== 4 || !mark.stroke) return [];
    const [a, b, c] = mark.points;
    const [wide, high] = [b![0] - a![0], c![1] - b![1]];
    return Math.abs(wide / high - 16 / 9) < 1e-6 ? [wide] : [];
  });

describe('the camera chart', () => {
  test('is none where the camera and all levels stay', () => {
    expect(chart('A: 1..')).toEqual({ pages: [], tables: 0 });
    expect(chart('A: 1..\nfield A full')).toEqual({ pages: [], tables: 0 });
  });

  test('is drawn at the scale that it names', () => {
    const [page] = chart(`${FIELDS}pan A@1 > B@4+0`).pages;
    const scale = Number(/1\s*:\s*([\d.]+)/.exec(said(page!))![1]);
    for (const width of fieldWidths(page!)) expect(width * scale).toBeCloseTo(254, 6);
    expect(fieldWidths(page!)).toHaveLength(2);
  });

  test('is larger on larger paper', () => {
    const width = (paper: Settings['paper']) =>
      fieldWidths(chart(`${FIELDS}pan A@1 > B@4+0`, { paper }).pages[0]!)[0]!;
    expect(width('A3')).toBeGreaterThan(width('A4'));
    expect(width('A4')).toBeGreaterThan(width('B5'));
  });

  test('has one panel for each thing that moves, with its lines over it', () => {
    const { pages } = chart(slides(5));
    const titles = pages.flatMap((page) =>
      textsOf(page.marks).filter(({ weight, text }) => weight === 'bold' && /1\s*:\s*\d/.test(text)),
    );
    expect(titles).toHaveLength(5);
    expect(pages.map(({ label, part }) => [label, part])).toEqual(
      pages.map((_, i) => [`camera ${i + 1}`, 'camera']),
    );
    expect(cameraChartPages(solvedCut(`cut 7\ntime 4+0\n${slides(5)}\n`), lookOf())).toEqual(pages);
  });
});

describe('the table of moves', () => {
  const FAR = FIELDS.replace('48,0', '500,0');
  const SHORT = `${FAR}pan A@1 > B@5 steps 1 2 2 1`;

  test('stands with the panels where it has room, and makes none of them smaller', () => {
    const held = chart(SHORT);
    expect(held.tables).toBe(0);
    expect(said(held.pages[0]!)).toContain('0+2 (2)');
    // The same way at constant speed has no table.
    const without = chart(`${FAR}pan A@1 > B@5`);
    expect(without.tables).toBe(0);
    expect(fieldWidths(held.pages[0]!)).toEqual(fieldWidths(without.pages[0]!));
  });

  test('stands on pages of its own where a panel would be smaller for it', () => {
    // These two fields fill the height of the page.
    expect(chart(`${FIELDS}pan A@1 > B@5 steps 1 2 2 1`).tables).toBe(1);
  });

  test('stands on pages of its own where it is too long', () => {
    const long = chart(`${FIELDS}pan A@1 > B@4+0 ease 24 24`);
    expect(long.tables).toBeGreaterThan(0);
    expect(long.pages.map(said).join(' ')).not.toContain('0+13 (13)');
  });
});

test.each([
  ['A4', 'en'],
  ['B5', 'ja'],
] as const)(
  'nothing that is written covers anything, with or without the table (%s, %s)',
  (paper, labels) => {
    for (const lines of [
      `${FIELDS}pan A@1 > B@5 steps 1 2 2 1`,
      slides(3),
      slides(8),
      `${FIELDS}pan A@1 > B@4+0 ease 24 24`,
    ])
      for (const page of chart(lines, { paper, labels }).pages) {
        expect(textClashes(page.marks)).toEqual([]);
        expect(offThePaper(page)).toEqual([]);
      }
  },
);
