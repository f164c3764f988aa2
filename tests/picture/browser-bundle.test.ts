/** What a browser needs to paint frames: small, and nothing of Node, of the solver or of the language in it. */

import { build } from 'esbuild';
import { expect, test } from 'vitest';

test('the painter is a few kilobytes of script for a browser', async () => {
  const contents = ['frame-painter', 'frame-notes', 'lit-drawing', 'scan-header']
    .map((name) => `export * from './src/picture/${name}.ts';`)
    .join('\n');
  const { outputFiles, metafile } = await build({
    stdin: { contents, resolveDir: process.cwd() },
    bundle: true,
    minify: true,
    platform: 'browser',
    format: 'esm',
    metafile: true,
    write: false,
  });
  const sources = Object.keys(metafile.inputs).filter((path) => path !== '<stdin>');
  expect(sources.filter((path) => !path.startsWith('src/picture/'))).toEqual([]);
  expect(outputFiles[0]!.contents.length).toBeLessThan(12_000);
});
