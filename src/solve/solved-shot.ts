/** What the solver makes of a `Shot`: everything that is printed or exported, for every frame, in full precision. */

import type { Diagnostic, Span } from '../language/diagnostic.js';
import type { Frames, Shot, Track } from '../shot/shot.js';
import type { TrackSound } from '../sound/track-sound.js';
import type { SolvedCamera } from './camera/solved-camera.js';

export type DrawingKind = 'key' | 'breakdown' | 'inbetween';

/** What a level shows on one frame. */
export interface Exposure {
  /** From 1. */
  readonly frame: number;
  readonly kind: DrawingKind | 'empty';
  /** The drawing's name (`1`, `3a`, `1.2`, `1>3.2`), or null where the level is empty. */
  readonly drawing: string | null;
  /** The finished number, or null where the level is empty. */
  readonly cel: number | null;
  /** Another drawing (or emptiness) than on the frame before; always true on frame 1. */
  readonly starts: boolean;
  /** Inside a cycle, after its first pass. */
  readonly again: boolean;
  /** On the way back of a group that is played there and back, once or more often. */
  readonly back: boolean;
}

export interface SolvedDrawing {
  readonly cel: number;
  readonly drawing: string;
  readonly kind: DrawingKind;
  readonly firstFrame: number;
  /** Frames on which it is seen, in all. */
  readonly exposedFrames: number;
  /** A number given after the pinned ones. */
  readonly added: boolean;
  /** Drawn for another cut. */
  readonly reused: boolean;
}

/** The way from one key to the next; the same keys with the same count are one passage wherever they stand. */
export interface SolvedPassage {
  readonly from: string;
  readonly to: string;
  /** One an in-between, rising, in (0, 1). */
  readonly fractions: readonly number[];
  readonly chart: 'even' | 'early' | 'late' | 'both' | 'fractions';
  /** The drawings in order, by name. */
  readonly drawings: readonly string[];
  readonly firstFrame: number;
  /** Its first in-between, where it is first written. */
  readonly span: Span;
}

/** A group that is played more than once, or until further notice. */
export interface SolvedCycle {
  readonly firstFrame: number;
  readonly lastFrame: number;
  /** Frames of one whole pass. */
  readonly passFrames: number;
  /** Whole or begun passes, or null: it runs on (`..`). */
  readonly times: number | null;
  readonly bounce: boolean;
  /** 0 outermost. */
  readonly depth: number;
}

export interface SolvedLevel {
  readonly name: string;
  readonly title: string;
  /** A background or overlay, by its name: what it shows is painted, and is no drawing of the animation. */
  readonly background: boolean;
  /** False: no timeline; then the arrays are empty. */
  readonly timed: boolean;
  /** One a frame, `exposures[f - 1]` is frame f. */
  readonly exposures: readonly Exposure[];
  /** By number, rising. */
  readonly drawings: readonly SolvedDrawing[];
  /** In the order in which they are first shown. */
  readonly passages: readonly SolvedPassage[];
  readonly cycles: readonly SolvedCycle[];
  /** The highest number in use, 0 where nothing is drawn. */
  readonly lastCel: number;
  /** Pinned numbers that no frame shows, rising, with the name that they had ('' for one that never was). */
  readonly missing: readonly { readonly cel: number; readonly drawing: string }[];
  readonly reuse: { readonly cut: string; readonly level: string } | null;
  /**
   * What the level that this one reuses has, itself or from yet another cut, and no frame shows here: whoever reuses this level may
   * show it.
   */
  readonly inherited: {
    readonly drawings: readonly SolvedDrawing[];
    readonly passages: readonly SolvedPassage[];
  };
}

export interface Counts {
  readonly keys: number;
  readonly breakdowns: number;
  /** Without the breakdowns. */
  readonly inbetweens: number;
  /** All three, without reused ones. */
  readonly drawings: number;
  readonly reused: number;
  /** Pictures of backgrounds and overlays, which are painted; none of the others holds them. Without reused ones. */
  readonly backgrounds: number;
}

/** The cut's recording on its rows. */
export interface SolvedTrack {
  /** What the text says of it. */
  readonly track: Track;
  /** The recording, or null where it could not be read. */
  readonly sound: TrackSound | null;
  /** The rows on which there is recording, or null: on none. */
  readonly heard: Frames | null;
}

export interface SolvedShot {
  readonly shot: Shot;
  /** In the order of the stack, bottom to top. */
  readonly levels: readonly SolvedLevel[];
  readonly counts: Counts;
  readonly camera: SolvedCamera;
  readonly track: SolvedTrack | null;
  /** Those of the solver; the caller joins them to the earlier stages' ones. */
  readonly diagnostics: readonly Diagnostic[];
}
