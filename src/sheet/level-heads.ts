/** Over each level's columns: its name, and what there is of it. */

import { isWide } from '../layout/line-breaking.js';
import type { Level } from '../shot/shot.js';
import type { SolvedLevel } from '../solve/solved-shot.js';
import type { SheetWords } from '../words/sheet-words.js';
import type { BlockColumn } from './block-columns.js';
import type { Mark } from './display-list.js';
import { relationsOf } from './level-relations.js';
import { type Box, textAt } from './mark-builders.js';
import { memoPointers } from './memo-box.js';
import type { LentLevel } from './page-look.js';
import type { SheetGeometry } from './sheet-geometry.js';
import type { BlockFrames, PageSide } from './sheet-plan.js';
import { cutToFit, setInBox } from './text-fitting.js';
import { setDownwards } from './vertical-text.js';

/** The bands of the heads, top to bottom; `changes` is the rest. */
export function headRows({
  heads,
  scale,
}: SheetGeometry): Record<'group' | 'name' | 'count' | 'last' | 'changes', { height: number }> {
  const group = 2.8 * scale;
  const name = 4.2 * scale;
  const count = 2.6 * scale;
  const last = 2.6 * scale;
  return {
    group: { height: group },
    name: { height: name },
    count: { height: count },
    last: { height: last },
    changes: { height: heads.height - group - name - count - last },
  };
}

/** What stands over the columns of a level, as text. */
export interface LevelHead {
  /** Its title, what it is drawn to, how many keys. */
  readonly overKeys: string;
  /** How many drawings of its own. */
  readonly drawn: string;
  /** What of its drawings is new, missing or of another cut. */
  readonly changes: string;
  /** Who shows it again. */
  readonly lent: string;
  /** The same set in columns that begin at 0, by their widths. */
  readonly sets: Readonly<Record<'keys' | 'cels', Map<number, readonly Mark[]>>>;
}

export function levelHead(
  level: SolvedLevel,
  levels: readonly Level[],
  lent: readonly LentLevel[],
  words: SheetWords,
): LevelHead {
  const keys = level.drawings.filter((drawing) => drawing.kind === 'key' && !drawing.reused).length;
  const own = level.drawings.filter(({ reused }) => !reused).length;
  const count = level.background ? words.backgroundCount(own) : words.keyCount(keys);
  return {
    overKeys: [level.title, ...relationsOf(level.name, levels, words), count]
      .filter((text) => text !== '')
      .join(words.headSeparator),
    // What is painted is no drawing to be counted here; over its keys it is.
    drawn: level.background ? '–' : String(own),
    changes: changesOf(level, words),
    lent: lentOf(level, lent, words),
    sets: { keys: new Map(), cels: new Map() },
  };
}

export function headMarks(side: PageSide, run: BlockFrames): Mark[] {
  const { keys, cels } = run.block.columns;
  return side.levels.flatMap((level, i) => {
    const head = side.plan.heads.get(level)!;
    return [...over(keys[i]!, head.sets.keys, overKeys), ...over(cels[i]!, head.sets.cels, overCels)];

    /** Set once for all blocks and pages: their columns are as wide as each other, unless the levels have several sides. */
    function over(column: BlockColumn, sets: Map<number, readonly Mark[]>, set: typeof overKeys): Mark[] {
      const marks = sets.get(column.width) ?? set(side, level, head, { ...column, x: 0 });
      sets.set(column.width, marks);
      return marks.map((mark) => (mark.kind === 'text' ? { ...mark, x: mark.x + column.x } : mark));
    }
  });
}

function overKeys(side: PageSide, level: SolvedLevel, head: LevelHead, column: BlockColumn): Mark[] {
  const { heads } = side.geometry;
  const rows = headRows(side.geometry);
  const top = heads.y + rows.group.height;
  const below = top + rows.name.height;
  const rest = heads.y + heads.height - below;
  const said = head.overKeys;
  return [
    ...name(side, level, column),
    ...box(
      side,
      said,
      { x: column.x + 0.25, y: below + 0.3, width: column.width - 0.5, height: rest - 0.6 },
      {
        most: 1.9 * side.geometry.scale,
        upwards: true,
        leftOver: `${level.name}: ${said}`,
      },
    ),
  ];
}

function overCels(side: PageSide, level: SolvedLevel, head: LevelHead, column: BlockColumn): Mark[] {
  const { words } = side.plan;
  const { heads, scale } = side.geometry;
  const rows = headRows(side.geometry);
  const x = column.x + 0.25;
  const width = column.width - 0.5;
  let y = heads.y + rows.group.height + rows.name.height;
  const { drawn, lent } = head;
  const count = { x, y, width, height: rows.count.height };
  y += rows.count.height;
  const last = { x, y, width, height: rows.last.height };
  y += rows.last.height;
  const changes = { x, y: y + 0.3, width, height: rows.changes.height - 0.6 };
  const figures = { most: 2 * scale };
  // Who shows a level again stands in the memo in any case.
  const both = [head.changes, lent].filter((text) => text !== '').join(', ');
  const said = lent !== '' && setChanges(side, both, changes).fits ? both : head.changes;
  return [
    ...name(side, level, column),
    ...box(side, drawn, count, { ...figures, leftOver: `${level.name}: ${words.drawings} ${drawn}` }),
    ...box(side, String(level.lastCel), last, {
      ...figures,
      leftOver: `${level.name}: ${words.last} ${level.lastCel}`,
    }),
    ...box(side, said, changes, {
      ...changesSize(side),
      leftOver: `${level.name}: ${said}`,
      instead: memoPointers(words),
    }),
  ];
}

function name(side: PageSide, level: SolvedLevel, column: BlockColumn): Mark[] {
  const rows = headRows(side.geometry);
  const place = {
    x: column.x + 0.2,
    y: side.geometry.heads.y + rows.group.height,
    width: column.width - 0.4,
    height: rows.name.height,
  };
  const size = { most: 3.2 * side.geometry.scale, least: side.geometry.leastTextMm, weight: 'bold' } as const;
  // A name is never broken: over two lines it would be two names.
  const set = cutToFit(side.plan.metrics, level.name, place.width, size);
  if (!set.fits) side.plan.leftOver.add(`${set.text} = ${level.name}`);
  const { text, sizeMm, squeeze } = set;
  const y = place.y + place.height / 2;
  return [textAt(place.x + place.width / 2, y, text, { sizeMm, squeeze, weight: 'bold' })];
}

interface Setting {
  readonly most: number;
  readonly weight?: 'bold';
  readonly upwards?: boolean;
}

interface Said extends Setting {
  /** The line for the memo where there is no room. */
  readonly leftOver: string;
  /** What stands in the box then, the first that fits, if not the text's beginning. */
  readonly instead?: readonly string[];
}

function box(side: PageSide, text: string, place: Box, said: Said): Mark[] {
  const set = setSaid(side, text, place, said);
  if (set.fits) return set.marks;
  side.plan.leftOver.add(said.leftOver);
  const instead = said.instead?.map((one) => setSaid(side, one, place, said)) ?? [set];
  return (instead.find(({ fits }) => fits) ?? instead.at(-1)!).marks;
}

function setSaid(side: PageSide, text: string, place: Box, said: Setting): { marks: Mark[]; fits: boolean } {
  const { plan, geometry } = side;
  return said.upwards && mostlyWide(text)
    ? downInBox(side, text, place, said.most)
    : setInBox(plan.metrics, text, place, { ...said, least: geometry.leastTextMm });
}

const changesSize = (side: PageSide) => ({ most: 1.7 * side.geometry.scale, upwards: true });

const setChanges = (side: PageSide, text: string, place: Box) =>
  setSaid(side, text, place, changesSize(side));

function mostlyWide(text: string): boolean {
  let wide = 0;
  for (const character of text) if (isWide(character)) wide++;
  return wide > text.length / 2;
}

/** Japanese stands upright in a tall box. */
function downInBox(side: PageSide, text: string, place: Box, most: number): { marks: Mark[]; fits: boolean } {
  const strip = { x: place.x, width: place.width, top: place.y, room: place.height };
  const size = {
    most: Math.min(most, place.width),
    least: side.geometry.leastTextMm,
    weight: 'regular',
  } as const;
  return setDownwards(text, strip, size, side.plan.metrics);
}

function changesOf(level: SolvedLevel, words: SheetWords): string {
  const list = (word: string, numbers: readonly number[]): string[] =>
    numbers.length === 0 ? [] : [`${word} ${numberRanges(numbers, level.name)}`];
  return [
    ...list(
      words.added,
      level.drawings.filter((drawing) => drawing.added).map((drawing) => drawing.cel),
    ),
    ...list(
      words.reused,
      level.drawings.filter((drawing) => drawing.reused).map((drawing) => drawing.cel),
    ),
    ...list(
      words.missing,
      level.missing.map((drawing) => drawing.cel),
    ),
  ].join(', ');
}

/** The cuts that show a level again. */
function lentOf({ name }: SolvedLevel, lent: readonly LentLevel[], words: SheetWords): string {
  const cuts = lent.filter(({ level }) => level === name).map(({ cut }) => cut);
  return cuts.length === 0 ? '' : words.lentShort([...new Set(cuts)]);
}

/** Rising numbers with their neighbours joined: `A4`, `A1–12 A14`. */
export function numberRanges(numbers: readonly number[], name: string): string {
  const runs: [number, number][] = [];
  for (const number of numbers) {
    const run = runs.at(-1);
    if (run && run[1] === number - 1) run[1] = number;
    else runs.push([number, number]);
  }
  return runs.map(([from, to]) => (from === to ? `${name}${from}` : `${name}${from}–${to}`)).join(' ');
}
