import type { Command } from 'commander';
import { eachCut, findAll } from '../episode/batch.js';
import type { Compiled } from '../episode/compile-cut.js';
import type { Job } from '../episode/find-cuts.js';
import type { Heard, HeardLine } from '../episode/listen-to-cut.js';
import { decode } from '../episode/read-text.js';
import type { Host } from '../host/host.js';
import { type Diagnostic, diagnose, hasErrors } from '../language/diagnostic.js';
import { withEdits } from '../language/statement-reader.js';
import { voiceEdits } from '../language/voice-edits.js';
import { type CommandContext, examples, type ReportOptions, withReport } from './command-options.js';
import { ConsoleReporter } from './console-reporter.js';
import { heardJson, rowText, speechLines, statementText } from './listen-report.js';
import { bytesOf, marked, printDiff, remembering, writeBack } from './rewrite-input.js';

interface Options extends ReportOptions {
  readonly write?: boolean;
  readonly diff?: boolean;
  readonly again?: boolean;
  readonly lines?: boolean;
  readonly json?: boolean;
}

export function define(command: Command, context: CommandContext): Command {
  return withReport(
    command
      .argument('<files...>', 'cuts, folders or an episode.yaml; - is standard input')
      .option('-w, --write', 'write rows and ties into the text')
      .option('--diff', 'write nothing; show what would change')
      .option('--again', 'find words anew that are tied to a row already')
      .option('--lines', 'find where somebody speaks, whatever is written, and propose ranges')
      .option('--json', 'what was heard as JSON on standard output'),
  )
    .addHelpText(
      'after',
      `
Reads the recording that the \`track\` statement of a cut names, finds the lines of its \`voice\` statements
in it, and on which row each word (in Japanese each phrase between blanks) begins. It prints the statements
as they would be; --write puts them into the text, and nothing else of it changes. Ties that are typed
already stay, and help to find the others. What it is not sure of it says.
English is read by a dictionary, Japanese by its kana; kanji need ruby: "海《うみ》へ行《い》く".
${examples(
  ['cutwright listen c012.cut', 'print what would be written'],
  ['cutwright listen c012.cut --write', 'write it'],
  ['cutwright listen c012.cut --again --diff', 'after a new take: show every word anew'],
  ['cutwright listen c012.cut --lines', 'ranges in which somebody speaks'],
  ['cutwright listen cuts/ --json', 'rows of every syllable, for other programs'],
)}`,
    )
    .action(async (files: string[], options: Options) => {
      context.status = await listen(context.host, files, options);
    });
}

async function listen(host: Host, files: readonly string[], options: Options): Promise<number> {
  const reporter = new ConsoleReporter(host, options.format, options.strict === true);
  const world = await remembering(host, files);
  const found = await findAll(world, reporter, files);
  const { listenToCut } = await import('../episode/listen-to-cut.js');
  const { englishDictionary } = await import('../sound/english-dictionary.js');
  const words = host.englishWords();
  if (!words.ok) throw new Error(`the dictionary of the installation cannot be read: ${words.reason}`);
  const dictionary = englishDictionary(words.value);
  const count = { cuts: 0, changed: 0, failed: 0 };
  const all: object[] = [];

  await eachCut(world, reporter, found, async (compiled, job) => {
    if (compiled.house) return;
    count.cuts += 1;
    const fault = nothingToHear(compiled, options);
    if (fault) {
      count.failed += 1;
      reporter.report([fault], compiled.sources);
      return;
    }
    if (compiled.solved === null || hasErrors(compiled.diagnostics, options.strict)) {
      count.failed += 1;
      return;
    }
    const heard = listenToCut(world, compiled, {
      dictionary,
      again: options.again === true,
      speechOnly: options.lines === true,
    });
    if (!heard) {
      count.failed += 1;
      reporter.report(
        [diagnose('nothing-to-hear', compiled.shot!.track!.span, { variant: 'no-recording' })],
        compiled.sources,
      );
      return;
    }
    reporter.report(heard.lines.flatMap(doubts), compiled.sources);
    if (options.json) all.push(heardJson(compiled, job, heard));
    else if (options.lines) for (const line of speechLines(compiled, heard)) host.out(`${line}\n`);
    if (options.lines) return;
    await put(compiled, job, heard);
  });

  /** Prints the statements as they would be, or writes them. */
  async function put(compiled: Compiled, job: Job, heard: Heard): Promise<void> {
    const bytes = await bytesOf(world, job);
    const { text } = decode(job.name, bytes);
    const typed = rowText(compiled.solved!.shot);
    const edits = heard.lines.flatMap((line) => {
      if (!line.rows) return [];
      const rows = { ...line.rows, words: line.words };
      return voiceEdits(text, line.voice, rows, typed, options.again);
    });
    const after = withEdits(
      text,
      edits.map(({ span, text }) => ({ ...span, text })),
    );
    if (after !== text) count.changed += 1;
    if (options.diff) return printDiff(host, job.name, text, after);
    if (!options.write) {
      if (!options.json)
        for (const line of heard.lines) if (line.rows) host.out(`${statementText(text, line, edits)}\n`);
      return;
    }
    if (after === text && job.path !== null) return;
    const fault = writeBack(host, job, after, marked(bytes), bytes);
    if (!fault) return;
    count.changed -= 1;
    count.failed += 1;
    reporter.report([fault], compiled.sources);
  }

  if (options.json) host.out(`${JSON.stringify({ version: 1, cuts: all }, null, 2)}\n`);
  if (count.cuts > 0) reporter.say(summary(count, options, reporter));
  const status = reporter.finish();
  return count.failed > 0 ? Math.max(status, 1) : status;
}

/** What keeps a cut from being listened to at all. */
function nothingToHear({ shot, tree }: Compiled, { lines }: Options): Diagnostic | null {
  if (!shot || !tree) return null;
  if (!shot.track && !tree.statements.some(({ kind }) => kind === 'track'))
    return diagnose('nothing-to-hear', shot.spans.cut, { variant: 'no-track' });
  if (!lines && !shot.spoken.some(({ kind }) => kind === 'voice'))
    return diagnose('nothing-to-hear', shot.spans.cut, { variant: 'no-voices' });
  return null;
}

function doubts({ voice, rows, doubtful, unread }: HeardLine): Diagnostic[] {
  const { span, speaker } = voice;
  const found = unread.map(({ text }) => diagnose('line-unread', span, { found: text }));
  if (!rows) return found.length > 0 ? found : [diagnose('line-missing', span, { speaker: speaker.text })];
  return doubtful ? [...found, diagnose('line-doubtful', span, { ...rows, speaker: speaker.text })] : found;
}

function summary(
  { cuts, changed, failed }: { cuts: number; changed: number; failed: number },
  { write, diff, lines }: Options,
  reporter: ConsoleReporter,
): string {
  const rest = cuts - changed - failed;
  const how = lines ? 'lines' : write && !diff ? 'written' : 'dry';
  return reporter.words.heard(cuts, { changed, rest, failed }, how, reporter.tally());
}
