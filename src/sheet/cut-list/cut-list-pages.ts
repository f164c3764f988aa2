/**
 * The cut list as pages: a line a cut, heads on each page, totals and artists behind the last cut. Upright where the columns
 * fit at full size, else on its side. No text is shortened: titles, camera words and names break into lines.
 */

import type { ArtistTotal, CutList } from '../../count/count-episode.js';
import { inProportion, layTable } from '../../layout/table.js';
import { feetAndFrames, secondsAndFrames } from '../../shot/time-notation.js';
import { figure } from '../../words/number-format.js';
import type { Mark, Page } from '../display-list.js';
import { type Box, black, frame, pale, textAt } from '../mark-builders.js';
import type { PageLook } from '../page-look.js';
import { largerPrint } from '../sheet-geometry.js';
import { type PaperColumn, tableMarks } from '../table-marks.js';
import { fitLine, wrap } from '../text-fitting.js';
import { frameMarks, type ListPaper, lengthText, listPaper } from './cut-list-paper.js';
import { type ListTable, listTable, listTableMarks } from './cut-list-table.js';

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

// ---- what stands under the list: running time against budget, drawings, who draws how much

const LEADING = 1.45;

/** The episode in sentences. */
export function summaryLines(paper: ListPaper, list: CutList): { text: string; bold: boolean }[] {
  const { words, west } = paper;
  const { totals, fps, budget, artists } = list;
  const length = (frames: number): string => {
    const [seconds, feet] = [secondsAndFrames(frames, fps), feetAndFrames(frames)];
    return west ? `${feet} (${seconds})` : `${seconds} (${feet})`;
  };
  const { over } = totals;
  const judged =
    over === null
      ? ''
      : `  ${words.heads.budget} ${length(budget!)}: ${over > 0 ? words.over(length(over)) : over < 0 ? words.under(length(-over)) : words.exact}`;
  const said = [{ text: `${words.heads.running} ${length(totals.running)}${judged}`, bold: true }];
  const say = (text: string): void => void said.push({ text, bold: false });
  if (totals.time !== totals.running) say(words.overlapNote(length(totals.time)));
  const timed = totals.cuts - totals.untimed;
  if (timed > 0) {
    const average = secondsAndFrames(Math.round(totals.running / timed), fps);
    say(words.pace(figure(totals.drawingsASecond, { decimals: 1, zeros: 'always' }), average));
  }
  if (totals.counts.backgrounds > 0) say(words.backgroundsNote(totals.counts.backgrounds));
  if (totals.problems.errors + totals.problems.warnings > 0)
    say(words.problemsNote(totals.problems.errors, totals.problems.warnings));
  if (totals.unsound > 0) say(words.unsoundNote(totals.unsound, totals.untimed));
  if (artists.some(({ shared }) => shared > 0))
    say(words.sharedNote(list.rows.filter((row) => row.artists.length > 1).length));
  return said;
}

/** The sentences in a box as wide as given; `height` is what they take. */
function summaryMarks(
  paper: ListPaper,
  list: CutList,
  box: Pick<Box, 'x' | 'y' | 'width'>,
  sizeMm: number,
): { marks: Mark[]; height: number } {
  const marks: Mark[] = [];
  let y = box.y;
  for (const { text, bold } of summaryLines(paper, list)) {
    const weight = bold ? 'bold' : 'regular';
    for (const part of wrap(paper.metrics, text, box.width, sizeMm, weight)) {
      marks.push(textAt(box.x, y + (sizeMm * LEADING) / 2, part, { sizeMm, weight, anchor: 'start' }));
      y += sizeMm * LEADING;
    }
    y += sizeMm * 0.3;
  }
  return { marks, height: y - box.y };
}

interface ArtistColumn extends PaperColumn {
  readonly head: string;
}

type Line = Pick<ArtistTotal, 'name' | 'cuts' | 'running' | 'drawings'>;

/** One line an artist, one for the cuts that nobody is named for, one for the whole. */
export function artistLines(paper: ListPaper, list: CutList): Line[] {
  const { words } = paper;
  const nobody = list.rows.flatMap((row, i) =>
    row.artists.length === 0 ? [{ row, placed: list.placed[i]! }] : [],
  );
  return [
    ...list.artists,
    ...(nobody.length === 0
      ? []
      : [
          {
            name: words.artists.nobody,
            cuts: nobody.length,
            running: Math.round(nobody.reduce((sum, { placed }) => sum + placed.lasts, 0)),
            drawings: nobody.reduce((sum, { row }) => sum + (row.counted?.counts.drawings ?? 0), 0),
          },
        ]),
    {
      name: words.total,
      cuts: list.totals.cuts,
      running: list.totals.running,
      drawings: list.totals.counts.drawings,
    },
  ];
}

const artistRowMm = (sizeMm: number): number => sizeMm * 1.7;

/** The artists' table in an area of the paper, from `top` on; marks for each page that it takes. The last line is the total. */
function artistTables(
  paper: ListPaper,
  list: CutList,
  lines: readonly Line[],
  area: Box,
  top: number,
  sizeMm: number,
): Mark[][] {
  const { words, least, metrics } = paper;
  const columns: readonly (readonly [head: string, share: number, of: (line: Line) => string])[] = [
    [words.artists.artist, 4, ({ name }) => name],
    [words.artists.cuts, 1.4, ({ cuts }) => String(cuts)],
    [words.artists.running, 2.2, ({ running }) => lengthText(paper, running, list.fps)],
    [words.artists.drawings, 1.8, ({ drawings }) => String(drawings)],
  ];
  const rowMm = artistRowMm(sizeMm);
  const { pages } = layTable({
    columns: columns.map(
      ([head, share, of], i): ArtistColumn => ({
        head,
        align: i === 0 ? 'start' : 'end',
        least: share,
        wanted: share * area.width,
        cells: () => lines.map((line) => [of(line)]),
      }),
    ),
    rows: lines.length,
    rowHeight: () => rowMm,
    headHeight: rowMm,
    sharing: inProportion,
    area,
    top,
  })!;
  const total = lines.length > 1 ? lines.length - 1 : -1;
  return pages.map(({ sets: [set] }) => {
    const marks = tableMarks(set!, {
      metrics,
      sizeMm,
      rowMm,
      leadingMm: rowMm,
      inset: [0.8, 0.8],
      least,
      bold: (_, row) => row === total,
      head: ({ head, align }, { x, y, width }) => {
        const fit = fitLine(metrics, head, width - 1.6, { most: Math.max(least, sizeMm * 0.82), least });
        const at = align === 'start' ? x + 0.8 : x + width - 0.8;
        return [textAt(at, y + rowMm / 2, head, { ...fit, anchor: align })];
      },
      headRule: pale(0.45),
      ruleUnder: (row) => (row === total - 1 ? black(0.2) : pale(row === total ? 0.45 : 0.1)),
      upright: () => null,
      edge: null,
    });
    return [...marks, frame({ x: set!.x, y: set!.y, width: area.width, height: set!.height }, pale(0.45))];
  });
}
