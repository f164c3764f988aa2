/**
 * The move table: where camera and levels are, frame by frame.
 *
 * One line a frame, figures to two decimals; frames on which nothing changes any more are one line `25-48`. Columns: frame,
 * time, the camera's x, y, width, percent, field number, rotation and step from the frame before, then x and y (scale in
 * percent and rotation where they change) of each level that moves. Levels that have no room go on on further pages.
 */

import { inProportion } from '../layout/column-widths.js';
import { layTable, type TableSet } from '../layout/table.js';
import { kindOf } from '../shot/camera/move-facts.js';
import { rowName } from '../shot/time.js';
import type { SolvedShot } from '../solve/solved.js';
import { figure } from '../words/number.js';
import { wordsOf } from '../words/words.js';
import { hasCamera } from './camera-chart.js';
import type { Box } from './draw.js';
import { line, pale, textAt } from './draw.js';
import { fitLine } from './fit.js';
import { unitOf } from './geometry.js';
import type { Look } from './look.js';
import type { Mark, Page } from './marks.js';
import { cached } from './measure.js';
import { pageFrame } from './page-frame.js';
import { largerPrint, smallestTextMm } from './papers.js';
import { type PaperColumn, tableMarks } from './table-marks.js';

const decimals = (value: number): string => figure(value, { zeros: 'always' });

interface FigureColumn extends PaperColumn {
  readonly head: string;
}

/** A column before it is known how large the print is. */
interface Figures {
  readonly group?: string;
  readonly head: string;
  /** Of the width, for 1 the width of a figure of four digits and two decimals. */
  readonly share: number;
  /** The text of a row. */
  readonly of: (row: Run) => string;
}

/** Frames from…to on which all figures are the same. */
interface Run {
  readonly from: number;
  readonly to: number;
}

/** Ems of a column of share 1 where there is little room, and how many times as wide it may be. */
const NARROW = 5.2;
const WIDE = 1.25;

export function moveTablePages(solved: SolvedShot, given: Look): Page[] {
  const { camera, shot } = solved;
  if (!hasCamera(solved) || camera.moves.length === 0 || shot.length === 0) return [];
  const look = { ...given, metrics: cached(given.metrics) };
  const words = wordsOf(look.settings).cameraPages;
  const framed = (n: number, of: number) => pageFrame(shot, look, words.table(n), of);
  const { body } = framed(1, 1);
  const least = smallestTextMm(look.settings.paper);
  const sizeMm = Math.max(least, 2.1 * Math.min(1.2, largerPrint(look.settings.paper)));
  const rowMm = sizeMm * 1.5;
  const runs = runsOf(solved);
  const times = timeColumns(solved, look);
  const columns = [...times, ...cameraColumns(solved, look), ...levelColumns(solved, look)];
  const { pages } = layTable({
    columns: columns.map(({ share, of, ...column }): FigureColumn => {
      const narrow = share * sizeMm * NARROW;
      const cells = () => runs.map((run) => [of(run)]);
      return { ...column, align: 'end', least: narrow, wanted: narrow * WIDE, cells };
    }),
    names: times.length,
    rows: runs.length,
    rowHeight: () => rowMm,
    headHeight: rowMm * 3,
    sharing: inProportion,
    area: { ...body, y: body.y + 2, height: body.height - 2 - rowMm * 1.5 },
  })!;
  return pages.map(({ sets }, i): Page => {
    const { widthMm, heightMm, marks } = framed(i + 1, pages.length);
    return {
      widthMm,
      heightMm,
      label: `table ${i + 1}`,
      part: 'table',
      form: null,
      marks: [
        ...marks,
        ...sets.flatMap((set) => figureMarks(set, runs, { sizeMm, rowMm, least }, solved, look)),
        ...note(words.units, body, look, least),
      ],
      rows: [],
    };
  });
}

function timeColumns({ shot }: SolvedShot, look: Look): Figures[] {
  const { columns } = wordsOf(look.settings).cameraPages;
  const unit = unitOf(look.settings, shot.fps);
  const west = look.settings.convention === 'west';
  return [
    {
      head: columns.frame,
      share: 1.3,
      of: ({ from, to }) => (from === to ? `${from}` : `${from}-${to}`),
    },
    { head: columns.time, share: 1, of: ({ from }) => rowName(from, unit, west) },
  ];
}

function cameraColumns({ camera }: SolvedShot, look: Look): Figures[] {
  const { columns } = wordsOf(look.settings).cameraPages;
  const group = columns.camera;
  const at = (of: (frame: (typeof camera.frames)[number]) => number) => (run: Run) =>
    decimals(of(camera.frames[run.from - 1]!));
  const steps = stepsOf(camera);
  return [
    { group, head: 'x', share: 1, of: at((f) => f.x) },
    { group, head: 'y', share: 1, of: at((f) => f.y) },
    { group, head: columns.width, share: 1, of: at((f) => f.width) },
    { group, head: '%', share: 1, of: at((f) => f.percent) },
    { group, head: columns.field, share: 0.8, of: at((f) => f.field) },
    { group, head: columns.turn, share: 0.9, of: at((f) => f.rotation) },
    { group, head: columns.step, share: 0.9, of: (run) => decimals(steps[run.from - 1]!) },
  ];
}

/** Way of the camera's centre from the frame before, mm; on frame 1 from where a move that begins with it leaves. */
export function stepsOf({ frames, moves }: SolvedShot['camera']): number[] {
  return frames.map((frame, i) => {
    const before = frames[i - 1];
    if (before) return Math.hypot(frame.x - before.x, frame.y - before.y);
    let [x, y] = [0, 0];
    for (const { move, start, graduations } of moves) {
      const { line: drawn } = kindOf(move);
      const [first, second] = graduations;
      if ((drawn !== 'centre' && drawn !== 'fields') || start !== 0 || !first || !second) continue;
      x += second.x - first.x;
      y += second.y - first.y;
    }
    return Math.hypot(x, y);
  });
}

const changes = (values: readonly number[]) => values.some((value) => Math.abs(value - values[0]!) > 1e-9);

/** Columns of each level that is not at home throughout. */
function levelColumns({ camera, shot }: SolvedShot, look: Look): Figures[] {
  const { columns } = wordsOf(look.settings).cameraPages;
  return shot.levels.flatMap(({ name }): Figures[] => {
    const at = camera.placement.get(name) ?? [];
    if (at.length === 0) return [];
    const of = (value: (p: (typeof at)[number]) => number) => (run: Run) =>
      decimals(value(at[run.from - 1]!));
    const scaled = at.some((p) => p.scale !== 1);
    const turned = at.some((p) => p.rotation !== 0);
    const moved = at.some((p) => Math.abs(p.x) > 1e-9 || Math.abs(p.y) > 1e-9);
    if (!moved && !scaled && !turned) return [];
    return [
      { group: name, head: 'x', share: 1, of: of((p) => p.x) },
      { group: name, head: 'y', share: 1, of: of((p) => p.y) },
      ...(scaled ? [{ group: name, head: columns.scale, share: 1, of: of((p) => p.scale * 100) }] : []),
      ...(turned ? [{ group: name, head: columns.turn, share: 1, of: of((p) => p.rotation) }] : []),
    ];
  });
}

/** Frames one by one, except where nothing changes for three frames or more. */
function runsOf({ camera, shot }: SolvedShot): Run[] {
  const placements = [...camera.placement.values()];
  const still = (f: number): boolean => {
    const a = camera.frames[f - 1]!;
    const b = camera.frames[f]!;
    if (changes([a.x, b.x]) || changes([a.y, b.y]) || changes([a.width, b.width])) return false;
    if (changes([a.rotation, b.rotation])) return false;
    return placements.every((at) => {
      const [p, q] = [at[f - 1], at[f]];
      if (!p || !q) return true;
      return p.x === q.x && p.y === q.y && p.scale === q.scale && p.rotation === q.rotation;
    });
  };
  const moving = stepsOf(camera);
  const runs: Run[] = [];
  for (let from = 1; from <= shot.length; ) {
    let to = from;
    while (to < shot.length && still(to)) to++;
    // The first frame of a hold has a step of its own.
    if (to > from && moving[from - 1]! > 0) {
      runs.push({ from, to: from });
      from++;
    }
    if (to - from >= 2) runs.push({ from, to });
    else for (let f = from; f <= to; f++) runs.push({ from: f, to: f });
    from = to + 1;
  }
  return runs;
}

interface Sizes {
  readonly sizeMm: number;
  readonly rowMm: number;
  readonly least: number;
}

function figureMarks(
  set: TableSet<FigureColumn>,
  runs: readonly Run[],
  { sizeMm, rowMm, least }: Sizes,
  { shot }: SolvedShot,
  look: Look,
): Mark[] {
  const { metrics } = look;
  const unit = unitOf(look.settings, shot.fps);
  const unitAt = (row: number): number => Math.floor((runs[row]!.from - 1) / unit);
  const opens = (i: number): boolean =>
    i === 0 || set.columns[i]!.column.group !== set.columns[i - 1]!.column.group;
  const across = set.y + rowMm * 1.5;
  return [
    ...tableMarks(set, {
      metrics,
      sizeMm,
      rowMm,
      leadingMm: rowMm,
      inset: [0.4, 0.8],
      least,
      bold: () => false,
      head: ({ head }, { x, y, width }) => {
        const fit = fitLine(metrics, head, width - 1.2, { most: sizeMm, least, weight: 'bold' });
        return [textAt(x + width - 0.8, y + rowMm * 2.25, head, { ...fit, weight: 'bold', anchor: 'end' })];
      },
      headRule: pale(0.45),
      ruleUnder: (row, index, last) =>
        pale(last || unitAt(row) !== unitAt(row + 1) ? 0.45 : (index + 1) % 6 === 0 ? 0.22 : 0.1),
      upright: (_, i) => pale(opens(i) ? 0.45 : 0.12),
      edge: pale(0.45),
    }),
    ...set.groups.map(({ name, x, width }) => {
      const fit = fitLine(metrics, name, width - 2, { most: sizeMm * 1.15, least, weight: 'bold' });
      return textAt(x + 1, set.y + rowMm * 0.75, name, { ...fit, weight: 'bold', anchor: 'start' });
    }),
    line(set.x, across, set.x + set.width, across, pale(0.12)),
  ];
}

function note(text: string, body: Box, look: Look, least: number): Mark[] {
  const fit = fitLine(look.metrics, text, body.width, { most: Math.max(least, 1.9), least });
  return [
    textAt(body.x, body.y + body.height - 2, text, {
      sizeMm: fit.sizeMm,
      squeeze: fit.squeeze,
      anchor: 'start',
    }),
  ];
}
