/** Every text of a tree that will stand on paper. */

import { type Diagnostic, diagnose, type Span } from '../language/diagnostic.js';
import type { Statement, Tree } from '../language/tree.js';
import { uncovered } from '../print/glyph-coverage.js';
import type { Written } from './episode.js';

/** A text that will stand on paper. */
export interface PrintedText extends Written {
  /** Whether it may have line breaks: memos, notes and what is said or heard are laid out in lines, names and titles are not. */
  readonly lines: boolean;
}

/** Statements whose names and texts are not printed. */
const STAYS_IN_TEXT: ReadonlySet<Statement['kind']> = new Set(['use', 'mark', 'phrase', 'accept', 'track']);

/** Quoted texts and names that are printed, with their places; not those of drawings, which `printedNames` gives. */
export function printedTexts(tree: Tree): PrintedText[] {
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
  for (const [field, value] of Object.entries(node)) {
    if (field === 'span' || field === 'picture') continue;
    if (Array.isArray(value)) {
      for (const one of value) if (typeof one === 'object' && one !== null) visit(one, see, field);
    } else if (typeof value === 'object' && value !== null) visit(value, see, field);
  }
}

/** Errors for the characters of a tree that cannot be printed, each with its own place. */
export function treeGlyphs(tree: Tree, source: string): Diagnostic[] {
  // Most texts are without anything to look for.
  const names = BEYOND_ASCII.test(source) ? printedNames(tree) : [];
  return [...printedTexts(tree), ...names].flatMap((text) => missing(text, source));
}

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
