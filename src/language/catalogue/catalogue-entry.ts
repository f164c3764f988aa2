import type { Severity } from '../diagnostic.js';
import type { Code, Message, Messages } from './index.js';
import type { Fixes, Notes } from './message-notes.js';

/**
 * What holds of a code in every language. The tests compile `failing` (the code must be among its diagnostics) and
 * `mended` (no such code, no error).
 */
export interface Entry {
  readonly severity: Severity;
  /** Its fixes say the same in another way; see `safe-fixes.ts`. */
  readonly safeFix?: true;
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

// ----
// The types of the texts in one language. What a text says is in its parameters, which are the same for all languages: a second
// language is a second table of type `Language`.

/** A text made of parameters; `sentence` makes the one of a message among them. */
type Written<P> = (parameters: P, sentence: (message: Message) => string) => string;

/** A text made of parameters; where they come in variants, one a variant. */
export type MessageText<P> = [P] extends [{ readonly variant: string }]
  ? { readonly [V in P['variant']]: Written<Extract<P, { readonly variant: V }>> }
  : Written<P>;

/** What a language says of a code. */
export interface CodeTexts<P> {
  /** A few words, for the index of the reference. */
  readonly title: string;
  /** Two or three sentences for the person who got the message: what it means, why it matters, what to do. */
  readonly explanation: string;
  /** The sentence of one diagnostic, in trade words. */
  readonly message: MessageText<P>;
}

export type Texts<P> = { readonly [C in keyof P]: CodeTexts<P[C]> };
export type ShortTexts<P> = { readonly [N in keyof P]: MessageText<P[N]> };

/** All texts of one language. */
export interface Language {
  readonly codes: { readonly [C in Code]: CodeTexts<Messages[C]> };
  /** Further remarks: a subordinate sentence without a full stop, or a sentence with one. */
  readonly notes: ShortTexts<Notes>;
  /** What a fix does, as a request: "hold it until there". */
  readonly fixes: ShortTexts<Fixes>;
  readonly report: ReportTexts;
}

/** What stands around the sentences of a report. */
export interface ReportTexts {
  /** Stands before a sentence. */
  readonly severity: Readonly<Record<Severity, string>>;
  /** Stands before a further remark. */
  readonly note: string;
  /** Stands before what a fix does. */
  readonly mend: string;
  /** `most` were printed of one severity in one file, `count` were not. */
  readonly leftOut: (of: {
    readonly file: string;
    readonly severity: Severity;
    readonly count: number;
    readonly most: number;
  }) => string;
}
