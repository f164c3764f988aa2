import type { Command } from 'commander';
import { buildCuts } from '../build/build-cuts.js';
import { BUILD_TOOLS, type BuildTool } from '../build/build-file.js';
import { COVERS_A_PAGE, EXTENTS, PARTS } from '../build/print-plan.js';
import { UsageError } from '../build/usage-error.js';
import { findAll } from '../episode/batch.js';
import type { Host } from '../host/host.js';
import { type Asked, noting, snapshot } from '../host/overlay-host.js';
import { type BuildOptions, checkPlanOptions, printPlanOf, shardOption } from './build-options.js';
import {
  type CommandContext,
  checkRows,
  choice,
  examples,
  filesOr,
  looks,
  withJobs,
  withLooks,
  withReport,
} from './command-options.js';
import { ConsoleReporter } from './console-reporter.js';
import { ProgressBar } from './progress-bar.js';

const CHANGED = `
A cut has changed where its paper would come out otherwise. Comments, spelling, the clock and the stamp at
the foot do not count. Each PDF holds a record of what was printed: one that is missing, damaged or of
another program is printed anew. Files of cuts that are gone are named, and never deleted.

A build file (--plan) stands in the folder of --output, or in this one, and is used from here. It knows
what each print hangs on, and is made anew when a text changes. It calls cutwright, or what the variable
CUTWRIGHT says.
`;

export function define(command: Command, context: CommandContext): Command {
  command
    .argument(
      '[files...]',
      'cuts, folders or an episode.yaml; - is standard input; none: the episode of this folder',
    )
    .option('-o, --output <path>', 'a file, a folder, or - for standard output; otherwise beside the cut')
    .option('--one-file', 'all cuts in one PDF with bookmarks, beside the manifest or where --output says');
  return withJobs(
    withReport(
      withLooks(command)
        .addOption(choice('--only <part>', 'print one part', PARTS))
        .addOption(
          choice(
            '--up <number>',
            'covers of so many cuts on a page, in one PDF, to cut apart',
            COVERS_A_PAGE,
          ),
        )
        .addOption(
          choice(
            '--parts <extent>',
            'what to print of a cut: what somebody works from (needed), or all',
            EXTENTS,
          ),
        )
        .option('--true-size', 'print the scale strip and the field overlay as well, to lay on the drawing')
        .option(
          '--changed',
          'print only cuts that have changed on paper since the last build; say which pages',
        )
        .option('--since <rev>', 'the same, compared with a git revision such as HEAD~1')
        .option('--marked-against <rev>', 'mark on the sheets what has changed since a git revision')
        .option(
          '--pages <range>',
          'print these pages only, such as 2-3; "changed": those that --changed or --since finds',
        )
        .option('--shard <part>', 'print one part of the cuts, such as 2/8: each cut is in one of the eight')
        .addOption(
          choice(
            '--plan <tool>',
            'print nothing; write a build file with a rule for each cut, for this program',
            BUILD_TOOLS,
          ),
        ),
    ),
  )
    .addHelpText(
      'after',
      examples(
        ['cutwright build c012.cut', 'writes c012.pdf'],
        ['cutwright build', 'every cut of the episode that this folder lies in'],
        ['cutwright build episode.yaml -o out/', 'the same, into a folder'],
        ['cutwright build --one-file -o all.pdf', 'the episode as one file for the printer'],
        ['cutwright build -o out/ --changed', 'only what has changed since the last build'],
        ['cutwright build --since HEAD~1 -o out/', 'only what prints otherwise than at that revision'],
        ['cutwright build --changed --one-file --pages changed', 'the pages to exchange in the binders'],
        [
          'cutwright build c012.cut --marked-against HEAD~1',
          'bars beside rows that differ, a list in the memo',
        ],
        ['cutwright build c012.cut --paper A3 --labels ja', 'on A3, with a Japanese form'],
        ['cutwright build c012.cut --pages 2-3', 'only these pages'],
        ['cutwright build c012.cut --only strip', 'the graduations of its moves at true size'],
        ['cutwright build --only cover -o covers/', 'the front of each envelope'],
        ['cutwright build --only cover --up 4', 'the same as labels, four on a page'],
        ['cutwright build -o out/ --shard 2/8', 'an eighth of the cuts, on the second of eight machines'],
        [
          'cutwright build -o out/ --plan ninja',
          'writes out/cutwright.ninja, for `ninja -f out/cutwright.ninja`',
        ],
        ['cutwright build - -o - < c012.cut > a.pdf', 'from standard input to standard output'],
      ) + CHANGED,
    )
    .action(async (files: string[], options: BuildOptions) => {
      context.status =
        options.plan === undefined
          ? await build(context.host, files, options)
          : await plan(context.host, files, options, options.plan, command);
    });
}

/** Names of pictures and films: what is built is a PDF, under whatever name. */
const NO_PDF = /\.(png|jpe?g|gif|tiff?|svg|webp|mp4|mov)$/i;

async function build(host: Host, named: readonly string[], options: BuildOptions): Promise<number> {
  if (options.output && NO_PDF.test(options.output))
    throw new UsageError('option-value', options.output, { variant: 'pdf-ending' });
  const plan = printPlanOf(options, named);
  const shard = shardOption(options);
  const files = await filesOr(host, named, 'build');
  const progress = new ProgressBar(host, options.format === 'json');
  const reporter = new ConsoleReporter(progress.host, options.format, plan.strict);
  const world = snapshot(progress.host);
  const all = await findAll(world, reporter, files, plan.settings);
  for (const { episode } of all.jobs) checkRows(options, episode.settings);
  const found = shard === null ? all : (await import('../build/shard.js')).shardOf(all, shard);
  if (shard !== null) reporter.say(reporter.words.shard(options.shard!, found.jobs.length, all.jobs.length));
  await buildCuts(world, reporter, found, files, plan, progress);
  return reporter.finish();
}

async function plan(
  host: Host,
  named: readonly string[],
  options: BuildOptions,
  tool: BuildTool,
  command: Command,
): Promise<number> {
  checkPlanOptions(options, named);
  const files = await filesOr(host, named, 'build');
  const reporter = new ConsoleReporter(host, options.format, options.strict === true);
  const asked: Asked = { files: new Set(), folders: new Set() };
  const world = snapshot(host);
  const found = await findAll(noting(world, asked), reporter, files, looks(options));
  for (const { episode } of found.jobs) checkRows(options, episode.settings);
  const { planBuild } = await import('../build/plan-build.js');
  planBuild(world, reporter, found, {
    tool,
    output: options.output,
    options: wordsOf(command, new Set(['output', 'plan'])),
    command: ['build', ...wordsOf(command), '--', ...named],
    searched: [...asked.folders],
  });
  return reporter.finish();
}

/** The options of a call, as words of another one. */
function wordsOf(command: Command, without: ReadonlySet<string> = new Set()): string[] {
  return command.options.flatMap((option) => {
    const name = option.attributeName();
    if (without.has(name) || command.getOptionValueSource(name) !== 'cli') return [];
    const value = command.getOptionValue(name);
    return value === true ? [option.long!] : [option.long!, String(value)];
  });
}
