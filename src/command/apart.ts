/** `build` into a file for each cut. */

import { dirname } from 'node:path';
import { cutKey } from '../episode/episode.js';
import { writeRecord } from '../episode/record.js';
import type { Diagnostic } from '../language/diagnostic.js';
import { type Earlier, readBack, recorded, weigh } from './before.js';
import { saidOf } from './changed.js';
import { pageCount, somePages, workTitle } from './document.js';
import { numberIn } from './outcome.js';
import { deliver, Targets } from './output.js';
import type { Laid } from './press.js';
import type { Running, Work } from './running.js';
import { nameStrays } from './strays.js';

export async function buildApart(run: Running): Promise<void> {
  const { host, found, plan, outcome } = run;
  const targets = new Targets(host, found, plan.options.output, '.pdf');
  const paths = found.jobs.flatMap((job) => targets.of(job).path ?? []);
  for (const folder of new Set(paths.map((path) => dirname(host.real(path))))) host.sweep(folder);
  let printedTo: Map<string, string> | null = new Map();

  const print: Work = async (told, press) => {
    const { job } = told;
    const refusal = targets.refusal(job, told.compiled.sources.keys());
    if (refusal) return refusal;
    const target = targets.of(job);
    printedTo?.set(cutKey(told.solved.shot.cut), target.name);
    const copy = press.copy(told, plan.marked(told));
    if (plan.against.kind === 'nothing') return write(run, targets, press.lay(copy), plan.keep);
    const earlier = run.past ? run.past.of(told, press) : lastPrint(run, target.path);
    // The print of a revision has no marks, and a cut that was the same then is the same now.
    const differing = weigh(press, copy, earlier, plan.pile, run.past ? press.plain(copy) : copy);
    if (!differing) return outcome.is(job, 'same');
    const { laid, difference, first } = differing;
    if (laid.pages.length === 0) return outcome.is(job, 'empty');
    outcome.note(saidOf(told.solved.shot.cut, laid.pages, difference, first));
    if (!plan.pile) return write(run, targets, laid, () => true);
    if (difference.pages.length === 0) return outcome.is(job, 'same');
    return write(run, targets, laid, (page) => difference.pages.includes(page - 1), true);
  };
  await run.each('printing', found, print, ({ tree }, job) => {
    const number = numberIn(tree);
    if (number === undefined) printedTo = null;
    else printedTo?.set(cutKey(number), targets.of(job).name);
  });
  if (found.whole.length > 0) nameStrays(run, targets, printedTo);
}

/** What the file of a cut tells of the last build. */
function lastPrint({ host }: Running, path: string | null): Earlier {
  if (path === null) return { none: '' };
  const record = readBack(host, path);
  if ('none' in record) return record;
  const [cut] = record.cuts;
  return cut && record.of === 'cut' ? recorded(cut) : { none: 'as the file there is of several cuts' };
}

/** Writes pages of a cut. `known`: those that are left out were printed before as they are. */
async function write(
  { host, outcome, press }: Running,
  targets: Targets,
  laid: Laid,
  keep: (page: number) => boolean,
  known = false,
): Promise<Diagnostic | undefined> {
  const { told, input } = laid.copy;
  const { job } = told;
  const printed = somePages(laid.printed, keep);
  const count = pageCount(printed);
  if (count === 0) {
    outcome.is(job, 'empty');
    return undefined;
  }
  const pages = laid.pages.map((page, i) =>
    keep(i + 1) ? page : { label: page.label, hash: known ? page.hash : null, here: false },
  );
  const cuts = [{ cut: told.solved.shot.cut, input, pages }];
  const record = writeRecord({ of: 'cut', work: workTitle(job.episode.settings), cuts });
  const bytes = await (await press()).cut(laid, printed, record);
  const target = targets.of(job);
  const fault = deliver(host, target, bytes, { file: job.name, start: 0, end: 0 });
  if (fault) return fault;
  outcome.is(job, 'printed');
  outcome.wrote(target, count);
  return undefined;
}
