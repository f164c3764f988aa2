import type { ChangeSentences } from '../change-sentences.js';
import { cameraIn } from './change-camera-en.js';
import { drawings } from './change-drawings-en.js';
import { levelsIn } from './change-levels-en.js';
import { words } from './change-speech-en.js';
import type { EnglishTerms } from './terms-en.js';

export const changesIn = (terms: EnglishTerms): ChangeSentences => ({
  ...levelsIn(terms),
  ...drawings,
  ...cameraIn(terms),
  ...words,
});
