/** File patterns of the manifest, matched inside one folder and never outside it. */

import { join } from 'node:path';
import type { Host } from '../host/host.js';

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
  const parts = pattern.split('/').filter((part) => part !== '' && part !== '.');
  const segments = parts.filter((part, i) => part !== '**' || parts[i - 1] !== '**');
  /** Folders from which some rest of the pattern was followed already: several `**` lead to the same in many ways. */
  const walked = new Set<string>();
  const walk = (at: string, rest: readonly string[], seen: readonly string[]): void => {
    const [segment, ...others] = rest;
    if (segment === undefined || seen.length > DEEPEST) return;
    const key = `${rest.length} ${at}`;
    if (walked.has(key)) return;
    walked.add(key);
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
    const plain = segment.normalize('NFC');
    for (const name of names(at)) {
      if (!fits(name, plain)) continue;
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

/**
 * Whether a name fits one segment of a pattern. In the time of name times segment: a regular expression would try every way of
 * dividing `*a*a*a` over a name of many `a`, which may take for ever.
 */
function fits(name: string, segment: string): boolean {
  const letters = [...name];
  const signs = [...segment];
  let at = 0;
  let sign = 0;
  // The last star, and the letter from which on it is tried next.
  let star = -1;
  let retry = 0;
  while (at < letters.length) {
    if (signs[sign] === '*') {
      star = sign++;
      retry = at;
    } else if (signs[sign] === '?' || signs[sign] === letters[at]) {
      sign++;
      at++;
    } else if (star >= 0) {
      sign = star + 1;
      at = ++retry;
    } else return false;
  }
  while (signs[sign] === '*') sign++;
  return sign === signs.length;
}

/** Names in story order; takes each apart only once. */
function sortNaturally(names: readonly string[]): string[] {
  const taken = names.map((name) => ({ name, parts: parts(name) }));
  return taken.sort((a, b) => compare(a.name, b.name, a.parts, b.parts)).map(({ name }) => name);
}

/** Story order of names: runs of digits compare as numbers, so 2 stands before 10, and 12A after 12. */
export function compareNaturally(a: string, b: string): number {
  return compare(a, b, parts(a), parts(b));
}

function compare(a: string, b: string, left: readonly string[], right: readonly string[]): number {
  for (let i = 0; i < Math.max(left.length, right.length); i++) {
    const x = left[i];
    const y = right[i];
    if (x === undefined) return -1;
    if (y === undefined) return 1;
    if (x === y) continue;
    const digits = isDigits(x) && isDigits(y);
    if (digits) {
      const one = strip(x);
      const two = strip(y);
      if (one.length !== two.length) return one.length - two.length;
      if (one !== two) return one < two ? -1 : 1;
      continue;
    }
    return x < y ? -1 : 1;
  }
  return a < b ? -1 : a > b ? 1 : 0;
}

/** Folder by folder, and within a name by its runs of digits; the ending `.cut` does not count. */
function parts(name: string): string[] {
  return name.replace(/\.cut$/, '').match(/\d+|[^\d/]+|\//g) ?? [];
}

function isDigits(text: string): boolean {
  return /^\d/.test(text);
}

function strip(digits: string): string {
  return digits.replace(/^0+(?=\d)/, '');
}
