/**
 * The whole episode on one page. Time runs along strips; each cut is a bar with three bands: new drawings a second as grey
 * blocks in steps of height, moves of camera and levels as hatch, dialogue as ruled lines. Cut numbers stand over the bars where
 * they find room, scenes above them, minutes and seconds below. Dissolves are crossed, a double line says where the budget ends.
 */

import type { CutList } from '../../count/count-episode.js';
import { frameMarks, type ListPaper, listPaper } from '../cut-list/cut-list-paper.js';
import { summaryLines } from '../cut-list/cut-list-totals.js';
import type { Mark, Page } from '../display-list.js';
import { textAt } from '../mark-builders.js';
import type { PageLook } from '../page-look.js';
import { fitLine } from '../text-fitting.js';
import { type Bands, bandMarks } from './rhythm-bands.js';
import { labelOf, nameMarks, rulerMarks, type StripPrint } from './rhythm-labels.js';
import { legendMarks } from './rhythm-legend.js';
import { stripsFor } from './rhythm-strips.js';

/** Room at the left of the strips for the time at which they begin, mm on A4. */
const GUTTER = 8.5;
/** So many cuts are named in larger print. */
const FEW = 60;
/** Beyond the running time so much more of it is shown, to reach the end of the budget. */
const BEYOND = 1.25;

export function rhythmPage(list: CutList, look: PageLook): Page {
  const paper = listPaper(look, true);
  const { body, scale, least, words } = paper;
  const [labelMm, smallMm] = list.rows.length > FEW ? [1.75, 1.5] : [2.3, 1.75];
  const print: StripPrint = {
    labelMm: Math.max(least, labelMm * scale),
    smallMm: Math.max(least, smallMm * scale),
  };
  const legend = legendMarks(paper, list, { x: body.x, y: 0, width: body.width }, print.smallMm * 1.1);
  const summaryMm = print.labelMm * 1.6;
  const gutter = GUTTER * scale;
  const room = {
    x: body.x + gutter,
    y: body.y + summaryMm,
    width: body.width - gutter - 1.5,
    height: body.height - summaryMm - legend.height - 1,
  };
  const { running } = list.totals;
  const total = Math.max(
    1,
    list.budget !== null && list.budget <= running * BEYOND ? Math.max(running, list.budget) : running,
  );
  const labelled = labelHeight(paper, list, print);
  const lowest = bandsOf(0, labelled, print, scale).lowest;
  const strips = stripsFor(total, list.fps, room, { lowest, highest: 40 * scale, widestMm: 11 * scale });
  const { bands } = bandsOf(strips.pitch, labelled, print, scale);
  const legendTop = body.y + body.height - legend.height;
  const marks: Mark[] = [
    ...frameMarks(paper, list, look, words.rhythm, 1, 1),
    ...summary(paper, list, print.labelMm),
    ...bandMarks(list, strips, bands),
    ...rulerMarks(paper, list, total, strips, bands, { ...print, gutterMm: gutter }),
    ...nameMarks(paper, list, strips, bands, print),
    ...legendMarks(paper, list, { x: body.x, y: legendTop, width: body.width }, print.smallMm * 1.1).marks,
  ];
  const { widthMm, heightMm } = paper;
  return { widthMm, heightMm, label: words.rhythm, part: 'rhythm', form: null, marks, rows: [] };
}

/** Height for cut numbers that may have to stand on end. */
function labelHeight({ metrics }: ListPaper, { rows }: CutList, { labelMm }: StripPrint): number {
  const longest = rows.reduce((most, row) => Math.max(most, metrics.width(labelOf(row), labelMm, 'bold')), 0);
  return Math.min(longest + 1, labelMm * 4);
}

function bandsOf(
  pitch: number,
  labelled: number,
  { labelMm, smallMm }: StripPrint,
  scale: number,
): { bands: Bands; lowest: number } {
  const lane = 1.15 * scale;
  const ruler = 1.1 + smallMm * 1.05;
  const gap = 0.6 * scale;
  const scene = smallMm * 1.15;
  // Numbers on end reach up beside the names of scenes.
  const bar = Math.max(labelled, scene + labelMm * 1.2);
  const fixed = bar + 2 * lane + ruler + gap;
  const room = Math.max(0, pitch - fixed);
  // What a high strip has left goes to the drawings first.
  const drawings = Math.min(room * 0.8, 16 * scale);
  const more = Math.min((room - drawings) / 2, 2.5 * scale);

  const camera = bar + drawings;
  const dialogue = camera + lane + more;
  const bottom = dialogue + lane + more;
  return {
    bands: { bar, camera, dialogue, bottom, ruler: bottom + 1.1 + smallMm * 0.5 },
    lowest: fixed + 3.4 * scale,
  };
}

/** The first sentences of the list's totals, in one line. */
function summary(paper: ListPaper, list: CutList, sizeMm: number): Mark[] {
  const { body, metrics, least } = paper;
  const text = summaryLines(paper, list)
    .slice(0, 2)
    .map((one) => one.text)
    .join('   ·   ');
  const fit = fitLine(metrics, text, body.width, { most: sizeMm, least });
  return [
    textAt(body.x, body.y + sizeMm * 0.4, text, {
      sizeMm: fit.sizeMm,
      squeeze: fit.squeeze,
      anchor: 'start',
    }),
  ];
}
