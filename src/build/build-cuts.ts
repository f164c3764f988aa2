/** Prints the cuts of a run, as a plan says: into a PDF for each, or into one for all. */

import type { Found } from '../episode/find-cuts.js';
import type { Host } from '../host/host.js';
import { BuildRun, type Progress } from './build-run.js';
import { BuildSummary } from './build-summary.js';
import type { PrintPlan } from './print-plan.js';
import type { Reporter } from './reporter.js';

/** For whoever shows no progress. */
const NO_PROGRESS: Progress = { start() {}, step() {}, clear() {} };

/**
 * Compiles and prints what was found, and says what came of it. `files`: what the caller named, to find the same at a revision.
 * What is wrong with a cut never stops the next. Throws UsageError where git cannot give a revision, where the output makes no
 * sense for these cuts, and where the plan chooses no page at all.
 */
export async function buildCuts(
  host: Host,
  reporter: Reporter,
  found: Found,
  files: readonly string[],
  plan: PrintPlan,
  progress: Progress = NO_PROGRESS,
): Promise<void> {
  const { against, settings, markedAgainst } = plan;
  const summary = new BuildSummary(found);
  const run = new BuildRun(host, reporter, found, plan, summary, progress);
  if (markedAgainst !== null) {
    const { ChangeMarks } = await import('./change-marks.js');
    run.marked = (await ChangeMarks.open(host, markedAgainst, found, files, settings, reporter)).of;
  }
  if (against.kind === 'revision') {
    const { RevisionCuts } = await import('./revision-cuts.js');
    run.revision = await RevisionCuts.open(host, against.rev, found, files, settings);
  }
  if (plan.selection.only === 'cover') await reportProgress(host, reporter, found);
  if (found.jobs.length > 0) {
    if (plan.coversAPage !== null)
      await (await import('./shared-covers.js')).buildSharedCovers(run, plan.coversAPage);
    else if (plan.oneFile) await (await import('./combined-pdf.js')).buildCombinedPdf(run);
    else await (await import('./separate-pdfs.js')).buildSeparatePdfs(run);
  }
  if (found.whole.length > 0)
    for (const cut of run.revision?.removed() ?? []) summary.addLine(reporter.words.cutGone(cut));
  summary.report(reporter, host, plan);
}

/** What cannot be read of the progress that the covers show. */
async function reportProgress(host: Host, reporter: Reporter, { episodes }: Found): Promise<void> {
  const { readProgress } = await import('../episode/progress-csv.js');
  for (const episode of episodes) {
    const file = readProgress(host, episode);
    if (file) reporter.report(file.diagnostics, new Map([[file.name, file.text]]));
  }
}
