/** The English texts. */

import type { Language } from '../text-types.js';
import { camera } from './camera-texts.js';
import { typing } from './command-texts.js';
import { cutList } from './cut-list-texts.js';
import { episode } from './episode-texts.js';
import { files } from './files-texts.js';
import { fixes } from './fixes-texts.js';
import { handover } from './handover-texts.js';
import { notes } from './notes-texts.js';
import { picture } from './picture-texts.js';
import { statements } from './statements-texts.js';
import { words } from './syntax-texts.js';
import { timelines } from './timelines-texts.js';
import { track } from './track-texts.js';
import { usage } from './usage-texts.js';

export const en: Language = {
  codes: {
    ...files,
    ...usage,
    ...handover,
    ...words,
    ...statements,
    ...timelines,
    ...camera,
    ...episode,
    ...typing,
    ...cutList,
    ...picture,
    ...track,
  },
  notes,
  fixes,
};
