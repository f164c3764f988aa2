/** Builds the shipped program once for a run of the slow tests; `bundle.ts` tells them where it is. */

import { execFileSync } from 'node:child_process';
import { cpSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';

export default function buildBundle(project: TestProject): () => void {
  const home = join(project.config.root, 'node_modules', `.cutwright-test-${process.pid}`);
  cpSync('bin', join(home, 'bin'), { recursive: true });
  execFileSync(process.execPath, ['esbuild.config.mjs', join(home, 'dist')]);
  project.provide('bundle', home);
  return () => rmSync(home, { recursive: true, force: true });
}

declare module 'vitest' {
  export interface ProvidedContext {
    /** Folder with `bin/` and `dist/`, as they are shipped. Only for slow tests, and only to be read. */
    readonly bundle: string;
  }
}
