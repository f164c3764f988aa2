import type { Command } from 'commander';
import type { Reporter } from '../build/reporter.js';
import { UsageError } from '../build/usage-error.js';
import type { Host } from '../host/host.js';
import { userLanguage } from '../language/user-language.js';
import { PAPERS, type Paper } from '../shot/settings.js';
import { LABELS, type LabelLanguage } from '../words/labels.js';
import { type CommandContext, choice, examples } from './command-options.js';
import {
  type Comparison,
  type ComparisonSide,
  compareSides,
  reportFinding,
  sideOf,
  sinceOf,
  type Tell,
} from './comparison.js';
import { ConsoleReporter, FORMATS, type Format } from './console-reporter.js';
import { cutJson, onlyLine, retakeNote, wholeJson } from './retake-note.js';

interface Options {
  readonly output?: string;
  readonly by?: string;
  readonly reason?: string;
  readonly paper?: Paper;
  readonly since?: string;
  readonly json?: boolean;
  readonly labels?: LabelLanguage;
  readonly git?: boolean;
  readonly format: Format;
}

export function define(command: Command, context: CommandContext): Command {
  return command
    .argument(
      '[versions...]',
      'OLD and NEW: cuts, folders, an episode.yaml, or REVISION:PATH as git has it; - is standard input',
    )
    .option('--since <revision>', 'compare what is named, or the whole episode, with what it was then')
    .option('-o, --output <file>', 'print the retake note as a PDF: rows before and after, room to answer')
    .option('--by <name>', 'who asks for the changes, printed on the note')
    .option('--reason <text>', 'why, printed beside each change')
    .addOption(choice('-p, --paper <size>', 'paper of the printed note', PAPERS))
    .option('--json', 'everything in numbers, as JSON')
    .addOption(
      choice(
        '-l, --labels <language>',
        'language of the sentences; otherwise that of messages, on paper that of the episode',
        LABELS,
      ),
    )
    .option('--git', 'be called by git as its diff for cuts')
    .addOption(
      choice('--format <form>', 'how problems are shown on standard error', FORMATS).default('human'),
    )
    .addHelpText(
      'after',
      `${examples(
        ['cutwright compare take-1/c012.cut c012.cut', 'what a retake note of cut 12 must say'],
        ['cutwright compare HEAD~1:cuts/c012.cut cuts/c012.cut', 'against what git has'],
        ['cutwright compare take-1/ cuts/', 'folders, cut by cut, by their numbers'],
        ['cutwright compare --since v1', 'the episode against a tag'],
        ['cutwright compare --since HEAD cuts/c012.cut -l ja', 'one cut, in Japanese'],
        [
          'cutwright compare --since v1 --output retakes.pdf --by Tarn',
          'a note for each cut on paper, with a summary',
        ],
      )}
Leaves with 0 where nothing differs, 1 where something does, 2 where the two cannot be compared.
`,
    )
    .action(async (words: string[], options: Options) => {
      if (options.git) {
        const { gitDiff } = await import('./git-diff.js');
        context.status = await gitDiff(context.host, words, options.labels ?? userLanguage(context.host));
      } else context.status = await compareAll(context.host, words, options);
    });
}

async function compareAll(host: Host, words: readonly string[], options: Options): Promise<number> {
  onlyPrinted(options);
  // The one warning that is said here is of a cut that is not compared: that must not pass for "the same".
  const reporter = new ConsoleReporter(host, options.format, true);
  const { old, now } = await sidesOf(host, words, options.since);
  reportFinding(old, reporter);
  reportFinding(now, reporter);
  const language = options.labels ?? userLanguage(host);
  const print = options.output === undefined ? null : await printing(host, old, now, options);
  const comparison = print
    ? await print.compare(reporter)
    : await told(host, old, now, reporter, { json: options.json === true, language });
  const { differing, onlyOld, onlyNow, compared, restricted } = comparison;
  if (restricted !== null) {
    const { label: version, key: cut } = restricted;
    throw new UsageError('wrong-arguments', version, { variant: 'version-without-cut', version, cut });
  }
  const differ = differing.length + onlyOld.length + onlyNow.length;
  if (compared > 1) reporter.say(reporter.words.compared(compared, differing.length));
  if (reporter.finish() !== 0) return 2;
  return differ > 0 ? 1 : 0;
}

/** What stands on paper is asked for with it. */
function onlyPrinted({ output, by, reason, paper }: Options): void {
  if (output !== undefined) return;
  const word =
    by !== undefined ? '--by' : reason !== undefined ? '--reason' : paper !== undefined ? '--paper' : null;
  if (word !== null) throw new UsageError('wrong-arguments', word, { variant: 'needs-output', option: word });
}

/** On standard output. */
async function told(
  host: Host,
  old: ComparisonSide,
  now: ComparisonSide,
  reporter: Reporter,
  { json, language }: { json: boolean; language: LabelLanguage },
): Promise<Comparison<string>> {
  const tell: Tell<string> = json ? cutJson : (was, is, changes) => retakeNote(was, is, changes, language);
  const comparison = await compareSides(old, now, reporter, tell);
  const { differing, onlyOld, onlyNow } = comparison;
  if (json) host.out(wholeJson(comparison, old, now));
  else {
    for (const note of differing) host.out(note);
    host.out(onlyLine(old, onlyOld, language) + onlyLine(now, onlyNow, language));
  }
  return comparison;
}

async function printing(host: Host, old: ComparisonSide, now: ComparisonSide, options: Options) {
  const { output = '', json, labels, paper, by = '', reason = '' } = options;
  if (json)
    throw new UsageError('wrong-arguments', output, {
      variant: 'not-together',
      one: '--json',
      other: '--output',
    });
  const { PrintedNotes } = await import('./printed-notes.js');
  const look = { ...(labels ? { labels } : {}), ...(paper ? { paper } : {}) };
  return PrintedNotes.open(host, old, now, { output, by, reason, look });
}

async function sidesOf(host: Host, words: readonly string[], since: string | undefined) {
  if (since !== undefined) return sinceOf(host, since, words);
  const [old, now, more] = words;
  if (old === undefined || now === undefined) {
    throw new UsageError('wrong-arguments', null, { variant: 'versions-missing' });
  }
  if (more !== undefined) throw new UsageError('wrong-arguments', more, { variant: 'versions-three' });
  if (old === '-' && now === '-')
    throw new UsageError('wrong-arguments', '-', { variant: 'versions-both-input' });
  return { old: await sideOf(host, old), now: await sideOf(host, now) };
}
