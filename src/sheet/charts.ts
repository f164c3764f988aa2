/**
 * In-between charts: what an in-betweener reads beside the light table. One ladder a passage, level by level.
 *
 * What stands on paper: a level begins with its name (bold, 6 mm) over a rule across the page. A ladder has its title
 * `from → to` (with `(1/3)` where it is cut into pieces), and below it an upright black line of 0.4 mm from the first key to
 * the last. Each drawing is a level stroke across that line, at its share of the way, and a thin polyline leads from the
 * stroke to the drawing's line of print: finished number (bold), name, way (not for keys), frames each time it is shown.
 * Keys are ringed: their name in Japan, their number in the west. Breakdowns have a dot on the line, and their name in
 * brackets in Japan, their number underlined in the west.
 */

import type { SolvedShot } from '../solve/solved.js';
import {
  type Columns,
  columnsFor,
  type LadderWords,
  ladderMarks,
  lengthOf,
  type Piece,
  piecesOf,
  TITLE_HEIGHT,
} from './charts/ladder.js';
import { type LevelLadders, ladders } from './charts/steps.js';
import { chartWords } from './charts/words.js';
import type { Look } from './look.js';
import type { Mark, Page } from './marks.js';

const LEVEL_HEIGHT = 11;
const BELOW_LADDER = 9;
const BETWEEN_LADDERS = 6;

interface Body {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

interface Placed {
  readonly piece: Piece;
  readonly columns: Columns;
  readonly x: number;
  readonly y: number;
  readonly lengthMm: number;
}

interface Heading {
  readonly entry: LevelLadders;
  readonly y: number;
  /** The level began on a page before. */
  readonly goesOn: boolean;
}

interface Sheet {
  readonly headings: Heading[];
  readonly placed: Placed[];
}

/** Pages of ladders; none where no passage has an in-between. */
export function chartPages(solved: SolvedShot, look: Look): Page[] {
  const entries = ladders(solved);
  if (entries.length === 0) return [];
  const words = chartWords(look.settings.labels);
  const { widthMm, heightMm, body } = paperOf(look);
  const sheets = arrange(entries, body, (entry) => {
    const steps = entry.ladders.flatMap((ladder) => ladder.steps);
    return columnsFor(steps, words.headings, look.metrics);
  });
  return sheets.map((sheet, i): Page => {
    const marks: Mark[] = [];
    for (const heading of sheet.headings) marks.push(...headingMarks(heading, body, look));
    for (const { piece, ...place } of sheet.placed)
      marks.push(...ladderMarks(piece, place, wordsOf(piece, solved, look), look.metrics));
    return { widthMm, heightMm, label: `charts ${i + 1}`, part: 'charts', form: null, marks, rows: [] };
  });
}

/** Fills pages row by row; the ladders of a row are equally long. Only the pieces of a very long ladder go over pages. */
function arrange(
  entries: readonly LevelLadders[],
  body: Body,
  columnsOf: (entry: LevelLadders) => Columns,
): Sheet[] {
  const wide = body.right - body.left + BETWEEN_LADDERS;
  const longest = body.bottom - body.top - LEVEL_HEIGHT - TITLE_HEIGHT - BELOW_LADDER;
  const sheets: Sheet[] = [{ headings: [], placed: [] }];
  let y = body.top;
  for (const entry of entries) {
    let begun = false;
    const columns = columnsOf(entry);
    const across = Math.max(1, Math.floor(wide / (columns.width + BETWEEN_LADDERS)));
    for (const row of rowsOf(entry, across, longest)) {
      const lengthMm = Math.max(...row.map((piece) => lengthOf(piece, longest)));
      const height = TITLE_HEIGHT + lengthMm + BELOW_LADDER;
      const heading = begun ? 0 : LEVEL_HEIGHT;
      if (y + heading + height > body.bottom + 1e-6) {
        sheets.push({ headings: [], placed: [] });
        y = body.top;
      }
      const sheet = sheets.at(-1)!;
      if (!begun || y === body.top) {
        sheet.headings.push({ entry, y, goesOn: begun });
        y += LEVEL_HEIGHT;
        begun = true;
      }
      const top = y;
      row.forEach((piece, i) => {
        sheet.placed.push({ piece, columns, x: body.left + (i * wide) / across, y: top, lengthMm });
      });
      y += height;
    }
  }
  return sheets.filter((sheet) => sheet.placed.length > 0);
}

function rowsOf(entry: LevelLadders, across: number, longest: number): Piece[][] {
  const rows: Piece[][] = [[]];
  for (const ladder of entry.ladders) {
    const pieces = piecesOf(ladder, longest);
    const last = rows.at(-1)!;
    if (last.length > 0 && last.length + pieces.length > across) rows.push([]);
    for (const piece of pieces) {
      if (rows.at(-1)!.length === across) rows.push([]);
      rows.at(-1)!.push(piece);
    }
  }
  return rows;
}

function headingMarks({ entry, y, goesOn }: Heading, body: Body, look: Look): Mark[] {
  const words = chartWords(look.settings.labels);
  const { level } = entry;
  const inbetweens = new Set(entry.ladders.flatMap((ladder) => ladder.passage.drawings)).size;
  const nameWidth = look.metrics.width(level.name, 6, 'bold');
  const titleWidth = look.metrics.width(level.title, 3.8, 'regular');
  const x = body.left + nameWidth + 3;
  const counts = `${words.count(inbetweens)}${goesOn ? `  ${words.goesOn}` : ''}`;
  const room = body.right - x - look.metrics.width(counts, 3, 'regular') - 3;
  return [
    {
      kind: 'text',
      x: body.left,
      y: y + 5.2,
      text: level.name,
      sizeMm: 6,
      weight: 'bold',
      ink: 'black',
      anchor: 'start',
    },
    {
      kind: 'text',
      x,
      y: y + 5.2,
      text: level.title,
      sizeMm: 3.8,
      weight: 'regular',
      ink: 'black',
      anchor: 'start',
      ...(titleWidth > room ? { squeeze: room / titleWidth } : {}),
    },
    {
      kind: 'text',
      x: body.right,
      y: y + 5.2,
      text: counts,
      sizeMm: 3,
      weight: 'regular',
      ink: 'black',
      anchor: 'end',
    },
    {
      kind: 'line',
      x1: body.left,
      y1: y + 7,
      x2: body.right,
      y2: y + 7,
      stroke: { ink: 'form', widthMm: 0.35 },
    },
  ];
}

function wordsOf(piece: Piece, solved: SolvedShot, look: Look): LadderWords {
  const { labels, convention } = look.settings;
  const words = chartWords(labels);
  const { passage } = piece.ladder;
  const part = piece.pieces > 1 ? `  (${piece.piece}/${piece.pieces})` : '';
  return {
    title: `${passage.from} → ${passage.to}${part}`,
    remark: words.remark(passage, solved.shot.fps),
    headings: words.headings,
    convention,
  };
}

function paperOf(_look: Look): { widthMm: number; heightMm: number; body: Body } {
  return { widthMm: 210, heightMm: 297, body: { left: 12, right: 198, top: 26, bottom: 282 } };
}
