/** What a hover says of moves, drawings and the rest, in words. */

import type { StatementOf } from '../language/tree.js';
import { makeField, standardField } from '../shot/camera/bind-fields.js';
import type { Field } from '../shot/camera/camera-model.js';
import { kindOf, type LegForm } from '../shot/camera/move-kinds.js';
import { evenSteps } from '../shot/camera/move-parameters.js';
import type { Settings } from '../shot/settings.js';
import type { ShotItem } from '../shot/shot.js';
import { feetAndFrames, inFrames, rowName, secondsAndFrames } from '../shot/time-notation.js';
import type { Artwork, SolvedMove } from '../solve/camera/solved-camera.js';
import { passFrames } from '../solve/item-placement.js';
import type { SolvedLevel, SolvedPassage } from '../solve/solved-shot.js';
import { type Showing, showingsOf } from '../solve/text-to-frames.js';
import { moveTitles } from '../words/en/forms-en.js';
import { figure, plural } from '../words/number-format.js';
import { spanTouches } from './name-index.js';
import { solvedTimeline } from './timeline-frames.js';
import type { Analysis } from './workspace.js';

/** `48 frames (2+0)` */
export function lasting(frames: number, fps: number): string {
  return `${inFrames(frames)} (${secondsAndFrames(frames, fps)})`;
}

/** `frames 25–48`, `frame 25` */
export function between(from: number, to: number): string {
  return from === to ? `frame ${from}` : `frames ${from}–${to}`;
}

export function asLength(frames: number, fps: number): string {
  return `${inFrames(frames)} = ${secondsAndFrames(frames, fps)} = ${feetAndFrames(frames)} of 35 mm film`;
}

export function asPosition(frame: number, fps: number): string {
  return `frame ${frame}: row ${rowName(frame, fps, false)}, or ${rowName(frame, 16, true)} in feet; up to here ${asLength(frame, fps)}`;
}

export function millimetres(value: number): string {
  return `${figure(value)} mm`;
}

export function listed(parts: readonly string[], most = 6): string {
  return parts.length > most
    ? `${parts.slice(0, most).join(', ')} and ${parts.length - most} more`
    : parts.join(', ');
}

// ---- hovers of fields and moves

export function fieldText({ compiled, episode, name: file }: Analysis, name: string): string | null {
  const settings = compiled?.shot?.settings ?? episode.settings;
  const here = { file, start: 0, end: 0 };
  const statement = compiled?.tree?.statements.find(
    (one): one is StatementOf<'field'> => one.kind === 'field' && one.name.text === name,
  );
  const field =
    compiled?.shot?.camera.fields.find((one) => one.name === name) ??
    (statement ? makeField(statement, settings) : name === 'full' ? standardField(settings, here) : null);
  return field && describe(field, settings);
}

function describe({ name, xMm, yMm, widthMm, turnDeg }: Field, { field, fields }: Settings): string {
  const height = (widthMm * field.heightMm) / field.widthMm;
  const steps = 2 * fields;
  const side = (steps: number, plus: string, minus: string): string =>
    Math.abs(steps) < 5e-3 ? '' : ` ${figure(Math.abs(steps))}${steps > 0 ? plus : minus}`;
  const chart = `${figure((widthMm / field.widthMm) * fields)}F${side((yMm / field.heightMm) * steps, 'N', 'S')}${side((xMm / field.widthMm) * steps, 'E', 'W')}`;
  const turned =
    turnDeg === 0
      ? ''
      : `, turned ${figure(Math.abs(turnDeg))}° ${turnDeg > 0 ? 'clockwise' : 'counter-clockwise'}`;
  return [
    `Field \`${name}\`: ${figure(widthMm)} × ${millimetres(height)}, ${figure((widthMm / field.widthMm) * 100)} % of the standard field`,
    `centre ${figure(xMm)}, ${figure(yMm)} mm${turned}; on the ${fields}-field chart ${chart}`,
  ].join('  \n');
}

/** The move that a statement says. */
export function moveText({ compiled }: Analysis, start: number, file: string): string | null {
  const { solved, shot } = compiled ?? {};
  const found = solved?.camera.moves.find(({ move }) => move.span.start === start && move.span.file === file);
  if (!found || !shot) return null;
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
    `${moveTitles[move.kind].title}: ${between(Math.max(1, from + 1), Math.min(end, shot.length))}, ${lasting(end - from, shot.fps)} in ${end - from} steps`,
  ];
  if (move.gives === 'width') lines.push('gives the width; another move of the camera gives the centre');
  if (move.gives === 'centre') lines.push('gives the centre and the turn; a truck gives the width');
  if (wayMm > 1e-9 && move.gives !== 'width') {
    lines.push(`way ${millimetres(wayMm)}${speedText(found)}`);
    const largest = graduations.find(({ stepMm }) => Math.abs(Math.abs(stepMm) - largestStepMm) < 1e-9);
    lines.push(
      `largest step ${millimetres(largestStepMm)}${largest ? ` on frame ${largest.frame}` : ''}: ${figure(largestStepShare * 100)} % of the field's width, ${figure(largestStepPx, { decimals: 1 })} pixels`,
    );
  }
  const first = graduations[0];
  const last = graduations.at(-1);
  if (first?.value != null && last?.value != null && first.value !== last.value) {
    const shown = VALUES[kindOf(move).legs];
    lines.push(`from ${shown(first.value)} to ${shown(last.value)}`);
  }
  return lines.join('  \n');
}

/** What a move drives besides the place. */
const VALUES: { readonly [L in LegForm]: (value: number) => string } = {
  field: (value) => `${figure(value)} mm of width`,
  scale: (value) => `${figure(value * 100)} %`,
  angle: (value) => `${figure(value)}°`,
  place: figure,
  way: figure,
  swing: figure,
};

/** The speed of the part that runs at constant speed, where there is one for the whole move. */
function speedText({ move, wayMm }: SolvedMove): string {
  const [leg, second] = move.legs;
  if (!leg || second || !kindOf(move).goes) return '';
  const { spacing } = leg;
  const speed = `, ${figure(wayMm / evenSteps(spacing, leg.end - leg.start), { decimals: 3 })} mm/f`;
  if (spacing.form === 'linear') return `${speed} throughout`;
  return spacing.form === 'ease' ? `${speed} where it runs at constant speed` : '';
}

// ---- hovers of what a timeline shows, and of levels

const KINDS = { key: 'key drawing', breakdown: 'breakdown', inbetween: 'in-between', empty: 'empty' };
const MOST_LEVELS = 4;

/** The item under the cursor, on each level that shows it; a phrase may be played by several. */
export function drawingAt(analysis: Analysis, offset: number): string | null {
  const { compiled, name } = analysis;
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
        ),
      );
  }
  if (said.length === 0) return null;
  return said.slice(0, MOST_LEVELS).join('\n\n');
}

function shown(showings: readonly Showing[], level: SolvedLevel, fps: number): string {
  const exposures = showings.map(({ from }) => level.exposures[from - 1]!);
  const first = exposures[0]!;
  const names = [...new Set(exposures.map(({ drawing }) => drawing ?? 'x'))];
  const frames = showings.reduce((sum, { from, to }) => sum + to - from + 1, 0);
  const places = listed(showings.map(({ from, to }) => `${from}–${to}`));
  const lines: string[] = [];
  if (first.kind === 'empty') lines.push(`**${level.name}**: empty`);
  else {
    const cels = listed([...new Set(exposures.map(({ cel }) => `${level.name}${cel}`))]);
    lines.push(`**${level.name} ${listed(names)}**: ${KINDS[first.kind]}, number ${cels}`);
  }
  const times = showings.length > 1 ? `, ${showings.length} times` : '';
  lines.push(
    `here ${showings.length === 1 ? between(showings[0]!.from, showings[0]!.to) : `frames ${places}`}: ${lasting(frames, fps)}${times}`,
  );
  const drawing =
    names.length === 1 ? level.drawings.find((one) => one.drawing === first.drawing) : undefined;
  if (drawing && drawing.exposedFrames !== frames)
    lines.push(`in all ${lasting(drawing.exposedFrames, fps)}, first on frame ${drawing.firstFrame}`);
  const passage = passageOf(level, first.drawing, first.kind);
  if (passage) lines.push(passageText(passage));
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

function passageText({ from, to, fractions, chart }: SolvedPassage): string {
  const shares = listed(
    fractions.map((share) => figure(share, { decimals: 4 })),
    8,
  );
  return `${from} → ${to}: ${plural(fractions.length, 'in-between')} at ${shares} of the way${chart === 'fractions' ? '' : ` (${chart})`}`;
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
  const what = item.phrase === null ? 'Group' : `Phrase \`${item.phrase}\``;
  const passes = frames / pass;
  const times = passes === 1 ? 'once' : `${figure(passes)} passes of ${inFrames(pass)}`;
  return `${what}: ${between(start, start + frames - 1)}, ${lasting(frames, timeline.shot.fps)}, ${times}`;
}

/** How long a phrase lasts where the cut plays it. */
export function phraseText({ compiled }: Analysis, name: string): string {
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
  const once = [...lengths].sort((a, b) => a - b).map((frames) => lasting(frames, fps));
  return `Phrase \`${name}\`${once.length > 0 ? `: ${listed(once)} a pass` : ''}`;
}

/** A level: what it shows, how much is drawn for it, the artwork that it needs. */
export function levelText({ compiled }: Analysis, name: string): string | null {
  const { solved, shot } = compiled ?? {};
  const level = solved?.levels.find((one) => one.name === name);
  if (!solved || !shot || !level) return null;
  const lines = [`Level **${name}**${level.title ? ` “${level.title}”` : ''}`];
  if (level.timed) lines.push(drawnText(level), usedText(level, shot.fps));
  if (level.reuse) lines.push(`reuses the drawings of ${level.reuse.cut}/${level.reuse.level}`);
  if (level.missing.length > 0)
    lines.push(`numbers not used: ${listed(level.missing.map(({ cel }) => `${name}${cel}`))}`);
  const artwork = solved.camera.artwork.get(name);
  if (artwork) lines.push(artworkText(artwork));
  return lines.join('  \n');
}

function drawnText({ drawings }: SolvedLevel): string {
  const fresh = drawings.filter(({ reused }) => !reused);
  const count = (kind: string): number => fresh.filter((one) => one.kind === kind).length;
  const parts = [
    `${count('key')} keys`,
    ...(count('breakdown') > 0 ? [`${count('breakdown')} breakdowns`] : []),
    `${count('inbetween')} in-betweens`,
  ];
  const reused = drawings.length - fresh.length;
  return `${fresh.length} drawings: ${parts.join(', ')}${reused > 0 ? `; ${reused} reused` : ''}`;
}

function usedText({ exposures }: SolvedLevel, fps: number): string {
  const shown = exposures.filter(({ kind }) => kind !== 'empty').length;
  const empty = exposures.length - shown;
  return `seen on ${lasting(shown, fps)} of ${lasting(exposures.length, fps)}${empty > 0 ? `, empty on ${empty}` : ''}`;
}

function artworkText({ width, height, needed, loop }: Artwork): string {
  const size = (w: number, h: number): string => `${figure(w)} × ${figure(h)} mm`;
  const given = width !== null && height !== null ? `, it has ${size(width, height)}` : '';
  const tiled = loop ? `, painted as a loop of ${figure(loop.lengthMm)} mm` : '';
  return needed ? `artwork needed ${size(needed.width, needed.height)}${given}${tiled}` : 'never seen';
}
