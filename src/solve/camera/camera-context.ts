/** What the camera's solver needs to know of the rest of the cut. */

import type { Span } from '../../language/diagnostic.js';
import type { Settings } from '../../shot/settings.js';

export interface CameraLevel {
  readonly name: string;
  /** Where the level was first named, for messages. */
  readonly span: Span;
  readonly homeMm: { readonly xMm: number; readonly yMm: number };
  /** Null: not said. Then a level with a timeline is as large as the episode's paper, and one without has no edge to check. */
  readonly sizeMm: { readonly widthMm: number; readonly heightMm: number; readonly span?: Span } | null;
  /** Whether it has a timeline. */
  readonly timed: boolean;
  readonly free: boolean;
  readonly carry: boolean;
  readonly shown: (frame: number) => boolean;
  /** Another drawing than on the frame before, or the first after emptiness. */
  readonly appears: (frame: number) => boolean;
}

export interface CameraContext {
  /** Rows of the sheet. */
  readonly length: number;
  readonly fps: number;
  /** The stack, bottom to top. */
  readonly levels: readonly CameraLevel[];
  readonly settings: Settings;
}
