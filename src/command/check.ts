import type { Command } from 'commander';
import { eachCut, findAll } from './batch.js';
import { Desk, plural } from './desk.js';
import { examples, type ReportOptions, withReport } from './options.js';
import type { Run } from './run.js';

export function define(command: Command, run: Run): Command {
  return withReport(command)
    .argument('<files...>', 'cuts, folders or an episode.yaml; - is standard input')
    .addHelpText(
      'after',
      examples(
        ['cutwright check c012.cut', 'one cut'],
        ['cutwright check cuts/', 'every cut of a folder'],
        ['cutwright check episode.yaml --strict', 'a whole episode; warnings count as errors'],
        ['cutwright check --format github cuts/', 'as annotations on the lines of a pull request'],
        ['cutwright explain timeline-short', 'what the word in brackets behind a problem means'],
      ),
    )
    .action(async (files: string[], options: ReportOptions) => {
      const { host } = run;
      const desk = new Desk(host, options.format, options.strict === true);
      const found = await findAll(host, desk, files);
      let houses = 0;
      const cuts = await eachCut(host, desk, found, ({ house }) => {
        if (house) houses += 1;
      });
      const what = cuts > 0 || houses === 0 ? plural(cuts, 'cut') : plural(houses, 'shared file');
      desk.say(`${what} checked: ${desk.tally()}`);
      run.status = desk.finish();
    });
}
