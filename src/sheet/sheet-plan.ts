/** What is settled once for a cut before its pages are drawn, and what one side of one page is. */

import type { Convention } from '../shot/settings.js';
import type { SolvedLevel, SolvedShot } from '../solve/solved-shot.js';
import type { SheetWords } from '../words/sheet-words.js';
import type { CameraPlan } from './camera/lane-assignment.js';
import type { Bars } from './change-bars.js';
import type { Metrics } from './display-list.js';
import type { Sign } from './keys/key-signs.js';
import type { Lent, Marked } from './page-look.js';
import type { Block, Geometry } from './sheet-geometry.js';
import type { Speech } from './speech/speech-lanes.js';

export interface Plan {
  readonly solved: SolvedShot;
  readonly convention: Convention;
  readonly metrics: Metrics;
  readonly words: SheetWords;
  /** Levels with a timeline, in the order of their columns. */
  readonly levels: readonly SolvedLevel[];
  /** What the key column says, a sign a frame or null. */
  readonly signs: ReadonlyMap<SolvedLevel, readonly (Sign | null)[]>;
  readonly speech: Speech;
  readonly camera: CameraPlan;
  /** Levels that other cuts show again. */
  readonly lent: readonly Lent[];
  /** What differs from another version, and the rows of it. */
  readonly marked: Marked | null;
  readonly bars: Bars;
  /**
   * What found no room where it belongs, and what the light ink of words means where any has it, as lines for the memo. Filled while
   * the pages are drawn.
   */
  readonly leftOver: Set<string>;
}

/** One side of one page. */
export interface Side {
  readonly plan: Plan;
  readonly geometry: Geometry;
  /** The levels whose columns stand here, in order. */
  readonly levels: readonly SolvedLevel[];
  /** Frame of the first row. */
  readonly firstFrame: number;
  readonly pages: number;
  /** `1`, `1-b`. */
  readonly label: string;
}

/** The rows of one block as frames. */
export interface Run {
  readonly block: Block;
  /** Frame of the block's first row. */
  readonly first: number;
  /** The last frame of the cut that stands here; `first - 1` where the cut has ended before. */
  readonly last: number;
}

export function runsOf(side: Side): Run[] {
  const { length } = side.plan.solved.shot;
  return side.geometry.blocks.map((block) => {
    const first = side.firstFrame + block.before;
    return { block, first, last: Math.max(first - 1, Math.min(length, first + block.rows - 1)) };
  });
}

/** Top edge of the row of a frame; of the frame after a run's last row it is that row's bottom edge. */
export function topOf(side: Side, run: Run, frame: number): number {
  return side.geometry.top + (frame - run.first) * side.geometry.rowMm;
}
