import type { MoveKind } from '../language/tree-camera.js';
import type { ParameterName, ToldName } from '../shot/camera/move-kinds.js';

/** What a kind of move is called. That of a move that grows or shrinks stands before `T.U` or `T.B`. */
export interface MoveName {
  readonly name: string;
  /** With levels that go along, and written frame by frame, where that has names of its own. */
  readonly carrying?: string;
  readonly graduated?: string;
}

/** The way of a pull has a sentence of its own, with its speed. */
export type ComparedName = Exclude<ParameterName, 'way'>;

/** English words of a kind that only messages and the editor have. */
export interface MoveTitle {
  /** Alone: `Sway`. */
  readonly title: string;
  /** In a sentence: `a sway`. */
  readonly one: string;
  /** What two at once are two of, in the singular. */
  readonly rival: string;
}

/** What camera column and memo call moves and light. */
export interface MoveWords {
  readonly fix: string;
  readonly kinds: { readonly [K in MoveKind]: MoveName };
  /** What a sheet says of a parameter; `text` is its value. Of a flag it is `yes`, or `no` where that is told too. */
  readonly told: { readonly [P in ToldName]: (text: string) => string };
  /** What a retake note says of a parameter that has changed. Of flags `value` says which; of points and loops '' is none. */
  readonly changed: { readonly [P in ComparedName]: (text: string, value: boolean) => string };
  readonly directions: { readonly [D in 'left' | 'right' | 'up' | 'down']: string };
  /** From a size of swings to another one. */
  readonly swing: (from: string, to: string) => string;
  readonly clockwise: string;
  readonly counterClockwise: string;
  readonly exposure: string;
  readonly glow: string;
  /** Whatever else the compositor must do. */
  readonly effect: string;
  readonly fairing: string;
  /** One frame, as in `3 mm/f`. */
  readonly frame: string;
  /** How large the artwork must be. */
  artwork(size: string): string;
  /** How a level stands on the rows before its move begins on `row`. */
  until(value: string, row: string): string;
  on(frames: number): string;
  ease(leave: number, arrive: number): string;
  curve(values: string): string;
  fromPage(page: number): string;
  /** Moves that have no room in the column. */
  noLane(moves: string): string;
  /** `what` is `O.L`, with or without its length. */
  overlap(what: string, way: 'in' | 'out', cut: string | null): string;
  atCutPoint(cutPoint: string, overlap: string): string;
}
