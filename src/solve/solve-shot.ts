/** `Shot` → `SolvedShot`. Pure. */

import { type Diagnostic, type Report, reportOnce } from '../language/diagnostic.js';
import type { Level, Shot, ShotItem } from '../shot/shot.js';
import type { TrackSound } from '../sound/track-sound.js';
import type { CameraLevel } from './camera/camera-tracks.js';
import { solveCamera } from './camera/solve-camera.js';
import { placesOf } from './drawn-fractions.js';
import { existing, findReferences, nameBetweens, takeKnown } from './inbetween-names.js';
import { findPassages } from './inbetween-resolution.js';
import { cutShort, lay } from './item-placement.js';
import type { Drawing } from './level-drawings.js';
import { solveTrack } from './solve-track.js';
import type {
  Counts,
  Exposure,
  SolvedCycle,
  SolvedDrawing,
  SolvedLevel,
  SolvedPassage,
  SolvedShot,
} from './solved-shot.js';
import { type SeenRun, warn } from './timeline-warnings.js';
import { playPlaced } from './unroll-cycles.js';

export interface SolveContext {
  /**
   * For levels that reuse one of another cut, by their name here: that level, solved. Drawings that it shows keep their names and
   * numbers and are not counted; others are new, numbered on from its highest number. Without it (a cut looked at by itself)
   * the other cut's numbers cannot be known: every drawing counts as reused, and is numbered as if it were this cut's own.
   */
  readonly reused?: ReadonlyMap<string, SolvedLevel>;
  /** The cut's recording on its rows, where it could be read. */
  readonly sound?: TrackSound | null;
  /** Asked instead of solving a level. */
  readonly recall?: Recall;
}

/** Gives a level solved before, with its messages, or solves it. */
export type Recall = (level: Level, solve: (report: Report) => SolvedLevel, report: Report) => SolvedLevel;

export function solve(shot: Shot, { reused, sound = null, recall = afresh }: SolveContext = {}): SolvedShot {
  const diagnostics: Diagnostic[] = [];
  const report = reportOnce(diagnostics);
  const levels = shot.levels.map((level) =>
    recall(
      level,
      (tell) => solveLevel(level, shot, (level.reuse && reused?.get(level.name)) ?? null, tell),
      report,
    ),
  );
  const camera = solveCamera(shot.camera, {
    length: shot.length,
    fps: shot.fps,
    levels: shot.levels.map((level, i) => seenByCamera(level, levels[i]!)),
    settings: shot.settings,
  });
  for (const diagnostic of camera.diagnostics) report(diagnostic);
  const track = solveTrack(shot, sound, report);
  return { shot, levels, counts: count(levels), camera: camera.solved, track, diagnostics };
}

const afresh: Recall = (_, solve, report) => solve(report);

/** A level that is simply there shows throughout, and appears on the first frame. */
function seenByCamera(
  { name, span, homeMm, sizeMm, free, carry }: Level,
  { timed, exposures }: SolvedLevel,
): CameraLevel {
  const shown = (frame: number) => !timed || exposures[frame - 1]?.kind !== 'empty';
  const appears = (frame: number) => (timed ? shown(frame) && exposures[frame - 1]!.starts : frame === 1);
  return { name, span, homeMm, sizeMm, timed, free, carry, shown, appears };
}

/** New drawings by kind, and the reused ones and the backgrounds by themselves. */
function count(levels: readonly SolvedLevel[]): Counts {
  const kinds = { key: 0, breakdown: 0, inbetween: 0 };
  let reused = 0;
  let backgrounds = 0;
  for (const { background, drawings } of levels) {
    for (const drawing of drawings) {
      if (background) backgrounds += drawing.reused ? 0 : 1;
      else if (drawing.reused) reused++;
      else kinds[drawing.kind]++;
    }
  }
  const { key: keys, breakdown: breakdowns, inbetween: inbetweens } = kinds;
  return { keys, breakdowns, inbetweens, drawings: keys + breakdowns + inbetweens, reused, backgrounds };
}

// ---- one level: items → rows, drawings with their numbers, passages, cycles

/**
 * `BG`, `BG2`, `BOOK1`, `BOOK_A`, `BGB`: the names by which sheets call backgrounds and overlays (common practice), with a number, one
 * letter or what stands behind a `_`.
 */
export function isBackground(level: string): boolean {
  return /^(?:BG|BOOK)(?:[A-Z]?\d*|_.*)$/u.test(level);
}

/** A level that is simply there. */
function untimed({ name, title, reuse }: Level): SolvedLevel {
  return {
    name,
    title,
    background: isBackground(name),
    timed: false,
    exposures: [],
    drawings: [],
    passages: [],
    cycles: [],
    lastCel: 0,
    missing: [],
    reuse: reuse && { cut: reuse.cut, level: reuse.level },
    inherited: { drawings: [], passages: [] },
  };
}

/** `source`: the solved level that this one reuses, where it could be had. Null for a level that reuses one: see `solve`. */
function solveLevel(level: Level, shot: Shot, source: SolvedLevel | null, report: Report): SolvedLevel {
  const { timeline } = level;
  if (!timeline) return untimed(level);
  let laid = true;
  const placed = lay(level, timeline, shot, (diagnostic) => {
    if (diagnostic.code !== 'timeline-long' && diagnostic.code !== 'timeline-short') laid = false;
    report(diagnostic);
  });
  const cut = new Set<ShotItem>(placed.filter(cutShort).map((each) => each.item));
  const passages = findPassages(level, timeline.items, (group) => cut.has(group), report);
  const played = placed.map((each) => ({ start: each.start, ...playPlaced(each, shot.length) }));
  const units = level.pinned ? played.flatMap((each) => each.units) : [];
  const drawn = new Set(units.flatMap(({ leaf }) => passages.betweens.get(leaf) ?? []));
  const known = takeKnown(level, passages, drawn, source, shot.numbering, report);
  nameBetweens(passages, known);
  const places = new Map(passages.passages.map((each) => [each, placesOf(each, level.name, report)]));
  const references = findReferences(level, passages, known, report);
  const drawingOf = (item: ShotItem): Drawing | null => {
    if (item.kind === 'key') return passages.keys.get(item.name) ?? null;
    return passages.betweens.get(item) ?? references.get(item) ?? null;
  };

  // What each row shows, whether again, and on the way back.
  const shown = new Array<Drawing | null>(shot.length).fill(null);
  const repeated = new Array<boolean>(shot.length).fill(false);
  const goingBack = new Array<boolean>(shot.length).fill(false);
  const cycles: SolvedCycle[] = [];
  const runs: SeenRun[] = [];
  for (const each of played) {
    cycles.push(...each.cycles);
    let frame = each.start;
    for (const { leaf, frames, again, back } of each.units) {
      const drawing = drawingOf(leaf);
      const last = runs.at(-1);
      const run: SeenRun =
        last && last.drawing === drawing && last.lastFrame === frame - 1
          ? last
          : { drawing, firstFrame: frame, lastFrame: frame, leaf };
      if (run !== last) runs.push(run);
      run.lastFrame = frame + frames - 1;
      shown.fill(drawing, frame - 1, frame - 1 + frames);
      repeated.fill(again, frame - 1, frame - 1 + frames);
      goingBack.fill(back, frame - 1, frame - 1 + frames);
      frame += frames;
    }
  }

  const seen = new Set<Drawing>();
  for (let frame = 1; frame <= shot.length; frame++) {
    const drawing = shown[frame - 1];
    if (!drawing) continue;
    if (drawing.firstFrame === 0) {
      drawing.firstFrame = frame;
      seen.add(drawing);
    }
    drawing.exposedFrames++;
  }
  for (const { passage, tell } of known.short) {
    if (passage.drawings.some((drawing) => seen.has(drawing) && drawing.cel === 0)) tell();
  }
  const drawings = [...seen];
  const numbered = known.highest > 0;
  number(drawings, shot, known.highest);
  if (level.reuse && !source) for (const drawing of drawings) drawing.reused = true;

  const pinnedKeys = new Set(known.loose.filter((each) => each.kind === 'key').map((each) => each.key));
  if (timeline.whole && laid && timeline.items.length > 0)
    warn(
      { level, timeline, passages, runs, drawings, pinnedKeys, referred: new Set(references.values()) },
      report,
    );

  const onPaper = [
    ...passages.keys.values(),
    ...passages.passages.flatMap((each) => each.drawings),
    ...known.loose,
  ];
  const missing = [
    ...onPaper
      .filter((drawing) => drawing.pinned && !drawing.reused && !seen.has(drawing))
      .map(({ cel, name }) => ({ cel, drawing: name })),
    // By frame most numbers are left out anyway, and those of the cut that is reused are drawings there.
    ...known.unused
      .filter((cel) => shot.numbering === 'sequence' && cel > known.reused)
      .map((cel) => ({ cel, drawing: '' })),
  ].sort((a, b) => a.cel - b.cel);

  const ways = passages.passages
    .flatMap((passage): SolvedPassage[] => {
      const frames = passage.drawings.map((drawing) => drawing.firstFrame).filter((frame) => frame > 0);
      if (frames.length === 0) return [];
      const { from, to } = passage;
      const names = passage.drawings.map((drawing) => drawing.name);
      return [
        {
          from,
          to,
          ...places.get(passage)!,
          drawings: names,
          firstFrame: Math.min(...frames),
          span: passage.written[0]!.span,
        },
      ];
    })
    .sort((a, b) => a.firstFrame - b.firstFrame);

  return {
    name: level.name,
    title: level.title,
    background: isBackground(level.name),
    timed: true,
    exposures: shown.map(
      (drawing, i): Exposure => ({
        frame: i + 1,
        kind: drawing === null ? 'empty' : drawing.kind,
        drawing: drawing === null ? null : drawing.name,
        cel: drawing === null ? null : drawing.cel,
        starts: i === 0 || shown[i - 1] !== drawing,
        again: repeated[i]!,
        back: goingBack[i]!,
      }),
    ),
    drawings: drawings
      .map(
        ({ cel, name, kind, firstFrame, exposedFrames, pinned, reused }): SolvedDrawing => ({
          cel,
          drawing: name,
          kind,
          firstFrame,
          exposedFrames,
          added: numbered && !pinned,
          reused,
        }),
      )
      .sort((a, b) => a.cel - b.cel),
    passages: ways,
    cycles,
    lastCel: drawings.reduce((highest, { cel }) => Math.max(highest, cel), 0),
    missing,
    reuse: level.reuse && { cut: level.reuse.cut, level: level.reuse.level },
    inherited: inherited(source, ways, drawings),
  };
}

function inherited(
  source: SolvedLevel | null,
  passages: readonly SolvedPassage[],
  shown: readonly Drawing[],
): SolvedLevel['inherited'] {
  if (!source) return { drawings: [], passages: [] };
  const here = new Set(shown.filter(({ reused }) => reused).map(({ cel }) => cel));
  const way = (from: string, to: string, { length }: readonly unknown[]) => `${from}>${to}*${length}`;
  const ways = new Set(passages.map(({ from, to, drawings }) => way(from, to, drawings)));
  return {
    drawings: existing(source).drawings.filter(({ cel }) => !here.has(cel)),
    passages: existing(source).passages.filter(
      ({ from, to, drawings }) => !ways.has(way(from, to, drawings)),
    ),
  };
}

/**
 * Numbers the drawings that have none, which stand in the order in which they are first seen. Where some have numbers on paper the
 * new ones go on behind the highest, whatever the numbering. By frame no two can clash: two drawings never start on one frame.
 */
function number(drawings: readonly Drawing[], { numbering }: Shot, highest: number): void {
  let last = highest;
  for (const drawing of drawings) {
    if (drawing.cel > 0) continue;
    drawing.cel = numbering === 'frame' && highest === 0 ? drawing.firstFrame : ++last;
  }
}
