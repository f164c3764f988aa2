import { basename, join, resolve } from 'node:path';
import { Argument, type Command } from 'commander';
import { UsageError } from '../build/usage-error.js';
import { episodeFiles, LENGTH } from '../episode/episode-templates.js';
import type { Host } from '../host/host.js';
import { nearest } from '../language/suggest.js';
import { userLanguage } from '../language/user-language.js';
import { type CommandContext, choice, examples, looks, nextCommand, withLooks } from './command-options.js';
import { ConsoleReporter, FORMATS } from './console-reporter.js';
import { begin, newCut, type NewOptions as Options } from './new-cut.js';

const WHAT = ['episode', 'cut'] as const;
type What = (typeof WHAT)[number];

export function define(command: Command, context: CommandContext): Command {
  command
    .addArgument(new Argument('<what>', 'episode or cut').choices(WHAT).argParser(whatOf))
    .argument('[name]', "the episode's folder (otherwise this one), or the cut's number")
    .option('--like <cut>', 'take stack, levels, fields, artist and scene from that cut of the episode')
    .option(
      '--time <length>',
      `how long the cut is, such as 5+0; otherwise as the one it is like, or ${LENGTH}`,
    )
    .option('--levels <names>', 'levels with drawings, bottom to top, such as A,B')
    .option('--title <words>', 'title of the work, or of the cut')
    .option('--artist <name>', 'who draws the cut')
    .option('--from-csv <file>', 'make the cut of a table of exposures; - is standard input')
    .option('-o, --output <path>', 'where the cut is written; - is standard output')
    .addOption(
      choice('--format <form>', 'how problems are shown on standard error', FORMATS).default('human'),
    );
  return withLooks(command)
    .addHelpText(
      'after',
      `\nNothing is ever written over: where one of the files is there already, none is written.\n${examples(
        [
          'cutwright new episode saltbox --title "Saltbox Winter"',
          'a folder with a manifest, a house file and cut 1',
        ],
        ['cutwright new cut 13', 'the next cut of this episode, one key a level'],
        ['cutwright new cut 13 --like 12', "on cut 12's set-up, without its drawings"],
        ['cutwright new cut 4A --time 2+12 --levels A,B,C', 'three levels, two seconds and a half'],
        ['cutwright new cut 13 --from-csv grid.csv', 'from a table frame,A,B: holds and cycles are found'],
        ['cutwright new cut --from-csv exposures.csv -o cuts/', 'each cut of an exported table'],
      )}`,
    )
    .action(async (what: What, name: string | undefined, options: Options) => {
      context.status =
        what === 'episode'
          ? newEpisode(context.host, name ?? '.', options)
          : await newCut(context.host, name, options);
    });
}

function whatOf(word: string): What {
  const what = WHAT.find((one) => one === word);
  if (what) return what;
  const offer = nearest(word, WHAT);
  throw new UsageError('wrong-arguments', word, { variant: 'new-what', guess: offer ?? null }, offer);
}

// ---- an episode

function newEpisode(host: Host, folder: string, options: Options): number {
  for (const [key, value] of Object.entries({
    like: options.like,
    time: options.time,
    levels: options.levels,
    artist: options.artist,
    output: options.output,
  }))
    if (value !== undefined)
      throw new UsageError('wrong-arguments', `--${key}`, { variant: 'new-cut-option', option: `--${key}` });
  const root = resolve(host.cwd, folder);
  if (host.kind(root) === 'file')
    throw new UsageError('would-overwrite', folder, { variant: 'file-for-folder', path: folder });
  const set = looks(options);
  const language = userLanguage(host);
  const files = episodeFiles({
    title: options.title ?? (basename(host.real(root)) || 'Untitled'),
    episode: '1',
    convention: set.convention ?? 'japan',
    labels: set.labels ?? language,
    paper: set.paper ?? 'A4',
    language,
  });
  const there = [...files.keys()].filter((path) => host.kind(join(root, path)) !== 'none');
  if (there.length > 0)
    throw new UsageError('would-overwrite', folder === '.' ? null : folder, {
      variant: 'there',
      paths: there.map((path) => join(folder, path)),
    });
  for (const [path, text] of files) begin(host, join(root, path), join(folder, path), text);
  const reporter = new ConsoleReporter(host, options.format, false);
  reporter.say(reporter.words.wrote([...files.keys()].map((path) => join(folder, path)).join(', ')));
  reporter.say(reporter.words.next(nextCommand(host, 'build', ...(folder === '.' ? [] : [folder]))));
  return reporter.finish();
}
