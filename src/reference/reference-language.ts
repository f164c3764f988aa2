/** What the reference says, in the language of whoever asks: English as the pages have it, others in a table that is loaded. */

import type { Code } from '../language/catalogue/index.js';
import type { Severity } from '../language/diagnostic.js';
import type { UserLanguage } from '../language/user-language.js';
import type { CardTexts } from './card/card-texts.js';
import { ENGLISH_REFERENCE, type PLACEHOLDERS } from './english-reference.js';
import { type StatementPage, statementPages } from './statement-pages.js';

/** What a page says in words; parts and examples in the order of the page. */
export interface PageTexts {
  readonly title: string;
  readonly text: string;
  readonly parts: readonly string[];
  readonly examples: readonly string[];
}

/** What `explain` says around the pages. */
export interface ReferenceWords {
  /** What the CAPITALS of a line of syntax stand for. */
  readonly placeholders: Readonly<Record<PlaceholderName, string>>;
  readonly idle: (words: string) => string;
  readonly see: (names: string, page: string) => string;
  readonly messages: (codes: string) => string;
  readonly explainsAny: string;
  readonly insideWord: (word: string) => string;
  readonly inStatements: (names: string) => string;
  readonly lists: { readonly statements: string; readonly messages: string };
  readonly severities: Readonly<Record<Severity, string>>;
  readonly about: (code: string, severity: string, title: string) => string;
  readonly withFile: (name: string) => string;
  readonly failing: string;
  readonly mended: string;
  readonly ofStatements: (names: string) => string;
  readonly card: CardTexts;
  /** The examples of messages that are situations in words; a code that is missing has those of the catalogue. */
  readonly situations: { readonly [C in Code]?: readonly [failing: string, mended: string] };
}

/** All that a language says of the reference. */
export interface Reference extends ReferenceWords {
  readonly pages: Readonly<Record<string, PageTexts>>;
}

export type PlaceholderName = keyof typeof PLACEHOLDERS;

const loaded: { ja?: Reference } = {};

/** Has to be called once before the reference is asked for in this language. */
export async function loadReference(language: UserLanguage): Promise<void> {
  if (language === 'ja') loaded.ja ??= (await import('./ja/reference-ja.js')).reference;
}

function other(language: Exclude<UserLanguage, 'en'>): Reference {
  const reference = loaded[language];
  if (!reference) throw new Error(`the reference in "${language}" was not loaded`);
  return reference;
}

export function referenceWords(language: UserLanguage): ReferenceWords {
  return language === 'en' ? ENGLISH_REFERENCE : other(language);
}

/** The page of a statement, in words of a language. */
export function pageIn(name: string, language: UserLanguage): StatementPage {
  const page = statementPages[name]!;
  const texts = language === 'en' ? undefined : other(language).pages[name];
  // One that has not kept pace with the page would say something of the wrong part.
  if (!texts || texts.parts.length !== page.parts.length) return page;
  return {
    ...page,
    title: texts.title,
    text: texts.text,
    parts: page.parts.map(([written, meaning], i) => [written, texts.parts[i] ?? meaning]),
    examples: page.examples.map((example, i) => ({ ...example, says: texts.examples[i] ?? example.says })),
  };
}
