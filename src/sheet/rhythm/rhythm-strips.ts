/** The running time folded into strips, one under the other like lines of text, and what is counted along it. Times are frames of the episode. */

import type { CutList, PlacedCut } from '../../count/count-episode.js';
import type { CutRow } from '../../count/cut-row.js';
import type { Box } from '../mark-builders.js';

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
export interface StripPiece {
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
