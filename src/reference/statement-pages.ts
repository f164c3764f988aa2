/** The page of every statement, by its word; that of timelines is called `timeline`. */

import type { Code } from '../language/catalogue/index.js';
import { laterWordsOf } from '../language/grammar-queries.js';
import { type StatementRule, statementTable } from '../language/statements/statement-table.js';
import { fieldPages, lightPages } from './pages/field-and-light-pages.js';
import { levelPages, timelinePages } from './pages/level-pages.js';
import { movePages } from './pages/move-pages.js';
import { sheetPages, timePages } from './pages/sheet-pages.js';

/** By subject, in the order of the table of statements. */
export const statementPages: Readonly<Record<string, StatementPage>> = {
  ...timelinePages,
  ...timePages,
  ...levelPages,
  ...sheetPages,
  ...fieldPages,
  ...movePages,
  ...lightPages,
};

/** What a page is called by which a statement is looked up. */
export const pageName = ({ word }: StatementRule): string => word || 'timeline';

/** The statement of a page's name. */
export function ruleOf(name: string): StatementRule {
  return statementTable.find((entry) => pageName(entry) === name)!;
}

/** The words that the grammar lets stand in a statement, and that its page gives no meaning: all moves share one tail. */
export function idleWords(name: string): string[] {
  const { parts } = statementPages[name]!;
  return laterWordsOf(ruleOf(name)).filter((word) => !parts.some(([written]) => holdsWord(written, word)));
}

/** Whether a word of the language stands in a piece of code. */
export function holdsWord(written: string, word: string): boolean {
  return new RegExp(`(?<![\\p{L}\\p{N}])${word}(?![\\p{L}\\p{N}])`, 'u').test(written);
}

export interface PageExample {
  /** A whole cut, or statements that are wrapped in a head of `cut 1` and five seconds. */
  readonly text: string;
  /** The cut's time where five seconds do not fit. */
  readonly time?: string;
  /** What the reader sees in it. */
  readonly says: string;
  /** What is said of it, if anything: `hint=scan-enlarged`. */
  readonly expect?: string;
  /** Other files of the cut's folder, by name. */
  readonly files?: Readonly<Record<string, string>>;
}

/** What the reference knows of a statement. The page in grammar/statements/ and `cutwright explain WORD` are printers of it. */
export interface StatementPage {
  /** A few words, for lists. */
  readonly title: string;
  /** What it says: paragraphs, code in backticks. */
  readonly text: string;
  /** What may be written, and what it means, with units and defaults. */
  readonly parts: readonly (readonly [written: string, meaning: string])[];
  readonly examples: readonly PageExample[];
  /** The messages that it can give, besides those of typing. */
  readonly codes: readonly Code[];
  /** Other statements. */
  readonly see: readonly string[];
  /** Page of grammar/ that explains the subject, with its section: `camera.md#pan`. */
  readonly subject: string;
}
