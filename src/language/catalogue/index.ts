/** Every code that the program can report, in the order of the stages that report them. */

import { camera } from './camera.js';
import type { Entry } from './entry.js';
import { files } from './files.js';
import { statements } from './statements.js';
import { timelines } from './timelines.js';
import { words } from './words.js';

export type { Entry } from './entry.js';

const all = { ...files, ...words, ...statements, ...timelines, ...camera };

export type Code = keyof typeof all;

export const catalogue: Readonly<Record<Code, Entry>> = all;
