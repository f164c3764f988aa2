/**
 * In-between charts: what an in-betweener reads beside the light table. One ladder a passage, level by level.
 *
 * What stands on paper: a level begins with its name (bold, 6 mm) over a rule across the page. At the foot of every page
 * stand the even passages that have no ladder, a level a line: `A  even: 1→2 ×3, 2→1 ×2`, key to key and how many lie between. A
 * ladder has its title `from → to`, its keys as the key column of the sheet names them (with `(1/3)` where it is cut into pieces), and below it an upright black line of 0.4 mm from the first key to
 * the last. Each drawing is a level stroke across that line, at its share of the way, and a thin polyline leads from the
 * stroke to the drawing's line of print: finished number (bold), name, way (not for keys), frames each time it is shown.
 * Keys are ringed: their name in Japan, their number in the west. Breakdowns have a dot on the line, and their name in
 * round brackets in Japan, their number underlined in the west. A ladder that has changed has a bar of 0.7 mm at its left.
 */

import { packShelves } from '../layout/shelf-packing.js';
import type { Convention } from '../shot/settings.js';
import { rowName } from '../shot/time-notation.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import { wordsOf } from '../words/words.js';
import { BAR, barMark } from './change-bars.js';
import { isEven, type Ladder, type LevelLadders, ladders } from './charts/chart-ladders.js';
import {
  columnsFor,
  type LadderColumns,
  type LadderPiece,
  type LadderPlace,
  type LadderWords,
  ladderMarks,
  lengthOf,
  piecesOf,
  TITLE_HEIGHT,
} from './charts/ladder-marks.js';
import type { Mark, Page } from './display-list.js';
import { type Box, line, pale, textAt } from './mark-builders.js';
import { pageFrame } from './page-frame.js';
import type { PageLook } from './page-look.js';
import { unitOf } from './sheet-geometry.js';
import { cachedMetrics, cutToFit, wrap } from './text-fitting.js';

/** Pages of ladders; none where no passage has an in-between. */
export function chartPages(solved: SolvedShot, look: PageLook): Page[] {
  return pagesOf(ladders(solved), solved, look);
}

/** Ladders of those passages only that are not even, or have changed: an in-betweener needs no chart for halves and thirds. */
export function neededChartPages(solved: SolvedShot, look: PageLook): Page[] {
  const all = ladders(solved);
  const needed = (ladder: Ladder): boolean => !isEven(ladder) || hasChanged(ladder, look);
  const some = (wanted: (ladder: Ladder) => boolean): LevelLadders[] =>
    all
      .map((entry) => ({ ...entry, ladders: entry.ladders.filter(wanted) }))
      .filter((entry) => entry.ladders.length > 0);
  return pagesOf(
    some(needed),
    solved,
    look,
    some((ladder) => !needed(ladder)),
  );
}

/** `even`: what has no ladder since its in-betweens are even. */
function pagesOf(
  entries: LevelLadders[],
  solved: SolvedShot,
  given: PageLook,
  even: readonly LevelLadders[] = [],
): Page[] {
  if (entries.length === 0) return [];
  const look = { ...given, metrics: cachedMetrics(given.metrics) };
  if (look.settings.convention === 'west') entries.reverse();
  const words = wordsOf(look.settings).charts;
  const framed = (page: number, pages: number) => pageFrame(solved.shot, look, words.page(page), pages);
  const whole = inset(framed(1, 1).body);
  const foot = evenMarks(look.settings.convention === 'west' ? even.toReversed() : even, whole, look);
  const body = { ...whole, bottom: whole.bottom - foot.height };
  const sheets = placeLadders(entries, body, (entry) => {
    const steps = entry.ladders.flatMap((ladder) => ladder.steps);
    return columnsFor(steps, words.headings, look.metrics);
  });
  return sheets.map((sheet, i): Page => {
    const { widthMm, heightMm, form, marks } = framed(i + 1, sheets.length);
    return {
      widthMm,
      heightMm,
      label: `charts ${i + 1}`,
      part: 'charts',
      form,
      marks: [
        ...marks,
        ...sheet.headings.flatMap((heading) => headingMarks(heading, body, look)),
        ...bodyMarks(sheet, solved, look),
        ...foot.marks,
      ],
      rows: [],
    };
  });
}

function inset({ x, y, width, height }: Box): ChartBody {
  return { left: x + 4, right: x + width - 4, top: y + 4, bottom: y + height - 1 };
}

const EVEN_SIZE = 3;
const EVEN_PITCH = 4.2;

/** The even passages without a ladder, over the foot of a page; only their number where they would fill half of it. */
function evenMarks(
  even: readonly LevelLadders[],
  body: ChartBody,
  { settings, metrics }: PageLook,
): { marks: Mark[]; height: number } {
  if (even.length === 0) return { marks: [], height: 0 };
  const words = wordsOf(settings).charts;
  const broken = (text: (entry: LevelLadders) => string): string[] =>
    even.flatMap((entry) =>
      wrap(metrics, `${entry.level.name}  ${text(entry)}`, body.right - body.left, EVEN_SIZE),
    );
  const listed = broken((entry) =>
    words.even(
      entry.ladders.map(
        (ladder) => `${keysOf(ladder, settings.convention).join('→')} ×${ladder.steps.length - 2}`,
      ),
    ),
  );
  const most = (body.bottom - body.top) / 2 / EVEN_PITCH;
  const lines = listed.length <= most ? listed : broken((entry) => words.evenOnes(entry.ladders.length));
  const height = lines.length * EVEN_PITCH + 2;
  const top = body.bottom - height + 2;
  return {
    height,
    marks: [
      line(body.left, top - 1, body.right, top - 1, pale(0.35)),
      ...lines.map((text, i) =>
        textAt(body.left, top + (i + 0.5) * EVEN_PITCH, text, { sizeMm: EVEN_SIZE, anchor: 'start' }),
      ),
    ],
  };
}

/** The keys of a passage as the key column of the sheet names them. */
function keysOf({ passage, steps }: Ladder, convention: Convention): [from: string, to: string] {
  const west = convention === 'west';
  return [String((west && steps[0]!.cel) || passage.from), String((west && steps.at(-1)!.cel) || passage.to)];
}

function bodyMarks(sheet: LadderPage, solved: SolvedShot, look: PageLook): Mark[] {
  return sheet.placed.flatMap(({ piece, ...place }) => [
    ...ladderMarks(piece, place, ladderWords(piece, solved, look), look.metrics),
    ...changeMark(piece, place, look),
  ]);
}

function hasChanged({ level, passage }: Ladder, { marked }: PageLook): boolean {
  return (
    marked?.ladders.some(
      (each) => each.level === level && each.from === passage.from && each.to === passage.to,
    ) === true
  );
}

/** A bar beside the line of a ladder that differs from another version of the cut. */
function changeMark({ ladder }: LadderPiece, { x, y, lengthMm }: LadderPlace, look: PageLook): Mark[] {
  return hasChanged(ladder, look)
    ? [barMark({ x: x - 1.4, y: y + TITLE_HEIGHT, width: BAR, height: lengthMm })]
    : [];
}

function headingMarks({ entry, y, goesOn }: Heading, body: ChartBody, look: PageLook): Mark[] {
  const words = wordsOf(look.settings).charts;
  const { level } = entry;
  const inbetweens = new Set(level.passages.flatMap(({ drawings }) => drawings)).size;
  const half = (body.right - body.left) / 2;
  const name = cutToFit(look.metrics, level.name, half, { most: 6, least: 3, weight: 'bold' });
  const x = body.left + look.metrics.width(name.text, name.sizeMm, 'bold') * name.squeeze + 3;
  const counts = [words.count(inbetweens), ...(goesOn ? [words.goesOn] : [])].join('  ');
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

function ladderWords(piece: LadderPiece, solved: SolvedShot, look: PageLook): LadderWords {
  const { convention } = look.settings;
  const words = wordsOf(look.settings).charts;
  const { passage } = piece.ladder;
  const part = piece.pieces > 1 ? `  (${piece.piece}/${piece.pieces})` : '';
  return {
    title: `${keysOf(piece.ladder, convention).join(' → ')}${part}`,
    remark: words.remark(
      passage.drawings.length,
      passage.chart,
      rowName(passage.firstFrame, unitOf(look.settings, solved.shot.fps), convention === 'west'),
    ),
    headings: words.headings,
    convention,
  };
}

// ---- puts ladders on pages

const LEVEL_HEIGHT = 11;
const BELOW_LADDER = 9;
const BETWEEN_LADDERS = 6;

interface ChartBody {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface PlacedLadder {
  readonly piece: LadderPiece;
  readonly columns: LadderColumns;
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

interface LadderPage {
  readonly headings: readonly Heading[];
  readonly placed: readonly PlacedLadder[];
}

/** Fills pages row by row; the ladders of a row are equally long. Only the pieces of a very long ladder go over pages. */
function placeLadders(
  entries: readonly LevelLadders[],
  { left, right, top, bottom }: ChartBody,
  columnsOf: (entry: LevelLadders) => LadderColumns,
): LadderPage[] {
  const longest = bottom - top - LEVEL_HEIGHT - TITLE_HEIGHT - BELOW_LADDER;
  const around = TITLE_HEIGHT + BELOW_LADDER;
  const sections = entries.map((entry) => {
    const columns = columnsOf(entry);
    const runs = entry.ladders.map((ladder) =>
      piecesOf(ladder, longest).map((piece) => ({
        holds: { piece, columns },
        sizes: [{ width: columns.width, height: around + lengthOf(piece, longest) }],
      })),
    );
    return { of: entry, heading: LEVEL_HEIGHT, runs };
  });
  const area = { x: left, y: top, width: right - left, height: bottom - top };
  return packShelves(sections, { ...area, between: BETWEEN_LADDERS, aligned: true }).map(
    ({ headings, places }): LadderPage => ({
      headings: headings.map(({ of, y, goesOn }) => ({ entry: of, y, goesOn })),
      placed: places.map(({ holds, x, y, shelf }) => ({ ...holds, x, y, lengthMm: shelf - around })),
    }),
  );
}
