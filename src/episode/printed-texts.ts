/** Every text of a tree that will stand on paper. */

import { type Diagnostic, diagnose, type Span } from '../language/diagnostic.js';
import type { Tree } from '../language/tree.js';
import { uncovered } from '../print/coverage.js';
import type { Shot } from '../shot/shot.js';
import type { Written } from './episode.js';

/** Statements whose names stay in the text: they are never printed. */
const SILENT = new Set(['use', 'mark', 'phrase']);

/** Texts and names that are printed, with their places. */
export function printedTexts(tree: Tree): Written[] {
  const found: Written[] = [];
  for (const statement of tree.statements) if (!SILENT.has(statement.kind)) visit(statement, found);
  return found;
}

function visit(node: object, found: Written[]): void {
  const { text, span } = node as { text?: unknown; span?: Span };
  if (typeof text === 'string' && span) found.push({ text, span });
  for (const value of Object.values(node)) {
    if (Array.isArray(value)) {
      for (const one of value) if (typeof one === 'object' && one !== null) visit(one, found);
    } else if (typeof value === 'object' && value !== null) visit(value, found);
  }
}

/** A single text longer than this is no memo that anybody reads. */
const LONGEST_TEXT = 4000;
/** Characters of all texts of a cut: some fifty pages of memo. */
const MOST_CHARACTERS = 100_000;
/** Columns for more levels than this fill a pile of paper for every page. */
const MOST_LEVELS = 200;

/** What is beyond any sheet, so that laying it out is not even begun. `texts`: of the cut and what it uses. */
export function beyondPaper(texts: readonly Written[], shot: Shot | null): Diagnostic[] {
  const found: Diagnostic[] = [];
  let sum = 0;
  for (const { text, span } of texts) {
    const before = sum;
    sum += text.length;
    if (text.length > LONGEST_TEXT)
      found.push(
        diagnose('text-too-long', span, { variant: 'one', characters: text.length, most: LONGEST_TEXT }),
      );
    else if (before <= MOST_CHARACTERS && sum > MOST_CHARACTERS)
      found.push(diagnose('text-too-long', span, { variant: 'all', most: MOST_CHARACTERS }));
  }
  const level = shot?.levels[MOST_LEVELS];
  if (level) {
    const count = shot.levels.length;
    found.push(diagnose('levels-too-many', level.span, { count, most: MOST_LEVELS }));
  }
  return found;
}

/** Errors for the characters of a tree that cannot be printed, each with its own place. */
export function treeGlyphs(tree: Tree, source: string): Diagnostic[] {
  return printedTexts(tree).flatMap(({ text, span }) => missing(text, span, source));
}

/** The same for texts of the manifest. */
export function writtenGlyphs(texts: readonly Written[], source: string): Diagnostic[] {
  return texts.flatMap(({ text, span }) => missing(text, span, source));
}

function missing(text: string, span: Span, source: string): Diagnostic[] {
  const typed = source.slice(span.start, span.end);
  let from = 0;
  return uncovered(text)
    .filter(({ character }) => character !== '\n')
    .map(({ character, index }) => {
      // The text stands in the source as it is, but for escapes; a name in NFC may be typed in other code points.
      const letter = String.fromCodePoint(text.codePointAt(index)!);
      const at = typed.indexOf(letter, from);
      if (at >= 0) from = at + letter.length;
      const start = span.start + at;
      const place = at >= 0 ? { file: span.file, start, end: start + letter.length } : span;
      return diagnose('missing-glyph', place, { character });
    });
}
