/** The few statements of a cut that concern the rest of its episode, found without reading the others. */

import { tokenize } from '../language/lexer.js';
import { fold } from '../language/normal.js';
import { readStatement } from '../language/read.js';
import { withoutMark } from '../language/source.js';
import type { Statement, Tree } from '../language/tree.js';

/** Letters as a Japanese keyboard types them. */
const WIDE = /[\uff41-\uff5a]/;
/** `cut 12 "Rooftop"`, with nothing in it that would have to be read twice. */
const PLAIN_CUT =
  /(?:^|[\n\r])cut[ \t]+(\d+[A-Za-z]?)[ \t]*(?:"[^"\\\n\r]*"[ \t]*)?(?:#[^\n\r]*)?(?=\s*(?:[\n\r][^\s#\uff03]|$))/;

/** False where the word certainly stands nowhere in the text. */
export function mentions(text: string, word: string): boolean {
  return text.includes(word) || WIDE.test(text);
}

/** The number of a cut whose line is written in the plainest way; null where the grammar must be asked. */
export function plainNumber(text: string): string | null {
  return PLAIN_CUT.exec(text)?.[1] ?? null;
}

/** The lines that may begin a `use`, as they stand there; those that an indented line goes on with are taken as they are. */
export function usesIn(text: string): string[] {
  return mentions(text, 'use')
    ? [...text.matchAll(/(?<=^|[\n\r])[u\uff55][^\n\r]*(?:[\n\r]+[\s#][^\n\r]*)*/g)].map(([line]) => line)
    : [];
}

/** Where a line may begin one of the statements, in any width of letters. */
const BEGINNING = /[\n\r]+(?=[cfltou\uff43\uff46\uff4c\uff54\uff4f\uff55])/g;
/** A statement runs until the next line that begins at the left edge and is no comment. */
const NEXT = /[\n\r](?=[^\s#\uff03])/g;
/** Of a `level` only its reuse matters here. */
const WANTED = /^(?:cut|fps|time|overlap|use)(?![\p{L}\p{Nd}_])|^level[^\p{L}\p{Nd}_].*\breuse\b/su;

/**
 * Reads the statements `cut`, `time`, `fps`, `overlap`, `use` and `level … reuse` of a text with the grammar of the language,
 * and nothing else: some fifty times as quick as reading all. Offsets count the whole text, as those of `parse` do.
 */
export function scan(file: string, typed: string): Tree {
  const text = withoutMark(typed);
  const statements: Statement[] = [];
  const broken: Tree['broken'][number][] = [];
  const begun = [0];
  for (const { 0: ends, index } of text.matchAll(BEGINNING)) begun.push(index + ends.length);
  for (const start of begun) {
    NEXT.lastIndex = start;
    const end = NEXT.exec(text)?.index ?? text.length;
    const folded = fold(text.slice(start, end)).text;
    const word = WANTED.exec(folded)?.[0];
    if (word === undefined) continue;
    const tokens = tokenize(' '.repeat(start) + folded, start, end);
    const reading = readStatement(tokens, { file, text });
    if ('statement' in reading) {
      // A level may be called `time`.
      if (reading.statement.kind !== 'timeline') statements.push(reading.statement);
    } else
      broken.push({
        word: word.startsWith('level') ? 'level' : word,
        name: null,
        span: { file, start, end },
      });
  }
  return { file, statements, broken };
}
