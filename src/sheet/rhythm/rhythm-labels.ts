/** Words and figures on the strips: scenes, cut numbers, the ruler of time, where the budget ends. */

import type { CutList } from '../../count/count-episode.js';
import { type ListPaper, lengthText } from '../cut-list/cut-list-paper.js';
import type { Mark } from '../display-list.js';
import { black, line, pale, textAt } from '../mark-builders.js';
import { type Bands, newScenes, placeOf, stripPieces, type TimeStrips } from './rhythm-strips.js';

/** `12:05`: minutes and seconds. */
export function clock(seconds: number): string {
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}

export interface StripPrint {
  /** Of cut numbers. */
  readonly labelMm: number;
  /** Of scenes and ruler. */
  readonly smallMm: number;
}

/** A strip's width that a text takes. */
interface Taken {
  readonly strip: number;
  readonly from: number;
  readonly to: number;
}

const APART = 0.6;

const isFree = (taken: readonly Taken[], { strip, from, to }: Taken): boolean =>
  !taken.some((one) => one.strip === strip && from < one.to + APART && to > one.from - APART);

export const labelOf = ({ cut, sound }: { cut: string; sound: boolean }): string =>
  `${cut}${sound ? '' : '!'}`;

/** Numbers of the cuts, then the names of scenes where they begin, as far as they have room over them. */
export function nameMarks(
  paper: ListPaper,
  list: CutList,
  strips: TimeStrips,
  bands: Bands,
  print: StripPrint,
): Mark[] {
  const { labelMm, smallMm } = print;
  const set = { sizeMm: labelMm, weight: 'bold', anchor: 'start' } as const;
  const width = (text: string): number => paper.metrics.width(text, labelMm, 'bold') + 0.8;
  const room = {
    end: strips.left + strips.width,
    lineMm: labelMm * 0.8 + 0.75,
    highest: bands.bar - 0.1,
    width,
  };
  const marks: Mark[] = [];
  const taken: Taken[] = [];
  for (const [strip, labels] of numbersOf(list, strips)) {
    const bottom = strips.top + strip * strips.pitch + bands.bar;
    for (const { text, x, upwards } of setLabels(labels, room)) {
      if (upwards) taken.push({ strip, from: x, to: x + labelMm });
      marks.push(
        upwards
          ? textAt(x + 0.35 + labelMm * 0.4, bottom - 0.35, text, { ...set, turn: -90 })
          : textAt(x + 0.45, bottom - labelMm * 0.62, text, set),
      );
    }
  }
  let scene = '';
  list.rows.forEach((row, i) => {
    const { start, frames } = list.placed[i]!;
    if (frames <= 0 || row.scene === scene) return;
    scene = row.scene;
    if (scene === '') return;
    const { strip, x } = placeOf(strips, start);
    const text = paper.words.scene(scene);
    const long = paper.metrics.width(text, smallMm, 'regular');
    for (const aside of [0.7, 0.9 + labelMm + APART]) {
      const wanted = { strip, from: x + aside, to: x + aside + long };
      if (wanted.to > room.end || !isFree(taken, wanted)) continue;
      taken.push(wanted);
      const y = strips.top + strip * strips.pitch + smallMm * 0.55;
      marks.push(textAt(wanted.from, y, text, { sizeMm: smallMm, anchor: 'start' }));
      return;
    }
  });
  return marks;
}

function numbersOf(list: CutList, strips: TimeStrips): Map<number, Labelled[]> {
  const byStrip = new Map<number, Labelled[]>();
  const scenes = newScenes(list);
  list.rows.forEach((row, i) => {
    const { start, frames } = list.placed[i]!;
    stripPieces(strips, start, start + frames).forEach(({ strip, x1 }, n) => {
      // A cut that goes on from the strip above is named again, in brackets, where that has room.
      const again = n > 0;
      const text = again ? `(${labelOf(row)})` : labelOf(row);
      const label = { text, x: x1, across: again, walled: !again && scenes.has(i) };
      const known = byStrip.get(strip);
      if (known) known.push(label);
      else byStrip.set(strip, [label]);
    });
  });
  return byStrip;
}

/** Seconds that a ruler may count in. */
const RULES = [1, 2, 5, 10, 15, 30, 60, 120, 300, 600];

/** `total`: frames that the strips show. */
export function rulerMarks(
  paper: ListPaper,
  list: CutList,
  total: number,
  strips: TimeStrips,
  bands: Bands,
  print: StripPrint & { readonly gutterMm: number },
): Mark[] {
  const { labelMm, smallMm, gutterMm } = print;
  const { fps } = list;
  const secondMm = (strips.width * fps) / strips.frames;
  const stripSeconds = strips.frames / fps;
  const wide = paper.metrics.width('88:88', smallMm, 'regular');
  const named = RULES.find((one) => one * secondMm >= wide * 2.6) ?? 600;
  const ticked = RULES.find((one) => one * secondMm >= 0.9) ?? 600;
  const marks: Mark[] = [];
  const taken: Taken[] = [];
  const budget = budgetMarks(paper, list, strips, bands, smallMm);
  if (budget) {
    marks.push(...budget.marks);
    taken.push(budget.taken);
  }
  for (let strip = 0; strip < strips.count; strip++) {
    const top = strips.top + strip * strips.pitch;
    const first = strip * stripSeconds;
    const begins = clock(first);
    const most = (gutterMm - 1.5) / paper.metrics.width(begins, 1, 'bold');
    marks.push(
      textAt(strips.left - 1.2, top + (bands.bar + bands.bottom) / 2, begins, {
        sizeMm: Math.max(paper.least, Math.min(labelMm * 1.1, most)),
        weight: 'bold',
        anchor: 'end',
      }),
    );
    const last = Math.min(stripSeconds, Math.ceil(total / fps - first - 1e-9));
    for (let second = 0; second <= last; second += ticked) {
      const x = strips.left + second * secondMm;
      const isNamed = (first + second) % named === 0;
      const long = isNamed ? 0.9 : (first + second) % 5 === 0 ? 0.7 : 0.4;
      const y = top + bands.bottom + 0.15;
      marks.push(line(x, y, x, y + long, pale(isNamed ? 0.3 : 0.15)));
      if (!isNamed || second === 0 || second >= stripSeconds) continue;
      const text = clock(first + second);
      const half = paper.metrics.width(text, smallMm, 'regular') / 2;
      if (x + half > strips.left + strips.width || !isFree(taken, { strip, from: x - half, to: x + half }))
        continue;
      marks.push(textAt(x, top + bands.ruler, text, { sizeMm: smallMm, ink: 'grey' }));
    }
  }
  return marks;
}

/** A double line through the strip on which the budget ends, named under it; null where there is none, or far beyond. */
function budgetMarks(
  paper: ListPaper,
  { budget, fps }: CutList,
  strips: TimeStrips,
  bands: Bands,
  sizeMm: number,
): { marks: Mark[]; taken: Taken } | null {
  if (budget === null || budget > strips.count * strips.frames) return null;
  const { strip, x } = placeOf(strips, budget, true);
  const top = strips.top + strip * strips.pitch;
  const text = `${paper.words.legend.budget} ${lengthText(paper, budget, fps)}`;
  const long = paper.metrics.width(text, sizeMm, 'bold') + 1;
  const before = x + long > strips.left + strips.width;
  return {
    marks: [
      ...[-0.35, 0.35].map((aside) =>
        line(x + aside, top + bands.bar, x + aside, top + bands.ruler + sizeMm * 0.4, black(0.4)),
      ),
      textAt(before ? x - 1 : x + 1, top + bands.ruler, text, {
        sizeMm,
        weight: 'bold',
        anchor: before ? 'end' : 'start',
      }),
    ],
    taken: { strip, from: before ? x - long : x - 0.6, to: before ? x + 0.6 : x + long },
  };
}

export interface Labelled {
  readonly text: string;
  readonly x: number;
  /** Never upwards. */
  readonly across?: boolean;
  /** A line stands at its x that no label before it may cross. */
  readonly walled?: boolean;
}

export interface SetLabel {
  readonly text: string;
  readonly x: number;
  readonly upwards: boolean;
}

export interface LabelRoom {
  /** Right end of the strip. */
  readonly end: number;
  /** Height of a line, which one that stands upwards takes across. */
  readonly lineMm: number;
  /** The longest that one may be that stands upwards. */
  readonly highest: number;
  width(text: string): number;
}

/** `labels` of one strip, from left to right. */
export function setLabels(
  labels: readonly Labelled[],
  { end, lineMm, highest, width }: LabelRoom,
): SetLabel[] {
  const set: SetLabel[] = [];
  let free = Number.NEGATIVE_INFINITY;
  labels.forEach(({ text, x, across = false }, i) => {
    if (x < free) return;
    const long = width(text);
    const next = labels[i + 1]?.x ?? end;
    const lies = x + long <= next - lineMm * 0.1;
    const stands = !across && long <= highest && x + lineMm <= end + lineMm * 0.5 && !wallWithin(i);
    if (!lies && !stands) return;
    set.push({ text, x, upwards: !lies });
    free = x + (lies ? long : lineMm);
  });
  return set;

  function wallWithin(i: number): boolean {
    for (let at = i + 1; at < labels.length && labels[at]!.x < labels[i]!.x + lineMm; at++)
      if (labels[at]!.walled) return true;
    return false;
  }
}
