import type { Ink, Mark } from '../display-list.js';
import { type BlockFrames, type PageSide, topOf } from '../sheet-plan.js';
import {
  type CellSetting,
  cellMark,
  columnMarks,
  emsOf,
  type VerticalCell,
  verticalCells,
} from '../vertical-text.js';
import { placesDown } from './column-places.js';
import { barGap, type SpeechLane, tick } from './speech-lanes.js';
import { type ReadStretch, rowAt } from './word-places.js';

/** One character a row where there are rows enough; else one below the other, each as near to its row as it can be; then in columns from right to left. */
export function verticalStretch(
  side: PageSide,
  run: BlockFrames,
  stretch: ReadStretch,
  lane: SpeechLane,
): Mark[] | null {
  const { plan, geometry } = side;
  const { metrics } = plan;
  const cells = verticalCells(stretch.text, (text) => metrics.width(text, 1, 'regular'));
  const rows = stretch.to - stretch.from + 1;
  const most = Math.max(
    geometry.leastTextMm,
    Math.min((geometry.rowMm - 0.8) / 0.92, lane.wordsWidth * 0.85, 3 * geometry.scale),
  );
  const setting: CellSetting = { sizeMm: most, weight: 'regular', ink: 'light' };
  // On low rows the first and the last character keep off the bars.
  const nudge = Math.max(0, (most * 0.92 + 0.8 - geometry.rowMm) / 2);
  const middle = lane.wordsX + lane.wordsWidth / 2;
  const known = stretch.tied ? cells[0] : undefined;
  const inkOf = (cell: VerticalCell): Ink => (cell === known ? 'black' : 'light');
  const pointer =
    stretch.tied && stretch.from >= run.first && stretch.from <= run.last
      ? [tick(middle - most * 0.6, topOf(side, run, stretch.from) + geometry.rowMm / 2, geometry)]
      : [];
  const placed = framed(cells, stretch).filter(({ frame }) => frame >= run.first && frame <= run.last);
  if (placed.length === 0) return [];
  if (cells.length <= rows && cells.every((cell) => cell.ems <= 1))
    return [
      ...pointer,
      ...placed.flatMap(({ cell, frame }) => {
        const way = frame === stretch.from ? 1 : frame === stretch.to ? -1 : 0;
        const y = topOf(side, run, frame) + geometry.rowMm / 2 + way * nudge;
        const mark = cellMark(cell, middle, y, { ...setting, ink: inkOf(cell) }, metrics);
        return mark ? [mark] : [];
      }),
    ];
  const top = topOf(side, run, Math.max(stretch.from, run.first)) + barGap(geometry) * 2 + 0.1;
  const end = topOf(side, run, Math.min(stretch.to, run.last) + 1) - barGap(geometry) * 2;
  for (let sizeMm = most; sizeMm >= geometry.leastTextMm - 1e-9; sizeMm *= 0.96) {
    const tops = placesDown(
      placed.map(({ cell, frame }, i) => ({
        top: i === 0 ? top : Math.max(top, topOf(side, run, frame) + barGap(geometry)),
        height: cell.ems * sizeMm,
      })),
      end,
    );
    if (!tops) continue;
    const marks = placed.map(({ cell }, i) =>
      cellMark(
        cell,
        middle,
        tops[i]! + (cell.ems * sizeMm) / 2,
        { ...setting, sizeMm, ink: inkOf(cell) },
        metrics,
      ),
    );
    return [...pointer, ...marks.filter((mark) => mark !== null)];
  }
  const room = end - top;
  const here = placed.map(({ cell }) => cell);
  for (let columns = 2; columns * geometry.leastTextMm <= lane.wordsWidth; columns++) {
    const widest = Math.min(most, lane.wordsWidth / columns / 1.08);
    const broken = intoColumns(here, columns, room, widest, geometry.leastTextMm);
    if (!broken) continue;
    const { sizeMm, parts } = broken;
    const pitchX = Math.min(sizeMm * 1.25, lane.wordsWidth / columns);
    const right = middle + ((parts.length - 1) * pitchX) / 2;
    return [
      ...pointer,
      ...parts.flatMap((part, i) => {
        const x = right - i * pitchX;
        const first = part[0] === known ? part.slice(0, 1) : [];
        const rest = part.slice(first.length);
        return [
          ...columnMarks(first, x, top, sizeMm, { ...setting, sizeMm, ink: 'black' }, metrics),
          ...columnMarks(rest, x, top + emsOf(first) * sizeMm, sizeMm, { ...setting, sizeMm }, metrics),
        ];
      }),
    ];
  }
  return null;
}

interface Framed {
  readonly cell: VerticalCell;
  readonly frame: number;
}

/**
 * The row of each cell: where it is spoken, or spread evenly by beats where nobody can say how it is read; what is not heard stands beside
 * its character. Where there are rows enough, no two cells are on one row.
 */
export function framed(cells: readonly VerticalCell[], stretch: ReadStretch): Framed[] {
  const { from, to } = stretch;
  const rows = to - from + 1;
  const all = cells.filter(({ beat }) => beat === 'own').reduce((so, { ems }) => so + ems, 0);
  const at: number[] = [];
  let before = 0;
  let offset = 0;
  for (const { beat, ems, text } of cells) {
    const row = stretch.places
      ? rowAt(stretch, offset) - from
      : Math.floor((before * rows) / Math.max(all, 1));
    const silent = beat === 'before' || (stretch.places && text === '');
    at.push(silent && at.length > 0 ? at.at(-1)! + 1 : beat === 'after' ? row - 1 : row);
    if (beat === 'own') before += ems;
    // A blank has no text in its cell.
    offset += Math.max(1, text.length);
  }
  const height = cells.length <= rows ? 1 : 0;
  let top = 0;
  const wanted = at.map((row) => {
    top = Math.max(top, row);
    return { top, height };
  });
  // The first begins the stretch, so that there is always room.
  const tops = placesDown(wanted, height === 1 ? rows : rows - 1)!;
  return cells.map((cell, i) => ({ cell, frame: from + tops[i]! }));
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
      // A full stop may hang below the column's end.
      const hangs = cell.form === 'raised' && used + 0.5 * sizeMm <= room;
      if (used + cell.ems * sizeMm > room + 1e-6 && used > 0 && !hangs) {
        // What belongs to the character before it takes that along to the next column.
        const last = parts.at(-1)!;
        const along = cell.beat === 'before' && last.length > 1 ? [last.pop()!] : [];
        parts.push(along);
        used = emsOf(along) * sizeMm;
      }
      parts.at(-1)!.push(cell);
      used += cell.ems * sizeMm;
    }
    if (parts.length <= columns) return { sizeMm, parts };
  }
  return null;
}
