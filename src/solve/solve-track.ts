/** The recording on the rows of its sheet, and what does not go with what is written there. Pure. */

import { diagnose, type Report } from '../language/diagnostic.js';
import type { Frames, Shot, Spoken, Track } from '../shot/shot.js';
import { POINTS_A_ROW, type TrackSound } from '../sound/track-sound.js';
import type { SolvedTrack } from './solved-shot.js';

export function solveTrack(shot: Shot, sound: TrackSound | null, report: Report): SolvedTrack | null {
  const { track } = shot;
  if (!track) return null;
  if (!sound) return { track, sound, heard: null };
  const heard = heardRows(shot, track, sound);
  checkLength(shot, track, sound, report);
  if (heard) checkSpeech(shot, track, sound, heard, report);
  return { track, sound, heard };
}

/** Rows from the first heard sample to the last of the recording; parts of a row count. */
function heardRows(
  { fps, length }: Shot,
  { frame, startSeconds }: Track,
  { seconds }: TrackSound,
): Frames | null {
  const last = frame - 1 + Math.ceil((seconds - startSeconds) * fps - SLACK);
  return last < frame ? null : { from: frame, to: Math.min(length, last) };
}

/** Part of a frame by which a recording may be off. */
const SLACK = 0.01;

/** A recording that is cut to length is at most half a frame off; a whole one is somebody's fault. */
function checkLength(
  { fps, length }: Shot,
  { frame, startSeconds, fileSpan, startSpan }: Track,
  { seconds }: TrackSound,
  report: Report,
): void {
  if (seconds <= startSeconds) {
    report(diagnose('track-start', startSpan ?? fileSpan, { seconds, startSeconds }));
    return;
  }
  const end = frame - 1 + (seconds - startSeconds) * fps;
  const over = Math.round(end - length);
  if (over <= -1)
    report(diagnose('track-length', fileSpan, { variant: 'short', rows: -over, last: length + over }));
  // A reel is longer than what a cut takes from it.
  else if (over >= 1 && !startSpan)
    report(diagnose('track-length', fileSpan, { variant: 'long', rows: over }));
}

/** Half a second: no pause in a sentence is longer, and no breath before it. */
const LONG_SECONDS = 0.5;
/** A gap in what is heard that is no silence yet: a stop before its burst. */
const GAP_SECONDS = 0.2;
/** Recordings that reach no more than this, of full scale, are empty: -50 dB. */
const SILENT = 0.00316;
/** Nothing that is 28 dB below the loud rows is heard, and nothing that is not 8 dB above the quiet ones. */
const BELOW_LOUD = 0.0398;
const ABOVE_QUIET = 2.51;

function checkSpeech(shot: Shot, track: Track, { levels }: TrackSound, heard: Frames, report: Report): void {
  const rows = rowLevels(levels).slice(heard.from - 1, heard.to);
  const limit = silenceLimit(rows);
  if (limit === null) {
    report(diagnose('track-silent', track.fileSpan, {}));
    return;
  }
  const long = Math.round(shot.fps * LONG_SECONDS);
  const loud = rows.map((level) => level > limit);
  closeGaps(loud, Math.round(shot.fps * GAP_SECONDS));
  const isLoud = (row: number): boolean => loud[row - heard.from] ?? false;
  for (const spoken of shot.spoken) {
    if (spoken.kind !== 'voice') continue;
    const { from, to } = spoken.frames;
    const silent = stretches(from, to, (row) => !isLoud(row)).filter((one) => one.to - one.from + 1 >= long);
    if (silent[0])
      report(diagnose('voice-unheard', spoken.span, { ...silent[0], whole: isWhole(silent[0], spoken) }));
  }
  const written = (row: number): boolean =>
    shot.spoken.some(({ frames }) => row >= frames.from - NEAR_ROWS && row <= frames.to + NEAR_ROWS);
  const unwritten = stretches(heard.from, heard.to, (row) => isLoud(row) && !written(row)).filter(
    (one) => one.to - one.from + 1 >= long,
  );
  if (unwritten.length > 0) report(diagnose('sound-unwritten', track.fileSpan, { stretches: unwritten }));
}

/** A line that is written as near as this to where it is heard is written well enough. */
const NEAR_ROWS = 3;

const isWhole = (silent: Frames, { frames }: Spoken): boolean =>
  silent.from === frames.from && silent.to === frames.to;

/** The loudest quarter of each row. */
function rowLevels(levels: Float32Array): number[] {
  return Array.from({ length: levels.length / POINTS_A_ROW }, (_, row) =>
    Math.max(...levels.subarray(row * POINTS_A_ROW, (row + 1) * POINTS_A_ROW)),
  );
}

/**
 * What is louder than this is heard: clearly over the quiet rows, and not far below the loud ones. Null: all is silent.
 * Common practice; the decibels are ours.
 */
function silenceLimit(rows: readonly number[]): number | null {
  const sorted = [...rows].sort((a, b) => a - b);
  const loud = sorted[Math.floor((sorted.length - 1) * 0.95)] ?? 0;
  const quiet = sorted[Math.floor((sorted.length - 1) * 0.1)] ?? 0;
  const loudest = sorted.at(-1) ?? 0;
  if (loudest < SILENT) return null;
  const reference = Math.max(loud, loudest / 4);
  return Math.max(SILENT / 3, Math.min(Math.max(reference * BELOW_LOUD, quiet * ABOVE_QUIET), reference / 3));
}

/** Makes gaps shorter than `most` between loud rows loud. */
function closeGaps(loud: boolean[], most: number): void {
  let last = -1;
  for (let i = 0; i < loud.length; i++) {
    if (!loud[i]) continue;
    if (last >= 0 && i - last - 1 <= most) loud.fill(true, last, i);
    last = i;
  }
}

function stretches(from: number, to: number, holds: (row: number) => boolean): Frames[] {
  const found: Frames[] = [];
  let start: number | null = null;
  for (let row = from; row <= to + 1; row++) {
    const in_ = row <= to && holds(row);
    if (in_) start ??= row;
    else if (start !== null) {
      found.push({ from: start, to: row - 1 });
      start = null;
    }
  }
  return found;
}
