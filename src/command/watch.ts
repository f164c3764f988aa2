import type { Command } from 'commander';
import { EXTENTS, type Extent, PARTS, type PartName } from '../build/print-plan.js';
import { UsageError } from '../build/usage-error.js';
import { NO_SOURCES } from '../episode/batch.js';
import type { Host } from '../host/host.js';
import type { Messages } from '../language/catalogue/index.js';
import { diagnose } from '../language/diagnostic.js';
import {
  type CommandContext,
  checkRows,
  choice,
  examples,
  filesOr,
  type LookOptions,
  looks,
  type ReportOptions,
  withLooks,
  withReport,
} from './command-options.js';
import { ConsoleReporter } from './console-reporter.js';

const HOW = `
A cut whose text is broken keeps the PDF that it has. A file that cuts share, and the manifest, print anew those cuts whose
paper comes out otherwise, and no others. New cuts are taken in. One folder is written to by one watch at a time.

The live view is for this machine only. Its address holds a word that nobody can guess; with it, an editor shows the rows
of the item at the cursor: ADDRESS/at?file=c012.cut&line=7&column=4
`;

interface WatchOptions extends ReportOptions, LookOptions {
  readonly output?: string;
  readonly only?: PartName;
  readonly trueSize?: boolean;
  readonly parts?: Extent;
  readonly preview?: string | true;
}

export function define(command: Command, context: CommandContext): Command {
  command
    .argument('[files...]', 'cuts, folders or an episode.yaml; none: the episode of this folder')
    .option('-o, --output <path>', 'a file or a folder; otherwise beside the cut')
    .option('--preview [port]', 'show the pages in a browser as well; without a port, any that is free');
  return withReport(
    withLooks(command)
      .addOption(choice('--only <part>', 'print one part', PARTS))
      .addOption(
        choice(
          '--parts <extent>',
          'what to print of a cut: what somebody works from (needed), or all',
          EXTENTS,
        ),
      )
      .option('--true-size', 'print the scale strip and the field overlay as well'),
  )
    .addHelpText(
      'after',
      examples(
        ['cutwright watch c012.cut', 'writes c012.pdf now, and whenever c012.cut is saved'],
        ['cutwright watch', 'every cut of the episode that this folder lies in'],
        ['cutwright watch cuts/ -o out/', 'all cuts of a folder, into another one'],
        ['cutwright watch c012.cut --preview', 'and says where a browser shows the pages'],
        ['cutwright watch --preview 8012', 'the same at a port of your own'],
      ) + HOW,
    )
    .action(async (files: string[], options: WatchOptions) => {
      context.status = await watch(context.host, files, options);
    });
}

async function watch(host: Host, named: readonly string[], options: WatchOptions): Promise<number> {
  const { output, only, trueSize, parts, format, strict = false } = options;
  if (named.includes('-')) throw new UsageError('wrong-arguments', '-', { variant: 'watch-input' });
  if (output === '-') {
    throw new UsageError('wrong-arguments', '-', { variant: 'watch-output' });
  }
  const { port, file } = portOf(options.preview);
  const settings = looks(options);
  const files = await filesOr(host, [...file, ...named], 'watch');
  const { watchCuts } = await import('../watch/watch-session.js');
  return watchCuts(
    host,
    {
      files,
      settings,
      output,
      selection: { only, trueSize, parts },
      strict,
      newReporter: () => new ConsoleReporter(host, format, strict),
    },
    { port, refuse: (why) => refuse(host, options, why), check: (one) => checkRows(options, one) },
  );
}

/** `port`: null: no live view; 0: any. What stands behind `--preview` and is no number is a file: `watch --preview c012.cut`. */
function portOf(preview: string | true | undefined): {
  readonly port: number | null;
  readonly file: string[];
} {
  if (preview === undefined) return { port: null, file: [] };
  if (preview === true) return { port: 0, file: [] };
  if (!/^-?\d+$/.test(preview)) return { port: 0, file: [preview] };
  const port = Number(preview);
  if (port >= 1 && port <= 65535) return { port, file: [] };
  throw new UsageError('option-value', preview, { variant: 'port' });
}

function refuse(host: Host, { format }: WatchOptions, why: Messages['watch-impossible']): number {
  const reporter = new ConsoleReporter(host, format, false);
  reporter.report([diagnose('watch-impossible', { file: host.cwd, start: 0, end: 0 }, why)], NO_SOURCES);
  return reporter.finish();
}
