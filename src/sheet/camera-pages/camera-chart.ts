/**
 * The camera chart: who has it in hand can shoot the cut without opening anything else. One panel for each thing that moves, each at
 * the largest scale that has room.
 *
 * What stands in a panel: fields as black rectangles with strokes at their corners, a cross at their centre and their name in a
 * ring; the standard field, grey and dashed, where no field lies on it; one that no frame uses has a cross over each corner. The
 * path has an arrow head; a graduation is a stroke across it, a dot where a place has a name, a ring where a level that goes
 * along has a key. Beside it rows of the sheet (black) and, where graduations were typed, their counts (grey). Sheets are thin
 * grey rectangles, the smallest that would do dotted, a moving level dashed at its start and finely dashed at its end.
 * Positions on paper times the printed ratio are lengths on the artwork.
 */

import type { SolvedShot } from '../../solve/solved-shot.js';
import type { Mark, Page } from '../display-list.js';
import { type Box, textAt } from '../mark-builders.js';
import { pageFrame } from '../page-frame.js';
import type { PageLook } from '../page-look.js';
import { smallestTextMm } from '../sheet-geometry.js';
import { cachedMetrics, fitLine, wrap } from '../text-fitting.js';
import { type ChartPanel, chartPanels, panelBounds } from './chart-panels.js';
import { type ChartTexts, captionOf, chartTexts } from './chart-texts.js';
import { type MoveTable, moveTable } from './move-table.js';
import { drawPanel, viewOf } from './panel-drawing.js';

/** Room left for names around a panel's drawing, both sides together, mm. */
const AROUND_MM = { across: 17, down: 11 };
/** Lines over a panel stand in columns no narrower than this. */
const CAPTION_COLUMN_MM = 84;
const GAP_MM = 4;

/** None for a cut whose camera and levels stay. */
export function cameraChartPages(solved: SolvedShot, given: PageLook): Page[] {
  return chartWithTable(solved, given).pages;
}

/** The chart's pages, and those of the table of moves, which may stand on the last of the chart. */
export function chartWithTable(solved: SolvedShot, given: PageLook): { pages: Page[]; tablePages(): Page[] } {
  const look = { ...given, metrics: cachedMetrics(given.metrics) };
  const panels = chartPanels(solved, look.settings.convention === 'west');
  const ownTable = moveTable(solved, look);
  const tablePages = () => ownTable?.pages() ?? [];
  if (panels.length === 0) return { pages: [], tablePages };
  const texts = chartTexts(solved, look);
  const { words } = texts;
  const framed = (n: number, of: number) => pageFrame(solved.shot, look, words.camera(n), of, true);
  const whole = framed(1, 1).body;
  const body: Box = { ...whole, y: whole.y + 1, height: whole.height - 3 };
  const sizes = panels.map((panel) => {
    const { left, right, bottom, top } = panelBounds(panel);
    // Asked for every way to share out the panels: the scale changes none of its lines' number.
    const caption = captionOf(panel, 2.5, solved, texts);
    const heights = new Map<number, number>();
    const captionMm = (width: number): number => {
      const known = heights.get(width) ?? captionHeight(caption, width, texts);
      heights.set(width, known);
      return known;
    };
    return { widthMm: right - left, heightMm: top - bottom, aroundMm: AROUND_MM, captionMm };
  });
  const { placed, table } = withTable(sizes, body, ownTable);
  const count = 1 + Math.max(...placed.map(({ page }) => page));
  const pages = Array.from({ length: count }, (_, i): Page => {
    const { widthMm, heightMm, form, marks } = framed(i + 1, count);
    const here = placed.filter(({ page }) => page === i);
    return {
      widthMm,
      heightMm,
      label: `camera ${i + 1}`,
      part: 'camera',
      form,
      marks: [
        ...marks,
        ...here.flatMap((one) => panelMarks(panels[one.panel]!, one, solved, texts)),
        ...(table && i === count - 1 ? table : []),
      ],
      rows: [],
    };
  });
  return { pages, tablePages: table ? () => [] : tablePages };
}

/** Shares of the body that the table is tried in, beside or below the panels. */
const SHARES = [0.2, 0.3, 0.4, 0.5, 0.6, 0.7];

interface WithTable {
  readonly placed: readonly PlacedPanel[];
  /** The table, where it stands with the panels on the last page. */
  readonly table: readonly Mark[] | null;
}

/** The table of moves stands below or beside the panels where that makes none of them smaller. */
function withTable(sizes: readonly PanelSize[], body: Box, table: MoveTable | null): WithTable {
  const alone = placePanels(sizes, body);
  if (!table) return { placed: alone, table: null };
  const smallness = (placed: readonly PlacedPanel[]) => placed.reduce((sum, { n }) => sum + Math.log(n), 0);
  const pages = (placed: readonly PlacedPanel[]) => Math.max(...placed.map(({ page }) => page));
  const fits = (placed: readonly PlacedPanel[]) =>
    pages(placed) <= pages(alone) && smallness(placed) <= smallness(alone) + 1e-9;
  for (const share of SHARES) {
    const height = body.height * share;
    const below = table.within({ ...body, y: body.y + body.height - height, height });
    if (below) {
      const y = body.y + body.height - below.height;
      const placed = placePanels(sizes, { ...body, height: y - GAP_MM - body.y });
      if (fits(placed))
        return { placed, table: table.within({ ...body, y, height: below.height + 0.1 })!.marks() };
    }
    const width = body.width * share;
    const beside = table.within({ ...body, x: body.x + body.width - width, width });
    if (beside) {
      const x = body.x + body.width - beside.width;
      const placed = placePanels(sizes, { ...body, width: x - GAP_MM - body.x });
      if (fits(placed))
        return { placed, table: table.within({ ...body, x, width: beside.width + 0.1 })!.marks() };
    }
  }
  return { placed: alone, table: null };
}

const rowOf = (texts: ChartTexts) => texts.smallMm * 1.45;
const TITLE = 1.35;

function captionColumns(width: number): { count: number; width: number } {
  const count = Math.max(1, Math.floor((width + GAP_MM) / (CAPTION_COLUMN_MM + GAP_MM)));
  return { count, width: (width - GAP_MM * (count - 1)) / count };
}

/** Lines broken where they are longer than their column. */
function broken(lines: readonly string[], width: number, texts: ChartTexts): string[] {
  const { metrics } = texts.look;
  return lines.flatMap((text) => {
    if (metrics.width(text, texts.smallMm, 'regular') * 0.85 <= width) return [text];
    return wrap(metrics, text, width - 3, texts.smallMm).map((one, i) => (i === 0 ? one : `   ${one}`));
  });
}

function captionHeight([, ...lines]: readonly string[], width: number, texts: ChartTexts): number {
  const columns = captionColumns(width);
  const rows = Math.ceil(broken(lines, columns.width, texts).length / columns.count);
  return rowOf(texts) * (TITLE * 1.3 + rows) + 2;
}

function panelMarks(
  panel: ChartPanel,
  { box, n }: PlacedPanel,
  solved: SolvedShot,
  texts: ChartTexts,
): Mark[] {
  const { metrics } = texts.look;
  const [title, ...rest] = captionOf(panel, n, solved, texts);
  const columns = captionColumns(box.width);
  const lines = broken(rest, columns.width, texts);
  const rows = Math.ceil(lines.length / columns.count);
  const row = rowOf(texts);
  const set = (text: string, x: number, y: number, most: number, width: number, bold: boolean): Mark => {
    const weight = bold ? 'bold' : 'regular';
    const { sizeMm, squeeze } = fitLine(metrics, text, width, {
      most,
      least: smallestTextMm(texts.look.settings.paper),
      weight,
    });
    return textAt(x, y, text, { sizeMm, squeeze, weight, anchor: 'start' });
  };
  const caption = captionHeight([title!, ...rest], box.width, texts);
  const drawing = { ...box, y: box.y + caption, height: box.height - caption };
  return [
    set(title!, box.x, box.y + row * TITLE * 0.6, texts.smallMm * TITLE, box.width, true),
    ...lines.map((text, i) => {
      const x = box.x + Math.floor(i / rows) * (columns.width + GAP_MM);
      const y = box.y + row * (TITLE * 1.3 + (i % rows) + 0.5);
      return set(text, x, y, texts.smallMm, columns.width, false);
    }),
    ...drawPanel(panel, viewOf(panel, drawing, n), texts),
  ];
}

// ----
// Which panel stands on which page, where, and at which scale. All ways to share out the panels in their order over pages and
// columns are tried; the best has the largest scales, and a further page must be worth it.

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

interface PlacedPanel {
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
