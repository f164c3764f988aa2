/**
 * The one diagnostic type of the program: data, collected by every stage, sorted, then printed
 * (for people, as JSON, as GitHub annotations, in an editor). Its sentences are made by the printers: see `message.ts`.
 */

import type { RowNotation } from './catalogue/catalogue-entry.js';
import { type Code, catalogue, type Messages } from './catalogue/index.js';
import type { Fixes, Notes } from './catalogue/message-notes.js';

export type Severity = 'error' | 'warning' | 'hint';

/** A stretch of one source file: UTF-16 offsets, `start` included, `end` excluded. */
export interface Span {
  readonly file: string;
  readonly start: number;
  readonly end: number;
}

/** A further remark with its parameters; with a span when it speaks of another place. */
export type Note = {
  [N in keyof Notes]: { readonly note: N; readonly span?: Span } & Notes[N];
}[keyof Notes];

/** Replaces the text of `span` by `text`. */
export interface SourceEdit {
  readonly span: Span;
  readonly text: string;
}

/** What a fix does, with its parameters. */
export type Action = { [F in keyof Fixes]: { readonly action: F } & Fixes[F] }[keyof Fixes];

/** An edit that mends the fault; applying it gives valid text. */
export type Fix = Action & { readonly edits: readonly SourceEdit[] };

export interface Diagnostic {
  readonly code: Code;
  readonly severity: Severity;
  readonly span: Span;
  /** What the sentence of this code is about; `messageOf` makes the sentence. */
  readonly parameters: Messages[Code];
  readonly notes: readonly Note[];
  readonly fix?: Fix;
  /** How the sheet names the rows that the sentence speaks of, once that is known. */
  readonly rows?: RowNotation;
}

/** Makes a diagnostic; the severity comes from the catalogue, so that a code means one thing everywhere. */
export function diagnose<C extends Code>(
  code: C,
  span: Span,
  parameters: Messages[C],
  more: { notes?: readonly Note[]; fix?: Fix | undefined } = {},
): Diagnostic {
  return {
    code,
    severity: catalogue[code].severity,
    span,
    parameters,
    notes: more.notes ?? [],
    ...(more.fix ? { fix: more.fix } : {}),
  };
}

/** Where a stage puts what it finds. */
export type Report = (diagnostic: Diagnostic) => void;

/** Puts what is found into `into`; of one code at one place only the first: a phrase that several levels play is written once. */
export function reportOnce(into: Diagnostic[]): Report {
  const said = new Set<string>();
  return (diagnostic) => {
    const { code, span } = diagnostic;
    const id = `${code} ${span.file} ${span.start} ${span.end}`;
    if (said.has(id)) return;
    said.add(id);
    into.push(diagnostic);
  };
}

/** Offers `guess` in place of what stands at `span`, where there is a guess; `text`: how it is written there. */
export function guessFix(
  guess: string | null | undefined,
  span: Span,
  text: string = guess ?? '',
): { readonly fix?: Fix } {
  return guess ? { fix: { action: 'write', written: guess, edits: [{ span, text }] } } : {};
}

/** Two diagnostics of one key are one. */
export function diagnosticKey({ code, span, parameters }: Diagnostic): string {
  return JSON.stringify([code, span.file, span.start, span.end, parameters]);
}

/** Whether a cut is not to be printed; `strict` makes warnings count. */
export function hasErrors(diagnostics: readonly Diagnostic[], strict = false): boolean {
  return diagnostics.some((one) => one.severity === 'error' || (strict && one.severity === 'warning'));
}
