/** Files in the output folder that were printed for cuts which are printed there no more. */

import { dirname, join, relative } from 'node:path';
import { cutKey } from '../episode/episode.js';
import { readBack } from './before.js';
import { workTitle } from './document.js';
import type { Targets } from './output.js';
import type { Running } from './running.js';

/**
 * Names them; they are left where they are. `printedTo`: the files of the cuts by their numbers, or null where the number of
 * some cut cannot be read, so that nobody knows.
 */
export function nameStrays(
  { host, found, outcome }: Running,
  targets: Targets,
  printedTo: ReadonlyMap<string, string> | null,
): void {
  if (printedTo === null) return;
  const works = new Set(found.whole.map(({ settings }) => workTitle(settings)));
  const paths = found.jobs.flatMap((job) => targets.of(job).path ?? []);
  const own = new Set(paths.map((path) => host.real(path)));
  for (const folder of new Set(paths.map((path) => dirname(path)))) {
    const names = host.list(folder);
    for (const name of names.ok ? names.value : []) {
      const path = join(folder, name);
      if (!name.endsWith('.pdf') || own.has(host.real(path))) continue;
      const record = readBack(host, path);
      const [cut] = 'none' in record || record.of !== 'cut' || !works.has(record.work) ? [] : record.cuts;
      if (!cut) continue;
      const now = printedTo.get(cutKey(cut.cut));
      const said = now === undefined ? 'no cut of the episode any more' : `cut ${cut.cut} goes to ${now} now`;
      outcome.note(`${relative(host.cwd, path)}: ${said}`);
    }
  }
}
