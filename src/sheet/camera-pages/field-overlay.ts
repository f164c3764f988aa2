/**
 * The field overlay: the cut's fields at true size, to lay over the artwork. What is larger than the paper is tiled; each page
 * repeats the last 10 mm of its neighbours, with the join dashed and cut marks at the corners.
 */

import type { SolvedShot } from '../../solve/solved-shot.js';
import type { CameraPageWords } from '../../words/document-words.js';
import { wordsOf } from '../../words/words.js';
import type { Mark, Page, Pt, Stroke } from '../display-list.js';
import { type Box, line, textAt } from '../mark-builders.js';
import { pageFrame } from '../page-frame.js';
import type { PageLook } from '../page-look.js';
import { smallestTextMm } from '../sheet-geometry.js';
import { cachedMetrics, fitLine } from '../text-fitting.js';
import {
  boundsOf,
  type Corners,
  checkRule,
  clip,
  holeMark,
  holes,
  inset,
  RULE_ROOM,
  type Segment,
  sides,
} from './artwork-plane.js';
import { labelsIn } from './chart-labels.js';
import { fieldsOf, hasCamera, type PanelField } from './chart-panels.js';
import { OVERLAP_MM } from './strip-marks.js';

/** More would be a poster: the chart tells the rest. */
export const MOST_OVERLAY_PAGES = 24;
/** Blank paper around the outermost field. */
const MARGIN = 6;
/** Half the width of the cross over a corner of a field that is not used. */
const CROSS = 4;

interface Tile {
  readonly column: number;
  readonly row: number;
  /** Artwork mm of the window's left and top. */
  readonly left: number;
  readonly top: number;
}

/** Whichever way of laying the paper takes fewer pages. */
export function overlayPages(solved: SolvedShot, given: PageLook): Page[] {
  if (!hasCamera(solved) || solved.camera.fields.length === 0) return [];
  const [wide, high] = [laid(solved, given, true), laid(solved, given, false)];
  return high.length < wide.length ? high : wide;
}

function laid(solved: SolvedShot, given: PageLook, landscape: boolean): Page[] {
  const look = { ...given, metrics: cachedMetrics(given.metrics) };
  const words = wordsOf(look.settings).cameraPages;
  const framed = (n: number, of: number) => pageFrame(solved.shot, look, words.overlay(n), of, landscape);
  const { body } = framed(1, 1);
  const window: Box = {
    x: body.x + 3,
    y: body.y + 6,
    width: body.width - 6,
    height: body.height - RULE_ROOM - 8,
  };
  const fields = fieldsOf(solved);
  const corners = fields.map((field) => field.corners);
  const { left, right, bottom, top } = boundsOf(corners.flat());
  const columns = count(right - left + 2 * MARGIN, window.width);
  const rows = count(top - bottom + 2 * MARGIN, window.height);
  const all: Tile[] = [];
  for (let row = 0; row < rows && all.length <= 4 * MOST_OVERLAY_PAGES; row++)
    for (let column = 0; column < columns && all.length <= 4 * MOST_OVERLAY_PAGES; column++)
      all.push({
        column,
        row,
        left: left - MARGIN + column * (window.width - OVERLAP_MM),
        top: top + MARGIN - row * (window.height - OVERLAP_MM),
      });
  // Pages that would be empty are left out.
  const lines = corners.flatMap((each) => sides(each));
  const filled = all.filter((tile) => lines.some((segment) => onTile(segment, tile, window) !== null));
  const tiles = filled.slice(0, MOST_OVERLAY_PAGES);
  return tiles.map((tile, i): Page => {
    const { widthMm, heightMm, form, marks } = framed(i + 1, tiles.length);
    const place = words.at(tile.column + 1, columns, tile.row + 1, rows);
    const goesOn = i < tiles.length - 1 && (tile.column < columns - 1 || tile.row < rows - 1);
    const where = goesOn ? `${place}   ${words.join}` : place;
    const title =
      filled.length > tiles.length || columns * rows > all.length
        ? `${where}   ${words.tooMany(tiles.length)}`
        : where;
    return {
      widthMm,
      heightMm,
      label: `overlay ${i + 1}`,
      part: 'overlay',
      form,
      marks: [
        ...marks,
        ...heading(title, window, look),
        ...tileMarks(tile, window, fields, look, words),
        ...joins(tile, window, columns, rows),
        ...checkRule(body, look, words),
      ],
      rows: [],
    };
  });
}

const count = (mm: number, room: number) =>
  Math.max(1, Math.ceil((mm - OVERLAP_MM) / (room - OVERLAP_MM) - 1e-9));

const placeOn =
  (tile: Tile, window: Box) =>
  ([x, y]: Pt): Pt => [window.x + x - tile.left, window.y + tile.top - y];

function onTile([x1, y1, x2, y2]: Segment, tile: Tile, window: Box): Segment | null {
  const place = placeOn(tile, window);
  return clip([...place([x1, y1]), ...place([x2, y2])] as unknown as Segment, window);
}

function heading(text: string, window: Box, look: PageLook): Mark[] {
  const least = smallestTextMm(look.settings.paper);
  const fit = fitLine(look.metrics, text, window.width, { most: 2.6, least });
  return [
    textAt(window.x, window.y - 3.2, text, { sizeMm: fit.sizeMm, squeeze: fit.squeeze, anchor: 'start' }),
  ];
}

function tileMarks(
  tile: Tile,
  window: Box,
  fields: readonly PanelField[],
  look: PageLook,
  words: CameraPageWords,
): Mark[] {
  const marks: Mark[] = [];
  const labels = labelsIn(window, look.metrics);
  const place = placeOn(tile, window);
  const add = (segment: Segment, stroke: Stroke): void => {
    const part = onTile(segment, tile, window);
    if (!part) return;
    marks.push(line(...part, stroke));
    labels.avoid(part);
  };
  const inside = ([x, y]: Pt, by: number) =>
    x > window.x + by &&
    x < window.x + window.width - by &&
    y > window.y + by &&
    y < window.y + window.height - by;
  const name = (text: string, corners: Corners, ringed: boolean) => {
    const page = corners.map(place) as unknown as Corners;
    const places = [6, 14, -6]
      .flatMap((mm) => [0, 1, 3, 2].map((corner) => inset(page, corner, mm)))
      .filter((p) => inside(p, 4));
    // Where a field passes through without a corner: beside a piece of its edge.
    if (places.length === 0)
      for (const side of sides(page)) {
        const part = clip(side, window);
        if (part) places.push([(part[0] + part[2]) / 2 + 6, (part[1] + part[3]) / 2 + 6]);
      }
    if (places.length > 0)
      labels.put({ text, sizeMm: ringed ? 4 : 2.6, weight: ringed ? 'bold' : 'regular', ringed, places });
  };
  for (const hole of holes(look.settings))
    if (inside(place([hole.x, hole.y]), 7)) marks.push(holeMark(hole, place, 1));
  for (const { corners, centre, used, bare } of fields) {
    const stroke: Stroke = bare
      ? { ink: 'grey', widthMm: 0.3, dash: [4, 1.2] }
      : { ink: 'black', widthMm: used ? 0.3 : 0.15 };
    for (const side of sides(corners)) add(side, stroke);
    if (!bare) {
      const [a, b, , d] = corners;
      for (const far of [b, d]) {
        const length = Math.hypot(far[0] - a[0], far[1] - a[1]) || 1;
        const [dx, dy] = [((far[0] - a[0]) / length) * 4, ((far[1] - a[1]) / length) * 4];
        add([centre[0] - dx, centre[1] - dy, centre[0] + dx, centre[1] + dy], {
          ink: 'black',
          widthMm: 0.15,
        });
      }
    }
    if (used) continue;
    // A cross over each corner: no line runs through a field that is used inside.
    for (const [x, y] of corners)
      for (const way of [1, -1])
        add([x - CROSS, y - way * CROSS, x + CROSS, y + way * CROSS], { ink: 'black', widthMm: 0.3 });
  }
  for (const field of fields) if (!field.bare) name(field.name, field.corners, true);
  for (const field of fields) if (field.bare) name(words.standard, field.corners, false);
  return [...marks, ...labels.marks];
}

/** Cut marks outside the window's corners, and dashed joins where a neighbour is laid over. */
function joins(tile: Tile, { x, y, width, height }: Box, columns: number, rows: number): Mark[] {
  const thin: Stroke = { ink: 'black', widthMm: 0.12 };
  const marks: Mark[] = [];
  for (const [cx, sx] of [
    [x, -1],
    [x + width, 1],
  ] as const)
    for (const [cy, sy] of [
      [y, -1],
      [y + height, 1],
    ] as const)
      marks.push(
        line(cx + sx * 0.5, cy, cx + sx * 2.5, cy, thin),
        line(cx, cy + sy * 0.3, cx, cy + sy * 1.6, thin),
      );
  const dashed: Stroke = { ink: 'grey', widthMm: 0.12, dash: [1, 2] };
  if (tile.column < columns - 1) {
    const at = x + width - OVERLAP_MM;
    marks.push(line(at, y, at, y + height, dashed));
  }
  if (tile.row < rows - 1) {
    const at = y + height - OVERLAP_MM;
    marks.push(line(x, at, x + width, at, dashed));
  }
  return marks;
}
