/** A plan at its scale, as marks. */

import type { Settings } from '../../shot/settings.js';
import type { SolvedShot } from '../../solve/solved.js';
import type { CameraPageWords } from '../../words/camera-page-words.js';
import { type Box, black, line, pale, polygon, polyline, textAt } from '../draw.js';
import type { Look } from '../look.js';
import type { Mark, Pt, Stroke } from '../marks.js';
import { largerPrint, smallestTextMm } from '../papers.js';
import { type Labels, labelsIn } from './labels.js';
import { holeMark, holes, PEGS } from './pegs.js';
import { inset, type Plan, type PlanField, type Way } from './plan.js';
import { between, boundsOf, type Corners, niceRatio, sides } from './space.js';

/** A plan's window on the page. */
export interface View {
  readonly box: Box;
  /** 1 : n. */
  readonly n: number;
  /** Artwork mm to the page. */
  place(point: Pt): Pt;
}

/** Room left for names around the plan, mm. */
const AROUND = 9;
/** From one pull's arrow to the next, mm on paper. */
const LANE = 6.5;

export function roomAround(plan: Plan, box: Box, settings: Settings): View {
  const points: Pt[] = [
    ...holes(settings).flatMap(({ x, y }): Pt[] => [
      [x - 8, y],
      [x + 8, y + Math.sign(y) * 4],
    ]),
    ...plan.standard,
    ...plan.fields.flatMap((field) => [...field.corners]),
    ...[...plan.sheets, ...plan.least, ...plan.outlines].flatMap(({ corners }) => [...corners]),
    ...plan.ways.flatMap((way) => way.dots.map((dot) => dot.at)),
  ];
  const { left, right, bottom, top } = boundsOf(points);
  const room = { width: box.width - 2 * AROUND, height: box.height - 2 * AROUND };
  const n = niceRatio(right - left, top - bottom, room);
  const cx = box.x + box.width / 2;
  const cy = box.y + box.height / 2;
  return {
    box,
    n,
    place: ([x, y]) => [cx + (x - (left + right) / 2) / n, cy - (y - (bottom + top) / 2) / n],
  };
}

export function drawPlan(
  plan: Plan,
  view: View,
  { shot, camera }: SolvedShot,
  look: Look,
  words: CameraPageWords,
): Mark[] {
  const { place } = view;
  const labels = labelsIn(view.box, look.metrics);
  const small = Math.max(smallestTextMm(look.settings.paper), 2.1 * largerPrint(look.settings.paper));
  const marks: Mark[] = [];
  const path = (corners: Corners, stroke: Stroke): void => {
    const points = corners.map(place);
    for (const side of sides(points)) labels.avoid(side);
    marks.push({ kind: 'path', points, closed: true, stroke, fill: null });
  };

  if (camera.fields.some(({ field }) => field.notation === 'chart'))
    marks.push(...grid(view, shot.settings, labels, small));
  for (const hole of holes(look.settings)) {
    const [x, y] = place([hole.x, hole.y]);
    marks.push(holeMark(hole, place, view.n));
    const r = PEGS.flatMm.width / 2 / view.n;
    labels.avoid([x - r, y, x + r, y]);
  }
  for (const { corners } of plan.sheets) path(corners, { ink: 'grey', widthMm: 0.2 });
  for (const { corners } of plan.least) path(corners, { ink: 'grey', widthMm: 0.25, dash: [0.3, 1] });
  for (const { corners } of plan.outlines) path(corners, { ink: 'black', widthMm: 0.22, dash: [2.4, 1] });

  const onStandard = plan.fields.some((field) => sameCorners(field.corners, plan.standard));
  if (!onStandard) {
    path(plan.standard, { ink: 'grey', widthMm: 0.35, dash: [4, 1.2] });
    if (!plan.standardUsed) marks.push(...crossed(plan.standard, view, labels));
  }
  for (const [from, to] of plan.between)
    for (let i = 0; i < 4; i++) {
      const [x1, y1] = place(from[i]!);
      const [x2, y2] = place(to[i]!);
      marks.push(line(x1, y1, x2, y2, { ink: 'grey', widthMm: 0.15, dash: [0.8, 0.8] }));
      labels.avoid([x1, y1, x2, y2]);
    }
  for (const field of plan.fields) {
    path(field.corners, black(0.4));
    marks.push(...ticksAndCross(field, view, labels));
    if (!field.used) marks.push(...crossed(field.corners, view, labels));
  }
  let lane = 0;
  const ways = plan.ways.map((way) => {
    const shifted = shiftOf(way, view, way.beside ? ++lane : 0);
    marks.push(...wayLine(way, shifted, labels));
    return { way, points: shifted };
  });

  for (const field of plan.fields) nameField(field, view, labels);
  for (const { way, points } of ways) {
    keyNames(way, points, labels, small);
  }
  for (const { way, points } of ways) numbers(way, points, labels, small);
  if (!onStandard) nameOutline(words.standard, plan.standard, view, labels, small, 2);
  const named = [
    ...plan.outlines.map((o) => ({ ...o, text: o.label })),
    ...plan.sheets.map((o) => ({ ...o, text: `${o.label} ${words.sheet}` })),
    ...plan.least.map((o) => ({ ...o, text: `${o.label} ${words.least}` })),
  ];
  for (const { text, corners } of named) nameOutline(text, corners, view, labels, small, 0);
  return [...marks, ...labels.marks];
}

const sameCorners = (a: Corners, b: Corners) =>
  a.every(([x, y], i) => Math.hypot(x - b[i]![0], y - b[i]![1]) < 0.01);

/** Strokes outwards at the corners and a cross at the centre. */
function ticksAndCross(field: PlanField, { place }: View, labels: Labels): Mark[] {
  const marks: Mark[] = [];
  const add = (x1: number, y1: number, x2: number, y2: number, widthMm: number) => {
    marks.push(line(x1, y1, x2, y2, black(widthMm)));
    labels.avoid([x1, y1, x2, y2]);
  };
  const points = field.corners.map(place);
  const unit = (a: Pt, b: Pt): Pt => {
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
    return [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  };
  const across = unit(points[0]!, points[1]!);
  const down = unit(points[0]!, points[3]!);
  points.forEach(([x, y], i) => {
    const sx = i === 0 || i === 3 ? -1 : 1;
    const sy = i < 2 ? -1 : 1;
    add(x, y, x + sx * across[0] * 2.5, y + sx * across[1] * 2.5, 0.4);
    add(x, y, x + sy * down[0] * 2.5, y + sy * down[1] * 2.5, 0.4);
  });
  const [cx, cy] = place(field.centre);
  for (const [ux, uy] of [across, down]) add(cx - ux * 2.5, cy - uy * 2.5, cx + ux * 2.5, cy + uy * 2.5, 0.2);
  return marks;
}

function crossed(corners: Corners, { place }: View, labels: Labels): Mark[] {
  const points = corners.map(place);
  return [
    [0, 2],
    [1, 3],
  ].map(([a, b]) => {
    const [x1, y1] = points[a!]!;
    const [x2, y2] = points[b!]!;
    labels.avoid([x1, y1, x2, y2]);
    return line(x1, y1, x2, y2, { ink: 'black', widthMm: 0.25 });
  });
}

function nameField(field: PlanField, { place }: View, labels: Labels): void {
  const page = field.corners.map(place) as unknown as Corners;
  const places: Pt[] = [];
  for (const mm of [4.5, -5, 9]) for (const corner of [0, 1, 3, 2]) places.push(inset(page, corner, mm));
  labels.put({ text: field.name, sizeMm: 3.6, weight: 'bold', ringed: true, places, must: true });
}

function nameOutline(
  text: string,
  corners: Corners,
  { place }: View,
  labels: Labels,
  sizeMm: number,
  first: number,
): void {
  const page = corners.map(place) as unknown as Corners;
  const places: Pt[] = [];
  // Along the upper and lower edges, inside and outside.
  const away = sizeMm * 0.62 + 0.5;
  for (const off of [away, -away])
    for (const share of [0.18, 0.82, 0.35, 0.65, 0.5])
      for (const edge of [first, (first + 2) % 4]) {
        const [x, y] = between(page[edge]!, page[(edge + 1) % 4]!, share);
        places.push([x, y + (edge === 0 ? off : -off)]);
      }
  labels.put({ text, sizeMm, ink: 'black', places, must: true });
}

/** A way's graduations on the page; pulls stand aside, one below the other, so that each can be read. */
function shiftOf(way: Way, { place }: View, lane: number): Pt[] {
  const points = way.dots.map((dot) => place(dot.at));
  if (lane === 0) return points;
  const [x1, y1] = points[0]!;
  const [x2, y2] = points.at(-1)!;
  const length = Math.hypot(x2 - x1, y2 - y1) || 1;
  let across: Pt = [-(y2 - y1) / length, (x2 - x1) / length];
  if (across[1] < 0 || (across[1] === 0 && across[0] < 0)) across = [-across[0], -across[1]];
  return points.map(([x, y]) => [x + across[0] * lane * LANE, y + across[1] * lane * LANE]);
}

/** Closest that two strokes of graduations are drawn, mm. */
const CLOSEST = 0.45;

function directionAt(points: readonly Pt[], i: number): Pt {
  for (let reach = 1; reach < points.length; reach++) {
    const [x1, y1] = points[Math.max(0, i - reach)]!;
    const [x2, y2] = points[Math.min(points.length - 1, i + reach)]!;
    const length = Math.hypot(x2 - x1, y2 - y1);
    if (length > 0.05) return [(x2 - x1) / length, (y2 - y1) / length];
  }
  return [1, 0];
}

function wayLine(way: Way, points: readonly Pt[], labels: Labels): Mark[] {
  const marks: Mark[] = [];
  const { width, height } = spread(points);
  if (Math.hypot(width, height) < 0.5) return marks;
  marks.push(polyline(points, black(0.3)));
  for (let i = 1; i < points.length; i++) labels.avoid([...points[i - 1]!, ...points[i]!]);
  let last: Pt | null = null;
  points.forEach(([x, y], i) => {
    const { key } = way.dots[i]!;
    if (key) {
      marks.push({ kind: 'circle', x, y, r: 0.8, stroke: black(0.3), fill: null });
      labels.avoid([x - 0.8, y, x + 0.8, y]);
    } else if (!last || Math.hypot(x - last[0], y - last[1]) >= CLOSEST) {
      const [dx, dy] = directionAt(points, i);
      const half = way.ticks ? 1.3 : 0.8;
      marks.push(line(x - dy * half, y + dx * half, x + dy * half, y - dx * half, black(0.15)));
      labels.avoid([x - dy * half, y + dx * half, x + dy * half, y - dx * half]);
    } else return;
    last = [x, y];
  });
  // The arrow head stands before the last ring, clear of it.
  const end = points.at(-1)!;
  const [dx, dy] = directionAt(points, points.length - 1);
  const tip: Pt = [end[0] - dx * 0.9, end[1] - dy * 0.9];
  marks.push(
    polygon(
      [
        tip,
        [tip[0] - dx * 3 - dy * 1, tip[1] - dy * 3 + dx * 1],
        [tip[0] - dx * 3 + dy * 1, tip[1] - dy * 3 - dx * 1],
      ],
      'black',
    ),
  );
  return marks;
}

function spread(points: readonly Pt[]): { width: number; height: number } {
  const { left, right, bottom, top } = boundsOf(points);
  return { width: right - left, height: top - bottom };
}

function sidePlaces([x, y]: Pt, [dx, dy]: Pt, away: readonly number[]): Pt[] {
  return away.flatMap((off): Pt[] => [
    [x + dy * off, y - dx * off],
    [x - dy * off, y + dx * off],
  ]);
}

/** Marks of slides and fairings, and the names of pulled levels, beside their places. */
function keyNames(way: Way, points: readonly Pt[], labels: Labels, sizeMm: number): void {
  way.dots.forEach(({ label, key }, i) => {
    if (!key || label === '' || (way.name === '' && /^[A-Z]/.test(label))) return;
    labels.put({
      text: label,
      sizeMm: sizeMm * 1.3,
      weight: 'bold',
      ringed: true,
      places: sidePlaces(points[i]!, directionAt(points, i), [4.2, 6, 8]),
      must: true,
    });
  });
  const { width, height } = spread(points);
  if (way.name !== '' && Math.hypot(width, height) >= 0.5) {
    const [x, y] = points[0]!;
    const [dx, dy] = directionAt(points, 0);
    const back = way.name.length * sizeMm * 0.4 + 2;
    labels.put({
      text: way.name,
      sizeMm,
      weight: 'bold',
      places: [[x - dx * back, y - dy * back], ...sidePlaces([x, y], [dx, dy], [2.6, 4])],
      must: true,
    });
  }
}

/** Numbers of the graduations beside the path: the key ones first and ringed, then what has room. */
function numbers(way: Way, points: readonly Pt[], labels: Labels, sizeMm: number): void {
  const { width, height } = spread(points);
  if (Math.hypot(width, height) < 0.5) return;
  const put = (i: number, ringed: boolean) =>
    labels.put({
      text: String(way.dots[i]!.number),
      sizeMm,
      ringed,
      places: sidePlaces(points[i]!, directionAt(points, i), ringed ? [3.2, 5] : [2.4]),
    });
  way.dots.forEach(({ key }, i) => {
    if (key) put(i, true);
  });
  const room = Math.hypot(width, height) / Math.max(1, points.length - 1);
  const wide = String(points.length).length * sizeMm * 0.7 + 1.2;
  const stride = [1, 2, 4, 6, 12, 24, 48, 96, 240].find((n) => n * room >= wide) ?? 480;
  way.dots.forEach(({ key, number }, i) => {
    if (!key && number % stride === 0) put(i, false);
  });
}

function grid(view: View, settings: SolvedShot['shot']['settings'], labels: Labels, small: number): Mark[] {
  const { field, fields } = settings;
  const { place } = view;
  const marks: Mark[] = [];
  const hair = pale(0.1);
  for (let i = -fields; i <= fields; i++) {
    const x = (i * field.widthMm) / (2 * fields);
    const y = (i * field.heightMm) / (2 * fields);
    const upright = [place([x, -field.heightMm / 2]), place([x, field.heightMm / 2])] as const;
    const level = [place([-field.widthMm / 2, y]), place([field.widthMm / 2, y])] as const;
    const stroke = i === 0 ? pale(0.3) : hair;
    marks.push(line(...upright[0], ...upright[1], stroke), line(...level[0], ...level[1], stroke));
    if (i % 2 !== 0 || i === 0 || Math.abs(i) === fields) continue;
    const east = `${Math.abs(i)}${i > 0 ? 'E' : 'W'}`;
    const north = `${Math.abs(i)}${i > 0 ? 'N' : 'S'}`;
    const set = (text: string, places: Pt[]) => labels.put({ text, sizeMm: small, ink: 'grey', places });
    const [ux, uy] = upright[0];
    const [lx, ly] = level[0];
    set(east, [
      [ux, uy + 2],
      [upright[1][0], upright[1][1] - 2],
    ]);
    set(north, [
      [lx - 2.6, ly],
      [level[1][0] + 2.6, level[1][1]],
    ]);
  }
  return marks;
}

/** A bar of a round length of artwork, with the ratio. */
export function scaleBar(view: View, body: Box, look: Look, words: CameraPageWords): Mark[] {
  const lengths = [10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10000];
  const mm = lengths.findLast((length) => length / view.n <= 60) ?? 10;
  const long = mm / view.n;
  const x = body.x + 4;
  const y = body.y + body.height - 4;
  const sizeMm = Math.max(smallestTextMm(look.settings.paper), 2.4 * largerPrint(look.settings.paper));
  const marks: Mark[] = [line(x, y, x + long, y, black(0.3))];
  for (let i = 0; i <= 10; i++) {
    const at = x + (long * i) / 10;
    marks.push(line(at, y, at, y - (i % 5 === 0 ? 2 : 1.2), black(0.2)));
  }
  marks.push(
    textAt(x + long + 2, y - 0.8, `${mm} mm`, { sizeMm, anchor: 'start' }),
    textAt(x + long + 24, y - 0.8, `${words.scale} 1:${view.n}`, {
      sizeMm: sizeMm * 1.3,
      weight: 'bold',
      anchor: 'start',
    }),
  );
  return marks;
}
