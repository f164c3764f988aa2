/**
 * All words that are printed, a table a language. A word that a language does not have yet does not compile. Numbers, names and
 * times go in as parameters; what a word stands for is known elsewhere.
 */

import type { ChangeSentences } from './change-sentences.js';
import type { CameraPageWords, CutListWords, DocumentWords, RetakeWords } from './document-words.js';
import { english } from './en/english.js';
import { japanese } from './ja/japanese.js';
import type { LabelLanguage } from './labels.js';
import type { ProgressWords } from './progress-words.js';
import type { ChartWords, MoveWords, SheetWords } from './sheet-words.js';

export interface Words {
  readonly sheet: SheetWords;
  readonly moves: MoveWords;
  readonly charts: ChartWords;
  readonly cameraPages: CameraPageWords;
  readonly cutList: CutListWords;
  readonly progress: ProgressWords;
  readonly changes: ChangeSentences;
  readonly documents: DocumentWords;
  readonly retakes: RetakeWords;
}

/** A convention of forms: what a word of the trade is may depend on it. */
export type FormConvention = 'japan' | 'west';

const WORDS: { readonly [L in LabelLanguage]: { readonly [C in FormConvention]: Words } } = {
  en: english,
  ja: japanese,
};

/** The words of a form: its language and its convention are independent choices. */
export const wordsOf = (form: {
  readonly labels: LabelLanguage;
  readonly convention: FormConvention;
}): Words => WORDS[form.labels][form.convention];
