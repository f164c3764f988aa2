/**
 * The key and cel columns: what the key animator decided, in the marks of the trade, with brackets beside cycles (how often they
 * are played, or that they run on); and the finished number on each row where it changes.
 */

import type { Convention } from '../shot/settings.js';
import { rowName } from '../shot/time-notation.js';
import type { Exposure, SolvedCycle, SolvedLevel } from '../solve/solved-shot.js';
import { type BlockColumn, besideGutter } from './block-columns.js';
import type { Mark } from './display-list.js';
import { black, line, polygon, textAt } from './mark-builders.js';
import type { SheetGeometry } from './sheet-geometry.js';
import { type BlockFrames, type PageSide, type SheetPlan, topOf } from './sheet-plan.js';
import { type FittedText, fitLine, NARROWEST_SQUEEZE, ringed } from './text-fitting.js';
import { setDownwards } from './vertical-text.js';

export function keyMarks(side: PageSide, run: BlockFrames): Mark[] {
  return side.levels.flatMap((level, i) => {
    const column = besideGutter(run.block.columns.keys[i]!, side.geometry.gutters.levels);
    return [...levelMarks(side, run, level, column), ...cycleMarks(side, run, level, column)];
  });
}

function levelMarks(side: PageSide, run: BlockFrames, level: SolvedLevel, column: BlockColumn): Mark[] {
  const marks: Mark[] = [];
  const { signs, keyHolds } = side.plan.entries.get(level)!;
  const holds = holdsOn(run, keyHolds);
  const width = column.width - side.geometry.bracketMm;
  const x = column.x + width / 2;
  for (const { from } of holds) {
    const frame = Math.max(from, run.first);
    const y = topOf(side, run, frame) + side.geometry.rowMm / 2;
    const sign = signs[frame - 1];
    if (sign) marks.push(...signMarks(side, sign, x, y, width));
    else marks.push(inBrackets(side, heldText(signs, frame), x, y, width));
  }
  addHoldLines(marks, side, run, level, x, holds);
  marks.push(...holdWords(side, run, level, { x, width }, holds));
  return marks;
}

/** Rows below a key that its word may reach in the lowest rows. */
const LONGEST_WORD_ROWS = 6;

/**
 * Beside the line of a hold, reading downwards, once a hold, in the block in which it begins: that no in-betweens are meant before the
 * next key (where there is no room the memo tells it), or else that a key is held for more than a second (where there is no room the line
 * alone tells it).
 */
function holdWords(
  side: PageSide,
  run: BlockFrames,
  level: SolvedLevel,
  column: { readonly x: number; readonly width: number },
  holds: readonly Hold[],
): Mark[] {
  const { plan, geometry } = side;
  const { words, solved } = plan;
  const direct = solved.shot.levels.find(({ name }) => name === level.name)?.timeline?.direct ?? [];
  if (direct.length === 0 && words.held === '') return [];
  const { handles, length } = solved.shot;
  const points = [
    ...(handles.head > 0 ? [handles.head + 1] : []),
    ...(handles.tail > 0 ? [length - handles.tail + 1] : []),
  ];
  const marks: Mark[] = [];
  for (const { from: frame, to } of holds) {
    const { drawing, kind } = level.exposures[frame - 1]!;
    if (frame < run.first || drawing === null) continue;
    const next = to + 1;
    const follows = level.exposures[to]?.drawing;
    const isDirect = direct.some(({ from, to }) => from === drawing && to === follows);
    const isLong = kind === 'key' && next - frame > solved.shot.fps;
    const text = isDirect ? words.noInbetweens : isLong ? words.held : '';
    if (text === '') continue;
    const last = Math.min(next - 1, run.last);
    // A cut point is ruled across: the word begins below it.
    const point = points.find((one) => one > frame + 1 && one <= Math.min(frame + LONGEST_WORD_ROWS, last));
    const top = topOf(side, run, point ?? Math.min(frame + 1, last + 1)) + (point ? 0.5 : 0.2);
    const room = topOf(side, run, last + 1) - top - 0.3;
    // The lanes of brackets are free where no cycle has one beside the hold, nor the word of a short one.
    const beside = level.cycles.some(
      ({ firstFrame, lastFrame }) =>
        firstFrame <= last && (lastFrame >= frame || (firstFrame >= run.first && firstFrame + 3 >= frame)),
    );
    const free = column.width / 2 + (beside ? 0 : geometry.bracketMm) - 0.4;
    const width = Math.max(column.width / 2 - 0.4, Math.min(free, geometry.leastTextMm * 1.1));
    const strip = { x: column.x + 0.4, width, top, room };
    const least = geometry.leastTextMm;
    const most = Math.max(least, Math.min(least * 1.1, width));
    const size = { most, least, weight: 'regular' } as const;
    const set = setDownwards(text, strip, size, plan.metrics);
    const squeeze = Math.max(NARROWEST_SQUEEZE, Math.min(1, width / most));
    const narrowed = (mark: Mark): Mark =>
      mark.kind === 'text' && !mark.turn && squeeze < 1 ? { ...mark, squeeze } : mark;
    if (isDirect && !set.fits) {
      const row = rowName(next, geometry.unit, plan.convention === 'west');
      plan.leftOver.add(`${level.name} ${row}: ${drawing}→${follows} ${text}`);
    } else if (set.fits && (isDirect || (!beside && width >= least * NARROWEST_SQUEEZE)))
      marks.push(...set.marks.map(narrowed));
  }
  return marks;
}

/** What a sign needs to know of the page that it stands on. */
export interface SignPaper {
  readonly geometry: Pick<SheetGeometry, 'rowMm' | 'leastTextMm'>;
  readonly plan: Pick<SheetPlan, 'metrics'>;
}

/** A sign with its middle at (x, y), in a column of `width`. */
export function signMarks(side: SignPaper, sign: KeySign, x: number, y: number, width: number): Mark[] {
  const { rowMm } = side.geometry;
  switch (sign.form) {
    case 'key':
      return inRing(side, sign.text, x, y, width);
    case 'dash':
      return [dash(x, y, Math.min(1.5, rowMm * 0.5))];
    case 'breakdown':
    case 'reused breakdown': {
      const half = Math.min(1.5, rowMm * 0.38, width * 0.38);
      const sizeMm = Math.max(side.geometry.leastTextMm, Math.min(rowMm * 0.66, width * 0.62, 2.6));
      const inside = half - 0.17 * sizeMm - 0.18;
      return [
        sign.form === 'breakdown'
          ? dash(x, y, 2 * inside)
          : openRing(x, y, Math.min(0.55, rowMm * 0.2, inside)),
        textAt(x - half, y, '(', { sizeMm }),
        textAt(x + half, y, ')', { sizeMm }),
      ];
    }
    case 'again':
      return [openRing(x, y, Math.min(0.55, rowMm * 0.2))];
    case 'named':
    case 'number':
    case 'underlined':
    case 'empty': {
      const text = sign.form === 'empty' ? '×' : sign.text;
      const { sizeMm, squeeze } = numberSize(side, text, width - BESIDE_NUMBERS);
      const marks = [textAt(x, y, text, { sizeMm, squeeze })];
      if (sign.form === 'underlined') {
        const half = (side.plan.metrics.width(text, sizeMm, 'regular') * squeeze) / 2 + 0.15;
        const under = y + Math.max(sizeMm * 0.37 + 0.22, Math.min(rowMm * 0.42, sizeMm * 0.37 + 0.35));
        marks.push(line(x - half, under, x + half, under, black(0.24)));
      }
      return marks;
    }
  }
}

const dash = (x: number, y: number, length: number): Mark =>
  line(x - length / 2, y, x + length / 2, y, black(0.34));

const openRing = (x: number, y: number, r: number): Mark => ({
  kind: 'circle',
  x,
  y,
  r,
  stroke: black(0.22),
  fill: null,
});

/** A ring stays inside its row and column, so that no two ever touch. */
function inRing(side: SignPaper, text: string, x: number, y: number, width: number): Mark[] {
  const { geometry, plan } = side;
  return ringed(plan.metrics, text, {
    r: Math.min(geometry.rowMm * 0.455, 2.1),
    widestMm: width - 0.3,
    mostMm: geometry.rowMm * 0.74,
    leastMm: geometry.leastTextMm,
    stroke: black(Math.min(0.25, geometry.rowMm * 0.08)),
  }).at(x, y);
}

export function celMarks(side: PageSide, run: BlockFrames): Mark[] {
  return side.levels.flatMap((level, i) => {
    const column = besideGutter(run.block.columns.cels[i]!, side.geometry.gutters.levels);
    const x = column.x + column.width / 2;
    const marks: Mark[] = [];
    const holds = holdsOn(run, side.plan.entries.get(level)!.celHolds);
    for (const { from } of holds) {
      const frame = Math.max(from, run.first);
      const { starts, cel } = level.exposures[frame - 1]!;
      const y = topOf(side, run, frame) + side.geometry.rowMm / 2;
      const text = cel === null ? '×' : String(cel);
      if (starts) {
        const { sizeMm, squeeze } = numberSize(side, text, column.width - BESIDE_NUMBERS);
        marks.push(textAt(x, y, text, { sizeMm, squeeze }));
      } else marks.push(inBrackets(side, text, x, y, column.width));
    }
    addHoldLines(marks, side, run, level, x, holds);
    return marks;
  });
}

export const HOLD = black(0.24);
/** A hold line ends above the bottom edge of its last row by this share of a row. */
export const HOLD_GAP = 0.18;

/** How large a number stands in its row. */
export function numberSize(side: SignPaper, text: string, width: number): FittedText {
  const { rowMm, leastTextMm } = side.geometry;
  const most = Math.max(leastTextMm, Math.min(rowMm * 0.74, 3.2));
  return fitLine(side.plan.metrics, text, width, { most, least: leastTextMm });
}

/**
 * Lines down the rows on which a drawing is held: from the top edge of the row after the one that holds its number (or its
 * brackets, at a break) to just above the bottom edge of its last row. None for an empty level. `holds`: those on the rows.
 */
function addHoldLines(
  marks: Mark[],
  side: PageSide,
  run: BlockFrames,
  level: SolvedLevel,
  x: number,
  holds: readonly Hold[],
): void {
  const gap = side.geometry.rowMm * HOLD_GAP;
  for (const hold of holds) {
    const from = Math.max(hold.from, run.first);
    const to = Math.min(hold.to, run.last);
    if (from === to || level.exposures[to - 1]!.drawing === null) continue;
    marks.push(line(x, topOf(side, run, from + 1), x, topOf(side, run, to + 1) - gap, HOLD));
  }
}

/** Those that have rows on a block. */
const holdsOn = ({ first, last }: BlockFrames, holds: readonly Hold[]): readonly Hold[] =>
  holds.filter(({ from, to }) => from <= last && to >= first);

/** What is still held, on the first row after a break: in square brackets. */
export function inBrackets(side: SignPaper, text: string, x: number, y: number, width: number): Mark {
  const bracketed = `[${text}]`;
  const { sizeMm, squeeze } = numberSize(side, bracketed, width - BESIDE_NUMBERS);
  return textAt(x, y, bracketed, { sizeMm, squeeze });
}

/** From a column's edges to its numbers, mm, both together. */
const BESIDE_NUMBERS = 0.5;
/** A level's name is shortened where its column would have to be wider than this for it, mm; the memo has it whole. */
const WIDEST_NAME = 11;

/** What the levels of a cut need for their numbers and names in the smallest print, mm: no level's columns are narrower. */
export function levelRoom({ levels, entries, metrics }: SheetPlan, leastTextMm: number): number {
  const room = (text: string, weight: 'regular' | 'bold'): number =>
    metrics.width(text, leastTextMm, weight) * NARROWEST_SQUEEZE + BESIDE_NUMBERS;
  return levels.reduce((most, level) => {
    const texts = new Set<string>(level.exposures.map(({ cel }) => (cel === null ? '×' : String(cel))));
    for (const sign of entries.get(level)!.signs) if (sign && 'text' in sign) texts.add(sign.text);
    const longest = [...texts].reduce((so, text) => Math.max(so, text.length), 0);
    // Figures are all of one width; what is held stands in brackets, which take more room than a ring does.
    const numbers = [...texts]
      .filter((text) => text.length >= longest - 1)
      .map((text) => room(`[${text}]`, 'bold'));
    return Math.max(most, ...numbers, Math.min(WIDEST_NAME, room(level.name, 'bold')));
  }, 0);
}

const BRACKET = black(0.2);
const TICK = 0.55;

/** Room that the brackets of a level take beside its numbers, mm: one lane a depth. */
export function bracketRoom(levels: readonly SolvedLevel[], leastTextMm: number): number {
  const depths = levels.flatMap((level) => level.cycles.map((cycle) => cycle.depth + 1));
  return Math.max(0, ...depths) * laneMm(leastTextMm);
}

const laneMm = (leastTextMm: number): number => leastTextMm * 1.15;

export function cycleMarks(
  side: PageSide,
  run: BlockFrames,
  level: SolvedLevel,
  column: BlockColumn,
): Mark[] {
  return level.cycles.flatMap((cycle) => bracket(side, run, level, cycle, column));
}

function bracket(
  side: PageSide,
  run: BlockFrames,
  level: SolvedLevel,
  cycle: SolvedCycle,
  column: BlockColumn,
): Mark[] {
  const from = Math.max(cycle.firstFrame, run.first);
  const to = Math.min(cycle.lastFrame, run.last);
  if (from > to) return [];
  const { leastTextMm, rowMm } = side.geometry;
  const lane = laneMm(leastTextMm);
  const x = column.x + column.width - (cycle.depth + 1) * lane + 0.1;
  const gap = rowMm * 0.08;
  const feet = side.plan.convention === 'west';
  const top = topOf(side, run, from) + gap;
  const bottom = topOf(side, run, to + 1) - gap;
  const marks = [line(x, top, x, bottom, BRACKET)];
  if (from === cycle.firstFrame) marks.push(line(x - TICK, top, x, top, BRACKET));
  if (to === cycle.lastFrame) {
    if (cycle.times === null)
      marks.push(
        polygon(
          [
            [x - 0.6, bottom - 1.3],
            [x + 0.6, bottom - 1.3],
            [x, bottom],
          ],
          'black',
        ),
      );
    else marks.push(line(x - TICK, bottom, x, bottom, BRACKET));
  }
  const text = cycle.times === null ? side.plan.words.runsOn : side.plan.words.passes(cycle.times);
  // At the head of the bracket, and again after a break where there is room; a short one's word goes on beside the next rows.
  const begins = from === cycle.firstFrame;
  const free = topOf(side, run, run.last + 1) - gap - top - 0.4;
  const room = begins ? Math.min(free, Math.max(bottom - top - 0.4, 3 * rowMm)) : bottom - top - 0.4;
  const strip = { x: x + 0.12, width: lane - 0.2, top: top + 0.3, room };
  const size = { most: leastTextMm, least: leastTextMm, weight: 'regular' } as const;
  const word = setDownwards(text, strip, size, side.plan.metrics);
  if (word.fits) marks.push(...word.marks);
  else if (begins)
    side.plan.leftOver.add(`${level.name} ${rowName(from, side.geometry.unit, feet)}: ${text}`);
  return marks;
}

// ---- what the columns say on each row, before anything is drawn

/** What the two columns of a level say, found once for all blocks and pages. */
export interface ColumnEntries {
  /** Of the key column: one a frame; null where nothing changes. */
  readonly signs: readonly (KeySign | null)[];
  /** From one sign to the next, and from one finished number to the next. The first begins with the cut in any case. */
  readonly keyHolds: readonly Hold[];
  readonly celHolds: readonly Hold[];
}

/** Frames on which a column says nothing after the first; both included. */
export interface Hold {
  readonly from: number;
  readonly to: number;
}

export function columnEntries(level: SolvedLevel, convention: Convention): ColumnEntries {
  const signs = keySigns(level, convention);
  const { exposures } = level;
  return {
    signs,
    keyHolds: holdsOf(exposures.length, (frame) => signs[frame - 1] !== null),
    celHolds: holdsOf(exposures.length, (frame) => exposures[frame - 1]!.starts),
  };
}

function holdsOf(length: number, begins: (frame: number) => boolean): Hold[] {
  const holds: Hold[] = [];
  let from = 1;
  for (let frame = 1; frame <= length; frame++) {
    if (frame < length && !begins(frame + 1)) continue;
    holds.push({ from, to: frame });
    from = frame + 1;
  }
  return holds;
}

export type KeySign =
  /** A number in a ring. */
  | { readonly form: 'key'; readonly text: string }
  /** A short stroke: an in-between, in its turn. */
  | { readonly form: 'dash' }
  /** The stroke in round brackets. */
  | { readonly form: 'breakdown' }
  /** A small open ring: an in-between that exists, of another cut or from an earlier pass of a cycle. Nobody draws it here. */
  | { readonly form: 'again' }
  /** The small open ring in round brackets: a breakdown of another cut, where it is first shown. */
  | { readonly form: 'reused breakdown' }
  /** An in-between by its name, as it does not stand in its turn. */
  | { readonly form: 'named'; readonly text: string }
  /** A bare number. */
  | { readonly form: 'number'; readonly text: string }
  /** A number with a stroke under it. */
  | { readonly form: 'underlined'; readonly text: string }
  | { readonly form: 'empty' };

/** One sign a frame; null where nothing changes. */
export function keySigns(level: SolvedLevel, convention: Convention): (KeySign | null)[] {
  const begins = keyBegins(level);
  return convention === 'west'
    ? level.exposures.map((one) => (begins(one.frame) ? westernSign(one) : null))
    : japaneseSigns(level, begins);
}

/**
 * Whether a frame has a sign in the key column: where the level shows something else, and where a cycle opens on a drawing that is
 * held already, so that its first row says what it begins with.
 */
function keyBegins({ exposures, cycles }: SolvedLevel): (frame: number) => boolean {
  const opens = new Set(cycles.map(({ firstFrame }) => firstFrame));
  return (frame) => {
    const { starts, kind } = exposures[frame - 1]!;
    return starts || (kind !== 'empty' && opens.has(frame));
  };
}

function westernSign(exposure: Exposure): KeySign {
  if (exposure.kind === 'empty') return { form: 'empty' };
  const text = String(exposure.cel);
  if (exposure.kind === 'key') return { form: 'key', text };
  return exposure.kind === 'breakdown' ? { form: 'underlined', text } : { form: 'number', text };
}

function japaneseSigns(level: SolvedLevel, begins: (frame: number) => boolean): (KeySign | null)[] {
  const before = predecessors(level);
  const seen = new Map<string, number>();
  const reused = new Set(level.drawings.filter((one) => one.reused).map((one) => one.drawing));
  /** The drawing that the next in-between has to follow to stand in its turn. */
  let last: string | null = null;
  return level.exposures.map((exposure): KeySign | null => {
    const { drawing, kind, frame } = exposure;
    if (!begins(frame)) return null;
    if (drawing === null) {
      last = null;
      return { form: 'empty' };
    }
    const first = seen.get(drawing);
    if (first === undefined) seen.set(drawing, frame);
    if (kind === 'key') {
      last = drawing;
      return { form: 'key', text: drawing };
    }
    const inTurn = last !== null && before.get(drawing) === last;
    const onTheWayBack =
      first !== undefined &&
      level.cycles.some((cycle) => cycle.bounce && cycle.firstFrame <= first && frame <= cycle.lastFrame);
    if (!inTurn && !onTheWayBack) return { form: 'named', text: drawing };
    last = drawing;
    if (exposure.again || onTheWayBack) return { form: 'again' };
    if (reused.has(drawing)) return { form: kind === 'breakdown' ? 'reused breakdown' : 'again' };
    return { form: kind === 'breakdown' ? 'breakdown' : 'dash' };
  });
}

/** Of each in-between the drawing that it follows in its passage. */
function predecessors(level: SolvedLevel): Map<string, string> {
  const before = new Map<string, string>();
  for (const { from, drawings } of level.passages)
    drawings.forEach((drawing, i) => {
      before.set(drawing, drawings[i - 1] ?? from);
    });
  return before;
}

/** What is held on a frame where nothing begins, as it is written after a break (without its square brackets). */
export function heldText(signs: readonly (KeySign | null)[], frame: number): string {
  const sign = signs.slice(0, frame).findLast((one) => one !== null);
  if (!sign) return '';
  switch (sign.form) {
    case 'dash':
      return '–';
    case 'again':
      return '○';
    case 'breakdown':
      return '(–)';
    case 'reused breakdown':
      return '(○)';
    case 'empty':
      return '×';
    default:
      return sign.text;
  }
}
