import type { Code } from '../language/catalogue/index.js';

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
