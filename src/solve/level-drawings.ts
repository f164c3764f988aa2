/** The drawings of a level while it is solved. */

import type { Span } from '../language/diagnostic.js';
import type { Leaf, ShotChart } from '../shot/shot.js';
import type { DrawingKind } from './solved-shot.js';

export interface Drawing {
  kind: DrawingKind;
  /** Canonical; '' until it is named. */
  name: string;
  /** Finished number, 0 until it has one. */
  cel: number;
  /** The key itself, or the key that its passage starts from. */
  readonly key: string;
  /** Null for a key, and for a pinned in-between whose passage stands nowhere. */
  to: string | null;
  /** Of an in-between: `1.2` has 2, `1.2a` has a as well. 0 and '' for a key. */
  index: number;
  letter: string;
  reused: boolean;
  /** Its number is given by a `cels` line or by the cut that it comes from. */
  pinned: boolean;
  /** Where it is first written. */
  readonly span: Span;
  /** 0: never seen. */
  firstFrame: number;
  exposedFrames: number;
}

/**
 * Where drawings of a passage lie that exist already. `pinned`: those named in a `cels` line that has additions or gaps, so that it
 * says how many in-betweens the passage had when it was drawn. `lent`: those of the same passage in the cut that is reused.
 */
export type Drawn =
  | { readonly by: 'pinned'; readonly count: number; readonly line: Span }
  | {
      readonly by: 'lent';
      readonly fractions: readonly number[];
      readonly chart: ShotChart['form'];
      readonly cut: string;
    };

/** The way between two keys: the same keys in the same order with the same count are one passage, wherever they stand. */
export interface Passage {
  readonly from: string;
  readonly to: string;
  /** In order; at least one. */
  readonly drawings: readonly Drawing[];
  /** The charts that are written for it, wherever it stands. */
  readonly charts: (ShotChart & { readonly span: Span })[];
  /** What is known of the drawings of it that exist, null where that says nothing of their places. */
  drawn: Drawn | null;
  /** The in-betweens of its first writing. */
  readonly written: readonly Leaf[];
  /** First written at the end of a group, leading back to the group's first key. */
  readonly wrapped: boolean;
}

export function makeDrawing(
  kind: DrawingKind,
  key: string,
  span: Span,
  between: { to: string | null; index: number; letter: string } = { to: null, index: 0, letter: '' },
): Drawing {
  return {
    kind,
    name: kind === 'key' ? key : '',
    cel: 0,
    key,
    ...between,
    reused: false,
    pinned: false,
    span,
    firstFrame: 0,
    exposedFrames: 0,
  };
}
