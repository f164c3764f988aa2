/** What camera column and memo call moves and light. */
export interface MoveWords {
  readonly fix: string;
  readonly pan: string;
  /** A pan with levels that go along, and one written frame by frame. */
  readonly followPan: string;
  readonly graduatedPan: string;
  readonly pull: string;
  readonly follow: string;
  readonly slide: string;
  /** Before `T.U` and `T.B` of one level. */
  readonly level: string;
  readonly turn: string;
  readonly clockwise: string;
  readonly counterClockwise: string;
  readonly shake: string;
  readonly roll: string;
  readonly sideways: string;
  readonly exposure: string;
  readonly glow: string;
  /** Whatever else the compositor must do. */
  readonly effect: string;
  readonly loop: string;
  readonly fairing: string;
  readonly equalRatios: string;
  /** One frame, as in `3 mm/f`. */
  readonly frame: string;
  every(time: string): string;
  carry(levels: string): string;
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
