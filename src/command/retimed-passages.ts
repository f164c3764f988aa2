/** `--new A:1.1a`, `--gone A:1.2`: what the animator says of a passage on paper that has more or fewer in-betweens now. */

import { UsageError } from '../build/usage-error.js';
import { celsEdits } from '../language/cels-line.js';
import type { Diagnostic, SourceEdit } from '../language/diagnostic.js';
import { parse } from '../language/parse.js';
import { withEdits } from '../language/statement-reader.js';
import type { CelName, StatementOf, Tree } from '../language/tree.js';

/** What may stand behind a place: `x` is an empty level. */
const LETTERS = 'abcdefghijklmnopqrstuvwyz';

export interface Retimed {
  readonly new?: readonly string[];
  readonly gone?: readonly string[];
}

interface Named {
  /** As typed. */
  readonly word: string;
  readonly line: StatementOf<'cels'>;
  readonly name: Extract<CelName, { form: 'between' }>;
}

/** The text with the in-betweens that are new at the end of their level's `cels` line, and `_` for those that are gone. */
export function retime(text: string, { new: put = [], gone = [] }: Retimed): string {
  const { tree } = parse('', text);
  const edits: SourceEdit[] = [];
  const added = new Map<string, string[]>();
  for (const word of put) {
    const { line, name } = named(tree, '--new', word);
    if (name.letter === '') {
      const example = `${word.slice(0, word.indexOf(':'))}:${key(name)}.${Math.max(name.index - 1, 0)}a`;
      throw new UsageError('option-value', word, { variant: 'new-without-letter', example });
    }
    added.set(line.level.text, [...(added.get(line.level.text) ?? []), word.slice(word.indexOf(':') + 1)]);
  }
  for (const word of gone) {
    const { line, name } = named(tree, '--gone', word);
    const found = line.names.find((each) => each.form === 'between' && same(each, name));
    if (!found)
      throw new UsageError('option-value', word, {
        variant: 'not-in-cels',
        level: line.level.text,
        drawing: word.slice(word.indexOf(':') + 1),
      });
    edits.push({ span: found.span, text: '_' });
  }
  edits.push(...celsEdits(text, tree, added));
  return withEdits(
    text,
    edits.map((edit) => ({ ...edit.span, text: edit.text })),
  );
}

/** What the animator may answer where the in-betweens of a pinned passage do not fit: `count` of the words, each behind the option. */
export function choices(
  { statements }: Tree,
  { code, notes, fix }: Diagnostic,
): { option: '--new' | '--gone'; words: string[]; count: number } | null {
  if (code !== 'cels-count' || !fix) return null;
  const start = notes.find(({ span }) => span)?.span?.start;
  const line = statements.find((each) => each.kind === 'cels' && each.span.start === start);
  if (line?.kind !== 'cels') return null;
  const level = line.level.text;
  const grown = fix.edits[0]!.text !== '_';
  const offered = grown
    ? parse('', `cels ${level}${fix.edits[0]!.text}`).tree.statements.flatMap((each) =>
        each.kind === 'cels' ? each.names : [],
      )
    : line.names.filter(({ span }) => fix.edits.some((edit) => edit.span.start === span.start));
  const [one] = offered;
  if (one?.form !== 'between') return null;
  const names = line.names.flatMap((name) =>
    name.form === 'between' && key(name) === key(one) ? [name] : [],
  );
  if (!grown) {
    const words = names.map((name) => `${level}:${key(name)}.${name.index}${name.letter}`);
    return { option: '--gone', words, count: offered.length };
  }
  const places = [...new Set([0, ...names.map(({ index }) => index)])].sort((a, b) => a - b);
  const words = places.flatMap((index) => {
    const letters = names.filter((name) => name.index === index).map(({ letter }) => letter);
    const last = letters.sort().at(-1) ?? '';
    const next = LETTERS[last === '' ? 0 : LETTERS.indexOf(last) + 1];
    return next === undefined ? [] : [`${level}:${key(one)}.${index}${next}`];
  });
  return { option: '--new', words, count: offered.length };
}

function named(tree: Tree, option: string, word: string): Named {
  const [level = '', drawing = ''] = word.normalize('NFC').split(':');
  const [read] = parse('', `cels ${level} ${drawing}`).tree.statements;
  const name = read?.kind === 'cels' && read.names.length === 1 ? read.names[0]! : null;
  if (name?.form !== 'between')
    throw new UsageError('option-value', word, { variant: 'inbetween-name', option });
  const line = tree.statements.find((each) => each.kind === 'cels' && each.level.text === level);
  if (line?.kind !== 'cels') throw new UsageError('option-value', word, { variant: 'not-pinned', level });
  return { word, line, name };
}

function same(a: Named['name'], b: Named['name']): boolean {
  return key(a) === key(b) && a.index === b.index && a.letter === b.letter;
}

function key({ key: from, to }: Named['name']): string {
  return to === null ? from : `${from}>${to}`;
}
