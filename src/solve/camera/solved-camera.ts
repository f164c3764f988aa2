/** What the solver makes of the camera: where everything is on every frame. mm, degrees clockwise, full precision. */

import type { Field, Light, Move } from '../../shot/camera/camera-model.js';

/** Where the camera is, shake included. */
export interface CameraFrame {
  readonly frame: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  /** Of the standard field's width. */
  readonly percent: number;
  /** In lines of the field chart. */
  readonly field: number;
  readonly rotation: number;
}

/**
 * Where a level is on a frame: a point q of its artwork lies at home + (x, y) + scale · R(rotation) · q.
 * `screenX`, `screenY`: (x, y) seen from the camera, mm on the standard field.
 */
export interface PlacementFrame {
  readonly x: number;
  readonly y: number;
  readonly scale: number;
  readonly rotation: number;
  readonly screenX: number;
  readonly screenY: number;
}

export type ArtworkSide = 'left' | 'right' | 'top' | 'bottom';

export interface Artwork {
  /** The sheet's size; null: not said, and needs no check (a level with no timeline and no size). */
  readonly width: number | null;
  readonly height: number | null;
  readonly homeX: number;
  readonly homeY: number;
  /** The smallest artwork that would do, in the level's own axes; null where the level never shows. */
  readonly needed: {
    readonly width: number;
    readonly height: number;
    readonly x: number;
    readonly y: number;
  } | null;
  /** The first frame on which an edge comes into the picture, the side on which it reaches furthest then, and the worst of all frames. */
  readonly edge: {
    readonly frame: number;
    readonly side: ArtworkSide;
    readonly byMm: number;
    readonly worstMm: number;
    readonly worstFrame: number;
  } | null;
  /** Length of the painted loop and the axis along which it is tiled, or null. */
  readonly loop: { readonly lengthMm: number; readonly axis: 'x' | 'y' } | null;
}

/** One graduation of a move: where its moving thing is on a frame. */
export interface Graduation {
  readonly frame: number;
  /** 0 on the frame (or the moment) that the move starts from. */
  readonly number: number;
  readonly x: number;
  readonly y: number;
  /** What the move drives besides the place: the field's width in mm, a level's scale or degrees; else null. */
  readonly value: number | null;
  /** Way from the graduation before, mm; 0 for the first, negative where it runs back along its leg. */
  readonly stepMm: number;
  /** The same as a share of the field's width then. */
  readonly stepShare: number;
  /** A field or mark that the text names stands here, or the fairing mark: its name, else ''. */
  readonly label: string;
}

export interface SolvedMove {
  readonly move: Move;
  /** The frame from which it leaves and on which it has arrived (see shot/camera/camera-model.ts). */
  readonly start: number;
  readonly end: number;
  /**
   * One a frame from `start` to `end` (or to the last row): the camera's centre, without shake, for camera moves; the place
   * for slides, the way gone for pulls, the swing for shake and sway.
   */
  readonly graduations: readonly Graduation[];
  /** Whole way along the path, mm. */
  readonly wayMm: number;
  readonly largestStepMm: number;
  /** The largest step as a share of the field's width then, and in pixels of the finished picture. */
  readonly largestStepShare: number;
  readonly largestStepPx: number;
}

/** Share of light on each frame of a fade, dissolve or exposure: 0 none … 1 full. */
export interface SolvedLight {
  readonly light: Light;
  readonly shares: readonly { readonly frame: number; readonly share: number }[];
}

export interface SolvedCamera {
  /** One a frame. */
  readonly frames: readonly CameraFrame[];
  /** By level, in the order of the stack; one a frame, the same object on frames on which nothing differs from the one before. */
  readonly placement: ReadonlyMap<string, readonly PlacementFrame[]>;
  readonly artwork: ReadonlyMap<string, Artwork>;
  readonly moves: readonly SolvedMove[];
  readonly light: readonly SolvedLight[];
  /** The fields of the cut, and whether the camera stands on it on some frame (else it is crossed out on the layout). */
  readonly fields: readonly { readonly field: Field; readonly used: boolean }[];
  /** The same of the standard field. */
  readonly standardUsed: boolean;
  /** Light flashes, as far as the text says: the sheet bears a caution. */
  readonly flashes: boolean;
  /** No move and no shake: FIX. */
  readonly fixed: boolean;
}
