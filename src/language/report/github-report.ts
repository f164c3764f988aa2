/** Diagnostics as workflow commands, which a GitHub job shows beside the changed lines. */

import type { Diagnostic, Severity } from '../diagnostic.js';
import { actionOf, messageOf, noteOf } from '../message.js';
import { lines, placeAt, withoutMark } from '../source.js';
import { limited, type Sources, saidOfLeftOut, tableOf } from './report-order.js';

const COMMANDS: Readonly<Record<Severity, string>> = { error: 'error', warning: 'warning', hint: 'notice' };

/** Escaping as GitHub's documentation of workflow commands has it, from memory. */
const data = (text: string): string =>
  text.replaceAll('%', '%25').replaceAll('\r', '%0D').replaceAll('\n', '%0A');
const property = (text: string): string => data(text).replaceAll(':', '%3A').replaceAll(',', '%2C');

/** One line a diagnostic. */
export function github(diagnostics: readonly Diagnostic[], sources: Sources): string {
  const table = tableOf(sources, (text) => lines(withoutMark(text)));
  const { shown, leftOut } = limited(diagnostics, sources);
  const told = shown.map(({ code, severity, parameters, span, notes, fix }) => {
    const source = table(span.file);
    const properties = [`file=${property(span.file)}`];
    if (source) {
      const start = placeAt(source, span.start);
      const end = placeAt(source, Math.max(span.start, span.end));
      properties.push(`line=${start.line}`, `endLine=${end.line}`);
      if (start.line === end.line) properties.push(`col=${start.column}`, `endColumn=${end.column}`);
    }
    properties.push(`title=${property(code)}`);
    const sentences = [
      messageOf({ code, parameters }, 'en'),
      ...notes.map((note) => `note: ${noteOf(note, 'en')}`),
    ];
    if (fix) sentences.push(`try: ${actionOf(fix, 'en')}`);
    return `::${COMMANDS[severity]} ${properties.join(',')}::${data(sentences.join('\n'))}\n`;
  });
  const rest = leftOut.map(
    (one) => `::${COMMANDS[one.severity]} file=${property(one.file)}::${data(saidOfLeftOut(one))}\n`,
  );
  return [...told, ...rest].join('');
}
