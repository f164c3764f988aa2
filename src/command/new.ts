import { basename, dirname, join, relative, resolve } from 'node:path';
import { Argument, type Command } from 'commander';
import { compile } from '../episode/compile.js';
import { cutKey } from '../episode/episode.js';
import { episodeOf } from '../episode/find.js';
import { newShelf } from '../episode/shelf.js';
import { type StoryCut, storyOf } from '../episode/story.js';
import { cutText, episodeFiles, LENGTH } from '../episode/templates.js';
import type { Host } from '../host/host.js';
import { parse } from '../language/parse.js';
import { withoutMark } from '../language/source.js';
import { nearest } from '../language/suggest.js';
import { Desk, FORMATS, type Format } from './desk.js';
import { LineFault } from './line.js';
import { choice, examples, type LookOptions, looks, withLooks } from './options.js';
import { isFolder } from './output.js';
import type { Run } from './run.js';

const WHAT = ['episode', 'cut'] as const;
type What = (typeof WHAT)[number];

interface Options extends LookOptions {
  readonly output?: string;
  readonly like?: string;
  readonly time?: string;
  readonly levels?: string;
  readonly title?: string;
  readonly artist?: string;
  readonly format: Format;
}

export function define(command: Command, run: Run): Command {
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
    .option('-o, --output <path>', 'where the cut is written; - is standard output')
    .addOption(
      choice('--format <form>', 'how problems are shown on standard error', FORMATS).default('human'),
    );
  return withLooks(command)
    .addHelpText(
      'after',
      `\nNothing is ever written over: where one of the files is there already, none is written.\n${examples(
        [
          'cutwright new episode harbour --title "Harbour Lights"',
          'a folder with a manifest, a house file and cut 1',
        ],
        ['cutwright new cut 13', 'the next cut of this episode, one key a level'],
        ['cutwright new cut 13 --like 12', "on cut 12's set-up, without its drawings"],
        ['cutwright new cut 4A --time 2+12 --levels A,B,C', 'three levels, two seconds and a half'],
      )}`,
    )
    .action(async (what: What, name: string | undefined, options: Options) => {
      run.status =
        what === 'episode'
          ? newEpisode(run.host, name ?? '.', options)
          : await newCut(run.host, name, options);
    });
}

function whatOf(word: string): What {
  const what = WHAT.find((one) => one === word);
  if (what) return what;
  const offer = nearest(word, WHAT);
  throw new LineFault(
    'wrong-arguments',
    word,
    `\`new\` makes an episode or a cut${offer ? `; did you mean \`${offer}\`?` : ', so one of these words comes next.'}`,
    offer,
  );
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
      throw new LineFault(
        'wrong-arguments',
        `--${key}`,
        `\`--${key}\` is for a new cut; an episode has none.`,
      );
  const root = resolve(host.cwd, folder);
  if (host.kind(root) === 'file')
    throw new LineFault('would-overwrite', folder, `\`${folder}\` is a file; an episode needs a folder.`);
  const set = looks(options);
  const files = episodeFiles({
    title: options.title ?? (basename(host.real(root)) || 'Untitled'),
    episode: '1',
    convention: set.convention ?? 'japan',
    labels: set.labels ?? 'en',
    paper: set.paper ?? 'A4',
  });
  const there = [...files.keys()].filter((path) => host.kind(join(root, path)) !== 'none');
  if (there.length > 0)
    throw new LineFault(
      'would-overwrite',
      folder === '.' ? null : folder,
      `${there.map((path) => `\`${join(folder, path)}\``).join(', ')} ${there.length > 1 ? 'are' : 'is'} there already; nothing was written.`,
    );
  for (const [path, text] of files) write(host, join(root, path), join(folder, path), text);
  const into = folder === '.' ? '' : `cd ${folder} && `;
  const desk = new Desk(host, options.format, false);
  desk.say(`wrote ${[...files.keys()].map((path) => join(folder, path)).join(', ')}`);
  desk.say(`next: ${into}cutwright build`);
  return desk.finish();
}

// ---- a cut

async function newCut(host: Host, number: string | undefined, options: Options): Promise<number> {
  if (number === undefined)
    throw new LineFault('wrong-arguments', null, 'A new cut needs its number, as in `cutwright new cut 13`.');
  if (!/^[\p{L}\p{Nd}_]+$/u.test(number))
    throw new LineFault(
      'option-value',
      number,
      'A cut is numbered with letters and digits, such as 13 or 12A.',
    );
  const episode = await episodeOf(host, host.cwd);
  const story = storyOf(host, episode, newShelf());
  const taken = story?.find(number);
  if (taken)
    throw new LineFault('number-taken', number, `Cut ${number} is there already: \`${taken.name}\`.`);
  const like = options.like === undefined ? null : model(host, options.like, story?.cuts() ?? []);
  const path =
    options.output === '-' ? null : await placeOf(host, number, options, like, story?.cuts() ?? []);
  const text = cutText({
    number,
    title: options.title ?? '',
    time: options.time ?? '',
    artist: options.artist ?? '',
    levels: options.levels === undefined ? null : options.levels.split(',').map((one) => one.trim()),
    uses: [],
    like: like && { tree: parse(like.name, like.text).tree, text: like.text },
  });
  const name = path === null ? 'the new cut' : relative(host.cwd, path);
  const bytes = Buffer.from(text, 'utf8');
  const { diagnostics } = compile(host, path, episode, { name, bytes });
  const fault = diagnostics.find(({ severity, span }) => severity === 'error' && span.file === name);
  if (fault) throw badWord(options, text.slice(fault.span.start, fault.span.end), fault.message);
  if (path === null) {
    host.out(text);
    return 0;
  }
  if (host.kind(path) !== 'none')
    throw new LineFault(
      'would-overwrite',
      options.output ?? number,
      `\`${name}\` is there already; nothing was written.`,
    );
  write(host, path, name, text);
  const listed = story === null || storyOf(host, episode, newShelf())!.find(number) !== null;
  const desk = new Desk(host, options.format, false);
  desk.say(`wrote ${name}`);
  if (!listed) desk.say(`the manifest does not list it yet: add it to \`cuts:\` in ${episode.file}`);
  desk.say(`next: cutwright check ${name}`);
  return desk.finish();
}

/** Which of the words of the command line cannot stand in a cut; `piece` is where the text of the new one is wrong. */
function badWord({ time, levels }: Options, piece: string, message: string): LineFault {
  const parses = (text: string) => parse('', `${text}\n`).diagnostics.length === 0;
  if (time !== undefined && (!parses(`time ${time}`) || piece.includes(time)))
    return new LineFault(
      'option-value',
      time,
      `\`--time\` takes a length such as 5+0, 120 or 8'04. ${message}`,
    );
  if (levels?.split(',').some((one) => !parses(`${one.trim()}: 1`)))
    return new LineFault(
      'option-value',
      levels,
      '`--levels` takes names of levels with commas between, such as A,B.',
    );
  return new LineFault('option-value', null, `The new cut would not be one: ${message}`);
}

interface Model {
  readonly name: string;
  readonly path: string;
  readonly text: string;
}

/** The cut that a new one is like: a number of the episode, or a file. */
function model(host: Host, like: string, cuts: readonly StoryCut[]): Model {
  const found = cuts.find(({ number }) => number !== '' && cutKey(number) === cutKey(like));
  if (found?.text != null) return { name: found.name, path: found.path, text: withoutMark(found.text) };
  const path = resolve(host.cwd, like);
  const read = host.kind(path) === 'file' ? host.read(path) : null;
  if (read?.ok) return { name: like, path, text: withoutMark(Buffer.from(read.value).toString('utf8')) };
  const numbers = cuts.map(({ number }) => number).filter(Boolean);
  const offer = nearest(like, numbers);
  throw new LineFault(
    'option-value',
    like,
    numbers.length > 0
      ? `The episode has no cut ${like}${offer ? `; did you mean ${offer}?` : '.'}`
      : `There is no episode here, and no file \`${like}\`, that a cut could be like.`,
    offer,
  );
}

/** Where a new cut belongs: named like its neighbours, in their folder. */
async function placeOf(
  host: Host,
  number: string,
  { output }: Options,
  like: Model | null,
  cuts: readonly StoryCut[],
): Promise<string> {
  if (output !== undefined && !isFolder(host, output)) {
    if (!/\.cut$/.test(output))
      throw new LineFault('option-value', output, 'The name of a cut ends in .cut.');
    return resolve(host.cwd, output);
  }
  const neighbour = like ?? cuts.findLast((cut) => cut.number !== '') ?? null;
  const own = cuts.find(({ path }) => path === neighbour?.path)?.number ?? '';
  const name = fileName(number, neighbour === null ? null : basename(neighbour.path), own);
  if (output !== undefined) return resolve(host.cwd, output, name);
  return join(neighbour === null ? host.cwd : dirname(neighbour.path), name);
}

/** `c013.cut` after `c012.cut`, which is cut 12; `c013.cut` where nothing is to be followed. */
export function fileName(number: string, like: string | null, likeNumber: string): string {
  const parts = /^(\d+)(.*)$/u.exec(number);
  const digits = (width: number): string => (parts ? parts[1]!.padStart(width, '0') + parts[2]! : number);
  const found = like === null ? null : /^(.*?)(\d+)([^\d]*)\.cut$/.exec(like);
  if (!found) return `c${digits(3)}.cut`;
  const [, before, figures, after] = found;
  // What stands behind the figures is the number's own letter (`c012A`), or part of every name.
  const letter = /^\d+(.*)$/.exec(likeNumber)?.[1] ?? '';
  const rest = after!.startsWith(letter) ? after!.slice(letter.length) : after!;
  return `${before}${digits(figures!.length)}${rest}.cut`;
}

function write(host: Host, path: string, name: string, text: string): void {
  const written = host.write(path, Buffer.from(text, 'utf8'));
  if (!written.ok)
    throw new LineFault('output-unwritable', null, `\`${name}\` cannot be written: ${written.reason}.`);
}
