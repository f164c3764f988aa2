/** The episodes that the tests generate, for the benchmarks, which run without a compiler of types. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const { outputFiles } = await build({
  entryPoints: [fileURLToPath(new URL('../episode/whole/generate.ts', import.meta.url))],
  bundle: true,
  write: false,
  format: 'esm',
  target: 'node20',
});
const source = Buffer.from(outputFiles[0].contents).toString('base64');
const { generateEpisode } = await import(`data:text/javascript;base64,${source}`);

/** Writes an episode's files into a folder; the episode, with its cuts in story order. */
export function writeEpisode(folder, options) {
  const episode = generateEpisode(options);
  for (const [name, text] of Object.entries(episode.files)) {
    const path = join(folder, name);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
  }
  return episode;
}
