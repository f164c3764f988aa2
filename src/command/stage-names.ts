/** What stages and states are called on a terminal: as typed in English, as on paper in other languages. */

import type { RateUnit } from '../count/stage-rates.js';
import type { StageState } from '../count/stage-states.js';
import type { UserLanguage } from '../language/user-language.js';
import { stageWord } from '../words/progress-words.js';
import { wordsOf } from '../words/words.js';

export interface StageNames {
  readonly stage: (stage: string) => string;
  readonly state: (state: StageState) => string;
  /** What a rate is paid for. */
  readonly unit: (unit: RateUnit) => string;
}

export function stageNames(language: UserLanguage): StageNames {
  if (language === 'en') return { stage: (one) => one, state: (one) => one, unit: (one) => one };
  const words = wordsOf({ labels: language, convention: 'japan' }).progress;
  return {
    stage: (stage) => stageWord(words, stage),
    state: (state) => words.states[state],
    unit: (unit) => words.units[unit],
  };
}
