/**
 * A change between two versions of a cut as one sentence. The data that a sentence gets is what `compare` finds, and its types are all
 * that this folder takes from elsewhere: plain texts and numbers, counted already.
 */

import type { Change, ChangeOf, MannerValue, MoveSeen } from '../compare/change.js';

/** One way to say each kind of change: no full stop at its end, one line. */
export type ChangeSentences = {
  readonly [K in Change['kind']]: (change: ChangeOf<K>, t: SentenceFormat) => string;
};

/** How times, rows and quotes stand in a sentence, as the sheet of the cut writes them. */
export interface SentenceFormat {
  /** `5+12`, in the west `8'04`. */
  length(frames: number): string;
  /** Whether so many frames are told as `1+12`, not by their number. */
  long(frames: number): boolean;
  /** A row as the sheet and the text name it: `2+13`. */
  row(frame: number): string;
  /** Words that are quoted, cut where there are too many of them. */
  brief(text: string): string;
  /** What a move is called: `A スライド ア→イ`. */
  move(seen: MoveSeen): string;
  /** A parameter of a move with one of its values: `every 1+12`, `no loop`. */
  parameter(change: ChangeOf<'move-manner'>, value: MannerValue): string;
}
