/** Reads the camera's pages back from the PDF, and says where they tell something else than the solver. */

import type { Paper, PaperLine, PaperText } from '../paper.js';

export interface Place {
  readonly x: number;
  readonly y: number;
}

/** Where a thing stands on a frame, mm on the artwork; `count`: graduations from the first. */
export interface Station extends Place {
  readonly frame: number;
  readonly count: number;
}

/** What a chart or a strip must say of one move. */
export interface Truth {
  readonly stations: readonly Station[];
  /** The row of a frame as the sheet names it. */
  row(frame: number): string;
  /** Numbers of new keys of what goes along, by frame. */
  readonly keys: ReadonlyMap<number, string>;
  /** Whether counts are printed. */
  readonly counted: boolean;
}

const BLACK = '#000000';
export const near = (value: number, wanted: number, by: number) => Math.abs(value - wanted) <= by;
const middleOf = ({ x, endX, y, sizeMm }: PaperText): Place => ({ x: (x + endX) / 2, y: y - 0.37 * sizeMm });
const lengthOf = ({ x1, y1, x2, y2 }: PaperLine) => Math.hypot(x2 - x1, y2 - y1);

/** The n of the printed `1:n`. */
export const ratio = (paper: Paper): number =>
  Number(/1:([\d.]+)/.exec(paper.texts.find(({ text }) => /1:[\d.]+/.test(text))!.text)![1]);

/** Fields: rectangles in the heavy black line, in a lighter one where no frame uses them; in the order of the text. */
export const fieldsOn = (paper: Paper) =>
  paper.rectangles.filter(
    ({ pen }) => pen?.ink === BLACK && (near(pen.widthMm, 0.4, 0.01) || near(pen.widthMm, 0.2, 0.01)),
  );

/** Middles of the crosses over the corners of fields that are not used. */
export function crossesOn(paper: Paper): Place[] {
  const strokes = paper.lines.filter(
    ({ pen, x1, y1, x2, y2 }) =>
      near(pen.widthMm, 0.3, 0.01) && near(Math.abs(x2 - x1), 6, 0.01) && near(Math.abs(y2 - y1), 6, 0.01),
  );
  return strokes
    .filter(({ x1, y1, x2, y2 }) => (x2 - x1) * (y2 - y1) > 0)
    .map(({ x1, y1, x2, y2 }) => ({ x: (x1 + x2) / 2, y: (y1 + y2) / 2 }));
}

/** A chart with one panel whose first field is the standard field: its strokes, rows, counts and keys. */
export function chartProblems(paper: Paper, { stations, row, keys, counted }: Truth): string[] {
  const problems: string[] = [];
  const n = ratio(paper);
  const [standard] = fieldsOn(paper);
  const onPaper = ({ x, y }: Place): Place => ({
    x: standard!.x + standard!.width / 2 + x / n,
    y: standard!.y + standard!.height / 2 - y / n,
  });
  const places = stations.map(onPaper);
  const off = (a: Place, b: Place) => Math.hypot(a.x - b.x, a.y - b.y);
  const nearest = (at: Place) =>
    places.reduce((best, place, i) => (off(place, at) < off(places[best]!, at) ? i : best), 0);
  const long = counted ? 2.6 : 1.6;
  const strokes = paper.lines
    .filter(
      ({ pen, ...one }) =>
        pen.ink === BLACK && near(pen.widthMm, 0.15, 0.01) && near(lengthOf({ pen, ...one }), long, 0.01),
    )
    .map(({ x1, y1, x2, y2 }) => ({ x: (x1 + x2) / 2, y: (y1 + y2) / 2 }));
  for (const at of strokes)
    if (off(places[nearest(at)]!, at) > 0.03)
      problems.push(`a stroke where nothing stands: ${at.x}, ${at.y}`);
  const dots = paper.circles.filter(({ r, fill }) => fill === BLACK && near(r, 0.55, 0.01));
  const rings = paper.circles.filter(({ r, fill }) => fill === null && near(r, 1, 0.01));
  // Strokes are left out only where they would stand closer than 0.8 mm.
  places.forEach((place, i) => {
    const marked = [...strokes, ...dots].some((at) => off(at, place) < 0.85);
    if (!marked) problems.push(`no graduation near that of frame ${stations[i]!.frame}`);
  });
  const dashed = (text: PaperText) => text.weight === 'regular' && text.angle === 0;
  for (const text of paper.texts.filter(dashed)) {
    const at = middleOf(text);
    const station = stations[nearest(at)]!;
    if (off(places[nearest(at)]!, at) > 9) continue;
    if (/^\d+[+']\d+$/.test(text.text) && text.text !== row(station.frame))
      problems.push(`row ${text.text} beside the graduation of frame ${station.frame}`);
    if (counted && text.ink !== BLACK && /^\d+$/.test(text.text) && Number(text.text) !== station.count)
      problems.push(`count ${text.text} beside graduation ${station.count}`);
  }
  for (const station of [stations[0]!, stations.at(-1)!])
    if (
      !paper.texts.some(
        ({ text, weight }) => weight === 'bold' && text.includes(`${row(station.frame)} (${station.frame})`),
      )
    )
      problems.push(`nothing names frame ${station.frame}`);
  for (const ring of rings) {
    const { frame } = stations[nearest(ring)]!;
    if (!keys.has(frame)) problems.push(`a ring on frame ${frame}, where no key stands`);
  }
  const shown = stations.filter(({ frame }) => keys.has(frame));
  if (rings.length !== shown.length) problems.push(`${rings.length} rings for ${shown.length} keys`);
  const numbers = paper.circles.filter(
    ({ r, fill }) => fill !== null && fill !== BLACK && r > 1.2 && r < 2.4,
  );
  for (const { frame } of shown) {
    const key = keys.get(frame)!;
    const named = numbers.some((circle) =>
      paper.texts.some((text) => text.text === key && off(middleOf(text), circle) < 0.5),
    );
    if (!named) problems.push(`key ${key} of frame ${frame} has no number`);
  }
  return problems;
}

export interface Ruler {
  /** mm along the way, by the ruler's own figures. */
  readonly strokes: readonly number[];
  readonly rows: readonly { readonly text: string; readonly mm: number }[];
  readonly counts: readonly { readonly text: string; readonly mm: number }[];
  readonly keys: readonly { readonly text: string; readonly mm: number }[];
}

/** The strips on a page that lie, or with `upright` those that stand. Read by the figures and ticks of their own rulers. */
export function rulersOn(paper: Paper, upright: boolean, unitMm = 1): Ruler[] {
  const along = ({ x, y }: Place) => (upright ? y : x);
  const across = ({ x, y }: Place) => (upright ? x : y);
  const ends = ({ x1, y1, x2, y2 }: PaperLine): [Place, Place] => [
    { x: x1, y: y1 },
    { x: x2, y: y2 },
  ];
  const lines = paper.lines.map((one) => {
    const [a, b] = ends(one);
    return { ...one, a, b, level: near(across(a), across(b), 1e-3), steep: near(along(a), along(b), 1e-3) };
  });
  const bases = [
    ...new Set(
      lines
        .filter(
          ({ level, pen, ...one }) =>
            level && pen.ink === BLACK && near(pen.widthMm, 0.25, 0.01) && lengthOf({ pen, ...one }) > 8,
        )
        // The rule of 100 mm is none of them.
        .filter((one) => !near(lengthOf(one), 100, 0.01))
        .map(({ a }) => across(a).toFixed(1)),
    ),
  ].map(Number);
  return bases.map((base) => {
    const onBase = lines.filter(
      ({ steep, a, b }) => steep && (near(across(a), base, 0.1) || near(across(b), base, 0.1)),
    );
    const ticks = onBase.filter(
      ({ pen, ...one }) => pen.ink !== BLACK && near(lengthOf({ pen, ...one }), 2.4, 0.01),
    );
    const texts = paper.texts
      .filter(({ angle }) => angle === 0)
      .map((text) => ({ ...text, at: middleOf(text) }));
    const figures = texts.filter(
      ({ at, x, ink, text }) =>
        ink !== BLACK && /^[\d.]+$/.test(text) && near(upright ? x : at.y, base + (upright ? 3.2 : 4.4), 0.6),
    );
    const told = figures.map(({ at, text }) => {
      const tick = ticks.reduce((best, one) =>
        Math.abs(along(one.a) - along(at)) < Math.abs(along(best.a) - along(at)) ? one : best,
      );
      return { at: along(tick.a), mm: Number(text) * unitMm };
    });
    const [first, last] = [told[0]!, told.at(-1)!];
    const way = Math.sign((last.mm - first.mm) * (last.at - first.at));
    const mm = (at: number) => first.mm + way * (at - first.at);
    const strokes = onBase
      .filter(
        ({ pen, ...one }) =>
          pen.ink === BLACK && [3, 4.4].some((long) => near(lengthOf({ pen, ...one }), long, 0.01)),
      )
      .map(({ a }) => mm(along(a)));
    const inLine = (off: number) =>
      texts
        .filter(({ at, endX, ink }) => ink === BLACK && near(upright ? endX : at.y, base - off, 0.6))
        .map(({ text, at }) => ({ text, mm: mm(along(at)) }));
    const [rows, counts, rings] = upright ? [4.8, 21, 29] : [6, 14.4, 10.2];
    const keys = paper.circles
      .filter((circle) => circle.r > 1.2 && near(across(circle), base - rings, 0.6))
      .flatMap((circle) =>
        texts
          .filter(({ at }) => Math.hypot(at.x - circle.x, at.y - circle.y) < 0.5)
          .map(({ text }) => ({ text, mm: mm(along(circle)) })),
      );
    return {
      strokes,
      rows: inLine(rows).filter(({ text }) => /^\d+[+']\d+$/.test(text)),
      counts: inLine(counts).filter(({ text }) => /^\d+$/.test(text)),
      keys,
    };
  });
}

/** `wanted`: mm along the way, one a station. */
export function stripProblems(
  rulers: readonly Ruler[],
  { stations, row, keys, counted }: Truth,
  wanted: readonly number[],
): string[] {
  const problems: string[] = [];
  const strokes = rulers.flatMap((one) => one.strokes);
  for (const mm of strokes)
    if (!wanted.some((one) => near(one, mm, 0.02)))
      problems.push(`a stroke at ${mm.toFixed(2)} mm, where nothing stands`);
  wanted.forEach((mm, i) => {
    if (!strokes.some((one) => near(one, mm, 0.85)))
      problems.push(`no stroke for frame ${stations[i]!.frame}`);
  });
  // A figure stands at its stroke; upright figures are read by their middle, which is known to a tenth of a millimetre only.
  const at = (mm: number, is: (i: number) => boolean) =>
    wanted.some((one, i) => near(one, mm, 0.15) && is(i));
  for (const { text, mm } of rulers.flatMap(({ rows }) => rows))
    if (!at(mm, (i) => row(stations[i]!.frame) === text)) problems.push(`row ${text} at ${mm.toFixed(2)} mm`);
  const counts = rulers.flatMap((one) => one.counts);
  if (counted !== counts.length > 0) problems.push(`${counts.length} counts`);
  for (const { text, mm } of counts)
    if (!at(mm, (i) => String(stations[i]!.count) === text))
      problems.push(`count ${text} at ${mm.toFixed(2)} mm`);
  const rings = rulers.flatMap((one) => one.keys);
  stations.forEach(({ frame }, i) => {
    const key = keys.get(frame);
    if (key !== undefined && !rings.some(({ text, mm }) => text === key && near(mm, wanted[i]!, 5)))
      problems.push(`key ${key} of frame ${frame} has no ring`);
  });
  for (const { text } of rings) if (![...keys.values()].includes(text)) problems.push(`a ring about ${text}`);
  return problems;
}

/** The move table's rows: first and last frame, and the figures behind them. Sets of columns may stand side by side. */
export function tableRows(paper: Paper): { from: number; to: number; cells: string[] }[] {
  const heads = paper.texts
    .filter(({ text, weight }) => weight === 'bold' && /^(time|秒\+コマ)$/.test(text))
    .sort((a, b) => a.endX - b.endX);
  return heads.flatMap((head, i) => {
    const next = heads[i + 1]?.endX ?? paper.widthMm;
    const lines = new Map<string, PaperText[]>();
    for (const text of paper.texts) {
      if (text.weight === 'bold' || text.y < head.y) continue;
      if (text.endX < head.endX - 0.5 || text.endX > next - 0.5) continue;
      const key = text.y.toFixed(1);
      lines.set(key, [...(lines.get(key) ?? []), text]);
    }
    return [...lines.values()].flatMap((line) => {
      const [time, ...cells] = line.sort((a, b) => a.endX - b.endX).map(({ text }) => text);
      const found = /\((\d+)(?:–(\d+))?\)$/.exec(time!);
      return found ? [{ from: Number(found[1]), to: Number(found[2] ?? found[1]), cells }] : [];
    });
  });
}
