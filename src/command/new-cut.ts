import { basename, dirname, join, relative, resolve } from 'node:path';
import { isFolder } from '../build/output-targets.js';
import type { Reporter } from '../build/reporter.js';
import { UsageError } from '../build/usage-error.js';
import type { TableCut } from '../draft/cut-text.js';
import { compile } from '../episode/compile-cut.js';
import { cutKey, type Episode, newEpisodeCache } from '../episode/episode.js';
import { cutText } from '../episode/episode-templates.js';
import { episodeOf } from '../episode/find-cuts.js';
import { decode, readText } from '../episode/read-text.js';
import { type StoryCut, storyOf } from '../episode/story.js';
import type { Host } from '../host/host.js';
import type { Message } from '../language/catalogue/index.js';
import { type Diagnostic, diagnose } from '../language/diagnostic.js';
import { parse } from '../language/parse.js';
import { withoutMark } from '../language/source.js';
import { nearest } from '../language/suggest.js';
import { type LookOptions, nextCommand } from './command-options.js';
import { ConsoleReporter, type Format } from './console-reporter.js';

export interface NewOptions extends LookOptions {
  readonly output?: string;
  readonly like?: string;
  readonly time?: string;
  readonly levels?: string;
  readonly title?: string;
  readonly artist?: string;
  readonly fromCsv?: string;
  readonly format: Format;
}

/** A cut that is to be begun. */
interface Begun {
  readonly number: string;
  readonly text: string;
}

/** The episode that new cuts belong to, and the cuts that it has. */
interface Home {
  readonly episode: Episode;
  readonly cuts: readonly StoryCut[];
}

export async function newCut(host: Host, number: string | undefined, options: NewOptions): Promise<number> {
  const reporter = new ConsoleReporter(host, options.format, false);
  if (number !== undefined && !/^[\p{L}\p{Nd}_]+$/u.test(number))
    throw new UsageError('option-value', number, { variant: 'cut-number' });
  const episode = await episodeOf(host, host.cwd);
  const home = { episode, cuts: storyOf(host, episode, newEpisodeCache())?.cuts() ?? [] };
  const begun =
    options.fromCsv === undefined
      ? [blank(host, number, options, home)]
      : await ofTable(host, reporter, options.fromCsv, number, options, home);
  if (begun === null) return reporter.finish();
  const several = begun.length > 1;
  if (several && options.output !== undefined && !isFolder(host, options.output))
    throw new UsageError('wrong-arguments', options.output, {
      variant: 'table-one-file',
      cuts: begun.length,
    });
  const placed = begun.map((one) => {
    const taken = home.cuts.find((cut) => cut.number !== '' && cutKey(cut.number) === cutKey(one.number));
    if (taken)
      throw new UsageError('number-taken', number ?? options.fromCsv ?? null, {
        cut: one.number,
        file: taken.name,
      });
    const path = options.output === '-' ? null : placeOf(host, one.number, options, home.cuts);
    const name = path === null ? 'the new cut' : relative(host.cwd, path);
    if (path !== null && host.kind(path) !== 'none')
      throw new UsageError('would-overwrite', options.output ?? number ?? null, {
        variant: 'there',
        paths: [name],
      });
    return { ...one, path, name };
  });
  for (const { path, name, text } of placed) {
    const bytes = Buffer.from(text, 'utf8');
    const { diagnostics } = compile(host, path, episode, { name, bytes });
    const fault = diagnostics.find(({ severity, span }) => severity === 'error' && span.file === name);
    if (fault) throw badWord(options, text.slice(fault.span.start, fault.span.end), fault);
    // `--time 5` is five frames.
    const few = diagnostics.filter(({ code }) => code === 'time-in-frames');
    reporter.report(few, new Map([[name, text]]));
  }
  for (const { path, name, text } of placed) {
    if (path === null) host.out(text);
    else begin(host, path, name, text);
  }
  tell(host, reporter, placed, home);
  return reporter.finish();
}

function tell(
  host: Host,
  reporter: Reporter,
  placed: readonly { readonly number: string; readonly path: string | null; readonly name: string }[],
  { episode }: Home,
): void {
  const [first] = placed;
  if (first!.path === null) return;
  const { words } = reporter;
  const names = placed.map(({ name }) => name).join(', ');
  reporter.say(words.wrote(placed.length > 3 ? words.cuts(placed.length) : names));
  const story = storyOf(host, episode, newEpisodeCache());
  if (story && placed.some(({ number }) => story.find(number) === null))
    reporter.say(words.addToManifest(placed.length, episode.file!));
  reporter.say(
    words.next(nextCommand(host, 'check', placed.length > 1 ? dirname(first!.name) : first!.name)),
  );
}

/** A cut with one key a level. */
function blank(host: Host, number: string | undefined, options: NewOptions, { cuts }: Home): Begun {
  if (number === undefined) throw new UsageError('wrong-arguments', null, { variant: 'new-cut-number' });
  const like = options.like === undefined ? null : model(host, options.like, cuts);
  const text = cutText({
    number,
    title: oneLine(options.title ?? ''),
    time: options.time ?? '',
    artist: options.artist ?? '',
    levels: options.levels === undefined ? null : options.levels.split(',').map((one) => one.trim()),
    uses: [],
    like: like && { tree: parse(like.name, like.text).tree, text: like.text },
  });
  return { number, text };
}

/** The cuts of a table; null where it cannot be read. */
async function ofTable(
  host: Host,
  reporter: Reporter,
  file: string,
  number: string | undefined,
  options: NewOptions,
  { episode }: Home,
): Promise<Begun[] | null> {
  for (const key of ['like', 'time', 'levels', 'artist'] as const)
    if (options[key] !== undefined)
      throw new UsageError('wrong-arguments', `--${key}`, {
        variant: 'not-together',
        one: `--${key}`,
        other: '--from-csv',
      });
  const name = file === '-' ? 'standard input' : file;
  const path = resolve(host.cwd, file);
  const read = file === '-' ? decode(name, await host.standardInput()) : readText(host, path, name);
  const sources = new Map([[name, read.text]]);
  if (!read.ok) {
    reporter.report(read.diagnostics, sources);
    return null;
  }
  const { readExposureTable: readTable } = await import('../draft/exposure-table.js');
  const { cuts, diagnostics } = readTable(name, read.text);
  reporter.report(diagnostics, sources);
  if (cuts.length === 0) return null;
  if (cuts.length > 1 && number !== undefined)
    throw new UsageError('wrong-arguments', number, { variant: 'table-one-number', cuts: cuts.length });
  return Promise.all(
    cuts.map((cut) =>
      drafted(
        reporter,
        name,
        { ...cut, cut: number ?? cut.cut, title: oneLine(options.title ?? '') },
        episode,
      ),
    ),
  );
}

async function drafted(
  reporter: Reporter,
  file: string,
  cut: TableCut,
  { settings }: Episode,
): Promise<Begun> {
  if (cut.cut === '') throw new UsageError('wrong-arguments', null, { variant: 'table-without-number' });
  const { cutText: draft } = await import('../draft/cut-text.js');
  const { text, unlike } = draft(cut, settings);
  const span = { file, start: 0, end: 0 };
  reporter.report(
    unlike.map((level) => diagnose('draft-unlike', span, { level, cut: cut.cut })),
    new Map(),
  );
  return { number: cut.cut, text };
}

/** Which of the words of the command line cannot stand in a cut; `piece` is where the text of the new one is wrong. */
function badWord({ time, levels }: NewOptions, piece: string, { code, parameters }: Diagnostic): UsageError {
  const fault = { code, parameters } as Message;
  const parses = (text: string) => parse('', `${text}\n`).diagnostics.length === 0;
  if (time !== undefined && (!parses(`time ${time}`) || piece.includes(time)))
    return new UsageError('option-value', time, { variant: 'new-time', fault });
  if (levels?.split(',').some((one) => !parses(`${one.trim()}: 1`)))
    return new UsageError('option-value', levels, { variant: 'new-levels' });
  return new UsageError('option-value', null, { variant: 'new-cut', fault });
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
  throw new UsageError(
    'option-value',
    like,
    numbers.length > 0
      ? { variant: 'like-unknown', cut: like, guess: offer ?? null }
      : { variant: 'like-nothing', file: like },
    offer,
  );
}

/** Where a new cut belongs: named like its neighbours, in their folder. */
function placeOf(
  host: Host,
  number: string,
  { output, like }: NewOptions,
  cuts: readonly StoryCut[],
): string {
  if (output !== undefined && !isFolder(host, output)) {
    if (!/\.cut$/.test(output)) throw new UsageError('option-value', output, { variant: 'cut-file-name' });
    return resolve(host.cwd, output);
  }
  const neighbour =
    cuts.find((cut) => like !== undefined && cutKey(cut.number) === cutKey(like)) ??
    cuts.findLast((cut) => cut.number !== '') ??
    null;
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

/** Writes a file that is not there yet. */
export function begin(host: Host, path: string, name: string, text: string): void {
  const written = host.write(path, Buffer.from(text, 'utf8'));
  if (!written.ok) throw new UsageError('output-unwritable', null, { output: name, reason: written.reason });
}

/** A title is printed in one line, and is wrong with a line break in it. */
function oneLine(title: string): string {
  return title.replace(/\s*[\r\n]\s*/g, ' ');
}
