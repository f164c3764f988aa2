/** `build` into a file for each cut. */

import { dirname } from 'node:path';
import { cutKey } from '../episode/episode.js';
import type { Diagnostic } from '../language/diagnostic.js';
import { weigh } from './before.js';
import { saidOf } from './changed.js';
import { lastPrint, printCut } from './file-of-cut.js';
import { numberIn } from './outcome.js';
import { Targets } from './output.js';
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
    const earlier = run.past ? run.past.of(told, press) : lastPrint(host, target.path);
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

/** Writes pages of a cut. `known`: those that are left out were printed before as they are. */
async function write(
  { host, outcome, press }: Running,
  targets: Targets,
  laid: Laid,
  keep: (page: number) => boolean,
  known = false,
): Promise<Diagnostic | undefined> {
  const { job } = laid.copy.told;
  const target = targets.of(job);
  const done = await printCut(host, await press(), target, laid, keep, known);
  if (typeof done !== 'number') return done;
  if (done === 0) return outcome.is(job, 'empty');
  outcome.is(job, 'printed');
  outcome.wrote(target, done);
  return undefined;
}
