import type { Command } from 'commander';
import { countCuts } from '../build/cut-counts.js';
import type { CutPrinter } from '../build/cut-printer.js';
import type { Target } from '../build/output-targets.js';
import type { Reporter } from '../build/reporter.js';
import { UsageError } from '../build/usage-error.js';
import { type CutList, cutList, type ListOf } from '../count/count-episode.js';
import { findAll, NO_SOURCES } from '../episode/batch.js';
import { digest } from '../episode/compile-cut.js';
import type { Episode } from '../episode/episode.js';
import type { Found } from '../episode/find-cuts.js';
import { cutListCsv, cutListJson } from '../export/cut-list-export.js';
import type { Host } from '../host/host.js';
import { diagnose } from '../language/diagnostic.js';
import { textsOf } from '../language/message.js';
import type { PageLook } from '../sheet/page-look.js';
import {
  type CommandContext,
  checkRows,
  choice,
  examples,
  filesOr,
  type LookOptions,
  looks,
  type ReportOptions,
  withLooks,
  withReport,
} from './command-options.js';
import { ConsoleReporter } from './console-reporter.js';
import { type ListForm, listForm, listTarget, putList, theEpisode } from './list-output.js';

/** Parts of the printed list. */
const PARTS = ['cuts', 'rhythm'] as const;
type Part = (typeof PARTS)[number];

interface Options extends ReportOptions, LookOptions {
  readonly output?: string;
  readonly csv?: boolean;
  readonly json?: boolean;
  readonly only?: Part;
  readonly check?: boolean;
  readonly since?: string;
}

export function define(command: Command, context: CommandContext): Command {
  command
    .argument(
      '[files...]',
      'an episode.yaml, a folder or cuts; otherwise the episode that this folder lies in',
    )
    .option(
      '-o, --output <file>',
      'a file: .pdf prints the list, .csv and .json write it; - is standard output',
    )
    .option('--csv', 'as CSV, a row a cut')
    .option('--json', 'as JSON, with totals and artists')
    .addOption(
      choice('--only <part>', 'print one part: the list of cuts, or the episode as a picture', PARTS),
    )
    .option('--since <revision>', 'what has become of the cuts since then: times, drawings, budget')
    .option('--check', 'an error when the cuts run longer than the budget; prints no table');
  return withReport(withLooks(command))
    .addHelpText(
      'after',
      examples(
        ['cutwright list', 'the cuts of the episode that this folder lies in, as a table'],
        ['cutwright list --output list.pdf', 'the list and the picture of the whole episode, to print'],
        ['cutwright list --output a3.pdf --only rhythm -p A3', 'the picture alone, on A3'],
        ['cutwright list --csv > cuts.csv', 'for a spreadsheet'],
        [
          'cutwright list --since v2',
          'what the retimes since the tag v2 do to the running time and the budget',
        ],
        ['cutwright list episode.yaml --check', 'for scripts: fails when it runs over its budget'],
      ),
    )
    .action(async (files: string[], options: Options) => {
      context.status = await list(context.host, files, options);
    });
}

type Form = ListForm | 'nothing';

async function list(host: Host, files: readonly string[], options: Options): Promise<number> {
  const form = formOf(options);
  const reporter = new ConsoleReporter(host, options.format, options.strict === true);
  const { since } = options;
  const found = await findAll(host, reporter, await filesOr(host, files, 'list'), looks(options));
  if (found.jobs.length === 0) return reporter.finish();
  const episode = theEpisode(found);
  checkRows(options, episode.settings);
  const target = listTarget(host, found, options);
  // Neither the picture nor the check has a use for pages.
  const pages = form !== 'nothing' && options.only !== 'rhythm' && since === undefined;
  const printer =
    pages || form === 'pdf' ? (await import('../build/cut-printer.js')).CutPrinter.open(host) : null;
  const { rows, digests } = await countCuts(host, reporter, found, {
    // What is printed is in the language of the print; a file is for other programs, and the same for all.
    language: form === 'pdf' ? null : form === 'table' ? reporter.language : 'en',
    printer: pages ? printer : null,
    strict: options.strict === true,
  });
  if (rows.length === 0) {
    const span = { file: found.jobs[0]!.name, start: 0, end: 0 };
    reporter.report([diagnose('no-cuts', span, { variant: 'shared', for: 'list' })], NO_SOURCES);
    return reporter.finish();
  }
  const counted = cutList(rows, listOf(found, episode));
  if (options.check) checkBudget(reporter, counted, episode);
  if (since !== undefined) {
    await putSince(host, reporter, { since, files, form, target }, counted);
  } else if (form === 'pdf' && printer) {
    const commit = host.commit(episode.folder ?? host.cwd);
    const hash = digest(digests, episode.settings, []);
    const look = {
      settings: episode.settings,
      metrics: printer.fonts.metrics,
      stamp: commit ? `${hash} · ${commit}` : hash,
    };
    const { bytes, pages } = await printed(printer, counted, look, options.only);
    putList(host, target, bytes);
    reporter.say(reporter.words.wrote(target.name, reporter.words.pages(pages)));
  } else if (form === 'csv' || form === 'json') {
    putList(host, target, Buffer.from(form === 'csv' ? cutListCsv(counted) : cutListJson(counted), 'utf8'));
    if (target.path !== null)
      reporter.say(reporter.words.wrote(target.name, reporter.words.cuts(rows.length)));
  } else {
    const { runningTime, terminalList } = await import('./list-table.js');
    if (form === 'table') host.out(terminalList(counted, host.columns, reporter.language));
    else reporter.say(runningTime(counted, textsOf(reporter.language).tables.list));
  }
  return reporter.finish();
}

interface SinceAsked {
  readonly since: string;
  readonly files: readonly string[];
  readonly form: Form;
  readonly target: Target;
}

async function putSince(
  host: Host,
  reporter: ConsoleReporter,
  { since, files, form, target }: SinceAsked,
  counted: CutList,
): Promise<void> {
  const { countSince, terminalSince } = await import('./list-since.js');
  const found = await countSince(host, reporter, since, files, counted, (then) =>
    listOf(then, theEpisode(then)),
  );
  if (form === 'csv' || form === 'json') {
    const { listSinceCsv, listSinceJson } = await import('../export/list-since-export.js');
    const text = form === 'csv' ? listSinceCsv(found) : listSinceJson(since, found);
    putList(host, target, Buffer.from(text, 'utf8'));
    if (target.path !== null)
      reporter.say(reporter.words.wrote(target.name, reporter.words.cuts(found.cuts.length)));
  } else host.out(terminalSince(since, found, host.columns, reporter.language));
}

/** What comes out; a check alone prints nothing. */
function formOf(options: Options): Form {
  const { output, only, check, since } = options;
  const form = listForm(options) ?? (check ? 'nothing' : 'table');
  if (since !== undefined && form === 'pdf')
    throw new UsageError('wrong-arguments', output!, {
      variant: 'not-together',
      one: '--since',
      other: `--output ${output}`,
    });
  if (only !== undefined && form !== 'pdf')
    throw new UsageError('wrong-arguments', only, { variant: 'only-without-pdf' });
  return form;
}

/** A budget is that of the whole episode, and says nothing of some of its cuts. */
function listOf({ whole }: Found, episode: Episode): ListOf {
  const { title, episode: number, fps, overlap } = episode.settings;
  const all = whole.some(({ file }) => file === episode.file);
  return { title, episode: number, fps, overlap, budget: all ? episode.budgetFrames : null };
}

function checkBudget(reporter: Reporter, counted: CutList, { file, text, budgetSpan }: Episode): void {
  const { totals, fps, budget: frames } = counted;
  if (frames === null || totals.over === null || totals.over <= 0) return;
  const span = budgetSpan ?? { file: file!, start: 0, end: 0 };
  const { running, over, untimed } = totals;
  reporter.report(
    [diagnose('list-over-budget', span, { running, over, budget: frames, fps, untimed })],
    new Map([[file!, text]]),
  );
}

async function printed(
  printer: CutPrinter,
  counted: CutList,
  look: PageLook,
  only: Part | undefined,
): Promise<{ bytes: Uint8Array; pages: number }> {
  const { listDocument } = await import('../build/cut-list-document.js');
  const document = listDocument(counted, look, only);
  return { bytes: await printer.print(document), pages: document.pages.length };
}
