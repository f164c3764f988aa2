/** Episodes of a few small cuts, for tests of what cuts have to do with each other. */

import { type Compiled, compile } from '../../src/episode/compile-cut.js';
import { newEpisodeCache } from '../../src/episode/episode.js';
import { findCuts } from '../../src/episode/find-cuts.js';
import { type StoryOrder, storyOf } from '../../src/episode/story.js';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import { messageOf } from '../../src/language/message.js';

export type Files = Readonly<Record<string, string>>;

/** A cut of two seconds. */
export const cut = (number: string, lines = ''): string =>
  `cut ${number}\ntime 2+0\n${lines}${lines === '' ? '' : '\n'}A: 1--2..\n`;

/** Compiles what arguments mean, in their order, on one cache; cuts by their names; beside an empty manifest. */
export async function compiled(files: Files, ...args: string[]): Promise<Record<string, Compiled>> {
  return compiledIn(memoryHost({ 'episode.yaml': '', ...files }), ...args);
}

export async function compiledIn(host: MemoryHost, ...args: string[]): Promise<Record<string, Compiled>> {
  const { jobs } = await findCuts(host, args.length > 0 ? args : ['.']);
  const cache = newEpisodeCache();
  return Object.fromEntries(
    jobs.map(({ name, path, episode }) => [name, compile(host, path, episode, { name, cache })]),
  );
}

export async function storyIn(host: MemoryHost, folder = '.'): Promise<StoryOrder> {
  const { episodes } = await findCuts(host, [folder]);
  return storyOf(host, episodes[0]!, newEpisodeCache())!;
}

/** `code place: message`, of the codes that begin with a word; the place is what the span covers. */
export function told(one: Compiled | undefined, about: string): string[] {
  return one!.diagnostics
    .filter(({ code }) => code.startsWith(about))
    .map((each) => {
      const { code, span } = each;
      const place = one!.sources.get(span.file)!.slice(span.start, span.end);
      return `${code} ${place}: ${messageOf(each, 'en')}`;
    });
}

export const codes = (one: Compiled | undefined): string[] => one!.diagnostics.map(({ code }) => code);

/** Counts what is read from now on, by file name. */
export function readsOf(host: MemoryHost): string[] {
  const names: string[] = [];
  const { read } = host;
  host.read = (path) => {
    names.push(path.replace('/work/', ''));
    return read(path);
  };
  return names;
}
