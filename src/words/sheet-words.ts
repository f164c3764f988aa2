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
  readonly keys: string;
  readonly dialogue: string;
  readonly cels: string;
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
  readonly spreadEvenly: string;
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
  /** The foot's naming of the cut. */
  cutNumber(cut: string): string;
  /** Which page, by its label, of how many. */
  pageOf(page: string, pages: number): string;
  /** The foot's naming of the page, of its label or of `pageOf`. */
  footPage(page: string): string;
}
