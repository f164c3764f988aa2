/** Lines that nobody could speak in the rows that they have. */

import { diagnose, type SourceEdit } from '../../language/diagnostic.js';
import type { Position, StatementOf } from '../../language/tree.js';
import type { Dictionary } from '../../sound/pronunciation.js';
import type { Binding } from '../binding.js';
import { FASTEST, lineLength } from '../line-length.js';
import { FRAMES_A_FOOT } from '../settings.js';
import type { Spoken } from '../shot.js';
import { feetAndFrames, rowName, secondsAndFrames } from '../time-notation.js';

/** Of a line with words tied to rows nothing is said: it was timed to a recording. */
export function checkLines(
  statements: readonly StatementOf<'voice'>[],
  { draft, clock, rows, report }: Binding,
  dictionary: Dictionary | undefined,
): void {
  const lines = new Map(draft.spoken.map((line) => [line.span.start, line]));
  for (const { span, range, words } of statements) {
    const line = lines.get(span.start);
    const end = range.to;
    if (!line || !end || words.some(({ at }) => at !== null)) continue;
    const last = clock.position(end);
    if (last === null) continue;
    const { from } = line.frames;
    const frames = last - from + 1;
    const length = lineLength(line, draft.fps);
    if (!length || length.leastFrames <= frames) continue;
    // Spelling may count too many syllables: only then a dictionary is asked, which takes time to load.
    const exact = dictionary && length.unit === 'syllable' ? lineLength(line, draft.fps, dictionary) : length;
    if (!exact || exact.leastFrames <= frames) continue;
    const room = roomBehind(line, draft.spoken, rows ?? last);
    const until = Math.min(room, from + exact.wantedFrames - 1);
    const fits = until >= from + exact.leastFrames - 1;
    const written = fits ? positionText(end, last, until, draft.fps) : null;
    // In feet where the line's end is typed in feet.
    const lengthAsTyped = (length: number): string =>
      end.form === 'feet' ? feetAndFrames(length) : secondsAndFrames(length, draft.fps);
    const edits: readonly SourceEdit[] = [{ span: end.span, text: written ?? '' }];
    report(
      diagnose(
        'line-too-fast',
        range.span,
        {
          unit: exact.unit,
          count: exact.count,
          time: lengthAsTyped(frames),
          rate: (exact.count * draft.fps) / frames,
          most: FASTEST[exact.unit],
          wanted: lengthAsTyped(exact.wantedFrames),
        },
        written === null ? {} : { fix: { action: 'end-on', time: written, edits } },
      ),
    );
  }
}

/** The last row before another line begins, or before the sheet ends. */
function roomBehind(line: Spoken, spoken: readonly Spoken[], rows: number): number {
  const next = spoken
    .filter(({ kind, frames }) => kind === 'voice' && frames.from > line.frames.from)
    .map(({ frames }) => frames.from - 1);
  return Math.min(rows, ...next);
}

/** `until` as the line's end is written now; `last`: the row that it names. */
function positionText(end: Position, last: number, until: number, fps: number): string {
  if (end.form === 'seconds') return rowName(until, fps, false);
  if (end.form === 'feet') return rowName(until, FRAMES_A_FOOT, true);
  if (end.form === 'frames') return String(until);
  const offset = end.offset + until - last;
  return offset === 0 ? end.name : `${end.name}${offset > 0 ? '+' : '-'}${Math.abs(offset)}`;
}
