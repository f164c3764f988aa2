/** Change bars as they stand on paper, against the rows that were to have one. */

import type { BarPlace, MarkedChanges } from '../../src/sheet/page-look.js';
import type { SolvedShot } from '../../src/solve/solved-shot.js';
import type { PaperRectangle } from '../pdf.js';
import { edgeAt } from './cells.js';
import { type Band, type Group, inside, middleOf, Unreadable } from './grid.js';
import type { ReadBlock, ReadPage } from './sheet.js';

export interface ReadBar {
  readonly place: BarPlace;
  /** Of a level the column of its keys or of its cels. */
  readonly group: Group;
  /** Frames, both included. */
  readonly from: number;
  readonly to: number;
  readonly box: PaperRectangle;
}

const BLACK = '#000000';
/** What is thinner is lost on the second copy, mm. */
const THIN = 0.6;

export function readBars(page: ReadPage): ReadBar[] {
  return page.blocks.flatMap((block) => {
    const { edges, left, right } = block.grid;
    const body = { from: edges[0]! - 0.05, to: edges.at(-1)! + 0.05 };
    return page.paper.rectangles
      .filter(({ form, fill, pen }) => !form && fill === BLACK && pen === null)
      .filter(({ x, y }) => inside(x, { from: left, to: right }) && inside(y, body))
      .map((box) => barOf(page, block, box));
  });
}

function barOf({ paper }: ReadPage, block: ReadBlock, box: PaperRectangle): ReadBar {
  const { grid, firstFrame } = block;
  if (firstFrame === null) throw new Unreadable('a bar after the end');
  if (box.width < THIN) throw new Unreadable(`a bar of ${box.width} mm`);
  const middle = box.x + box.width / 2;
  const struck = paper.texts.find((text) => {
    const [, y] = middleOf(text);
    const half = text.angle === 0 ? 0.37 * text.sizeMm : 0;
    const across = text.angle === 0 ? 0 : 0.37 * text.sizeMm;
    const [from, to] = [Math.min(text.x, text.endX) - across, Math.max(text.x, text.endX) + across];
    return from < box.x + box.width && to > box.x && y + half > box.y && y - half < box.y + box.height;
  });
  if (struck) throw new Unreadable(`a bar runs through “${struck.text}”`);
  for (const [group, bands] of grid.groups) {
    const index = bands.findIndex((band: Band) => inside(middle, band));
    if (index < 0) continue;
    const { from, to } = bands[index]!;
    if (box.x < from || box.x + box.width > to) throw new Unreadable('a bar lies on two columns');
    if (box.x > from + 0.5) throw new Unreadable('a bar stands within a column, not at its left');
    const rows = {
      from: firstFrame + edgeAt(grid, box.y),
      to: firstFrame + edgeAt(grid, box.y + box.height) - 1,
    };
    return { place: placeOf(block, group, index), group, ...rows, box };
  }
  throw new Unreadable('a bar outside the columns');
}

function placeOf(block: ReadBlock, group: Group, index: number): BarPlace {
  if (group === 'dialogue') return { kind: 'speech' };
  if (group === 'camera' || group === 'notes') return { kind: group };
  const level = block[group][index]?.name;
  if (level === undefined) throw new Unreadable('a bar in a column without a name');
  if (group !== 'keys' && group !== 'cels') throw new Unreadable('a bar in a column of no level');
  return { kind: 'level', level, column: group };
}

/** Frames that have a bar, by the column. */
function expectedBars(
  marked: MarkedChanges | undefined,
  { levels, shot }: SolvedShot,
): Map<string, Set<number>> {
  const expected = new Map<string, Set<number>>();
  for (const { place, from, to } of marked?.rows ?? []) {
    if (place.kind === 'level' && !levels.some(({ name, timed }) => timed && name === place.level)) continue;
    const key = keyOf(place, groupOf(place));
    const frames = expected.get(key) ?? new Set();
    expected.set(key, frames);
    for (let frame = Math.max(1, from); frame <= Math.min(to, shot.length); frame++) frames.add(frame);
  }
  return expected;
}

const groupOf = (place: BarPlace): Group =>
  place.kind === 'level' ? place.column : place.kind === 'speech' ? 'dialogue' : place.kind;
const keyOf = (place: BarPlace, group: Group): string =>
  place.kind === 'level' ? `${place.level} ${group}` : group;
const listed = (frames: Iterable<number> | undefined): string =>
  [...(frames ?? [])].sort((a, b) => a - b).join(' ');
const bare = (text: string): string => text.replace(/\s+/g, '');

/** Everything in which bars and memo differ from what was to be marked. */
export function barDifferences(
  pages: readonly ReadPage[],
  marked: MarkedChanges | undefined,
  solved: SolvedShot,
): string[] {
  const expected = expectedBars(marked, solved);
  const seen = new Map<string, number[]>();
  for (const { place, group, from, to } of pages.flatMap(readBars)) {
    const key = keyOf(place, group);
    const frames = seen.get(key) ?? [];
    seen.set(key, frames);
    for (let frame = from; frame <= to; frame++) frames.push(frame);
  }
  const found = [...new Set([...expected.keys(), ...seen.keys()])].flatMap((key) => {
    const [have, want] = [listed(seen.get(key)), listed(expected.get(key))];
    return have === want ? [] : [`${key}: bars beside frames ${have} instead of ${want}`];
  });
  const memo = bare(pages.map((page) => page.memo).join(' '));
  const told = marked ? [marked.against, ...marked.lines] : [];
  return [
    ...found,
    ...told.filter((line) => !memo.includes(bare(line))).map((line) => `the memo does not say “${line}”`),
  ];
}
