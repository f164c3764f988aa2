/** `use "house.cut"`: the files that a cut reads phrases, fields and levels from. */

import { basename, dirname, isAbsolute, join, resolve } from 'node:path';
import type { Host } from '../host/host.js';
import { type Diagnostic, diagnose, type Span } from '../language/diagnostic.js';
import { foldCharacters, hasControls, splitStatements, tokenize } from '../language/lexer.js';
import { begun, MOST_BROKEN, parse } from '../language/parse.js';
import { withoutMark } from '../language/source.js';
import { readStatement } from '../language/statement-reader.js';
import type { Statement, StatementOf, Tree } from '../language/tree.js';
import { type EpisodeCache, newEpisodeCache } from './episode.js';
import { lies } from './find-cuts.js';
import { readText } from './read-text.js';

export interface Used {
  /** Each file once, those that others use first. */
  readonly trees: readonly Tree[];
  readonly sources: ReadonlyMap<string, string>;
  /** Of finding, reading and parsing them. */
  readonly diagnostics: readonly Diagnostic[];
}

/** More files than this are no house style but a slip. */
const MOST_FILES = 200;

/**
 * Follows every `use` of a tree that was read from `path` (absolute). A used file lies in the folder of the file that
 * uses it, or in `root` (the episode's folder, absolute, or null) or below, and nowhere else.
 */
export function findUses(
  host: Host,
  path: string,
  tree: Tree,
  root: string | null,
  cache: EpisodeCache = newEpisodeCache(),
): Used {
  const trees: Tree[] = [];
  const sources = new Map<string, string>();
  const diagnostics: Diagnostic[] = [];
  const done = new Set<string>();

  /** `chain`: the files that are being read, outermost first. */
  const follow = (user: Tree, at: string, chain: readonly { real: string; name: string }[]): void => {
    for (const statement of user.statements) {
      if (statement.kind !== 'use') continue;
      const wanted = statement as StatementOf<'use'>;
      const span = wanted.path.span;
      const typed = wanted.path.text;
      const folder = dirname(at);
      const target = resolve(folder, typed);
      const name = join(dirname(user.file), typed);
      const id = JSON.stringify([folder, typed, root]);
      const inReach = cache.reach.get(id) ?? isInReach(host, typed, folder, root);
      cache.reach.set(id, inReach);
      if (!inReach) {
        diagnostics.push(diagnose('use-outside', span, { path: typed, inEpisode: root !== null }));
        continue;
      }
      const real = host.real(target);
      const begun = chain.findIndex((link) => link.real === real);
      if (begun >= 0) {
        const names = [...chain.slice(begun), { name }].map((link) => link.name);
        diagnostics.push(diagnose('use-circle', span, { files: names }));
        continue;
      }
      if (done.has(real)) continue;
      if (done.size >= MOST_FILES) {
        diagnostics.push(diagnose('use-missing', span, { variant: 'too-many', most: MOST_FILES }));
        return;
      }
      done.add(real);
      const read = open(target, real, name, span);
      if (!read) continue;
      follow(read, target, [...chain, { real, name }]);
      trees.push(read);
    }
  };

  const open = (target: string, real: string, name: string, span: Span): Tree | null => {
    const known = cache.files.get(real);
    if (known && known.tree.file === name) {
      sources.set(name, known.text);
      diagnostics.push(...known.diagnostics);
      return known.tree;
    }
    const {
      text,
      ok,
      diagnostics: faults,
    } = readText(host, target, name, { from: span, missing: 'use-missing' });
    diagnostics.push(...faults);
    if (!ok) {
      if (text !== '') sources.set(name, text);
      return null;
    }
    const parsed = parse(name, text);
    diagnostics.push(...parsed.diagnostics);
    sources.set(name, text);
    cache.files.set(real, { text, tree: parsed.tree, diagnostics: parsed.diagnostics });
    return parsed.tree;
  };

  follow(tree, path, [{ real: host.real(path), name: tree.file }]);
  return { trees, sources, diagnostics };
}

/**
 * Whether what a file in `folder` names lies in that folder itself, or in `root` (the episode's folder, or null) or below. Whether it
 * is there is another question.
 */
export function isInReach(host: Host, typed: string, folder: string, root: string | null): boolean {
  if (isAbsolute(typed) || /^[A-Za-z]:|\\/.test(typed)) return false;
  const target = resolve(folder, typed);
  // The place is judged before anything is read: a message must not tell what lies elsewhere on the disk.
  const lexical = dirname(target) === folder || (root !== null && lies(target, root));
  if (!lexical) return false;
  const real = realPlace(host, target);
  if (dirname(real) === host.real(folder)) return true;
  return root !== null && lies(real, host.real(root));
}

/** The canonical path of what may not be there yet. */
function realPlace(host: Host, path: string): string {
  const up = dirname(path);
  if (host.kind(path) !== 'none' || up === path) return host.real(path);
  return join(realPlace(host, up), basename(path));
}

// ---- the few statements of a cut that concern the rest of its episode, found without reading the others

/** Letters as a Japanese keyboard types them. */
const WIDE = /[\uff41-\uff5a]/;
/** `cut 12 "Rooftop"`, with nothing in it that would have to be read twice. */
const PLAIN_CUT =
  /(?:^|[\n\r])cut[ \t]+(\d+[A-Za-z]?)[ \t]*(?:"[^"\\\n\r]*"[ \t]*)?(?:#[^\n\r]*)?(?=\s*(?:[\n\r][^\s#\uff03]|$))/;

const CUT = /(?:^|[\n\r])[cｃ][uｕ][tｔ]/;

/** False where the word certainly stands nowhere in the text. */
export function mentions(text: string, word: string): boolean {
  return text.includes(word) || WIDE.test(text);
}

/** The number of a cut whose line is written in the plainest way; null where the grammar must be asked. */
export function plainNumber(typed: string): string | null {
  const text = withoutMark(typed);
  const found = PLAIN_CUT.exec(text);
  if (!found || hasControls(text) || CUT.test(text.slice(0, found.index))) return null;
  return found[1]!;
}

/** `level C reuse 8/C`, with nothing in it that would have to be read twice. */
const PLAIN_REUSE =
  /(?:^|[\n\r])level[ \t]+[A-Za-z]\w*[ \t]+reuse[ \t]+(\d+[A-Za-z]?)\/[A-Za-z]\w*[ \t]*(?:#(?![^\n\r]*reuse)[^\n\r]*)?(?=$|[\n\r])/g;

/**
 * The cuts that the levels of a text reuse, where each of them says so in the plainest way; null where the grammar must be asked.
 */
export function plainReuses(typed: string): string[] | null {
  const plain = [...typed.matchAll(PLAIN_REUSE)].map(([, cut]) => cut!);
  return WIDE.test(typed) || typed.split('reuse').length - 1 !== plain.length ? null : plain;
}

/** Numbers of the cuts that a text may reuse levels of. */
export function lendersIn(text: string): readonly string[] {
  if (!mentions(text, 'reuse')) return [];
  const plain = plainReuses(text);
  if (plain !== null) return plain;
  return scan('', text).statements.flatMap((one) => (one.kind === 'level' && one.reuse ? one.reuse.cut : []));
}

const ASCII = /^[\t\n\r -~]*$/;
const BEGINS_WITH_USE = /(?:^|[\n\r])use/;
/** A `use` on the first line, which the next line does not continue. */
const LONE_USE = /^(use[ \t]+"[^"\\\n\r]*")[ \t]*[\n\r]+(?=[^\s#])/;

/** The statements that may be a `use`, as they stand there. */
export function usesIn(typed: string): string[] {
  if (!mentions(typed, 'use')) return [];
  if (ASCII.test(typed)) {
    // Nothing is folded in it but comments.
    if (!BEGINS_WITH_USE.test(typed)) return [];
    const lone = LONE_USE.exec(typed);
    if (lone && !BEGINS_WITH_USE.test(typed.slice(lone[0].length))) return [lone[1]!];
  }
  const text = withoutMark(typed);
  const folded = foldCharacters(text).text;
  return splitStatements(folded)
    .statements.filter(({ start }) => folded.startsWith('use', start))
    .map(({ start, end }) => text.slice(start, end));
}

/** Of a `level` only its reuse matters here. */
const WANTED =
  /^(?:cut|fps|time|overlap|use|track)(?![\p{L}\p{M}\p{Nd}_])|^level[^\p{L}\p{M}\p{Nd}_].*\breuse\b/su;

/**
 * Reads the statements `cut`, `time`, `fps`, `overlap`, `use`, `track` and `level … reuse` of a text with the grammar of the language,
 * and leaves all others unread. Offsets count the whole text, as those of `parse` do.
 */
export function scan(file: string, typed: string): Tree {
  const text = withoutMark(typed);
  const folded = foldCharacters(text).text;
  const statements: Statement[] = [];
  const broken: Tree['broken'][number][] = [];
  for (const { start, end } of splitStatements(folded).statements) {
    if (!WANTED.test(folded.slice(start, end))) continue;
    if (statements.length + broken.length >= MOST_BROKEN) break;
    const tokens = tokenize(folded, start, end);
    const reading = readStatement(tokens, { file, text });
    if ('statement' in reading) {
      // A level may be called `time`.
      if (reading.statement.kind !== 'timeline') statements.push(reading.statement);
    } else broken.push({ ...begun(tokens), span: { file, start, end } });
  }
  return { file, statements, broken };
}
