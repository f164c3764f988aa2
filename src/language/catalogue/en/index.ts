/** The English texts. */

import type { Language } from '../catalogue-entry.js';
import { camera } from './camera-texts.js';
import { typing } from './command-texts.js';
import { cutList, episode, handover, picture } from './episode-texts.js';
import { files } from './files-texts.js';
import { mouth } from './mouth-texts.js';
import { fixes, notes } from './notes-texts.js';
import { progress } from './progress-texts.js';
import { report } from './report-texts.js';
import { run } from './run-texts.js';
import { statements } from './statements-texts.js';
import { words } from './syntax-texts.js';
import { tables } from './table-texts.js';
import { rows } from './terms-texts.js';
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
    ...progress,
    ...picture,
    ...track,
    ...mouth,
  },
  notes,
  fixes,
  rows,
  report,
  run,
  tables,
};
