import type { ChangeSentences } from '../change-sentences.js';
import type { FormConvention, Words } from '../words.js';
import { camera } from './change-camera-ja.js';
import { drawings, levels, words } from './change-levels-ja.js';
import { cameraPages, charts, cutList, documents, moves, retakes, sheet } from './forms-ja.js';
import { progress } from './progress-ja.js';

const changes: ChangeSentences = { ...levels, ...drawings, ...camera, ...words };

const onJapanForms: Words = {
  ...{ sheet, moves, charts, cameraPages, cutList, progress },
  ...{ changes, documents, retakes },
};

export const japanese: { readonly [C in FormConvention]: Words } = {
  japan: onJapanForms,
  // Only a Japanese form names the total first; a western one counts feet.
  west: {
    ...onJapanForms,
    sheet: { ...sheet, pageOf: (page, pages) => `${page} / ${pages}` },
    cameraPages: { ...cameraPages, columns: { ...cameraPages.columns, time: 'フィート' } },
  },
};
