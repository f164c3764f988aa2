import { join } from 'node:path';
import type { Command } from 'commander';
import { checkWorkers } from '../build/print-task.js';
import type { Reporter } from '../build/reporter.js';
import { eachOutcome, findAll } from '../episode/batch.js';
import type { Episode } from '../episode/episode.js';
import { PROGRESS_FILE } from '../episode/find-cuts.js';
import type { Host } from '../host/host.js';
import { snapshot } from '../host/overlay-host.js';
import {
  type CommandContext,
  examples,
  type JobsOption,
  type ReportOptions,
  withJobs,
  withReport,
} from './command-options.js';
import { ConsoleReporter } from './console-reporter.js';
import { remembering } from './rewrite-input.js';

interface CheckOptions extends ReportOptions, JobsOption {
  readonly fix?: boolean;
  readonly diff?: boolean;
}

export function define(command: Command, context: CommandContext): Command {
  return withJobs(
    withReport(command)
      .argument('<files...>', 'cuts, folders or an episode.yaml; - is standard input')
      .option('--fix', 'first write the mends that cannot change the meaning')
      .option('--diff', 'write nothing; show what --fix would change'),
  )
    .addHelpText(
      'after',
      examples(
        ['cutwright check c012.cut', 'one cut'],
        ['cutwright check cuts/', 'every cut of a folder'],
        ['cutwright check episode.yaml --strict', 'a whole episode; warnings count as errors'],
        ['cutwright check --fix cuts/', 'words of the trade, blanks in numbers: mended in the files'],
        ['cutwright check --format github cuts/', 'as annotations on the lines of a pull request'],
        ['cutwright explain timeline-short', 'what the code of a message means'],
      ),
    )
    .action(async (files: string[], options: CheckOptions) => {
      const fixes = options.fix || options.diff;
      let host = fixes ? await remembering(context.host, files) : snapshot(context.host);
      const reporter = new ConsoleReporter(host, options.format, options.strict === true);
      const found = await findAll(host, reporter, files);
      if (fixes) {
        const { writeSafeFixes } = await import('./fix-files.js');
        host = await writeSafeFixes(host, reporter, found.jobs, options.diff === true);
      }
      let houses = 0;
      const numbers = new Map<Episode, (string | undefined)[]>(found.whole.map((episode) => [episode, []]));
      const cuts = await eachOutcome(host, reporter, found, {
        make: () => null,
        take({ house, number }, { episode }) {
          if (house) houses += 1;
          else numbers.get(episode)?.push(number?.text);
        },
        // The texts that the mends made lie on no disk with `--diff`.
        workers: fixes ? undefined : checkWorkers(host, options.jobs ?? null),
      });
      for (const [episode, own] of numbers) await checkStages(host, reporter, episode, own);
      const what = cuts > 0 || houses === 0 ? reporter.words.cuts(cuts) : reporter.words.sharedFiles(houses);
      reporter.say(reporter.words.checked(what, reporter.tally()));
      context.status = reporter.finish();
    });
}

/** Holds what is written of the stages of a whole episode against its cuts; `numbers`: of all of them, where they can be read. */
async function checkStages(
  host: Host,
  reporter: Reporter,
  episode: Episode,
  numbers: readonly (string | undefined)[],
): Promise<void> {
  const written = host.kind(join(episode.folder!, PROGRESS_FILE)) !== 'none';
  if (!written && episode.dueCuts.length === 0) return;
  const [{ readProgress }, { checkProgress }] = await Promise.all([
    import('../episode/progress-csv.js'),
    import('../episode/check-progress.js'),
  ]);
  const file = readProgress(host, episode)!;
  const read = numbers.flatMap((one) => one ?? []);
  const known = read.length === numbers.length && read.length > 0 ? read : null;
  reporter.report(
    [...file.diagnostics, ...checkProgress(episode, file.rows, known)],
    new Map([
      [file.name, file.text],
      [episode.file!, episode.text],
    ]),
  );
}
