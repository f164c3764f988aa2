/** The memo: what the cut says in words, the stack, and what found no room elsewhere. */

import { cameraMemo } from './camera/camera-plan.js';
import { barMark } from './change-bars.js';
import type { Mark, Metrics } from './display-list.js';
import { relationLines } from './level-relations.js';
import { type Box, black, line, pale, polygon, textAt } from './mark-builders.js';
import { captionMm, type SheetGeometry } from './sheet-geometry.js';
import type { SheetPlan } from './sheet-plan.js';
import { cutToFit, wrap } from './text-fitting.js';

const LEADING = 1.22;

/** What stands where words have no room and are told in the memo, from the longest to the shortest. */
export const memoPointers = ({ inMemo, memo }: SheetPlan['words']): readonly string[] => [
  inMemo,
  `→ ${memo}`,
  '→',
];

/** What a memo tells, a line of it or the head over some. */
export interface Paragraph {
  readonly text: string;
  /** Bold and without a dot. */
  readonly head?: boolean;
  /** With a change bar beside it. */
  readonly barred?: boolean;
}

/** What a memo tells of the cut as it is, in the order in which it is printed. */
export function memoTexts(
  plan: Pick<SheetPlan, 'solved' | 'words' | 'camera' | 'lent' | 'leftOver'>,
): Paragraph[] {
  const { shot, levels } = plan.solved;
  const { words } = plan;
  const { head, tail } = shot.handles;
  const { telling } = plan.camera;
  const length = (frames: number): string => (frames > 0 ? telling.length(frames) : '');
  const lenders = [...new Set(plan.lent.map(({ level }) => level))];
  const { flashes } = plan.solved.camera;
  return [
    ...(flashes ? [words.flashCaution] : []),
    ...cameraMemo(plan.camera),
    ...shot.lineUps.map(({ cut, text }) => words.lineUp(cut, text)),
    ...shot.memos.map((memo) => memo.text),
    ...relationLines(shot.levels, words),
    ...levels.flatMap((level) =>
      level.reuse ? [words.reuse(level.name, level.reuse.cut, level.reuse.level)] : [],
    ),
    ...lenders.map((lender) =>
      words.lent(
        lender,
        plan.lent.filter(({ level }) => level === lender),
      ),
    ),
    ...(head > 0 || tail > 0 ? [words.handles(length(head), length(tail), length(shot.length))] : []),
    ...plan.leftOver,
  ].map((text) => ({ text }));
}

/** What differs from another version, under a head that tells what a change bar means. A bar runs beside all of it. */
export function changedTexts(plan: SheetPlan): Paragraph[] {
  const { marked, bars, words } = plan;
  if (!marked) return [];
  if (bars.none && marked.lines.length === 0) return [{ text: words.unchanged(marked.against), head: true }];
  return [...changedHead(plan), ...marked.lines.map((text) => ({ text, barred: true }))];
}

/** The head alone stands also on further pages that have bars. */
export function changedHead({ marked, bars, words }: SheetPlan): Paragraph[] {
  return marked ? [{ text: words.changed(marked.against, !bars.none), head: true, barred: true }] : [];
}

export interface MemoSet {
  readonly marks: Mark[];
  /** Lines that found no room. */
  readonly rest: readonly Paragraph[];
}

interface Place {
  readonly box: Box;
  readonly geometry: SheetGeometry;
  readonly plan: SheetPlan;
}

/** The stack at the right of a memo box; gives the box that is left for words. */
export function stackMarks({ box, geometry, plan }: Place): { marks: Mark[]; left: Box } {
  const { scale, leastTextMm } = geometry;
  const under = captionMm(geometry) + 0.8;
  const inner = { ...box, y: box.y + under, height: box.height - under - 0.4 };
  const levels = plan.solved.levels.map(({ name, timed }) => ({ name, art: !timed }));
  const width = Math.min(box.width * 0.6, stackWidth(levels.length, inner.height, scale, leastTextMm));
  const x = box.x + box.width - width;
  const sizeMm = captionMm(geometry);
  return {
    marks: [
      line(x, box.y, x, box.y + box.height, pale(0.18)),
      textAt(x + 0.7, box.y + 0.4 + sizeMm / 2, plan.words.stack, { sizeMm, ink: 'grey', anchor: 'start' }),
      ...diagramMarks(levels, { ...inner, x, width }, scale, leastTextMm, plan.metrics),
    ],
    left: { ...box, width: width > 0 ? box.width - width : box.width },
  };
}

/** The most columns of a memo; short lines stand in several where they would not fit one under the other. */
const MOST_COLUMNS = 3;
const COLUMN_GAP = 3;

/** A line as it is set. */
interface Line {
  readonly text: string;
  readonly indent: number;
  /** The first of its paragraph. */
  readonly first: boolean;
  readonly of: Paragraph;
}

/** Sets paragraphs in a memo box, smaller where there are many, then in columns. */
export function memoMarks({ box, geometry, plan }: Place, paragraphs: readonly Paragraph[]): MemoSet {
  if (paragraphs.length === 0) return { marks: [], rest: [] };
  const under = captionMm(geometry) + 0.7;
  const room = { x: box.x + 1.2, y: box.y + under, width: box.width - 2.4, height: box.height - under - 0.5 };
  const { leastTextMm, scale } = geometry;
  const smallest = Math.max(leastTextMm, 1.75 * scale);
  const sizes: number[] = [];
  for (let sizeMm = 2.5 * scale; sizeMm > smallest; sizeMm *= 0.94) sizes.push(sizeMm);
  sizes.push(smallest);
  const counts = Array.from({ length: MOST_COLUMNS }, (_, i) => i + 1);
  for (const columns of counts)
    for (const sizeMm of sizes) {
      const set = inColumns(columns, sizeMm);
      if (set.rest.length === 0) return set;
    }
  // Too much in any case: as much of it as can be.
  const left = ({ rest }: MemoSet): number => rest.reduce((so, { text }) => so + text.length, 0);
  return counts
    .map((columns) => inColumns(columns, smallest))
    .reduce((best, set) => (left(set) < left(best) ? set : best));

  function inColumns(columns: number, sizeMm: number): MemoSet {
    const width = (room.width - (columns - 1) * COLUMN_GAP) / columns;
    const lines = paragraphs.flatMap((one) => broken(one, width, sizeMm));
    const fitting = Math.max(1, Math.floor(room.height / (sizeMm * LEADING)));
    const here = lines.slice(0, fitting * columns);
    const rest = joined(lines.slice(fitting * columns));
    // Only what has room is drawn, or what has more room than anything else.
    if (rest.length > 0 && sizeMm > smallest) return { marks: [], rest };
    const pitch = sizeMm * LEADING;
    const at = (i: number) => ({
      x: room.x + Math.floor(i / fitting) * (width + COLUMN_GAP),
      y: room.y + (i % fitting) * pitch,
    });
    const marks = here.map(({ text, indent, of }, i) => {
      const { x, y } = at(i);
      const weight = of.head ? 'bold' : 'regular';
      return textAt(x + indent, y + pitch / 2, text, { sizeMm, anchor: 'start', weight });
    });
    here.forEach(({ of }, i) => {
      if (!of.barred || (i % fitting !== 0 && here[i - 1]?.of.barred)) return;
      let lines = 1;
      while ((i + lines) % fitting !== 0 && here[i + lines]?.of.barred) lines++;
      const { x, y } = at(i);
      const [width, height] = [sizeMm * 0.34, (lines - 1) * pitch + sizeMm * 0.96];
      marks.push(barMark({ x, y: y + (pitch - sizeMm * 0.96) / 2, width, height }));
    });
    return { marks, rest };
  }

  function broken(of: Paragraph, width: number, sizeMm: number): Line[] {
    const bar = of.barred ? sizeMm * 0.8 : 0;
    const hang = bar + (of.head ? 0 : sizeMm * 0.9);
    const weight = of.head ? 'bold' : 'regular';
    return wrap(plan.metrics, of.text, width - hang, sizeMm, weight).map(
      (one, i): Line => ({
        text: i === 0 && !of.head ? `· ${one}` : one,
        indent: i === 0 ? bar : hang,
        first: i === 0,
        of,
      }),
    );
  }
}

/** Lines that are left as paragraphs again, for a box of another width. */
function joined(lines: readonly Line[]): Paragraph[] {
  const paragraphs: { -readonly [K in keyof Paragraph]: Paragraph[K] }[] = [];
  for (const { text, first, of } of lines) {
    const last = paragraphs.at(-1);
    if (first) paragraphs.push({ ...of, text: of.head ? text : text.slice(2) });
    else if (last) last.text += ` ${text}`;
    else paragraphs.push({ ...of, text: `… ${text}` });
  }
  return paragraphs;
}

/** A word at the foot of a memo box, at its right. */
export function memoPointer(box: Box, geometry: SheetGeometry, plan: SheetPlan, text: string): Mark {
  const sizeMm = captionMm(geometry);
  const size = { most: sizeMm, least: geometry.leastTextMm, weight: 'bold' } as const;
  const set = cutToFit(plan.metrics, text, box.width - 2, size);
  return textAt(box.x + box.width - 1, box.y + box.height - sizeMm * 0.8, set.text, {
    sizeMm: set.sizeMm,
    weight: 'bold',
    anchor: 'end',
    squeeze: set.squeeze,
  });
}

// ---- the stack drawn as a pile of sheets, bottom to top

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
