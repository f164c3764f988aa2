/** What `check --fix` does before it checks: mends that cannot change the meaning are written into the files. */

import type { Reporter } from '../build/reporter.js';
import { NO_SOURCES } from '../episode/batch.js';
import { compile } from '../episode/compile-cut.js';
import { newEpisodeCache } from '../episode/episode.js';
import type { Job } from '../episode/find-cuts.js';
import { decode, readText } from '../episode/read-text.js';
import type { Host } from '../host/host.js';
import { applySafeFixes } from '../language/safe-fixes.js';
import { withoutMark } from '../language/source.js';
import { bytesOf, marked, printDiff, saying, writeBack } from './rewrite-input.js';

/**
 * Writes each file of which something could be mended, whole or not at all; one that was saved meanwhile is left as it is. `diff`: only
 * shows what would be written. Standard input comes back on standard output. Returns a world in which standard input is mended.
 */
export async function writeSafeFixes(
  host: Host,
  reporter: Reporter,
  jobs: readonly Job[],
  diff: boolean,
): Promise<Host> {
  let world = host;
  for (const job of jobs) {
    const bytes = await bytesOf(host, job);
    const read = job.path === null ? decode(job.name, bytes) : readText(host, job.path, job.name);
    // What cannot be read is told by the check.
    if (!read.ok) continue;
    const typed = withoutMark(read.text);
    const look = (text: string) =>
      compile(host, job.path, job.episode, {
        name: job.name,
        bytes: Buffer.from(text, 'utf8'),
        cache: newEpisodeCache(),
      }).diagnostics;
    const { text, count } = applySafeFixes(typed, job.name, look);
    if (diff) await printDiff(host, job.name, typed, text);
    else if (count > 0 || job.path === null) {
      if (job.path === null) world = saying(world, null, Buffer.from(text, 'utf8'));
      const fault = writeBack(host, job, text, marked(bytes), bytes);
      if (fault) reporter.report([fault], NO_SOURCES);
      else if (count > 0) reporter.say(`${job.name}: ${reporter.words.mendsWritten(count)}`);
    }
  }
  return world;
}
