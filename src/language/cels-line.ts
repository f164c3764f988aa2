/** Writes and extends the `cels` lines of a text, which is left as it is in everything else. */

import type { SourceEdit } from './diagnostic.js';
import { displayWidth, lines, placeAt } from './source.js';
import type { Statement, StatementOf, Tree } from './tree.js';

/** Columns of a line, wide characters counted twice. */
export const LINE_COLUMNS = 100;

/**
 * `added`: names to stand at the end of each level's `cels` line. A level that has none yet gets one under the timelines among which
 * its own stands. Lines that would grow too long go on in an indented one.
 */
export function celsEdits(
  text: string,
  { statements, file }: Tree,
  added: ReadonlyMap<string, readonly string[]>,
): SourceEdit[] {
  const edits: SourceEdit[] = [];
  const put = (at: number, what: string): void => {
    const before = edits.findIndex(({ span }) => span.start === at);
    if (before >= 0) edits[before] = { span: edits[before]!.span, text: edits[before]!.text + what };
    else edits.push({ span: { file, start: at, end: at }, text: what });
  };
  for (const statement of statements) {
    if (statement.kind === 'cels') extend(text, statement, added.get(statement.level.text) ?? [], put);
  }
  const known = new Set(statements.map((each) => (each.kind === 'cels' ? each.level.text : null)));
  for (const [index, statement] of statements.entries()) {
    if (!isDrawn(statement) || known.has(statement.level.text)) continue;
    const names = added.get(statement.level.text) ?? [];
    if (names.length === 0) continue;
    known.add(statement.level.text);
    const at = lineEnd(text, lastTogether(text, statements, index).span.end);
    const head = `cels ${statement.level.text}`;
    const end = ending(text, at);
    put(at, [''].concat(breakNames(head, ' '.repeat(displayWidth(head) + 1), names)).join(end));
  }
  return edits;
}

/** What says which drawings a level shows. */
function isDrawn(statement: Statement): statement is StatementOf<'timeline'> | StatementOf<'mouth'> {
  return statement.kind === 'timeline' || statement.kind === 'mouth';
}

/** The last of the timelines and mouths that stand line under line with this one, and of the `cels` lines under them. */
function lastTogether(text: string, statements: readonly Statement[], index: number): Statement {
  let last = statements[index]!;
  for (const next of statements.slice(index + 1)) {
    const follows = next.kind === 'cels' || (isDrawn(next) && isDrawn(last));
    const start = lineEnd(text, last.span.end);
    if (!follows || next.span.start !== start + ending(text, start).length) break;
    last = next;
  }
  return last;
}

function extend(
  text: string,
  { span, names, level }: StatementOf<'cels'>,
  added: readonly string[],
  put: (at: number, what: string) => void,
): void {
  if (added.length === 0) return;
  const source = lines(text);
  const first = placeAt(source, span.start).line;
  const last = placeAt(source, span.end).line;
  const lineStart = source.starts[last - 1]!;
  const end = lineEnd(text, span.end);
  let width = displayWidth(text.slice(lineStart, end).trimEnd());
  let fitting = 0;
  while (fitting < added.length) {
    width += 1 + displayWidth(added[fitting]!);
    if (width > LINE_COLUMNS) break;
    fitting++;
  }
  if (fitting > 0) put(span.end, ` ${added.slice(0, fitting).join(' ')}`);
  if (fitting === added.length) return;
  const indent =
    last > first
      ? /^\s*/.exec(text.slice(lineStart, end))![0]
      : ' '.repeat(displayWidth(text.slice(span.start, names[0]?.span.start ?? level.span.end)));
  const newline = ending(text, end);
  put(end, [''].concat(breakNames(indent, indent, added.slice(fitting))).join(newline));
}

/** Lines that are not too long: `head` and the names behind it, then names behind `indent`. */
function breakNames(head: string, indent: string, names: readonly string[]): string[] {
  const done: string[] = [];
  let line = head;
  for (const name of names) {
    const next = line === indent ? line + name : `${line} ${name}`;
    if (line === head || displayWidth(next) <= LINE_COLUMNS) line = next;
    else {
      done.push(line);
      line = indent + name;
    }
  }
  return [...done, line];
}

function lineEnd(text: string, from: number): number {
  const end = text.slice(from).search(/[\r\n]/);
  return end < 0 ? text.length : from + end;
}

/** How a line ends at `at`; at the end of the text, how its first line ends. */
function ending(text: string, at: number): string {
  return /^(\r\n|\n|\r)/.exec(text.slice(at))?.[0] ?? /\r\n|\n|\r/.exec(text)?.[0] ?? '\n';
}
