/** Hovers of what a timeline shows, and of levels. */

import type { StatementOf } from '../language/tree.js';
import type { ShotItem } from '../shot/shot.js';
import { inFrames } from '../shot/time-notation.js';
import type { Artwork } from '../solve/camera/solved-camera.js';
import { passFrames } from '../solve/item-placement.js';
import type { SolvedLevel, SolvedPassage } from '../solve/solved-shot.js';
import { type Showing, showingsOf } from '../solve/text-to-frames.js';
import { figure, plural } from '../words/number-format.js';
import { between, lasting, listed } from './hover-wording.js';
import { spanTouches } from './name-index.js';
import { solvedTimeline } from './timeline-frames.js';
import type { Analysis } from './workspace.js';

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
