/** `build --one-file`: one PDF for the printer. */

import { basename, dirname, join, normalize, resolve } from 'node:path';
import { cutKey } from '../episode/episode.js';
import type { Found } from '../episode/find.js';
import { type PrintedCut, writeRecord } from '../episode/record.js';
import type { Host } from '../host/host.js';
import { type Diagnostic, diagnose } from '../language/diagnostic.js';
import { type Earlier, NOT_PRINTED, readBack, recorded, weigh } from './before.js';
import { saidOf } from './changed.js';
import { NO_SOURCES } from './desk.js';
import { pageCount, somePages, workTitle } from './document.js';
import { LineFault } from './line.js';
import { numberIn } from './outcome.js';
import { inputsOf, isFolder, overwriting, STANDARD_OUTPUT, type Target } from './output.js';
import type { Laid, Told } from './press.js';
import type { Running } from './running.js';
import { Sheaf } from './sheaf.js';

export async function buildOneFile(run: Running): Promise<void> {
  const { host, found, plan, outcome } = run;
  const file = new OneFile(run, oneTarget(host, found, plan.options.output));
  if (plan.against.kind === 'last build') {
    await changed(run, file);
  } else {
    await run.each('printing', found, async (told, press) => {
      const copy = press.copy(told, plan.marked(told));
      if (!run.past) return file.add(press.lay(copy), plan.keep);
      const differing = weigh(press, copy, run.past.of(told, press), plan.pile, press.plain(copy));
      if (!differing) return outcome.is(told.job, 'same');
      const { laid, difference, first } = differing;
      outcome.note(saidOf(told.solved.shot.cut, laid.pages, difference, first));
      return file.add(laid, (page) => !plan.pile || difference.pages.includes(page - 1), plan.pile);
    });
  }
  await file.finish();
}

/**
 * Compares every cut with what the file holds, then prints all of them if any differs, or the pages that differ. Nothing is
 * kept of a cut in between, so that it does not matter how many there are.
 */
async function changed(run: Running, file: OneFile): Promise<void> {
  const { host, found, plan, outcome } = run;
  const record = file.target.path === null ? { none: NOT_PRINTED } : readBack(host, file.target.path);
  const before = new Numbered<PrintedCut>();
  if (!('none' in record)) for (const cut of record.cuts) before.next(cut.cut, cut);
  const none = 'none' in record ? record.none : 'new';
  const earlier = (key: string): Earlier => {
    const cut = before.get(key);
    return cut ? recorded(cut) : { none };
  };

  const differing = new Set<Told['job']>();
  const seen = new Numbered<PrintedCut | null>();
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

  const again = new Numbered<null>();
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

/** The file, opened when there is a page for it. */
class OneFile {
  private sheaf: Sheaf | undefined;
  private fault: Diagnostic | undefined;
  private readonly cuts = new Numbered<PrintedCut>();
  private kept: Numbered<PrintedCut | null> | undefined;
  private readonly inputs: ReadonlySet<string>;

  constructor(
    private readonly run: Running,
    readonly target: Target,
  ) {
    const { host, found } = run;
    this.inputs = inputsOf(host, found);
    const refusal = target.path === null ? null : this.refusal([]);
    if (refusal) throw new LineFault(refusal.code, run.plan.options.output ?? null, refusal.message);
    if (target.path !== null) host.sweep(dirname(host.real(target.path)));
  }

  /** Cuts that the record tells of although they are not in the file. */
  keeps(cuts: Numbered<PrintedCut | null>): void {
    this.kept = cuts;
  }

  /** `known`: the pages that are left out were printed before as they are. */
  async add(laid: Laid, keep: (page: number) => boolean, known = false): Promise<Diagnostic | undefined> {
    const { run, target } = this;
    const { told, input, look } = laid.copy;
    const { cut, artists } = told.solved.shot;
    // One fault of the file is every cut's; it is said once.
    if (this.fault) return this.fault;
    const printed = somePages(laid.printed, keep);
    if (pageCount(printed) === 0) {
      run.outcome.is(told.job, 'empty');
      return undefined;
    }
    this.fault = this.refusal(told.compiled.sources.keys()) ?? (await this.opened(look.settings.labels));
    if (this.fault) return this.fault;
    const added = this.sheaf!.add(cut, printed, artists);
    if (!added.ok) return this.unwritable(added.reason);
    const pages = laid.pages.map((page, i) =>
      keep(i + 1) ? page : { label: page.label, hash: known ? page.hash : null, here: false },
    );
    this.cuts.next(cut, { cut, input, pages });
    run.outcome.is(told.job, 'printed');
    return undefined;
  }

  async finish(): Promise<void> {
    const { sheaf, run, target, cuts } = this;
    if (!sheaf) return;
    if (this.fault) {
      sheaf.drop();
      return;
    }
    const { pages } = sheaf;
    const finished = await sheaf.finish(writeRecord({ work: this.work(), cuts: this.all() }));
    if (finished.ok) run.outcome.wrote(target, pages);
    else run.desk.report([this.unwritable(finished.reason)], NO_SOURCES);
  }

  /** What the record tells of, in the order of the cuts. */
  private all(): PrintedCut[] {
    const { cuts, kept } = this;
    const keys = kept ? kept.keys() : cuts.keys();
    return keys.flatMap((key) => {
      const before = kept?.get(key);
      const away = before && { ...before, pages: before.pages.map((page) => ({ ...page, here: false })) };
      return cuts.get(key) ?? away ?? [];
    });
  }

  private async opened(language: string): Promise<Diagnostic | undefined> {
    const { run, target } = this;
    if (this.sheaf) return undefined;
    const { fonts } = await run.press();
    const sheaf = await Sheaf.open(run.host, target, fonts, { title: this.work(), language });
    if (!sheaf.ok) return this.unwritable(sheaf.reason);
    this.sheaf = sheaf.value;
    return undefined;
  }

  private work(): string {
    return workTitle(this.run.found.jobs[0]!.episode.settings);
  }

  private refusal(used: Iterable<string>): Diagnostic | null {
    const { host } = this.run;
    const read = new Set([...used].map((one) => host.real(resolve(host.cwd, one))));
    const { path, name } = this.target;
    if (path === null) return null;
    const span = { file: name, start: 0, end: 0 };
    return overwriting(host, path, name, span, (real) => this.inputs.has(real) || read.has(real));
  }

  private unwritable(reason: string): Diagnostic {
    const { name, path } = this.target;
    const what = path === null ? 'Standard output' : `\`${name}\``;
    this.fault = diagnose(
      'output-unwritable',
      { file: name, start: 0, end: 0 },
      `${what} cannot be written: ${reason}.`,
    );
    return this.fault;
  }
}

/** Cuts by their numbers, in order; a second cut of one number counts as another. */
class Numbered<T> {
  private readonly byKey = new Map<string, T>();

  /** Takes in the next cut of a number; its key. */
  next(cut: string, value: T): string {
    const plain = cutKey(cut);
    let key = plain;
    for (let i = 2; this.byKey.has(key); i++) key = `${plain} ${i}`;
    this.byKey.set(key, value);
    return key;
  }

  set(key: string, value: T): void {
    this.byKey.set(key, value);
  }

  get(key: string): T | undefined {
    return this.byKey.get(key);
  }

  has(key: string): boolean {
    return this.byKey.has(key);
  }

  keys(): string[] {
    return [...this.byKey.keys()];
  }
}

/** Where the file goes: as `--output` says, or beside the manifest under the name of its folder. */
function oneTarget(host: Host, found: Found, output: string | undefined): Target {
  if (output === '-') return STANDARD_OUTPUT;
  if (output !== undefined && !isFolder(host, output)) return target(host, output);
  const [whole] = found.whole;
  const own = found.whole.length === 1 && found.jobs.every(({ episode }) => episode === whole);
  if (!whole || !own) {
    throw new LineFault(
      'wrong-arguments',
      output ?? '--one-file',
      'These cuts are not one whole episode, so their file has no name; give `--output` one, such as cuts.pdf.',
    );
  }
  const manifest = basename(whole.file!).replace(/\.ya?ml$/, '');
  const name = `${manifest === 'episode' ? basename(resolve(host.cwd, whole.folder!)) || manifest : manifest}.pdf`;
  return target(host, join(output ?? dirname(whole.file!), name));
}

function target(host: Host, name: string): Target {
  return { path: resolve(host.cwd, name), name: normalize(name) };
}
