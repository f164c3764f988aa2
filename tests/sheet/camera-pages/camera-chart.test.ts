import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type PanelSize, placePanels, SCALES } from '../../../src/sheet/camera-pages/camera-chart.js';

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
