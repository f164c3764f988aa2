/** Paper against solver, row by row. */

import type { Convention } from '../../src/shot/settings.js';
import type { SolvedLevel, SolvedShot } from '../../src/solve/solved-shot.js';
import type { LabelLanguage } from '../../src/words/labels.js';
import type { Bracket, HoldWord } from './cells.js';
import { type ExpectedLevel, expectedBrackets, expectedHoldWords, expectedLevel } from './expected.js';
import type { ReadBlock, ReadLevel, ReadPage } from './sheet.js';

/** Everything in which the pages of a cut differ from its table, as lines to read; empty when they agree. */
export function differences(
  pages: readonly ReadPage[],
  solved: SolvedShot,
  convention: Convention,
  labels: LabelLanguage,
): string[] {
  const { shot } = solved;
  const found: string[] = [];
  const timed = solved.levels.filter((level) => level.timed);
  const order = (convention === 'west' ? timed.toReversed() : timed).map((level) => level.name);
  const levels = new Map(
    timed.map((level) => [level.name, { level, expected: expectedLevel(level, convention) }]),
  );
  const unit = convention === 'west' ? 16 : shot.fps;
  const time = `${Math.floor(shot.time / shot.fps)} + ${shot.time % shot.fps}`;
  /** How often each frame of each level was found in each group of columns. */
  const seen = new Map<string, number>();
  const orders = new Map<string, string[]>();
  const memo = pages.map((page) => page.memo).join(' ');

  for (const page of pages) {
    const at = `page ${page.label}`;
    if (page.cut !== shot.cut) found.push(`${at}: the header says cut ${page.cut}`);
    if (page.time !== time) found.push(`${at}: the header says ${page.time} for ${time}`);
    const [, number] = /^(\d+)/.exec(page.label) ?? [];
    const here = orders.get(number!) ?? [];
    orders.set(number!, here);
    page.blocks.forEach((block, i) => {
      const where = `${at}, block ${i + 1}`;
      found.push(...ends(block, shot.length).map((text) => `${where}: ${text}`));
      found.push(...handles(block, solved).map((text) => `${where}: ${text}`));
      found.push(...numbers(block, unit, convention).map((text) => `${where}: ${text}`));
      const names = block.cels.map((level) => level.name);
      if (names.join() !== block.keys.map((level) => level.name).join())
        found.push(`${where}: key and cel columns name other levels`);
      if (i === 0) here.push(...names);
      for (const group of ['cels', 'keys'] as const)
        for (const read of block[group]) {
          const known = levels.get(read.name);
          if (!known) {
            found.push(`${where}: there is no level ${read.name}`);
            continue;
          }
          found.push(
            ...cells(block, read, group, known.expected, shot.length, seen).map((text) => `${at} ${text}`),
          );
          const brackets =
            block.firstFrame === null ? [] : bracketsFor(block, known.level.cycles, shot.length, labels);
          const expected = group === 'keys' ? brackets : [];
          found.push(
            ...holdWordDifferences(block, read, group, known.level, shot, labels).map(
              (text) => `${where} ${read.name} ${group}: ${text}`,
            ),
          );
          found.push(
            ...bracketDifferences(read, expected, memo).map((text) => `${where} ${read.name}: ${text}`),
          );
        }
    });
  }
  for (const [page, names] of orders)
    if (names.join() !== order.join())
      found.push(`page ${page}: the columns stand ${names.join(' ')} instead of ${order.join(' ')}`);
  for (const name of order)
    for (const group of ['cels', 'keys'])
      for (let frame = 1; frame <= shot.length; frame++) {
        const times = seen.get(`${name} ${group} ${frame}`) ?? 0;
        if (times !== 1) found.push(`${name} ${group}: frame ${frame} is printed ${times} times`);
      }
  return found;
}

function ends(block: ReadBlock, length: number): string[] {
  const rows = block.grid.rows.length;
  if (block.firstFrame === null)
    return block.hatched === 0 && block.end === null ? [] : ['a block with no frame is not hatched out'];
  const last = length - block.firstFrame + 1;
  const end = last <= rows ? last : null;
  const hatched = last < rows ? last : null;
  const found: string[] = [];
  if (block.end !== end) found.push(`the double line is at edge ${block.end} instead of ${end}`);
  if (block.hatched !== hatched)
    found.push(`the hatch begins at edge ${block.hatched} instead of ${hatched}`);
  return found;
}

/** The handles' rows are toned, and a broken line stands between them and the cut. */
function handles(block: ReadBlock, { shot }: SolvedShot): string[] {
  if (block.firstFrame === null) return block.toned.length > 0 ? ['a tone after the end'] : [];
  const { head, tail } = shot.handles;
  const first = block.firstFrame;
  const toned = block.grid.rows.flatMap((_, row) => {
    const frame = first + row;
    return frame <= head || (frame > shot.length - tail && frame <= shot.length) ? [row] : [];
  });
  const edges = [...(head > 0 ? [head] : []), ...(tail > 0 ? [shot.length - tail] : [])].map(
    (edge) => edge - first + 1,
  );
  // At a break the line stands once: above the first frame of the cut, below its last.
  const points = edges.filter((edge, i) =>
    i === 0 && head > 0
      ? edge >= 0 && edge < block.grid.rows.length
      : edge > 0 && edge <= block.grid.rows.length,
  );
  const found: string[] = [];
  if ([...block.toned].sort((a, b) => a - b).join() !== toned.join())
    found.push(`rows ${block.toned.join(' ')} are toned instead of ${toned.join(' ')}`);
  if ([...block.cutPoints].sort((a, b) => a - b).join() !== points.join())
    found.push(`cut points at ${block.cutPoints.join(' ')} instead of ${points.join(' ')}`);
  return found;
}

/** Row numbers and whole seconds (feet) against the running frame numbers. */
function numbers(block: ReadBlock, unit: number, convention: Convention): string[] {
  const { firstFrame } = block;
  if (firstFrame === null) return [];
  const found: string[] = [];
  block.grid.rows.forEach((row, i) => {
    const frame = firstFrame + i;
    const number = ((frame - 1) % unit) + 1;
    if (row.number !== number) found.push(`frame ${frame} stands on the row numbered ${row.number}`);
  });
  for (const { row, whole, feet } of block.wholes) {
    if (Math.floor((firstFrame + row - 1) / unit) !== whole || feet !== (convention === 'west'))
      found.push(`${whole} is printed beside frame ${firstFrame + row}`);
  }
  if (block.wholes.length === 0 && block.grid.rows.length > 1) found.push('no second or foot is named');
  return found;
}

function cells(
  block: ReadBlock,
  read: ReadLevel,
  group: 'cels' | 'keys',
  expected: ExpectedLevel,
  length: number,
  seen: Map<string, number>,
): string[] {
  const found: string[] = [];
  read.column.cells.forEach((cell, row) => {
    const frame = block.firstFrame === null ? null : block.firstFrame + row;
    let wanted = '';
    if (frame !== null && frame <= length) {
      wanted = expected[group === 'cels' ? 'cel' : 'key'](frame, row === 0);
      const id = `${read.name} ${group} ${frame}`;
      seen.set(id, (seen.get(id) ?? 0) + 1);
    }
    if (cell !== wanted) found.push(`${read.name} ${group} frame ${frame}: “${cell}” instead of “${wanted}”`);
  });
  return found;
}

function bracketsFor(
  block: ReadBlock,
  cycles: Parameters<typeof expectedBrackets>[0],
  length: number,
  labels: LabelLanguage,
): Bracket[] {
  const first = block.firstFrame!;
  return expectedBrackets(cycles, first, Math.min(length, first + block.grid.rows.length - 1), labels);
}

/**
 * A word may be missing where it has no room: beside a line that is too short for it, in a column that is too narrow, or beside the
 * bracket of a cycle.
 */
function holdWordDifferences(
  block: ReadBlock,
  { column, band }: ReadLevel,
  group: 'cels' | 'keys',
  level: SolvedLevel,
  { fps, length }: Pick<SolvedShot['shot'], 'fps' | 'length'>,
  labels: LabelLanguage,
): string[] {
  const { firstFrame, grid } = block;
  const last = firstFrame === null ? 0 : Math.min(length, firstFrame + grid.rows.length - 1);
  const expected =
    firstFrame === null || group === 'cels' ? [] : expectedHoldWords(level, firstFrame, last, fps, labels);
  const told = (words: readonly Omit<HoldWord, 'letters'>[]) =>
    words.map(({ firstRow, lastRow, text }) => `${text} beside rows ${firstRow} to ${lastRow}`);
  const have = told(column.holdWords);
  const want = told(expected);
  const mustBe = expected.filter(({ firstRow, lastRow }) => {
    const { x1, y1, y2 } = column.holds.find((one) => one.firstRow === firstRow)?.line ?? NO_LINE;
    const beside = column.brackets.some((one) => one.firstRow <= lastRow && one.lastRow >= firstRow - 4);
    return !beside && Math.abs(y2 - y1) > ROOM_DOWN_MM && band.to - x1 > ROOM_ACROSS_MM;
  });
  return [
    ...have.filter((one) => !want.includes(one)).map((one) => `${one}, where none belongs`),
    ...told(mustBe)
      .filter((one) => !have.includes(one))
      .map((one) => `no ${one}`),
  ];
}

const NO_LINE = { x1: Number.POSITIVE_INFINITY, y1: 0, y2: 0 };
/** Beside a line that is longer, in a column that has more room at its right, two letters of the smallest print stand on any paper. */
const ROOM_DOWN_MM = 5;
const ROOM_ACROSS_MM = 2;

/** The words stand where a cycle begins, or in the memo; where it goes on after a break they may stand again. */
function bracketDifferences(read: ReadLevel, expected: readonly Bracket[], memo: string): string[] {
  const told = ({ words: _, ...rest }: Bracket) => JSON.stringify(rest);
  const order = (brackets: readonly Bracket[]) =>
    [...brackets].sort(
      (a, b) => a.firstRow - b.firstRow || a.lastRow - b.lastRow || told(a).localeCompare(told(b)),
    );
  const [have, want] = [order(read.column.brackets), order(expected)];
  if (have.map(told).join() !== want.map(told).join())
    return [`brackets ${have.map(told).join(' ')} instead of ${want.map(told).join(' ')}`];
  return want.flatMap((bracket, i) => {
    const { words } = have[i]!;
    if (words === bracket.words || (words === '' && !bracket.begins)) return [];
    const inMemo = memo.includes(`: ${bracket.words}`) && memo.includes(`${read.name} `);
    if (words === '' && inMemo) return [];
    return [`“${words}” instead of “${bracket.words}” beside a cycle`];
  });
}
