/** `level C reuse 8/C`: the drawings of another cut of the episode, with the numbers that they have there. */

import { join } from 'node:path';
import type { Host } from '../host/host.js';
import { type Diagnostic, diagnose } from '../language/diagnostic.js';
import { nearest } from '../language/suggest.js';
import type { Shot } from '../shot/shot.js';
import type { SolvedLevel } from '../solve/solved.js';
import type { Compiled } from './compile.js';
import { cutKey, type Episode } from './episode.js';
import { hasErrors } from './order.js';
import { isPattern, leadsOut, match } from './patterns.js';
import { decode } from './read.js';
import type { Lent, Shelf } from './shelf.js';

export interface Reused {
  /** For levels of the shot that reuse one: that level, solved. */
  readonly levels: ReadonlyMap<string, SolvedLevel>;
  /** Hashes of the cuts that they come from. */
  readonly digests: readonly string[];
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * Looks up the levels that a shot reuses. Outside an episode a cut is looked at by itself: nothing is found, and nothing
 * is said. `others`: compiles another cut of the episode. `chain`: numbers of the cuts that are being compiled.
 */
export function findReused(
  host: Host,
  shot: Shot,
  episode: Episode,
  shelf: Shelf,
  chain: readonly string[],
  others: (path: string) => Compiled,
): Reused {
  const levels = new Map<string, SolvedLevel>();
  const digests: string[] = [];
  const diagnostics: Diagnostic[] = [];
  const { folder } = episode;
  if (folder === null) return { levels, digests, diagnostics };

  const lend = (cut: string, level: string): Lent => {
    const begun = chain.indexOf(cutKey(cut));
    if (begun >= 0) {
      const round = [...chain.slice(begun), cutKey(cut)];
      return { reason: `the cuts reuse each other in a circle, ${round.join(' → ')}` };
    }
    const path = cutsOf(host, episode, folder, shelf).get(cutKey(cut));
    if (path === undefined) return { reason: `the episode has no cut ${cut}` };
    const id = JSON.stringify([path, level]);
    const known = shelf.levels.get(id) ?? borrow(others(path), cut, level);
    shelf.levels.set(id, known);
    return known;
  };

  for (const { name, reuse } of shot.levels) {
    if (!reuse) continue;
    const lent = lend(reuse.cut, reuse.level);
    if ('reason' in lent) {
      const unknown = `so the numbers of \`${reuse.cut}/${reuse.level}\` are not known here`;
      diagnostics.push(diagnose('reuse-unknown', reuse.span, `${sentence(lent.reason)}, ${unknown}.`));
    } else {
      levels.set(name, lent.level);
      digests.push(lent.digest);
    }
  }
  return { levels, digests, diagnostics };
}

function borrow({ solved, shot, diagnostics, digest }: Compiled, cut: string, level: string): Lent {
  if (!solved || hasErrors(diagnostics)) return { reason: `cut ${cut} has errors` };
  const found = solved.levels.find(({ name }) => name === level);
  const span = shot?.levels.find(({ name }) => name === level)?.reuse?.span;
  const lost = diagnostics.some((one) => one.code === 'reuse-unknown' && one.span.start === span?.start);
  if (lost) return { reason: `level ${level} of cut ${cut} itself reuses one that is not to be found` };
  if (found?.timed) return { level: found, digest };
  const names = solved.levels.filter(({ timed }) => timed).map(({ name }) => name);
  const offer = nearest(level, names);
  return {
    reason: found
      ? `level ${level} of cut ${cut} has no timeline`
      : `cut ${cut} has no level ${level}${offer ? ` (did you mean ${offer}?)` : ''}`,
  };
}

/** Where the cuts of an episode lie, by number. Only the line that names the cut is looked at. */
function cutsOf(host: Host, { cuts }: Episode, folder: string, shelf: Shelf): ReadonlyMap<string, string> {
  const known = shelf.cuts.get(folder);
  if (known) return known;
  const patterns = cuts?.map(({ text }) => text) ?? ['**/*.cut'];
  const files = patterns
    .filter((pattern) => !leadsOut(pattern))
    .flatMap((pattern) => (isPattern(pattern) ? match(host, folder, pattern) : [pattern]));
  const found = new Map<string, string>();
  for (const file of files) {
    const path = join(folder, file);
    const read = host.read(path);
    if (!read.ok) continue;
    const number = /^cut[ \t]+([\p{L}\p{Nd}_]+)/mu.exec(decode(path, read.value).text.normalize('NFKC'))?.[1];
    if (number !== undefined && !found.has(cutKey(number))) found.set(cutKey(number), path);
  }
  shelf.cuts.set(folder, found);
  return found;
}

function sentence(reason: string): string {
  return reason.charAt(0).toUpperCase() + reason.slice(1);
}
