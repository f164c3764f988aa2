/** The running time folded into strips, one under the other like lines of text, and what is counted along it. Times are frames of the episode. */

import type { CutList, PlacedCut } from '../../count/count-episode.js';
import type { CutRow } from '../../count/cut-row.js';
import type { Frames } from '../../shot/shot.js';
import type { Mark, Pt } from '../display-list.js';
import { type Box, black, line, pale } from '../mark-builders.js';

export interface TimeStrips {
  /** Frames of a whole strip. */
  readonly frames: number;
  readonly count: number;
  readonly left: number;
  readonly width: number;
  readonly top: number;
  /** From one strip's top to the next. */
  readonly pitch: number;
}

/** A stretch of time on one strip. */
interface StripPiece {
  readonly strip: number;
  readonly x1: number;
  readonly x2: number;
  readonly from: number;
  readonly to: number;
}

/** Seconds of a strip that a person can count in. */
const SECONDS = [10, 15, 20, 30, 45, 60, 90, 120, 180, 240, 300, 360, 480, 600, 900, 1200, 1800, 2400, 3600];

/**
 * Strips as short as the room allows, so that a second is as wide as can be, but no wider than `widestMm`.
 * `lowest`: height that a strip needs.
 */
export function stripsFor(
  total: number,
  fps: number,
  room: Box,
  { lowest, highest, widestMm }: { lowest: number; highest: number; widestMm: number },
): TimeStrips {
  const most = Math.max(1, Math.floor(room.height / lowest));
  const seconds =
    SECONDS.find((one) => one * widestMm >= room.width && Math.ceil(total / (one * fps)) <= most) ??
    Math.max(SECONDS.at(-1)!, Math.ceil(total / fps / most));
  const frames = seconds * fps;
  const count = Math.max(1, Math.ceil(total / frames - 1e-9));
  return {
    ...{ frames, count },
    left: room.x,
    width: room.width,
    top: room.y,
    pitch: Math.min(highest, room.height / count),
  };
}

/** Where a moment stands; the end of a strip belongs to it, not to the next, where `end` is said. */
export function placeOf(strips: TimeStrips, time: number, end = false): { strip: number; x: number } {
  const { frames, count, left, width } = strips;
  const at = time / frames;
  const strip = Math.max(0, Math.min(count - 1, end ? Math.ceil(at - 1e-9) - 1 : Math.floor(at + 1e-9)));
  return { strip, x: left + (at - strip) * width };
}

/** A stretch of time cut at the ends of the strips; nothing for an empty one. */
export function stripPieces(strips: TimeStrips, from: number, to: number): StripPiece[] {
  const begin = Math.max(0, from);
  const end = Math.min(strips.count * strips.frames, to);
  const pieces: StripPiece[] = [];
  for (let at = begin; at < end - 1e-9; ) {
    const { strip, x } = placeOf(strips, at);
    const stop = Math.min(end, (strip + 1) * strips.frames);
    pieces.push({ strip, x1: x, x2: placeOf(strips, stop, true).x, from: at, to: stop });
    at = stop;
  }
  return pieces;
}

/** New drawings a second up to which each step reaches; the last has no end. On ones a single level brings 24, on twos 12. */
export const DENSITY_STEPS = [2, 4, 8, 12] as const;
export const HIGHEST = DENSITY_STEPS.length + 1;

/** 0 for nothing new, up to HIGHEST. */
export function densityStep(aSecond: number): number {
  if (aSecond <= 0) return 0;
  const step = DENSITY_STEPS.findIndex((most) => aSecond <= most + 1e-9);
  return step < 0 ? HIGHEST : step + 1;
}

export interface DensityStretch {
  /** Running time, frames of the episode. */
  readonly from: number;
  readonly to: number;
  readonly fresh: number;
  readonly step: number;
}

/**
 * The cut's share of the running time in stretches of about `wanted` frames, equally long. A drawing that is first seen under
 * a dissolve, outside that share, counts in the stretch beside it: every drawing counts once.
 */
export function densityOf(
  { counted }: CutRow,
  placed: PlacedCut,
  fps: number,
  wanted: number,
): DensityStretch[] {
  const { start, frames, before, frameOfRow } = placed;
  if (!counted || frames <= 0) return [];
  const count = Math.max(1, Math.round(frames / wanted));
  const length = frames / count;
  const fresh = new Array<number>(count).fill(0);
  for (const row of counted.rhythm.fresh) {
    const at = (row - 1) * frameOfRow - before;
    fresh[Math.max(0, Math.min(count - 1, Math.floor(at / length + 1e-9)))]! += 1;
  }
  return fresh.map((drawings, i) => ({
    from: start + i * length,
    to: start + (i + 1) * length,
    fresh: drawings,
    step: densityStep((drawings * fps) / length),
  }));
}

/** Places in the list of the cuts that begin another scene than that of the cut before; not the first. Only what runs is seen. */
export function newScenes({ rows, placed }: CutList): ReadonlySet<number> {
  const found = new Set<number>();
  let scene: string | null = null;
  rows.forEach((row, i) => {
    if (placed[i]!.frames <= 0) return;
    if (scene !== null && row.scene !== scene) found.add(i);
    scene = row.scene;
  });
  return found;
}

// ---- what lies on the strips: bars of the cuts, new drawings, moves, dialogue

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
