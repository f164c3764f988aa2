/** Fixes that need the text as it was typed, which later stages do not have: its units, and what two statements say together. */

import type { Diagnostic, SourceEdit } from '../language/diagnostic.js';
import { MM } from '../language/shared-rules.js';
import { figure } from '../words/number-format.js';

/** The diagnostic with its fix as it would be typed in that text; `text`: of the file of this name, without its byte-order mark. */
export function fixedAsTyped(one: Diagnostic, file: string, text: string): Diagnostic {
  if (one.span.file !== file) return one;
  if (one.code === 'statement-twice') return joined(one, text);
  const { fix } = one;
  if (fix?.action !== 'place-field' && fix?.action !== 'size-field') return one;
  const [edit] = fix.edits as readonly [SourceEdit];
  const unit = unitOf(text.slice(edit.span.start, edit.span.end));
  if (edit.span.file !== file || unit === null) return one;
  const edits = [{ ...edit, text: inUnit(edit.text, unit) }];
  return {
    ...one,
    fix:
      fix.action === 'place-field'
        ? { ...fix, place: inUnit(fix.place, unit), edits }
        : { ...fix, size: inUnit(fix.size, unit), edits },
  };
}

type Unit = keyof typeof MM;

/** The first unit of length that was typed in a piece of text; null where there is none. */
function unitOf(typed: string): Unit | null {
  const unit = /\d(mm|cm|in)(?![\p{L}])/u.exec(typed)?.[1];
  return unit ? (unit as Unit) : null;
}

/** A piece of text with its millimetres in another unit. A hundredth of a millimetre is more than anybody draws. */
const inUnit = (text: string, unit: Unit): string =>
  text.replace(
    /(-?\d+(?:\.\d+)?)(?:mm)?/g,
    (_, mm: string) => `${figure(Number(mm) / MM[unit], { decimals: 4 })}${unit}`,
  );

/** A second `level A …` says more of the level: both in one line. */
function joined(one: Diagnostic, text: string): Diagnostic {
  const { file, start, end } = one.span;
  const first = one.notes.find(({ note }) => note === 'first-here')?.span;
  const more = /^level\s+\S+\s+(\S[^#\r\n]*)$/u.exec(text.slice(start, end))?.[1];
  if (first?.file !== file || more === undefined) return one;
  const line = /\r?\n$/.exec(text.slice(0, start))?.[0].length ?? 0;
  const edits = [
    { span: { file, start: first.end, end: first.end }, text: ` ${more}` },
    { span: { file, start: start - line, end }, text: '' },
  ];
  return { ...one, fix: { action: 'join-lines', edits } };
}
