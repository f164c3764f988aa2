/** The retake note: a heading and a line a change. */

import { type SentenceContext, sentence, telling } from '../compare/change-wording.js';
import type { Change } from '../compare/compare-cuts.js';
import { defaults } from '../shot/settings.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import { LABELS, type LabelLanguage } from '../words/labels.js';
import { wordsOf } from '../words/words.js';
import type { Comparison, ComparisonSide, Tell } from './comparison.js';

/** A cut's heading and a line a change. */
export function retakeNote(
  was: SolvedShot,
  is: SolvedShot,
  changes: readonly Change[],
  language: LabelLanguage,
): string {
  const t = telling(is, language);
  // What the heading says is not said again.
  const lines = changes.filter(({ kind }) => kind !== 'time').map((change) => `  ${sentence(change, t)}\n`);
  return `${heading(was.shot, is, t)}\n${lines.join('')}`;
}

function heading(was: SolvedShot['shot'], { shot }: SolvedShot, t: SentenceContext): string {
  const name = t.words.documents.noteCut(shot.cut);
  if (was.time === shot.time) return name;
  return `${name}  ${t.length(was.time)} → ${t.length(shot.time)}`;
}

/** `only in HEAD~1: cuts 1-7, 9`. */
export function onlyLine(
  { label, present, found }: ComparisonSide,
  keys: readonly string[],
  language: LabelLanguage,
): string {
  if (keys.length === 0) return '';
  const { convention } = found.jobs[0]?.episode.settings ?? defaults;
  return `${wordsOf({ labels: language, convention }).documents.onlyIn(present ? null : label, ranges(keys), keys.length)}\n`;
}

/** Numbers that follow each other are joined. */
function ranges(keys: readonly string[]): string {
  const runs: { first: string; last: string }[] = [];
  for (const key of keys) {
    const run = runs.at(-1);
    if (run && /^\d+$/.test(key) && Number(run.last) + 1 === Number(key)) run.last = key;
    else runs.push({ first: key, last: key });
  }
  return runs.map(({ first, last }) => (first === last ? first : `${first}-${last}`)).join(', ');
}

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

export function wholeJson(
  { differing, onlyOld, onlyNow }: Comparison<string>,
  old: ComparisonSide,
  now: ComparisonSide,
): string {
  const head = JSON.stringify({ version: COMPARISON_VERSION, old: old.label, now: now.label }, null, 2);
  const tail = JSON.stringify({ onlyOld, onlyNow }, null, 2);
  const cuts = differing.map((text) => `\n${text.replace(/^/gm, '    ')}`).join(',');
  return `${head.slice(0, -2)},\n  "cuts": [${cuts}${cuts ? '\n  ' : ''}],\n${tail.slice(2)}\n`;
}
