/**
 * In-between charts: what an in-betweener reads beside the light table. One ladder a passage, level by level.
 *
 * What stands on paper: a level begins with its name (bold, 6 mm) over a rule across the page. A ladder has its title
 * `from → to` (with `(1/3)` where it is cut into pieces), and below it an upright black line of 0.4 mm from the first key to
 * the last. Each drawing is a level stroke across that line, at its share of the way, and a thin polyline leads from the
 * stroke to the drawing's line of print: finished number (bold), name, way (not for keys), frames each time it is shown.
 * Keys are ringed: their name in Japan, their number in the west. Breakdowns have a dot on the line, and their name in
 * round brackets in Japan, their number underlined in the west. A ladder that has changed has a bar of 0.7 mm at its left.
 */

import { rowName } from '../shot/time.js';
import type { SolvedShot } from '../solve/solved.js';
import { wordsOf } from '../words/words.js';
import { BAR, barMark } from './changes/bars.js';
import { arrange, type Body, type Heading, type Sheet } from './charts/arrange.js';
import {
  columnsFor,
  type LadderPlace,
  type LadderWords,
  ladderMarks,
  type Piece,
  TITLE_HEIGHT,
} from './charts/ladder.js';
import { isEven, type Ladder, type LevelLadders, ladders } from './charts/steps.js';
import { type Box, line, pale, textAt } from './draw.js';
import { cutToFit } from './fit.js';
import { unitOf } from './geometry.js';
import type { Look } from './look.js';
import type { Mark, Page } from './marks.js';
import { cached } from './measure.js';
import { pageFrame } from './page-frame.js';

/** Pages of ladders; none where no passage has an in-between. */
export function chartPages(solved: SolvedShot, look: Look): Page[] {
  return pagesOf(ladders(solved), solved, look);
}

/** Ladders of those passages only that are not even, or have changed: an in-betweener needs no chart for halves and thirds. */
export function neededChartPages(solved: SolvedShot, look: Look): Page[] {
  const entries = ladders(solved)
    .map((entry) => ({
      ...entry,
      ladders: entry.ladders.filter((ladder) => !isEven(ladder) || hasChanged(ladder, look)),
    }))
    .filter((entry) => entry.ladders.length > 0);
  return pagesOf(entries, solved, look);
}

function pagesOf(entries: LevelLadders[], solved: SolvedShot, given: Look): Page[] {
  if (entries.length === 0) return [];
  const look = { ...given, metrics: cached(given.metrics) };
  if (look.settings.convention === 'west') entries.reverse();
  const words = wordsOf(look.settings).charts;
  const framed = (page: number, pages: number) => pageFrame(solved.shot, look, words.page(page), pages);
  const body = inset(framed(1, 1).body);
  const sheets = arrange(entries, body, (entry) => {
    const steps = entry.ladders.flatMap((ladder) => ladder.steps);
    return columnsFor(steps, words.headings, look.metrics);
  });
  return sheets.map((sheet, i): Page => {
    const { widthMm, heightMm, marks } = framed(i + 1, sheets.length);
    return {
      widthMm,
      heightMm,
      label: `charts ${i + 1}`,
      part: 'charts',
      form: null,
      marks: [
        ...marks,
        ...sheet.headings.flatMap((heading) => headingMarks(heading, body, look)),
        ...bodyMarks(sheet, solved, look),
      ],
      rows: [],
    };
  });
}

function inset({ x, y, width, height }: Box): Body {
  return { left: x + 4, right: x + width - 4, top: y + 4, bottom: y + height - 1 };
}

function bodyMarks(sheet: Sheet, solved: SolvedShot, look: Look): Mark[] {
  return sheet.placed.flatMap(({ piece, ...place }) => [
    ...ladderMarks(piece, place, ladderWords(piece, solved, look), look.metrics),
    ...changeMark(piece, place, look),
  ]);
}

function hasChanged({ level, passage }: Ladder, { marked }: Look): boolean {
  return (
    marked?.ladders.some(
      (each) => each.level === level && each.from === passage.from && each.to === passage.to,
    ) === true
  );
}

/** A bar beside the line of a ladder that differs from another version of the cut. */
function changeMark({ ladder }: Piece, { x, y, lengthMm }: LadderPlace, look: Look): Mark[] {
  return hasChanged(ladder, look)
    ? [barMark({ x: x - 1.4, y: y + TITLE_HEIGHT, width: BAR, height: lengthMm })]
    : [];
}

function headingMarks({ entry, y, goesOn }: Heading, body: Body, look: Look): Mark[] {
  const words = wordsOf(look.settings).charts;
  const { level } = entry;
  const inbetweens = new Set(level.passages.flatMap(({ drawings }) => drawings)).size;
  const charted = entry.ladders.length;
  const passages = level.passages.filter(({ drawings }) => drawings.length > 0).length;
  const half = (body.right - body.left) / 2;
  const name = cutToFit(look.metrics, level.name, half, { most: 6, least: 3, weight: 'bold' });
  const x = body.left + look.metrics.width(name.text, name.sizeMm, 'bold') * name.squeeze + 3;
  const counts = [
    words.count(inbetweens),
    ...(charted < passages ? [words.evenOnes(passages - charted)] : []),
    ...(goesOn ? [words.goesOn] : []),
  ].join('  ');
  const room = Math.max(5, body.right - x - look.metrics.width(counts, 3, 'regular') - 3);
  const title = cutToFit(look.metrics, level.title, room, { most: 3.8, least: 2.4 });
  return [
    textAt(body.left, y + 3, name.text, {
      sizeMm: name.sizeMm,
      squeeze: name.squeeze,
      weight: 'bold',
      anchor: 'start',
    }),
    textAt(x, y + 3.8, title.text, { sizeMm: title.sizeMm, squeeze: title.squeeze, anchor: 'start' }),
    textAt(body.right, y + 3.8, counts, { sizeMm: 3, anchor: 'end' }),
    line(body.left, y + 7, body.right, y + 7, pale(0.35)),
  ];
}

function ladderWords(piece: Piece, solved: SolvedShot, look: Look): LadderWords {
  const { convention } = look.settings;
  const words = wordsOf(look.settings).charts;
  const { passage } = piece.ladder;
  const part = piece.pieces > 1 ? `  (${piece.piece}/${piece.pieces})` : '';
  return {
    title: `${passage.from} → ${passage.to}${part}`,
    remark: words.remark(
      passage.drawings.length,
      passage.chart,
      rowName(passage.firstFrame, unitOf(look.settings, solved.shot.fps), convention === 'west'),
    ),
    headings: words.headings,
    convention,
  };
}
