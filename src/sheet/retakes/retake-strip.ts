/**
 * Rows of a sheet before and after a change, side by side: what is typed of them in the column that differs. Rows that say nothing
 * are left out where there are many.
 */

import { rowName } from '../../shot/time-notation.js';
import type { SolvedLight, SolvedMove } from '../../solve/camera/solved-camera.js';
import type { SolvedLevel, SolvedShot } from '../../solve/solved-shot.js';
import { wordsOf } from '../../words/words.js';
import { BAR, barMark } from '../change-bars.js';
import { heldText, type KeySign, keySigns } from '../column-entries.js';
import type { Mark } from '../display-list.js';
import { HOLD, HOLD_GAP, inBrackets, numberSize, type SignPaper, signMarks } from '../drawing-columns.js';
import { type Box, black, line, pale, polyline, textAt } from '../mark-builders.js';
import type { PageLook, RowPlace } from '../page-look.js';
import { cameraTexts, noteTexts, type RowTexts, speechTexts } from '../row-texts.js';
import { unitOf } from '../sheet-geometry.js';
import { cachedMetrics, cutToFit, fitLine } from '../text-fitting.js';

/** Frames from..to, both included. */
export interface ChangedRows {
  readonly from: number;
  readonly to: number;
}

/** Where a change is seen. A level that had another name is found by that one before. */
export interface StripPlace {
  readonly place: RowPlace;
  readonly earlierLevel: string | null;
  readonly rows: ChangedRows;
  /** One a row of the sheet after it: whether it gets a bar. */
  readonly differs: readonly boolean[];
  /** The one move or light that is shown of the camera. Null: all of them. */
  readonly camera: ChangedThing | null;
}

/** Null: the version does not have it. */
export interface ChangedThing {
  readonly was: SolvedMove | SolvedLight | null;
  readonly is: SolvedMove | SolvedLight | null;
}

export interface RetakeStrip {
  readonly heightMm: number;
  at(x: number, y: number): Mark[];
}

export interface StripSize {
  /** Of the row names, and of each of the two versions. */
  readonly namesMm: number;
  readonly versionMm: number;
  readonly rowMm: number;
  readonly leastTextMm: number;
}

/** More rows than this are never shown of one change. */
const MOST_ROWS = 14;
/** Rows shown before and after those that differ. */
const AROUND = 2;

export function retakeStrip(
  was: SolvedShot,
  is: SolvedShot,
  where: StripPlace,
  look: PageLook,
  size: StripSize,
): RetakeStrip {
  const { place, earlierLevel, rows, differs, camera } = where;
  const placeBefore: RowPlace = earlierLevel === null ? place : { kind: 'level', level: earlierLevel };
  const before = columnOf(was, placeBefore, look, camera?.was);
  const after = columnOf(is, place, look, camera?.is);
  const frames = rowsShown(
    rows,
    Math.max(before.length, after.length),
    (frame) => [before, after].some((column) => column.begins(frame)),
    differs,
  );
  const { namesMm, versionMm, rowMm, leastTextMm } = size;
  const metrics = cachedMetrics(look.metrics);
  const feet = is.shot.settings.convention === 'west';
  const unit = unitOf(is.shot.settings, is.shot.fps);
  const paper: SignPaper = { geometry: { rowMm, leastTextMm }, plan: { metrics } };
  const width = namesMm + 2 * versionMm;
  return {
    heightMm: frames.length * rowMm,
    at(x, y) {
      const marks: Mark[] = [];
      const bottom = y + frames.length * rowMm;
      for (const at of [x, x + namesMm, x + namesMm + versionMm, x + width])
        marks.push(line(at, y, at, bottom, pale(0.25)));
      marks.push(line(x, y, x + width, y, pale(0.25)));
      frames.forEach((frame, i) => {
        const top = y + i * rowMm;
        const next = frames[i + 1];
        if (next !== undefined && next > frame + 1)
          marks.push(
            ...tear(x, top + rowMm, namesMm),
            line(x + namesMm, top + rowMm, x + width, top + rowMm, black(0.14)),
          );
        else marks.push(line(x, top + rowMm, x + width, top + rowMm, pale(0.18)));
        const name = rowName(frame, unit, feet);
        const fit = fitLine(metrics, name, namesMm - 1, { most: rowMm * 0.62, least: leastTextMm });
        marks.push(textAt(x + namesMm - 0.6, top + rowMm / 2, name, { ...fit, anchor: 'end', ink: 'grey' }));
        [before, after].forEach((column, v) => {
          const box = { x: x + namesMm + v * versionMm, y: top, width: versionMm, height: rowMm };
          if (frame <= column.length) marks.push(...column.marks(paper, box, frame, frames[i - 1] ?? null));
          else marks.push({ kind: 'tint', ...box });
        });
        if (differs[frame - 1])
          marks.push(
            barMark({ x: x + namesMm + versionMm + 0.35, y: top + 0.2, width: BAR, height: rowMm - 0.4 }),
          );
      });
      return marks;
    },
  };
}

/**
 * Rising. All rows near the change where they are few, else those on which something begins, and the first and last of each run of rows
 * that differ.
 */
export function rowsShown(
  { from, to }: ChangedRows,
  length: number,
  begins: (frame: number) => boolean,
  differs: readonly boolean[],
): number[] {
  const first = Math.max(1, Math.min(from, length) - AROUND);
  const last = Math.min(length, Math.max(to, from) + AROUND);
  const all = Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => first + i);
  if (all.length <= MOST_ROWS) return all;
  const ends = (frame: number) => differs[frame - 1] && !(differs[frame - 2] && differs[frame]);
  const told = all.filter(
    (frame) => frame === first || frame === from || frame === last || begins(frame) || ends(frame),
  );
  if (told.length <= MOST_ROWS) return told;
  return [...told.slice(0, MOST_ROWS - 1), last];
}

/** Rows are left out here. */
function tear(x: number, y: number, width: number): Mark[] {
  const steps = 8;
  const points = Array.from({ length: steps + 1 }, (_, i): [number, number] => [
    x + (width * i) / steps,
    y + (i % 2 === 0 ? -0.25 : 0.25),
  ]);
  return [polyline(points, black(0.14))];
}

/** One column of one version. */
interface VersionColumn {
  /** Rows of the version; 0 where it has no such column. */
  readonly length: number;
  begins(frame: number): boolean;
  /** `before`: the frame of the row above this one, if there is one. */
  marks(paper: SignPaper, box: Box, frame: number, before: number | null): Mark[];
}

function columnOf(
  solved: SolvedShot,
  place: RowPlace,
  look: PageLook,
  only: SolvedMove | SolvedLight | null | undefined,
): VersionColumn {
  const { shot } = solved;
  if (place.kind === 'level') {
    const level = solved.levels.find(({ name }) => name === place.level);
    return level ? levelColumn(level, look) : NO_COLUMN;
  }
  const words = wordsOf(look.settings).sheet;
  const texts = {
    speech: () => speechTexts(shot, ['voice', 'sound', 'music'], words),
    camera: () => cameraTexts(solved, look.settings, only),
    notes: () => noteTexts(shot),
  }[place.kind]();
  return textColumn(texts, shot.length);
}

const NO_COLUMN: VersionColumn = { length: 0, begins: () => false, marks: () => [] };

/** Where the finished number stands across a column, and the sign. */
const SIGN_AT = 0.34;
const NUMBER_AT = 0.78;

function levelColumn({ exposures, ...level }: SolvedLevel, look: PageLook): VersionColumn {
  const signs: readonly (KeySign | null)[] = keySigns({ exposures, ...level }, look.settings.convention);
  return {
    length: exposures.length,
    begins: (frame) => signs[frame - 1] != null,
    marks(paper, { x, y, width, height }, frame, before) {
      const sign = signs[frame - 1] ?? null;
      const middle = y + height / 2;
      const at = x + width * SIGN_AT;
      const room = width * 2 * SIGN_AT - 2;
      const { cel, drawing } = exposures[frame - 1]!;
      // The row above may be many frames before: what began between the two is held here.
      const shownAbove = before !== null && !signs.slice(before, frame).some((one) => one !== null);
      if (shownAbove)
        return drawing === null ? [] : [line(at, y, at, y + height - height * HOLD_GAP * 0.5, HOLD)];
      const number = cel === null ? '' : String(cel);
      const fit = numberSize(paper, number, width * 0.4);
      return [
        ...(sign
          ? signMarks(paper, sign, at, middle, room)
          : [inBrackets(paper, heldText(signs, frame), at, middle, room)]),
        ...(number === ''
          ? []
          : [textAt(x + width * NUMBER_AT, middle, number, { sizeMm: fit.sizeMm, squeeze: fit.squeeze })]),
      ];
    },
  };
}

function textColumn(texts: RowTexts, length: number): VersionColumn {
  return {
    length,
    begins: (frame) => texts.on(frame) !== '',
    marks({ geometry, plan }, { x, y, width, height }, frame) {
      const text = texts.on(frame);
      const marks: Mark[] = texts.lasts(frame)
        ? [line(x + 1.7, y + 0.2, x + 1.7, y + height - 0.2, black(0.2))]
        : [];
      if (text === '') return marks;
      const fit = cutToFit(plan.metrics, text, width - 3, {
        most: height * 0.66,
        least: geometry.leastTextMm,
      });
      return [...marks, textAt(x + 2.4, y + height / 2, fit.text, { ...sizeOf(fit), anchor: 'start' })];
    },
  };
}

const sizeOf = ({ sizeMm, squeeze }: { sizeMm: number; squeeze: number }) => ({ sizeMm, squeeze });
