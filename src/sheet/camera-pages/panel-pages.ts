/**
 * Which panel stands on which page, where, and at which scale. All ways to share out the panels in their order over pages and
 * columns are tried; the best has the largest scales, and a further page must be worth it.
 */

import type { Box } from '../mark-builders.js';

/** Scales of panels, 1 : n; beyond the usual ones only for artwork that no table holds. */
export const SCALES = [1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 15, 20, 30, 40, 50, 100, 200, 500, 1000];

/** What a panel needs: its artwork in mm, and room around it on paper. */
export interface PanelSize {
  readonly widthMm: number;
  readonly heightMm: number;
  /** For names, left and right together, and above and below together. */
  readonly aroundMm: { readonly across: number; readonly down: number };
  /** Height of the lines above it in a column of a width. */
  readonly captionMm: (columnMm: number) => number;
}

export interface PlacedPanel {
  readonly panel: number;
  readonly page: number;
  readonly box: Box;
  /** 1 : n. */
  readonly n: number;
}

/** One more page is worth it where the panels together grow by this factor. */
const WORTH_A_PAGE = 1.8;
/** More panels than this are shared out in batches, so that not too many ways are tried. */
const BATCH = 6;
const MOST_COLUMNS = 3;
const GAP = 4;

export function placePanels(sizes: readonly PanelSize[], body: Box): PlacedPanel[] {
  const placed: PlacedPanel[] = [];
  let page = 0;
  for (let first = 0; first < sizes.length; first += BATCH) {
    const batch = sizes.slice(first, first + BATCH);
    const best = bestPages(batch, body);
    placed.push(...best.map((one) => ({ ...one, panel: one.panel + first, page: one.page + page })));
    page += 1 + Math.max(...best.map((one) => one.page));
  }
  return placed;
}

interface Arrangement {
  readonly placed: readonly PlacedPanel[];
  /** Sum of the logarithms of n: the smaller, the larger the scales. */
  readonly cost: number;
}

function bestPages(sizes: readonly PanelSize[], body: Box): readonly PlacedPanel[] {
  let best: Arrangement | null = null;
  for (const shares of splits(sizes.length, sizes.length)) {
    let cost = (shares.length - 1) * Math.log(WORTH_A_PAGE);
    const placed: PlacedPanel[] = [];
    let first = 0;
    for (const [page, count] of shares.entries()) {
      const own = onePage(sizes.slice(first, first + count), body);
      cost += own.cost;
      for (const one of own.placed) placed.push({ ...one, panel: one.panel + first, page });
      first += count;
    }
    if (!best || cost < best.cost - 1e-9) best = { placed, cost };
  }
  return best!.placed;
}

/** The best columns on one page. */
function onePage(sizes: readonly PanelSize[], body: Box): Arrangement {
  let best: Arrangement | null = null;
  for (const shares of splits(sizes.length, MOST_COLUMNS)) {
    const width = (body.width - GAP * (shares.length - 1)) / shares.length;
    let cost = 0;
    const placed: PlacedPanel[] = [];
    let first = 0;
    for (const [column, count] of shares.entries()) {
      const box = { ...body, x: body.x + column * (width + GAP), width };
      const own = oneColumn(sizes.slice(first, first + count), box);
      cost += own.cost;
      for (const one of own.placed) placed.push({ ...one, panel: one.panel + first });
      first += count;
    }
    if (!best || cost < best.cost - 1e-9) best = { placed, cost };
  }
  return best!;
}

/** Panels one below the other: each as large as the width allows, then the highest ones smaller until all have room. */
function oneColumn(sizes: readonly PanelSize[], box: Box): Arrangement {
  const height = (size: PanelSize, n: number) =>
    size.captionMm(box.width) + size.aroundMm.down + size.heightMm / n;
  const at = sizes.map((size) => {
    const room = Math.max(10, box.width - size.aroundMm.across);
    const found = SCALES.findIndex((n) => size.widthMm / n <= room + 1e-9);
    return found < 0 ? SCALES.length - 1 : found;
  });
  const total = () =>
    sizes.reduce((sum, size, i) => sum + height(size, SCALES[at[i]!]!), 0) + GAP * (sizes.length - 1);
  while (total() > box.height + 1e-9) {
    let highest = -1;
    for (const [i, size] of sizes.entries()) {
      if (at[i]! >= SCALES.length - 1) continue;
      if (highest < 0 || size.heightMm / SCALES[at[i]!]! > sizes[highest]!.heightMm / SCALES[at[highest]!]!)
        highest = i;
    }
    if (highest < 0) break;
    at[highest]!++;
  }
  // Captions that leave no room at all are no arrangement.
  const cost = total() > box.height + 1e-9 ? 1e6 : at.reduce((sum, i) => sum + Math.log(SCALES[i]!), 0);
  // What is left over is shared out, so that panels do not all crowd the top.
  const spare = Math.max(0, box.height - total()) / sizes.length;
  let y = box.y;
  const placed = sizes.map((size, i): PlacedPanel => {
    const n = SCALES[at[i]!]!;
    const high = height(size, n) + (sizes.length > 1 ? spare : 0);
    const one = { panel: i, page: 0, box: { x: box.x, y, width: box.width, height: high }, n };
    y += high + GAP;
    return one;
  });
  return { placed, cost };
}

/** All ways to cut a row of things into at most `most` parts, as the counts of the parts; fewest parts first. */
function splits(count: number, most: number): number[][] {
  const all: number[][] = [];
  const go = (left: number, parts: number[]): void => {
    if (left === 0) all.push(parts);
    else if (parts.length < most) for (let n = left; n >= 1; n--) go(left - n, [...parts, n]);
  };
  go(count, []);
  return all.sort((a, b) => a.length - b.length);
}
