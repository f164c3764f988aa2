import type { Command } from 'commander';
import { countCuts } from '../build/cut-counts.js';
import { UsageError } from '../build/usage-error.js';
import { type ProducedCut, type ProgressTable, progressTable } from '../count/count-stages.js';
import { STAGE_STATES } from '../count/stage-states.js';
import { findAll, NO_SOURCES } from '../episode/batch.js';
import { checkProgress } from '../episode/check-progress.js';
import { digest } from '../episode/compile-cut.js';
import { cutKey, type Episode, newEpisodeCache } from '../episode/episode.js';
import { episodeOf, type Found, findCuts } from '../episode/find-cuts.js';
import { isoDay } from '../episode/manifest-stages.js';
import { readProgress } from '../episode/progress-csv.js';
import { storyOf } from '../episode/story.js';
import type { Host } from '../host/host.js';
import { diagnose, hasErrors } from '../language/diagnostic.js';
import { nearest } from '../language/suggest.js';
import {
  type CommandContext,
  checkRows,
  examples,
  filesOr,
  type LookOptions,
  looks,
  type ReportOptions,
  withLooks,
  withReport,
} from './command-options.js';
import { ConsoleReporter } from './console-reporter.js';
import { type ListOutput, listForm, listTarget, putList, theEpisode } from './list-output.js';

interface Options extends ReportOptions, LookOptions, ListOutput {
  readonly by?: string;
  readonly date?: string;
  readonly note?: string;
}

export function define(command: Command, context: CommandContext): Command {
  command
    .usage('[options] [episode]\n       cutwright progress [options] [episode] <cuts> <stage> <state>')
    .argument(
      '[words...]',
      'an episode.yaml or its folder, otherwise the episode that this folder lies in; then, to write a row, cuts such as 12 or 12,13A, a stage of the episode, and started, done or retake',
    )
    .option('--by <person>', 'who did it, in the row that is written')
    .option('--date <day>', 'the day of the row, or the day for which the table holds; otherwise today')
    .option('--note <text>', 'a remark in the row, such as the reason of a retake')
    .option(
      '-o, --output <file>',
      'a file: .pdf prints the table, .csv and .json write it; - is standard output',
    )
    .option('--csv', 'as CSV, a row a cut and stage')
    .option('--json', 'as JSON, with the sums of stages and people');
  return withReport(withLooks(command))
    .addHelpText(
      'after',
      `
What has happened to each cut stands in progress.csv beside episode.yaml, a row each: cut, stage, state, date, person, note. The
stages, the days by which they are due and what is paid for them are those of episode.yaml.
${examples(
  ['cutwright progress', 'where every cut is, what is late, what is to be paid'],
  ['cutwright progress 12 key done --by "L. Quoy"', 'writes a row with the day of today'],
  ['cutwright progress 12,13 layout done --date 2027-03-05', 'a row for each of two cuts, of another day'],
  ['cutwright progress 12 key retake --note "scarf"', 'sends cut 12 back to its keys'],
  ['cutwright progress --output progress.pdf', 'the table on paper'],
  ['cutwright progress --csv --date 2027-03-31', 'as it stood at the end of March, for a spreadsheet'],
)}`,
    )
    .action(async (words: string[], options: Options) => {
      context.status = await progress(context.host, words, options);
    });
}

/** An episode may stand before the other words; a cut's number is none, as long as no file has that name. */
function progress(host: Host, words: readonly string[], options: Options): Promise<number> {
  const ahead = words.length % 3 === 1 && host.kind(resolveName(host, words[0]!)) !== 'none';
  const [files, row] = ahead ? [words.slice(0, 1), words.slice(1)] : [[], words];
  if (row.length === 0) return report(host, files, options);
  if (row.length === 3) return write(host, files, row as [string, string, string], options);
  throw new UsageError('wrong-arguments', words.at(-1)!, { variant: 'progress-words', states: STAGE_STATES });
}

const resolveName = (host: Host, name: string): string =>
  name.startsWith('/') ? name : `${host.cwd}/${name}`;

/** The local day: what people write down happens where they are. */
function today(host: Host, { date }: Options): string {
  if (date === undefined) {
    const now = host.now();
    const two = (value: number): string => String(value).padStart(2, '0');
    return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  }
  const day = isoDay(date);
  if (day === null) throw new UsageError('option-value', date, { variant: 'day', option: '--date' });
  return day;
}

// ---- a row more

async function write(
  host: Host,
  files: readonly string[],
  [cuts, stageWord, stateWord]: [string, string, string],
  options: Options,
): Promise<number> {
  if (options.output !== undefined || options.csv || options.json) {
    const one = options.output !== undefined ? '--output' : options.csv ? '--csv' : '--json';
    throw new UsageError('wrong-arguments', one, { variant: 'not-together', one, other: stateWord });
  }
  const reporter = new ConsoleReporter(host, options.format, options.strict === true);
  const episode = await episodeFor(host, files);
  const sources = new Map([[episode.file!, episode.text]]);
  reporter.report(episode.diagnostics, sources);
  if (hasErrors(episode.diagnostics)) return reporter.finish();
  const { stages } = episode.production;
  const stage = await known('stage', stageWord, stages);
  const state = await known('state', stateWord, STAGE_STATES);
  const date = today(host, options);
  const story = storyOf(host, episode, newEpisodeCache())!;
  const rows = cuts.split(',').map((word) => {
    const found = story.find(word.trim());
    if (found === null || word.trim() === '') {
      const guess =
        nearest(
          word,
          story.cuts().map(({ number }) => number),
        ) ?? null;
      throw new UsageError('option-value', cuts, { variant: 'like-unknown', cut: word, guess });
    }
    const [person, note] = [options.by?.trim() ?? '', options.note?.trim() ?? ''];
    return { cut: found.number.normalize('NFKC'), stage, state, date, person, note };
  });
  const { appendProgress } = await import('../episode/append-progress.js');
  const { written, diagnostics, file } = appendProgress(host, episode, rows);
  reporter.report(diagnostics, new Map([[file.name, file.text]]));
  if (!written) {
    reporter.say(`${file.name}: ${reporter.words.nothingWritten}`);
    return Math.max(1, reporter.finish());
  }
  const { stageNames } = await import('./stage-names.js');
  const names = stageNames(reporter.language);
  for (const row of rows)
    reporter.say(
      reporter.words.rowWritten(file.name, { ...row, stage: names.stage(stage), state: names.state(state) }),
    );
  return reporter.finish();
}

async function known<T extends string>(
  what: 'stage' | 'state',
  word: string,
  words: readonly T[],
): Promise<T> {
  const found = words.find((one) => one === word.normalize('NFKC').toLowerCase() || one === word);
  if (found !== undefined) return found;
  const { guessedWord } = await import('./stage-guess.js');
  const guess = guessedWord(what, word, words);
  throw new UsageError(
    'option-value',
    word,
    { variant: 'progress-word', what, found: word, words, guess },
    guess ?? undefined,
  );
}

async function episodeFor(host: Host, files: readonly string[]): Promise<Episode> {
  if (files.length === 0) {
    const episode = await episodeOf(host, host.cwd);
    if (episode.file !== null) return episode;
  } else {
    const { whole } = await findCuts(host, files);
    if (whole[0]) return whole[0];
  }
  throw new UsageError('wrong-arguments', files[0] ?? null, {
    variant: 'no-episode',
    command: 'cutwright progress',
  });
}

// ---- the table

async function report(host: Host, files: readonly string[], options: Options): Promise<number> {
  for (const option of ['by', 'note'] as const)
    if (options[option] !== undefined)
      throw new UsageError('wrong-arguments', `--${option}`, {
        variant: 'progress-option',
        option: `--${option}`,
      });
  const form = listForm(options) ?? 'table';
  const date = today(host, options);
  const reporter = new ConsoleReporter(host, options.format, options.strict === true);
  const found = await findAll(host, reporter, await filesOr(host, files, 'progress'), looks(options));
  if (found.jobs.length === 0) return reporter.finish();
  const episode = theEpisode(found);
  const file = readProgress(host, episode);
  if (file === null)
    throw new UsageError('wrong-arguments', files[0] ?? null, {
      variant: 'no-episode',
      command: 'cutwright progress',
    });
  checkRows(options, episode.settings);
  const target = listTarget(host, found, options, [file.path]);
  const { rows, digests } = await countCuts(host, reporter, found, {
    language: 'en',
    printer: null,
    strict: options.strict === true,
  });
  if (rows.length === 0) {
    const span = { file: found.jobs[0]!.name, start: 0, end: 0 };
    reporter.report([diagnose('no-cuts', span, { variant: 'shared', for: 'list' })], NO_SOURCES);
    return reporter.finish();
  }
  const numbers = isWhole(found, episode) ? rows.map(({ cut }) => cut) : null;
  reporter.report(
    [...file.diagnostics, ...checkProgress(episode, file.rows, numbers)],
    new Map([
      [file.name, file.text],
      [episode.file!, episode.text],
    ]),
  );
  const cuts = rows.map(
    ({ cut, title, counted, sound }): ProducedCut => ({
      ...{ cut, title, key: cutKey(cut) },
      payable: counted && sound ? counted : null,
    }),
  );
  const table = progressTable(cuts, file.rows, episode.production, date);
  if (form === 'table') {
    const { terminalProgress } = await import('./progress-table.js');
    host.out(terminalProgress(table, host.columns, reporter.language));
  } else if (form === 'pdf') {
    const commit = host.commit(episode.folder ?? host.cwd);
    const hash = digest([...digests, file.text], episode.settings, []);
    const { bytes, pages } = await printed(host, table, episode, commit ? `${hash} · ${commit}` : hash);
    putList(host, target, bytes);
    reporter.say(reporter.words.wrote(target.name, reporter.words.pages(pages)));
  } else {
    const { progressCsv, progressJson } = await import('../export/progress-export.js');
    putList(host, target, Buffer.from(form === 'csv' ? progressCsv(table) : progressJson(table), 'utf8'));
    if (target.path !== null)
      reporter.say(reporter.words.wrote(target.name, reporter.words.cuts(rows.length)));
  }
  return reporter.finish();
}

function isWhole({ whole }: Found, episode: Episode): boolean {
  return whole.some(({ file }) => file === episode.file);
}

async function printed(
  host: Host,
  table: ProgressTable,
  { settings }: Episode,
  stamp: string,
): Promise<{ bytes: Uint8Array; pages: number }> {
  const [{ CutPrinter }, { progressDocument }] = await Promise.all([
    import('../build/cut-printer.js'),
    import('../build/progress-document.js'),
  ]);
  const printer = CutPrinter.open(host);
  const document = progressDocument(table, { settings, metrics: printer.fonts.metrics, stamp });
  return { bytes: await printer.print(document), pages: document.pages.length };
}
