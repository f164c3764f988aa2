/** What a reader of a message is told, all of it: for tests of the sentence, of the place that it is about, of notes and mends. */

import type { Diagnostic, Span } from '../src/language/diagnostic.js';
import { actionOf, messageOf, noteOf } from '../src/language/message.js';
import { compileText } from './compile.js';

/** Each message of a cut: `error «its place» Sentence.`; then ` + «place» a note` and ` > what mends it: «old» → «new»`, a line each. */
export function explained(text: string, files: Readonly<Record<string, string>> = {}): string[] {
  return explanations(text, compileText(text, files).diagnostics);
}

export function explanations(text: string, diagnostics: readonly Diagnostic[]): string[] {
  const at = ({ start, end }: Span): string => `«${text.slice(start, end)}»`;
  return diagnostics.flatMap((one) => [
    `${one.severity} ${at(one.span)} ${messageOf(one, 'en')}`,
    ...one.notes.map((note) => ` + ${note.span ? `${at(note.span)} ` : ''}${noteOf(note, 'en')}`),
    ...(one.fix?.edits ?? []).map(
      (edit) => ` > ${actionOf(one.fix!, 'en')}: ${at(edit.span)} → «${edit.text}»`,
    ),
  ]);
}
