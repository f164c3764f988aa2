/** The shipped program, to be run as a real process. For slow tests: their set-up builds it, once for all of them. */

import { join } from 'node:path';
import { inject } from 'vitest';

/** Folder with `bin/` and `dist/`. Nobody changes it: who must, copies it. */
export const bundle = inject('bundle');

/** Path of the executable. */
export const program = join(bundle, 'bin', 'cutwright.js');
