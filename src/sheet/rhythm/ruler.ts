/** Words and figures on the strips: scenes, cut numbers, the ruler of time, where the budget ends. */

import type { CutList } from '../../count/list.js';
import type { Stage } from '../cut-list/frame.js';
import { lengthText } from '../cut-list/frame.js';
import { black, line, pale, textAt } from '../draw.js';
import type { Mark } from '../marks.js';
import type { Bands } from './bands.js';
import { type Labelled, setLabels } from './labels.js';
import { piecesOf, placeOf, type Strips } from './strips.js';

/** `12:05`: minutes and seconds. */
export function clock(seconds: number): string {
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}

export interface Print {
  /** Of cut numbers. */
  readonly labelMm: number;
  /** Of scenes and ruler. */
  readonly smallMm: number;
}

export const labelOf = ({ cut, sound }: { cut: string; sound: boolean }): string =>
  `${cut}${sound ? '' : '!'}`;

export function numberMarks(stage: Stage, list: CutList, strips: Strips, bands: Bands, print: Print): Mark[] {
  const { labelMm } = print;
  const width = (text: string): number => stage.metrics.width(text, labelMm, 'bold') + 0.5;
  const byStrip = new Map<number, Labelled[]>();
  list.rows.forEach((row, i) => {
    const { start, frames } = list.placed[i]!;
    piecesOf(strips, start, start + frames).forEach(({ strip, x1 }, n) => {
      // A cut that goes on from the strip above is named again, in brackets.
      const text = n === 0 ? labelOf(row) : `(${labelOf(row)})`;
      byStrip.set(strip, [...(byStrip.get(strip) ?? []), { text, x: x1 }]);
    });
  });
  return [...byStrip].flatMap(([strip, labels]) => {
    const top = strips.top + strip * strips.pitch;
    const bottom = top + bands.bar;
    const end = strips.left + strips.width;
    return setLabels(labels, end, width, labelMm * 1.02).map(({ text, x, upwards }) =>
      upwards
        ? textAt(x + labelMm * 0.5, bottom - 0.25, text, {
            sizeMm: labelMm,
            weight: 'bold',
            anchor: 'start',
            turn: -90,
          })
        : textAt(x + 0.4, bottom - labelMm * 0.58, text, {
            sizeMm: labelMm,
            weight: 'bold',
            anchor: 'start',
          }),
    );
  });
}

/** Names of scenes where they begin, as far as they have room, and the mark of the budget, which has it always. */
export function sceneMarks(
  stage: Stage,
  list: CutList,
  strips: Strips,
  bands: Bands,
  { smallMm }: Print,
): Mark[] {
  const marks: Mark[] = [];
  const taken: { strip: number; from: number; to: number }[] = [];
  const place = (strip: number, from: number, to: number): boolean => {
    if (taken.some((one) => one.strip === strip && from < one.to + 0.6 && to > one.from - 0.6)) return false;
    taken.push({ strip, from, to });
    return true;
  };
  const middle = (strip: number): number => strips.top + strip * strips.pitch + bands.scene + smallMm * 0.55;
  const right = strips.left + strips.width;
  if (list.budget !== null && list.budget <= strips.count * strips.frames) {
    const { strip, x } = placeOf(strips, list.budget, true);
    const top = strips.top + strip * strips.pitch;
    for (const aside of [-0.35, 0.35])
      marks.push(line(x + aside, top + bands.scene, x + aside, top + bands.bottom + 0.8, black(0.4)));
    const text = `${stage.words.legend.budget} ${lengthText(stage, list.budget, list.fps)}`;
    const width = stage.metrics.width(text, smallMm, 'bold');
    const left = x + 1 + width > right;
    place(strip, left ? x - 1 - width : x - 0.6, left ? x + 0.6 : x + 1 + width);
    marks.push(
      textAt(left ? x - 1 : x + 1, middle(strip), text, {
        sizeMm: smallMm,
        weight: 'bold',
        anchor: left ? 'end' : 'start',
      }),
    );
  }
  let scene = '';
  list.rows.forEach((row, i) => {
    const { start, frames } = list.placed[i]!;
    if (frames <= 0 || row.scene === scene) return;
    scene = row.scene;
    if (scene === '') return;
    const { strip, x } = placeOf(strips, start);
    const text = stage.words.scene(scene);
    const width = stage.metrics.width(text, smallMm, 'regular');
    const to = x + 0.7 + width;
    if (to <= right && place(strip, x, to))
      marks.push(textAt(x + 0.7, middle(strip), text, { sizeMm: smallMm, anchor: 'start' }));
  });
  return marks;
}

const RULES = [1, 2, 5, 10, 15, 30, 60, 120, 300, 600];

export function rulerMarks(
  stage: Stage,
  total: number,
  fps: number,
  strips: Strips,
  bands: Bands,
  gutterMm: number,
  { labelMm, smallMm }: Print,
): Mark[] {
  const secondMm = (strips.width * fps) / strips.frames;
  const stripSeconds = strips.frames / fps;
  const room = stage.metrics.width('88:88', smallMm, 'regular');
  const named =
    RULES.find((one) => one * secondMm >= room * 1.5 && (stripSeconds % one === 0 || one > 60)) ?? 600;
  const ticked = RULES.find((one) => one * secondMm >= 0.9) ?? 600;
  const marks: Mark[] = [];
  for (let strip = 0; strip < strips.count; strip++) {
    const top = strips.top + strip * strips.pitch;
    const first = strip * stripSeconds;
    marks.push(
      textAt(strips.left - 1.2, top + (bands.bar + bands.bottom) / 2, clock(first), {
        sizeMm: fitted(stage, clock(first), gutterMm - 1.5, labelMm * 1.1),
        weight: 'bold',
        anchor: 'end',
      }),
    );
    const last = Math.min(stripSeconds, Math.ceil(total / fps - first - 1e-9));
    for (let second = 0; second <= last; second += ticked) {
      const x = strips.left + second * secondMm;
      const isNamed = (first + second) % named === 0;
      const long = isNamed ? 0.9 : (first + second) % 5 === 0 ? 0.7 : 0.4;
      marks.push(
        line(x, top + bands.bottom + 0.15, x, top + bands.bottom + 0.15 + long, pale(isNamed ? 0.3 : 0.15)),
      );
      if (!isNamed || second === 0 || second >= stripSeconds) continue;
      marks.push(textAt(x, top + bands.ruler, clock(first + second), { sizeMm: smallMm, ink: 'grey' }));
    }
  }
  return marks;
}

function fitted(stage: Stage, text: string, room: number, most: number): number {
  return Math.max(stage.least, Math.min(most, room / stage.metrics.width(text, 1, 'bold')));
}
