/** What `number` says: what it pinned, what is no longer shown, and what only the animator can tell. */

import type { Reporter } from '../build/reporter.js';
import { UsageError } from '../build/usage-error.js';
import type { Compiled } from '../episode/compile-cut.js';
import type { Job } from '../episode/find-cuts.js';
import type { Host } from '../host/host.js';
import type { RunTexts } from '../language/catalogue/catalogue-entry.js';
import type { Messages } from '../language/catalogue/index.js';
import { celsEdits } from '../language/cels-line.js';
import type { Diagnostic, SourceEdit } from '../language/diagnostic.js';
import { parse } from '../language/parse.js';
import { withEdits } from '../language/statement-reader.js';
import type { CelName, StatementOf, Tree } from '../language/tree.js';
import { type Pins, unused } from '../solve/cels-lines.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import { nextCommand } from './command-options.js';

/** Nothing is written. */
export interface Dry {
  readonly check?: boolean;
  readonly diff?: boolean;
}

/** Where a passage on paper has more or fewer in-betweens now: how to say which. */
export function questions(host: Host, { tree, diagnostics }: Compiled, job: Job, texts: RunTexts): string[] {
  const file = job.path === null ? '-' : job.name;
  return diagnostics.flatMap((fault) => {
    const choice = tree && choices(tree, fault);
    if (!choice) return [];
    const { option, words, count } = choice;
    const answers = words.map((word) => `${option} ${word}`);
    const of = option === '--new' ? 'new' : 'gone';
    return [texts.sayWhich(job.name, count, of, nextCommand(host, 'number', file), answers)];
  });
}

/** What is pinned now, and which pinned drawings are not shown. */
export function told(
  solved: SolvedShot,
  pins: readonly Pins[],
  chosen: (level: string) => boolean,
  { check, diff }: Dry,
  texts: RunTexts,
): string[] {
  const fresh: { from: string; to: string }[] = [];
  const added: { cel: string; name: string }[] = [];
  for (const { level, before, names } of pins) {
    const cels = names.flatMap((name, i) =>
      name === '_' ? [] : [{ cel: `${level}${before + 1 + i}`, name }],
    );
    if (before > 0) added.push(...cels);
    else fresh.push({ from: cels[0]!.cel, to: cels.at(-1)!.cel });
  }
  const dry = check === true || diff === true;
  const lines: string[] = [];
  if (fresh.length > 0) lines.push(texts.pinned(fresh, dry));
  if (added.length > 0) lines.push(texts.named(added, dry));
  const idle = solved.levels
    .filter(({ name }) => chosen(name))
    .flatMap((level) =>
      unused(level).map(({ cel, drawing }) => ({ cel: `${level.name}${cel}`, name: drawing })),
    );
  if (idle.length > 0) lines.push(texts.notUsed(idle));
  return lines;
}

export function summary(
  { cuts, changed, failed }: { cuts: number; changed: number; failed: number },
  { check, diff }: Dry,
  reporter: Reporter,
): string {
  const rest = cuts - changed - failed;
  const dry = check === true || diff === true;
  return reporter.words.numbered(cuts, { changed, rest, failed }, dry, reporter.tally());
}

// ----
// `--new A:1.1a`, `--gone A:1.2`: what the animator says of a passage on paper that has more or fewer in-betweens now.

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
function choices(
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

/**
 * A drawing of `--gone` whose passage still shows as many in-betweens as are on paper, so that it is not gone. Asked of the cut with
 * what the options say already in its text.
 */
export function stillShown(
  { tree, diagnostics }: Compiled,
  { gone = [] }: Retimed,
): { word: string; level: string; from: string; to: string } | null {
  for (const { code, notes, parameters } of diagnostics) {
    if (code !== 'cels-count') continue;
    const { from, to, shown, pinned } = parameters as Messages['cels-count'];
    const start = notes.find(({ span }) => span)?.span?.start;
    const line = tree?.statements.find((each) => each.kind === 'cels' && each.span.start === start);
    if (line?.kind !== 'cels' || shown <= pinned.length) continue;
    const level = line.level.text;
    const word =
      gone.find((one) => one.normalize('NFC').startsWith(`${level}:${from}.`)) ??
      gone.find((one) => one.normalize('NFC').startsWith(`${level}:${from}>${to}.`));
    if (word !== undefined) return { word, level, from, to };
  }
  return null;
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
