/** The foot of every page: cut and page once more, and what was printed. */

import type { Box } from './draw.js';
import { textAt } from './draw.js';
import { fitLine } from './fit.js';
import type { Mark, Metrics } from './marks.js';

export interface Footed {
  readonly title: string;
  /** Cut and page. */
  readonly middle: string;
  readonly stamp: string;
  readonly metrics: Metrics;
}

export function footMarks(box: Box, sizeMm: number, least: number, footed: Footed): Mark[] {
  const y = box.y + box.height - sizeMm * 0.5;
  const third = box.width / 3 - 2;
  const put = (text: string, x: number, anchor: 'start' | 'middle' | 'end', bold = false): Mark[] => {
    if (text === '') return [];
    const weight = bold ? 'bold' : 'regular';
    const fitted = fitLine(footed.metrics, text, third, { most: sizeMm, least, weight });
    return [textAt(x, y, text, { sizeMm: fitted.sizeMm, squeeze: fitted.squeeze, weight, anchor })];
  };
  return [
    ...put(footed.title, box.x, 'start'),
    ...put(footed.middle, box.x + box.width / 2, 'middle', true),
    ...put(footed.stamp, box.x + box.width, 'end'),
  ];
}
