/** What `listen` prints of what it has heard. */

import type { Compiled } from '../episode/compile-cut.js';
import type { Job } from '../episode/find-cuts.js';
import type { Heard, HeardLine } from '../episode/listen-to-cut.js';
import type { SourceEdit } from '../language/diagnostic.js';
import { lines, placeAt } from '../language/source.js';
import { withEdits } from '../language/statement-reader.js';
import type { Position } from '../language/tree.js';
import { FRAMES_A_FOOT } from '../shot/settings.js';
import type { Shot } from '../shot/shot.js';
import { rowName } from '../shot/time-notation.js';

/** Rows are typed as the position beside them is: in frames, in feet, else in seconds and frames. */
export function rowText({ fps }: Shot): (row: number, like: Position) => string {
  return (row, like) => {
    if (like.form === 'frames') return String(row);
    return rowName(row, like.form === 'feet' ? FRAMES_A_FOOT : fps, like.form === 'feet');
  };
}

/** The voice statement of a line as it would be. */
export function statementText(text: string, { voice }: HeardLine, edits: readonly SourceEdit[]): string {
  const { start, end } = voice.span;
  const own = edits.filter(({ span }) => span.start >= start && span.end <= end);
  const after = withEdits(
    text.slice(0, end),
    own.map(({ span, text }) => ({ ...span, text })),
  );
  return after.slice(start);
}

/** A voice statement for each stretch in which somebody speaks, to be filled in. */
export function speechLines({ solved }: Compiled, { speech }: Heard): string[] {
  const { fps } = solved!.shot;
  return speech.map(({ from, to }) => `voice "" ${rowName(from, fps, false)}..${rowName(to, fps, false)} ""`);
}

/** Rows count from 1; `beats` are syllables, in Japanese morae. */
export function heardJson({ solved, sources, file, tree }: Compiled, job: Job, heard: Heard): object {
  const source = lines(sources.get(file) ?? '');
  return {
    cut: solved!.shot.cut,
    file: job.name,
    fps: solved!.shot.fps,
    lines: heard.lines.map(({ voice, text, rows, words, likeness, doubtful, unread }) => ({
      line: placeAt(source, voice.span.start).line,
      speaker: voice.speaker.text,
      text,
      from: rows?.from ?? null,
      to: rows?.to ?? null,
      likeness: Math.round(likeness * 1000) / 1000,
      doubtful,
      words: words.map(({ start, end, row, beats }) => ({ text: text.slice(start, end), row, beats })),
      unread: unread.map((one) => one.text),
    })),
    ...(tree && heard.speech.length > 0 ? { speech: heard.speech } : {}),
  };
}
