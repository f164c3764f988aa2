/** A comparison in numbers, for programs. grammar/comparing.md describes it. */

import { sentence, type Telling, telling } from '../compare/words.js';
import type { Comparison } from './pairing.js';
import type { Side } from './versions.js';

/** Raised when something that is there changes its meaning or goes; additions leave it. */
const COMPARISON_VERSION = 1;

export function jsonOf({ differing, onlyOld, onlyNow }: Comparison, old: Side, now: Side) {
  return {
    version: COMPARISON_VERSION,
    old: old.label,
    now: now.label,
    cuts: differing.map(({ was, is, changes }) => {
      const [en, ja] = (['en', 'ja'] as const).map((language) => telling(is, language)) as [Telling, Telling];
      return {
        cut: is.shot.cut,
        title: is.shot.title,
        fps: is.shot.fps,
        time: { old: was.time, now: is.shot.time },
        changes: changes.map((change) => ({ ...change, en: sentence(change, en), ja: sentence(change, ja) })),
      };
    }),
    onlyOld,
    onlyNow,
  };
}
