/** The rows of a cut list: cut after cut is compiled, counted and dropped. */

import { type CutRow, cutRow, type PageCounts, uncountedRow } from '../count/cut-row.js';
import { type DiagnosticSink, eachCut, NO_SOURCES } from '../episode/batch.js';
import { artistsOf } from '../episode/episode.js';
import type { Found, Job } from '../episode/find-cuts.js';
import type { Host } from '../host/host.js';
import { type Diagnostic, diagnose, hasErrors } from '../language/diagnostic.js';
import type { Tree } from '../language/tree.js';
import { shortMoves } from '../sheet/camera/move-labels.js';
import type { LabelLanguage } from '../words/labels.js';
import { pageCount } from './cut-document.js';
import type { CutPrinter, PrintableCut } from './cut-printer.js';
import { cutPages } from './printed-parts.js';
import { isWrongUse } from './reporter.js';

export interface Counting {
  /** Of moves and light; null: that of the episode's sheets. */
  readonly language: LabelLanguage | null;
  /** Counts the pages, which takes as long as all the rest; null: they are not asked for. */
  readonly printer: CutPrinter | null;
  readonly strict: boolean;
}

export interface Counted {
  /** In story order. */
  readonly rows: readonly CutRow[];
  /** Hashes of what the cuts say, one a row. */
  readonly digests: readonly string[];
}

/**
 * Counts the cuts of a run. A cut with errors stays among them; the sink is told that it has some, not which: `check` does that.
 * What is no fault of a cut's text (files that cannot be read, the manifest) is told in full.
 */
export async function countCuts(
  host: Host,
  reporter: DiagnosticSink,
  found: Found,
  counting: Counting,
): Promise<Counted> {
  const rows = new Map<Job, CutRow>();
  const digests = new Map<Job, string>();
  const houses = new Set<Job>();
  const manifests = new Set(found.episodes.map(({ file }) => file));
  let met: Diagnostic[] = [];
  const sink = {
    report(diagnostics: readonly Diagnostic[], sources: ReadonlyMap<string, string>): void {
      const outside = ({ code, span }: Diagnostic): boolean => isWrongUse(code) || manifests.has(span.file);
      reporter.report(diagnostics.filter(outside), sources);
      met.push(
        ...diagnostics.filter(({ code, span }) => code !== 'internal-fault' && !manifests.has(span.file)),
      );
    },
  };
  await eachCut(host, sink, found, (compiled, job, cache) => {
    const own = met;
    met = [];
    if (compiled.house) {
      houses.add(job);
      return;
    }
    const { solved, tree } = compiled;
    const row = solved
      ? solvedRow({ host, job, compiled, solved, cache }, own, counting)
      : uncountedRow(namesIn(tree, job), { file: job.name, problems: problemsIn(own) });
    rows.set(job, row);
    digests.set(job, compiled.digest);
    if (hasErrors(own, counting.strict) && !own.some(({ code }) => isWrongUse(code)))
      reporter.report([withErrors(job, row, counting.strict)], NO_SOURCES);
  });
  const jobs = found.jobs.filter((job) => !houses.has(job));
  return {
    rows: jobs.map((job) => rows.get(job) ?? failedRow(job)),
    digests: jobs.map((job) => digests.get(job) ?? ''),
  };
}

function problemsIn(own: readonly Diagnostic[]): CutRow['problems'] {
  const of = (severity: Diagnostic['severity']): number =>
    own.filter((one) => one.severity === severity).length;
  return { errors: of('error'), warnings: of('warning') };
}

function solvedRow(
  printable: PrintableCut,
  own: readonly Diagnostic[],
  { language, printer, strict }: Counting,
): CutRow {
  const { job, solved } = printable;
  const sound = !hasErrors(own, strict);
  return cutRow(solved, {
    file: job.name,
    problems: problemsIn(own),
    sound,
    pages: printer && sound ? pagesOf(printer, printable) : null,
    moves: shortMoves(solved, language ?? job.episode.settings.labels),
  });
}

/** What `build` would print of it. */
function pagesOf(printer: CutPrinter, printable: PrintableCut): PageCounts {
  const printed = cutPages(printable.solved, printer.prepare(printable).look);
  const sheet = printed.parts.flatMap(({ pages }) => pages).filter(({ part }) => part === 'sheet').length;
  return { sheet, all: pageCount(printed) };
}

/** A cut on which the program itself has failed, which was told, is still one of the episode. */
function failedRow(job: Job): CutRow {
  return uncountedRow(namesIn(null, job), { file: job.name, problems: { errors: 1, warnings: 0 } });
}

/** Whatever can still be read of a cut that cannot be bound. */
function namesIn(tree: Tree | null, job: Job): Pick<CutRow, 'cut' | 'title' | 'scene' | 'artists'> {
  const names = { cut: stem(job), title: '', scene: '', artists: [] as string[] };
  for (const statement of tree?.statements ?? []) {
    if (statement.kind === 'cut') {
      names.cut = statement.number.text;
      names.title = statement.title?.text ?? '';
    } else if (statement.kind === 'scene') names.scene = statement.value.text;
    else if (statement.kind === 'artist') names.artists.push(statement.name.text);
  }
  if (names.artists.length === 0) names.artists.push(...artistsOf(job.episode, names.cut));
  return names;
}

function stem({ name }: Job): string {
  return name.replace(/^.*[/\\]/, '').replace(/\.cut$/, '');
}

function withErrors(job: Job, { cut, problems, counted }: CutRow, strict: boolean): Diagnostic {
  const { errors, warnings } = problems;
  const name = job.path === null ? '-' : job.name;
  return diagnose(
    'list-cut-errors',
    { file: job.name, start: 0, end: 0 },
    { cut, errors, warnings: strict ? warnings : 0, timed: counted !== null, file: name },
  );
}
