import { basename, dirname, join, normalize, resolve } from 'node:path';
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
import { CsvTable, TABLES, type TableName, toCsv } from '../export/cut-csv.js';
import { type ExportOptions, jsonText, shapeFault, toJson } from '../export/cut-json.js';
import { edlText } from '../export/edit-decision-list.js';
import { type EpisodeEdit, editOf, type Handed } from '../export/episode-edit.js';
import { otioText } from '../export/otio.js';
import type { Host } from '../host/host.js';
import { type Diagnostic, diagnose, hasErrors } from '../language/diagnostic.js';
import type { Shot } from '../shot/shot.js';
import { secondsAndFrames } from '../shot/time-notation.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import { type CommandContext, choice, examples, type ReportOptions, withReport } from './command-options.js';
import { ConsoleReporter } from './console-reporter.js';

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
      choice(
        '-e, --edit <form>',
        'the edit of an episode, OpenTimelineIO or an edit decision list',
        EDIT_FORMS,
      ),
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
        [
          'cutwright export c012.cut -t sheet -o c012.csv',
          'the sheet for a spreadsheet or a script, one row a frame',
        ],
        ['cutwright export cuts/ --output json/', 'a JSON file for each cut'],
        ['cutwright export episode.yaml --edit otio -o ep03.otio', 'the edit: one clip a cut, overlaps'],
        ['cutwright export episode.yaml --edit edl --start 10:00:00:00', 'the edit as an edit decision list'],
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
    if (pixels || table === 'sheet') checkShape(reporter, solved.shot, compiled, shapes);
    if (exporter.cut(solved, compiled, job)) failed -= 1;
  });
  exporter.finish();
  if (failed > 0) reporter.say(reporter.words.notExported(failed, reporter.tally()));
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
  private readonly csv: CsvTable;
  private cuts = 0;
  private readonly target: Target;

  constructor(
    private readonly host: Host,
    private readonly reporter: Reporter,
    found: Found,
    private readonly table: TableName,
    output: string,
    options: ExportOptions,
  ) {
    this.csv = new CsvTable(table, options);
    this.target = output === '-' ? STANDARD_OUTPUT : { path: resolve(host.cwd, output), name: output };
    if (this.target.path === null) return;
    const inputs = inputsOf(host, found);
    const span = { file: COMMAND_LINE, start: 0, end: 0 };
    const refused = overwriting(host, this.target.path, output, span, (real) => inputs.has(real));
    if (refused) throw new UsageError(refused.code, output, refused.parameters);
  }

  cut(solved: SolvedShot): boolean {
    this.csv.add(solved);
    this.cuts += 1;
    return true;
  }

  finish(): void {
    const { host, reporter, cuts, csv, target } = this;
    if (cuts === 0) return;
    const bytes = Buffer.from(csv.text, 'utf8');
    const fault = deliver(host, target, bytes, { file: COMMAND_LINE, start: 0, end: 0 });
    if (fault) throw new UsageError(fault.code, target.name, fault.parameters);
    if (target.path !== null)
      reporter.say(reporter.words.wrote(target.name, reporter.words.tableOf(this.table, cuts)));
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
    const { words } = this.reporter;
    const folder = sharedFolder(this.host, written);
    this.reporter.say(
      written.length === 1
        ? words.wrote(written[0]!.name)
        : words.wroteFiles(written.length, null, folder || null),
    );
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

// ---- `export --edit`: all cuts of a run as one edit

/** A writer gives the text, or says why the form cannot hold the edit. */
type Write = (
  edit: EpisodeEdit,
  start: number,
) => { text: string | null; diagnostics: readonly Diagnostic[] };

const forms = {
  otio: (edit, start) => ({ text: otioText(edit, start), diagnostics: [] }),
  edl: edlText,
} satisfies Record<string, Write>;

type EditForm = keyof typeof forms;
const EDIT_FORMS = Object.keys(forms) as readonly EditForm[];

interface EditOptions extends ReportOptions {
  readonly form: EditForm;
  readonly start?: string | undefined;
  readonly output?: string;
}

/**
 * Writes the edit of all cuts in their order. A cut with errors is none that could be left out: without it all that follows would stand
 * at a wrong time, so then nothing is written.
 */
async function exportEdit(
  host: Host,
  files: readonly string[],
  { form, start = '00:00:00:00', output = '-', format, strict = false }: EditOptions,
): Promise<number> {
  const reporter = new ConsoleReporter(host, format, strict);
  if (!/^\d\d:\d\d:\d\d:\d\d$/.test(start)) throw wrongStart(start);
  const found = await findAll(host, reporter, files);
  const target = targetOf(host, found, form, output);
  const cuts: Handed[] = [];
  const sources = new Map<string, string>();
  let failed = 0;
  await eachCut(host, reporter, found, (compiled) => {
    if (compiled.house) return;
    const { solved, diagnostics } = compiled;
    failed += 1;
    if (solved === null || hasErrors(diagnostics, strict)) return;
    failed -= 1;
    cuts.push({ shot: solved.shot, counts: solved.counts });
    for (const [name, text] of compiled.sources) sources.set(name, text);
  });
  const broken = [...found.diagnostics, ...found.whole.flatMap((one) => one.diagnostics)];
  if (failed > 0 || cuts.length === 0 || hasErrors(broken, strict)) {
    reporter.say(reporter.words.noEdit(failed, reporter.tally()));
    return reporter.finish();
  }
  const { edit, diagnostics } = editOf(cuts, nameOf(host, found));
  reporter.report(diagnostics, sources);
  const made = edit && forms[form](edit, startFrame(start, edit.fps));
  if (made) reporter.report(made.diagnostics, sources);
  if (!edit || made?.text == null) {
    reporter.say(reporter.words.noEdit(0, reporter.tally()));
    return reporter.finish();
  }
  const span = { file: COMMAND_LINE, start: 0, end: 0 };
  const fault = deliver(host, target, Buffer.from(made.text, 'utf8'), span);
  if (fault) throw new UsageError(fault.code, target.name, fault.parameters);
  if (target.path !== null) {
    reporter.say(
      reporter.words.wrote(
        target.name,
        `${reporter.words.cuts(cuts.length)}, ${secondsAndFrames(edit.frames, edit.fps)}`,
      ),
    );
  }
  return reporter.finish();
}

const wrongStart = (start: string): UsageError =>
  new UsageError('option-value', start, { variant: 'start-time' });

function startFrame(start: string, fps: number): number {
  const [hours, minutes, seconds, frames] = start.split(':').map(Number) as [number, number, number, number];
  if (hours > 23 || minutes > 59 || seconds > 59) throw wrongStart(start);
  if (frames >= fps) throw new UsageError('option-value', start, { variant: 'start-frames', fps });
  return ((hours * 60 + minutes) * 60 + seconds) * fps + frames;
}

/** One file; in a folder it is called as the episode's folder is. */
function targetOf(host: Host, found: Found, form: EditForm, output: string): Target {
  const episodes = new Set(found.jobs.map(({ episode }) => episode.file));
  if (episodes.size > 1) {
    throw new UsageError('wrong-arguments', null, { variant: 'edit-episodes', episodes: episodes.size });
  }
  if (output === '-') return STANDARD_OUTPUT;
  const name = isFolder(host, output) ? join(output, `${nameOf(host, found)}.${form}`) : output;
  const target = { path: resolve(host.cwd, name), name: normalize(name) };
  const inputs = inputsOf(host, found);
  const span = { file: COMMAND_LINE, start: 0, end: 0 };
  const refused = overwriting(host, target.path, output, span, (real) => inputs.has(real));
  if (refused) throw new UsageError(refused.code, output, refused.parameters);
  return target;
}

/** What an edit is called whose episode has no title: as its folder. */
function nameOf({ cwd }: Host, { jobs: [first] }: Found): string {
  const folder = first?.episode.folder ?? (first?.path ? dirname(first.path) : cwd);
  return basename(folder) || 'edit';
}
