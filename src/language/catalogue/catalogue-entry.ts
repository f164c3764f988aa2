import type { Severity } from '../diagnostic.js';

/**
 * What holds of a code in every language. The tests compile `failing` (the code must be among its diagnostics) and
 * `mended` (no such code, no error).
 */
export interface Entry {
  readonly severity: Severity;
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

/** One entry for each code of an interface of parameters. */
export type Entries<P> = { readonly [C in keyof P]: Entry };

/** Of a text that is always the same. */
// biome-ignore lint/complexity/noBannedTypes: an object without anything in it is what is meant
export type None = {};
