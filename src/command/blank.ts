import { resolve } from 'node:path';
import type { Command } from 'commander';
import { deliver, overwriting, STANDARD_OUTPUT } from '../build/output-targets.js';
import { COMMAND_LINE, UsageError } from '../build/usage-error.js';
import { episodeOf } from '../episode/find-cuts.js';
import type { Host } from '../host/host.js';
import {
  type CommandContext,
  checkRows,
  examples,
  type LookOptions,
  looks,
  withLooks,
} from './command-options.js';
import { ConsoleReporter } from './console-reporter.js';

interface Options extends LookOptions {
  readonly output: string;
  readonly levels: string;
  readonly pages: string;
}

const MOST_LEVELS = 26;
const MOST_PAGES = 500;

export function define(command: Command, context: CommandContext): Command {
  command
    .option('-o, --output <file>', 'the file to write, or - for standard output', 'blank.pdf')
    .option('--levels <number>', 'columns for levels, 1 to 26', '4')
    .option('--pages <number>', 'how many copies of the form', '1');
  return withLooks(command)
    .addHelpText(
      'after',
      examples(
        ['cutwright blank', 'the form of the episode that this folder belongs to'],
        ['cutwright blank --convention west --paper legal', 'a western form'],
        ['cutwright blank --levels 6 --pages 20 -o b.pdf', 'twenty copies with six levels'],
      ),
    )
    .action(async (options: Options) => {
      context.status = await blank(context.host, options);
    });
}

async function blank(host: Host, options: Options): Promise<number> {
  const levels = number('--levels', options.levels, MOST_LEVELS);
  const copies = number('--pages', options.pages, MOST_PAGES);
  const reporter = new ConsoleReporter(host, 'human', false);
  const { settings, diagnostics, file, text } = await episodeOf(host, host.cwd, looks(options));
  if (file !== null) reporter.report(diagnostics, new Map([[file, text]]));
  checkRows(options, settings);
  const path = resolve(host.cwd, options.output);
  const target = options.output === '-' ? STANDARD_OUTPUT : { path, name: options.output };
  const refused =
    target.path === null
      ? null
      : overwriting(host, path, options.output, { file: COMMAND_LINE, start: 0, end: 0 });
  if (refused) throw new UsageError(refused.code, options.output, refused.parameters);
  const [{ CutPrinter, blankDocument }, { blankPages }] = await Promise.all([
    import('../build/cut-printer.js'),
    import('../sheet/blank-form.js'),
  ]);
  const printer = CutPrinter.open(host);
  const set = blankPages({ settings, metrics: printer.fonts.metrics, stamp: '' }, { levels });
  const pages = Array.from({ length: copies }, () => set).flat();
  const bytes = await printer.print(blankDocument(pages, settings));
  const fault = deliver(host, target, bytes, { file: COMMAND_LINE, start: 0, end: 0 });
  if (fault) throw new UsageError(fault.code, options.output, fault.parameters);
  const count = reporter.words.pages(pages.length);
  reporter.say(
    target.path === null
      ? reporter.words.wroteToStandardOutput(count)
      : reporter.words.wrote(target.name, count),
  );
  return reporter.finish();
}

function number(option: string, text: string, most: number): number {
  const value = /^\d{1,6}$/.test(text) ? Number(text) : 0;
  if (value >= 1 && value <= most) return value;
  throw new UsageError('option-value', text, { variant: 'count', option, most });
}
