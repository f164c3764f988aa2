/**
 * The exposure sheet of a cut.
 *
 * How to read a sheet back. All in mm, y down; `Page.rows` gives each frame's row as a rectangle over the whole block.
 * - Row r of a block (from 0) lies between y = top + r·h and top + (r + 1)·h; row rules are form lines at these y. The row
 *   after a block's last frame is the first of the hatch.
 * - A text of a row has the middle of its capitals on the middle of the row: baseline = middle + 0.37 em. It is anchored
 *   at the middle of its column (key columns: of the part left of the brackets for cycles).
 * - Cel column: a bare number where a drawing begins, `×` where the level becomes empty. The first row of every block
 *   (and so of every page) always says something: what begins there, or in square brackets (`[12]`, `[×]`) what is
 *   still held.
 * - Hold line: black, on the column's middle, from the top edge of the row after the one with the number (or brackets) to
 *   HOLD_GAP of a row above the bottom edge of the last held row of the block. A drawing of one frame has none; an empty
 *   level has none: it stays empty until the next number.
 * - Key column, Japan: a key is its name in a ring, an in-between a short level stroke on the row's middle, a breakdown
 *   such a stroke between round brackets, an in-between that a cycle has already shown, or that another cut has drawn, a
 *   small ring with nothing in it (a breakdown of another cut such a ring between round brackets where it is first shown), an
 *   in-between out of its turn its name. West: finished numbers, a key's in a ring, a breakdown's with a stroke under it.
 *   Both: `×`, square brackets and hold lines as in the cel column; in brackets `–` stands for an in-between, `(–)` for a
 *   breakdown, `○` for one that exists, `(○)` for a breakdown of another cut.
 * - End: two black lines over the whole block at the bottom edge of the last row and DOUBLE_LINE below; one hatch from the
 *   bottom edge of the last row to the bottom of the block, over its whole width; a block after the end is all hatch.
 * - Running numbers, left of the rows: the frame's number on the first row of each second (foot) and of each block, the
 *   second (foot) on the row below, as `5+` (`5'`): row 12 under it is 5+12. Where the block has no row below, beside it.
 * - Notes: a triangle at the left of the notes column on the note's row; a note that had to move names its row in bold.
 * - Dialogue: a bar barGap inside the first row's top edge and the last row's bottom edge of each line; none at the
 *   bottom of what goes on over the end of the cut.
 * - Recording: tints about the middle of the dialogue column, a quarter of a row high or several, as wide as it is loud there.
 * - Change bars: black rectangles, at least 0.7 mm wide and with nothing else beside them in their gutter at the left of the
 *   column concerned: both columns of a level, dialogue, camera, notes (the last three on the first side). From BAR_GAP of a
 *   row below the top edge of the first row that differs to as much above the bottom edge of the last one; rows that follow
 *   one another, also over blocks and pages, are one stretch. The memo begins with a head that tells what they mean and the
 *   changes under it, a bar beside them all; on further pages with bars the head alone.
 */

import { mouthSounds } from '../shot/mouth/mouth-sounds.js';
import type { SolvedLevel, SolvedShot } from '../solve/solved-shot.js';
import { wordsOf } from '../words/words.js';
import { cameraMarks } from './camera/camera-column.js';
import { cameraPlan } from './camera/camera-plan.js';
import { barMarks, barsOf, guttersOf } from './change-bars.js';
import { columnEntries } from './column-entries.js';
import { endMarks, handleMarks, labelsRoom, runningMarks } from './cut-ends.js';
import type { LevelColumn, Mark, Page, PageRow } from './display-list.js';
import { celMarks, keyMarks, levelRoom } from './drawing-columns.js';
import { headMarks, levelHead } from './level-heads.js';
import { firstMemo, laterMemo } from './memo-pages.js';
import { noteMarks } from './notes-column.js';
import { footOf } from './page-frame.js';
import { headerMarks } from './page-header.js';
import type { PageLook } from './page-look.js';
import { sideLabel, sidesOf } from './page-sides.js';
import { ruledForm } from './ruled-form.js';
import { blockWidth, largerPrint, sharedGeometry, smallestTextMm } from './sheet-geometry.js';
import { type BlockFrames, blockFramesOf, type PageSide, type SheetPlan, topOf } from './sheet-plan.js';
import { speechMarks, spokenInMemo } from './speech/speech-column.js';
import { speechOf } from './speech/speech-lanes.js';
import { waveformMarks } from './speech/track-waveform.js';
import { cachedMetrics } from './text-fitting.js';

/** Print for which the camera column's shares of `block-columns.ts` are made, mm: larger print asks for more. */
const LANE_TEXT_MM = 0.85;

type Drawer = (side: PageSide, run: BlockFrames) => Mark[];

/** What is drawn on the rows of every side. */
const ON_EVERY_SIDE: readonly Drawer[] = [
  handleMarks,
  runningMarks,
  headMarks,
  keyMarks,
  celMarks,
  endMarks,
  barMarks,
];
/** What is drawn on the first side of a page only. A drawer gets one block of rows at a time. */
const ON_FIRST_SIDE: readonly Drawer[] = [waveformMarks, speechMarks, noteMarks, cameraMarks];

export function sheetPages(solved: SolvedShot, look: PageLook): Page[] {
  const { shot } = solved;
  const plan = planOf(solved, look);
  const least = smallestTextMm(look.settings.paper);
  const levelSides = sidesOf(
    plan.levels,
    {
      levelMm: levelRoom(plan, least),
      labelsMm: labelsRoom(shot.length, look.settings, shot.fps, plan.metrics, least),
      voices: plan.speech.voices,
      sounds: plan.speech.sounds,
      cameraLanes: plan.camera.lanes.reduce((so, lane) => so + lane, 0) * (least / LANE_TEXT_MM),
      gutters: guttersOf(
        plan.bars,
        plan.levels.map(({ name }) => name),
        largerPrint(look.settings.paper),
      ),
    },
    blockWidth(look.settings, shot.fps),
    least,
  );
  const geometries = levelSides.map(({ wanted }) => sharedGeometry(look.settings, shot.fps, wanted));
  const rows = geometries[0]!.rowsAPage;
  const pages = Math.max(1, Math.ceil(shot.length / rows));
  const sides = Array.from({ length: pages }, (_, page) =>
    levelSides.map(
      ({ levels }, i): PageSide => ({
        plan,
        geometry: geometries[i]!,
        levels,
        firstFrame: page * rows + 1,
        pages,
        label: sideLabel(page + 1, i),
      }),
    ),
  );
  // The rows come before the memo: what finds no room on them is told there.
  const bodies = new Map(sides.flat().map((side) => [side, bodyMarks(side)]));
  const isGuess = (mark: Mark): boolean => mark.kind === 'text' && mark.ink === 'light';
  if ([...bodies.values()].some((marks) => marks.some(isGuess))) plan.leftOver.add(plan.words.spreadWords);
  for (const spoken of plan.speech.without)
    plan.leftOver.add(spokenInMemo({ plan, geometry: geometries[0]! }, spoken));
  const heads = new Map(sides.flat().map((side) => [side, headOf(side, look)]));
  const first = firstMemo(sides[0]!, look);
  return sides.flatMap((ofPage, page) => {
    const made = ofPage.map((side, i) => {
      const memo = page === 0 && i === 0 ? first.marks : laterMemo(side, sides[0]!);
      return sheetPage(side, look, [...heads.get(side)!, ...memo, ...bodies.get(side)!]);
    });
    return page === 0 ? [...made, ...first.further] : made;
  });
}

function planOf(solved: SolvedShot, look: PageLook): SheetPlan {
  const { convention } = look.settings;
  const timed = solved.levels.filter((level) => level.timed);
  const levels = convention === 'west' ? timed.toReversed() : timed;
  const words = wordsOf(look.settings).sheet;
  const lent = look.lent ?? [];
  const ofEach = <T>(make: (level: SolvedLevel) => T) => new Map(levels.map((level) => [level, make(level)]));
  return {
    solved,
    convention,
    metrics: cachedMetrics(look.metrics),
    words,
    levels,
    entries: ofEach((level) => columnEntries(level, convention)),
    heads: ofEach((level) => levelHead(level, solved.shot.levels, lent, words)),
    speech: speechOf(solved.shot),
    pronounce: mouthSounds(look.dictionary),
    camera: cameraPlan(solved, look.settings, look.neighbours),
    lent,
    marked: look.marked ?? null,
    bars: barsOf(look.marked, solved.shot.length),
    leftOver: new Set(),
  };
}

function bodyMarks(side: PageSide): Mark[] {
  const drawers = side.geometry.blocks[0]!.columns.dialogue
    ? [...ON_EVERY_SIDE, ...ON_FIRST_SIDE]
    : ON_EVERY_SIDE;
  return blockFramesOf(side).flatMap((run) => drawers.flatMap((draw) => draw(side, run)));
}

function headOf(side: PageSide, look: PageLook): Mark[] {
  const { plan, geometry } = side;
  const west = plan.convention === 'west';
  const { title, episode } = look.settings;
  return headerMarks(geometry, {
    shot: plan.solved.shot,
    title,
    episode,
    words: plan.words,
    metrics: plan.metrics,
    west,
    page: plan.words.pageOf(side.label, side.pages),
    leftOver: plan.leftOver,
  });
}

function sheetPage(side: PageSide, look: PageLook, marks: readonly Mark[]): Page {
  const { plan, geometry } = side;
  const { shot } = plan.solved;
  const start = (side.firstFrame - 1) % geometry.unit;
  const west = plan.convention === 'west';
  let rows: readonly PageRow[] | undefined;
  const middle = `${plan.words.cutNumber(shot.cut)}  ${plan.words.footPage(plan.words.pageOf(side.label, side.pages))}`;
  return {
    widthMm: geometry.widthMm,
    heightMm: geometry.heightMm,
    label: side.label,
    part: 'sheet',
    form: ruledForm(geometry, plan.words, plan.metrics, start, west),
    marks: [...marks, ...footOf(geometry, geometry.foot, shot, look, middle)],
    // Only who points at rows asks for them, not who prints the page.
    get rows() {
      rows ??= rowsOf(side);
      return rows;
    },
  };
}

function rowsOf(side: PageSide): PageRow[] {
  return blockFramesOf(side).flatMap((run) => {
    const { keys, cels } = run.block.columns;
    const columns = [keys, cels].flatMap((group) =>
      side.levels.flatMap(({ name: level }, i): LevelColumn[] => {
        const column = group[i];
        return column ? [{ level, ...column }] : [];
      }),
    );
    return Array.from(
      { length: run.last - run.first + 1 },
      (_, i): PageRow => ({
        frame: run.first + i,
        x: run.block.x,
        y: topOf(side, run, run.first + i),
        width: run.block.width,
        height: side.geometry.rowMm,
        columns,
      }),
    );
  });
}
