/** A level's column: what the key animator typed, the finished number beside it, and brackets for what is played again. */

import { inWidth, type TextColumn, widthOf } from '../../layout/text-table.js';
import type { SolvedCycle, SolvedLevel } from '../../solve/solved-shot.js';
import { type KeySign, keySigns } from '../keys/key-signs.js';
import { type Rows, rowsWithin, sheetColumn } from './terminal-lanes.js';

/** Marks longer than that are cut. */
const WIDEST_MARK = 12;

export function levelColumn(level: SolvedLevel, rows: Rows): TextColumn {
  const signs = keySigns(level, 'japan');
  const marks = rows.map((frame, i) => markOn(level, signs, frame, rows[i - 1] ?? null));
  const numbers = rows.map((frame, i) => {
    const cel = level.exposures[frame - 1]?.cel ?? null;
    return cel === null || marks[i] === HELD ? '' : String(cel);
  });
  const brackets = bracketsOf(level, rows);
  const widest = (texts: readonly string[], least: number): number => Math.max(least, ...texts.map(widthOf));
  const markWidth = Math.min(WIDEST_MARK, widest(marks, 3));
  const numberWidth = widest(numbers, 2);
  const texts = rows.map((_, i) =>
    [inWidth(marks[i]!, markWidth), inWidth(numbers[i]!, numberWidth, 'right'), brackets[i]!]
      .join(' ')
      .trimEnd(),
  );
  const least = widest([...texts, level.name], 1);
  const wanted = Math.max(least, Math.min(16, widthOf(level.title)));
  return sheetColumn([level.name, level.title], least, wanted, () => texts);
}

const HELD = ' │';

/** What stands on a row; `before` is the frame of the row above it, null for the first. */
function markOn(
  level: SolvedLevel,
  signs: readonly (KeySign | null)[],
  frame: number,
  before: number | null,
): string {
  const since = before ?? frame - 1;
  const sign = signs.slice(since, frame).findLast((one) => one !== null);
  if (sign) return markOf(sign);
  if (before !== null) return level.exposures[frame - 1]!.drawing === null ? '' : HELD;
  // Held since before the first row that is shown.
  const held = signs.slice(0, frame).findLast((one) => one !== null);
  return held
    ? `[${markOf(held)
        .trim()
        .replace(/^\((.*)\)$/, '$1')}]`
    : '';
}

function markOf(sign: KeySign): string {
  switch (sign.form) {
    case 'key':
      return `(${sign.text})`;
    case 'dash':
      return ' -';
    case 'breakdown':
      return ' =';
    case 'again':
    case 'reused breakdown':
      return ' o';
    case 'empty':
      return ' ×';
    default:
      return sign.text;
  }
}

/** For each row the brackets of the cycles that run there, the innermost first. */
function bracketsOf(level: SolvedLevel, rows: Rows): string[] {
  const depths = Math.max(0, ...level.cycles.map(({ depth }) => depth + 1));
  const lanes = Array.from({ length: depths }, (_, i) => {
    const depth = depths - 1 - i;
    const cells = rows.map(() => '');
    for (const cycle of level.cycles.filter((one) => one.depth === depth)) {
      const within = rowsWithin(rows, { from: cycle.firstFrame, to: cycle.lastFrame });
      if (!within) continue;
      const { first, last } = within;
      for (let row = first; row <= last; row++) cells[row] = '┊';
      if (rows[last]! === cycle.lastFrame || rows[last + 1] !== undefined) cells[last] = '╯';
      if (first > 0 || rows[first] === cycle.firstFrame) cells[first] = `╮${timesOf(cycle)}`;
    }
    const width = Math.max(1, ...cells.map(widthOf));
    return cells.map((cell) => inWidth(cell, width));
  });
  return rows.map((_, row) => lanes.map((cells) => cells[row]).join(''));
}

/** As it is typed: `*3`, `<>*2`, `..`. */
function timesOf({ bounce, times }: SolvedCycle): string {
  return `${bounce ? '<>' : ''}${times === null ? '..' : `*${times}`}`;
}
