import type { Mark, Pt } from '../display-list.js';
import { type Box, black, line, pale, polygon, textAt } from '../mark-builders.js';
import { fitLine } from '../text-fitting.js';
import type { WayPoint } from './chart-panels.js';
import type { ChartTexts } from './chart-texts.js';
import { eachOnce } from './panel-drawing.js';

/** What two neighbouring pieces share, mm. */
export const OVERLAP_MM = 10;
/** Blank paper before the start and behind the end, mm. */
export const BLANK_MM = 7;

/** Places across a ruler, mm from the edge of its box; those of texts are measured back from the base line. */
interface Across {
  readonly title: number;
  readonly edge: number;
  readonly base: number;
  readonly farEdge: number;
  /** With the gap to the next piece. */
  readonly whole: number;
  readonly rows: number;
  readonly counts: number;
  readonly rings: number;
  /** Where names go that found their line taken. */
  readonly spare: number;
}

/** Lines of text one above the other. */
const LYING: Across = {
  title: 2,
  edge: 8,
  base: 30,
  farEdge: 38,
  whole: 42,
  rows: 6,
  counts: 14.4,
  rings: 10.2,
  spare: 18.4,
};
/** Columns beside each other: rows and counts end at their place. */
const UPRIGHT: Across = {
  title: 2,
  edge: 8,
  base: 42,
  farEdge: 52,
  whole: 56,
  rows: 4.8,
  counts: 21,
  rings: 29,
  spare: 4.8,
};
export const acrossOf = ({ upright }: { readonly upright: boolean }): Across => (upright ? UPRIGHT : LYING);

export interface StripStroke {
  /** From the leg's start along the ruler. */
  readonly mm: number;
  readonly point: WayPoint;
  /** The last frame on which the thing stands here. */
  readonly until: number;
  readonly named: boolean;
  readonly drawn: boolean;
  readonly keys: readonly string[];
}

export interface Strip {
  readonly title: string;
  /** Lines under the title: what count 0 is, what is left out. */
  readonly remarks: readonly string[];
  readonly upright: boolean;
  /** Whether it runs left, or down, on paper. */
  readonly backwards: boolean;
  readonly strokes: readonly StripStroke[];
  readonly counted: boolean;
  readonly from: number;
  readonly to: number;
}

export interface StripPiece {
  readonly strip: Strip;
  readonly from: number;
  readonly to: number;
  readonly index: number;
  readonly of: number;
}

/**
 * A piece in its box. It is made lying, from left to right, and laid as the move runs: `along` and `across` are turned into places
 * on paper, names stay upright and readable.
 */
export function pieceMarks({ strip, from, to, index, of }: StripPiece, box: Box, texts: ChartTexts): Mark[] {
  const { words } = texts;
  const across = acrossOf(strip);
  const marks: Mark[] = [];
  const span = to - from;
  /** On paper. */
  const at = (mm: number, off: number): Pt => {
    const gone = strip.backwards ? span - (mm - from) : mm - from;
    return strip.upright ? [box.x + off, box.y + gone] : [box.x + gone, box.y + off];
  };
  const stroke = (mm: number, a: number, b: number, width: Parameters<typeof line>[4]) => {
    marks.push(line(...at(mm, a), ...at(mm, b), width));
  };
  const lengthwise = (off: number, a: number, b: number, width: Parameters<typeof line>[4]) => {
    marks.push(line(...at(a, off), ...at(b, off), width));
  };

  const parts = [strip.title, ...(of > 1 ? [words.tile(index + 1, of)] : []), ...strip.remarks];
  if (index < of - 1) parts.push(words.join);
  headline(parts, strip, box, span, texts, marks);

  // Where to cut: the strip's edges, and the line up to which the next piece is laid over.
  const cut = { ink: 'grey', widthMm: 0.15, dash: [2, 1.5] } as const;
  lengthwise(across.edge, from, to, cut);
  lengthwise(across.farEdge, from, to, cut);
  for (const mm of [from, to]) stroke(mm, across.edge - 1, across.farEdge + 1, cut);
  if (index < of - 1) {
    stroke(to - OVERLAP_MM, across.base + 5, across.farEdge + 1, cut);
    stroke(to - OVERLAP_MM, across.edge - 1, across.edge + 2, cut);
  }
  lengthwise(across.base, Math.max(from, strip.from), Math.min(to, strip.to), black(0.25));
  arrowHeads(strip, from, to, at, marks);

  const shown = strip.strokes.filter(({ mm, drawn }) => drawn && mm >= from && mm <= to);
  const ringed = new Set(numberedKeys(strip, texts).map(({ stroke: { mm } }) => mm));
  for (const { mm, named } of shown) {
    stroke(mm, across.base, across.base - (named ? 4.4 : 3), black(named ? 0.3 : 0.12));
    const [x, y] = at(mm, across.base);
    if (named) marks.push({ kind: 'circle', x, y, r: 0.6, stroke: null, fill: 'black' });
    if (ringed.has(mm)) marks.push({ kind: 'circle', x, y, r: 1.1, stroke: black(0.22), fill: null });
  }
  marks.push(...namesOf({ strip, from, to, index, of }, shown, at, texts));
  ruler(strip, from, to, at, marks, index < of - 1 ? to - OVERLAP_MM : null, texts);
  return marks;
}

interface NumberedKeys {
  readonly stroke: StripStroke;
  /** Where the middle of the numbers stands along the ruler. */
  readonly mm: number;
  readonly radii: readonly number[];
  /** Half the room along the ruler. */
  readonly half: number;
}

/** How far the number of a key may stand from its place along the ruler, mm. */
const FARTHEST_MM = 8;
const BETWEEN_RINGS_MM = 0.7;

/**
 * The numbers of the keys in the order of the ruler, each beside its place or a little further on. All of them or none: where some
 * were left out the others would be read as a wrong order.
 */
function spreadKeys(strip: Strip, { smallMm: small, look: { metrics } }: ChartTexts): NumberedKeys[] | null {
  const set = strip.strokes
    .filter(({ keys, drawn }) => keys.length > 0 && drawn)
    .sort((a, b) => a.mm - b.mm)
    .map((stroke) => {
      const radii = stroke.keys.map((key) =>
        Math.max(small * 0.72, metrics.width(key, small, 'regular') / 2 + 0.4),
      );
      const half = strip.upright ? Math.max(...radii) : radii.reduce((sum, r) => sum + r, 0);
      return { stroke, mm: stroke.mm, radii, half };
    });
  set.forEach((one, i) => {
    const before = set[i - 1];
    if (before) one.mm = Math.max(one.mm, before.mm + before.half + one.half + BETWEEN_RINGS_MM);
  });
  const end = strip.to + BLANK_MM;
  const fits = set.every(
    ({ mm, half, stroke }) =>
      mm - stroke.mm <= FARTHEST_MM && mm + half <= end && mm - half >= strip.from - BLANK_MM,
  );
  return fits ? set : null;
}

/** All keys; else those of the first pass, each key once; else none, which the chart numbers. */
function numberedKeys(strip: Strip, texts: ChartTexts): readonly NumberedKeys[] {
  const once = eachOnce(strip.strokes.map(({ keys }) => keys));
  const strokes = strip.strokes.map((stroke, i) => ({ ...stroke, keys: once[i]! }));
  return spreadKeys(strip, texts) ?? spreadKeys({ ...strip, strokes }, texts) ?? [];
}

type Taken = [number, number][];

/**
 * Names of places first, then keys, then rows and counts where there is room. Each kind has a line of its own beside the strokes;
 * a name that finds its place taken moves, with a thin line to its stroke.
 */
function namesOf(
  { strip, from, to }: StripPiece,
  shown: readonly StripStroke[],
  at: (mm: number, across: number) => Pt,
  texts: ChartTexts,
): Mark[] {
  const { smallMm: small } = texts;
  const { metrics } = texts.look;
  const across = acrossOf(strip);
  const marks: Mark[] = [];
  const take = (taken: Taken, mm: number, half: number): boolean => {
    if (mm - half < from || mm + half > to) return false;
    if (taken.some(([a, b]) => mm - half < b + 0.7 && a - 0.7 < mm + half)) return false;
    taken.push([mm - half, mm + half]);
    return true;
  };
  const set = (text: string, mm: number, off: number, weight: 'bold' | 'regular') => {
    const [x, y] = at(mm, across.base - off);
    marks.push(textAt(x, y, text, { sizeMm: small, weight, anchor: strip.upright ? 'end' : 'middle' }));
  };
  const halfOf = (text: string, weight: 'bold' | 'regular') =>
    strip.upright ? small * 0.75 : metrics.width(text, small, weight) / 2;
  const rows: Taken = [];
  const spare: Taken = strip.upright ? rows : [];
  const counts: Taken = [];
  const inOrder = [...shown].sort((a, b) => Number(isEnd(b, strip)) - Number(isEnd(a, strip)));
  for (const { mm, point, until, named } of inOrder) {
    if (!named) continue;
    const row =
      until > point.frame ? `${texts.row(point.frame)}–${texts.row(until)}` : texts.row(point.frame);
    const text = [point.name, row].filter(Boolean).join(' ');
    const half = halfOf(text, 'bold');
    const inside = Math.min(to - half, Math.max(from + half, mm));
    const aside = small * 1.7;
    const places: readonly (readonly [number, number, Taken])[] = [
      [inside, across.rows, rows],
      ...[1, -1, 2, -2].map((n) => [inside + (strip.upright ? n * aside : 0), across.spare, spare] as const),
    ];
    const place = places.find(([where, , taken]) => take(taken, where, half));
    if (!place) continue;
    set(text, place[0], place[1], 'bold');
    // Beside an upright ruler a long name reaches into the column of the counts.
    if (strip.upright && place[1] + metrics.width(text, small, 'bold') > across.counts - 0.8)
      take(counts, place[0], half);
    if (place !== places[0])
      marks.push(
        line(
          ...at(mm, across.base - 4.4),
          ...at(place[0], across.base - place[1] + (strip.upright ? 0.3 : 1.2)),
          pale(0.15),
        ),
      );
  }
  for (const { stroke, mm, radii, half } of numberedKeys(strip, texts)) {
    // What does not stand whole on this piece does so on its neighbour, which repeats the place.
    if (mm - half < from || mm + half > to) continue;
    if (Math.abs(mm - stroke.mm) > radii[0]! / 2) {
      const [a, b] = [Math.min(mm, stroke.mm), Math.max(mm, stroke.mm)];
      rows.push([a, b]);
      marks.push(
        line(...at(stroke.mm, across.base - 4.4), ...at(mm, across.base - across.rings + half), pale(0.15)),
      );
    }
    // Keys of one row side by side, or on upright rulers one left of the other.
    let gone = 0;
    stroke.keys.forEach((key, i) => {
      const r = radii[i]!;
      const [x, y] = at(mm, across.base - across.rings);
      const aside = strip.upright ? -gone : gone + r - half;
      gone += 2 * r;
      marks.push({ kind: 'circle', x: x + aside, y, r, stroke: black(0.22), fill: null });
      marks.push(textAt(x + aside, y, key, { sizeMm: small }));
    });
  }
  for (const step of [...texts.roundSteps].reverse())
    for (const { mm, point, named } of shown) {
      const text = texts.row(point.frame);
      if (!named && point.frame % step === 0 && take(rows, mm, halfOf(text, 'regular')))
        set(text, mm, across.rows, 'regular');
    }
  if (strip.counted)
    for (const step of [24, 12, 6, 3, 1])
      for (const { mm, point } of shown)
        if (point.count % step === 0 && take(counts, mm, halfOf(String(point.count), 'regular')))
          set(String(point.count), mm, across.counts, 'regular');
  return marks;
}

const isEnd = ({ mm }: StripStroke, strip: Strip): boolean =>
  Math.abs(mm - strip.from) < 1e-6 || Math.abs(mm - strip.to) < 1e-6;

/** Print narrower than this is broken into two lines. */
const NARROWEST_TITLE = 0.8;
/** Middles of the two lines, in the place of the one. */
const TITLE_LINES_MM = [1.4, 5] as const;

/** The title and its remarks, above the ruler or along its left side: on one line, or on two. */
function headline(
  parts: readonly string[],
  strip: Strip,
  box: Box,
  span: number,
  texts: ChartTexts,
  marks: Mark[],
): void {
  const along = strip.upright ? box.height : box.width;
  const { metrics } = texts.look;
  const { title } = acrossOf(strip);
  const fitted = (words: readonly string[], most: number) => {
    const text = words.join('   ');
    const size = { most, least: texts.smallMm * 0.9, weight: 'bold' } as const;
    return { text, ...fitLine(metrics, text, Math.max(span, along) - 4, size) };
  };
  const put = ({ text, sizeMm, squeeze }: ReturnType<typeof fitted>, off: number): void => {
    const set = { sizeMm, squeeze, weight: 'bold', anchor: 'start' } as const;
    marks.push(
      strip.upright
        ? textAt(box.x + off, box.y, text, { ...set, turn: 90 })
        : textAt(box.x, box.y + off, text, set),
    );
  };
  const whole = fitted(parts, texts.smallMm * 1.25);
  if (parts.length === 1 || whole.squeeze >= NARROWEST_TITLE) {
    put(whole, title);
    return;
  }
  // Broken where the longer of both lines is shortest.
  const longer = (at: number) =>
    Math.max(
      ...[parts.slice(0, at), parts.slice(at)].map((half) => metrics.width(half.join('   '), 1, 'bold')),
    );
  const best = parts
    .slice(1)
    .map((_, i) => i + 1)
    .reduce((a, b) => (longer(b) < longer(a) ? b : a));
  put(fitted(parts.slice(0, best), texts.smallMm), TITLE_LINES_MM[0]);
  put(fitted(parts.slice(best), texts.smallMm), TITLE_LINES_MM[1]);
}

/** An arrow head on the base line near both ends of a piece. */
function arrowHeads(
  strip: Strip,
  from: number,
  to: number,
  at: (mm: number, across: number) => Pt,
  marks: Mark[],
): void {
  const { base } = acrossOf(strip);
  const tip = Math.min(to - 1.5, strip.to + 5.5);
  const [a, b, c] = [at(tip, base), at(tip - 4, base - 1.3), at(tip - 4, base + 1.3)];
  marks.push(polygon([a, b, c], 'black'));
  if (tip > strip.to) marks.push(line(...at(strip.to, base), ...at(tip - 3.5, base), black(0.25)));
  const start = Math.max(from, strip.from);
  if (to - start > 40) {
    const [d, e, f] = [at(start + 9, base), at(start + 6, base - 1), at(start + 6, base + 1)];
    marks.push(polygon([d, e, f], 'black'));
  }
}

/** Lengths from the leg's start, on the other side of the base line. */
function ruler(
  strip: Strip,
  from: number,
  to: number,
  at: (mm: number, across: number) => Pt,
  marks: Mark[],
  join: number | null,
  { smallMm: small, lengths, look: { metrics } }: ChartTexts,
): void {
  const { base } = acrossOf(strip);
  const unitMm = lengths.unit === 'in' ? 25.4 / 8 : 1;
  const [half, whole] = lengths.unit === 'in' ? [4, 8] : [5, 10];
  const first = Math.ceil(Math.max(from, strip.from) / unitMm - 1e-9);
  for (let i = first; i * unitMm <= Math.min(to, strip.to) + 1e-9; i++) {
    const mm = i * unitMm;
    const high = i % whole === 0 ? 2.4 : i % half === 0 ? 1.7 : 1;
    marks.push(line(...at(mm, base), ...at(mm, base + high), pale(0.12)));
    if (i % whole !== 0) continue;
    const text = lengths.figure(mm);
    const wide = strip.upright ? small * 0.6 : metrics.width(text, small, 'regular') / 2;
    if (join !== null && Math.abs(mm - join) < wide + 0.5) continue;
    if (mm - wide < from || mm + wide > to) continue;
    const [x, y] = at(mm, base + (strip.upright ? 3.2 : 4.4));
    marks.push(
      textAt(x, y, text, { sizeMm: small, ink: 'grey', anchor: strip.upright ? 'start' : 'middle' }),
    );
  }
}
