import type { ChangeSentences } from '../change-sentences.js';
import type { FormConvention, Words } from '../words.js';
import { cameraIn } from './change-camera-en.js';
import { drawings, levelsIn, words } from './change-levels-en.js';
import {
  cameraPages,
  charts,
  cutListIn,
  documentsIn,
  type EnglishTerms,
  JAPAN_TERMS,
  movesIn,
  retakesIn,
  sheetIn,
  WEST_TERMS,
} from './forms-en.js';
import { progressIn } from './progress-en.js';

const changesIn = (terms: EnglishTerms): ChangeSentences => ({
  ...levelsIn(terms),
  ...drawings,
  ...cameraIn(terms),
  ...words,
});

const englishIn = (terms: EnglishTerms): Words => ({
  sheet: sheetIn(terms),
  moves: movesIn(terms),
  charts,
  cameraPages,
  cutList: cutListIn(terms),
  progress: progressIn(terms),
  changes: changesIn(terms),
  documents: documentsIn(terms),
  retakes: retakesIn(terms),
});

export const english: { readonly [C in FormConvention]: Words } = {
  japan: englishIn(JAPAN_TERMS),
  west: englishIn(WEST_TERMS),
};
