/** The columns of level A of a cut, drawn without a page about them: sizes that are round, so that places can be worked out by hand. */

import { type BlockColumns, NO_GUTTERS } from '../../src/sheet/block-columns.js';
import { columnEntries } from '../../src/sheet/column-entries.js';
import type { Mark } from '../../src/sheet/display-list.js';
import { celMarks, keyMarks } from '../../src/sheet/drawing-columns.js';
import { bracketRoom } from '../../src/sheet/key-lanes.js';
import type { PageSide, SheetPlan } from '../../src/sheet/sheet-plan.js';
import { wordsOf } from '../../src/words/words.js';
import { solvedCut } from './laid.js';
import { plainMetrics } from './plain-metrics.js';

export interface ColumnGiven {
  readonly labels?: 'en' | 'ja';
  readonly convention?: 'japan' | 'west';
  /** Height of a row, 4 mm unless given. */
  readonly rowMm?: number;
  /** Width of the column without the lanes of brackets, 8 mm unless given: the numbers stand in the middle of it. */
  readonly numbersMm?: number;
  /** Rows of a block; all in one unless given. */
  readonly rows?: number;
}

export interface DrawnBlock {
  readonly keys: readonly Mark[];
  readonly cels: readonly Mark[];
}

/**
 * The blocks of rows of a cut, each with its first row at y = 0 and its columns at x = 0. The smallest print is 2 mm, and every
 * character is half an em wide.
 */
export function drawnColumns(
  lines: string,
  given: ColumnGiven = {},
): { blocks: DrawnBlock[]; memo: string[] } {
  const { labels = 'en', convention = 'japan', rowMm = 4, numbersMm = 8 } = given;
  const solved = solvedCut(`cut 1\n${lines}\n`, { convention });
  const levels = solved.levels.filter(({ name }) => name === 'A');
  const bracketMm = bracketRoom(levels, 2);
  const rows = given.rows ?? solved.shot.length;
  const column = { x: 0, width: numbersMm + bracketMm };
  const columns = { keys: [column], cels: [{ x: 0, width: numbersMm }] } as unknown as BlockColumns;
  const memo = new Set<string>();
  const plan: Partial<SheetPlan> = {
    ...{ solved, convention, levels, metrics: plainMetrics, leftOver: memo },
    words: wordsOf({ labels, convention }).sheet,
    entries: new Map(levels.map((level) => [level, columnEntries(level, convention)])),
  };
  const unit = convention === 'west' ? 16 : 24;
  const geometry = { top: 0, rowMm, leastTextMm: 2, unit, bracketMm, gutters: NO_GUTTERS };
  const side = { plan, geometry, levels } as unknown as PageSide;
  const blocks: DrawnBlock[] = [];
  for (let first = 1; first <= solved.shot.length; first += rows) {
    const block = { x: 0, width: 100, before: first - 1, rows, columns };
    const run = { block, first, last: Math.min(first + rows - 1, solved.shot.length) };
    blocks.push({ keys: keyMarks(side, run), cels: celMarks(side, run) });
  }
  return { blocks, memo: [...memo] };
}
