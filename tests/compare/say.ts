/** Two texts → what is said of them. */

import { sentence, telling } from '../../src/compare/change-wording.js';
import { type Change, compare } from '../../src/compare/compare-cuts.js';
import type { SolvedLevel } from '../../src/solve/solved-shot.js';
import type { LabelLanguage } from '../../src/words/labels.js';
import { compileText, said } from '../compile.js';

export function changes(old: string, now: string): readonly Change[] {
  return compare(solved(old), solved(now));
}

/** The sentences, one a change. */
export function note(old: string, now: string, language: LabelLanguage = 'en'): string[] {
  const t = telling(solved(now), language);
  return changes(old, now).map((change) => sentence(change, t));
}

export function solved(text: string) {
  const compiled = compileText(text);
  const errors = compiled.diagnostics.filter(({ severity }) => severity === 'error');
  if (!compiled.solved || errors.length > 0) throw new Error(`${said(errors).join('\n')}\n${text}`);
  return compiled.solved;
}

/** Level A of a cut that has this timeline. */
export function levelOf(timeline: string, time = '2+0'): SolvedLevel {
  return solved(`cut 1\ntime ${time}\nA: ${timeline}\n`).levels.find(({ name }) => name === 'A')!;
}
