/** git's diff for cuts: git calls it for each file that differs, and shows what it prints. */

import { dirname, resolve } from 'node:path';
import { UsageError } from '../build/usage-error.js';
import { compare } from '../compare/compare-cuts.js';
import { compile } from '../episode/compile-cut.js';
import { episodeOf } from '../episode/find-cuts.js';
import type { Host } from '../host/host.js';
import { hasErrors } from '../language/diagnostic.js';
import { runTexts } from '../language/message.js';
import { userLanguage } from '../language/user-language.js';
import type { LabelLanguage } from '../words/labels.js';
import { ConsoleReporter } from './console-reporter.js';
import { retakeNote } from './retake-note.js';

/**
 * `given` as git passes it to an external diff: path, old file, old id, old mode, new file, new id, new mode; after a rename
 * the new path and what git says of it; the path alone for a file with an unsolved merge. Anything but 0 would stop git.
 */
export async function gitDiff(
  host: Host,
  given: readonly string[],
  language: LabelLanguage,
): Promise<number> {
  const [path, oldFile, , , newFile, , , newPath] = given;
  if (path === undefined || (given.length !== 1 && given.length < 7)) {
    throw new UsageError('wrong-arguments', null, { variant: 'git-words' });
  }
  const words = runTexts(userLanguage(host)).gitDiff;
  const name = newPath ?? path;
  if (oldFile === undefined || newFile === undefined) {
    host.out(`${words.unsettled(path)}\n`);
    return 0;
  }
  const place = resolve(host.cwd, name);
  const episode = await episodeOf(host, dirname(place));
  const reporter = new ConsoleReporter(host, 'human', false);
  // The texts lie somewhere else, but mean what they mean in their own folder: what they use is read from there.
  const read = (file: string, word: string) => {
    if (file === '/dev/null') return null;
    const bytes = host.read(resolve(host.cwd, file));
    if (!bytes.ok) return 'errors' as const;
    const compiled = compile(host, place, episode, { name: `${word}:${name}`, bytes: bytes.value });
    const errors = compiled.diagnostics.filter(({ severity }) => severity === 'error');
    reporter.report(errors, compiled.sources);
    return hasErrors(errors) ? ('errors' as const) : compiled.solved;
  };
  const [old, now] = [read(oldFile, 'old'), read(newFile, 'new')];
  if (old === 'errors' || now === 'errors') {
    const broken = old !== 'errors' ? 'new' : now !== 'errors' ? 'old' : 'both';
    host.out(`${words.notCompared(name, broken)}\n`);
  } else if (old && now) {
    const changes = compare(old, now);
    host.out(
      changes.length > 0
        ? `${name}: ${retakeNote(old, now, changes, language)}`
        : `${words.nothingChanges(name)}\n`,
    );
  } else if (now) host.out(`${words.cutNew(name, now.shot.cut)}\n`);
  else if (old) host.out(`${words.cutDropped(name, old.shot.cut)}\n`);
  else host.out(`${words.onlyShared(name)}\n`);
  return 0;
}
