/** A comparison in numbers, for programs. grammar/comparing.md describes it. */

import { sentence, telling } from '../compare/sentence.js';
import { LABELS } from '../words/labels.js';
import type { Comparison, Tell } from './pairing.js';
import type { Side } from './versions.js';

/** Raised when something that is there changes its meaning or goes; additions leave it. */
const COMPARISON_VERSION = 1;

/** One cut, as text that goes into the whole. */
export const cutJson: Tell<string> = (was, is, changes) => {
  const tellings = LABELS.map((language) => telling(is, language));
  const { cut, title, fps, time } = is.shot;
  return JSON.stringify(
    {
      cut,
      title,
      fps,
      time: { old: was.shot.time, now: time },
      changes: changes.map((change) => ({
        ...change,
        ...Object.fromEntries(tellings.map((t) => [t.language, sentence(change, t)])),
      })),
    },
    null,
    2,
  );
};

export function wholeJson({ differing, onlyOld, onlyNow }: Comparison<string>, old: Side, now: Side): string {
  const head = JSON.stringify({ version: COMPARISON_VERSION, old: old.label, now: now.label }, null, 2);
  const tail = JSON.stringify({ onlyOld, onlyNow }, null, 2);
  const cuts = differing.map((text) => `\n${text.replace(/^/gm, '    ')}`).join(',');
  return `${head.slice(0, -2)},\n  "cuts": [${cuts}${cuts ? '\n  ' : ''}],\n${tail.slice(2)}\n`;
}
