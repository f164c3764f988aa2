/** What lies on the strips: bars of the cuts, new drawings, moves, dialogue. */

import type { CutList } from '../../count/count-episode.js';
import type { Frames } from '../../shot/shot.js';
import type { Mark, Pt } from '../display-list.js';
import { black, line, pale } from '../mark-builders.js';
import {
  densityOf,
  HIGHEST,
  newScenes,
  placeOf,
  type StripPiece,
  stripPieces,
  type TimeStrips,
} from './rhythm-strips.js';

/** Heights on a strip, mm from its top; over the bars stand names of scenes and numbers of cuts. */
export interface Bands {
  /** Top of the bars, and of what they hold. */
  readonly bar: number;
  readonly camera: number;
  readonly dialogue: number;
  readonly bottom: number;
  /** Middle of the ruler's figures. */
  readonly ruler: number;
}

export const CAMERA_HATCH = { gapMm: 0.8, stroke: black(0.14) } as const;
export const DIALOGUE_PEN = black(0.16);

/** Ruled along, which no hatch is. */
export function ruled(x1: number, x2: number, top: number, bottom: number): Mark[] {
  return [0.2, 0.5, 0.8].map((share) => {
    const y = top + (bottom - top) * share;
    return line(x1, y, x2, y, DIALOGUE_PEN);
  });
}

export function hatched(x1: number, x2: number, top: number, bottom: number): Mark {
  return { kind: 'hatch', x: x1, y: top, width: x2 - x1, height: bottom - top, ...CAMERA_HATCH };
}

/** Least width of a stretch of which the drawings are counted, mm. */
const STRETCH = 1;

/** Frames over which new drawings are counted: a second, or more where a second is too narrow to be seen. */
export function stretchFrames(strips: TimeStrips, fps: number): number {
  const secondMm = (strips.width * fps) / strips.frames;
  return fps * ([1, 2, 5, 10, 20, 30, 60].find((seconds) => seconds * secondMm >= STRETCH) ?? 60);
}

export function bandMarks(list: CutList, strips: TimeStrips, bands: Bands): Mark[] {
  const y = (strip: number, at: number): number => strips.top + strip * strips.pitch + at;
  return [...densityMarks(), ...rangeMarks(), ...barMarks()];

  function densityMarks(): Mark[] {
    const { bar, camera } = bands;
    const wanted = stretchFrames(strips, list.fps);
    const marks: Mark[] = [];
    list.rows.forEach((row, i) => {
      for (const stretch of densityOf(row, list.placed[i]!, list.fps, wanted)) {
        if (stretch.step === 0) continue;
        const height = ((camera - bar - 0.4) * stretch.step) / HIGHEST;
        for (const { strip, x1, x2 } of stripPieces(strips, stretch.from, stretch.to)) {
          const bottom = y(strip, camera);
          marks.push(column(x1, x2, bottom - height, bottom));
        }
      }
    });
    return marks;
  }

  function rangeMarks(): Mark[] {
    return list.rows.flatMap(({ counted }, i) => {
      const { start, before, frameOfRow } = list.placed[i]!;
      if (!counted) return [];
      const onStrips = ({ from, to }: Frames): StripPiece[] =>
        stripPieces(
          strips,
          start - before + (from - 1) * frameOfRow,
          Math.min(list.totals.running, start - before + to * frameOfRow),
        );
      return [
        ...counted.rhythm.moving
          .flatMap(onStrips)
          .map(({ strip, x1, x2 }) => hatched(x1, x2, y(strip, bands.camera), y(strip, bands.dialogue))),
        ...counted.rhythm.spoken
          .flatMap(onStrips)
          .flatMap(({ strip, x1, x2 }) => ruled(x1, x2, y(strip, bands.dialogue), y(strip, bands.bottom))),
      ];
    });
  }

  function barMarks(): Mark[] {
    const marks: Mark[] = [];
    for (const { strip, x1, x2 } of stripPieces(strips, 0, list.totals.running)) {
      for (const at of [bands.bar, bands.bottom])
        marks.push(line(x1, y(strip, at), x2, y(strip, at), black(0.22)));
      for (const at of [bands.camera, bands.dialogue])
        marks.push(line(x1, y(strip, at), x2, y(strip, at), pale(0.12)));
    }
    const scenes = newScenes(list);
    list.placed.forEach((placed, i) => {
      if (placed.frames <= 0) return;
      const { strip, x } = placeOf(strips, placed.start);
      const before = i > 0 ? list.placed[i - 1]!.after : 0;
      const newScene = scenes.has(i);
      if (placed.before > 0 && before > 0) {
        marks.push(...crossing(placed.start - placed.before, placed.start + before));
        if (!newScene) return;
      }
      const top = newScene ? 0 : bands.bar;
      marks.push(cleared(x, y(strip, bands.bar), y(strip, bands.camera)));
      marks.push(line(x, y(strip, top), x, y(strip, bands.bottom), black(newScene ? 0.5 : 0.22)));
    });
    const last = placeOf(strips, list.totals.running, true);
    marks.push(line(last.x, y(last.strip, bands.bar), last.x, y(last.strip, bands.bottom), black(0.5)));
    return marks;
  }

  /** A dissolve: one picture goes down while the other comes up. */
  function crossing(from: number, to: number): Mark[] {
    return stripPieces(strips, from, to).flatMap((piece) => {
      const share = (time: number): number => (time - from) / (to - from);
      const top = y(piece.strip, bands.bar);
      const height = bands.bottom - bands.bar;
      const [a, b] = [top + height * share(piece.from), top + height * share(piece.to)];
      const mirrored = (at: number): number => 2 * top + height - at;
      return [
        line(piece.x1, a, piece.x2, b, black(0.3)),
        line(piece.x1, mirrored(a), piece.x2, mirrored(b), black(0.3)),
      ];
    });
  }
}

/** Paper to both sides of a line that parts two cuts, so that it is seen between blocks of grey. */
function cleared(x: number, top: number, bottom: number): Mark {
  return { ...block(x - 0.4, x + 0.4, top + 0.2, bottom), fill: 'paper' };
}

/** A block of grey. */
export function column(x1: number, x2: number, top: number, bottom: number): Mark {
  return { ...block(x1, x2, top, bottom), fill: 'grey' };
}

function block(x1: number, x2: number, top: number, bottom: number): Extract<Mark, { kind: 'path' }> {
  const points: Pt[] = [
    [x1, top],
    [x2, top],
    [x2, bottom],
    [x1, bottom],
  ];
  return { kind: 'path', points, closed: true, stroke: null, fill: null };
}
