/** The public, versioned form of a solved cut. schema.json beside this file describes it. */

import type { Diagnostic } from '../language/diagnostic.js';
import { messageOf } from '../language/message.js';
import { lines, placeAt } from '../language/source.js';
import type { Settings } from '../shot/settings.js';
import type { Level } from '../shot/shot.js';
import type { Artwork, PlacementFrame } from '../solve/camera/solved-camera.js';
import type { SolvedLevel, SolvedShot, SolvedTrack } from '../solve/solved-shot.js';

/** Raised when something that is there changes its meaning or goes; additions leave it. */
export const EXPORT_VERSION = 1;

/** What was remarked on, with its place; line and column count from 1, columns in UTF-16 units. */
export interface ExportedRemark {
  readonly code: string;
  readonly severity: string;
  readonly message: string;
  readonly file: string;
  readonly line: number;
  readonly column: number;
}

export interface Exported {
  readonly version: typeof EXPORT_VERSION;
  readonly cut: string;
  readonly title: string;
  readonly fps: number;
  /** Without handles, frames. */
  readonly time: number;
  /** Rows of the sheet. */
  readonly length: number;
  readonly handles: { readonly head: number; readonly tail: number };
  /** Bottom to top; a level with no timeline has empty lists. */
  readonly levels: readonly ExportedLevel[];
  /** One a frame; mm, degrees clockwise. `field` is the width in lines of the field chart. */
  readonly camera: readonly ExportedCamera[];
  /** By level, for every level of the stack; one a frame. */
  readonly placement: Readonly<Record<string, readonly ExportedPlacement[]>>;
  /** By level, mm. Null: no size is said and none needs to be; or nothing of the level ever shows. */
  readonly artwork: Readonly<Record<string, ExportedArtwork>>;
  /** Only where the cut names a recording. */
  readonly track?: ExportedTrack;
  readonly counts: {
    readonly keys: number;
    readonly breakdowns: number;
    readonly inbetweens: number;
    readonly drawings: number;
    /** Painted pictures of backgrounds and overlays, in none of the others. */
    readonly backgrounds: number;
  };
  readonly diagnostics: readonly ExportedRemark[];
}

export interface ExportedTrack {
  /** As the text names it. */
  readonly file: string;
  /** The row on whose beginning it is first heard. */
  readonly frame: number;
  /** Where in the recording that is. */
  readonly startSeconds: number;
  /** The rest is null where the recording could not be read: length of the whole file, and the rows on which it is heard. */
  readonly seconds: number | null;
  readonly sampleRate: number | null;
  readonly channels: number | null;
  readonly firstFrame: number | null;
  readonly lastFrame: number | null;
}

export interface ExportedLevel {
  readonly name: string;
  readonly title: string;
  /** One a frame. */
  readonly exposures: readonly {
    readonly frame: number;
    readonly kind: 'key' | 'breakdown' | 'inbetween' | 'empty';
    readonly drawing: string | null;
    readonly cel: number | null;
    readonly starts: boolean;
  }[];
  /** By number. */
  readonly drawings: readonly {
    readonly cel: number;
    readonly drawing: string;
    readonly kind: 'key' | 'breakdown' | 'inbetween';
    readonly firstFrame: number;
  }[];
  /** Levels that it is drawn to, in register, and that it hides where it is painted; only where there are some. */
  readonly drawnWith?: readonly string[];
  readonly masks?: readonly string[];
  readonly passages: readonly {
    readonly from: string;
    readonly to: string;
    readonly fractions: readonly number[];
  }[];
}

export interface ExportedCamera {
  readonly frame: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly percent: number;
  readonly field: number;
  readonly rotation: number;
}

export interface ExportedPlacement {
  readonly frame: number;
  /** Displacement from the level's home. */
  readonly x: number;
  readonly y: number;
  readonly scale: number;
  readonly rotation: number;
  /** The same seen from the camera, mm on the standard field. */
  readonly screenX: number;
  readonly screenY: number;
  /** The same in pixels of the finished picture from its centre, where they were asked for. */
  readonly pixelX?: number;
  readonly pixelY?: number;
}

export interface ExportedArtwork {
  readonly width: number | null;
  readonly height: number | null;
  readonly neededWidth: number | null;
  readonly neededHeight: number | null;
  readonly neededX: number | null;
  readonly neededY: number | null;
}

/** `sources`: the texts that the diagnostics point into, by name. */
export function toJson(
  solved: SolvedShot,
  diagnostics: readonly Diagnostic[],
  sources: ReadonlyMap<string, string> = new Map(),
  options: ExportOptions = {},
): Exported {
  const { shot, counts, camera } = solved;
  return {
    version: EXPORT_VERSION,
    cut: shot.cut,
    title: shot.title,
    fps: shot.fps,
    time: shot.time,
    length: shot.length,
    handles: { head: shot.handles.head, tail: shot.handles.tail },
    levels: solved.levels.map((one, i) => level(one, shot.levels[i]!)),
    camera: camera.frames.map(({ frame, x, y, width, percent, field, rotation }) => ({
      frame,
      x,
      y,
      width,
      percent,
      field,
      rotation,
    })),
    placement: byLevel(camera.placement, (frames) =>
      frames.map((one, index) => ({
        ...placed(one, index + 1),
        ...(options.pixels ? pixelsOf(one, shot.settings) : {}),
      })),
    ),
    artwork: byLevel(camera.artwork, artwork),
    ...(solved.track ? { track: exportedTrack(solved.track) } : {}),
    counts: {
      keys: counts.keys,
      breakdowns: counts.breakdowns,
      inbetweens: counts.inbetweens,
      drawings: counts.drawings,
      backgrounds: counts.backgrounds,
    },
    diagnostics: diagnostics.map((one) => remark(one, sources)),
  };
}

function exportedTrack({ track, sound, heard }: SolvedTrack): ExportedTrack {
  return {
    file: track.file,
    frame: track.frame,
    startSeconds: track.startSeconds,
    seconds: sound?.seconds ?? null,
    sampleRate: sound?.sampleRate ?? null,
    channels: sound?.channels ?? null,
    firstFrame: heard?.from ?? null,
    lastFrame: heard?.to ?? null,
  };
}

function level(
  { name, title, exposures, drawings, passages }: SolvedLevel,
  { drawnWith, masks }: Level,
): ExportedLevel {
  return {
    name,
    title,
    ...(drawnWith.length > 0 ? { drawnWith } : {}),
    ...(masks.length > 0 ? { masks } : {}),
    exposures: exposures.map(({ frame, kind, drawing, cel, starts }) => ({
      frame,
      kind,
      drawing,
      cel,
      starts,
    })),
    drawings: drawings.map(({ cel, drawing, kind, firstFrame }) => ({ cel, drawing, kind, firstFrame })),
    passages: passages.map(({ from, to, fractions }) => ({ from, to, fractions: [...fractions] })),
  };
}

/** A level may be called `constructor`: the object has no such thing of its own. */
function byLevel<T, U>(levels: ReadonlyMap<string, T>, make: (value: T) => U): Record<string, U> {
  return Object.fromEntries([...levels].map(([name, value]) => [name, make(value)]));
}

function placed(
  { x, y, scale, rotation, screenX, screenY }: PlacementFrame,
  frame: number,
): ExportedPlacement {
  return { frame, x, y, scale, rotation, screenX, screenY };
}

function artwork({ width, height, needed }: Artwork): ExportedArtwork {
  return {
    width,
    height,
    neededWidth: needed?.width ?? null,
    neededHeight: needed?.height ?? null,
    neededX: needed?.x ?? null,
    neededY: needed?.y ?? null,
  };
}

function remark(
  { code, severity, parameters, span }: Diagnostic,
  sources: ReadonlyMap<string, string>,
): ExportedRemark {
  const place = placeAt(lines(sources.get(span.file) ?? ''), span.start);
  const message = messageOf({ code, parameters }, 'en');
  return { code, severity, message, file: span.file, line: place.line, column: place.column };
}

/** JSON text: an object a line where there are hundreds of them, so that two exports can be compared line by line. */
export function jsonText(exported: object): string {
  return `${write(exported, '')}\n`;
}

function write(value: unknown, indent: string): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const flat = Object.values(value).every((one) => typeof one !== 'object' || one === null);
  if (flat)
    return JSON.stringify(value).replace(/("(?:[^"\\]|\\.)*")|([:,])/g, (part, text) => text ?? `${part} `);
  const deeper = `${indent}  `;
  const rows = Array.isArray(value)
    ? value.map((one) => `${deeper}${write(one, deeper)}`)
    : Object.entries(value).map(([key, one]) => `${deeper}${JSON.stringify(key)}: ${write(one, deeper)}`);
  const [open, close] = Array.isArray(value) ? ['[', ']'] : ['{', '}'];
  return `${open}\n${rows.join(',\n')}\n${indent}${close}`;
}

// ---- positions in pixels of the finished picture, beside the millimetres

export interface ExportOptions {
  /** Adds `pixelX`, `pixelY` to each level's placement. */
  readonly pixels?: boolean;
}

export interface Pixels {
  readonly pixelX: number;
  readonly pixelY: number;
}

/** `screenX`, `screenY` in pixels of the finished picture: from its centre, x to the right, y up, fractions kept. */
export function pixelsOf(
  { screenX, screenY }: Pick<PlacementFrame, 'screenX' | 'screenY'>,
  { output, field }: Settings,
): Pixels {
  return {
    pixelX: (screenX * output.width) / field.widthMm,
    pixelY: (screenY * output.height) / field.heightMm,
  };
}

/** Pixels by which the picture is taller than the field would make it at the picture's width; less than 1 is rounding. */
export function shapeFault({ output, field }: Pick<Settings, 'output' | 'field'>): number {
  const pixels = output.height - (output.width * field.heightMm) / field.widthMm;
  return Math.abs(pixels) < 1 ? 0 : pixels;
}
