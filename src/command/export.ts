import { basename, resolve } from 'node:path';
import type { Command } from 'commander';
import {
  deliver,
  inputsOf,
  isFolder,
  overwriting,
  STANDARD_OUTPUT,
  sharedFolder,
  type Target,
  Targets,
} from '../build/output-targets.js';
import type { Reporter } from '../build/reporter.js';
import { COMMAND_LINE, UsageError } from '../build/usage-error.js';
import { eachCut, findAll, NO_SOURCES } from '../episode/batch.js';
import type { Compiled } from '../episode/compile-cut.js';
import type { Found, Job } from '../episode/find-cuts.js';
import { csvHeader, csvRows, TABLES, type TableName, toCsv } from '../export/cut-csv.js';
import { type ExportOptions, jsonText, shapeFault, toJson } from '../export/cut-json.js';
import type { Host } from '../host/host.js';
import { diagnose, hasErrors } from '../language/diagnostic.js';
import type { Shot } from '../shot/shot.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import { plural } from '../words/number-format.js';
import { type CommandContext, choice, examples, type ReportOptions, withReport } from './command-options.js';
import { ConsoleReporter } from './console-reporter.js';
import { EDIT_FORMS, type EditForm, type EditOptions, exportEdit } from './export-edit.js';

interface Options extends ReportOptions {
  readonly output?: string;
  readonly table?: TableName;
  readonly pixels?: boolean;
  readonly edit?: EditForm;
  readonly start?: string;
}

export function define(command: Command, context: CommandContext): Command {
  command
    .argument('<files...>', 'cuts, folders or an episode.yaml; - is standard input')
    .option('-o, --output <path>', 'a file or a folder; otherwise standard output')
    .addOption(choice('-t, --table <name>', 'a table as CSV instead of JSON', TABLES))
    .option('--pixels', 'placements also in pixels of the finished picture, from its centre, y up')
    .addOption(
      choice('-e, --edit <form>', 'the edit of an episode, OpenTimelineIO or a CMX 3600 list', EDIT_FORMS),
    )
    .option('--start <timecode>', 'where the record of the edit begins, as 01:00:00:00');
  return withReport(command)
    .addHelpText(
      'after',
      examples(
        ['cutwright export c012.cut', 'the whole cut as JSON'],
        ['cutwright export c012.cut --table exposures', 'one row a level and frame, as CSV'],
        [
          'cutwright export episode.yaml -t drawings -o drawings.csv',
          'all drawings of an episode in one table',
        ],
        ['cutwright export cuts/ --output json/', 'a JSON file for each cut'],
        ['cutwright export episode.yaml --edit otio -o ep03.otio', 'the edit: one clip a cut, dissolves'],
        ['cutwright export episode.yaml --edit edl --start 10:00:00:00', 'the edit as a CMX 3600 list'],
      ),
    )
    .action(async (files: string[], options: Options) => {
      const edit = editAsked(options);
      context.status = edit
        ? await exportEdit(context.host, files, edit)
        : await exportCuts(context.host, files, options);
    });
}

/** What `--edit` asks for, or null. */
function editAsked({ edit: form, start, table, pixels, ...options }: Options): EditOptions | null {
  if (form === undefined) {
    if (start === undefined) return null;
    throw new UsageError('wrong-arguments', start, { variant: 'start-without-edit' });
  }
  const other = table !== undefined ? '--table' : pixels ? '--pixels' : null;
  if (other !== null) {
    throw new UsageError('wrong-arguments', other, { variant: 'not-together', one: '--edit', other });
  }
  return { ...options, form, start };
}

async function exportCuts(host: Host, files: readonly string[], options: Options): Promise<number> {
  const strict = options.strict === true;
  const reporter = new ConsoleReporter(host, options.format, strict);
  const found = await findAll(host, reporter, files);
  const { table, output = '-', pixels = false } = options;
  const joined = table !== undefined && (output === '-' || !isFolder(host, output));
  const exporter = joined
    ? new OneTable(host, reporter, found, table, output, { pixels })
    : new FileEach(host, reporter, found, table, options.output, { pixels });
  let failed = 0;
  const shapes = new Set<string>();
  await eachCut(host, reporter, found, (compiled, job) => {
    if (compiled.house) return;
    failed += 1;
    const { solved, diagnostics } = compiled;
    if (solved === null || hasErrors(diagnostics, strict)) return;
    if (pixels) checkShape(reporter, solved.shot, compiled, shapes);
    if (exporter.cut(solved, compiled, job)) failed -= 1;
  });
  exporter.finish();
  if (failed > 0) reporter.say(`${plural(failed, 'cut')} not exported: ${reporter.tally()}`);
  return reporter.finish();
}

/** Warns of a picture that is not shaped as the field: once of each that is met. */
function checkShape(
  reporter: Reporter,
  { settings, cut, spans }: Shot,
  { sources }: Compiled,
  told: Set<string>,
): void {
  const { field, output } = settings;
  const by = shapeFault(settings);
  const sizes = JSON.stringify([field, output]);
  if (by === 0 || told.has(sizes)) return;
  told.add(sizes);
  reporter.report([diagnose('pixels-shape', spans.cut, { cut, field, output, by })], sources);
}

/** Takes one cut after the other; says whether it came out. */
interface Exporter {
  cut(solved: SolvedShot, compiled: Compiled, job: Job): boolean;
  finish(): void;
}

/** A table of many cuts in one file: one header row, the cut in the first column. */
class OneTable implements Exporter {
  private readonly rows: string[] = [];
  private readonly target: Target;

  constructor(
    private readonly host: Host,
    private readonly reporter: Reporter,
    found: Found,
    private readonly table: TableName,
    output: string,
    private readonly options: ExportOptions,
  ) {
    this.target = output === '-' ? STANDARD_OUTPUT : { path: resolve(host.cwd, output), name: output };
    if (this.target.path === null) return;
    const inputs = inputsOf(host, found);
    const span = { file: COMMAND_LINE, start: 0, end: 0 };
    const refused = overwriting(host, this.target.path, output, span, (real) => inputs.has(real));
    if (refused) throw new UsageError(refused.code, output, refused.parameters);
  }

  cut(solved: SolvedShot): boolean {
    this.rows.push(csvRows(solved, this.table, this.options));
    return true;
  }

  finish(): void {
    const { host, reporter, rows, target } = this;
    if (rows.length === 0) return;
    const bytes = Buffer.from(csvHeader(this.table, this.options) + rows.join(''), 'utf8');
    const fault = deliver(host, target, bytes, { file: COMMAND_LINE, start: 0, end: 0 });
    if (fault) throw new UsageError(fault.code, target.name, fault.parameters);
    if (target.path !== null)
      reporter.say(`wrote ${target.name}: ${this.table} of ${plural(rows.length, 'cut')}`);
  }
}

/** A file for each cut, or one cut on standard output. */
class FileEach implements Exporter {
  private readonly targets: Targets;
  private readonly written: Target[] = [];

  constructor(
    private readonly host: Host,
    private readonly reporter: Reporter,
    found: Found,
    private readonly table: TableName | undefined,
    output: string | undefined,
    private readonly options: ExportOptions,
  ) {
    if (found.jobs.length > 1 && output === undefined) {
      throw new UsageError('wrong-arguments', null, { variant: 'one-json', cuts: found.jobs.length });
    }
    this.targets = new Targets(host, found, output, table ? `.${table}.csv` : '.json', 'standard');
  }

  cut(solved: SolvedShot, compiled: Compiled, job: Job): boolean {
    const { host, reporter, table, targets } = this;
    const text = table ? toCsv(solved, table, this.options) : jsonOf(solved, compiled, this.options);
    const span = { file: job.name, start: 0, end: 0 };
    const fault =
      targets.refusal(job, compiled.sources.keys()) ??
      deliver(host, targets.of(job), Buffer.from(text, 'utf8'), span);
    if (fault) reporter.report([fault], NO_SOURCES);
    else this.written.push(targets.of(job));
    return !fault;
  }

  finish(): void {
    const written = this.written.filter(({ path }) => path !== null);
    if (written.length === 0) return;
    const folder = sharedFolder(this.host, written);
    const what =
      written.length === 1 ? written[0]!.name : `${written.length} files${folder ? ` in ${folder}` : ''}`;
    this.reporter.say(`wrote ${what}`);
  }
}

/** What is exported must not tell where on a disk it was made. */
function jsonOf(solved: SolvedShot, { diagnostics, sources }: Compiled, options: ExportOptions): string {
  const name = (file: string) => basename(file);
  return jsonText(
    toJson(
      solved,
      diagnostics.map((one) => ({ ...one, span: { ...one.span, file: name(one.span.file) } })),
      // Of two files with one name the cut's own stands: texts of other cuts come last.
      new Map([...sources].reverse().map(([file, source]) => [name(file), source])),
      options,
    ),
  );
}
