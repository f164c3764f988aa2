/** The part of the tree that says what the camera, the levels and the light do. See `tree.ts`. */

import type { Span } from './diagnostic.js';
import type { MoveKind } from './statements/move-statements.js';
import type { Length, Node, Numeral, Point, Position, Quote, Range, Word } from './tree.js';

export type { MoveKind, MoveWord } from './statements/move-statements.js';

export type FieldSize = Node &
  (
    | { readonly form: 'full' }
    | { readonly form: 'percent'; readonly percent: number }
    /** `8F`: in lines of the field chart. */
    | { readonly form: 'chart'; readonly fields: number }
    | { readonly form: 'mm'; readonly widthMm: number }
  );

export type FieldPlace = Node &
  (
    | { readonly form: 'mm'; readonly xMm: number; readonly yMm: number }
    /** `2N 3E`: chart steps, S and W negative. */
    | { readonly form: 'chart'; readonly north: number; readonly east: number }
  );

/** Where the edge of a wipe travels to. */
export type WipeDirection = 'left' | 'right' | 'up' | 'down';

export interface Turned extends Node {
  readonly sense: 'cw' | 'ccw';
  readonly degrees: number;
}

/** What follows a leg and says how its way is spread. */
export type SpacingNode = Node &
  (
    | { readonly form: 'ease'; readonly leave: Numeral; readonly arrive: Numeral }
    | { readonly form: 'curve'; readonly values: readonly [Numeral, Numeral, Numeral, Numeral] }
    /** `8*17` is one entry with times 17. */
    | { readonly form: 'steps'; readonly steps: readonly { readonly mm: Numeral; readonly times: number }[] }
    | { readonly form: 'fair'; readonly mark: Word; readonly at: Position; readonly share: Numeral }
  );

/** A place on a frame: `A@1+1`, `ア(0,0)@1`, `100%@1`. */
export interface Stop<P> extends Node {
  readonly value: P;
  readonly at: Position;
}

/** Where a leg ends; without a frame where its graduations say it. */
export interface LegStop<P> extends Node {
  readonly value: P;
  readonly at: Position | null;
}

export interface LegEnd<P> {
  /** Places without a frame that a curved way passes before `to`. */
  readonly passing: readonly P[];
  readonly to: LegStop<P>;
  /** Of a pan: `to` is a new field, the one before it moved this way by the graduations, which come first in `spacing`. */
  readonly towards?: DirectionNode;
  readonly spacing: readonly SpacingNode[];
}

/** Options that may stand behind any move. */
export interface MoveOptions {
  readonly on: Numeral | null;
  readonly graduated: Span | null;
  readonly log: Span | null;
  readonly carry: readonly Word[];
  readonly about: Point | null;
  readonly sense: { readonly span: Span; readonly sense: 'cw' | 'ccw' } | null;
  readonly loop: Numeral | null;
  readonly sideways: Span | null;
  readonly curved: Span | null;
}

export type DirectionNode = Node &
  (
    | { readonly form: 'word'; readonly word: 'left' | 'right' | 'up' | 'down' }
    /** Counter-clockwise from right. */
    | { readonly form: 'angle'; readonly degrees: number }
  );

/** `3mm/f` or `720mm`. */
export type WayNode = Node & { readonly form: 'rate' | 'distance'; readonly mm: number };

export interface MarkedPlace extends Node {
  readonly label: Word | null;
  readonly xMm: number;
  readonly yMm: number;
}

/** `100%`, `30`; or with a mark, `ア(100%)`. */
export interface MarkedNumber extends Numeral {
  readonly label: Word | null;
}

/** What a move says before its times, besides its levels. */
export interface MoveParts {
  readonly quick: Span;
  readonly direction: DirectionNode;
  readonly way: WayNode;
  readonly size: Numeral;
  /** The size at the end, where it is another one. */
  readonly lastSize: Numeral;
  readonly every: Length;
}

/** What stands on a frame: the name of a field, a place of a level, percent or degrees. */
export type StopValue = Word | MarkedPlace | MarkedNumber;

/**
 * All moves have this shape. One that goes from place to place has `from` and `legs`, one that runs for a while `range`, and
 * `spacing` behind it. `levels` is empty for those of the camera alone.
 */
export interface MoveStatement extends Stated {
  readonly kind: MoveKind;
  readonly levels: readonly Word[];
  readonly parts: Partial<MoveParts>;
  readonly from: Stop<StopValue> | null;
  readonly legs: readonly LegEnd<StopValue>[];
  readonly range: Range | null;
  readonly spacing: readonly SpacingNode[];
  readonly options: MoveOptions;
}

interface Stated extends Node {
  /** The place of the statement's first word. */
  readonly word: Span;
}

export type CameraStatement =
  | MoveStatement
  | (Stated &
      (
        | {
            readonly kind: 'field';
            readonly name: Word;
            readonly size: FieldSize;
            readonly place: FieldPlace | null;
            readonly turned: Turned | null;
          }
        | { readonly kind: 'fix'; readonly field: Word }
        | {
            readonly kind: 'fade';
            readonly way: 'in' | 'out';
            readonly white: Span | null;
            readonly range: Range;
          }
        | {
            readonly kind: 'wipe';
            readonly way: 'in' | 'out';
            /** Where the edge travels to. */
            readonly towards: WipeDirection;
            readonly range: Range;
          }
        | {
            readonly kind: 'iris';
            readonly way: 'in' | 'out';
            readonly range: Range;
            /** The centre on the standard field, or null: the middle of the picture. */
            readonly at: Point | null;
          }
        | {
            readonly kind: 'expose';
            readonly levels: readonly Word[];
            readonly from: Numeral;
            readonly to: Numeral | null;
            readonly range: Range;
          }
        | { readonly kind: 'glow'; readonly levels: readonly Word[]; readonly range: Range }
        | {
            readonly kind: 'effect';
            readonly text: Quote;
            readonly levels: readonly Word[];
            readonly range: Range;
          }
        | { readonly kind: 'overlap'; readonly way: 'in' | 'out'; readonly length: Length }
      ));
