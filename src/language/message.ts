/** The sentences of a diagnostic in one language; only printers ask for them. */

import type { CodeTexts, Language, ReportTexts } from './catalogue/catalogue-entry.js';
import { en } from './catalogue/en/index.js';
import type { Code, Message } from './catalogue/index.js';
import type { Action, Diagnostic, Note } from './diagnostic.js';

export type MessageLanguage = 'en';

const LANGUAGES: Readonly<Record<MessageLanguage, Language>> = { en };

/** The types of the tables see to it that a text gets the parameters that it is made of. */
type AnyText = Written | Readonly<Record<string, Written>>;
type Written = (parameters: unknown, sentence: (message: Message) => string) => string;

function written(text: AnyText, parameters: unknown, language: MessageLanguage): string {
  const made = typeof text === 'function' ? text : text[(parameters as { variant: string }).variant]!;
  return made(parameters, (message) => messageOf(message, language));
}

/** One sentence in trade words that says what is wrong. */
export function messageOf(
  { code, parameters }: Pick<Diagnostic, 'code' | 'parameters'>,
  language: MessageLanguage,
): string {
  return written(LANGUAGES[language].codes[code].message as AnyText, parameters, language);
}

export function noteOf(note: Note, language: MessageLanguage): string {
  return written(LANGUAGES[language].notes[note.note] as AnyText, note, language);
}

/** What a fix does, as a request: "put the text in quotes". */
export function actionOf(action: Action, language: MessageLanguage): string {
  return written(LANGUAGES[language].fixes[action.action] as AnyText, action, language);
}

/** What stands around the sentences: severities, the words before remarks and fixes. */
export function reportTexts(language: MessageLanguage): ReportTexts {
  return LANGUAGES[language].report;
}

/** Title and explanation of a code. */
export function aboutCode(
  code: Code,
  language: MessageLanguage,
): Pick<CodeTexts<never>, 'title' | 'explanation'> {
  return LANGUAGES[language].codes[code];
}
