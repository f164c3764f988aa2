/** The Japanese texts. */

import type { Language } from '../catalogue-entry.js';
import { camera } from './camera-texts-ja.js';
import { typing } from './command-texts-ja.js';
import { cutList, episode, handover, picture } from './episode-texts-ja.js';
import { files } from './files-texts-ja.js';
import { mouth } from './mouth-texts-ja.js';
import { fixes, notes } from './notes-texts-ja.js';
import { progress } from './progress-texts-ja.js';
import { report } from './report-texts-ja.js';
import { run } from './run-texts-ja.js';
import { statements } from './statements-texts-ja.js';
import { words } from './syntax-texts-ja.js';
import { tables } from './table-texts-ja.js';
import { rows } from './terms-texts-ja.js';
import { timelines } from './timelines-texts-ja.js';
import { track } from './track-texts-ja.js';
import { usage } from './usage-texts-ja.js';

export const ja: Language = {
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
