/**
 * The cut list as pages: a line a cut, heads on each page, totals and artists behind the last cut. Upright where the columns
 * fit at full size, else on its side. No text is shortened: titles, camera words and names break into lines.
 */

import type { CutList } from '../../count/list.js';
import { frame, pale } from '../draw.js';
import type { Look } from '../look.js';
import type { Mark, Page } from '../marks.js';
import { largerPrint } from '../papers.js';
import { frameMarks, type Stage, stageOf } from './frame.js';
import {
  cellsOf,
  headMarks,
  heightOf,
  rowMarks,
  ruleUnder,
  type Table,
  tableFor,
  totalCells,
  uprights,
} from './table.js';
import { artistLines, artistMarks, artistRowMm, summaryMarks } from './totals.js';

/** Height of print on A4, mm. */
const PRINT = 2.3;

export function cutListPages(list: CutList, look: Look): Page[] {
  const { stage, table } = laidOut(list, look);
  const bodies = [...tableBodies(stage, table, list)];
  addTotals(bodies, stage, table, list);
  return bodies.map(({ marks }, i): Page => {
    const { words, widthMm, heightMm } = stage;
    return {
      widthMm,
      heightMm,
      label: words.listPage(i + 1),
      part: 'list',
      form: null,
      marks: [...frameMarks(stage, list, look, words.list, i + 1, bodies.length), ...marks],
      rows: [],
    };
  });
}

function laidOut(list: CutList, look: Look): { stage: Stage; table: Table } {
  const most = PRINT * largerPrint(look.settings.paper);
  const upright = stageOf(look, false);
  const table = tableFor(upright, list, most);
  if (table && table.sizeMm > most * 0.9) return { stage: upright, table };
  const side = stageOf(look, true);
  const wide = tableFor(side, list, most);
  if (!wide) throw new RangeError('the cut list does not go into the width of the paper');
  return { stage: side, table: wide };
}

interface Body {
  readonly marks: Mark[];
  /** Where the next thing may stand. */
  y: number;
}

function tableBodies(stage: Stage, table: Table, list: CutList): Body[] {
  const { body } = stage;
  const bottom = body.y + body.height;
  const bodies: Body[] = [];
  const open = (): Body => {
    const made = { marks: headMarks(stage, table, body.y), y: body.y + table.headHeight };
    bodies.push(made);
    return made;
  };
  let page = open();
  const close = (): void => void page.marks.push(...uprights(table, body, body.y, page.y));
  list.rows.forEach((row, i) => {
    const cells = cellsOf(stage, table, row);
    const height = heightOf(table, cells);
    if (page.y + height > bottom && page.y > body.y + table.headHeight) {
      close();
      page = open();
    }
    page.marks.push(...rowMarks(table, cells, page.y));
    page.y += height;
    const next = list.rows[i + 1];
    const kind = !next ? 'end' : next.scene !== row.scene ? 'scene' : (i + 1) % 5 === 0 ? 'fifth' : 'plain';
    page.marks.push(ruleUnder(stage, page.y, kind));
  });
  if (page.y + table.rowMm > bottom) {
    close();
    page = open();
  }
  page.marks.push(...rowMarks(table, totalCells(table, list, stage.words.total), page.y, () => true));
  page.y += table.rowMm;
  page.marks.push(ruleUnder(stage, page.y, 'end'));
  close();
  return bodies;
}

const BETWEEN = 6;

/** Sentences at the left, artists at the right; artists that find no room go on on the next page. */
function addTotals(bodies: Body[], stage: Stage, table: Table, list: CutList): void {
  const { body, scale } = stage;
  const bottom = body.y + body.height;
  const sizeMm = Math.max(stage.least, table.sizeMm);
  const rowMm = artistRowMm(sizeMm);
  const width = (body.width - BETWEEN) / 2;
  const left = summaryMarks(stage, list, { x: body.x, y: 0, width }, sizeMm);
  const lines = artistLines(stage, list);
  let page = bodies.at(-1)!;
  const gap = 4 * scale;
  const wanted = Math.max(left.height, Math.min(lines.length + 1, 4) * rowMm);
  if (page.y + gap + wanted > bottom) {
    page = { marks: [], y: body.y - gap };
    bodies.push(page);
  }
  const top = page.y + gap;
  page.marks.push(...summaryMarks(stage, list, { x: body.x, y: top, width }, sizeMm).marks);
  const x = body.x + width + BETWEEN;
  let at = 0;
  let y = top;
  for (;;) {
    const fitting = Math.max(1, Math.floor((bottom - y) / rowMm + 1e-6) - 1);
    const shown = lines.slice(at, at + fitting);
    page.marks.push(...artistMarks(stage, list, shown, { x, y, width }, sizeMm));
    page.marks.push(frame({ x, y, width, height: (shown.length + 1) * rowMm }, pale(0.45)));
    at += shown.length;
    if (at >= lines.length) return;
    page = { marks: [], y: body.y };
    bodies.push(page);
    y = body.y;
  }
}
