import type { Command } from 'commander';
import { eachCut, findAll } from '../episode/batch.js';
import { plural } from '../words/number-format.js';
import { type CommandContext, examples, type ReportOptions, withReport } from './command-options.js';
import { ConsoleReporter } from './console-reporter.js';

export function define(command: Command, context: CommandContext): Command {
  return withReport(command)
    .argument('<files...>', 'cuts, folders or an episode.yaml; - is standard input')
    .addHelpText(
      'after',
      examples(
        ['cutwright check c012.cut', 'one cut'],
        ['cutwright check cuts/', 'every cut of a folder'],
        ['cutwright check episode.yaml --strict', 'a whole episode; warnings count as errors'],
        ['cutwright check --format github cuts/', 'as annotations on the lines of a pull request'],
        ['cutwright explain timeline-short', 'what the code of a message means'],
      ),
    )
    .action(async (files: string[], options: ReportOptions) => {
      const { host } = context;
      const reporter = new ConsoleReporter(host, options.format, options.strict === true);
      const found = await findAll(host, reporter, files);
      let houses = 0;
      const cuts = await eachCut(host, reporter, found, ({ house }) => {
        if (house) houses += 1;
      });
      const what = cuts > 0 || houses === 0 ? plural(cuts, 'cut') : plural(houses, 'shared file');
      reporter.say(`${what} checked: ${reporter.tally()}`);
      context.status = reporter.finish();
    });
}
