/** The dialogue column: speaker, words on their rows, bars at start and end; sounds and music told apart from voices. */

import type { Spoken } from '../../shot/shot.js';
import { black, line, polyline, textAt } from '../draw.js';
import { fitLine, isWide, wrap } from '../fit.js';
import type { Mark } from '../marks.js';
import type { Run, Side } from '../plan.js';
import { topOf } from '../plan.js';
import { rowName } from '../times.js';
import { beats, spreadWords } from './latin.js';
import type { PlacedSpoken, Stretch } from './plan.js';
import { stretches, wholeText } from './plan.js';
import type { CellSetting, VerticalCell } from './vertical.js';
import { cellMark, columnMarks, emsOf, verticalCells } from './vertical.js';

/** Where a line of dialogue stands in its column. */
interface Lane {
  readonly x: number;
  readonly width: number;
  /** Left part, for who speaks. */
  readonly stripX: number;
  readonly stripWidth: number;
  /** Right part, for the words. */
  readonly wordsX: number;
  readonly wordsWidth: number;
}

const BAR = black(0.38);
/** Bars stand off their row's edge, so that one line's end and the next one's start are two bars. */
const BAR_GAP = 0.22;

export function speechMarks(side: Side, run: Run): Mark[] {
  if (run.last < run.first) return [];
  return side.plan.speech.placed.flatMap((placed) => {
    const { from, to } = placed.spoken.frames;
    return from > run.last || to < run.first ? [] : lineMarks(side, run, placed);
  });
}

/** A line as the memo tells it, with its first row. */
export function spokenInMemo(side: Pick<Side, 'plan' | 'geometry'>, spoken: Spoken): string {
  const { words, convention } = side.plan;
  const row = (frame: number): string => rowName(frame, side.geometry.unit, convention === 'west');
  const who = speakerText(spoken, words);
  return `${row(spoken.frames.from)}–${row(spoken.frames.to)} ${who}: ${wholeText(spoken)}`;
}

function speakerText(spoken: Spoken, words: Side['plan']['words']): string {
  if (spoken.kind === 'sound') return words.sound;
  if (spoken.kind === 'music') return words.music;
  const manner = { on: '', off: words.off, mono: words.mono }[spoken.manner];
  return [spoken.speaker, manner].filter((text) => text !== '').join(' ');
}

function laneOf(side: Side, run: Run, lane: number): Lane {
  const column = run.block.columns.dialogue!;
  const width = column.width / side.plan.speech.lanes;
  const x = column.x + lane * width;
  const stripWidth = Math.max(
    side.geometry.leastTextMm * 1.2,
    Math.min(width * 0.3, 2.5 * side.geometry.scale),
  );
  const stripX = x + 0.55;
  const wordsX = stripX + stripWidth;
  return { x, width, stripX, stripWidth, wordsX, wordsWidth: x + width - 0.35 - wordsX };
}

function lineMarks(side: Side, run: Run, { spoken, lane: index }: PlacedSpoken): Mark[] {
  const lane = laneOf(side, run, index);
  const from = Math.max(spoken.frames.from, run.first);
  const to = Math.min(spoken.frames.to, run.last);
  const top = topOf(side, run, from);
  const bottom = topOf(side, run, to + 1);
  const starts = from === spoken.frames.from;
  const ends = to === spoken.frames.to;
  const left = lane.x + 0.35;
  const right = lane.x + lane.width - 0.35;
  const marks: Mark[] = [];
  if (starts) marks.push(line(left, top + BAR_GAP, right, top + BAR_GAP, BAR));
  if (ends) marks.push(line(left, bottom - BAR_GAP, right, bottom - BAR_GAP, BAR));
  marks.push(...edge(spoken, left, top + (starts ? BAR_GAP : 0), bottom - (ends ? BAR_GAP : 0)));
  marks.push(...speaker(side, run, spoken, index, lane, from, starts));
  marks.push(...wordMarks(side, run, spoken, lane));
  return marks;
}

/** The line down the rows: plain for a voice, a zigzag for a sound, double for music. */
function edge(spoken: Spoken, x: number, top: number, bottom: number): Mark[] {
  const thin = black(0.16);
  if (spoken.kind === 'voice') return [line(x, top, x, bottom, thin)];
  if (spoken.kind === 'music')
    return [line(x, top, x, bottom, thin), line(x + 0.4, top, x + 0.4, bottom, thin)];
  const points: [number, number][] = [];
  const steps = Math.max(2, Math.round((bottom - top) / 0.9));
  for (let i = 0; i <= steps; i++) points.push([x + (i % 2) * 0.45, top + ((bottom - top) * i) / steps]);
  return [polyline(points, thin)];
}

/** Who speaks, down the left of the lane; in brackets where the line began before. */
function speaker(
  side: Side,
  run: Run,
  spoken: Spoken,
  index: number,
  lane: Lane,
  from: number,
  starts: boolean,
): Mark[] {
  const { plan, geometry } = side;
  const said = speakerText(spoken, plan.words);
  if (said === '') return [];
  const text = starts ? said : `(${said})`;
  const next = plan.speech.placed
    .filter((other) => other.lane === index && other.spoken.frames.from > spoken.frames.from)
    .reduce((least, other) => Math.min(least, other.spoken.frames.from), run.last + 1);
  const top = topOf(side, run, from) + 0.7;
  const room = topOf(side, run, Math.min(next, run.last + 1)) - top - 0.4;
  const x = lane.stripX + lane.stripWidth / 2;
  const most = Math.max(geometry.leastTextMm, Math.min(lane.stripWidth * 0.8, 2.2 * geometry.scale));
  const least = geometry.leastTextMm;
  if ([...text].some(isWide)) {
    const cells = verticalCells(text, (one) => plan.metrics.width(one, 1, 'bold'));
    const sizeMm = Math.max(least, Math.min(most, room / emsOf(cells)));
    if (sizeMm * emsOf(cells) > room * 1.02) plan.leftOver.add(spokenInMemo(side, spoken));
    const pitch = Math.min(sizeMm * 1.02, room / emsOf(cells));
    return columnMarks(cells, x, top, pitch, { sizeMm, weight: 'bold', ink: 'black' }, plan.metrics);
  }
  const { sizeMm, squeeze, fits } = fitLine(plan.metrics, text, room, { most, least, weight: 'bold' });
  if (!fits) plan.leftOver.add(spokenInMemo(side, spoken));
  const length = plan.metrics.width(text, sizeMm, 'bold') * squeeze;
  return [textAt(x, top + length / 2, text, { sizeMm, weight: 'bold', turn: 90, squeeze })];
}

function wordMarks(side: Side, run: Run, spoken: Spoken, lane: Lane): Mark[] {
  const all = stretches(spoken);
  const upright = all.some((stretch) => [...stretch.text].some(isWide));
  const set = upright
    ? all.map((stretch) => verticalStretch(side, run, stretch, lane))
    : levelStretches(side, run, all, lane);
  if (set.every((marks) => marks !== null)) return set.flat();
  side.plan.leftOver.add(spokenInMemo(side, spoken));
  const from = Math.max(spoken.frames.from, run.first);
  const to = Math.min(spoken.frames.to, run.last);
  const top = topOf(side, run, from);
  const room = topOf(side, run, to + 1) - top - 1;
  const text = side.plan.words.inMemo;
  const { leastTextMm: sizeMm } = side.geometry;
  const squeeze = Math.max(0.62, Math.min(1, room / side.plan.metrics.width(text, sizeMm, 'regular')));
  const x = lane.wordsX + lane.wordsWidth / 2;
  return [textAt(x, top + Math.max(room / 2, 1), text, { sizeMm, turn: 90, squeeze })];
}

// ---- level scripts

function levelStretches(side: Side, run: Run, all: readonly Stretch[], lane: Lane): (Mark[] | null)[] {
  const { plan, geometry } = side;
  const most = Math.max(geometry.leastTextMm, Math.min(geometry.rowMm * 0.72, 2.5 * geometry.scale));
  const least = geometry.leastTextMm;
  const spread = all.map((stretch) =>
    spreadWords(stretch.text, stretch.to - stretch.from + 1, lane.wordsWidth, { most, least }, plan.metrics),
  );
  const fitting = spread.filter((one) => one !== null);
  const sizeMm = Math.min(most, ...fitting.map((one) => one.sizeMm));
  return all.map((stretch, i) => {
    const words = spread[i];
    if (!words) return turnedStretch(side, run, stretch, lane, { most, least });
    return words.rows.flatMap(({ row, text }): Mark[] => {
      const frame = stretch.from + row;
      if (frame < run.first || frame > run.last) return [];
      const squeeze = Math.min(1, lane.wordsWidth / plan.metrics.width(text, sizeMm, 'regular'));
      const y = topOf(side, run, frame) + geometry.rowMm / 2;
      return [textAt(lane.wordsX + lane.wordsWidth / 2, y, text, { sizeMm, squeeze })];
    });
  });
}

/** More words than rows: set on their side, in as many lines as the lane holds. */
function turnedStretch(
  side: Side,
  run: Run,
  stretch: Stretch,
  lane: Lane,
  { most, least }: { most: number; least: number },
): Mark[] | null {
  const { plan } = side;
  const text = partOn(run, stretch);
  if (text === '') return [];
  const top = topOf(side, run, Math.max(stretch.from, run.first)) + 0.5;
  const room = topOf(side, run, Math.min(stretch.to, run.last) + 1) - 0.5 - top;
  for (let sizeMm = most; ; sizeMm = Math.max(least, sizeMm * 0.92)) {
    const pitch = sizeMm * 1.12;
    const lines = wrap(plan.metrics, text, room / 0.85, sizeMm);
    if ((lines.length - 1) * pitch + sizeMm <= lane.wordsWidth) {
      const middle = lane.wordsX + lane.wordsWidth / 2 + ((lines.length - 1) * pitch) / 2;
      return lines.map((one, i) => {
        const squeeze = Math.min(1, room / plan.metrics.width(one, sizeMm, 'regular'));
        return textAt(middle - i * pitch, top, one, { sizeMm, turn: 90, anchor: 'start', squeeze });
      });
    }
    if (sizeMm === least) return null;
  }
}

/** The words of a stretch whose beats fall on the rows of a run. */
function partOn(run: Run, stretch: Stretch): string {
  const words = stretch.text.split(' ');
  const all = words.reduce((so, word) => so + beats(word), 0);
  const rows = stretch.to - stretch.from + 1;
  let before = 0;
  return words
    .filter((word) => {
      const frame = stretch.from + Math.floor((rows * before) / all);
      before += beats(word);
      return frame >= run.first && frame <= run.last;
    })
    .join(' ');
}

// ---- Japanese

/** One character a row where there are rows enough; else closer, then in several columns from right to left. */
function verticalStretch(side: Side, run: Run, stretch: Stretch, lane: Lane): Mark[] | null {
  const { plan, geometry } = side;
  const { metrics } = plan;
  const cells = verticalCells(stretch.text, (text) => metrics.width(text, 1, 'regular'));
  const rows = stretch.to - stretch.from + 1;
  const ems = emsOf(cells);
  const most = Math.max(
    geometry.leastTextMm,
    Math.min(geometry.rowMm * 0.9, lane.wordsWidth * 0.85, 3 * geometry.scale),
  );
  const setting: CellSetting = { sizeMm: most, weight: 'regular', ink: 'black' };
  const placed = framed(cells, stretch, rows, ems).filter(
    ({ frame }) => frame >= run.first && frame <= run.last,
  );
  if (placed.length === 0) return [];
  const middle = lane.wordsX + lane.wordsWidth / 2;
  if (ems <= rows && cells.every((cell) => cell.ems <= 1))
    return placed.flatMap(({ cell, frame }) => {
      const y = topOf(side, run, frame) + geometry.rowMm / 2;
      const mark = cellMark(cell, middle, y, setting, metrics);
      return mark ? [mark] : [];
    });
  const top = topOf(side, run, Math.max(stretch.from, run.first)) + BAR_GAP * 2;
  const room = topOf(side, run, Math.min(stretch.to, run.last) + 1) - BAR_GAP * 2 - top;
  const here = placed.map(({ cell }) => cell);
  for (let columns = 1; columns * geometry.leastTextMm <= lane.wordsWidth; columns++) {
    const widest = Math.min(most, lane.wordsWidth / columns / 1.08);
    const broken = intoColumns(here, columns, room, widest, geometry.leastTextMm);
    if (!broken) continue;
    const { sizeMm, parts } = broken;
    const pitchX = Math.min(sizeMm * 1.25, lane.wordsWidth / columns);
    const right = middle + ((parts.length - 1) * pitchX) / 2;
    return parts.flatMap((part, i) => {
      const pitch = parts.length === 1 ? Math.min(room / emsOf(part), geometry.rowMm) : sizeMm * 1.02;
      return columnMarks(part, right - i * pitchX, top, pitch, { ...setting, sizeMm }, metrics);
    });
  }
  return null;
}

function framed(
  cells: readonly VerticalCell[],
  stretch: Stretch,
  rows: number,
  ems: number,
): { cell: VerticalCell; frame: number }[] {
  let before = 0;
  return cells.map((cell) => {
    const frame = stretch.from + Math.min(rows - 1, Math.floor((before * rows) / Math.max(ems, 1)));
    before += cell.ems;
    return { cell, frame };
  });
}

function intoColumns(
  cells: readonly VerticalCell[],
  columns: number,
  room: number,
  most: number,
  least: number,
): { sizeMm: number; parts: VerticalCell[][] } | null {
  const ems = emsOf(cells);
  for (let sizeMm = Math.min(most, (room * columns) / ems); sizeMm >= least - 1e-9; sizeMm *= 0.96) {
    const parts: VerticalCell[][] = [[]];
    let used = 0;
    for (const cell of cells) {
      if (used + cell.ems * sizeMm > room + 1e-6 && used > 0) {
        parts.push([]);
        used = 0;
      }
      parts.at(-1)!.push(cell);
      used += cell.ems * sizeMm;
    }
    if (parts.length <= columns) return { sizeMm, parts };
  }
  return null;
}
