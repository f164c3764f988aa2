/** Reads the camera column of a printed sheet: what stands on which frame's row, told from the paper alone. */

import type { PaperText } from '../pdf.js';
import { type Band, inside, middleOf } from './grid.js';
import type { ReadBlock, ReadPage } from './sheet.js';

export interface Bar {
  readonly frame: number;
  /** Whether it stands inside the top or the bottom edge of that frame's row. */
  readonly at: 'top' | 'bottom';
  readonly x: number;
}

export interface RowText {
  readonly frame: number;
  readonly text: string;
  readonly x: number;
  readonly ringed: boolean;
}

export interface Slant {
  readonly topFrame: number;
  readonly bottomFrame: number;
  /** How far it goes to the right on its way down, mm. */
  readonly rightMm: number;
}

export interface CameraColumn {
  readonly bars: readonly Bar[];
  /** Level texts, each on one row, left to right. */
  readonly texts: readonly RowText[];
  /** Texts and characters that run down, from the top. */
  readonly down: readonly string[];
  /** Straight lines of wedges: from the top of one row to the bottom of another. */
  readonly slants: readonly Slant[];
  /** Frames of the rows on which an empty ring stands. */
  readonly rings: readonly number[];
}

const BLACK = '#000000';
/** A bar stands this share of a row inside its edge at the most. */
const NEAR = 0.15;

export function readCameraColumn(page: ReadPage): CameraColumn {
  const parts = page.blocks.filter((block) => block.firstFrame !== null).map((block) => readIn(page, block));
  return {
    bars: parts.flatMap(({ bars }) => bars),
    texts: parts.flatMap(({ texts }) => texts),
    down: parts.flatMap(({ down }) => down),
    slants: parts.flatMap(({ slants }) => slants),
    rings: parts.flatMap(({ rings }) => rings),
  };
}

function readIn({ paper }: ReadPage, block: ReadBlock): CameraColumn {
  const band = block.grid.groups.get('camera')![0]!;
  const { edges } = block.grid;
  const body: Band = { from: edges[0]!, to: edges.at(-1)! };
  // Of all rows, since each edge is rounded to a thousandth of a millimetre.
  const rowMm = (body.to - body.from) / (edges.length - 1);
  const frameAt = (y: number): number => block.firstFrame! + Math.floor((y - body.from) / rowMm);

  const bars = paper.lines
    .filter((line) => !line.form && line.pen.ink === BLACK && Math.abs(line.y1 - line.y2) < 0.01)
    .filter((line) => inside(line.x1, band) && inside(line.x2, band) && inside(line.y1, body))
    .flatMap((line): Bar[] => {
      const frame = frameAt(line.y1);
      const within = (line.y1 - body.from) / rowMm - Math.floor((line.y1 - body.from) / rowMm);
      if (within < NEAR) return [{ frame, at: 'top', x: line.x1 }];
      return within > 1 - NEAR ? [{ frame, at: 'bottom', x: line.x1 }] : [];
    });

  const here = paper.texts.filter((text) => {
    const [x, y] = middleOf(text);
    return !text.form && text.ink === BLACK && inside(x, band) && inside(y, body);
  });
  const level = here.filter((text) => text.angle === 0);
  const rings = [
    ...paper.circles.filter(({ form, pen }) => !form && pen).map(({ x, y }) => [x, y] as const),
    ...paper.shapes
      .filter(({ form, pen, closed, points }) => !form && pen && closed && points.length > 10)
      .map(({ points }) => middleOfPoints(points)),
  ];
  const texts = level
    .map((text): RowText => {
      const [x, y] = middleOf(text);
      const ringed = rings.some(([rx, ry]) => Math.hypot(rx - x, ry - y) < 0.05);
      return { frame: frameAt(y), text: text.text, x, ringed };
    })
    .sort((a, b) => a.frame - b.frame || a.x - b.x);

  const slants = paper.lines
    .map((line) => ({ ...line, points: [[line.x1, line.y1] as const, [line.x2, line.y2] as const] }))
    .concat(
      paper.shapes
        .filter(({ points, closed }) => points.length === 2 && !closed)
        .map((shape) => ({ ...shape, points: [shape.points[0]!, shape.points[1]!] })) as never,
    )
    .filter(({ form, points }) => !form && points.every(([x, y]) => inside(x, band) && inside(y, body)))
    .map(({ points }) => [...points].sort((a, b) => a[1] - b[1]))
    .filter(([a, b]) => Math.abs(a![0] - b![0]) > 0.1 && b![1] - a![1] > rowMm / 2)
    .map(
      ([a, b]): Slant => ({
        topFrame: frameAt(a![1] + 0.01),
        bottomFrame: frameAt(b![1] - 0.01),
        rightMm: b![0] - a![0],
      }),
    );
  const empty = rings.filter(
    ([x, y]) =>
      inside(x, band) &&
      inside(y, body) &&
      !here.some((text) => Math.hypot(middleOf(text)[0] - x, middleOf(text)[1] - y) < 0.05),
  );
  return {
    ...{ bars, texts, slants },
    down: here.filter((text) => text.angle !== 0).map(wordOf),
    rings: empty.map(([, y]) => frameAt(y)),
  };
}

const wordOf = ({ text }: PaperText): string => text;

function middleOfPoints(points: readonly (readonly [number, number])[]): readonly [number, number] {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2];
}
