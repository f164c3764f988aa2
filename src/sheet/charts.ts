/**
 * In-between charts: what an in-betweener reads beside the light table. One ladder a passage, level by level.
 *
 * What stands on paper: a level begins with its name (bold, 6 mm) over a rule across the page. A ladder has its title
 * `from → to` (with `(1/3)` where it is cut into pieces), and below it an upright black line of 0.4 mm from the first key to
 * the last. Each drawing is a level stroke across that line, at its share of the way, and a thin polyline leads from the
 * stroke to the drawing's line of print: finished number (bold), name, way (not for keys), frames each time it is shown.
 * Keys are ringed: their name in Japan, their number in the west. Breakdowns have a dot on the line, and their name in
 * round brackets in Japan, their number underlined in the west.
 */

import type { SolvedShot } from '../solve/solved.js';
import { arrange, type Body, type Heading, type Sheet } from './charts/arrange.js';
import { columnsFor, type LadderWords, ladderMarks, type Piece } from './charts/ladder.js';
import { ladders } from './charts/steps.js';
import { chartWords } from './charts/words.js';
import { frame, line, pale, textAt } from './draw.js';
import { caption } from './form.js';
import { type Geometry, geometry, unitOf } from './geometry.js';
import { headerCells, headerMarks } from './header.js';
import { words as formWords } from './labels.js';
import type { Look } from './look.js';
import type { Form, Mark, Page } from './marks.js';
import { cached } from './measure.js';
import { rowName } from './times.js';

/** Pages of ladders; none where no passage has an in-between. */
export function chartPages(solved: SolvedShot, given: Look): Page[] {
  const entries = ladders(solved);
  if (entries.length === 0) return [];
  const look = { ...given, metrics: cached(given.metrics) };
  if (look.settings.convention === 'west') entries.reverse();
  const words = chartWords(look.settings.labels);
  const paper = geometry(look.settings, solved.shot.fps, LIKE_A_SHEET);
  const body = bodyOf(paper);
  const sheets = arrange(entries, body, (entry) => {
    const steps = entry.ladders.flatMap((ladder) => ladder.steps);
    return columnsFor(steps, words.headings, look.metrics);
  });
  const form = formOf(paper, look);
  return sheets.map(
    (sheet, i): Page => ({
      widthMm: paper.widthMm,
      heightMm: paper.heightMm,
      label: `charts ${i + 1}`,
      part: 'charts',
      form,
      marks: [
        ...headMarks(paper, solved, look, i + 1, sheets.length),
        ...sheet.headings.flatMap((heading) => headingMarks(heading, body, look)),
        ...bodyMarks(sheet, solved, look),
      ],
      rows: [],
    }),
  );
}

/** Header and foot stand where they stand on a sheet. */
const LIKE_A_SHEET = { levels: 1, main: true, bracketMm: 0, voices: 1, cameraLanes: 1 };

function bodyOf({ header, foot, scale }: Geometry): Body {
  return {
    left: header.x + 4,
    right: header.x + header.width - 4,
    top: header.y + header.height + 8 * scale,
    bottom: foot.y - 1,
  };
}

function formOf(paper: Geometry, { settings, metrics }: Look): Form {
  const west = settings.convention === 'west';
  const words = formWords(settings.labels);
  return {
    id: `charts-${west ? 'west' : 'japan'}-${settings.labels}-${paper.widthMm}x${paper.heightMm}`,
    marks: headerCells(paper, words, west).flatMap((cell) => [
      frame(cell.box, pale(0.18)),
      caption(cell.box, cell.caption, paper, metrics),
    ]),
  };
}

function headMarks(paper: Geometry, { shot }: SolvedShot, look: Look, page: number, pages: number): Mark[] {
  const { settings, metrics } = look;
  const west = settings.convention === 'west';
  const { header, scale } = paper;
  return [
    ...headerMarks(paper, {
      shot,
      title: settings.title,
      episode: settings.episode,
      words: formWords(settings.labels),
      metrics,
      west,
      page: west ? `${page} / ${pages}` : `${pages} / ${page}`,
      leftOver: new Set(),
    }),
    textAt(header.x + 4, header.y + header.height + 4 * scale, chartWords(settings.labels).title, {
      sizeMm: 2.6 * scale,
      ink: 'grey',
      anchor: 'start',
    }),
  ];
}

function bodyMarks(sheet: Sheet, solved: SolvedShot, look: Look): Mark[] {
  return sheet.placed.flatMap(({ piece, ...place }) =>
    ladderMarks(piece, place, wordsOf(piece, solved, look), look.metrics),
  );
}

function headingMarks({ entry, y, goesOn }: Heading, body: Body, look: Look): Mark[] {
  const words = chartWords(look.settings.labels);
  const { level } = entry;
  const inbetweens = new Set(entry.ladders.flatMap((ladder) => ladder.passage.drawings)).size;
  const half = (body.right - body.left) / 2;
  const whole = look.metrics.width(level.name, 6, 'bold');
  const nameWidth = Math.min(whole, half);
  const titleWidth = look.metrics.width(level.title, 3.8, 'regular');
  const x = body.left + nameWidth + 3;
  const counts = `${words.count(inbetweens)}${goesOn ? `  ${words.goesOn}` : ''}`;
  const room = Math.max(5, body.right - x - look.metrics.width(counts, 3, 'regular') - 3);
  const squeeze = titleWidth > room ? { squeeze: room / titleWidth } : {};
  return [
    textAt(body.left, y + 3, level.name, {
      sizeMm: 6,
      weight: 'bold',
      anchor: 'start',
      ...(whole > half ? { squeeze: half / whole } : {}),
    }),
    textAt(x, y + 3.8, level.title, { sizeMm: 3.8, anchor: 'start', ...squeeze }),
    textAt(body.right, y + 3.8, counts, { sizeMm: 3, anchor: 'end' }),
    line(body.left, y + 7, body.right, y + 7, pale(0.35)),
  ];
}

function wordsOf(piece: Piece, solved: SolvedShot, look: Look): LadderWords {
  const { labels, convention } = look.settings;
  const words = chartWords(labels);
  const { passage } = piece.ladder;
  const part = piece.pieces > 1 ? `  (${piece.piece}/${piece.pieces})` : '';
  return {
    title: `${passage.from} → ${passage.to}${part}`,
    remark: words.remark(
      passage,
      rowName(passage.firstFrame, unitOf(look.settings, solved.shot.fps), convention === 'west'),
    ),
    headings: words.headings,
    convention,
  };
}
