import type { Severity } from '../diagnostic.js';

/**
 * What the catalogue knows of a code. The tests compile `failing` (the code must be among its diagnostics) and
 * `mended` (no such code, no error).
 */
export interface Entry {
  readonly severity: Severity;
  /** A few words, for the index of the reference. */
  readonly title: string;
  /** Two or three sentences for the person who got the message: what it means, why it matters, what to do. */
  readonly explanation: string;
  readonly example:
    | {
        readonly kind: 'text';
        readonly failing: string;
        readonly mended: string;
        /** Other files of the cut's folder, by name. */
        readonly files?: Readonly<Record<string, string>>;
      }
    /** A fault of files, folders or the command line: the situation in words; a test of its own makes it happen. */
    | { readonly kind: 'situation'; readonly failing: string; readonly mended: string };
}

/** Keeps the literal keys of a table of entries. */
export function entries<K extends string>(table: Readonly<Record<K, Entry>>): Readonly<Record<K, Entry>> {
  return table;
}
