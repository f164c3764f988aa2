/** The covers of several cuts on one page, to be cut apart and glued on. */

import type { Paper } from '../../shot/settings.js';
import type { Mark, Page } from '../display-list.js';
import { type Box, line, pale } from '../mark-builders.js';
import { PAPER_MM } from '../sheet-geometry.js';

/** Columns and rows of a page by the number of its covers. The paper is halved again and again, so that one stop of the cutter does for all. */
const GRIDS = {
  2: { columns: 1, rows: 2 },
  4: { columns: 2, rows: 2 },
  8: { columns: 2, rows: 4 },
} as const;

export type CoversAPage = keyof typeof GRIDS;

/** From where the paper is cut, or ends, to a cover, mm: what printers cannot reach, and a cutter may miss. */
const MARGIN = 6;

/** Where the covers of a page stand, in reading order: left to right, then down. */
export function coverPlaces(paper: Paper, count: CoversAPage): Box[] {
  const { columns, rows } = GRIDS[count];
  const { widthMm, heightMm } = PAPER_MM[paper];
  const [width, height] = [widthMm / columns, heightMm / rows];
  return Array.from({ length: count }, (_, i) => ({
    x: (i % columns) * width + MARGIN,
    y: Math.floor(i / columns) * height + MARGIN,
    width: width - 2 * MARGIN,
    height: height - 2 * MARGIN,
  }));
}

/** A page of covers that are drawn in its places, with pale rules to cut along; a last page may have places left. */
export function sharedCoverPage(
  covers: readonly (readonly Mark[])[],
  paper: Paper,
  count: CoversAPage,
  label: string,
): Page {
  const { widthMm, heightMm } = PAPER_MM[paper];
  return {
    ...{ widthMm, heightMm, label, part: 'cover', form: null, rows: [] },
    marks: [...cuttingRules(paper, count), ...covers.flat()],
  };
}

/** From edge to edge. */
function cuttingRules(paper: Paper, count: CoversAPage): Mark[] {
  const { columns, rows } = GRIDS[count];
  const { widthMm, heightMm } = PAPER_MM[paper];
  const stroke = pale(0.15);
  const across = Array.from({ length: rows - 1 }, (_, i) => ((i + 1) * heightMm) / rows);
  const down = Array.from({ length: columns - 1 }, (_, i) => ((i + 1) * widthMm) / columns);
  return [
    ...across.map((y) => line(0, y, widthMm, y, stroke)),
    ...down.map((x) => line(x, 0, x, heightMm, stroke)),
  ];
}
