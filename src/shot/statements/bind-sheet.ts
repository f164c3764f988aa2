/** What a cut is: number, time, speed, numbering, names of moments, and what stands in the header. */

import { acceptableCodes, type Code, catalogue } from '../../language/catalogue/index.js';
import { diagnose, guessFix, type Report, type Span } from '../../language/diagnostic.js';
import { RETIRED_CODES } from '../../language/retired-words.js';
import { withoutRuby } from '../../language/ruby.js';
import { nearest } from '../../language/suggest.js';
import type { StatementOf } from '../../language/tree.js';
import type { Binder, Binders, Binding, Once } from '../binding.js';
import { LONGEST_CUT_SECONDS } from '../settings.js';
import type { Spoken, SpokenPart } from '../shot.js';
import { secondsAndFrames } from '../time-notation.js';
import type { FrameRange } from '../time-resolver.js';
import { bindOn } from '../timeline-items.js';

/** For statements that a cut has once. */
export function single(statement: { readonly kind: string }): Once {
  return { code: 'statement-twice', parameters: { statement: statement.kind, name: null } };
}

/** Frames a second of film, television and everything between; beyond that it is a slip. */
const FASTEST = 120;

function outOfRange(span: Span, report: Report): void {
  report(diagnose('fps-range', span, { most: FASTEST }));
}

export const sheetBinders: Pick<
  Binders,
  'cut' | 'time' | 'fps' | 'on' | 'numbering' | 'mark' | 'scene' | 'take' | 'artist' | 'use' | 'accept'
> = {
  cut: {
    once: single,
    declare(statement, draft) {
      draft.cut = { number: statement.number.text, title: statement.title?.text ?? '', span: statement.span };
    },
  },
  fps: {
    once: single,
    declare(statement, draft, report) {
      const { value, span } = statement.value;
      if (Number.isInteger(value) && value >= 1 && value <= FASTEST) draft.fps = value;
      else outOfRange(span, report);
    },
  },
  on: {
    once: single,
    declare(statement, draft, report) {
      draft.on = bindOn(statement.value.value, statement.value.span, report) ?? draft.on;
    },
  },
  numbering: {
    once: single,
    declare(statement, draft, report) {
      const { text, span } = statement.value;
      if (text === 'sequence' || text === 'frame') {
        draft.numbering = text;
        return;
      }
      const guess = nearest(text, ['sequence', 'frame']);
      report(diagnose('unknown-numbering', span, { name: text }, guessFix(guess, span)));
    },
  },
  mark: {
    once: ({ name }) => ({ code: 'name-twice', parameters: { of: 'mark', name: name.text } }),
    declare: (statement, draft) => void draft.marks.set(statement.name.text, statement),
    // Resolved for its messages, also where nothing stands at it.
    bind: ({ name }, { clock }) =>
      void clock.position({ kind: 'position', span: name.span, form: 'mark', name: name.text, offset: 0 }),
  },
  time: {
    once: single,
    settle(statement, draft, clock, report) {
      const { span } = statement.time;
      const frames = clock.length(statement.time);
      if (frames === null) return;
      if (frames === 0) {
        report(diagnose('time-zero', span, {}));
        return;
      }
      if (frames > LONGEST_CUT_SECONDS * draft.fps) {
        report(
          diagnose('time-too-long', span, {
            longest: secondsAndFrames(LONGEST_CUT_SECONDS * draft.fps, draft.fps),
          }),
        );
        return;
      }
      if (statement.time.form === 'frames' && frames < draft.fps / 2) {
        const seconds = `${frames}+0`;
        report(diagnose('time-in-frames', span, { frames, seconds }, guessFix(seconds, span)));
      }
      draft.time = { frames, span: statement.span };
    },
  },
  scene: {
    once: single,
    declare: (statement, draft) => {
      draft.scene = statement.value.text;
    },
  },
  take: {
    once: single,
    declare: (statement, draft) => {
      draft.take = statement.value.text;
    },
  },
  artist: { declare: (statement, draft) => void draft.artists.push(statement.name.text) },
  // The file that it names has been found, read and handed over by whoever called.
  use: {},
  // What it silences is taken out by whoever has the messages of all stages together.
  accept: {
    once: ({ code }) => ({ code: 'statement-twice', parameters: { statement: 'accept', name: code.text } }),
    declare({ code: { text, span } }, _, report) {
      const written = RETIRED_CODES.get(text);
      if (written !== undefined)
        report(diagnose('word-renamed', span, { word: text, written }, guessFix(written, span)));
      else if (!Object.hasOwn(catalogue, text)) {
        const guess = nearest(text, acceptableCodes()) ?? null;
        report(diagnose('accept-unknown', span, { name: text, guess }, guessFix(guess, span)));
      } else if (catalogue[text as Code].severity === 'error')
        report(diagnose('accept-error', span, { accepted: text }));
    },
  },
};

// ---- dialogue, sound, music, notes, memos

type Heard = StatementOf<'voice'> | StatementOf<'sound' | 'music'>;

/** Words with the rows that they are tied to; a row that is wrong is reported and left out. */
function tied(statement: Heard, range: FrameRange, { clock, rows, report }: Binding): SpokenPart[] {
  let before = range.from - 1;
  return statement.words.map(({ text: reading, span, at }) => {
    const untied = { text: withoutRuby(reading), reading, span, frame: null };
    if (!at) return untied;
    const frame = clock.position(at);
    if (frame === null) return untied;
    if (frame < range.from || frame > range.to) {
      report(diagnose('words-outside', at.span, { frame, from: range.from, to: range.to }));
      return untied;
    }
    if (frame <= before) {
      report(diagnose('words-not-rising', at.span, { frame, before }));
      return untied;
    }
    before = frame;
    return { ...untied, frame: rows !== null && frame > rows ? null : frame };
  });
}

/** Past the end it is cut off there; what lies wholly behind the end is not on the sheet. */
function bindHeard(statement: Heard, binding: Binding): void {
  const { draft, clock, rows, report } = binding;
  const range = clock.range(statement.range);
  if (!range) return;
  const parts = tied(statement, range, binding);
  if (rows !== null && (range.to > rows || range.from > rows)) {
    report(
      diagnose('dialogue-past-end', statement.range.span, {
        heard: statement.kind,
        from: range.from,
        to: range.to,
        rows,
      }),
    );
    if (range.from > rows) return;
  }
  const spoken: Spoken = {
    kind: statement.kind,
    speaker: statement.kind === 'voice' ? statement.speaker.text : '',
    manner: statement.kind === 'voice' ? statement.manner : 'on',
    frames: { from: range.from, to: Math.min(range.to, rows ?? range.to) },
    open: statement.range.to === null,
    parts,
    span: statement.span,
  };
  draft.spoken.push(spoken);
}

const heard: Binder<Heard> = { bind: bindHeard };

export const wordBinders: Pick<Binders, 'voice' | 'sound' | 'music' | 'note' | 'memo' | 'same'> = {
  voice: heard,
  sound: heard,
  music: heard,
  note: {
    bind(statement, { draft, clock, rows, report }) {
      const frame = clock.position(statement.position);
      if (frame === null) return;
      if (rows !== null && frame > rows) {
        report(diagnose('note-past-end', statement.position.span, { frame, rows }));
        return;
      }
      draft.notes.push({ frame, text: statement.text.text, span: statement.span });
    },
  },
  memo: {
    declare: (statement, draft) => void draft.memos.push({ text: statement.text.text, span: statement.span }),
  },
  same: {
    once: ({ cut }) => ({ code: 'statement-twice', parameters: { statement: 'same', name: cut.text } }),
    bind({ cut, text }, { draft, report }) {
      if (cut.text === draft.cut?.number)
        report(diagnose('same-unknown', cut.span, { variant: 'itself', cut: cut.text }));
      else draft.lineUps.push({ cut: cut.text, text: text?.text ?? '', span: cut.span });
    },
  },
};
