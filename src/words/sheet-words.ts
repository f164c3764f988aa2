/** What stands on a sheet and its charts in words. */

import type { MoveKind } from '../language/tree-camera.js';
import type { FieldPart } from '../shot/camera/camera-model.js';
import type { ParameterName, ToldName } from '../shot/camera/move-kinds.js';
import type { LabelLanguage } from './labels.js';

export interface DrawingCounts {
  readonly keys: number;
  readonly breakdowns: number;
  readonly inbetweens: number;
  /** They are not in the others. */
  readonly reused: number;
  readonly backgrounds: number;
}

/** Every word that the form itself prints. */
export interface SheetWords {
  readonly title: string;
  readonly episode: string;
  readonly scene: string;
  readonly cut: string;
  readonly time: string;
  readonly feet: string;
  readonly take: string;
  readonly page: string;
  readonly artist: string;
  /** The boxes to sign and date, left to right. */
  readonly signatures: readonly string[];
  readonly memo: string;
  /** What stands in the memo of every cut with flashing light. */
  readonly flashCaution: string;
  readonly stack: string;
  /** Over the columns of levels: the first that has room there; the last has room over a single column. */
  readonly keys: readonly string[];
  readonly cels: readonly string[];
  /** In a terminal over the times and numbers of rows: up to four cells and three. */
  rowHeads(feet: boolean): readonly [time: string, number: string];
  readonly dialogue: string;
  /** The cut's recording. */
  readonly track: string;
  readonly camera: string;
  readonly notes: string;
  readonly drawings: string;
  readonly last: string;
  /** Over the lists of added, reused and missing numbers. */
  readonly changes: string;
  readonly added: string;
  readonly reused: string;
  readonly missing: string;
  /** Where the lists go on: in the memo. */
  readonly inMemo: string;
  /** What it means that words of a voice are paler: told once in the memo. */
  readonly spreadWords: string;
  readonly off: string;
  readonly mono: string;
  readonly sound: string;
  readonly music: string;
  readonly cutPoint: string;
  readonly runsOn: string;
  /** Tells the tables apart. */
  readonly language: LabelLanguage;
  /** Between a level's title and its count of keys, which stand over its column. */
  readonly headSeparator: string;
  /** A cut's own title. */
  quoted(title: string): string;
  passes(times: number): string;
  memoOn(page: string): string;
  memoGoesOn(page: string): string;
  levelsOn(names: string, page: string): string;
  reuse(level: string, cut: string, other: string): string;
  /** Between two keys: there are no in-betweens, and none are meant. */
  readonly noInbetweens: string;
  /** Beside a key that is held for more than a second; '' where the line alone says it. */
  readonly held: string;
  /** The picture lines up with that of another cut; `what` may be ''. */
  lineUp(cut: string, what: string): string;
  /** Over a level's column: the levels that it is drawn to, that it masks, that mask it. */
  drawnWith(others: string): string;
  maskOf(others: string): string;
  maskedBy(others: string): string;
  /** In the memo: levels drawn to one another; a level that hides others. */
  drawnTogether(levels: readonly string[]): string;
  masks(level: string, others: readonly string[]): string;
  /** A level that other cuts show again, in the memo and, short, over its column. */
  lent(level: string, borrowers: readonly { readonly cut: string; readonly as: string }[]): string;
  lentShort(cuts: readonly string[]): string;
  /** Over the list of what differs from another version; `bars`: some rows have one. */
  changed(against: string, bars: boolean): string;
  unchanged(against: string): string;
  /** `head`, `tail`: as times are written; '' where there is none. */
  handles(head: string, tail: string, length: string): string;
  keyCount(keys: number): string;
  /** Of a level that is a background. */
  backgroundCount(backgrounds: number): string;
  /** A time in frames, and how many of them are a second. */
  frames(count: number): string;
  framesASecond(fps: number): string;
  /** Which drawings make up the count; '' where there are none. */
  drawingCounts(counts: DrawingCounts): string;
  /** `handles` in a line of the terminal. */
  handlesLine(head: string, tail: string, length: string): string;
  /** What a line of dialogue is made of, and how long it wants to be, in a line of the terminal. */
  lineLength(unit: 'mora' | 'syllable', count: number, wanted: string): string;
  /** The foot's naming of the cut. */
  cutNumber(cut: string): string;
  /** Which page, by its label, of how many. */
  pageOf(page: string, pages: number): string;
  /** The foot's naming of the page, of its label or of `pageOf`. */
  footPage(page: string): string;
}

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
  /** Which way a turn goes. */
  readonly senses: { readonly [S in 'cw' | 'ccw']: string };
  /** Which way its degrees are positive, where it goes back or to both sides. */
  readonly positiveSenses: { readonly [S in 'cw' | 'ccw']: string };
  readonly exposure: string;
  readonly glow: string;
  /** Whatever else the compositor must do. */
  readonly effect: string;
  wipe(way: 'in' | 'out'): string;
  iris(way: 'in' | 'out'): string;
  /** `point`: its centre on the standard field. */
  irisAt(iris: string, point: string): string;
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
  /** How the way of some of several legs is spread: `ease 6/6 (A→B)`; of every leg. */
  onLegs(spacing: string, legs: readonly string[]): string;
  onEachLeg(spacing: string): string;
  /** The n-th leg, where its places have no names that are its own. */
  leg(n: number): string;
  /** What of the field a move gives while another one gives the rest: beside its rows, and in the memo. */
  readonly gives: { readonly [P in FieldPart]: { readonly beside: string; readonly memo: string } };
  /** The graduations of a truck are steps of the field's width. */
  readonly widthSteps: string;
  fromPage(page: number): string;
  /** Moves that have no room in the column. */
  noLane(moves: string): string;
  /** `what` is `O.L`, with or without its length. */
  overlap(what: string, way: 'in' | 'out', cut: string | null): string;
  atCutPoint(cutPoint: string, overlap: string): string;
}

/** How the in-betweens of a passage lie; `fractions`: as its author marked them. */
export type ChartSpacing = 'even' | 'early' | 'late' | 'both' | 'fractions';

/** What the in-between charts say beside their numbers. */
export interface ChartWords {
  /** Heads of a ladder's columns. */
  readonly headings: {
    readonly number: string;
    readonly drawing: string;
    readonly way: string;
    readonly frames: string;
  };
  readonly goesOn: string;
  /** What the n-th page of charts is called in head and foot. */
  page(n: number): string;
  count(inbetweens: number): string;
  /** Passages of a level that have no chart, since their in-betweens are even: `1→2 ×3`. */
  even(passages: readonly string[]): string;
  /** The same where there are too many to name. */
  evenOnes(passages: number): string;
  /** The line under a ladder's title: how many, how they are spaced, where the passage is first seen. */
  remark(inbetweens: number, spacing: ChartSpacing, first: string): string;
}
