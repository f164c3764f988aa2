/**
 * Camera, level moves and light of a cut, names bound and units resolved. Millimetres on the artwork from the centre of the
 * standard field, x to the right, y up; degrees, clockwise positive; frames from 1.
 *
 * Both ways to say when come out as one: `start` is the frame on which the thing still is where it was, `end` the frame on
 * which it has arrived, and `end - start` is the number of steps. `A@1 > B@24` has start 1 and end 24; `1..24` has start 0
 * (the moment before the first frame) and end 24. The frames that a leg takes are start+1 … end in both.
 */

import type { Span } from '../../language/diagnostic.js';
import type { Word } from '../../language/tree.js';
import type { CameraStatement, MoveKind, WipeDirection } from '../../language/tree-camera.js';
import type { Frames } from '../shot.js';
import type { LegEndOf, ParametersOf } from './move-kinds.js';

export type { MoveKind } from '../../language/tree-camera.js';

/** What the camera sees; its shape is always that of the standard field. */
export interface Field {
  readonly name: string;
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  /** Turned clockwise on the artwork, degrees. */
  readonly turnDeg: number;
  /** How its size was written, so that pages can answer in the same measure. */
  readonly notation: 'full' | 'percent' | 'chart' | 'mm';
  readonly span: Span;
  /** Where its size is written; null for the standard field, which is written nowhere. */
  readonly sizeSpan: Span | null;
  /** Where its centre stands, without `at`; null where it is not said. */
  readonly placeSpan: Span | null;
}

/** How a leg's way is spread over its steps. */
export type Spacing =
  | { readonly form: 'linear' }
  /** Constant acceleration over `leave` frames, constant deceleration over `arrive`. */
  | { readonly form: 'ease'; readonly leave: number; readonly arrive: number }
  /** Cubic Bézier timing as in W3C CSS Easing 1: x1, x2 in [0, 1]. */
  | {
      readonly form: 'curve';
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
    }
  /** Hand-spaced graduations, one a step: mm of the way, or of the field's width. */
  | { readonly form: 'steps'; readonly mm: readonly number[] }
  /** Constant speed to the mark, `share` of the way done there (0 < share < 1), then the cushion. */
  | { readonly form: 'fair'; readonly mark: string; readonly frame: number; readonly share: number };

export interface Leg<P> {
  readonly from: P;
  /** Places without a frame that a curved way passes in between. */
  readonly passing: readonly P[];
  readonly to: P;
  readonly start: number;
  readonly end: number;
  readonly spacing: Spacing;
  readonly span: Span;
}

/** A level's displacement from its home; `label` is the mark on the layout (ア), or ''. */
export interface LevelPlace extends Point {
  readonly label: string;
}

/** A level's scale (1 is 100 %) or degrees; `label` is the mark on the layout, or ''. */
export interface LevelValue {
  readonly label: string;
  readonly value: number;
}

/** Counter-clockwise from right, on the screen at the move's first frame; the word that was typed, or 'angle'. */
export interface Direction {
  readonly degrees: number;
  readonly word: 'left' | 'right' | 'up' | 'down' | 'angle';
}

/** Way of a pull or follow: the whole distance in mm; `rateMm` where it was typed as a speed (that of the constant part). */
export interface PullWay {
  readonly distanceMm: number;
  readonly rateMm: number | null;
}

/** How far something swings from rest, at first and at last. */
export interface Swing {
  readonly fromMm: number;
  readonly toMm: number;
}

export interface Point {
  readonly xMm: number;
  readonly yMm: number;
}

/** What a move is about: the camera or not, and the levels that it names (those that a follow takes along, too). */
export interface MoveTarget {
  readonly camera: boolean;
  readonly levels: readonly string[];
}

/** All moves have this shape; `camera/move-kinds.ts` says what differs. */
export interface MoveOf<K extends MoveKind> {
  readonly kind: K;
  readonly target: MoveTarget;
  /** One at least, in the order of time, each beginning where the one before ends; one alone where the move runs during `a..b`. */
  readonly legs: readonly Leg<LegEndOf<K>>[];
  /** Sampled every so many frames. */
  readonly on: number;
  /** Written frame by frame: numbered graduations on the layout and in the camera column. */
  readonly graduated: boolean;
  readonly parameters: ParametersOf<K>;
  /** What of the camera's field it gives where two moves share the camera (see `sharing`); null: all of it, or it is no such move. */
  readonly gives: FieldPart | null;
  readonly span: Span;
}

/** Its centre and turn, or its width. */
export type FieldPart = 'centre' | 'width';

export type Move = { [K in MoveKind]: MoveOf<K> }[MoveKind];

export type Light = { readonly span: Span } & (
  | { readonly kind: 'fade'; readonly way: 'in' | 'out'; readonly white: boolean; readonly frames: Frames }
  /** An edge travels over the picture and uncovers it (`in`) or covers it. */
  | {
      readonly kind: 'wipe';
      readonly way: 'in' | 'out';
      readonly towards: WipeDirection;
      readonly frames: Frames;
    }
  /** A circle that grows (`in`) until it shows all, or shrinks; its centre on the standard field. */
  | {
      readonly kind: 'iris';
      readonly way: 'in' | 'out';
      readonly xMm: number;
      readonly yMm: number;
      readonly frames: Frames;
    }
  /** Double exposure; shares in 0 … 1. */
  | {
      readonly kind: 'expose';
      readonly levels: readonly string[];
      readonly from: number;
      readonly to: number;
      readonly frames: Frames;
    }
  /** Light through the artwork. */
  | { readonly kind: 'glow'; readonly levels: readonly string[]; readonly frames: Frames }
  | {
      readonly kind: 'effect';
      readonly text: string;
      readonly levels: readonly string[];
      readonly frames: Frames;
    }
  /** Cross-dissolve with the neighbour, over the last / first `length` rows of the sheet. */
  | { readonly kind: 'overlap'; readonly way: 'in' | 'out'; readonly length: number; readonly frames: Frames }
);

export interface Camera {
  /** In the order of writing; `full` is not among them unless a move or `fix` uses it. */
  readonly fields: readonly Field[];
  /** Where the camera stands when no camera move has begun: that of `fix`, of the first move, or the standard field. */
  readonly rest: Field;
  /** In the order of their first frames. */
  readonly moves: readonly Move[];
  readonly light: readonly Light[];
  /** Levels whose appearing is a flash of light (`level C flash`). */
  readonly flashing: readonly string[];
}

// ---- what binding gathers of the camera, before it is put in order

export type CameraNode<K extends CameraStatement['kind']> = CameraStatement & { readonly kind: K };

/** The field `from`, moved `degrees` counter-clockwise from its own right by `mm`. */
export interface DrawnGoal {
  readonly name: Word;
  readonly from: Word;
  readonly degrees: number;
  readonly mm: number;
}

export interface CameraDraft {
  /** The cut's own `field` statements, in the order of writing. */
  readonly named: Map<string, CameraNode<'field'>>;
  /** Those of used files. */
  readonly shared: Map<string, CameraNode<'field'>>;
  /** Fields that graduations of the cut's own pans lead to. */
  readonly goals: Map<string, DrawnGoal>;
  /** Fields made so far: each once, so that moves that name one share it. */
  readonly made: Map<string, Field>;
  fix: CameraNode<'fix'> | null;
  readonly moves: Move[];
  readonly light: Light[];
}

export function startCamera(): CameraDraft {
  return {
    named: new Map(),
    shared: new Map(),
    goals: new Map(),
    made: new Map(),
    fix: null,
    moves: [],
    light: [],
  };
}
