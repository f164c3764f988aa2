import type { Command } from 'commander';
import { hasErrors } from '../episode/order.js';
import type { Host } from '../host/host.js';
import { diagnose } from '../language/diagnostic.js';
import { eachCut, findAll } from './batch.js';
import { Desk, NO_SOURCES, plural } from './desk.js';
import { LineFault } from './line.js';
import {
  checkRows,
  choice,
  examples,
  type LookOptions,
  looks,
  type ReportOptions,
  withLooks,
  withReport,
} from './options.js';
import { deliver, sharedFolder, type Target, Targets } from './output.js';
import { pageChoice } from './pages.js';
import { PARTS, type PartName } from './parts.js';
import type { Press } from './press.js';
import type { Run } from './run.js';

interface Options extends ReportOptions, LookOptions {
  readonly output?: string;
  readonly only?: PartName;
  readonly trueSize?: boolean;
  readonly pages?: string;
}

/** Why a part has no page. */
const NOTHING: Readonly<Record<PartName, string>> = {
  sheet: 'No sheet',
  charts: 'No in-between, so no chart',
  camera: 'No camera work, so no camera chart',
  table: 'Nothing moves, so no move table',
  strip: 'No graduations, so no scale strip',
  overlay: 'No camera work, so no field overlay',
};

export function define(command: Command, run: Run): Command {
  command
    .argument('<files...>', 'cuts, folders or an episode.yaml; - is standard input')
    .option('-o, --output <path>', 'a file, a folder, or - for standard output; otherwise beside the cut');
  return withReport(
    withLooks(command)
      .addOption(choice('--only <part>', 'print one part', PARTS))
      .option('--true-size', 'print the scale strip and the field overlay as well, to lay on the drawing')
      .option('--pages <range>', 'print these pages only, such as 2-3'),
  )
    .addHelpText(
      'after',
      examples(
        ['cutwright build c012.cut', 'writes c012.pdf'],
        ['cutwright build c012.cut --paper A3 --labels ja', 'on A3, with a Japanese form'],
        ['cutwright build episode.yaml --output out/', 'a file for each cut of the episode'],
        ['cutwright build c012.cut --pages 2-3', 'only the pages that changed'],
        ['cutwright build c012.cut --only charts', 'only the in-between charts'],
        ['cutwright build c012.cut --only strip', 'the graduations of its moves as a ruler at true size'],
        ['cutwright build - --output - < c012.cut > a.pdf', 'from standard input to standard output'],
      ),
    )
    .action(async (files: string[], options: Options) => {
      run.status = await build(run.host, files, options);
    });
}

async function build(host: Host, files: readonly string[], options: Options): Promise<number> {
  const strict = options.strict === true;
  const pages = options.pages === undefined ? undefined : pageChoice(options.pages);
  const desk = new Desk(host, options.format, strict);
  const settings = looks(options);
  const found = await findAll(host, desk, files, settings);
  for (const { episode } of found.jobs) checkRows(options, episode.settings);
  const targets = new Targets(host, found, options.output, '.pdf');
  const written: Target[] = [];
  let printed = 0;
  let failed = 0;
  let empty = 0;
  let press: Press | undefined;

  await eachCut(host, desk, found, async (compiled, job) => {
    const { solved, diagnostics, sources, house } = compiled;
    if (house) return;
    // Counted as failed until it is written, so that a fault on the way is not taken for success.
    failed += 1;
    if (solved === null || hasErrors(diagnostics, strict)) return;
    const refusal = targets.refusal(job, sources.keys());
    if (refusal) {
      desk.report([refusal], NO_SOURCES);
      return;
    }
    press ??= (await import('./press.js')).Press.open(host);
    const pdf = await press.cut(solved, compiled, job, {
      only: options.only,
      trueSize: options.trueSize,
      pages,
    });
    if (pdf === null) {
      failed -= 1;
      empty += 1;
      return;
    }
    const target = targets.of(job);
    const fault = deliver(host, target, pdf.bytes, { file: job.name, start: 0, end: 0 });
    if (fault) {
      desk.report([fault], NO_SOURCES);
      return;
    }
    failed -= 1;
    written.push(target);
    printed += pdf.pages;
  });

  if (written.length > 0) desk.say(`wrote ${summary(host, written, printed)}`);
  if (failed > 0) desk.say(`${plural(failed, 'cut')} not printed: ${desk.tally()}`);
  if (empty > 0) {
    const none =
      options.pages === undefined
        ? `${NOTHING[options.only ?? 'sheet']}, in ${plural(empty, 'cut')}.`
        : `\`--pages ${options.pages}\` chooses no page of ${plural(empty, 'cut')}.`;
    if (written.length === 0 && failed === 0) {
      throw new LineFault('option-value', options.pages ?? options.only ?? '', none);
    }
    desk.say(none);
  }
  if (written.length === 0 && failed === 0 && empty === 0 && found.jobs.length > 0) {
    const span = { file: found.jobs[0]!.name, start: 0, end: 0 };
    desk.report(
      [diagnose('no-cuts', span, 'This file only holds what other cuts use; there is nothing to print.')],
      NO_SOURCES,
    );
  }
  return desk.finish();
}

function summary(host: Host, written: readonly Target[], pages: number): string {
  const [only] = written;
  if (only!.path === null) return `${plural(pages, 'page')} to standard output`;
  if (written.length === 1) return `${only!.name}: ${plural(pages, 'page')}`;
  const folder = sharedFolder(host, written);
  return `${plural(written.length, 'file')}, ${plural(pages, 'page')}${folder ? `, in ${folder}` : ''}`;
}
