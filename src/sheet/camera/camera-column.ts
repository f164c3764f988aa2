/**
 * The camera column. Its moves stand in lanes; each has a sign over its rows, a bar at start and end (barGap inside the first
 * row's top edge and the last row's bottom edge), names of places and graduations on their rows, and its own name down the
 * right of its lane.
 */

import type { Mark } from '../display-list.js';
import { type BlockFrames, type PageSide, topOf } from '../sheet-plan.js';
import { type SetDownwards, setDownwards } from '../vertical-text.js';
import type { CameraItem, LaneItem } from './camera-plan.js';
import { arrow, type Lane, laneOf, signMarks } from './camera-signs.js';
import { besideLine, isWideName } from './graduation-labels.js';

export function cameraMarks(side: PageSide, run: BlockFrames): Mark[] {
  if (!run.block.columns.camera) return [];
  return side.plan.camera.placed.flatMap((placed) => {
    const { item } = placed;
    if (item.from > run.last || item.last < run.first) return [];
    const lane = laneOf(side, run, placed.lane);
    if (!lane) {
      side.plan.leftOver.add(side.plan.camera.telling.words.noLane(item.memo));
      return [];
    }
    const beside = besideLine(side, run, placed, lane);
    // The rows of the bar may begin on the next block, with graduation 0 alone on this one.
    if (item.first > run.last) return beside;
    return [
      ...signMarks(side, run, item, lane),
      ...beside,
      ...arrowMarks(side, run, item, lane),
      ...wordMarks(side, run, placed, lane),
    ];
  });
}

/** Whether the strip of words begins with the move's direction. */
const leads = (item: CameraItem): boolean => item.arrows.size > 0;

/** The direction at the head of the strip, on every block; those of later legs on the row below their start. */
function arrowMarks(side: PageSide, run: BlockFrames, item: CameraItem, lane: Lane): Mark[] {
  if (!leads(item)) return [];
  const { rowMm, scale } = side.geometry;
  const first = Math.max(item.first, run.first);
  const [, ...later] = [...item.arrows];
  const degrees = [...item.arrows].filter(([frame]) => frame <= first).at(-1)?.[1] ?? [...item.arrows][0]![1];
  const { strip } = lane;
  const length = Math.min(strip.width * 0.95, rowMm * 0.84, 2.6 * scale);
  const marks = arrow(strip.x + strip.width / 2, topOf(side, run, first) + rowMm / 2, length, degrees);
  if (item.graduated) return marks;
  for (const [frame, turned] of later) {
    const row = frame + 1;
    if (row <= run.first || row > Math.min(run.last, item.last) || item.labels.has(row)) continue;
    marks.push(...arrow(lane.zoneX + length / 2 + 0.3, topOf(side, run, row) + rowMm / 2, length, turned));
  }
  return marks;
}

/** The move's name down its strip; after a break of the page with the page from which it comes. */
function wordMarks(side: PageSide, run: BlockFrames, { item, lane: index }: LaneItem, lane: Lane): Mark[] {
  const { plan, geometry } = side;
  const { placed, telling } = plan.camera;
  const first = Math.max(item.first, run.first);
  const continues = run.first > item.first;
  const page = Math.floor((item.first - 1) / geometry.rowsAPage) + 1;
  const here = Math.floor((first - 1) / geometry.rowsAPage) + 1;
  const from = continues && page !== here ? telling.words.fromPage(page) : '';
  // Words of a short move go on beside the rows below, up to the next move of the lane.
  const next = placed
    .filter((other) => other.lane === index && other.item !== item && other.item.from >= item.last)
    .reduce((least, other) => Math.min(least, other.item.from), run.last + 1);
  const size = {
    most: Math.max(geometry.leastTextMm, Math.min(lane.strip.width * 0.86, 2.3 * geometry.scale)),
    least: geometry.leastTextMm,
    weight: 'bold',
  } as const;
  const begin = first + (leads(item) ? 1 : 0);
  const wide = [...item.labels].filter(([, label]) => isWideName(side, item, label, lane));
  const edges = [...cutEdges(side), ...wide.flatMap(([frame]) => [frame, frame + 1])];
  const gaps = between(edges, begin, Math.min(next, run.last + 1)).filter(
    ([row]) => !wide.some(([frame]) => frame === row),
  );
  for (const name of item.names)
    for (const [a, b] of gaps) {
      const top = topOf(side, run, a) + 0.5;
      const end = topOf(side, run, b) - 0.45;
      const set = fitting(name, top, end);
      if (!set) continue;
      if (from === '') return set.marks;
      const origin = fitting(from, set.end + 0.8, end);
      if (origin) return [...set.marks, ...origin.marks];
    }
  return [];

  function fitting(text: string, top: number, end: number): SetDownwards | null {
    if (end - top <= geometry.leastTextMm) return null;
    const set = setDownwards(text, { ...lane.strip, top, room: end - top }, size, plan.metrics);
    return set.fits ? set : null;
  }
}

/** Frames at whose top edge a rule runs over the whole block. */
function cutEdges(side: PageSide): number[] {
  const { handles, length } = side.plan.solved.shot;
  return [
    ...(handles.head > 0 ? [handles.head + 1] : []),
    ...(handles.tail > 0 ? [length - handles.tail + 1] : []),
  ];
}

/** The stretches of rows from `from` to before `to` that no edge cuts. */
function between(edges: readonly number[], from: number, to: number): [number, number][] {
  const bounds = [from, ...edges.filter((edge) => edge > from && edge < to).sort((a, b) => a - b), to];
  return bounds
    .slice(1)
    .map((end, i): [number, number] => [bounds[i]!, end])
    .filter(([start, end]) => end > start);
}
