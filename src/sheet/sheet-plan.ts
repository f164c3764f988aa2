/** What is settled once for a cut before its pages are drawn, and what one side of one page is. */

import type { Pronounce } from '../shot/mouth/line-sounds.js';
import type { Convention } from '../shot/settings.js';
import type { SolvedLevel, SolvedShot } from '../solve/solved-shot.js';
import type { SheetWords } from '../words/sheet-words.js';
import type { CameraPlan } from './camera/camera-plan.js';
import type { ChangeBars } from './change-bars.js';
import type { ColumnEntries } from './column-entries.js';
import type { Metrics } from './display-list.js';
import type { LevelHead } from './level-heads.js';
import type { LentLevel, MarkedChanges } from './page-look.js';
import type { RowBlock, SheetGeometry } from './sheet-geometry.js';
import type { SpeechLanes } from './speech/speech-lanes.js';

export interface SheetPlan {
  readonly solved: SolvedShot;
  readonly convention: Convention;
  readonly metrics: Metrics;
  readonly words: SheetWords;
  /** Levels with a timeline, in the order of their columns. */
  readonly levels: readonly SolvedLevel[];
  /** What the columns of each level say on their rows. */
  readonly entries: ReadonlyMap<SolvedLevel, ColumnEntries>;
  /** What stands over the columns of each level. */
  readonly heads: ReadonlyMap<SolvedLevel, LevelHead>;
  readonly speech: SpeechLanes;
  /** How words are read: as for the mouths of the cut. */
  readonly pronounce: Pronounce;
  readonly camera: CameraPlan;
  /** Levels that other cuts show again. */
  readonly lent: readonly LentLevel[];
  /** What differs from another version, and the rows of it. */
  readonly marked: MarkedChanges | null;
  readonly bars: ChangeBars;
  /**
   * What found no room where it belongs, and what the light ink of words means where any has it, as lines for the memo. Filled while
   * the pages are drawn.
   */
  readonly leftOver: Set<string>;
}

/** One side of one page. */
export interface PageSide {
  readonly plan: SheetPlan;
  readonly geometry: SheetGeometry;
  /** The levels whose columns stand here, in order. */
  readonly levels: readonly SolvedLevel[];
  /** Frame of the first row. */
  readonly firstFrame: number;
  readonly pages: number;
  /** `1`, `1-b`. */
  readonly label: string;
}

/** The rows of one block as frames. */
export interface BlockFrames {
  readonly block: RowBlock;
  /** Frame of the block's first row. */
  readonly first: number;
  /** The last frame of the cut that stands here; `first - 1` where the cut has ended before. */
  readonly last: number;
}

export function blockFramesOf(side: PageSide): BlockFrames[] {
  const { length } = side.plan.solved.shot;
  return side.geometry.blocks.map((block) => {
    const first = side.firstFrame + block.before;
    return { block, first, last: Math.max(first - 1, Math.min(length, first + block.rows - 1)) };
  });
}

/** Top edge of the row of a frame; of the frame after a run's last row it is that row's bottom edge. */
export function topOf(side: PageSide, run: BlockFrames, frame: number): number {
  return side.geometry.top + (frame - run.first) * side.geometry.rowMm;
}
