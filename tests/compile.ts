/** Text, files and folders to solved cuts, for tests that look at the language as a whole. */

import { type Compiled, compile } from '../src/episode/compile-cut.js';
import { noEpisode } from '../src/episode/episode.js';
import { findCuts } from '../src/episode/find-cuts.js';
import { memoryHost } from '../src/host/memory-host.js';
import { nodeHost } from '../src/host/node-host.js';
import type { Diagnostic } from '../src/language/diagnostic.js';
import { messageOf } from '../src/language/message.js';
import { exampleRecordings } from './sound/example-recordings.js';

/** A cut outside any episode; `files` lie in its folder. */
export function compileText(
  text: string,
  files: Readonly<Record<string, string | Uint8Array>> = {},
): Compiled {
  const recordings = text.includes('track') ? exampleRecordings() : {};
  const host = memoryHost({ ...recordings, ...files, 'this.cut': text });
  return compile(host, '/work/this.cut', noEpisode, { name: 'this.cut' });
}

/** Every cut that is found in real files and folders, paths relative to the repository, by its file's name. */
export async function compileFiles(...paths: readonly string[]): Promise<Map<string, Compiled>> {
  const host = nodeHost();
  const found = await findCuts(host, paths);
  const problems = [...found.diagnostics, ...found.episodes.flatMap((one) => one.diagnostics)];
  if (problems.length > 0) throw new Error(said(problems).join('\n'));
  return new Map(
    found.jobs.map((job) => [job.name, compile(host, job.path, job.episode, { name: job.name })]),
  );
}

/** `error timeline-short: …`, for failures that explain themselves. */
export function said(diagnostics: readonly Diagnostic[]): string[] {
  return diagnostics.map(
    (one) => `${one.severity} ${one.code}: ${messageOf(one, 'en')} (${one.span.file} ${one.span.start})`,
  );
}
