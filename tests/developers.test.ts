/** DEVELOPERS.md leads by paths: each of them is there. */

import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

const files = execFileSync('git', ['ls-files'], { encoding: 'utf8' }).trim().split('\n');
const text = readFileSync('DEVELOPERS.md', 'utf8');

/** Placeholders of the recipes, and what a build makes. */
const MADE = [/NAME/, /CODE/, /^dist\//, /^types\//, /^out\//, /^node_modules\//, /…/, /\*/];

/** `src/solve/`, `move-kinds.ts`, `en/forms-en.ts`: whatever looks like a path. */
const paths = [...text.matchAll(/`([\w./*…-]+(?:\/|\.(?:ts|cjs|mjs|js|json|md|txt|yml|el|vim)))`/g)]
  .map(([, path]) => path!)
  .filter((path) => !MADE.some((made) => made.test(path)));

it('names no file and no folder that is not there', () => {
  const stands = (path: string): boolean =>
    files.some(
      (file) =>
        file === path || file.endsWith(`/${path}`) || file.startsWith(path) || file.includes(`/${path}`),
    );
  expect([...new Set(paths)].filter((path) => !stands(path))).toEqual([]);
  expect(paths.length).toBeGreaterThan(60);
});
