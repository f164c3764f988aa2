/** A panel of the camera chart at its scale, as marks. */

import type { Mark, Pt, Stroke } from '../display-list.js';
import { type Box, black, line, pale, polygon, polyline } from '../mark-builders.js';
import { between, type Corners, holeMark, holes, inset, PEGS, type Segment, sides } from './artwork-plane.js';
import { type Labels, labelsIn } from './chart-labels.js';
import {
  type ChartPanel,
  type PanelField,
  type PanelOutline,
  type PanelWay,
  panelBounds,
  type WayPoint,
} from './chart-panels.js';
import type { ChartTexts } from './chart-texts.js';

/** A panel's window on the page. */
export interface View {
  readonly box: Box;
  /** 1 : n. */
  readonly n: number;
  /** Artwork mm to the page. */
  place(point: Pt): Pt;
}

/** The middle of the artwork in the middle of the box. */
export function viewOf(panel: ChartPanel, box: Box, n: number): View {
  const { left, right, bottom, top } = panelBounds(panel);
  const cx = box.x + box.width / 2;
  const cy = box.y + box.height / 2;
  return {
    box,
    n,
    place: ([x, y]) => [cx + (x - (left + right) / 2) / n, cy - (y - (bottom + top) / 2) / n],
  };
}

export function drawPanel(panel: ChartPanel, view: View, texts: ChartTexts): Mark[] {
  const { place } = view;
  const labels = labelsIn(view.box, texts.look.metrics);
  const marks: Mark[] = [];
  const path = (corners: Corners, stroke: Stroke): void => {
    const points = corners.map(place);
    for (const side of sides(points)) labels.avoid(side);
    marks.push({ kind: 'path', points, closed: true, stroke, fill: null });
  };
  if (panel.levels === null) {
    if (texts.chartLines) marks.push(...grid(view, texts, labels));
    for (const hole of holes(texts.look.settings)) {
      const [x, y] = place([hole.x, hole.y]);
      if (!inside(view.box, [x, y])) continue;
      marks.push(holeMark(hole, place, view.n));
      const r = PEGS.flatMm.width / 2 / view.n;
      labels.avoid([x - r, y, x + r, y]);
    }
  }
  for (const outline of panel.outlines) path(outline.corners, OUTLINES[outline.is]);
  for (const [from, to] of panel.between)
    for (let i = 0; i < 4; i++) {
      const [x1, y1] = place(from[i]!);
      const [x2, y2] = place(to[i]!);
      marks.push(line(x1, y1, x2, y2, { ink: 'grey', widthMm: 0.15, dash: [0.8, 0.8] }));
      labels.avoid([x1, y1, x2, y2]);
    }
  for (const field of panel.fields) {
    path(field.corners, field.bare ? STANDARD : black(field.used ? 0.4 : UNUSED_MM));
    if (!field.bare) marks.push(...cornersAndCentre(field, view, labels));
    if (!field.used && !field.gives) marks.push(...crossedOut(field, view, labels));
  }
  const ways = panel.ways.map((way) => {
    const points = way.points.map(({ at }) => place(at));
    const drawn = (way.line ?? way.points.map(({ at }) => at)).map(place);
    marks.push(...wayMarks(way, points, drawn, labels, texts), ...passedMarks(way, view, labels));
    return { way, points };
  });
  for (const pivot of panel.pivots) marks.push(...pivotCross(place(pivot), labels));
  for (const field of panel.fields) nameField(field, view, labels, texts);
  for (const { way, points } of ways) namePlaces(way, points, labels, texts);
  for (const { way } of ways) namePassed(way, view, labels, texts);
  for (const { way, points } of ways) nameRows(way, points, labels, texts);
  for (const { way, points } of ways) nameKeys(way, points, labels, texts);
  for (const outline of panel.outlines) nameOutline(outline, view, labels, texts);
  return [...marks, ...labels.marks];
}

/** Width of the outline of a field on which the camera never stands, mm. */
const UNUSED_MM = 0.2;

const STANDARD: Stroke = { ink: 'grey', widthMm: 0.35, dash: [4, 1.2] };

const OUTLINES: { readonly [I in PanelOutline['is']]: Stroke } = {
  sheet: { ink: 'grey', widthMm: 0.2 },
  needed: { ink: 'grey', widthMm: 0.25, dash: [0.3, 1] },
  start: { ink: 'black', widthMm: 0.22, dash: [2.4, 1] },
  end: { ink: 'black', widthMm: 0.22, dash: [1, 1] },
};

const inside = ({ x, y, width, height }: Box, [px, py]: Pt) =>
  px >= x && px <= x + width && py >= y && py <= y + height;

const unit = (a: Pt, b: Pt): Pt => {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  return [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
};

/** Strokes outwards at the corners and a cross at the centre. */
function cornersAndCentre(field: PanelField, { place }: View, labels: Labels): Mark[] {
  const marks: Mark[] = [];
  const add = (x1: number, y1: number, x2: number, y2: number, widthMm: number) => {
    marks.push(line(x1, y1, x2, y2, black(widthMm)));
    labels.avoid([x1, y1, x2, y2]);
  };
  const points = field.corners.map(place);
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

/** Half the length of the strokes of the ringed cross about which a level is turned or scaled, mm on paper. */
const PIVOT = 2;

function pivotCross([x, y]: Pt, labels: Labels): Mark[] {
  const segments: readonly Segment[] = [
    [x - PIVOT, y, x + PIVOT, y],
    [x, y - PIVOT, x, y + PIVOT],
  ];
  for (const segment of segments) labels.avoid(segment);
  const ring: Mark = { kind: 'circle', x, y, r: PIVOT / 2, stroke: black(0.3), fill: null };
  return [...segments.map((segment) => line(...segment, black(0.3))), ring];
}

/** Half the width of the cross over a corner of a field that is not used, mm on paper. */
const CROSS = 3;

/** A cross over each corner: no line runs through a field that is used inside. */
function crossedOut({ corners }: PanelField, { place }: View, labels: Labels): Mark[] {
  const stroke: Stroke = { ink: 'black', widthMm: 0.3 };
  return corners.map(place).flatMap(([x, y]) =>
    [1, -1].map((way) => {
      labels.avoid([x - CROSS, y - way * CROSS, x + CROSS, y + way * CROSS]);
      return line(x - CROSS, y - way * CROSS, x + CROSS, y + way * CROSS, stroke);
    }),
  );
}

/** Closest that two strokes of graduations are drawn, mm. */
export const CLOSEST = 0.8;
/** What sums of steps may fall short of it by rounding: an even move is thinned evenly. */
const ROUNDING_MM = 1e-6;

/**
 * Of every how many graduations one is drawn, at each of them: 1, 2, 4 … so that strokes stay apart. `gaps`: from each to the
 * next, mm on paper.
 */
export function thinning(gaps: readonly number[]): number[] {
  const mean = (i: number, reach: number): number => {
    const near = gaps.slice(Math.max(0, i - reach), i + reach);
    return near.length === 0 ? Infinity : near.reduce((sum, gap) => sum + gap, 0) / near.length;
  };
  return Array.from({ length: gaps.length + 1 }, (_, i) => {
    let stride = 1;
    while (stride < 1024 && mean(i, stride) * stride < CLOSEST - ROUNDING_MM) stride *= 2;
    return stride;
  });
}

const gapsOf = (points: readonly Pt[]): number[] =>
  points.slice(1).map(([x, y], i) => Math.hypot(x - points[i]![0], y - points[i]![1]));

const lengthOf = (points: readonly Pt[]): number => gapsOf(points).reduce((sum, gap) => sum + gap, 0);

/** A way shorter than this on paper is a point. */
const A_POINT = 0.5;

export function directionAt(points: readonly Pt[], i: number): Pt {
  for (let reach = 1; reach < points.length; reach++) {
    const a = points[Math.max(0, i - reach)]!;
    const b = points[Math.min(points.length - 1, i + reach)]!;
    if (Math.hypot(b[0] - a[0], b[1] - a[1]) > 0.05) return unit(a, b);
  }
  return [1, 0];
}

const isEnd = (way: PanelWay, i: number) => i === 0 || i === way.points.length - 1;
const isNamed = (way: PanelWay, i: number) => isEnd(way, i) || way.points[i]!.name !== '';

/** The line with its graduations: strokes across it, rings where a key stands, dots where a place has a name. */
function wayMarks(
  way: PanelWay,
  points: readonly Pt[],
  drawn: readonly Pt[],
  labels: Labels,
  texts: ChartTexts,
): Mark[] {
  if (lengthOf(points) < A_POINT) return [];
  const marks: Mark[] = [polyline(drawn, black(0.3))];
  for (let i = 1; i < drawn.length; i++) labels.avoid([...drawn[i - 1]!, ...drawn[i]!]);
  const strides = thinning(gapsOf(points));
  const numbered = numberedKeys(way, points, texts);
  points.forEach(([x, y], i) => {
    const { count } = way.points[i]!;
    const keys = numbered[i]!;
    if (isNamed(way, i)) {
      marks.push({ kind: 'circle', x, y, r: 0.55, stroke: null, fill: 'black' });
    } else if (count % strides[i]! === 0) {
      const [dx, dy] = directionAt(points, i);
      const half = way.counted ? 1.3 : 0.8;
      marks.push(line(x - dy * half, y + dx * half, x + dy * half, y - dx * half, black(0.15)));
      labels.avoid([x - dy * half, y + dx * half, x + dy * half, y - dx * half]);
    }
    if (keys.length > 0) {
      marks.push({ kind: 'circle', x, y, r: 1, stroke: black(0.22), fill: null });
      labels.avoid([x - 1, y, x + 1, y]);
    }
  });
  // The arrow head stands before the last dot, clear of it.
  const end = points.at(-1)!;
  const [dx, dy] = directionAt(points, points.length - 1);
  const tip: Pt = [end[0] - dx * 1.2, end[1] - dy * 1.2];
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

/** Marks that a curve passes on no frame of their own: a small ring on the way. */
function passedMarks({ passing }: PanelWay, { place }: View, labels: Labels): Mark[] {
  return passing.map(({ at }): Mark => {
    const [x, y] = place(at);
    labels.avoid([x - 0.8, y, x + 0.8, y]);
    return { kind: 'circle', x, y, r: 0.8, stroke: black(0.22), fill: 'paper' };
  });
}

function namePassed({ passing }: PanelWay, { place }: View, labels: Labels, texts: ChartTexts): void {
  for (const { at, name } of passing) {
    const [x, y] = place(at);
    const places = [3, 5, 8].flatMap((off): Pt[] => [
      [x, y - off],
      [x, y + off],
      [x + off, y],
      [x - off, y],
    ]);
    if (name !== '') labels.put({ text: name, sizeMm: texts.smallMm, weight: 'bold', places, must: true });
  }
}

function sidePlaces([x, y]: Pt, [dx, dy]: Pt, away: readonly number[]): Pt[] {
  return away.flatMap((off): Pt[] => [
    [x + dy * off, y - dx * off],
    [x - dy * off, y + dx * off],
  ]);
}

/** A field whose width alone is meant is no place. */
export function placeName({ solved }: PanelWay, { name }: WayPoint, { words }: ChartTexts): string {
  return name !== '' && solved.move.gives === 'width' ? `${words.width} ${name}` : name;
}

/** Start, end, fields and marks that are passed, with the row of each: `A 1+13 (37)`. */
function namePlaces(way: PanelWay, points: readonly Pt[], labels: Labels, texts: ChartTexts): void {
  if (lengthOf(points) < A_POINT) return;
  way.points.forEach((point, i) => {
    if (!isNamed(way, i)) return;
    const text = [placeName(way, point, texts), texts.rowWithFrame(point.frame)].filter(Boolean).join(' ');
    const [dx, dy] = directionAt(points, i);
    const half = texts.look.metrics.width(text, texts.smallMm, 'bold') / 2;
    // Clear of the line: as far to the side as the text is wide across it.
    const off = Math.abs(dy) * half + Math.abs(dx) * texts.smallMm * 0.7 + 1.8;
    const out = i === 0 ? -1 : i === points.length - 1 ? 1 : 0;
    const beyond: Pt[] =
      out === 0
        ? []
        : [[points[i]![0] + dx * out * (half + 3), points[i]![1] + dy * out * (texts.smallMm + 2)]];
    labels.put({
      text,
      sizeMm: texts.smallMm,
      weight: 'bold',
      places: [...sidePlaces(points[i]!, [dx, dy], [off, off + 2.5, off + 5]), ...beyond],
      must: true,
    });
  });
}

/** As near, in sizes of their numbers, rings on both sides of the way have no room any more: each is some 1.5 wide. */
const RINGS_APART = 1.2;

/**
 * The keys that have their numbers on the way, point by point: all of them, or where a third come closer together than their rings, also
 * where the way runs back beside itself, those of the first pass of a cycle, each key once. Some of a later pass beside gaps would be
 * read as a wrong order.
 */
function numberedKeys(
  { points }: PanelWay,
  places: readonly Pt[],
  { smallMm }: ChartTexts,
): readonly (readonly string[])[] {
  const keys = points.map((point) => point.keys);
  const at = places.filter((_, i) => keys[i]!.length > 0);
  return crowded(at, smallMm * RINGS_APART).length > at.length / 3 ? eachOnce(keys) : keys;
}

/** The places that have another one nearer than this. */
function crowded(places: readonly Pt[], nearer: number): Pt[] {
  const squares = new Map<string, Pt[]>();
  const square = ([x, y]: Pt, right = 0, down = 0): string =>
    `${Math.floor(x / nearer) + right} ${Math.floor(y / nearer) + down}`;
  for (const place of places) {
    const here = squares.get(square(place));
    if (here) here.push(place);
    else squares.set(square(place), [place]);
  }
  const around = [-1, 0, 1].flatMap((right) => [-1, 0, 1].map((down) => [right, down] as const));
  const isNear = (a: Pt, b: Pt): boolean => a !== b && Math.hypot(a[0] - b[0], a[1] - b[1]) < nearer;
  return places.filter((place) =>
    around.some(([right, down]) =>
      squares.get(square(place, right, down))?.some((other) => isNear(place, other)),
    ),
  );
}

/** What was named at an earlier place left out. */
export function eachOnce(names: readonly (readonly string[])[]): string[][] {
  const seen = new Set<string>();
  return names.map((here) => {
    const fresh = here.filter((name) => !seen.has(name));
    for (const name of fresh) seen.add(name);
    return fresh;
  });
}

/** The number of the key that is drawn on a row, in a ring; further away, with a thin line, where there is no room. */
function nameKeys(way: PanelWay, points: readonly Pt[], labels: Labels, texts: ChartTexts): void {
  if (lengthOf(points) < A_POINT) return;
  numberedKeys(way, points, texts).forEach((keys, i) => {
    if (keys.length === 0) return;
    // Outside of the rows and counts.
    const [dx, dy] = directionAt(points, i);
    const places = sidePlaces(points[i]!, [dx, dy], [6.4, 9.4, 12.4, 15.4]);
    const otherwise = [4, -4, 8, -8].flatMap((by) => places.map(([x, y]): Pt => [x + dx * by, y + dy * by]));
    for (const key of keys)
      labels.put({
        text: key,
        sizeMm: texts.smallMm,
        ringed: true,
        places,
        otherwise,
        must: true,
        leader: { to: points[i]!, beyondMm: 7 },
      });
  });
}

/** Rows of the sheet at round steps on one side, counts of typed graduations on the other, as many as have room. */
function nameRows(way: PanelWay, points: readonly Pt[], labels: Labels, texts: ChartTexts): void {
  const length = lengthOf(points);
  if (length < A_POINT) return;
  const gap = length / Math.max(1, points.length - 1);
  const wide = (text: string) => texts.look.metrics.width(text, texts.smallMm, 'regular') + 1.6;
  const last = way.points.at(-1)!;
  const [dx, dy] = directionAt(points, Math.floor(points.length / 2));
  const along = (text: string) => Math.abs(dx) * wide(text) + Math.abs(dy) * texts.smallMm * 1.4;
  const every = (text: string) => texts.roundSteps.find((step) => step * gap >= along(text)) ?? Infinity;
  const rows = every(texts.row(last.frame));
  const counts = every(String(last.count));
  way.points.forEach((point, i) => {
    const named = isNamed(way, i);
    const put = (text: string, ink: 'black' | 'grey', side: 0 | 1): void => {
      const at = directionAt(points, i);
      const off = Math.abs(at[1]) * (wide(text) / 2) + Math.abs(at[0]) * texts.smallMm * 0.6 + 1.5;
      labels.put({ text, sizeMm: texts.smallMm, ink, places: [sidePlaces(points[i]!, at, [off])[side]!] });
    };
    if (!named && point.frame % rows === 0 && point.frame > 0) put(texts.row(point.frame), 'black', 0);
    if (way.counted && (named || point.count % counts === 0)) put(String(point.count), 'grey', 1);
  });
}

function nameField(field: PanelField, { place }: View, labels: Labels, texts: ChartTexts): void {
  const page = field.corners.map(place) as unknown as Corners;
  const row = field.row === null ? '' : texts.words.cameraOn(texts.row(field.row));
  const standard = !field.bare || !field.standard ? '' : texts.words.standard;
  const why = field.gives ? texts.words.only[field.gives] : texts.words.unused;
  const unused = field.used ? '' : [field.name, `(${why})`].filter(Boolean).join(' ');
  const beside = [[standard, row].filter(Boolean).join(', '), unused].filter(Boolean).join(' ');
  if (beside !== '') nameEdge(beside, page, labels, texts);
  if (field.bare) return;
  const places: Pt[] = [];
  for (const mm of [4.5, -5, 9]) for (const corner of [0, 1, 3, 2]) places.push(inset(page, corner, mm));
  labels.put({ text: field.name, sizeMm: 3.6, weight: 'bold', ringed: true, places, must: true });
}

/** Outside the outline: sheets above and below it, starts and ends of levels likewise. */
function nameOutline(
  { label, corners, is }: PanelOutline,
  { place }: View,
  labels: Labels,
  texts: ChartTexts,
): void {
  nameEdge(texts.outline(label, is), corners.map(place) as unknown as Corners, labels, texts);
}

function nameEdge(text: string, page: Corners, labels: Labels, texts: ChartTexts): void {
  const away = texts.smallMm * 0.62 + 0.6;
  const places: Pt[] = [];
  for (const off of [-away, away])
    for (const share of [0.14, 0.86, 0.35, 0.65, 0.5])
      for (const edge of [0, 2]) {
        const [x, y] = between(page[edge]!, page[(edge + 1) % 4]!, edge === 0 ? share : 1 - share);
        places.push([x, y + (edge === 0 ? off : -off)]);
      }
  labels.put({ text, sizeMm: texts.smallMm, places, must: true });
}

/** Lines of the field chart over the standard field, where fields are given in its notation. */
function grid(view: View, texts: ChartTexts, labels: Labels): Mark[] {
  const { field, fields } = texts.settings;
  const { place } = view;
  const marks: Mark[] = [];
  for (let i = -fields; i <= fields; i++) {
    const x = (i * field.widthMm) / (2 * fields);
    const y = (i * field.heightMm) / (2 * fields);
    const upright = [place([x, -field.heightMm / 2]), place([x, field.heightMm / 2])] as const;
    const level = [place([-field.widthMm / 2, y]), place([field.widthMm / 2, y])] as const;
    const stroke = pale(i === 0 ? 0.3 : 0.1);
    marks.push(line(...upright[0], ...upright[1], stroke), line(...level[0], ...level[1], stroke));
    if (i % 2 !== 0 || i === 0 || Math.abs(i) === fields) continue;
    const set = (text: string, places: Pt[]) =>
      labels.put({ text, sizeMm: texts.smallMm, ink: 'grey', places });
    const [ux, uy] = upright[0];
    const [lx, ly] = level[0];
    set(`${Math.abs(i)}${i > 0 ? 'E' : 'W'}`, [
      [ux, uy + 2],
      [upright[1][0], upright[1][1] - 2],
    ]);
    set(`${Math.abs(i)}${i > 0 ? 'N' : 'S'}`, [
      [lx - 2.6, ly],
      [level[1][0] + 2.6, level[1][1]],
    ]);
  }
  return marks;
}
