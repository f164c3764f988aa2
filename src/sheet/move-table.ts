/**
 * The move table: where camera and levels are, frame by frame.
 *
 * One line a frame, figures to two decimals; frames on which nothing changes any more are one line `25-48`. Columns: frame,
 * time, the camera's x, y, width, percent, field number, rotation and step from the frame before, then x and y (scale in
 * percent and rotation where they change) of each level that moves. Levels that have no room go on on further pages.
 */

import { rowName } from '../shot/time.js';
import type { SolvedShot } from '../solve/solved.js';
import { figure } from '../words/number.js';
import { WORDS } from '../words/words.js';
import { moveKind } from './camera/kinds.js';
import { hasCamera } from './camera-chart.js';
import type { Box } from './draw.js';
import { line, pale, textAt } from './draw.js';
import { fitLine } from './fit.js';
import { unitOf } from './geometry.js';
import type { Look } from './look.js';
import type { Mark, Page } from './marks.js';
import { cached } from './measure.js';
import { pageFrame } from './pages.js';
import { largerPrint, smallestTextMm } from './papers.js';

const decimals = (value: number): string => figure(value, { fixed: true });

interface Column {
  readonly group: string;
  readonly head: string;
  /** Shares of the width. */
  readonly share: number;
  /** The text of a row. */
  readonly of: (row: Run) => string;
}

/** Frames from…to on which all figures are the same. */
interface Run {
  readonly from: number;
  readonly to: number;
}

export function moveTablePages(solved: SolvedShot, given: Look): Page[] {
  const { camera, shot } = solved;
  if (!hasCamera(solved) || camera.moves.length === 0 || shot.length === 0) return [];
  const look = { ...given, metrics: cached(given.metrics) };
  const words = WORDS[look.settings.labels].cameraPages;
  const framed = (n: number, of: number) => pageFrame(shot, look, words.table(n), of);
  const { body } = framed(1, 1);
  const least = smallestTextMm(look.settings.paper);
  const sizeMm = Math.max(least, 2.1 * Math.min(1.2, largerPrint(look.settings.paper)));
  const rowMm = sizeMm * 1.5;
  const narrow = sizeMm * 5.2;

  const times = timeColumns(solved, look);
  const fixed = [...times, ...cameraColumns(solved, look)];
  const levels = levelColumns(solved, look);
  const groups = inGroups(times, fixed, levels, body.width / narrow);
  const runs = runsOf(solved);
  const top = body.y + 2 + rowMm * 3;
  const rowsAPage = Math.max(1, Math.floor((body.y + body.height - top - rowMm * 1.5) / rowMm));
  const parts: { columns: readonly Column[]; runs: readonly Run[] }[] = [];
  for (let at = 0; at < runs.length; at += rowsAPage)
    for (const columns of groups) parts.push({ columns, runs: runs.slice(at, at + rowsAPage) });

  return parts.map(({ columns, runs: shown }, i): Page => {
    const { widthMm, heightMm, marks } = framed(i + 1, parts.length);
    return {
      widthMm,
      heightMm,
      label: `table ${i + 1}`,
      part: 'table',
      form: null,
      marks: [
        ...marks,
        ...tableMarks(
          columns,
          shown,
          { ...body, y: body.y + 2 },
          { sizeMm, rowMm, narrow, least },
          solved,
          look,
        ),
        ...note(words.units, body, look, least),
      ],
      rows: [],
    };
  });
}

function timeColumns({ shot }: SolvedShot, look: Look): Column[] {
  const { columns } = WORDS[look.settings.labels].cameraPages;
  const unit = unitOf(look.settings, shot.fps);
  const west = look.settings.convention === 'west';
  return [
    {
      group: '',
      head: columns.frame,
      share: 1.3,
      of: ({ from, to }) => (from === to ? `${from}` : `${from}-${to}`),
    },
    { group: '', head: columns.time, share: 1, of: ({ from }) => rowName(from, unit, west) },
  ];
}

function cameraColumns({ camera }: SolvedShot, look: Look): Column[] {
  const { columns } = WORDS[look.settings.labels].cameraPages;
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
      const { way } = moveKind(move);
      const [first, second] = graduations;
      if ((way !== 'centre' && way !== 'fields') || start !== 0 || !first || !second) continue;
      x += second.x - first.x;
      y += second.y - first.y;
    }
    return Math.hypot(x, y);
  });
}

const changes = (values: readonly number[]) => values.some((value) => Math.abs(value - values[0]!) > 1e-9);

/** Columns of each level that is not at home throughout. */
function levelColumns({ camera, shot }: SolvedShot, look: Look): Column[][] {
  const { columns } = WORDS[look.settings.labels].cameraPages;
  return shot.levels.flatMap(({ name }): Column[][] => {
    const at = camera.placement.get(name) ?? [];
    if (at.length === 0) return [];
    const of = (value: (p: (typeof at)[number]) => number) => (run: Run) =>
      decimals(value(at[run.from - 1]!));
    const scaled = at.some((p) => p.scale !== 1);
    const turned = at.some((p) => p.rotation !== 0);
    const moved = at.some((p) => Math.abs(p.x) > 1e-9 || Math.abs(p.y) > 1e-9);
    if (!moved && !scaled && !turned) return [];
    return [
      [
        { group: name, head: 'x', share: 1, of: of((p) => p.x) },
        { group: name, head: 'y', share: 1, of: of((p) => p.y) },
        ...(scaled ? [{ group: name, head: columns.scale, share: 1, of: of((p) => p.scale * 100) }] : []),
        ...(turned ? [{ group: name, head: columns.turn, share: 1, of: of((p) => p.rotation) }] : []),
      ],
    ];
  });
}

const sharesOf = (columns: readonly Column[]) => columns.reduce((sum, { share }) => sum + share, 0);

function inGroups(
  times: readonly Column[],
  fixed: readonly Column[],
  levels: readonly Column[][],
  room: number,
): Column[][] {
  const groups: Column[][] = [[...fixed]];
  for (const columns of levels) {
    const last = groups.at(-1)!;
    if (sharesOf(last) + sharesOf(columns) <= room || last.length === times.length) last.push(...columns);
    else groups.push([...times, ...columns]);
  }
  return groups;
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
  readonly narrow: number;
  readonly least: number;
}

function tableMarks(
  columns: readonly Column[],
  runs: readonly Run[],
  box: Box,
  { sizeMm, rowMm, narrow, least }: Sizes,
  { shot }: SolvedShot,
  look: Look,
): Mark[] {
  const marks: Mark[] = [];
  const unitMm = Math.min(narrow * 1.25, box.width / sharesOf(columns));
  const width = unitMm * sharesOf(columns);
  const top = box.y + rowMm * 3;
  const bottom = top + rowMm * runs.length;
  const unit = unitOf(look.settings, shot.fps);
  const set = (text: string, x: number, room: number, y: number, bold: boolean) => {
    const weight = bold ? 'bold' : 'regular';
    const fit = fitLine(look.metrics, text, room, { most: sizeMm, least, weight });
    marks.push(textAt(x, y, text, { sizeMm: fit.sizeMm, squeeze: fit.squeeze, weight, anchor: 'end' }));
  };
  runs.forEach((run, i) => {
    const before = runs[i - 1];
    const newUnit = before && Math.floor((run.from - 1) / unit) !== Math.floor((before.from - 1) / unit);
    const y = top + i * rowMm;
    if (i > 0) marks.push(line(box.x, y, box.x + width, y, pale(newUnit ? 0.45 : i % 6 === 0 ? 0.22 : 0.1)));
  });
  let x = box.x;
  let group = '';
  for (const column of columns) {
    const right = x + column.share * unitMm;
    const opens = column.group !== group || x === box.x;
    group = column.group;
    marks.push(line(x, box.y, x, bottom, pale(opens ? 0.45 : 0.12)));
    if (opens && group !== '') {
      const all = columns.filter((each) => each.group === group);
      const room = sharesOf(all) * unitMm - 2;
      const fit = fitLine(look.metrics, group, room, { most: sizeMm * 1.15, least, weight: 'bold' });
      marks.push(
        textAt(x + 1, box.y + rowMm * 0.75, group, {
          sizeMm: fit.sizeMm,
          squeeze: fit.squeeze,
          weight: 'bold',
          anchor: 'start',
        }),
      );
    }
    const room = right - x - 1.2;
    set(column.head, right - 0.8, room, box.y + rowMm * 2.25, true);
    runs.forEach((run, i) => {
      set(column.of(run), right - 0.8, room, top + (i + 0.5) * rowMm, false);
    });
    x = right;
  }
  marks.push(
    line(x, box.y, x, bottom, pale(0.45)),
    line(box.x, box.y, x, box.y, pale(0.45)),
    line(box.x, box.y + rowMm * 1.5, x, box.y + rowMm * 1.5, pale(0.12)),
    line(box.x, top, x, top, pale(0.45)),
    line(box.x, bottom, x, bottom, pale(0.45)),
  );
  return marks;
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
