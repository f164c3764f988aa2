/** What the signs of the page mean, with a sample of each. */

import type { CutList } from '../../count/count-episode.js';
import type { ListPaper } from '../cut-list/cut-list-paper.js';
import type { Mark } from '../display-list.js';
import { type Box, black, frame, line, pale, textAt } from '../mark-builders.js';
import { wrap } from '../text-fitting.js';
import { column, hatched, ruled } from './rhythm-bands.js';
import { DENSITY_STEPS, HIGHEST } from './rhythm-strips.js';

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
