/** The sentences of a diagnostic in one language; only printers ask for them. */

import { rowLabel } from '../words/number-format.js';
import type {
  CodeTexts,
  Language,
  ReportTexts,
  RowNotation,
  RowText,
  RowTexts,
  RunTexts,
} from './catalogue/catalogue-entry.js';
import { en } from './catalogue/en/index.js';
import type { Code, Message } from './catalogue/index.js';
import type { Action, Diagnostic, Note } from './diagnostic.js';
import type { UserLanguage } from './user-language.js';

/** English is always at hand; other languages are files of their own, read by `loadMessages` where somebody wants them. */
const loaded: { [L in UserLanguage]?: Language } = { en };

/** Has to be called once before a text in this language is asked for. */
export async function loadMessages(language: UserLanguage): Promise<void> {
  if (language === 'ja') loaded.ja ??= (await import('./catalogue/ja/index.js')).ja;
}

/** All texts of a language that was loaded. */
export function textsOf(language: UserLanguage): Language {
  const texts = loaded[language];
  if (!texts) throw new Error(`the texts in "${language}" were not loaded`);
  return texts;
}

/** The types of the tables see to it that a text gets the parameters that it is made of. */
type AnyText = Written | Readonly<Record<string, Written>>;
type Written = (parameters: unknown, sentence: (message: Message) => string, row: RowText) => string;

function written(
  text: AnyText,
  parameters: unknown,
  language: UserLanguage,
  rows: RowNotation | undefined,
): string {
  const made = typeof text === 'function' ? text : text[(parameters as { variant: string }).variant]!;
  return made(parameters, (message) => messageOf(message, language), rowText(textsOf(language).rows, rows));
}

/** What rows are called: as the sheet of the cut names them, which is known where the text could be read. */
function rowText({ plain, named, until }: RowTexts, rows: RowNotation | undefined): RowText {
  return (from, to) => {
    const known = rows && [from, to ?? from].every((frame) => Number.isSafeInteger(frame) && frame > 0);
    // The rows of the first second, or foot, are called by their frames alone.
    if (!known || (to ?? from) <= rows.unit) return plain(from, to);
    const name = (frame: number): string => rowLabel(frame, rows.unit, rows.feet);
    return named(to === undefined ? name(from) : `${name(from)}${until}${name(to)}`, from, to);
  };
}

/** One sentence in trade words that says what is wrong. */
export function messageOf(
  { code, parameters, rows }: Pick<Diagnostic, 'code' | 'parameters' | 'rows'>,
  language: UserLanguage,
): string {
  return written(textsOf(language).codes[code].message as AnyText, parameters, language, rows);
}

export function noteOf(note: Note, language: UserLanguage): string {
  return written(textsOf(language).notes[note.note] as AnyText, note, language, undefined);
}

/** What a fix does, as a request: "put the text in quotes". */
export function actionOf(action: Action, language: UserLanguage): string {
  return written(textsOf(language).fixes[action.action] as AnyText, action, language, undefined);
}

/** What stands around the sentences: severities, the words before remarks and fixes. */
export function reportTexts(language: UserLanguage): ReportTexts {
  return textsOf(language).report;
}

/** What a run says of itself. */
export function runTexts(language: UserLanguage): RunTexts {
  return textsOf(language).run;
}

/** Title and explanation of a code. */
export function aboutCode(
  code: Code,
  language: UserLanguage,
): Pick<CodeTexts<never>, 'title' | 'explanation'> {
  return textsOf(language).codes[code];
}
