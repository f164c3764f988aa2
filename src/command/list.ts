import { extname, resolve } from 'node:path';
import type { Command } from 'commander';
import { type CutList, cutList, type ListOf } from '../count/list.js';
import { type CutRow, cutRow, type PageCounts, uncountedRow } from '../count/row.js';
import type { Compiled } from '../episode/compile.js';
import type { Episode } from '../episode/episode.js';
import type { Found, Job } from '../episode/find.js';
import { hasErrors } from '../episode/order.js';
import type { Shelf } from '../episode/shelf.js';
import { digest } from '../episode/stamp.js';
import { cutListCsv, cutListJson } from '../export/cut-list.js';
import type { Host } from '../host/host.js';
import { type Diagnostic, diagnose } from '../language/diagnostic.js';
import type { Tree } from '../language/tree.js';
import { shortMoves } from '../sheet/camera/short.js';
import type { Look } from '../sheet/look.js';
import type { SolvedShot } from '../solve/solved.js';
import { eachCut, filesOr, findAll } from './batch.js';
import { Desk, isWrongUse, NO_SOURCES, plural } from './desk.js';
import { COMMAND_LINE, LineFault } from './line.js';
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
import { deliver, inputsOf, overwriting, STANDARD_OUTPUT, type Target } from './output.js';
import type { Press } from './press.js';
import type { Run } from './run.js';

/** Parts of the printed list. */
const PARTS = ['cuts', 'rhythm'] as const;
type Part = (typeof PARTS)[number];

interface Options extends ReportOptions, LookOptions {
  readonly output?: string;
  readonly csv?: boolean;
  readonly json?: boolean;
  readonly only?: Part;
  readonly check?: boolean;
}

export function define(command: Command, run: Run): Command {
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
    .option('--check', 'an error when the cuts run longer than the budget; prints no table');
  return withReport(withLooks(command))
    .addHelpText(
      'after',
      examples(
        ['cutwright list', 'the cuts of the episode that this folder lies in, as a table'],
        ['cutwright list --output list.pdf', 'the list and the picture of the whole episode, to print'],
        ['cutwright list --output a3.pdf --only rhythm -p A3', 'the picture alone, on A3'],
        ['cutwright list --csv > cuts.csv', 'for a spreadsheet'],
        ['cutwright list episode.yaml --check', 'for scripts: fails when it runs over its budget'],
      ),
    )
    .action(async (files: string[], options: Options) => {
      run.status = await list(run.host, files, options);
    });
}

type Form = 'table' | 'csv' | 'json' | 'pdf' | 'nothing';

async function list(host: Host, files: readonly string[], options: Options): Promise<number> {
  const form = formOf(options);
  const desk = new Desk(host, options.format, options.strict === true);
  const found = await findAll(host, desk, await filesOr(host, files, 'list'), looks(options));
  if (found.jobs.length === 0) return desk.finish();
  const episode = theEpisode(found);
  checkRows(options, episode.settings);
  const target = targetOf(host, found, options);
  const { press, rows, digests } = await rowsOf(host, desk, found, options, form);
  const counted = cutList(rows, listOf(found, episode));
  if (rows.length === 0) {
    const span = { file: found.jobs[0]!.name, start: 0, end: 0 };
    const words = 'This file only holds what other cuts use; there is nothing to list.';
    desk.report([diagnose('no-cuts', span, words)], NO_SOURCES);
    return desk.finish();
  }
  if (options.check) checkBudget(desk, counted, episode);
  if (form === 'pdf') {
    const commit = host.commit(episode.folder ?? host.cwd);
    const hash = digest(digests, episode.settings, []);
    const look = {
      settings: episode.settings,
      metrics: press.fonts.metrics,
      stamp: commit ? `${hash} · ${commit}` : hash,
    };
    const { bytes, pages } = await printed(press, counted, look, options.only);
    put(host, target, bytes);
    desk.say(`wrote ${target.name}: ${plural(pages, 'page')}`);
  } else if (form === 'csv' || form === 'json') {
    put(host, target, Buffer.from(form === 'csv' ? cutListCsv(counted) : cutListJson(counted), 'utf8'));
    if (target.path !== null) desk.say(`wrote ${target.name}: ${plural(rows.length, 'cut')}`);
  } else {
    const { againstBudget, listTable } = await import('./list-table.js');
    if (form === 'table') host.out(listTable(counted, host.columns));
    else {
      const { totals, budget, fps } = counted;
      desk.say(`${plural(totals.cuts, 'cut')}, ${runs(counted)}${againstBudget(totals.over, budget, fps)}`);
    }
  }
  return desk.finish();
}

/** What comes out; an ending of the file says it, too. */
function formOf({ output, csv, json, only, check }: Options): Form {
  if (csv && json)
    throw new LineFault('wrong-arguments', '--json', '`--csv` and `--json` do not go together.');
  const said = csv ? 'csv' : json ? 'json' : null;
  const ending = output === undefined || output === '-' ? null : extname(output).toLowerCase();
  const meant =
    ending === null
      ? null
      : { '.pdf': 'pdf' as const, '.csv': 'csv' as const, '.json': 'json' as const }[ending];
  if (ending !== null && meant === undefined && said === null)
    throw new LineFault(
      'option-value',
      output!,
      '`--output` takes a file whose name ends in .pdf, .csv or .json.',
    );
  if (said !== null && meant === 'pdf')
    throw new LineFault('wrong-arguments', output!, `\`--${said}\` does not go into a PDF.`);
  const form = said ?? meant ?? (output === '-' ? 'pdf' : check ? 'nothing' : 'table');
  if (only !== undefined && form !== 'pdf')
    throw new LineFault(
      'wrong-arguments',
      only,
      '`--only` says what to print; give `--output` a name that ends in .pdf.',
    );
  return form;
}

/** The one episode that all cuts belong to. */
function theEpisode({ jobs }: Found): Episode {
  const episodes = [...new Map(jobs.map(({ episode }) => [episode.file, episode])).values()];
  if (episodes.length > 1) {
    const names = episodes.map(({ file }) => (file === null ? 'none' : `\`${file}\``)).join(', ');
    throw new LineFault(
      'wrong-arguments',
      null,
      `A list is of one episode, and these cuts belong to ${episodes.length}: ${names}.`,
    );
  }
  return episodes[0]!;
}

function targetOf(host: Host, found: Found, { output }: Options): Target {
  if (output === undefined || output === '-') return STANDARD_OUTPUT;
  const path = resolve(host.cwd, output);
  const inputs = inputsOf(host, found);
  const span = { file: COMMAND_LINE, start: 0, end: 0 };
  const refused = overwriting(host, path, output, span, (real) => inputs.has(real));
  if (refused) throw new LineFault(refused.code, output, refused.message);
  return { path, name: output };
}

function put(host: Host, target: Target, bytes: Uint8Array): void {
  const fault = deliver(host, target, bytes, { file: COMMAND_LINE, start: 0, end: 0 });
  if (fault) throw new LineFault(fault.code, target.name, fault.message);
}

/** A budget is that of the whole episode, and says nothing of some of its cuts. */
function listOf({ whole }: Found, episode: Episode): ListOf {
  const { title, episode: number, fps, overlap } = episode.settings;
  const all = whole.some(({ file }) => file === episode.file);
  return { title, episode: number, fps, overlap, budget: all ? episode.budgetFrames : null };
}

interface Rows {
  readonly press: Press;
  readonly rows: readonly CutRow[];
  /** Of the texts, in the order of the rows. */
  readonly digests: readonly string[];
}

/** Counts cut after cut. What is wrong in a cut is counted, and told in one sentence. */
async function rowsOf(host: Host, desk: Desk, found: Found, options: Options, form: Form): Promise<Rows> {
  const { Press } = await import('./press.js');
  const press = Press.open(host);
  const strict = options.strict === true;
  const rows = new Map<Job, CutRow>();
  const digests = new Map<Job, string>();
  const houses = new Set<Job>();
  let met: Diagnostic[] = [];
  const counting = {
    report(diagnostics: readonly Diagnostic[], sources: ReadonlyMap<string, string>): void {
      met.push(...diagnostics.filter(({ code }) => code !== 'internal-fault'));
      // Not the fault of a text, and nothing that `check` would say better.
      desk.report(diagnostics.filter(told), sources);
    },
  };
  const told = ({ code, span }: Diagnostic): boolean =>
    isWrongUse(code) || found.episodes.some(({ file }) => file === span.file);
  await eachCut(host, counting, found, async (compiled, job, shelf) => {
    const own = met.filter(({ span }) => span.file !== job.episode.file);
    met = [];
    if (compiled.house) {
      houses.add(job);
      return;
    }
    rows.set(job, await rowOf(host, press, { compiled, job, shelf, own, strict, form }));
    digests.set(job, compiled.digest);
    if (hasErrors(own, strict) && !own.some(({ code }) => isWrongUse(code)))
      desk.report([withErrors(job, rows.get(job)!, strict)], NO_SOURCES);
  });
  // A cut on which the program itself has failed was told of, and is still one of the episode.
  const jobs = found.jobs.filter((job) => !houses.has(job));
  const failed = (job: Job): CutRow =>
    uncountedRow(
      { cut: stem(job), title: '', scene: '', artists: [] },
      { file: job.name, problems: { errors: 1, warnings: 0 } },
    );
  return {
    press,
    rows: jobs.map((job) => rows.get(job) ?? failed(job)),
    digests: jobs.map((job) => digests.get(job) ?? ''),
  };
}

interface Met {
  readonly compiled: Compiled;
  readonly job: Job;
  readonly shelf: Shelf;
  /** What is wrong in the cut and what it uses, without the manifest. */
  readonly own: readonly Diagnostic[];
  readonly strict: boolean;
  readonly form: Form;
}

async function rowOf(
  host: Host,
  press: Press,
  { compiled, job, shelf, own, strict, form }: Met,
): Promise<CutRow> {
  const of = (severity: string): number => own.filter((one) => one.severity === severity).length;
  const problems = { errors: of('error'), warnings: of('warning') };
  const file = job.name;
  const { solved, tree } = compiled;
  if (!solved) return uncountedRow(namesIn(tree, job), { file, problems });
  const sound = !hasErrors(own, strict);
  const pages = sound ? await pagesOf(press, { host, job, compiled, solved, shelf }) : null;
  const moves = shortMoves(solved, form === 'pdf' ? job.episode.settings.labels : 'en');
  return cutRow(solved, { file, problems, sound, pages, moves });
}

/** What `build` would print of it. */
async function pagesOf(
  press: Press,
  told: { host: Host; job: Job; compiled: Compiled; solved: SolvedShot; shelf: Shelf },
): Promise<PageCounts> {
  const { pageCount, printedCut } = await import('./document.js');
  const printed = printedCut(told.solved, press.set(told).look);
  const sheet = printed.parts.flatMap(({ pages }) => pages).filter(({ part }) => part === 'sheet').length;
  return { sheet, all: pageCount(printed) };
}

/** Whatever can still be read of a cut that cannot be bound. */
function namesIn(tree: Tree | null, job: Job): Pick<CutRow, 'cut' | 'title' | 'scene' | 'artists'> {
  const names = { cut: stem(job), title: '', scene: '', artists: [] as string[] };
  for (const statement of tree?.statements ?? []) {
    if (statement.kind === 'cut') {
      names.cut = statement.number.text;
      names.title = statement.title?.text ?? '';
    } else if (statement.kind === 'artist') names.artists.push(statement.name.text);
  }
  return names;
}

function stem({ name }: Job): string {
  return name.replace(/^.*[/\\]/, '').replace(/\.cut$/, '');
}

function withErrors(job: Job, { cut, problems, counted }: CutRow, strict: boolean): Diagnostic {
  const { errors, warnings } = problems;
  const count = [
    errors > 0 ? plural(errors, 'error') : '',
    strict && warnings > 0 ? plural(warnings, 'warning') : '',
  ];
  const missing = counted === null ? 'not even its time is known' : 'its figures may change';
  return diagnose(
    'list-cut-errors',
    { file: job.name, start: 0, end: 0 },
    `Cut ${cut} has ${count.filter(Boolean).join(' and ')}, so ${missing}; \`cutwright check ${job.path === null ? '-' : job.name}\` says what is wrong.`,
  );
}

const runs = ({ totals, fps }: CutList): string => {
  const least = totals.untimed > 0 ? 'at least ' : '';
  return `running time ${least}${Math.floor(totals.running / fps)}+${totals.running % fps}`;
};

function checkBudget(desk: Desk, counted: CutList, { file, text, budgetSpan }: Episode): void {
  const { totals, fps, budget: frames } = counted;
  if (frames === null || totals.over === null || totals.over <= 0) return;
  const length = (count: number): string => `${Math.floor(count / fps)}+${count % fps}`;
  const span = budgetSpan ?? { file: file!, start: 0, end: 0 };
  const words = `The cuts run ${totals.untimed > 0 ? 'at least ' : ''}${length(totals.running)}, which is ${length(totals.over)} (${plural(totals.over, 'frame')}) over the budget of ${length(frames)}.`;
  desk.report([diagnose('list-over-budget', span, words)], new Map([[file!, text]]));
}

async function printed(
  press: Press,
  counted: CutList,
  look: Look,
  only: Part | undefined,
): Promise<{ bytes: Uint8Array; pages: number }> {
  const { listDocument } = await import('./list-document.js');
  const document = listDocument(counted, look, only);
  return { bytes: await press.print(document), pages: document.pages.length };
}
