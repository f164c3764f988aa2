/**
 * The scale strip: the graduations of a move as a ruler at true size, to lay beside the layout, in the direction in which the
 * move runs on the layout: one that goes left or up begins at the right or at the bottom. A truck's is the way of a corner of
 * the field. Turns and scales of levels have none: their way is no straight one.
 *
 * Each leg is a strip of its own, since it may lead another way. A strip has one stroke a graduation on one side of its black
 * base line: a dot at start and end and where a place has a name, a ring where a level that goes along has a key; beside it rows
 * of the sheet, and counts where graduations were typed. On the other side stand lengths from the leg's start. What is longer
 * than the paper goes on in the next piece, which repeats the last 10 mm: cut at the dashed line, lay it over.
 */

import { kindOf } from '../../shot/camera/move-kinds.js';
import type { SolvedShot } from '../../solve/solved-shot.js';
import { figure } from '../../words/number-format.js';
import { moveKind } from '../camera/move-labels.js';
import type { Page, Pt } from '../display-list.js';
import { pageFrame } from '../page-frame.js';
import type { PageLook } from '../page-look.js';
import { cachedMetrics } from '../text-fitting.js';
import { checkRule, RULE_ROOM } from './artwork-plane.js';
import { type ChartPanel, chartPanels, type PanelWay, type WayPoint } from './chart-panels.js';
import { type ChartTexts, chartTexts } from './chart-texts.js';
import { CLOSEST, placeName, thinning } from './panel-drawing.js';
import {
  acrossOf,
  BLANK_MM,
  OVERLAP_MM,
  pieceMarks,
  type Strip,
  type StripPiece,
  type StripStroke,
} from './strip-marks.js';

/** A longer strip is not printed whole: nobody lays it beside a layout. */
export const LONGEST_STRIP_MM = 5000;

export function stripPages(solved: SolvedShot, given: PageLook): Page[] {
  const look = { ...given, metrics: cachedMetrics(given.metrics) };
  const texts = chartTexts(solved, look);
  const { words } = texts;
  const strips = chartPanels(solved, look.settings.convention === 'west').flatMap((panel) =>
    panel.ways
      .filter(({ ofCorner }) => panel.levels === null || ofCorner === null)
      .flatMap((way) => stripsOf(way, panel, texts)),
  );
  if (strips.length === 0) return [];
  const framed = (n: number, of: number, landscape: boolean) =>
    pageFrame(solved.shot, look, words.strip(n), of, landscape);
  // Rulers that lie stand on upright paper one below the other, upright ones on paper laid on its side one beside the other.
  const groups = [false, true].flatMap((upright) => {
    const { body } = framed(1, 1, false);
    const room = {
      ...body,
      x: body.x + 3,
      y: body.y + 2,
      width: body.width - 6,
      height: body.height - RULE_ROOM - 4,
    };
    const along = upright ? room.height : room.width;
    const pieces = strips
      .filter((strip) => strip.upright === upright)
      .flatMap((strip) => piecesOf(strip, along));
    const aPage = Math.max(1, Math.floor((upright ? room.width : room.height) / acrossOf({ upright }).whole));
    return Array.from({ length: Math.ceil(pieces.length / aPage) }, (_, i) => ({
      body,
      room,
      upright,
      pieces: pieces.slice(i * aPage, (i + 1) * aPage),
    }));
  });
  return groups.map(({ body, room, upright, pieces }, i): Page => {
    const { widthMm, heightMm, form, marks } = framed(i + 1, groups.length, false);
    return {
      widthMm,
      heightMm,
      label: `strip ${i + 1}`,
      part: 'strip',
      form,
      marks: [
        ...marks,
        ...pieces.flatMap((piece, k) => {
          const { whole } = acrossOf(piece.strip);
          const box = upright
            ? { ...room, x: room.x + k * whole, width: whole }
            : { ...room, y: room.y + k * whole, height: whole };
          return pieceMarks(piece, box, texts);
        }),
        ...checkRule(body, look, words),
      ],
      rows: [],
    };
  });
}

/** A strip for each leg of a way. */
function stripsOf(way: PanelWay, panel: ChartPanel, texts: ChartTexts): Strip[] {
  const { move } = way.solved;
  const name = moveKind.memo(move, texts.telling);
  const who = panel.levels === null || kindOf(move).target === 'levels' ? '' : `${panel.levels.join(', ')} `;
  return move.legs.flatMap((leg, i): Strip[] => {
    const points = way.points
      .filter(({ frame }) => frame >= leg.start && frame <= leg.end)
      .map((point) => ({ ...point, name: placeName(way, point, texts) }));
    const title = move.legs.length > 1 ? `${who}${name}  (${i + 1}/${move.legs.length})` : `${who}${name}`;
    return points.length > 1 ? (stripOf(title, points, way, texts) ?? []) : [];
  });
}

function stripOf(
  title: string,
  points: readonly WayPoint[],
  way: PanelWay,
  texts: ChartTexts,
): Strip[] | null {
  const { words, lengths } = texts;
  const curved = way.line !== null;
  const places = curved ? alongTheCurve(points, way) : alongTheWay(points.map(({ at }) => at));
  const all = { from: Math.min(...places), to: Math.max(...places) };
  if (all.to - all.from < 0.5) return null;
  const to = Math.min(all.to, all.from + LONGEST_STRIP_MM);
  const [x0, y0] = points[0]!.at;
  const [x1, y1] = points.at(-1)!.at;
  const degrees = (Math.atan2(y1 - y0, x1 - x0) * 180) / Math.PI;
  const upright = Math.abs(y1 - y0) > Math.abs(x1 - x0) + 1e-9;
  const strokes = strokesOf(points, places).filter(({ mm }) => mm <= to + 1e-9);
  const thinned = strokes.some(({ drawn }) => !drawn);
  const remarks = [
    ...(way.ofCorner ? [words.cornerWay(words.corners[way.ofCorner])] : []),
    ...(curved ? [words.alongCurve] : []),
    ...(!curved && aslant(degrees)
      ? [words.slope(figure(steepness(degrees), { decimals: 0 }), y1 > y0, x1 > x0)]
      : []),
    ...(way.counted ? [words.countNought(texts.place(points[0]!.frame - points[0]!.count))] : []),
    ...(thinned ? [words.thinned(`${CLOSEST} mm`)] : []),
    ...(to < all.to ? [words.tooLong(lengths.text(to - all.from), lengths.text(all.to - all.from))] : []),
  ];
  return [
    {
      title,
      remarks,
      upright,
      backwards: upright ? y1 > y0 : x1 < x0,
      strokes,
      counted: way.counted,
      from: all.from,
      to,
    },
  ];
}

/** Degrees from level, 0 to 90. */
const steepness = (degrees: number): number => {
  const turned = Math.abs(degrees);
  return turned > 90 ? 180 - turned : turned;
};

const aslant = (degrees: number): boolean => steepness(degrees) > 0.5 && steepness(degrees) < 89.5;

/** How far along its curve each place lies. */
function alongTheCurve(points: readonly WayPoint[], { solved: { graduations, start } }: PanelWay): number[] {
  let gone = 0;
  return points.map(({ frame }, i) => {
    if (i > 0) gone += graduations[frame - start]!.stepMm;
    return gone;
  });
}

/** How far along the way each place lies; what runs back has a smaller number again. */
function alongTheWay(places: readonly Pt[]): number[] {
  const [first, last] = [places[0]!, places.at(-1)!];
  const length = Math.hypot(last[0] - first[0], last[1] - first[1]);
  // A way that bends or comes back to its start is measured along itself.
  const straight = places.every(([x, y]) => {
    const [dx, dy] = [x - first[0], y - first[1]];
    return length > 0 && Math.abs(dx * (last[1] - first[1]) - dy * (last[0] - first[0])) / length < 0.05;
  });
  let gone = 0;
  return places.map(([x, y], i) => {
    if (straight)
      return ((x - first[0]) * (last[0] - first[0]) + (y - first[1]) * (last[1] - first[1])) / length;
    if (i > 0) gone += Math.hypot(x - places[i - 1]![0], y - places[i - 1]![1]);
    return gone;
  });
}

function strokesOf(points: readonly WayPoint[], places: readonly number[]): StripStroke[] {
  const strides = thinning(places.slice(1).map((mm, i) => Math.abs(mm - places[i]!)));
  const strokes: (Omit<StripStroke, 'until' | 'keys'> & { until: number; keys: string[] })[] = [];
  points.forEach((point, i) => {
    const mm = places[i]!;
    const named = i === 0 || i === points.length - 1 || point.name !== '';
    const last = strokes.at(-1);
    if (last && Math.abs(last.mm - mm) < 1e-6 && !named) {
      last.until = point.frame;
      last.keys.push(...point.keys);
      return;
    }
    const drawn = named || point.keys.length > 0 || point.count % strides[i]! === 0;
    strokes.push({ mm, point, until: point.frame, named, drawn, keys: [...point.keys] });
  });
  return strokes;
}

function piecesOf(strip: Strip, room: number): StripPiece[] {
  const from = strip.from - BLANK_MM;
  const to = strip.to + BLANK_MM;
  const step = room - OVERLAP_MM;
  const of = Math.max(1, Math.ceil((to - from - OVERLAP_MM) / step - 1e-9));
  return Array.from({ length: of }, (_, index): StripPiece => {
    const start = from + index * step;
    return { strip, from: start, to: Math.min(to, start + room), index, of };
  });
}
