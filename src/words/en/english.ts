import type { FormConvention, Words } from '../words.js';
import { cameraPages } from './camera-pages-en.js';
import { changesIn } from './changes-en.js';
import { charts } from './charts-en.js';
import { cutListIn } from './cut-list-en.js';
import { documentsIn } from './documents-en.js';
import { movesIn } from './moves-en.js';
import { sheetIn } from './sheet-en.js';
import { type EnglishTerms, JAPAN_TERMS, WEST_TERMS } from './terms-en.js';

const englishIn = (terms: EnglishTerms): Words => ({
  sheet: sheetIn(terms),
  moves: movesIn(terms),
  charts,
  cameraPages,
  cutList: cutListIn(terms),
  changes: changesIn(terms),
  documents: documentsIn(terms),
});

export const english: { readonly [C in FormConvention]: Words } = {
  japan: englishIn(JAPAN_TERMS),
  west: englishIn(WEST_TERMS),
};
