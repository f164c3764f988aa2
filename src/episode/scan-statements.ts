/** The few statements of a cut that concern the rest of its episode, found without reading the others. */

import { foldCharacters, hasControls } from '../language/character-folding.js';
import { splitStatements, tokenize } from '../language/lexer.js';
import { begun, MOST_BROKEN } from '../language/parse.js';
import { withoutMark } from '../language/source.js';
import { readStatement } from '../language/statement-reader.js';
import type { Statement, Tree } from '../language/tree.js';

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
