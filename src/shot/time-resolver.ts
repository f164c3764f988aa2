/** Times of the text → frames. */

import { diagnose, guessFix, type Report, type Span } from '../language/diagnostic.js';
import type { Guess } from '../language/suggest.js';
import type { Length, Position, Range, StatementOf, TypedTime } from '../language/tree.js';
import { FRAMES_A_FOOT } from './settings.js';

/** Larger numbers are all the same here: far beyond any sheet, and still exact. */
const FAR = 1e12;

export interface FrameRange {
  readonly from: number;
  readonly to: number;
  /** Whether an end was typed; otherwise `to` is the end of the sheet. */
  readonly closed: boolean;
}

/** Each function reports what is wrong and then gives null. */
export interface Clock {
  /** Frames that something lasts, >= 0. A mark is a place, no length. */
  length(time: Length): number | null;
  /** A frame, >= 1; it may lie beyond the end of the sheet. */
  position(time: Position): number | null;
  range(range: Range): FrameRange | null;
  /** The marks that some position has asked for. */
  readonly asked: ReadonlySet<string>;
}

export interface ClockParts {
  readonly fps: number;
  readonly marks: ReadonlyMap<string, StatementOf<'mark'>>;
  /** Names that unreadable statements began: nothing is said about them. */
  readonly broken: ReadonlySet<string>;
  /** Rows of the sheet, or null while the time is not known. */
  readonly rows: () => number | null;
  readonly guess: Guess;
  readonly report: Report;
}

export function makeClock({ fps, marks, broken, rows, guess: guessName, report }: ClockParts): Clock {
  const asked = new Set<string>();
  const known = new Map<string, number | null>();
  const circles = new Set<string>();

  function counted(time: Exclude<TypedTime, { form: 'mark' }>): number {
    if (time.form === 'frames') return Math.min(time.frames, FAR);
    if (time.form === 'seconds') {
      const frames = Math.min(time.seconds * fps + time.frames, FAR);
      // `0+30` is a way to write 30 frames, and the row `1+24` the last one of its second.
      if (time.seconds > 0 && time.frames > fps && frames < FAR) {
        const meant = `${Math.floor(frames / fps)}+${frames % fps}`;
        const parameters = { seconds: time.seconds, frames: time.frames, fps, meant };
        report(diagnose('frames-past-second', time.span, parameters, guessFix(meant, time.span)));
      }
      return frames;
    }
    return Math.min(time.feet * FRAMES_A_FOOT + time.frames, FAR);
  }

  /** The frame of a mark; follows marks that hang on marks without recursion, so that a chain may be of any length. */
  function markFrame(name: string, span: Span): number | null {
    const chain: { name: string; offset: number }[] = [];
    const seen = new Set<string>();
    let at = name;
    let place = span;
    let frame: number | null = null;
    for (;;) {
      asked.add(at);
      const found = known.get(at);
      if (found !== undefined) {
        frame = found;
        break;
      }
      if (seen.has(at)) {
        const names = [...seen];
        const circle = names.slice(names.indexOf(at));
        if (!circle.some((each) => circles.has(each))) {
          report(diagnose('mark-circle', place, { marks: [...circle, at] }));
        }
        for (const each of circle) circles.add(each);
        break;
      }
      const mark = marks.get(at);
      if (!mark) {
        if (!broken.has(at)) unknownMark(at, place);
        break;
      }
      seen.add(at);
      const position = mark.position;
      if (position.form !== 'mark') {
        const value = placed(counted(position), position);
        known.set(at, value);
        frame = value;
        break;
      }
      chain.push({ name: at, offset: position.offset });
      at = position.name;
      place = position.span;
    }
    for (const link of chain.reverse()) {
      frame = frame === null ? null : placed(frame + link.offset, marks.get(link.name)!.position);
      known.set(link.name, frame);
    }
    return frame;
  }

  function unknownMark(name: string, span: Span): void {
    const guess = guessName(name, marks.keys());
    report(
      diagnose(
        'unknown-mark',
        span,
        { name, guess: guess ?? null },
        guessFix(guess, { ...span, end: span.start + name.length }),
      ),
    );
  }

  function placed(frame: number, time: Position): number | null {
    if (frame >= 1) return Math.min(frame, FAR);
    if (time.form === 'mark') {
      report(diagnose('position-zero', time.span, { variant: 'before', frames: 1 - frame }));
    } else {
      report(
        diagnose(
          'position-zero',
          time.span,
          { variant: 'zero' },
          {
            fix: { action: 'write-frame-1', edits: [{ span: time.span, text: '1' }] },
          },
        ),
      );
    }
    return null;
  }

  function position(time: Position): number | null {
    if (time.form !== 'mark') return placed(counted(time), time);
    const frame = markFrame(time.name, time.span);
    return frame === null ? null : placed(frame + time.offset, time);
  }

  return {
    asked,
    position,
    length(time) {
      if (time.form !== 'mark') return counted(time);
      report(diagnose('length-mark', time.span, { mark: time.name }));
      return null;
    },
    range(range) {
      const from = position(range.from);
      if (range.from.form === 'seconds' && range.from.seconds > 0 && range.from.frames === 0) {
        report(
          diagnose(
            'range-starts-late',
            range.from.span,
            { seconds: range.from.seconds },
            {
              fix: {
                action: 'start-on',
                time: `${range.from.seconds}+1`,
                edits: [{ span: range.from.span, text: `${range.from.seconds}+1` }],
              },
            },
          ),
        );
      }
      const end = range.to === null ? (rows() ?? FAR) : position(range.to);
      if (from === null || end === null) return null;
      if (range.to === null) return { from, to: Math.max(from, end), closed: false };
      if (end >= from) return { from, to: end, closed: true };
      report(diagnose('range-backwards', range.span, { from, to: end }));
      return null;
    },
  };
}
