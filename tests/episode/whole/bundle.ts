/** The shipped bundle, built for one test file, to be run as real processes. */

import { execFileSync } from 'node:child_process';
import { cpSync, rmSync } from 'node:fs';
import { join } from 'node:path';

export interface Bundle {
  /** The executable's path. */
  readonly program: string;
  remove(): void;
}

export function buildBundle(name: string): Bundle {
  const home = join('node_modules', `.cutwright-test-${name}-${process.pid}`);
  cpSync('bin', join(home, 'bin'), { recursive: true });
  execFileSync(process.execPath, ['esbuild.config.mjs', join(home, 'dist')]);
  return {
    program: join(process.cwd(), home, 'bin', 'cutwright.js'),
    remove: () => rmSync(home, { recursive: true, force: true }),
  };
}
