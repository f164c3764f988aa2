/** Mouths: a level whose timeline is made from what a speaker says. */

import { diagnose } from '../../language/diagnostic.js';
import { quote } from '../../language/source.js';
import type { StatementOf } from '../../language/tree.js';
import { MOUTH_TITLES } from '../../words/labels.js';
import type { Binders, Binding } from '../binding.js';
import { levelOf } from '../binding.js';
import { mouthTimeline } from '../mouth/mouth-timeline.js';
import type { MouthShape, Spoken, Vowel } from '../shot.js';
import { bindOn } from '../timeline-items.js';
import { insideStack } from './bind-levels.js';

const THREE: readonly MouthShape[] = ['closed', 'half', 'open'];
const VOWELS: Readonly<Record<string, Vowel>> = {
  a: 'a',
  i: 'i',
  u: 'u',
  e: 'e',
  o: 'o',
  あ: 'a',
  い: 'i',
  う: 'u',
  え: 'e',
  お: 'o',
  ア: 'a',
  イ: 'i',
  ウ: 'u',
  エ: 'e',
  オ: 'o',
};
const FIVE: readonly Vowel[] = ['a', 'i', 'u', 'e', 'o'];

/** Frames that a mouth may lead its sound by; more is a slip. */
const LONGEST_LEAD = 12;

export const mouthBinders: Pick<Binders, 'mouth'> = {
  mouth: {
    once: ({ level }) => ({
      code: 'statement-twice',
      parameters: { statement: 'mouth', name: level.text },
    }),
    declare: (statement, draft) => void levelOf(draft, statement.level),
    bind(statement, binding) {
      const { draft, report, rows, pronounce } = binding;
      insideStack(statement.level, binding);
      const level = levelOf(draft, statement.level);
      const drawings = shapesOf(statement, binding);
      const on = statement.on ? bindOn(statement.on.value, statement.on.span, report) : draft.on;
      const lead = leadOf(statement, binding);
      const lines = linesOf(statement, binding);
      if (level.timeline) {
        report(
          diagnose(
            'mouth-and-timeline',
            statement.span,
            { level: level.name },
            {
              notes: [{ note: 'other-one-here', span: level.timeline.span }],
              fix: { action: 'take-this-out', edits: [{ span: statement.span, text: '' }] },
            },
          ),
        );
        return;
      }
      if (!drawings || on === null || lead === null || rows === null) return;
      const { span, flaps, speaker } = statement;
      const made = mouthTimeline({ drawings, on, lead, flaps: flaps !== null, span }, lines, {
        cut: draft.cut?.number ?? '',
        fps: draft.fps,
        rows,
        pronounce,
      });
      if (!flaps)
        for (const line of made.lines)
          if (!line.read) report(diagnose('mouth-unread', line.span, { level: level.name }));
      level.title = MOUTH_TITLES[binding.settings.labels](speaker.text);
      level.timeline = made.timeline;
      level.mouth = { speaker: speaker.text, drawings, on, lead, lines: made.lines, span };
    },
  },
};

/** The key of each shape; null after a report. */
function shapesOf(
  { drawings, level, span }: StatementOf<'mouth'>,
  { report, guess }: Binding,
): ReadonlyMap<MouthShape, string> | null {
  const [closed, ...others] = drawings;
  const place = { ...span, start: closed!.span.start, end: drawings.at(-1)!.span.end };
  if (drawings.every(({ vowel }) => vowel === null)) {
    if (drawings.length === 3) return new Map(THREE.map((shape, i) => [shape, drawings[i]!.key.text]));
    report(
      diagnose('mouth-drawings', place, { variant: 'three', level: level.text, count: drawings.length }),
    );
    return null;
  }
  const shapes = new Map<MouthShape, string>([['closed', closed!.key.text]]);
  let whole = true;
  const fault = (diagnostic: Parameters<typeof report>[0]) => {
    whole = false;
    report(diagnostic);
  };
  for (const { key, vowel, span: drawing } of others) {
    const shape = vowel && VOWELS[vowel.text];
    if (!vowel)
      fault(diagnose('mouth-drawings', drawing, { variant: 'no-vowel', level: level.text, key: key.text }));
    else if (!shape) {
      const meant = guess(vowel.text, FIVE) ?? null;
      fault(
        diagnose(
          'mouth-vowel',
          vowel.span,
          { name: vowel.text, guess: meant },
          meant
            ? { fix: { action: 'write', written: meant, edits: [{ span: vowel.span, text: meant }] } }
            : {},
        ),
      );
    } else if (shapes.has(shape))
      fault(diagnose('mouth-drawings', drawing, { variant: 'twice', level: level.text, vowel: shape }));
    else shapes.set(shape, key.text);
  }
  const missing = FIVE.filter((vowel) => !shapes.has(vowel));
  if (whole && missing.length > 0)
    fault(diagnose('mouth-drawings', place, { variant: 'missing', level: level.text, vowels: missing }));
  return whole ? shapes : null;
}

function leadOf({ lead }: StatementOf<'mouth'>, { report }: Binding): number | null {
  if (!lead) return 1;
  if (lead.value <= LONGEST_LEAD) return lead.value;
  report(diagnose('lead-range', lead.span, { most: LONGEST_LEAD }));
  return null;
}

/** What the speaker says in the picture. One who says nothing is reported. */
function linesOf({ speaker }: StatementOf<'mouth'>, { draft, unread, guess, report }: Binding): Spoken[] {
  const voices = draft.spoken.filter(({ kind }) => kind === 'voice');
  const own = voices.filter((line) => line.speaker === speaker.text);
  const seen = own.filter(({ manner }) => manner === 'on');
  // A line that could not be read may be the one.
  if (seen.length > 0 || unread.has('voice')) return seen;
  const { text, span } = speaker;
  if (own.length > 0) {
    report(diagnose('mouth-silent', span, { variant: 'unseen', speaker: text }));
    return [];
  }
  const speakers = [...new Set(voices.map((line) => line.speaker))];
  const meant = guess(text, speakers) ?? null;
  report(
    diagnose(
      'mouth-silent',
      span,
      { variant: 'no-lines', speaker: text, guess: meant, speakers },
      meant ? { fix: { action: 'write', written: meant, edits: [{ span, text: quote(meant) }] } } : {},
    ),
  );
  return [];
}
