/** What several commands take, said once. */

import { type Argument, type Command, Option } from 'commander';
import { UsageError } from '../build/usage-error.js';
import { rowsFault } from '../episode/episode.js';
import { episodeOf } from '../episode/find-cuts.js';
import type { Host } from '../host/host.js';
import { nearest } from '../language/suggest.js';
import { LENGTH_UNITS, PAPERS, type Settings } from '../shot/settings.js';
import { LABELS } from '../words/labels.js';
import { FORMATS, type Format } from './console-reporter.js';
import type { HelpTexts } from './help-language.js';

export interface ReportOptions {
  readonly format: Format;
  readonly strict?: boolean;
}

/** `--format`, `--strict`. */
export function withReport(command: Command): Command {
  return command
    .addOption(
      choice('--format <form>', 'how problems are shown on standard error', FORMATS).default('human'),
    )
    .option('--strict', 'count warnings as errors');
}

export interface JobsOption {
  readonly jobs?: number;
}

/** More threads than any machine has processors for. */
const MOST_JOBS = 64;

/** `--jobs`. */
export function withJobs(command: Command): Command {
  return command.option(
    '-j, --jobs <number>',
    'how many threads share the cuts; otherwise as many as are worth it on this machine',
    (typed) => {
      const number = /^\d{1,2}$/.test(typed) ? Number(typed) : 0;
      if (number < 1 || number > MOST_JOBS)
        throw new UsageError('option-value', typed, { variant: 'jobs', most: MOST_JOBS });
      return number;
    },
  );
}

export interface LookOptions {
  readonly convention?: Settings['convention'];
  readonly labels?: Settings['labels'];
  readonly paper?: Settings['paper'];
  readonly rows?: string;
  readonly lengths?: Settings['lengths'];
}

/** `--convention`, `--labels`, `--paper`, `--rows`, `--lengths`: they overrule the episode. */
export function withLooks(command: Command): Command {
  return command
    .addOption(choice('-c, --convention <word>', 'whose form of sheet', ['japan', 'west']))
    .addOption(choice('-l, --labels <language>', 'language of the printed form', LABELS))
    .addOption(
      choice(
        '-p, --paper <size>',
        'paper to print on; B4 and B5 are the JIS sizes, C4 and kaku2 envelopes',
        PAPERS,
      ),
    )
    .option('-r, --rows <number>', 'rows a page: whole seconds in Japan, whole feet in the west')
    .addOption(choice('--lengths <unit>', 'how lengths on charts are printed', LENGTH_UNITS));
}

/** The settings that a command line says. `rows` is checked against the convention by `checkRows`. */
export function looks(options: LookOptions): Partial<Settings> {
  const { convention, labels, paper, rows, lengths } = options;
  if (rows !== undefined && !/^\d{1,4}$/.test(rows)) {
    throw new UsageError('option-value', rows, { variant: 'rows-number' });
  }
  return {
    ...(convention ? { convention } : {}),
    ...(labels ? { labels } : {}),
    ...(paper ? { paper } : {}),
    ...(rows ? { rows: Number(rows) } : {}),
    ...(lengths ? { lengths } : {}),
  };
}

/** Refuses `--rows` where it is no whole number of seconds or feet of the sheets that would be printed. */
export function checkRows(options: LookOptions, settings: Settings): void {
  if (options.rows === undefined || settings.rows === null) return;
  const fault = rowsFault(settings.rows, settings);
  if (fault)
    throw new UsageError('option-value', options.rows, { variant: 'rows', rows: options.rows, fault });
}

const chosen = new WeakMap<Option, readonly string[]>();

/** The words that an option made by `choice` takes; undefined for any other. */
export function choicesOf(option: Option): readonly string[] | undefined {
  return chosen.get(option);
}

const suggested = new WeakMap<Argument, () => readonly string[]>();

/** Words that a shell completes an argument with; others may stand there as well. They are asked for only by the completion scripts. */
export function suggest(argument: Argument, words: () => readonly string[]): Argument {
  suggested.set(argument, words);
  return argument;
}

/** The words that an argument takes or that are suggested for it; null for any other. */
export function wordsOfArgument(argument: Argument): readonly string[] | null {
  return argument.argChoices ?? suggested.get(argument)?.() ?? null;
}

/** An option that takes one of a few words, with a guess for a misspelt one. */
export function choice(flags: string, description: string, words: readonly string[]): Option {
  const option = new Option(flags, `${description}: ${words.join(', ')}`);
  chosen.set(option, words);
  return option.argParser((word: string) => {
    // Nobody should have to remember that it is A4 but legal.
    const known = words.find((one) => one.toLowerCase() === word.toLowerCase());
    if (known !== undefined) return known;
    const offer = nearest(word, words);
    throw new UsageError(
      'option-value',
      word,
      { variant: 'choice', option: option.long!, words, guess: offer ?? null },
      offer,
    );
  });
}

/** Lines of example under a command's help. */
export function examples(...lines: readonly (readonly [string, string])[]): string {
  const width = Math.max(...lines.map(([line]) => line.length));
  return `\nExamples:\n${lines.map(([line, what]) => `  ${line.padEnd(width)}   ${what}`).join('\n')}\n`;
}

/** One call of the program: the world that it runs in, and the status that it leaves with. */
export interface CommandContext {
  readonly host: Host;
  status: number;
  /** The help in another language than English; null where it is English, or not shown. */
  readonly help: HelpTexts | null;
  /** Every command of the program with its options, made when it is asked for. */
  readonly commands: () => Promise<readonly Command[]>;
}

/**
 * The files that a command line names; without any, the episode that the current folder lies in. Throws UsageError where there
 * is none.
 */
export async function filesOr(
  host: Host,
  files: readonly string[],
  command: string,
): Promise<readonly string[]> {
  if (files.length > 0) return files;
  const { file } = await episodeOf(host, host.cwd);
  if (file !== null) return [file];
  throw new UsageError('wrong-arguments', null, { variant: 'no-episode', command: `cutwright ${command}` });
}

/**
 * A command that the user can type next, from the folder in which this one was called: with `npx` before it where this one was
 * called so, since the program may then be found in no other way. Words that a shell would take apart stand in quotes.
 */
export function nextCommand(host: Host, ...words: readonly string[]): string {
  const program = host.env('npm_command') === 'exec' ? 'npx cutwright' : 'cutwright';
  return [program, ...words.map((word) => (/^[\p{L}\p{N}_./:@,-]+$/u.test(word) ? word : `"${word}"`))].join(
    ' ',
  );
}
