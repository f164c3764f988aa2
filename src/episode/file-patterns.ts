/** File patterns of the manifest, matched inside one folder and never outside it. */

import { join } from 'node:path';
import type { Host } from '../host/host.js';
import { sortNaturally } from './natural-order.js';

/** Folders that hold no cuts and may be huge. */
const SKIPPED = new Set(['node_modules']);

/** Folders below this depth are not searched. */
const DEEPEST = 32;

export function isPattern(text: string): boolean {
  return /[*?]/.test(text);
}

/** Whether a path or pattern leads out of the folder that it is written in, as far as its text shows. */
export function leadsOut(text: string): boolean {
  if (/^([/\\]|[A-Za-z]:)/.test(text)) return true;
  let depth = 0;
  for (const part of text.split(/[/\\]/)) {
    if (part === '..') depth -= 1;
    else if (part !== '' && part !== '.') depth += 1;
    if (depth < 0) return true;
  }
  return false;
}

/** Takes a folder below the searched one that cannot be read, as a path from there, and why. */
export type Refused = (folder: string, reason: string) => void;

/**
 * The files that an entry of the manifest names, in story order; a file that it names itself need not be there. `unsure`: folders
 * may be among them, which spares a question for each file.
 */
export function filesOf(
  host: Host,
  folder: string,
  entry: string,
  unsure = false,
  refused: Refused = () => {},
): string[] {
  return isPattern(entry) ? sortNaturally(match(host, folder, entry, unsure, refused)) : [entry];
}

/**
 * Files under `folder` (absolute) that fit the pattern, as paths from it with `/`, unsorted. `*` is any characters of
 * one name, `?` one character, `**` any folders, none included.
 */
function match(host: Host, folder: string, pattern: string, unsure: boolean, refused: Refused): string[] {
  const found = new Set<string>();
  const names = (at: string): string[] => {
    const list = host.list(join(folder, at));
    if (!list.ok) refused(at, list.reason);
    return list.ok ? list.value.filter((name) => !name.startsWith('.') && !SKIPPED.has(name)) : [];
  };
  const segments = pattern.split('/').filter((part) => part !== '' && part !== '.');
  const walk = (at: string, rest: readonly string[], seen: readonly string[]): void => {
    const [segment, ...others] = rest;
    if (segment === undefined || seen.length > DEEPEST) return;
    const here = join(folder, at);
    const real = host.real(here);
    if (segment === '**') {
      walk(at, others, seen);
      // A link that leads back up would be walked for ever.
      if (seen.includes(real)) return;
      for (const name of names(at))
        if (host.kind(join(here, name)) === 'folder') walk(slash(at, name), rest, [...seen, real]);
      return;
    }
    if (segment === '..') {
      walk(slash(at, segment), others, seen);
      return;
    }
    const fits = expression(segment);
    for (const name of names(at)) {
      if (!fits.test(name)) continue;
      const path = slash(at, name);
      const is = (kind: 'file' | 'folder') => host.kind(join(folder, path)) === kind;
      if (others.length === 0) {
        if (unsure || is('file')) found.add(path);
      } else if (is('folder')) walk(path, others, seen);
    }
  };
  walk('', segments, []);
  return [...found];
}

function slash(folder: string, name: string): string {
  return folder === '' ? name : `${folder}/${name}`;
}

function expression(segment: string): RegExp {
  const source = segment
    .normalize('NFC')
    .replace(/[.+^${}()|[\]\\]/g, '\\$&')
    .replace(/\*+/g, '[^/]*')
    .replace(/\?/g, '[^/]');
  return new RegExp(`^${source}$`, 'u');
}
