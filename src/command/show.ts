/** The sheet in the terminal. A view, like that of a pager: what is wrong with a cut is told under it, and is no failure of the command. */

import { basename, join, resolve } from 'node:path';
import type { Command } from 'commander';
import { UsageError } from '../build/usage-error.js';
import { NO_SOURCES } from '../episode/batch.js';
import { type Compiled, compile } from '../episode/compile-cut.js';
import { type EpisodeCache, newEpisodeCache } from '../episode/episode.js';
import { episodeOf, findCuts, type Job } from '../episode/find-cuts.js';
import type { Host } from '../host/host.js';
import type { Code } from '../language/catalogue/index.js';
import { messageOf, reportTexts } from '../language/message.js';
import { lines, placeAt } from '../language/source.js';
import { nearest } from '../language/suggest.js';
import { type UserLanguage, userLanguage } from '../language/user-language.js';
import { hanging } from '../layout/text-table.js';
import {
  NARROWEST_TERMINAL,
  TERMINAL_LEGEND,
  type TerminalLook,
  terminalSheet,
} from '../sheet/terminal/terminal-sheet.js';
import { LABELS, type LabelLanguage } from '../words/labels.js';
import { type CommandContext, choice, examples } from './command-options.js';
import { ConsoleReporter } from './console-reporter.js';
import { type SheetPlace, sheetRange } from './sheet-places.js';

interface Options {
  readonly from?: string;
  readonly to?: string;
  readonly every?: string;
  readonly levels?: string;
  readonly width?: string;
  readonly labels?: LabelLanguage;
  readonly home?: string;
  readonly legend?: boolean;
}

/** Where nothing says how wide the terminal is. */
const USUAL_WIDTH = 80;
const WIDEST = 1000;

export function define(command: Command, context: CommandContext): Command {
  return command
    .argument('<files...>', 'cuts, folders or an episode.yaml; - is standard input')
    .option('--from <time>', "the first frame: 37, 1+12 (seconds + frames) or 2'08 (feet)")
    .option('--to <time>', 'the last frame')
    .option('--every <frames>', 'only every so many frames: what is seen on each of them')
    .option('--levels <names>', 'only these levels, as A,B')
    .option('--width <columns>', 'how wide; otherwise as wide as the terminal, or 80')
    .addOption(choice('-l, --labels <language>', 'language of the words on the sheet', LABELS))
    .option('--home <folder>', 'read each cut as if it lay in this folder, with its episode')
    .option('--legend', 'say what the marks mean')
    .addHelpText(
      'after',
      `${examples(
        ['cutwright show c012.cut', 'the sheet, one row a frame'],
        ['cutwright show c012.cut --from 1+0 --to 2+12', 'a piece of it'],
        ['cutwright show c012.cut --every 2 --levels A', 'what level A shows on every second frame'],
        ['cutwright show episode.yaml --every 6', 'a whole episode, four rows a second'],
        ['cutwright show - < c012.cut', 'from standard input'],
        [
          'git config diff.cut.textconv "cutwright show --home cuts"',
          'see sheets in git log -p and git diff,',
        ],
        ["echo '*.cut diff=cut' >> .gitattributes", '  for all cuts'],
      )}\nMarks:\n${TERMINAL_LEGEND.map((line) => `  ${line}`).join('\n')}\n`,
    )
    .action(async (files: string[], options: Options) => {
      context.status = await show(context, files, options);
    });
}

async function show(
  { host, help: texts }: CommandContext,
  files: readonly string[],
  options: Options,
): Promise<number> {
  const width = whole('--width', options.width, NARROWEST_TERMINAL, WIDEST) ?? host.columns ?? USUAL_WIDTH;
  const choices: Choices = {
    language: userLanguage(host),
    width: Math.max(NARROWEST_TERMINAL, Math.min(WIDEST, width)),
    // What goes into a file or to git is compared line by line.
    beside: options.width === undefined && host.outputIsTerminal,
    labels: options.labels,
    every: whole('--every', options.every, 1, 100_000),
    ...sheetRange(options),
    levels: options.levels?.split(',').map((name) => name.normalize('NFKC').trim()),
  };
  const { from } = choices;
  const reporter = new ConsoleReporter(host, 'human', false);
  const found = await findCuts(host, files);
  reporter.report(found.diagnostics, new Map(found.episodes.map(({ file, text }) => [file!, text])));
  const home = options.home === undefined ? null : resolve(host.cwd, options.home);
  if (home !== null && host.kind(home) !== 'folder')
    throw new UsageError('option-value', options.home!, { variant: 'home-missing' });
  const cache = newEpisodeCache();
  const known = new Set<string>();
  const shown: string[][] = [];
  let reached = false;
  let longest = 0;
  for (const job of found.jobs) {
    const compiled = await compiledAt(host, job, home, cache);
    const unread = compiled.diagnostics.filter(
      ({ code, span }) => UNREAD.has(code) && span.file === job.name,
    );
    reporter.report(unread, NO_SOURCES);
    if (unread.length > 0) continue;
    const { fps, length } = compiled.solved?.shot ?? { fps: 1, length: Number.POSITIVE_INFINITY };
    longest = Math.max(longest, length);
    reached ||= (from?.(fps) ?? 1) <= length;
    for (const { name } of compiled.solved?.levels ?? []) known.add(name);
    shown.push(sheetOf(compiled, job, choices));
  }
  const stranger = choices.levels?.find((name) => !known.has(name));
  if (stranger !== undefined && known.size > 0) {
    const guess = nearest(stranger, [...known]) ?? null;
    throw new UsageError('option-value', options.levels!, {
      variant: 'level-not-shown',
      level: stranger,
      guess,
    });
  }
  if (shown.length > 0 && !reached)
    throw new UsageError('option-value', options.from!, {
      variant: 'from-behind-end',
      from: options.from!,
      sheets: shown.length,
      frames: longest,
    });
  if (options.legend) shown.push(TERMINAL_LEGEND.map((line) => texts?.lines[`  ${line}`]?.slice(2) ?? line));
  for (const [i, sheet] of shown.entries()) host.out(`${i > 0 ? '\n' : ''}${sheet.join('\n')}\n`);
  return reporter.finish();
}

/** A file that cannot be read is no version of a cut with a fault in its text. */
const UNREAD: ReadonlySet<Code> = new Set<Code>(['file-unreadable', 'file-missing']);

interface Choices {
  readonly language: UserLanguage;
  readonly width: number;
  readonly beside: boolean;
  readonly labels: LabelLanguage | undefined;
  readonly every: number | undefined;
  readonly from: SheetPlace | undefined;
  readonly to: SheetPlace | undefined;
  readonly levels: readonly string[] | undefined;
}

async function compiledAt(host: Host, job: Job, home: string | null, cache: EpisodeCache): Promise<Compiled> {
  const { path, name } = job;
  const bytes = path === null ? await host.standardInput() : undefined;
  if (home === null) return compile(host, path, job.episode, { name, cache, ...(bytes ? { bytes } : {}) });
  const read = bytes ? ({ ok: true, value: bytes } as const) : host.read(path!);
  // What cannot be read is told as ever.
  if (!read.ok) return compile(host, path, job.episode, { name, cache });
  const episode = await episodeOf(host, home);
  return compile(host, join(home, basename(path ?? '-')), episode, { name, cache, bytes: read.value });
}

/** Where there is no sheet to show, the text itself. */
function sheetOf(compiled: Compiled, { name }: Job, choices: Choices): string[] {
  const { solved, house, sources } = compiled;
  const text = (sources.get(name) ?? '').replace(/\r\n?/g, '\n').replace(/\n$/, '').split('\n');
  if (house) return text;
  if (!solved) return [...problems(compiled, name, choices), ...text];
  const { fps, settings } = solved.shot;
  const { neighbours, lent } = compiled.surroundings;
  const look: TerminalLook = {
    width: choices.width,
    beside: choices.beside,
    labels: choices.labels ?? settings.labels,
    from: choices.from?.(fps),
    to: choices.to?.(fps),
    every: choices.every,
    shows: choices.levels && ((level) => choices.levels!.includes(level)),
    neighbours,
    lent,
  };
  return [...terminalSheet(solved, look), ...problems(compiled, name, choices)];
}

/** Errors and warnings, a line each. The name of the cut's own file is left out: git gives another one each time. */
function problems({ diagnostics, sources }: Compiled, own: string, { width, language }: Choices): string[] {
  return diagnostics
    .filter(({ severity }) => severity !== 'hint')
    .flatMap((one) => {
      const { severity, code, span } = one;
      const { line, column } = placeAt(lines(sources.get(span.file) ?? ''), span.start);
      const place = `${span.file === own ? '' : `${span.file}:`}${line}:${column}`;
      const said = `${reportTexts(language).severity[severity]}: ${messageOf(one, language)}`;
      return hanging(`! ${place}: ${said} (${code})`, width, 4);
    });
}

function whole(flag: string, text: string | undefined, least: number, most: number): number | undefined {
  if (text === undefined) return undefined;
  const number = /^\d{1,6}$/.test(text) ? Number(text) : Number.NaN;
  if (number >= least && number <= most) return number;
  throw new UsageError('option-value', text, { variant: 'whole', option: flag, least, most });
}
