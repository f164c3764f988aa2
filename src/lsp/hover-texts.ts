/** What a hover says of moves, drawings and the rest, in words. */

import type { StatementOf } from '../language/tree.js';
import { makeField, standardField } from '../shot/camera/bind-fields.js';
import type { Field } from '../shot/camera/camera-model.js';
import { givenOf, kindOf, type LegForm, toldDegrees } from '../shot/camera/move-kinds.js';
import { evenSteps } from '../shot/camera/move-parameters.js';
import type { Settings } from '../shot/settings.js';
import type { ShotItem } from '../shot/shot.js';
import type { Artwork, SolvedMove } from '../solve/camera/solved-camera.js';
import { passFrames } from '../solve/item-placement.js';
import type { SolvedLevel, SolvedPassage } from '../solve/solved-shot.js';
import { type Showing, showingsOf } from '../solve/text-to-frames.js';
import { figure } from '../words/number-format.js';
import { wordsOf } from '../words/words.js';
import { type HoverWords, hoverWords } from './hover-words.js';
import { spanTouches } from './name-index.js';
import { solvedTimeline } from './timeline-frames.js';
import type { Analysis } from './workspace.js';

// ---- hovers of fields and moves

export function fieldText(
  { compiled, episode, name: file, language }: Analysis,
  name: string,
): string | null {
  const settings = compiled?.shot?.settings ?? episode.settings;
  const here = { file, start: 0, end: 0 };
  const statement = compiled?.tree?.statements.find(
    (one): one is StatementOf<'field'> => one.kind === 'field' && one.name.text === name,
  );
  const field =
    compiled?.shot?.camera.fields.find((one) => one.name === name) ??
    (statement ? makeField(statement, settings) : name === 'full' ? standardField(settings, here) : null);
  return field && describe(field, settings, hoverWords(language));
}

function describe(
  { name, xMm, yMm, widthMm, turnDeg }: Field,
  { field, fields }: Settings,
  words: HoverWords,
): string {
  const height = (widthMm * field.heightMm) / field.widthMm;
  const steps = 2 * fields;
  const side = (steps: number, plus: string, minus: string): string =>
    Math.abs(steps) < 5e-3 ? '' : ` ${figure(Math.abs(steps))}${steps > 0 ? plus : minus}`;
  const chart = `${figure((widthMm / field.widthMm) * fields)}F${side((yMm / field.heightMm) * steps, 'N', 'S')}${side((xMm / field.widthMm) * steps, 'E', 'W')}`;
  return [
    words.field(name, sizeText(widthMm, height), (widthMm / field.widthMm) * 100),
    `${words.centre(xMm, yMm)}${turnDeg === 0 ? '' : words.turned(turnDeg)}${words.chart(fields, chart)}`,
  ].join('  \n');
}

const sizeText = (widthMm: number, heightMm: number): string => `${figure(widthMm)} × ${figure(heightMm)} mm`;

/** The move that a statement says. */
export function moveText({ compiled, language }: Analysis, start: number, file: string): string | null {
  const { solved, shot } = compiled ?? {};
  const found = solved?.camera.moves.find(({ move }) => move.span.start === start && move.span.file === file);
  if (!found || !shot) return null;
  const words = hoverWords(language);
  const {
    move,
    start: from,
    end,
    wayMm,
    largestStepMm,
    largestStepShare,
    largestStepPx,
    graduations,
  } = found;
  const lines = [
    words.move(
      move.kind,
      words.between(Math.max(1, from + 1), Math.min(end, shot.length)),
      words.lasting(end - from, shot.fps),
      end - from,
    ),
  ];
  if (move.gives === 'width' || move.gives === 'centre') lines.push(words.gives[move.gives]);
  if (wayMm > 1e-9 && move.gives !== 'width') {
    lines.push(words.way(wayMm, speedOf(found)));
    const largest = graduations.find(({ stepMm }) => Math.abs(Math.abs(stepMm) - largestStepMm) < 1e-9);
    lines.push(
      words.largestStep({
        mm: largestStepMm,
        frame: largest?.frame ?? null,
        percent: largestStepShare * 100,
        pixels: largestStepPx,
      }),
    );
  }
  const first = graduations[0];
  const last = graduations.at(-1);
  if (first?.value != null && last?.value != null && first.value !== last.value) {
    const shown = VALUES[kindOf(move).legs];
    const [from, to] = [first.value, last.value].map((value) => shown(toldDegrees(move, value), words));
    const sense = givenOf(move, 'sense');
    const told = wordsOf({ labels: language, convention: 'japan' }).moves;
    const way = sense ? ` ${(sense.onward ? told.senses : told.positiveSenses)[sense.positive]}` : '';
    lines.push(`${words.fromTo(from!, to!)}${way}`);
  }
  return lines.join('  \n');
}

/** What a move drives besides the place. */
const VALUES: { readonly [L in LegForm]: (value: number, words: HoverWords) => string } = {
  field: (value, words) => words.ofWidth(value),
  scale: (value) => `${figure(value * 100)} %`,
  angle: (value) => `${figure(value)}°`,
  place: (value) => figure(value),
  way: (value) => figure(value),
  swing: (value) => figure(value),
};

/** The speed of the part that runs at constant speed, where there is one for the whole move. */
function speedOf({ move, wayMm }: SolvedMove): { mm: number; throughout: boolean } | null {
  const [leg, second] = move.legs;
  if (!leg || second || !kindOf(move).goes) return null;
  const { form } = leg.spacing;
  if (form !== 'linear' && form !== 'ease') return null;
  return { mm: wayMm / evenSteps(leg.spacing, leg.end - leg.start), throughout: form === 'linear' };
}

// ---- hovers of what a timeline shows, and of levels

const MOST_LEVELS = 4;

/** The item under the cursor, on each level that shows it; a phrase may be played by several. */
export function drawingAt(analysis: Analysis, offset: number): string | null {
  const { compiled, name, language } = analysis;
  const { shot, solved } = compiled ?? {};
  if (!shot || !solved) return null;
  const said: string[] = [];
  for (const { name: level } of shot.levels) {
    const here = showingsOf(shot, level).filter(
      ({ span }) => span.file === name && spanTouches(span, offset),
    );
    if (here.length === 0) continue;
    // A cursor between two items stands at the beginning of the second one.
    const start = Math.max(...here.map(({ span }) => span.start));
    const found = solved.levels.find((one) => one.name === level);
    if (found?.timed)
      said.push(
        shown(
          here.filter(({ span }) => span.start === start),
          found,
          shot.fps,
          hoverWords(language),
        ),
      );
  }
  if (said.length === 0) return null;
  return said.slice(0, MOST_LEVELS).join('\n\n');
}

function shown(showings: readonly Showing[], level: SolvedLevel, fps: number, words: HoverWords): string {
  const exposures = showings.map(({ from }) => level.exposures[from - 1]!);
  const first = exposures[0]!;
  const names = [...new Set(exposures.map(({ drawing }) => drawing ?? 'x'))];
  const frames = showings.reduce((sum, { from, to }) => sum + to - from + 1, 0);
  const places = words.listed(showings.map(({ from, to }) => `${from}–${to}`));
  const lines: string[] = [];
  if (first.kind === 'empty') lines.push(words.empty(level.name));
  else {
    const cels = words.listed([...new Set(exposures.map(({ cel }) => `${level.name}${cel}`))]);
    lines.push(words.drawing(level.name, words.listed(names), words.kinds[first.kind], cels));
  }
  const [only] = showings;
  const stretch = showings.length === 1 ? words.between(only!.from, only!.to) : words.frameList(places);
  lines.push(words.here(stretch, words.lasting(frames, fps), showings.length));
  const drawing =
    names.length === 1 ? level.drawings.find((one) => one.drawing === first.drawing) : undefined;
  if (drawing && drawing.exposedFrames !== frames)
    lines.push(words.inAll(words.lasting(drawing.exposedFrames, fps), drawing.firstFrame));
  const passage = passageOf(level, first.drawing, first.kind);
  if (passage) lines.push(passageText(passage, words));
  return lines.join('  \n');
}

/** The passage that a key leads into, or that an in-between belongs to. */
function passageOf(
  { passages }: SolvedLevel,
  drawing: string | null,
  kind: string,
): SolvedPassage | undefined {
  return kind === 'key'
    ? passages.find(({ from }) => from === drawing)
    : passages.find(({ drawings }) => drawing !== null && drawings.includes(drawing));
}

function passageText({ from, to, fractions, chart }: SolvedPassage, words: HoverWords): string {
  const shares = words.listed(
    fractions.map((share) => figure(share, { decimals: 4 })),
    8,
  );
  return words.passage(from, to, fractions.length, shares, chart === 'fractions' ? null : chart);
}

/** A group or a played phrase under the cursor. */
export function groupAt(
  analysis: Analysis,
  statement: StatementOf<'timeline'>,
  offset: number,
): string | null {
  const timeline = solvedTimeline(analysis, statement);
  const found = timeline?.placed.find(({ item }) => item.kind === 'group' && spanTouches(item.span, offset));
  if (!timeline || found?.item.kind !== 'group') return null;
  const { item, start, frames } = found;
  const pass = passFrames(item);
  const words = hoverWords(analysis.language);
  return words.group(
    item.phrase,
    words.between(start, start + frames - 1),
    words.lasting(frames, timeline.shot.fps),
    frames / pass,
    pass,
  );
}

/** How long a phrase lasts where the cut plays it. */
export function phraseText({ compiled, language }: Analysis, name: string): string {
  const lengths = new Set<number>();
  const seen = new Set<readonly ShotItem[]>();
  const visit = (items: readonly ShotItem[]): void => {
    if (seen.has(items)) return;
    seen.add(items);
    for (const item of items) {
      if (item.kind !== 'group') continue;
      if (item.phrase === name) lengths.add(passFrames(item));
      visit(item.items);
    }
  };
  for (const { timeline } of compiled?.shot?.levels ?? []) visit(timeline?.items ?? []);
  const fps = compiled?.shot?.fps ?? 24;
  const words = hoverWords(language);
  const once = [...lengths].sort((a, b) => a - b).map((frames) => words.lasting(frames, fps));
  return words.phrase(name, words.listed(once));
}

/** A level: what it shows, how much is drawn for it, the artwork that it needs. */
export function levelText({ compiled, language }: Analysis, name: string): string | null {
  const { solved, shot } = compiled ?? {};
  const level = solved?.levels.find((one) => one.name === name);
  if (!solved || !shot || !level) return null;
  const words = hoverWords(language);
  const lines = [words.level(name, level.title)];
  if (level.timed) lines.push(drawnText(level, words), usedText(level, shot.fps, words));
  if (level.reuse) lines.push(words.reuses(level.reuse.cut, level.reuse.level));
  if (level.missing.length > 0)
    lines.push(words.unused(words.listed(level.missing.map(({ cel }) => `${name}${cel}`))));
  const artwork = solved.camera.artwork.get(name);
  if (artwork) lines.push(artworkText(artwork, words));
  return lines.join('  \n');
}

function drawnText({ drawings }: SolvedLevel, words: HoverWords): string {
  const fresh = drawings.filter(({ reused }) => !reused);
  const count = (kind: string): number => fresh.filter((one) => one.kind === kind).length;
  return words.drawn({
    keys: count('key'),
    breakdowns: count('breakdown'),
    inbetweens: count('inbetween'),
    reused: drawings.length - fresh.length,
  });
}

function usedText({ exposures }: SolvedLevel, fps: number, words: HoverWords): string {
  const shown = exposures.filter(({ kind }) => kind !== 'empty').length;
  const all = exposures.length;
  return words.seen(words.lasting(shown, fps), words.lasting(all, fps), all - shown);
}

function artworkText({ width, height, needed, loop }: Artwork, words: HoverWords): string {
  if (!needed) return words.neverSeen;
  const given = width !== null && height !== null ? sizeText(width, height) : null;
  return words.artwork(sizeText(needed.width, needed.height), given, loop ? loop.lengthMm : null);
}
