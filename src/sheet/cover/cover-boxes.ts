/** What the boxes on the front of an envelope have alike. */

import type { SolvedShot } from '../../solve/solved-shot.js';
import type { Words } from '../../words/words.js';
import type { Mark } from '../display-list.js';
import { type Box, frame, pale, textAt } from '../mark-builders.js';
import type { PageLook } from '../page-look.js';
import { fitLine } from '../text-fitting.js';

/** What all boxes of a cover are drawn with. */
export interface CoverContent {
  readonly solved: SolvedShot;
  readonly look: PageLook;
  readonly words: Words;
  readonly metrics: PageLook['metrics'];
  /** The smallest print of the paper, mm. */
  readonly least: number;
  /** Millimetres of print on A4 to those here. */
  readonly scale: number;
}

/** Several share a page, so that there is little room. */
export const isLabel = ({ scale }: CoverContent): boolean => scale <= 0.6;

export const captionSize = ({ scale, least }: CoverContent): number => Math.max(least, 2.1 * scale);

/** A box with its name in the corner. */
export function captioned(content: CoverContent, box: Box, caption: string): Mark[] {
  if (box.height <= 0) return [];
  const marks = [frame(box, pale(0.25))];
  if (caption === '') return marks;
  const { metrics, least } = content;
  const fit = fitLine(metrics, caption, box.width - 1.6, { most: captionSize(content), least });
  marks.push(
    textAt(box.x + 0.8, box.y + 0.4 + fit.sizeMm / 2, caption, { ...fit, ink: 'grey', anchor: 'start' }),
  );
  return marks;
}

/** What is left of a box under its caption. */
export function inside(content: CoverContent, box: Box): Box {
  const under = captionSize(content) + 0.9;
  return {
    x: box.x + 1,
    y: box.y + under,
    width: box.width - 2,
    height: Math.max(0, box.height - under - 0.6),
  };
}
