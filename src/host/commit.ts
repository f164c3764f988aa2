import { readFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';

/** Digits of a commit's id that are printed. */
export const SHORT = 7;

/**
 * The short id of the commit that a folder's work tree stands on, read from git's own files (gitrepository-layout), so
 * that no program needs to be started for it. Undefined outside a work tree, or before its first commit.
 */
export function commitOf(folder: string): string | undefined {
  for (let at = resolve(folder); ; at = dirname(at)) {
    const git = gitFolder(at);
    if (git) return head(git)?.slice(0, SHORT);
    if (dirname(at) === at) return undefined;
  }
}

/** The `.git` of a work tree: a folder, or a file that names one. */
function gitFolder(tree: string): string | undefined {
  const dotGit = join(tree, '.git');
  if (text(join(dotGit, 'HEAD')) !== undefined) return dotGit;
  const named = text(dotGit)?.match(/^gitdir: (.+)$/m)?.[1];
  return named && resolve(tree, named);
}

function head(git: string): string | undefined {
  const shared = text(join(git, 'commondir'));
  const common = shared ? resolve(git, shared) : git;
  let value = text(join(git, 'HEAD'));
  for (let hops = 0; value?.startsWith('ref: ') && hops < 5; hops++) {
    const name = value.slice('ref: '.length);
    value = text(join(git, name)) ?? text(join(common, name)) ?? packed(common, name);
  }
  return value?.match(/^[0-9a-f]{40,64}$/)?.[0];
}

function packed(common: string, name: string): string | undefined {
  const line = text(join(common, 'packed-refs'))
    ?.split('\n')
    .find((one) => one.endsWith(` ${name}`));
  return line?.split(' ')[0];
}

function text(path: string): string | undefined {
  try {
    return readFileSync(path, 'utf8').trim();
  } catch {
    return undefined;
  }
}
