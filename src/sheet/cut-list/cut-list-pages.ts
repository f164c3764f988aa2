/**
 * The cut list as pages: a line a cut, heads on each page, totals and artists behind the last cut. Upright where the columns
 * fit at full size, else on its side. No text is shortened: titles, camera words and names break into lines.
 */

import type { CutList } from '../../count/count-episode.js';
import type { Mark, Page } from '../display-list.js';
import type { PageLook } from '../page-look.js';
import { largerPrint } from '../paper-sizes.js';
import { frameMarks, type ListPaper, listPaper } from './cut-list-paper.js';
import { type ListTable, listTable, listTableMarks } from './cut-list-table.js';
import { artistLines, artistRowMm, artistTables, summaryMarks } from './cut-list-totals.js';

/** Height of print on A4, mm. */
const PRINT = 2.3;

export function cutListPages(list: CutList, look: PageLook): Page[] {
  const { paper, table } = laidOut(list, look);
  const bodies = tableBodies(paper, table, list);
  addTotals(bodies, paper, table, list);
  return bodies.map(({ marks }, i): Page => {
    const { words, widthMm, heightMm } = paper;
    return {
      widthMm,
      heightMm,
      label: words.listPage(i + 1),
      part: 'list',
      form: null,
      marks: [...frameMarks(paper, list, look, words.list, i + 1, bodies.length), ...marks],
      rows: [],
    };
  });
}

function laidOut(list: CutList, look: PageLook): { paper: ListPaper; table: ListTable } {
  const most = PRINT * largerPrint(look.settings.paper);
  const upright = listPaper(look, false);
  const table = listTable(upright, list, most, most * 0.9);
  if (table) return { paper: upright, table };
  const side = listPaper(look, true);
  const wide = listTable(side, list, most);
  if (!wide) throw new RangeError('the cut list does not go into the width of the paper');
  return { paper: side, table: wide };
}

interface Body {
  readonly marks: Mark[];
  /** Where the next thing may stand. */
  y: number;
}

function tableBodies(paper: ListPaper, table: ListTable, list: CutList): Body[] {
  return table.pages.map(({ sets: [set] }) => ({
    marks: listTableMarks(paper, table, set!, list),
    y: set!.y + set!.height,
  }));
}

const BETWEEN = 6;

/** Sentences at the left, artists at the right; artists that find no room go on on the next page. */
function addTotals(bodies: Body[], paper: ListPaper, table: ListTable, list: CutList): void {
  const { body, scale } = paper;
  const bottom = body.y + body.height;
  const sizeMm = Math.max(paper.least, table.sizeMm);
  const width = (body.width - BETWEEN) / 2;
  const left = summaryMarks(paper, list, { x: body.x, y: 0, width }, sizeMm);
  const lines = artistLines(paper, list);
  let page = bodies.at(-1)!;
  const gap = 4 * scale;
  const wanted = Math.max(left.height, Math.min(lines.length + 1, 4) * artistRowMm(sizeMm));
  if (page.y + gap + wanted > bottom) {
    page = { marks: [], y: body.y - gap };
    bodies.push(page);
  }
  const top = page.y + gap;
  page.marks.push(...summaryMarks(paper, list, { x: body.x, y: top, width }, sizeMm).marks);
  const area = { ...body, x: body.x + width + BETWEEN, width };
  artistTables(paper, list, lines, area, top, sizeMm).forEach((marks, i) => {
    if (i === 0) page.marks.push(...marks);
    else bodies.push({ marks: [...marks], y: body.y });
  });
}
