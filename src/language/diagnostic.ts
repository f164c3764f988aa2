/**
 * The one diagnostic type of the program: data, collected by every stage, sorted, then printed
 * (for people, as JSON, as GitHub annotations; later in an editor).
 */

import type { Code } from './catalogue/index.js';
import { catalogue } from './catalogue/index.js';

export type Severity = 'error' | 'warning' | 'hint';

/** A stretch of one source file: UTF-16 offsets, `start` included, `end` excluded. */
export interface Span {
  readonly file: string;
  readonly start: number;
  readonly end: number;
}

/** A further remark; with a span when it speaks of another place. */
export interface Note {
  readonly message: string;
  readonly span?: Span;
}

/** Replaces the text of `span` by `text`. */
export interface Edit {
  readonly span: Span;
  readonly text: string;
}

/** An edit that mends the fault; applying it gives valid text. */
export interface Fix {
  readonly title: string;
  readonly edits: readonly Edit[];
}

export interface Diagnostic {
  readonly code: Code;
  readonly severity: Severity;
  readonly span: Span;
  /** One sentence in trade words that says what is wrong. */
  readonly message: string;
  readonly notes: readonly Note[];
  readonly fix?: Fix;
}

/** Makes a diagnostic; the severity comes from the catalogue, so that a code means one thing everywhere. */
export function diagnose(
  code: Code,
  span: Span,
  message: string,
  more: { notes?: readonly Note[]; fix?: Fix | undefined } = {},
): Diagnostic {
  return {
    code,
    severity: catalogue[code].severity,
    span,
    message,
    notes: more.notes ?? [],
    ...(more.fix ? { fix: more.fix } : {}),
  };
}

/** Where a stage puts what it finds. */
export type Report = (diagnostic: Diagnostic) => void;
