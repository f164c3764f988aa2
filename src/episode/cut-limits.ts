/** What is beyond any sheet is refused before anything is computed: a slip of the hand, or a text that is no cut. */

import { type Diagnostic, diagnose, type Span } from '../language/diagnostic.js';
import type { Item, Statement, Tree } from '../language/tree.js';
import { covers, uncovered } from '../print/glyph-coverage.js';
import { endOf, startOf } from '../shot/camera/move-kinds.js';
import type { Shot } from '../shot/shot.js';
import type { Written } from './episode.js';

/** A single text longer than this is no memo that anybody reads. */
const LONGEST_TEXT = 4000;
/** Characters of all texts of a cut: some fifty pages of memo. */
const MOST_CHARACTERS = 100_000;
/** A character that is normalized may become that many (Unicode Standard Annex 15: U+FDFA in NFKC). */
const MOST_GROWTH = 18;
/** Columns for more levels than this fill a pile of paper for every page. */
const MOST_LEVELS = 200;
/** Statements of one kind. */
const MOST_STATEMENTS = 10_000;
/** Drawings, groups and lengths in all timelines and phrases. The longest sheet has 72,000 rows. */
const MOST_ITEMS = 100_000;
/** Legs of one move. */
const MOST_LEGS = 10_000;
/** Rows of the sheet times levels. A minute of 24 frames a second has 1440 rows, so that all 200 levels are possible. */
const MOST_LEVEL_FRAMES = 300_000;
/** Frames of all moves together, once for each level that is moved. */
const MOST_MOVE_FRAMES = 300_000;
/** Moves times rows of the sheet: a move holds what it has done to the end. */
const MOST_HELD_FRAMES = 120_000_000;

/** Of what is printed: `trees` are those of the cut and of what it uses. */
export function textLimits(trees: readonly Tree[], sources: ReadonlyMap<string, string>): Diagnostic[] {
  if (areShort(trees, sources)) return [];
  const found: Diagnostic[] = [];
  let sum = 0;
  for (const { text, span } of trees.flatMap(printedTexts)) {
    const before = sum;
    sum += text.length;
    if (text.length > LONGEST_TEXT)
      found.push(
        diagnose('text-too-long', span, { variant: 'one', characters: text.length, most: LONGEST_TEXT }),
      );
    else if (before <= MOST_CHARACTERS && sum > MOST_CHARACTERS)
      found.push(diagnose('text-too-long', span, { variant: 'all', most: MOST_CHARACTERS }));
  }
  return found;
}

/** Whether no text can be beyond the limits, by what was typed for it, so that none need be looked for. */
function areShort(trees: readonly Tree[], sources: ReadonlyMap<string, string>): boolean {
  let sum = 0;
  for (const { file, statements } of trees) {
    const growth = PLAIN.test(sources.get(file) ?? '') ? 1 : MOST_GROWTH;
    for (const { span } of statements) {
      const most = (span.end - span.start) * growth;
      sum += most;
      if (most > LONGEST_TEXT || sum > MOST_CHARACTERS) return false;
    }
  }
  return true;
}

/** What a text says too often to be bound. `trees`: of the cut and of what it uses. */
export function treeLimits(trees: readonly Tree[]): Diagnostic[] {
  const found: Diagnostic[] = [];
  const kinds = new Map<Statement['kind'], number>();
  if (areSmall(trees)) return found;
  let items = 0;
  for (const statement of trees.flatMap((tree) => tree.statements)) {
    const { kind } = statement;
    const count = (kinds.get(kind) ?? 0) + 1;
    kinds.set(kind, count);
    if (count === MOST_STATEMENTS + 1)
      found.push(
        diagnose('cut-too-large', statement.span, { variant: 'statements', kind, most: MOST_STATEMENTS }),
      );
    if ('items' in statement) {
      const before = items;
      items += countItems(statement.items);
      if (before <= MOST_ITEMS && items > MOST_ITEMS)
        found.push(
          diagnose('cut-too-large', statement.span, { variant: 'items', count: items, most: MOST_ITEMS }),
        );
    }
    if ('legs' in statement && statement.legs.length > MOST_LEGS)
      found.push(
        diagnose('cut-too-large', statement.legs[MOST_LEGS]!.to.span, {
          variant: 'legs',
          count: statement.legs.length,
          most: MOST_LEGS,
        }),
      );
  }
  return found;
}

/** Whether there cannot be too much of anything, by what was typed for it: no item and no leg has less than a character. */
function areSmall(trees: readonly Tree[]): boolean {
  let count = 0;
  let characters = 0;
  for (const { statements } of trees) {
    count += statements.length;
    for (const { span } of statements) {
      const length = span.end - span.start;
      characters += length;
      if (length > MOST_LEGS) return false;
    }
  }
  return count <= MOST_STATEMENTS && characters <= MOST_ITEMS;
}

function countItems(items: readonly Item[]): number {
  let count = items.length;
  for (const item of items) if (item.kind === 'group') count += countItems(item.items);
  return count;
}

/** What would take too long to be solved, or too much memory. */
export function shotLimits(shot: Shot): Diagnostic[] {
  const { levels, length, spans, camera } = shot;
  const beyond = levels[MOST_LEVELS];
  if (beyond) return [diagnose('levels-too-many', beyond.span, { count: levels.length, most: MOST_LEVELS })];
  if (levels.length * length > MOST_LEVEL_FRAMES)
    return [
      diagnose('cut-too-large', spans.time, {
        variant: 'level-frames',
        levels: levels.length,
        rows: length,
        most: MOST_LEVEL_FRAMES,
      }),
    ];
  let frames = 0;
  let held = 0;
  for (const move of camera.moves) {
    const times = Math.max(1, move.target.levels.length);
    frames += times * Math.max(0, Math.min(endOf(move), length) - Math.max(0, startOf(move)));
    held += times * length;
    const large = tooLarge(frames, held, move.span);
    if (large) return [large];
  }
  return [];
}

function tooLarge(frames: number, held: number, span: Span): Diagnostic | null {
  if (frames > MOST_MOVE_FRAMES)
    return diagnose('cut-too-large', span, { variant: 'move-frames', most: MOST_MOVE_FRAMES });
  if (held > MOST_HELD_FRAMES)
    return diagnose('cut-too-large', span, { variant: 'held-frames', most: MOST_HELD_FRAMES });
  return null;
}

// ---- every text of a tree that will stand on paper

/** A text that will stand on paper. */
interface PrintedText extends Written {
  /** Whether it may have line breaks: memos, notes and what is said or heard are laid out in lines, names and titles are not. */
  readonly lines: boolean;
}

/** Statements whose names and texts are not printed. */
const STAYS_IN_TEXT: ReadonlySet<Statement['kind']> = new Set(['use', 'mark', 'phrase', 'accept', 'track']);

/** Quoted texts and names that are printed, with their places; not those of drawings, which `printedNames` gives. */
function printedTexts(tree: Tree): readonly PrintedText[] {
  const known = textsOfTrees.get(tree) ?? findTexts(tree);
  textsOfTrees.set(tree, known);
  return known;
}

const textsOfTrees = new WeakMap<Tree, readonly PrintedText[]>();

function findTexts(tree: Tree): PrintedText[] {
  const found: PrintedText[] = [];
  for (const statement of tree.statements) {
    if (STAYS_IN_TEXT.has(statement.kind)) continue;
    const lines = statement.kind === 'memo' || statement.kind === 'note';
    visit(statement, (node, within) => {
      const { text, span } = node as { text?: unknown; span?: Span };
      if (typeof text === 'string' && span) found.push({ text, span, lines: lines || within === 'words' });
    });
  }
  return found;
}

/** Fields in which a node without a text of its own keeps names that are printed: drawings, charts, cuts and levels of other cuts. */
const NAMES = ['name', 'key', 'to', 'cut', 'level'] as const;

/** Names of drawings and of other cuts' levels beyond ASCII. */
function printedNames(tree: Tree): PrintedText[] {
  const found: PrintedText[] = [];
  for (const statement of tree.statements) {
    if (statement.kind === 'use' || statement.kind === 'mark') continue;
    visit(statement, (node) => {
      const { span, ...fields } = node as { span?: Span; kind?: unknown; form?: unknown };
      // Named moments and phrases are never printed.
      if (!span || fields.form === 'mark' || fields.kind === 'phrase') return;
      for (const name of NAMES) {
        const text = (fields as Record<string, unknown>)[name];
        if (typeof text === 'string' && BEYOND_ASCII.test(text)) found.push({ text, span, lines: false });
      }
    });
  }
  return found;
}

const BEYOND_ASCII = /[\u0080-\uffff]/;

/** Calls `see` with each node under this one and itself, and the field in which it lies; names of files are left out. */
function visit(node: object, see: (node: object, within: string) => void, within = ''): void {
  see(node, within);
  for (const field in node) {
    const value = (node as Record<string, unknown>)[field];
    if (field === 'span' || field === 'picture') continue;
    if (Array.isArray(value)) {
      for (const one of value) if (typeof one === 'object' && one !== null) visit(one, see, field);
    } else if (typeof value === 'object' && value !== null) visit(value, see, field);
  }
}

/** Errors for the characters of a tree that cannot be printed, each with its own place. */
export function treeGlyphs(tree: Tree, source: string): readonly Diagnostic[] {
  // A file that many cuts use is looked at once.
  const known = glyphsOfTrees.get(tree) ?? findMissing(tree, source);
  glyphsOfTrees.set(tree, known);
  return known;
}

const glyphsOfTrees = new WeakMap<Tree, readonly Diagnostic[]>();

function findMissing(tree: Tree, source: string): Diagnostic[] {
  if (isPrintable(source)) return [];
  const names = BEYOND_ASCII.test(source) ? printedNames(tree) : [];
  return [...printedTexts(tree), ...names].flatMap((text) => missing(text, source));
}

/**
 * Whether nothing in a text can be missing, wherever it stands, so that its pieces need no look: most texts. A letter with marks and
 * what is written with `\\` may become other characters than those that are typed.
 */
function isPrintable(source: string): boolean {
  if (source.includes('\\')) return false;
  if (PLAIN.test(source)) return true;
  if (/\p{M}/u.test(source)) return false;
  const typed = [...new Set(source.match(/[^\n\r -~]/gu))].join('');
  return [...typed, ...typed.normalize('NFC'), ...typed.normalize('NFKC')].every((character) =>
    covers(character.codePointAt(0)!),
  );
}

const PLAIN = /^[\n\r -~]*$/;

/** The same for titles and names of the manifest. */
export function writtenGlyphs(texts: readonly Written[], source: string): Diagnostic[] {
  return texts.flatMap((text) => missing({ ...text, lines: false }, source));
}

function missing({ text, span, lines }: PrintedText, source: string): Diagnostic[] {
  const typed = source.slice(span.start, span.end);
  let from = 0;
  return uncovered(text)
    .filter(({ character }) => !(lines && character === '\n'))
    .map(({ character, index }) => {
      // The text stands in the source as it is, but for escapes; a name in NFC may be typed in other code points.
      const letter = character === '\n' ? '\\n' : String.fromCodePoint(text.codePointAt(index)!);
      const at = typed.indexOf(letter, from);
      if (at >= 0) from = at + letter.length;
      const start = span.start + at;
      const place = at >= 0 ? { file: span.file, start, end: start + letter.length } : span;
      return diagnose('missing-glyph', place, { character });
    });
}
