/** Text → tree. Never throws: what cannot be read is left out of the tree and told. */

import { type Diagnostic, diagnose, type Span } from './diagnostic.js';
import { explainFailure, meantWord, type UnreadStatement } from './fault-explanation.js';
import { FixTester } from './fault-fixes.js';
import { foldCharacters, splitStatements, tokenize } from './lexer.js';
import { currentWord } from './retired-words.js';
import { type TextRange, withoutMark } from './source.js';
import { isName, readStatement, readsUpTo, startsTimeline } from './statement-reader.js';
import { byWord } from './statements/statement-table.js';
import type { Token } from './tokens.js';
import type { Statement, Tree } from './tree.js';

/** A token for editors and the formatter; `kind` is its name in the grammar, words of the language stand in single quotes. */
export interface EditorToken {
  readonly kind: string;
  readonly span: Span;
}

export interface Parsed {
  readonly tree: Tree;
  readonly diagnostics: readonly Diagnostic[];
  /** All tokens in order, those of unreadable statements too; made at the first question, since only editors ask. */
  readonly tokens: readonly EditorToken[];
  readonly comments: readonly Span[];
}

/** A text with more unreadable statements than this is no cut, and is not read to its end. */
export const MOST_BROKEN = 1000;

/** Characters of one statement: more than a timeline of ten minutes on ones. */
const LONGEST_STATEMENT = 150_000;
/** Words and signs of a text. */
const MOST_TOKENS = 300_000;

/** Reads one text. Every offset counts the text after its byte-order mark. `readings`: what was read of the same file before. */
export function parse(file: string, text: string, readings?: ReadingCache): Parsed {
  const source = { file, text: withoutMark(text) };
  const folded = foldCharacters(source.text);
  const { statements: pieces, stray } = splitStatements(folded.text);
  const span = ({ start, end }: TextRange): Span => ({ file, start, end });
  const mender = new FixTester(source);
  const diagnostics: Diagnostic[] = controls(folded.controls, source.text, span);
  const statements: Statement[] = [];
  const broken: Tree['broken'][number][] = [];
  const read: TextRange[] = [];
  let count = 0;

  readings?.begin();
  if (stray) diagnostics.push(strayLines(stray, mender));
  for (const [index, piece] of pieces.entries()) {
    if (broken.length >= MOST_BROKEN) {
      diagnostics.push(diagnose('reading-stopped', span(piece), { most: MOST_BROKEN }));
      break;
    }
    if (count > MOST_TOKENS) {
      diagnostics.push(diagnose('cut-too-large', span(piece), { variant: 'pieces', most: MOST_TOKENS }));
      break;
    }
    const characters = piece.end - piece.start;
    if (characters > LONGEST_STATEMENT) {
      const parameters = { variant: 'statement', characters, most: LONGEST_STATEMENT } as const;
      diagnostics.push(diagnose('cut-too-large', span(piece), parameters));
      broken.push({ word: '', name: null, span: span(piece) });
      continue;
    }
    read.push(piece);
    const typed = source.text.slice(piece.start, piece.end);
    const known = readings?.find(typed, piece.start);
    if (known) {
      count += known.tokens;
      statements.push(known.statement);
      diagnostics.push(...known.problems);
      continue;
    }
    const own = tokenize(folded.text, piece.start, piece.end);
    count += own.length;
    const reading = readStatement(own, source);
    if ('failure' in reading) {
      const unread: UnreadStatement = {
        failure: reading.failure,
        tokens: own,
        piece,
        before: pieces[index - 1] ?? null,
        typed: source.text,
      };
      diagnostics.push(explainFailure(unread, mender));
      broken.push({ ...begun(own), span: span(piece) });
    } else {
      statements.push(reading.statement);
      diagnostics.push(...reading.problems);
      readings?.keep(typed, { start: piece.start, ...reading, tokens: own.length });
    }
  }
  diagnostics.sort((a, b) => a.span.start - b.span.start);
  let tokens: EditorToken[] | null = null;
  return {
    tree: { file, statements, broken },
    diagnostics,
    get tokens() {
      tokens ??= read.flatMap(({ start, end }) =>
        tokenize(folded.text, start, end).map((token) => ({ kind: token.type.name, span: span(token) })),
      );
      return tokens;
    },
    comments: folded.comments.map(span),
  };
}

/** What an unreadable statement began to say. A first word with a slip in it counts as the word that was meant. */
export function begun(tokens: readonly Token[]): { word: string; name: string | null } {
  const [first, second] = tokens;
  if (!isName(first)) return { word: '', name: null };
  const typed = first.image.normalize('NFC');
  if (startsTimeline(tokens, 0)) return { word: typed, name: typed };
  const current = currentWord(typed);
  const word = byWord.has(current) ? current : (meantWord(typed) ?? typed);
  const entry = byWord.get(word);
  if (!entry) return { word, name: typed };
  return { word, name: entry.defines && isName(second) ? second.image.normalize('NFC') : null };
}

function strayLines(stray: TextRange, mender: FixTester): Diagnostic {
  const { file, text } = mender.source;
  const lineStart = Math.max(text.lastIndexOf('\n', stray.start), text.lastIndexOf('\r', stray.start)) + 1;
  const blanks = { start: lineStart, end: stray.start };
  const alone = text.slice(stray.start, stray.end);
  const fix =
    readsUpTo(alone) >= alone.length
      ? mender.fix({ action: 'to-left-edge', edits: [{ ...blanks, text: '' }] })
      : undefined;
  return diagnose('indented-start', { file, start: stray.start, end: stray.end }, {}, { fix });
}

/** One error a line that holds characters of control, so that a file that is no text does not drown its reader. */
function controls(found: readonly TextRange[], text: string, span: (range: TextRange) => Span): Diagnostic[] {
  const told: Diagnostic[] = [];
  let quietUntil = -1;
  for (const run of found) {
    if (run.start < quietUntil) continue;
    if (told.length >= MOST_BROKEN) break;
    const end = text.slice(run.start).search(/[\r\n]/);
    quietUntil = end < 0 ? text.length : run.start + end;
    const character = text.charCodeAt(run.start);
    told.push(
      diagnose(
        'control-character',
        span(run),
        { character },
        {
          fix: { action: 'leave-out', edits: [{ span: span(run), text: '' }] },
        },
      ),
    );
  }
  return told;
}

// ---- statements that were read before, so that a text that is being typed is not read whole at every keystroke

export interface CachedStatement {
  /** Where it stood. */
  readonly start: number;
  readonly statement: Statement;
  /** How many it has. */
  readonly tokens: number;
  readonly problems: readonly Diagnostic[];
}

/** Of one file. A statement is known by what was typed: nothing outside it changes how it is read. */
export class ReadingCache {
  private last = new Map<string, CachedStatement>();
  private current = new Map<string, CachedStatement>();

  /** Only what the text before this one held is kept. */
  begin(): void {
    this.last = this.current;
    this.current = new Map();
  }

  /** The statement as it reads at `start`, every place in it moved there. */
  find(typed: string, start: number): CachedStatement | null {
    const known = this.last.get(typed) ?? this.current.get(typed);
    if (!known) return null;
    // Kept as it was first read: moved from there, parts of it that nobody asks for are never moved.
    this.keep(typed, known);
    return known.start === start ? known : { ...movedSpans(known, start - known.start), start };
  }

  keep(typed: string, read: CachedStatement): void {
    this.current.set(typed, read);
  }
}

/** A list that is longer is moved when it is first asked for: few ask for the items of a timeline that stays as it is. */
const LONG = 16;

/** A copy in which every span that `within` holds for is moved. For plain data without circles. */
export function movedSpans<T>(value: T, by: number, within: (span: Span) => boolean = () => true): T {
  return (typeof value === 'object' && value !== null ? moved(value, by, within) : value) as T;
}

function moved(value: object, by: number, within: (span: Span) => boolean): object {
  if (Array.isArray(value)) return value.map((each) => movedSpans(each, by, within));
  const { file, start, end } = value as Span;
  // Most objects of a tree are spans and nothing else: made alike, they are made fast.
  if (typeof file === 'string' && typeof start === 'number' && typeof end === 'number') {
    const own = within(value as Span) ? by : 0;
    return { file, start: start + own, end: end + own };
  }
  // Spread, it takes the shape of the original at once; field by field it would take twice the time.
  const copy: Record<string, unknown> = { ...value };
  for (const key in copy) {
    const field = copy[key];
    if (typeof field !== 'object' || field === null) continue;
    if (Array.isArray(field) && field.length > LONG)
      whenAsked(copy, key, () => movedSpans(field, by, within));
    else copy[key] = moved(field, by, within);
  }
  return copy;
}

function whenAsked(object: object, key: string, make: () => unknown): void {
  let made: unknown;
  const get = () => {
    made ??= make();
    return made;
  };
  Object.defineProperty(object, key, { get, enumerable: true, configurable: true });
}
