/** The dialogue column: speaker, words on their rows, bars at start and end; sounds and music told apart from voices. */

import { isWide } from '../../layout/line-breaking.js';
import type { Spoken } from '../../shot/shot.js';
import { rowName } from '../../shot/time-notation.js';
import { wordStretches } from '../../shot/word-stretches.js';
import { besideGutter } from '../block-columns.js';
import type { Mark } from '../display-list.js';
import { black, line, polyline, textAt } from '../mark-builders.js';
import { memoPointers } from '../memo-box.js';
import { type BlockFrames, type PageSide, topOf } from '../sheet-plan.js';
import { fitLine, wrap } from '../text-fitting.js';
import { setDownwards } from '../vertical-text.js';
import { levelStretches } from './latin-speech.js';
import { barGap, type PlacedSpoken, type SpeechLane, TICK_MM, wholeText } from './speech-lanes.js';
import { verticalStretch } from './vertical-speech.js';
import { readStretches } from './word-places.js';

export function speechMarks(side: PageSide, run: BlockFrames): Mark[] {
  if (run.last < run.first) return [];
  return side.plan.speech.placed.flatMap((placed) => {
    const { from, to } = placed.spoken.frames;
    return from > run.last || to < run.first ? [] : lineMarks(side, run, placed);
  });
}

/** A line as the memo tells it, with its first row. */
export function spokenInMemo(side: Pick<PageSide, 'plan' | 'geometry'>, spoken: Spoken): string {
  const { words, convention } = side.plan;
  const row = (frame: number): string => rowName(frame, side.geometry.unit, convention === 'west');
  const who = speakerText(spoken, words);
  return `${row(spoken.frames.from)}–${row(spoken.frames.to)} ${who}: ${wholeText(spoken)}`;
}

function speakerText(spoken: Spoken, words: PageSide['plan']['words']): string {
  if (spoken.kind === 'sound') return words.sound;
  if (spoken.kind === 'music') return words.music;
  const manner = { on: '', off: words.off, mono: words.mono }[spoken.manner];
  return [spoken.speaker, manner].filter((text) => text !== '').join(' ');
}

/** A lane for sounds is this much of one for voices; where the cut has no sounds its lane is left to the pencil. */
const NARROW = { heard: 0.44, free: 0.34 };
/** The lines at the left of a sound and what is free at its right, mm. */
const BESIDE_SOUND = 1.2;

function laneOf(side: PageSide, run: BlockFrames, { lane, spoken }: PlacedSpoken): SpeechLane {
  const column = besideGutter(run.block.columns.dialogue!, side.geometry.gutters.speech);
  const { voices, sounds, placed } = side.plan.speech;
  const share = placed.some((one) => one.lane >= voices) ? NARROW.heard : NARROW.free;
  const narrow = Math.max(
    (column.width * share) / (voices + sounds * share),
    side.geometry.leastTextMm + BESIDE_SOUND,
  );
  const unit = (column.width - sounds * narrow) / voices;
  const sound = lane >= voices;
  const own = sound ? narrow : unit;
  const place = sound ? voices * unit + (lane - voices) * own : lane * unit;
  // A sound with nothing beside it has the whole column up to its lane's end.
  const wide = sound && firstBeside(side, run, { lane, spoken }) > run.last;
  const x = wide ? column.x : column.x + place;
  const width = wide ? place + own : own;
  const stripWidth = sound
    ? 0
    : Math.max(side.geometry.leastTextMm * 1.2, Math.min(width * 0.27, 2.7 * side.geometry.scale));
  const stripX = x + 0.55;
  const wordsX = stripX + stripWidth + (sound ? 0.3 : 0);
  return { x, width, stripX, stripWidth, wordsX, wordsWidth: x + width - 0.25 - wordsX };
}

/** The first row of a line here on which something stands in the column at its left; past the last row if nothing does. */
function firstBeside(side: PageSide, run: BlockFrames, { lane, spoken }: PlacedSpoken): number {
  const from = Math.max(spoken.frames.from, run.first);
  const to = Math.min(spoken.frames.to, run.last);
  return side.plan.speech.placed
    .filter((other) => other.lane < lane && other.spoken.frames.to >= from && other.spoken.frames.from <= to)
    .reduce((least, other) => Math.min(least, Math.max(other.spoken.frames.from, from)), run.last + 1);
}

function lineMarks(side: PageSide, run: BlockFrames, placed: PlacedSpoken): Mark[] {
  const { spoken, lane: index } = placed;
  const lane = laneOf(side, run, placed);
  const from = Math.max(spoken.frames.from, run.first);
  const to = Math.min(spoken.frames.to, run.last);
  const top = topOf(side, run, from);
  const bottom = topOf(side, run, to + 1);
  const starts = from === spoken.frames.from;
  const ends = to === spoken.frames.to;
  const gap = barGap(side.geometry);
  const bar = black(Math.min(0.3, side.geometry.rowMm * 0.1));
  const left = lane.x + 0.3;
  const right = lane.x + lane.width - 0.3;
  const marks: Mark[] = [];
  if (starts) marks.push(line(left, top + gap, right, top + gap, bar));
  marks.push(...edge(spoken, left, top + (starts ? gap : 0), bottom - (ends ? gap : 0)));
  const next = side.plan.speech.placed
    .filter((other) => other.lane === index && other.spoken.frames.from > spoken.frames.from)
    .reduce((least, other) => Math.min(least, other.spoken.frames.from), run.last + 1);
  const voice = spoken.kind === 'voice';
  const told = (voice ? speaker : soundMarks)({ side, run, spoken, lane, from, starts, next });
  marks.push(...told.marks);
  if (voice) marks.push(...wordMarks(side, run, spoken, lane));
  // What goes on is not closed.
  if (ends && !spoken.open) {
    // A name that is longer than its line runs down past the end; the bar leaves it room.
    const y = bottom - gap;
    const passes = told.end > y - 0.2;
    const [from, to] = !passes ? [left, right] : voice ? [lane.wordsX, right] : [left, lane.wordsX - 0.05];
    marks.push(line(from, y, to, y, bar));
  }
  return marks;
}

/** A line of dialogue as far as it stands on the rows of one block. */
interface Here {
  readonly side: PageSide;
  readonly run: BlockFrames;
  readonly spoken: Spoken;
  readonly lane: SpeechLane;
  /** Its first frame here. */
  readonly from: number;
  /** Whether that is its first frame. */
  readonly starts: boolean;
  /** Where the lane's next line begins. */
  readonly next: number;
}

interface Told {
  readonly marks: Mark[];
  /** How far down it goes. */
  readonly end: number;
}

/** The line down the rows: plain for a voice, a zigzag for a sound, double for music. */
function edge(spoken: Spoken, x: number, top: number, bottom: number): Mark[] {
  const thin = black(0.2);
  if (spoken.kind === 'voice') return [line(x, top, x, bottom, thin)];
  if (spoken.kind === 'music')
    return [line(x, top, x, bottom, thin), line(x + 0.4, top, x + 0.4, bottom, thin)];
  const points: [number, number][] = [];
  const steps = Math.max(2, Math.round((bottom - top) / 0.9));
  for (let i = 0; i <= steps; i++) points.push([x + (i % 2) * 0.45, top + ((bottom - top) * i) / steps]);
  return [polyline(points, thin)];
}

/** Who speaks, down the left of the lane; in brackets where the line began before. */
function speaker({ side, run, spoken, lane, from, starts, next }: Here): Told {
  const { plan, geometry } = side;
  const said = speakerText(spoken, plan.words);
  if (said === '') return { marks: [], end: 0 };
  const top = topOf(side, run, from) + 0.7;
  const room = topOf(side, run, Math.min(next, run.last + 1)) - top - 0.4;
  const most = Math.max(geometry.leastTextMm, Math.min(lane.stripWidth * 0.85, 2.4 * geometry.scale));
  const strip = { x: lane.stripX, width: lane.stripWidth, top, room };
  const size = { most, least: geometry.leastTextMm, weight: 'bold' } as const;
  const set = setDownwards(starts ? said : `(${said})`, strip, size, plan.metrics);
  if (!set.fits) plan.leftOver.add(spokenInMemo(side, spoken));
  return set;
}

/** What is heard, down its lane; a sound that began before stands in brackets. */
function soundMarks({ side, run, spoken, lane, from, starts, next }: Here): Told {
  const { plan, geometry } = side;
  const what = speakerText(spoken, plan.words);
  const all = wordStretches(spoken);
  const before = all.findLast((stretch) => stretch.from < from);
  const here = all.filter((stretch) => stretch.from >= from && stretch.from <= run.last);
  const texts = here.map((stretch, i) => ({
    from: stretch.from,
    text: starts && i === 0 ? `${what} ${stretch.text}` : stretch.text,
  }));
  if (!starts && before && before !== here[0]) texts.unshift({ from, text: `(${what} ${before.text})` });
  const most = Math.max(geometry.leastTextMm, Math.min(lane.wordsWidth * 0.9, 2.2 * geometry.scale));
  const sets = texts.map(({ from: at, text }, i): Told => {
    const top = topOf(side, run, at) + 0.7;
    const end = Math.min(texts[i + 1]?.from ?? next, run.last + 1);
    const across = onRows(side, run, text, lane, at, Math.min(end, spoken.frames.to + 1));
    if (across) return across;
    const room = topOf(side, run, end) - top - 0.4;
    const strip = { x: lane.wordsX, width: lane.wordsWidth, top, room };
    const size = { most, least: geometry.leastTextMm, weight: 'regular' } as const;
    const set = setDownwards(text, strip, size, plan.metrics);
    if (!set.fits) plan.leftOver.add(spokenInMemo(side, spoken));
    return set;
  });
  return { marks: sets.flatMap(({ marks }) => marks), end: Math.max(0, ...sets.map(({ end }) => end)) };
}

/** A sound's text across its lane, a line a row; null where the lane is narrow, the rows too few, or the script goes down. */
function onRows(
  side: PageSide,
  run: BlockFrames,
  text: string,
  lane: SpeechLane,
  from: number,
  end: number,
): Told | null {
  const { plan, geometry } = side;
  if ([...text].some(isWide)) return null;
  const most = Math.max(geometry.leastTextMm, Math.min(geometry.rowMm * 0.72, 2.2 * geometry.scale));
  if (lane.wordsWidth < 4 * most) return null;
  const x = lane.wordsX + 0.4;
  const lines = wrap(plan.metrics, text, lane.wordsWidth - 0.4, most);
  if (lines.length > end - from) return null;
  const marks = lines.map((one, i) =>
    textAt(x, topOf(side, run, from + i) + geometry.rowMm / 2, one, { sizeMm: most, anchor: 'start' }),
  );
  return { marks, end: topOf(side, run, from + lines.length) - 0.6 };
}

function wordMarks(side: PageSide, run: BlockFrames, spoken: Spoken, whole: SpeechLane): Mark[] {
  const { solved, pronounce } = side.plan;
  const all = readStretches(spoken, solved.shot.fps, pronounce);
  const lane = all.some(({ tied }) => tied)
    ? { ...whole, wordsX: whole.wordsX + TICK_MM, wordsWidth: whole.wordsWidth - TICK_MM }
    : whole;
  const upright = all.some((stretch) => [...stretch.text].some(isWide));
  const set = upright
    ? all.map((stretch) => verticalStretch(side, run, stretch, lane))
    : levelStretches(side, run, all, lane);
  if (set.every((marks) => marks !== null)) return set.flat();
  side.plan.leftOver.add(spokenInMemo(side, spoken));
  const { leastTextMm: sizeMm, rowMm } = side.geometry;
  const size = { most: sizeMm, least: sizeMm };
  const pointers = memoPointers(side.plan.words);
  const fitting = pointers.map((text) => ({
    text,
    ...fitLine(side.plan.metrics, text, lane.wordsWidth, size),
  }));
  const { text, squeeze } = fitting.find(({ fits }) => fits) ?? { text: pointers.at(-1)!, squeeze: 1 };
  const y = topOf(side, run, Math.max(spoken.frames.from, run.first)) + rowMm / 2;
  return [textAt(lane.wordsX + lane.wordsWidth / 2, y, text, { sizeMm, squeeze })];
}
