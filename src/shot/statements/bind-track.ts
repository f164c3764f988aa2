/** The cut's recording: which file, from which row on, from where in it. */

import { diagnose } from '../../language/diagnostic.js';
import type { RecordingTime } from '../../language/tree.js';
import type { Binders } from '../binding.js';
import { single } from './bind-sheet.js';

export const trackBinders: Pick<Binders, 'track'> = {
  track: {
    once: single,
    bind({ path, at, from, span }, { draft, clock, rows, report }) {
      const frame = at ? clock.position(at) : 1;
      if (frame === null) return;
      if (rows !== null && frame > rows) {
        report(diagnose('track-past-end', at!.span, { frame, rows }));
        return;
      }
      if (from?.form === 'timecode' && (from.minutes > 59 || from.seconds > 59 || from.frames >= draft.fps)) {
        report(diagnose('timecode-range', from.span, { fps: draft.fps }));
        return;
      }
      draft.track = {
        file: path.text,
        frame,
        startSeconds: from ? secondsOf(from, draft.fps) : 0,
        span,
        fileSpan: path.span,
        startSpan: from?.span ?? null,
      };
    },
  },
};

/** Timecode that drops no numbers, at the speed of the cut. */
function secondsOf(time: RecordingTime, fps: number): number {
  if (time.form === 'seconds') return time.seconds;
  return time.hours * 3600 + time.minutes * 60 + time.seconds + time.frames / fps;
}
