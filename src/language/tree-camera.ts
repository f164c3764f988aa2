/** The part of the tree that says what the camera, the levels and the light do. See `tree.ts`. */

import type { Span } from './diagnostic.js';
import type { Length, Node, Numeral, Point, Position, Quote, Range, Word } from './tree.js';

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

export interface LegEnd<P> {
  readonly to: Stop<P>;
  readonly spacing: readonly SpacingNode[];
}

/** Options that may stand behind any move. */
export interface MoveOptions {
  readonly on: Numeral | null;
  readonly ticks: Span | null;
  readonly log: Span | null;
  readonly carry: readonly Word[];
  readonly about: Point | null;
  readonly sense: { readonly span: Span; readonly sense: 'cw' | 'ccw' } | null;
  readonly loop: Numeral | null;
  readonly sideways: Span | null;
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

interface Stated extends Node {
  /** The place of the statement's first word. */
  readonly word: Span;
}

export type CameraStatement = Stated &
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
        readonly kind: 'pan';
        readonly from: Stop<Word>;
        readonly legs: readonly LegEnd<Word>[];
        readonly options: MoveOptions;
      }
    | {
        readonly kind: 'truck';
        readonly quick: Span | null;
        readonly from: Stop<Word>;
        readonly legs: readonly LegEnd<Word>[];
        readonly options: MoveOptions;
      }
    | {
        readonly kind: 'pull' | 'follow';
        readonly levels: readonly Word[];
        readonly direction: DirectionNode;
        readonly way: WayNode;
        readonly range: Range;
        readonly spacing: readonly SpacingNode[];
        readonly options: MoveOptions;
      }
    | {
        readonly kind: 'slide';
        readonly levels: readonly Word[];
        readonly from: Stop<MarkedPlace>;
        readonly legs: readonly LegEnd<MarkedPlace>[];
        readonly options: MoveOptions;
      }
    /** Percent. */
    | {
        readonly kind: 'levelTruck';
        readonly levels: readonly Word[];
        readonly from: Stop<Numeral>;
        readonly legs: readonly LegEnd<Numeral>[];
        readonly options: MoveOptions;
      }
    /** Degrees in the sense that `options.sense` says. */
    | {
        readonly kind: 'turn';
        readonly levels: readonly Word[];
        readonly from: Stop<Numeral>;
        readonly legs: readonly LegEnd<Numeral>[];
        readonly options: MoveOptions;
      }
    | {
        readonly kind: 'shake';
        readonly fromMm: Numeral;
        readonly toMm: Numeral | null;
        readonly range: Range;
        /** Has no meaning for it; kept to be told. */
        readonly spacing: readonly SpacingNode[];
        readonly options: MoveOptions;
      }
    | {
        readonly kind: 'roll';
        readonly levels: readonly Word[];
        readonly sizeMm: Numeral;
        readonly range: Range;
        readonly every: Length;
        /** Has no meaning for it; kept to be told. */
        readonly spacing: readonly SpacingNode[];
        readonly options: MoveOptions;
      }
    | {
        readonly kind: 'fade';
        readonly way: 'in' | 'out';
        readonly white: Span | null;
        readonly range: Range;
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
  );
