/** `build --only cover --up 4`: the covers of several cuts on each page of one PDF. */

import { coverMarks } from '../sheet/cover/cover-page.js';
import { type CoversAPage, coverPlaces, sharedCoverPage } from '../sheet/cover/shared-cover-page.js';
import type { Mark } from '../sheet/display-list.js';
import type { PageLook } from '../sheet/page-look.js';
import { wordsOf } from '../words/words.js';
import type { BuildRun } from './build-run.js';
import { CombinedPdf, type SharingCut } from './combined-pdf.js';
import { oneTarget } from './output-targets.js';

interface LaidOutCover extends SharingCut {
  readonly marks: readonly Mark[];
}

/** Cuts follow each other in the order of the run. A cut on other paper than the one before it begins a page. */
export async function buildSharedCovers(run: BuildRun, coversAPage: CoversAPage): Promise<void> {
  const { host, found, plan } = run;
  const file = new CombinedPdf(run, oneTarget(host, found, plan.output, '-covers'));
  let paper: PageLook['settings']['paper'] = 'A4';
  let covers: LaidOutCover[] = [];
  const printPage = async (): Promise<void> => {
    const cuts = covers;
    if (cuts.length === 0) return;
    covers = [];
    const numbers = [cuts[0]!, cuts.at(-1)!].map(({ printable }) => printable.solved.shot.cut);
    const label = [...new Set(numbers)].join('–');
    const marks = cuts.map((cut) => cut.marks);
    await file.addShared(sharedCoverPage(marks, paper, coversAPage, label), cuts);
  };
  await run.each('printing', found, async (printable, printer) => {
    const { look } = printer.prepare(printable);
    if (look.settings.paper !== paper) {
      await printPage();
      paper = look.settings.paper;
    }
    const { solved } = printable;
    const place = coverPlaces(paper, coversAPage)[covers.length]!;
    const { cut, title } = solved.shot;
    const name = wordsOf(look.settings).documents.cut(cut);
    covers.push({
      ...{ printable, language: look.settings.labels, title: title ? `${name} ${title}` : name },
      marks: coverMarks(solved, look, place),
    });
    if (covers.length === coversAPage) await printPage();
    return undefined;
  });
  await printPage();
  await file.finish();
}
