/** The stack drawn as a pile of sheets, bottom to top. */

import type { Mark, Metrics } from './display-list.js';
import { type Box, black, line, polygon, textAt } from './mark-builders.js';
import { cutToFit } from './text-fitting.js';

export interface PiledLevel {
  readonly name: string;
  /** A background or overlay: no drawings change on it. */
  readonly art: boolean;
}

/** Width of one pile with its names on A4, mm. */
const PILE = 15.5;

interface Piles {
  /** Piles side by side; a long stack goes on at the foot of the next one. */
  readonly piles: number;
  readonly each: number;
  readonly width: number;
}

function pilesOf(count: number, height: number, scale: number, leastTextMm: number): Piles {
  const most = Math.max(1, Math.floor((height - 1) / (leastTextMm * 1.12)));
  const piles = Math.max(1, Math.ceil(count / most));
  return { piles, each: Math.ceil(count / piles), width: PILE * scale };
}

export function stackWidth(count: number, height: number, scale: number, leastTextMm: number): number {
  const { piles, width } = pilesOf(count, height, scale, leastTextMm);
  return piles * width + (piles - 1) * 1.6 + 2;
}

/** Levels from the bottom up. */
export function diagramMarks(
  levels: readonly PiledLevel[],
  box: Box,
  scale: number,
  leastTextMm: number,
  metrics: Metrics,
): Mark[] {
  const { piles, each, width } = pilesOf(levels.length, box.height, scale, leastTextMm);
  const pitch = Math.min(2.6 * scale, (box.height - 1) / Math.max(each, 3));
  const marks: Mark[] = [];
  for (let i = 0; i < piles; i++) {
    const x = box.x + 1 + i * (width + 1.6);
    const bottom = box.y + box.height - 0.5;
    if (i > 0) marks.push(...fromPileToPile(x - 1.3, box.y + 0.8, bottom - 0.4));
    levels.slice(i * each, (i + 1) * each).forEach((level, n) => {
      const y = bottom - n * pitch;
      const high = Math.min(pitch * 0.8, 1.7 * scale);
      const sheet = 5.6 * scale;
      const lean = 1.8 * scale;
      marks.push({
        kind: 'path',
        points: [
          [x, y],
          [x + sheet, y],
          [x + sheet + lean, y - high],
          [x + lean, y - high],
        ],
        closed: true,
        stroke: black(level.art ? 0.4 : 0.15),
        fill: 'paper',
      });
      const room = width - sheet - lean - 1.4;
      const most = Math.max(leastTextMm, Math.min(pitch * 0.85, 2.4 * scale));
      const { text, sizeMm, squeeze } = cutToFit(metrics, level.name, room, { most, least: leastTextMm });
      marks.push(
        textAt(x + sheet + lean + 0.8, y - high / 2, text, {
          sizeMm,
          squeeze,
          anchor: 'start',
          weight: level.art ? 'regular' : 'bold',
        }),
      );
    });
  }
  return marks;
}

/** An arrow down the gap between two piles: the stack goes on at the foot. */
function fromPileToPile(x: number, top: number, bottom: number): Mark[] {
  return [
    line(x, top, x, bottom - 1, black(0.15)),
    polygon(
      [
        [x - 0.5, bottom - 1.2],
        [x + 0.5, bottom - 1.2],
        [x, bottom],
      ],
      'black',
    ),
  ];
}
