/** What the player of the live view is told, as it goes to the browser. */

import type { PackedPicture } from '../picture/frame-runs.js';

export interface PlayedDrawing {
  /** The place of its level in the stack, and its finished number; null: the level is simply there. */
  readonly level: number;
  readonly number: number | null;
  /** As it is written. */
  readonly name: string;
  /** Another one where the file is another one. */
  readonly stamp: string;
}

export interface CutPlay {
  readonly picture: PackedPicture;
  /** Rows are named in feet, not in seconds. */
  readonly feet: boolean;
  /** What the sheet says of flashing light, in its language; null: nothing flashes. */
  readonly caution: { readonly text: string; readonly language: string } | null;
  /** Another one where something else is heard; null: it is silent. */
  readonly sound: string | null;
  /** The drawings of which there is a file. */
  readonly drawings: readonly PlayedDrawing[];
  /** Pixels an inch of a scan that says nothing of it. */
  readonly scanDpi: number;
}

/** The answer for one cut. */
export interface CutPlayAnswer extends CutPlay {
  readonly id: string;
  readonly version: number;
}

/** An episode from cut point to cut point. */
export interface EpisodePlay {
  readonly fps: number;
  readonly frames: number;
  readonly cuts: readonly PlayedCut[];
  /** What stands in the way of playing it, or how many cuts are left out; '' where nothing is to be said. */
  readonly word: string;
}

export interface PlayedCut {
  readonly id: string;
  readonly flashes: boolean;
  readonly heard: boolean;
  readonly source: { readonly from: number; readonly frames: number };
  readonly record: number;
  readonly dissolve: { readonly before: number; readonly after: number } | null;
}
