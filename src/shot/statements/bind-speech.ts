/** Dialogue, sound, music, notes, memos. */

import { diagnose } from '../../language/diagnostic.js';
import type { StatementOf } from '../../language/tree.js';
import type { Binder, Binders, Binding } from '../binding.js';
import type { Spoken, SpokenPart } from '../shot.js';
import type { FrameRange } from '../time-resolver.js';

type Heard = StatementOf<'voice'> | StatementOf<'sound' | 'music'>;

/** Words with the rows that they are tied to; a row that is wrong is reported and left out. */
function tied(statement: Heard, range: FrameRange, { clock, rows, report }: Binding): SpokenPart[] {
  let before = range.from - 1;
  return statement.words.map(({ text, span, at }) => {
    if (!at) return { text, span, frame: null };
    const frame = clock.position(at);
    if (frame === null) return { text, span, frame: null };
    if (frame < range.from || frame > range.to) {
      report(diagnose('words-outside', at.span, { frame, from: range.from, to: range.to }));
      return { text, span, frame: null };
    }
    if (frame <= before) {
      report(diagnose('words-not-rising', at.span, { frame, before }));
      return { text, span, frame: null };
    }
    before = frame;
    return { text, span, frame: rows !== null && frame > rows ? null : frame };
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

export const wordBinders: Pick<Binders, 'voice' | 'sound' | 'music' | 'note' | 'memo'> = {
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
};
