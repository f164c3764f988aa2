/** The PDF of one cut: what it tells of the last build, and how it is written anew. */

import { writeRecord } from '../episode/record.js';
import type { Host } from '../host/host.js';
import type { Diagnostic } from '../language/diagnostic.js';
import { type Earlier, readBack, recorded } from './before.js';
import { pageCount, somePages, workTitle } from './document.js';
import { deliver, type Target } from './output.js';
import type { Laid, Press } from './press.js';

/** What the file of a cut tells of the last build. */
export function lastPrint(host: Host, path: string | null): Earlier {
  if (path === null) return { none: '' };
  const record = readBack(host, path);
  if ('none' in record) return record;
  const [cut] = record.cuts;
  return cut && record.of === 'cut' ? recorded(cut) : { none: 'as the file there is of several cuts' };
}

/**
 * Writes the pages of a cut that are kept; how many, or what stands against it. `known`: those that are left out were printed
 * before as they are. Where no page is kept nothing is written.
 */
export async function printCut(
  host: Host,
  press: Press,
  target: Target,
  laid: Laid,
  keep: (page: number) => boolean = () => true,
  known = false,
): Promise<number | Diagnostic> {
  const { told, input } = laid.copy;
  const { job, solved } = told;
  const printed = somePages(laid.printed, keep);
  const count = pageCount(printed);
  if (count === 0) return 0;
  const pages = laid.pages.map((page, i) =>
    keep(i + 1) ? page : { label: page.label, hash: known ? page.hash : null, here: false },
  );
  const cuts = [{ cut: solved.shot.cut, input, pages }];
  const record = writeRecord({ of: 'cut', work: workTitle(job.episode.settings), cuts });
  const bytes = await press.cut(laid, printed, record);
  return deliver(host, target, bytes, { file: job.name, start: 0, end: 0 }) ?? count;
}
