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
import { cachedMetrics } from '../metrics-cache.js';
import { pageFrame } from '../page-frame.js';
import type { PageLook } from '../page-look.js';
import { smallestTextMm } from '../paper-sizes.js';
import { fitLine, wrap } from '../text-fitting.js';
import { type ChartPanel, chartPanels, panelBounds } from './chart-panels.js';
import { type ChartTexts, captionOf, chartTexts } from './chart-texts.js';
import { type MoveTable, moveTable } from './move-table.js';
import { drawPanel, viewOf } from './panel-drawing.js';
import { type PanelSize, type PlacedPanel, placePanels } from './panel-pages.js';

/** Room left for names around a panel's drawing, both sides together, mm. */
const AROUND_MM = { across: 17, down: 11 };
/** Lines over a panel stand in columns no narrower than this. */
const CAPTION_COLUMN_MM = 84;
const GAP_MM = 4;

/** None for a cut whose camera and levels stay. */
export function cameraChartPages(solved: SolvedShot, given: PageLook): Page[] {
  return chartWithTable(solved, given).pages;
}

/** The chart's pages, and whether the table of moves stands on the last of them. */
export function chartWithTable(solved: SolvedShot, given: PageLook): { pages: Page[]; holdsTable: boolean } {
  const look = { ...given, metrics: cachedMetrics(given.metrics) };
  const panels = chartPanels(solved, look.settings.convention === 'west');
  if (panels.length === 0) return { pages: [], holdsTable: false };
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
  const { placed, table } = withTable(sizes, body, moveTable(solved, look));
  const count = 1 + Math.max(...placed.map(({ page }) => page));
  const pages = Array.from({ length: count }, (_, i): Page => {
    const { widthMm, heightMm, marks } = framed(i + 1, count);
    const here = placed.filter(({ page }) => page === i);
    return {
      widthMm,
      heightMm,
      label: `camera ${i + 1}`,
      part: 'camera',
      form: null,
      marks: [
        ...marks,
        ...here.flatMap((one) => panelMarks(panels[one.panel]!, one, solved, texts)),
        ...(table && i === count - 1 ? table : []),
      ],
      rows: [],
    };
  });
  return { pages, holdsTable: table !== null };
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
