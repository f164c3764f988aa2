import type { Command } from 'commander';
import { UsageError } from '../build/usage-error.js';
import { findAll } from '../episode/batch.js';
import type { Host } from '../host/host.js';
import type { Settings } from '../shot/settings.js';
import { LABELS } from '../words/labels.js';
import { type CommandContext, choice, examples, type ReportOptions, withReport } from './command-options.js';
import { ConsoleReporter } from './console-reporter.js';
import { ProgressBar } from './progress-bar.js';
import { sheetRange } from './sheet-places.js';

interface Options extends ReportOptions {
  readonly output?: string;
  readonly size?: string;
  readonly from?: string;
  readonly to?: string;
  readonly labels?: Settings['labels'];
  readonly guides?: boolean;
  readonly clean?: boolean;
}

/** Sides of a picture, pixels. */
const SMALLEST = 16;
const LARGEST = 8192;

export function define(command: Command, context: CommandContext): Command {
  command
    .argument(
      '<files...>',
      'a cut, or several or an episode.yaml for one film with its overlaps; - is standard input',
    )
    .option(
      '-o, --output <file>',
      'a film (.mp4, .mov, .mkv, .webm), a folder for pictures, or their names, such as frames/%04d.png',
    )
    .option('--size <pixels>', 'size of the picture, such as 960x540; otherwise that of the episode')
    .option('--from <time>', "the first frame: 37, 1+12 (seconds + frames) or 2'08 (feet)")
    .option('--to <time>', 'the last frame')
    .option('--guides', 'field chart and safe areas over the picture')
    .option('--clean', 'no cut and time at the foot of the picture')
    .addOption(choice('-l, --labels <language>', 'language of the words at the foot', LABELS));
  return withReport(command)
    .addHelpText(
      'after',
      `${examples(
        ['cutwright shoot c012.cut', 'c012.mp4, with the sound of its track'],
        ['cutwright shoot c012.cut --output frames/ --size 960x540', 'small pictures, one a frame'],
        ['cutwright shoot c012.cut --from 1+1 --to 2+24', 'the second second of it'],
        ['cutwright shoot episode.yaml --output ferry.mp4', 'the whole episode, with its overlaps'],
      )}\nA film needs ffmpeg, a program of its own; without it there are the pictures. What is not
drawn yet is a sheet with its number.\n`,
    )
    .action(async (files: string[], options: Options) => {
      context.status = await shoot(context.host, files, options);
    });
}

async function shoot(host: Host, files: readonly string[], options: Options): Promise<number> {
  const { from, to } = sheetRange(options);
  const size = sizeOf(options.size);
  const progress = new ProgressBar(host, options.format === 'json', 'frames');
  const reporter = new ConsoleReporter(progress.host, options.format, options.strict === true);
  const { labels, guides, clean } = options;
  const found = await findAll(progress.host, reporter, files, labels ? { labels } : {});
  if (found.jobs.length === 0) return reporter.finish();
  const [{ shootCuts }, { filmOutput }] = await Promise.all([
    import('../shoot/shoot-cuts.js'),
    import('../shoot/film-output.js'),
  ]);
  const output = filmOutput(host, found, options.output);
  const plan = {
    output,
    size,
    guides: guides === true,
    foot: clean !== true,
    from,
    to,
    fromTyped: options.from,
  };
  await shootCuts(progress.host, reporter, found, plan, progress);
  return reporter.finish();
}

function sizeOf(text: string | undefined): { width: number; height: number } | null {
  if (text === undefined) return null;
  const [, width, height] = /^(\d{1,5})[x×](\d{1,5})$/.exec(text.normalize('NFKC')) ?? [];
  const size = { width: Number(width), height: Number(height) };
  if (!Object.values(size).every((side) => side >= SMALLEST && side <= LARGEST))
    throw new UsageError('option-value', text, { variant: 'picture-size', least: SMALLEST, most: LARGEST });
  return size;
}
