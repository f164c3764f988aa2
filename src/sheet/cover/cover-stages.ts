/** The boxes to sign and date, a stage each, and the retakes so far, on the front of an envelope. */

import { stageWord } from '../../words/progress-words.js';
import type { Mark } from '../display-list.js';
import { type Box, black, frame, line, pale, textAt } from '../mark-builders.js';
import type { CutProduction } from '../page-look.js';
import { dayWords } from '../progress/progress-pages.js';
import { cutToFit, fitLine, setInBox } from '../text-fitting.js';
import { type CoverContent, captioned, captionSize } from './cover-boxes.js';

/** So many boxes stand in a row; more take another one. */
const MOST_ABREAST = 8;

/**
 * A box a stage: its name, by when it is due, who signs, when. Filled where the table of progress knows it; started and sent back are
 * said, and leave room to sign.
 */
export function stageBoxes(content: CoverContent, box: Box): Mark[] {
  const stages = content.look.production?.stages ?? [];
  if (stages.length === 0) return captioned(content, box, '');
  const rows = Math.ceil(stages.length / MOST_ABREAST);
  const abreast = Math.ceil(stages.length / rows);
  const [width, height] = [box.width / abreast, box.height / rows];
  return stages.flatMap((stage, i) =>
    stageMarks(content, stage, {
      x: box.x + (i % abreast) * width,
      y: box.y + Math.floor(i / abreast) * height,
      ...{ width, height },
    }),
  );
}

type Stage = CutProduction['stages'][number];

function stageMarks(content: CoverContent, stage: Stage, box: Box): Mark[] {
  const { words, metrics, least, scale } = content;
  const { progress } = words;
  const { state, date, person, due } = stage;
  const head = box.height * 0.3;
  const foot = Math.max(captionSize(content) * 1.5, box.height * 0.24);
  const bottom = box.y + box.height - foot;
  const done = state === 'done';
  const name = stageWord(progress, stage.stage);
  const at = { x: box.x + 0.8, width: box.width - 1.6 };
  const marks: Mark[] = [
    frame(box, pale(0.25)),
    line(box.x, box.y + head, box.x + box.width, box.y + head, pale(0.12)),
    line(box.x, bottom, box.x + box.width, bottom, pale(0.12)),
    ...setInBox(
      metrics,
      name,
      { ...at, y: box.y, height: head },
      {
        ...{ most: 3.8 * scale, least, weight: 'bold' },
      },
    ).marks,
  ];
  const middle = { ...at, y: box.y + head + 0.4, height: bottom - box.y - head - 0.8 };
  if (done) {
    marks.push(...setInBox(metrics, person, middle, { most: 4 * scale, least }).marks);
    const fit = fitLine(metrics, date, at.width, { most: 3.6 * scale, least });
    marks.push(textAt(box.x + box.width / 2, bottom + foot / 2, date, fit));
    return marks;
  }
  // What is not done leaves room for a pencil: the state and the day that is due are small.
  const small = { most: captionSize(content), least };
  const day = due === null ? progress.cover.date : progress.cover.due(dayWords(due, due, progress));
  const standing =
    state === 'open'
      ? progress.cover.sign
      : [progress.states[state], dayWords(date, date, progress), person].filter(Boolean).join(' ');
  for (const [text, y] of [
    [standing, middle.y + captionSize(content) * 0.6],
    [day, bottom + captionSize(content) * 0.75],
  ] as const) {
    const fit = cutToFit(metrics, text, at.width, small);
    const ink = state === 'retake' && text === standing ? ('black' as const) : ('grey' as const);
    marks.push(textAt(at.x, y, fit.text, { ...fit, ink, anchor: 'start' }));
  }
  return marks;
}

/** A line a retake: day, stage, who asked, why; ruled on to the bottom for those to come. The latest stay where there are too many. */
export function retakeBox(content: CoverContent, box: Box): Mark[] {
  const { look, words, metrics, least, scale } = content;
  const { progress } = words;
  const retakes = look.production?.retakes ?? [];
  const caption = `${progress.retakes}: ${retakes.length}`;
  const top = box.y + captionSize(content) + 1;
  const rowMm = Math.max(least * 1.5, 6.4 * scale);
  const count = Math.max(1, Math.floor((box.y + box.height - top) / rowMm));
  const shown = retakes.slice(-count);
  const earlier = retakes.length - shown.length;
  const marks = captioned(
    content,
    box,
    earlier > 0 ? `${caption} (${progress.cover.earlier(earlier)})` : caption,
  );
  const edges = [0, 0.13, 0.27, 0.43, 1].map((share) => box.x + share * box.width);
  for (let i = 0; i < count; i++) {
    const y = top + i * rowMm;
    if (i > 0) marks.push(line(box.x, y, box.x + box.width, y, pale(0.1)));
    const retake = shown[i];
    if (!retake) continue;
    const cells = [retake.date, stageWord(progress, retake.stage), retake.person, retake.note];
    cells.forEach((text, c) => {
      const width = edges[c + 1]! - edges[c]! - 1.6;
      if (text === '') return;
      const fit = cutToFit(metrics, text, width, { most: 3.2 * scale, least });
      marks.push(textAt(edges[c]! + 0.8, y + rowMm / 2, fit.text, { ...fit, anchor: 'start' }));
    });
  }
  if (retakes.length > 0) marks.push(line(box.x, box.y, box.x, box.y + box.height, black(0.5)));
  return marks;
}
