/** The retake note: a heading and a line a change. */

import type { Change } from '../compare/compare.js';
import { sentence, type Telling, telling } from '../compare/sentence.js';
import type { SolvedShot } from '../solve/solved.js';
import type { LabelLanguage } from '../words/labels.js';
import { WORDS } from '../words/words.js';
import type { Side } from './versions.js';

/** A cut's heading and a line a change. */
export function noteOf(
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

function heading(was: SolvedShot['shot'], { shot }: SolvedShot, t: Telling): string {
  const name = WORDS[t.language].documents.noteCut(shot.cut);
  if (was.time === shot.time) return name;
  return `${name}  ${t.length(was.time)} → ${t.length(shot.time)}`;
}

/** `only in HEAD~1: cuts 1-7, 9`. */
export function onlyLine({ label, present }: Side, keys: readonly string[], language: LabelLanguage): string {
  if (keys.length === 0) return '';
  return `${WORDS[language].documents.onlyIn(present ? null : label, ranges(keys), keys.length)}\n`;
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
