/** Every text that will be printed, against the characters that the shipped font has. */

import { type Diagnostic, diagnose, type Span } from '../language/diagnostic.js';
import type { Tree } from '../language/tree.js';
import { uncovered } from '../print/coverage.js';
import type { Written } from './episode.js';
import { printedTexts } from './printed.js';

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
      return diagnose('missing-glyph', place, `${name(character)} is not in the font and cannot be printed.`);
    });
}

/** A character with its code point; one that would not show, or would spoil the line, by its code point alone. */
function name(character: string): string {
  const code = `U+${character.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')}`;
  if (character === '\t') return `A tab (${code})`;
  return /[\p{C}\p{M}\p{Z}]/u.test(character) ? `The character ${code}` : `\`${character}\` (${code})`;
}
