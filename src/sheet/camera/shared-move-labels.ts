/** What is the same in the names of moves and light. */

import type { MoveSign } from '../../shot/camera/move-kinds.js';
import type { Graduation } from '../../solve/camera/solved-camera.js';
import { figure } from '../../words/number-format.js';
import type { MoveWords } from '../../words/sheet-words.js';
import type { PrintedLengths } from '../printed-lengths.js';

/** How lengths are told, and by whose names neighbours go. */
export interface LabelContext {
  readonly words: MoveWords;
  /** In which ways and places are told. */
  readonly lengths: PrintedLengths;
  readonly fieldMm: number;
  length(frames: number): string;
  neighbour(way: 'in' | 'out'): string | null;
}

/** The sign in the camera column. */
export type CameraSign =
  | MoveSign
  | { readonly form: 'wedge'; readonly opens: boolean }
  | { readonly form: 'cross' | 'box' };

export interface CameraLabels<T> {
  sign(it: T): CameraSign;
  /** First row of its bar; for a position `@` the frame that it stands on. */
  first(it: T): number;
  last(it: T): number;
  /** What stands beside its line, long and short. */
  names(it: T, telling: LabelContext): readonly string[];
  /** The bare word, for the cut list. */
  short(it: T, words: MoveWords): string;
  /** The memo's line, without its time. */
  memo(it: T, telling: LabelContext): string;
  /** Names of places by frame, where they are not those of the graduations. */
  labels?(it: T, telling: LabelContext): ReadonlyMap<number, string>;
  /** What stands beside a graduation. */
  beside?(graduation: Graduation, telling: LabelContext, it: T): string;
}

export const percent = (share: number): string => `${figure(share * 100, { decimals: 1 })}%`;
export const degrees = (value: number): string => `${figure(value, { decimals: 1 })}°`;

export const joined = (...parts: readonly (string | readonly string[])[]): string =>
  parts
    .flat()
    .filter((part) => part !== '')
    .join(' ');

export const frameBounds = {
  first: ({ frames }: { frames: { from: number } }) => frames.from,
  last: ({ frames }: { frames: { to: number } }) => frames.to,
};

export const levels = (it: { readonly levels: readonly string[] }): string => it.levels.join(',');
