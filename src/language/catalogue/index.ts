/** Every code that the program can report, in the order of the stages that report them. */

import { camera } from './camera.js';
import { cutList } from './cut-list.js';
import type { Entry } from './entry.js';
import { episode } from './episode.js';
import { files } from './files.js';
import { handover } from './handover.js';
import { statements } from './statements.js';
import { timelines } from './timelines.js';
import { typing } from './typing.js';
import { words } from './words.js';

export type { Entry } from './entry.js';

const all = {
  ...files,
  ...handover,
  ...words,
  ...statements,
  ...timelines,
  ...camera,
  ...episode,
  ...typing,
  ...cutList,
};

export type Code = keyof typeof all;

export const catalogue: Readonly<Record<Code, Entry>> = all;
