import { join, resolve } from 'node:path';
import type { Command } from 'commander';
import { NO_SOURCES } from '../episode/batch.js';
import { filesOf } from '../episode/file-patterns.js';
import { findCuts } from '../episode/find-cuts.js';
import { decode, readText } from '../episode/read-text.js';
import type { Host } from '../host/host.js';
import { snapshot } from '../host/overlay-host.js';
import { format } from '../language/format/format-text.js';
import { type CommandContext, choice, examples } from './command-options.js';
import { ConsoleReporter, FORMATS, type Format } from './console-reporter.js';
import { bytesOf, printDiff, writeBack } from './rewrite-input.js';

interface Options {
  readonly check?: boolean;
  readonly diff?: boolean;
  readonly format: Format;
}

export function define(command: Command, context: CommandContext): Command {
  return command
    .argument('<files...>', 'cuts, folders or an episode.yaml; - is standard input')
    .option('--check', 'write nothing; list the files that would change, and leave with 1 if there are any')
    .option('--diff', 'write nothing; show what would change')
    .addOption(
      choice('--format <form>', 'how problems are shown on standard error', FORMATS).default('human'),
    )
    .addHelpText(
      'after',
      `
Timelines that stand together start in one column, lines over 100 columns are broken, full-width characters outside quotes become
plain ones. Line breaks before a drawing stay. What is printed stays the same. What cannot be read is left as it is; "cutwright
check" says why.
${examples(
  ['cutwright format c012.cut', 'write it in the usual layout'],
  ['cutwright format cuts/', 'every text of a folder, what cuts use and old takes as well'],
  ['cutwright format --check .', 'before a commit'],
  ['cutwright format --diff c012.cut', 'look first'],
  ['cutwright format - < c012.cut', 'from standard input to standard output, for an editor'],
)}`,
    )
    .action(async (files: string[], options: Options) => {
      context.status = await formatAll(context.host, files, options);
    });
}

async function formatAll(host: Host, files: readonly string[], options: Options): Promise<number> {
  const reporter = new ConsoleReporter(host, options.format, false);
  const world = snapshot(host);
  const found = await findCuts(
    world,
    files.flatMap((file) => inFolder(host, file)),
  );
  reporter.report(found.diagnostics, NO_SOURCES);
  const count = { changed: 0, same: 0, unread: 0, failed: 0 };
  // An editor puts in the place of the text whatever comes back.
  const silent = files.every((file) => file === '-') && !options.check && !options.diff;
  for (const job of found.jobs) {
    const bytes = await bytesOf(world, job);
    const read = job.path === null ? decode(job.name, bytes) : readText(world, job.path, job.name);
    if (!read.ok) {
      reporter.report(read.diagnostics, new Map([[job.name, read.text]]));
      count.failed++;
      continue;
    }
    const { fps, on } = job.episode.settings;
    const { text, left } = format(job.name, read.text, { fps, on });
    if (left > 0 && !silent) reporter.say(reporter.words.unreadStatements(job.name, left));
    const changed = Buffer.compare(bytes, Buffer.from(text, 'utf8')) !== 0;
    if (options.diff) await printDiff(host, job.name, read.text, text);
    else if (options.check && changed) host.out(`${job.name}\n`);
    const write = !options.check && !options.diff && (changed || job.path === null);
    const fault = write ? writeBack(host, job, text, false, bytes) : null;
    if (fault) {
      reporter.report([fault], NO_SOURCES);
      count.failed++;
    } else count[changed ? 'changed' : left > 0 ? 'unread' : 'same']++;
  }
  if (found.jobs.length > 0 && !silent)
    reporter.say(
      reporter.words.formatted(found.jobs.length, count, options.check === true || options.diff === true),
    );
  const status = reporter.finish();
  return options.check && count.changed > 0 ? Math.max(status, 1) : status;
}

/** In a folder every text is meant, also those that no manifest lists: what cuts use, old takes. */
function inFolder(host: Host, file: string): string[] {
  const path = resolve(host.cwd, file);
  if (file === '-' || host.kind(path) !== 'folder') return [file];
  const texts = filesOf(host, path, '**/*.cut').map((name) => join(file, name));
  return texts.length > 0 ? texts : [file];
}
