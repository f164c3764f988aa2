/** Every text that will be printed, against the characters that the shipped font has. */

import { type Diagnostic, diagnose, type Span } from '../language/diagnostic.js';
import type { Tree } from '../language/tree.js';
import { covers } from '../print/coverage.js';
import type { Written } from './episode.js';

/** Statements whose names stay in the text: they are never printed. */
const SILENT = new Set(['use', 'mark', 'phrase']);

/** Printed in any case: what a text says apart from its characters. */
const LAYOUT = new Set([0x0a]);

/** Errors for the characters of a tree that cannot be printed, each with its own place. */
export function treeGlyphs(tree: Tree, source: string): Diagnostic[] {
  const found: Diagnostic[] = [];
  for (const statement of tree.statements) {
    if (SILENT.has(statement.kind)) continue;
    visit(statement, (text, span) => found.push(...missing(text, span, source)));
  }
  return found;
}

/** The same for texts of the manifest. */
export function writtenGlyphs(texts: readonly Written[], source: string): Diagnostic[] {
  return texts.flatMap(({ text, span }) => missing(text, span, source));
}

function visit(node: object, meet: (text: string, span: Span) => void): void {
  const { text, span } = node as { text?: unknown; span?: Span };
  if (typeof text === 'string' && span) meet(text, span);
  for (const value of Object.values(node)) {
    if (Array.isArray(value)) {
      for (const one of value) if (typeof one === 'object' && one !== null) visit(one, meet);
    } else if (typeof value === 'object' && value !== null) visit(value, meet);
  }
}

function missing(text: string, span: Span, source: string): Diagnostic[] {
  const found: Diagnostic[] = [];
  const typed = source.slice(span.start, span.end);
  let from = 0;
  for (const character of text) {
    const point = character.codePointAt(0)!;
    if (LAYOUT.has(point) || covers(point)) continue;
    const at = typed.indexOf(character, from);
    if (at >= 0) from = at + character.length;
    const place =
      at >= 0 ? { file: span.file, start: span.start + at, end: span.start + at + character.length } : span;
    const name = `U+${point.toString(16).toUpperCase().padStart(4, '0')}`;
    const shown = /\p{C}|\p{M}|\p{Z}/u.test(character) ? 'the character' : `"${character}"`;
    found.push(
      diagnose('missing-glyph', place, `${shown} (${name}) is not in the font and cannot be printed`),
    );
  }
  return found;
}
