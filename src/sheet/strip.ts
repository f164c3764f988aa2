/**
 * The scale strip: the graduations of a pan, pull, slide or follow as a ruler at true size, to lay beside the layout.
 *
 * Each leg is a strip of its own, since it may lead another way. A strip has one stroke a graduation above its black base
 * line, numbered from the move's start (numbers left out where they have no room), fields and marks that are reached ringed;
 * below it millimetres from the leg's start. What is longer than the paper goes on in the next piece, which repeats the last
 * 10 mm: cut at the dashed line, lay it over.
 */

import { kindOf } from '../shot/camera/move-facts.js';
import type { Graduation, SolvedMove } from '../solve/camera/solved.js';
import type { SolvedShot } from '../solve/solved.js';
import type { CameraPageWords } from '../words/camera-page-words.js';
import { figure } from '../words/number.js';
import { wordsOf } from '../words/words.js';
import { graduated, moveKind } from './camera/move-names.js';
import { tellingOf } from './camera/plan.js';
import { checkRule, RULE_ROOM } from './camera-chart/rule.js';
import { type Box, black, line, pale, textAt } from './draw.js';
import { fitLine } from './fit.js';
import type { Look } from './look.js';
import type { Mark, Page } from './marks.js';
import { cached } from './measure.js';
import { pageFrame } from './page-frame.js';
import { smallestTextMm } from './papers.js';

/** What two neighbouring pieces share, mm. */
export const OVERLAP_MM = 10;
/** A longer strip is not printed whole: nobody lays it beside a layout. */
export const LONGEST_STRIP_MM = 5000;
/** Height of a piece with its gap. */
const PIECE_MM = 34;
const BASE = 18;
/** Where not all numbers have room, those that these divide come first: the same ones on all pieces. */
const FIRST_NUMBERED = [24, 12, 6, 3, 1];

interface Stroke {
  readonly mm: number;
  readonly first: number;
  /** `3`, or `3-4` where the thing stands still. */
  readonly number: string;
  readonly label: string;
  readonly key: boolean;
}

interface Strip {
  readonly title: string;
  readonly strokes: readonly Stroke[];
  readonly from: number;
  readonly to: number;
  /** Of the whole way, where the strip is cut short; else null. */
  readonly all: number | null;
}

interface Piece {
  readonly strip: Strip;
  readonly from: number;
  readonly to: number;
  readonly index: number;
  readonly of: number;
}

export function stripPages(solved: SolvedShot, given: Look): Page[] {
  const look = { ...given, metrics: cached(given.metrics) };
  const words = wordsOf(look.settings).cameraPages;
  const strips = solved.camera.moves.flatMap((move) => stripsOf(move, solved, look));
  if (strips.length === 0) return [];
  const framed = (n: number, of: number) => pageFrame(solved.shot, look, words.strip(n), of, true);
  const { body } = framed(1, 1);
  const pieces = strips.flatMap((strip) => piecesOf(strip, body.width - 10));
  const room = body.height - RULE_ROOM - 2;
  const aPage = Math.max(1, Math.floor(room / PIECE_MM));
  const pages = Math.ceil(pieces.length / aPage);
  return Array.from({ length: pages }, (_, i): Page => {
    const { widthMm, heightMm, marks } = framed(i + 1, pages);
    const here = pieces.slice(i * aPage, (i + 1) * aPage);
    return {
      widthMm,
      heightMm,
      label: `strip ${i + 1}`,
      part: 'strip',
      form: null,
      marks: [
        ...marks,
        ...here.flatMap((piece, k) =>
          pieceMarks(piece, { ...body, x: body.x + 5, y: body.y + 2 + k * PIECE_MM }, look, words),
        ),
        ...checkRule(body, look, words),
      ],
      rows: [],
    };
  });
}

/** For moves written frame by frame and linear pans. */
function stripsOf(solvedMove: SolvedMove, { shot }: SolvedShot, look: Look): Strip[] {
  const { move, graduations } = solvedMove;
  const { strip } = kindOf(move);
  const even = strip === 'even' && move.legs.every(({ spacing }) => spacing.form === 'linear');
  if (strip === 'never' || !(even || graduated(move))) return [];
  const { labels, convention } = look.settings;
  const { legs } = move;
  const name = moveKind.memo(move, tellingOf(shot, labels, convention === 'west', look.neighbours));
  return legs.flatMap((leg, i): Strip[] => {
    const own = graduations.filter(({ frame }) => frame >= leg.start && frame <= leg.end);
    const title = legs.length > 1 ? `${name}  (${i + 1}/${legs.length})` : name;
    return own.length > 1 ? [stripOf(title, own)] : [];
  });
}

function stripOf(title: string, graduations: readonly Graduation[]): Strip {
  const strokes: { mm: number; first: number; last: number; label: string; key: boolean }[] = [];
  let mm = 0;
  graduations.forEach(({ stepMm, number, label }, i) => {
    // The first stands where the leg starts, whatever led there.
    if (i > 0) mm += stepMm;
    const before = strokes.at(-1);
    const key = label !== '' || i === 0 || i === graduations.length - 1;
    if (before && Math.abs(before.mm - mm) < 1e-6) {
      before.last = number;
      before.label ||= label;
      before.key ||= key;
    } else strokes.push({ mm, first: number, last: number, label, key });
  });
  const places = strokes.map((stroke) => stroke.mm);
  let from = Infinity;
  let to = -Infinity;
  for (const place of places) {
    from = Math.min(from, place);
    to = Math.max(to, place);
  }
  const shown = Math.min(to, from + LONGEST_STRIP_MM);
  return {
    title,
    from,
    to: shown,
    all: shown < to ? to - from : null,
    strokes: strokes
      .filter((stroke) => stroke.mm <= shown)
      .map(({ first, last, ...rest }) => ({
        ...rest,
        first,
        number: first === last ? `${first}` : `${first}-${last}`,
      })),
  };
}

function piecesOf(strip: Strip, room: number): Piece[] {
  // 6 mm of blank paper before the start and behind the end.
  const from = strip.from - 6;
  const to = strip.to + 6;
  const step = room - OVERLAP_MM;
  const of = Math.max(1, Math.ceil((to - from - OVERLAP_MM) / step - 1e-9));
  return Array.from({ length: of }, (_, index): Piece => {
    const start = from + index * step;
    return { strip, from: start, to: Math.min(to, start + room), index, of };
  });
}

function pieceMarks(
  { strip, from, to, index, of }: Piece,
  box: Box,
  look: Look,
  words: CameraPageWords,
): Mark[] {
  const least = smallestTextMm(look.settings.paper);
  const small = Math.max(least, 2.1);
  const { metrics } = look;
  const x = (mm: number) => box.x + mm - from;
  const top = box.y + 5;
  const base = box.y + BASE + 3;
  const bottom = base + 8;
  const marks: Mark[] = [];

  const parts = [strip.title, words.tile(index + 1, of)];
  if (index < of - 1) parts.push(words.join);
  if (strip.all !== null) parts.push(words.tooLong(figure(strip.to - strip.from), figure(strip.all)));
  const title = parts.join('   ');
  const fit = fitLine(metrics, title, box.width - 10, { most: 2.8, least, weight: 'bold' });
  marks.push(
    textAt(box.x, box.y + 2, title, {
      sizeMm: fit.sizeMm,
      squeeze: fit.squeeze,
      weight: 'bold',
      anchor: 'start',
    }),
  );

  // Where to cut: the strip's edges, and the line up to which the next piece is laid over.
  const cut = { ink: 'grey', widthMm: 0.15, dash: [2, 1.5] } as const;
  marks.push(line(x(from), top, x(to), top, cut), line(x(from), bottom, x(to), bottom, cut));
  for (const mm of [from, to]) marks.push(line(x(mm), top - 1, x(mm), bottom + 1, cut));
  if (index < of - 1) {
    const at = x(to - OVERLAP_MM);
    marks.push(line(at, base + 5, at, bottom + 1, cut), line(at, top - 1, at, top + 2, cut));
  }

  marks.push(line(x(Math.max(from, strip.from)), base, x(Math.min(to, strip.to)), base, black(0.25)));
  const shown = strip.strokes.filter(({ mm }) => mm >= from && mm <= to);
  for (const { mm, key } of shown)
    marks.push(line(x(mm), base, x(mm), base - (key ? 4.4 : 3), black(key ? 0.3 : 0.12)));

  // Key numbers first, then the others where there is room.
  const taken: [number, number][] = [];
  const put = (stroke: Stroke): boolean => {
    const em = metrics.width(stroke.number, small, 'regular');
    const half = stroke.key ? Math.max(small * 0.78, em / 2 + 0.6) : em / 2;
    const at = x(stroke.mm);
    if (at - half < x(from) || at + half > x(to)) return false;
    if (taken.some(([a, b]) => at - half < b + 0.9 && a - 0.9 < at + half)) return false;
    taken.push([at - half, at + half]);
    const y = base - 4.4 - (stroke.key ? half : small * 0.6) - 0.2;
    if (stroke.key) marks.push({ kind: 'circle', x: at, y, r: half, stroke: black(0.25), fill: null });
    marks.push(textAt(at, y, stroke.number, { sizeMm: small }));
    if (stroke.label !== '') marks.push(textAt(at, top + 2.4, stroke.label, { sizeMm: 3.2, weight: 'bold' }));
    return true;
  };
  for (const stroke of shown) if (stroke.key) put(stroke);
  for (const every of FIRST_NUMBERED)
    for (const stroke of shown) if (!stroke.key && stroke.first % every === 0) put(stroke);

  for (let mm = Math.ceil(Math.max(from, strip.from)); mm <= Math.min(to, strip.to) + 1e-9; mm++) {
    const high = mm % 10 === 0 ? 2.4 : mm % 5 === 0 ? 1.7 : 1;
    marks.push(line(x(mm), base, x(mm), base + high, pale(0.12)));
    const text = String(mm);
    const half = metrics.width(text, small, 'regular') / 2;
    const nearCut = index < of - 1 && Math.abs(mm - (to - OVERLAP_MM)) < half + 0.5;
    if (mm % 10 === 0 && !nearCut && x(mm) - half > x(from) && x(mm) + half < x(to))
      marks.push(textAt(x(mm), base + 4.2, text, { sizeMm: small, ink: 'grey' }));
  }
  return marks;
}
