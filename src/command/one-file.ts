/** `build --one-file`: one PDF for the printer. */

import type { PrintedCut, PrintRecord } from '../episode/record.js';
import type { Host } from '../host/host.js';
import { type Earlier, readBack, recorded, weigh } from './before.js';
import { OneFile } from './bound-file.js';
import { ByNumber } from './by-number.js';
import { saidOf } from './changed.js';
import { numberIn } from './outcome.js';
import { oneTarget } from './output.js';
import type { Told } from './press.js';
import type { Running } from './running.js';

export async function buildOneFile(run: Running): Promise<void> {
  const { host, found, plan, outcome } = run;
  const file = new OneFile(run, oneTarget(host, found, plan.options.output, run.past ? '-changes' : ''));
  if (plan.against.kind === 'last build') {
    await changed(run, file);
  } else {
    await run.each('printing', found, async (told, press) => {
      const copy = press.copy(told, plan.marked(told));
      if (!run.past) return file.add(press.lay(copy), plan.keep);
      const differing = weigh(press, copy, run.past.of(told, press), plan.pile, press.plain(copy));
      if (!differing) return outcome.is(told.job, 'same');
      const { laid, difference, first } = differing;
      if (laid.pages.length === 0) return outcome.is(told.job, 'empty');
      outcome.note(saidOf(told.solved.shot.cut, laid.pages, difference, first));
      if (!plan.pile) return file.add(laid, () => true);
      if (difference.pages.length === 0) return outcome.is(told.job, 'same');
      return file.add(laid, (page) => difference.pages.includes(page - 1), true);
    });
  }
  await file.finish();
}

/** What the file tells of the last build. */
function lastPrint(host: Host, path: string): PrintRecord | { readonly none: string } {
  const record = readBack(host, path);
  return 'none' in record || record.of === 'cuts' ? record : { none: 'as the file there is of one cut' };
}

/**
 * Compares every cut with what the file holds, then prints all of them if any differs, or the pages that differ. Nothing is
 * kept of a cut in between, so that it does not matter how many there are.
 */
async function changed(run: Running, file: OneFile): Promise<void> {
  const { host, found, plan, outcome } = run;
  const record = lastPrint(host, file.target.path!);
  const before = new ByNumber<PrintedCut>();
  if (!('none' in record)) for (const cut of record.cuts) before.next(cut.cut, cut);
  const none = 'none' in record ? record.none : 'new';
  const earlier = (key: string): Earlier => {
    const cut = before.get(key);
    return cut ? recorded(cut) : { none };
  };

  const differing = new Set<Told['job']>();
  const seen = new ByNumber<PrintedCut | null>();
  let lines = 0;
  await run.each(
    'comparing',
    found,
    async (told, press) => {
      const { job, solved } = told;
      const key = seen.next(solved.shot.cut, null);
      const other = weigh(press, press.copy(told, plan.marked(told)), earlier(key), plan.pile);
      if (!other) {
        seen.set(key, before.get(key)!);
        return outcome.is(job, 'same');
      }
      const { laid, difference, first } = other;
      if (laid.pages.length === 0) return outcome.is(job, 'empty');
      lines += 1;
      outcome.note(saidOf(solved.shot.cut, laid.pages, difference, first));
      if (!plan.pile || difference.pages.length > 0) differing.add(job);
      return undefined;
    },
    ({ tree }) => {
      // A cut with errors keeps what was printed of it, so that it is not new once it is mended.
      const number = numberIn(tree);
      if (number === undefined) return;
      const key = seen.next(number, null);
      seen.set(key, before.get(key) ?? null);
    },
  );
  const gone = before.keys().filter((key) => !seen.has(key));
  for (const key of gone) outcome.note(`cut ${before.get(key)!.cut}: no cut of the episode any more`);
  const order = before.keys().filter((key) => seen.has(key));
  const moved =
    seen
      .keys()
      .filter((key) => before.has(key))
      .join() !== order.join();
  if (differing.size === 0 && (plan.pile || (gone.length === 0 && !moved && lines === 0))) return;
  if (moved) outcome.note('the cuts stand in another order');

  const again = new ByNumber<null>();
  const jobs = plan.pile ? found.jobs.filter((job) => differing.has(job)) : found.jobs;
  file.keeps(seen);
  await run.each('printing', { ...found, jobs, whole: [] }, async (told, press) => {
    const copy = press.copy(told, plan.marked(told));
    if (!plan.pile) return file.add(press.lay(copy), () => true);
    const key = again.next(told.solved.shot.cut, null);
    const other = weigh(press, copy, earlier(key), true);
    if (!other) return outcome.is(told.job, 'same');
    return file.add(other.laid, (page) => other.difference.pages.includes(page - 1), true);
  });
}
