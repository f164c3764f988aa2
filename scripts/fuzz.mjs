/** `npm run fuzz -- --seconds 60 --seed 7`: bundles the fuzzer, so that it runs the sources without a test runner, and starts it. */

import { rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const outfile = join(root, 'node_modules', `.cutwright-fuzz-${process.pid}.mjs`);
process.chdir(root);
try {
  await build({
    entryPoints: ['tests/fuzz/fuzz.ts'],
    outfile,
    bundle: true,
    packages: 'external',
    platform: 'node',
    format: 'esm',
    sourcemap: 'inline',
    logLevel: 'warning',
  });
  process.setSourceMapsEnabled(true);
  const { fuzz } = await import(pathToFileURL(outfile).href);
  process.exitCode = await fuzz(process.argv.slice(2));
} finally {
  rmSync(outfile, { force: true });
}
