/** The English texts. */

import type { Language } from '../texts.js';
import { camera } from './camera.js';
import { cutList } from './cut-list.js';
import { episode } from './episode.js';
import { files } from './files.js';
import { fixes } from './fixes.js';
import { handover } from './handover.js';
import { notes } from './notes.js';
import { statements } from './statements.js';
import { timelines } from './timelines.js';
import { typing } from './typing.js';
import { words } from './words.js';

export const en: Language = {
  codes: {
    ...files,
    ...handover,
    ...words,
    ...statements,
    ...timelines,
    ...camera,
    ...episode,
    ...typing,
    ...cutList,
  },
  notes,
  fixes,
};
