/**
 * The whole episode on one page. Time runs along strips; each cut is a bar with three bands: new drawings a second as grey
 * blocks in steps of height, moves of camera and levels as hatch, dialogue as ruled lines. Cut numbers stand over the bars where
 * they find room, scenes above them, minutes and seconds below. Dissolves are crossed, a double line says where the budget ends.
 */

import type { CutList } from '../../count/count-episode.js';
import { summaryLines } from '../cut-list/cut-list-pages.js';
import { frameMarks, type ListPaper, listPaper } from '../cut-list/cut-list-paper.js';
import type { Mark, Page } from '../display-list.js';
import { type Box, black, frame, line, pale, textAt } from '../mark-builders.js';
import type { PageLook } from '../page-look.js';
import { fitLine, wrap } from '../text-fitting.js';
import { labelOf, nameMarks, rulerMarks, type StripPrint } from './rhythm-labels.js';
import {
  type Bands,
  bandMarks,
  column,
  DENSITY_STEPS,
  HIGHEST,
  hatched,
  ruled,
  stripsFor,
} from './rhythm-strips.js';

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

// ---- what the signs of the page mean, with a sample of each

interface Entry {
  readonly sampleMm: number;
  readonly text: string;
  readonly sample: (x: number, top: number, bottom: number) => Mark[];
}

const LEADING = 1.8;
/** Lines of cuts that cannot be drawn; the list has them all. */
const MOST_LINES = 4;

/** Entries one behind the other, in lines as wide as the box; `height` is what they take. */
export function legendMarks(
  paper: ListPaper,
  list: CutList,
  box: Pick<Box, 'x' | 'y' | 'width'>,
  sizeMm: number,
): { marks: Mark[]; height: number } {
  const { metrics } = paper;
  const marks: Mark[] = [];
  const lineMm = sizeMm * LEADING;
  let x = box.x;
  let y = box.y;
  for (const { sampleMm, text, sample } of entriesOf(paper, list, sizeMm)) {
    const width = sampleMm + 0.8 + metrics.width(text, sizeMm, 'regular');
    if (x + width > box.x + box.width && x > box.x) {
      x = box.x;
      y += lineMm;
    }
    marks.push(...sample(x, y + lineMm * 0.12, y + lineMm * 0.88));
    marks.push(textAt(x + sampleMm + 0.8, y + lineMm / 2, text, { sizeMm, anchor: 'start' }));
    x += width + sizeMm * 1.6;
  }
  y += lineMm;
  const unknown = list.rows.filter(({ counted }) => counted === null).map(({ cut }) => cut);
  if (unknown.length > 0) {
    const lines = wrap(metrics, paper.words.legend.notDrawn(unknown.join(', ')), box.width, sizeMm);
    const shown = lines.length <= MOST_LINES ? lines : [...lines.slice(0, MOST_LINES - 1), '…'];
    for (const part of shown) {
      marks.push(textAt(box.x, y + lineMm / 2, part, { sizeMm, anchor: 'start' }));
      y += lineMm * 0.8;
    }
  }
  return { marks, height: y - box.y };
}

function entriesOf(paper: ListPaper, list: CutList, sizeMm: number): Entry[] {
  const { legend } = paper.words;
  const wide = sizeMm * 4;
  const boxed = (x: number, top: number, bottom: number): Mark =>
    frame({ x, y: top, width: wide, height: bottom - top }, black(0.15));
  const entries: Entry[] = [
    {
      sampleMm: wide,
      text: legend.camera,
      sample: (x, top, bottom) => [hatched(x, x + wide, top, bottom), boxed(x, top, bottom)],
    },
    {
      sampleMm: wide,
      text: legend.dialogue,
      sample: (x, top, bottom) => [...ruled(x, x + wide, top, bottom), boxed(x, top, bottom)],
    },
    { sampleMm: 0, text: legend.density, sample: () => [] },
    ...Array.from({ length: HIGHEST }, (_, i): Entry => {
      const most = DENSITY_STEPS[i];
      return {
        sampleMm: sizeMm,
        text: most === undefined ? `> ${DENSITY_STEPS.at(-1)}` : `≤ ${most}`,
        sample: (x, top, bottom) => [
          column(x, x + sizeMm, bottom - ((bottom - top) * (i + 1)) / HIGHEST, bottom),
          line(x, top, x, bottom, pale(0.15)),
        ],
      };
    }),
    {
      sampleMm: wide,
      text: legend.overlap,
      sample: (x, top, bottom) => [
        boxed(x, top, bottom),
        line(x, top, x + wide, bottom, black(0.3)),
        line(x, bottom, x + wide, top, black(0.3)),
      ],
    },
    {
      sampleMm: 1,
      text: legend.scene,
      sample: (x, top, bottom) => [line(x + 0.5, top, x + 0.5, bottom, black(0.5))],
    },
  ];
  if (list.budget !== null) {
    entries.push({
      sampleMm: 1.4,
      text: legend.budget,
      sample: (x, top, bottom) => [0.35, 1.05].map((at) => line(x + at, top, x + at, bottom, black(0.4))),
    });
  }
  if (list.totals.unsound > 0) {
    entries.push({
      sampleMm: sizeMm * 1.4,
      text: legend.unsound,
      sample: (x, top, bottom) => [
        textAt(x, (top + bottom) / 2, '12!', { sizeMm, weight: 'bold', anchor: 'start' }),
      ],
    });
  }
  return entries;
}
