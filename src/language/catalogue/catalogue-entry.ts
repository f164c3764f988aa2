import type { Severity } from '../diagnostic.js';
import type { Code, Message, Messages } from './index.js';
import type { Fixes, Notes } from './message-notes.js';
import type { TableTexts } from './table-entry.js';

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

/** How the sheet of a cut names its rows: `unit` frames of a second, or of a foot where `feet` says so. */
export interface RowNotation {
  readonly unit: number;
  readonly feet: boolean;
}

/** A row, or the rows from one to another, in a sentence: `frame 2+9 (57)`; only the frame where nobody knows the sheet. */
export type RowText = (frame: number, to?: number) => string;

/** A text made of parameters; `sentence` makes the one of a message among them, `row` what a frame of the cut is called. */
type Written<P> = (parameters: P, sentence: (message: Message) => string, row: RowText) => string;

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

/** Rows in a sentence. `rows`, `from`, `to`: as the sheet names them. */
export interface RowTexts {
  readonly plain: (from: number, to?: number) => string;
  readonly named: (rows: string, from: number, to?: number) => string;
  /** Between the rows of a range. */
  readonly until: string;
}

/** All texts of one language. */
export interface Language {
  readonly codes: { readonly [C in Code]: CodeTexts<Messages[C]> };
  /** Further remarks: a subordinate sentence without a full stop, or a sentence with one. */
  readonly notes: ShortTexts<Notes>;
  /** What a fix does, as a request: "hold it until there". */
  readonly fixes: ShortTexts<Fixes>;
  readonly rows: RowTexts;
  readonly report: ReportTexts;
  readonly run: RunTexts;
  readonly tables: TableTexts;
}

/** What takes a while. */
export type Activity = 'printing' | 'comparing' | 'painting';

/** Why a cut cannot be compared with an earlier print of it: it is new, or what the file at its place holds. */
export type NoEarlierPrint =
  | { readonly why: 'not-printed' | 'new' | 'no-print' | 'one-cut' | 'several-cuts' | 'pages-missing' }
  | { readonly why: 'new-since' | 'errors-at'; readonly revision: string };

/** Which pages of a cut differ from an earlier print of it. */
export interface PageChanges {
  readonly cut: string;
  /** How many it has now. */
  readonly pages: number;
  /** Those that differ or are new, from 1. */
  readonly differing: readonly number[];
  /** How the same are called on paper; null where that is their numbers, and none is new. */
  readonly labels: readonly { readonly label: string; readonly fresh: boolean }[] | null;
  /** Labels of pages that are no more. */
  readonly gone: readonly string[];
  /** Where nothing could be compared, so that all pages count as new. */
  readonly notCompared: NoEarlierPrint | null;
}

/** What a run says of itself: lines for people, on standard error. */
export interface RunTexts {
  readonly cuts: (count: number) => string;
  readonly sharedFiles: (count: number) => string;
  readonly pages: (count: number) => string;
  readonly files: (count: number) => string;
  readonly errors: (count: number) => string;
  readonly warnings: (count: number) => string;
  /** Of so many errors, warnings and hints; nothing may be wrong. */
  readonly tally: (errors: number, warnings: number, hints: number) => string;
  readonly checked: (what: string, tally: string) => string;
  /** `what`: pages, cuts …; or nothing more than the name. */
  readonly wrote: (name: string, what?: string) => string;
  readonly wroteToStandardOutput: (what: string) => string;
  /** `pages`: null where files have none; `folder`: null where they have none in common. */
  readonly wroteFiles: (files: number, pages: number | null, folder: string | null) => string;
  readonly notPrinted: (names: readonly string[], more: number) => string;
  /** A cut of a summary, by its number. */
  readonly cut: (number: string) => string;
  readonly seeManifest: (file: string) => string;
  readonly nothingToPrint: string;
  readonly faultOfProgram: string;
  readonly notWritten: string;
  /** `revision`: null where it is the last build. */
  readonly unchanged: (cuts: number, revision: string | null) => string;
  readonly pagesDiffer: (changes: PageChanges) => string;
  /** A cut that was printed and is no part of the episode any more. */
  readonly cutGone: (number: string) => string;
  readonly cutsReordered: string;
  /** A file that no cut is printed into any more. `now`: where its cut is printed to; null: there is no such cut. */
  readonly orphanedFile: (file: string, cut: string, now: string | null) => string;
  /** How far it is. `of`: cuts, or frames of a film. */
  readonly progress: (activity: Activity, done: number, total: number, of: 'cuts' | 'frames') => string;
  /** The same in front of a bar. */
  readonly progressBar: (activity: Activity, done: number, total: number) => string;
  readonly shard: (part: string, cuts: number, all: number) => string;
  readonly wrotePlan: (file: string, cuts: number, command: string) => string;
  readonly notExported: (cuts: number, tally: string) => string;
  readonly noEdit: (cutsWithErrors: number, tally: string) => string;
  readonly tableOf: (table: string, cuts: number) => string;
  readonly notShot: (cuts: number, tally: string) => string;
  /** What was shot; `missing` of `asked` drawings are not drawn yet. */
  readonly film: (
    length: string,
    pictures: boolean,
    frames: number,
    missing: number,
    asked: number,
  ) => string;
  readonly compared: (cuts: number, differ: number) => string;
  readonly noNote: string;
  readonly mendsWritten: (count: number) => string;
  readonly nothingWritten: string;
  /** A row of production that was written; `stage` and `state` as they are called, `person` '' where nobody is named. */
  readonly rowWritten: (
    file: string,
    row: Readonly<Record<'cut' | 'stage' | 'state' | 'date' | 'person', string>>,
  ) => string;
  readonly unreadStatements: (file: string, count: number) => string;
  readonly formatted: (
    files: number,
    of: Readonly<Record<'changed' | 'same' | 'unread' | 'failed', number>>,
    dry: boolean,
  ) => string;
  readonly numbered: (
    cuts: number,
    of: Readonly<Record<'changed' | 'rest' | 'failed', number>>,
    dry: boolean,
    tally: string,
  ) => string;
  readonly heard: (
    cuts: number,
    of: Readonly<Record<'changed' | 'rest' | 'failed', number>>,
    how: 'lines' | 'dry' | 'written',
    tally: string,
  ) => string;
  /** Of drawings: numbers that `number` pins, in stretches a level; numbers that get a name; pinned ones that nothing shows. */
  readonly pinned: (
    stretches: readonly { readonly from: string; readonly to: string }[],
    dry: boolean,
  ) => string;
  readonly named: (
    drawings: readonly { readonly cel: string; readonly name: string }[],
    dry: boolean,
  ) => string;
  readonly notUsed: (drawings: readonly { readonly cel: string; readonly name: string }[]) => string;
  /** A passage on paper has `count` drawings more or fewer now. `answers`: options, one of which says which. */
  readonly sayWhich: (
    file: string,
    count: number,
    of: 'new' | 'gone',
    command: string,
    answers: readonly string[],
  ) => string;
  readonly sayPassage: (file: string) => string;
  /** What git asks for a diff of. `broken`: which versions have errors. */
  readonly gitDiff: {
    readonly unsettled: (path: string) => string;
    readonly notCompared: (file: string, broken: 'old' | 'new' | 'both') => string;
    readonly nothingChanges: (file: string) => string;
    readonly cutNew: (file: string, cut: string) => string;
    readonly cutDropped: (file: string, cut: string) => string;
    readonly onlyShared: (file: string) => string;
  };
  readonly next: (command: string) => string;
  readonly addToManifest: (cuts: number, file: string) => string;
  readonly watching: (cuts: number, withErrors: number) => string;
  readonly nothingChanges: (name: string) => string;
  readonly stillHolds: (file: string, errors: number) => string;
  readonly lost: (name: string, gone: boolean) => string;
  readonly leftAsItIs: (pdf: string) => string;
  /** `kept`: the PDF that stays; null: there is none. */
  readonly kept: (name: string, what: string, kept: string | null) => string;
  readonly noPage: (name: string) => string;
  readonly printed: (name: string, pdf: string, pages: number) => string;
  readonly shownAt: (url: string) => string;
  /** In the live view's film of an episode. */
  readonly leftOutOfFilm: (cuts: number) => string;
}

/** What stands around the sentences of a report. */
export interface ReportTexts {
  /** Stands before a sentence. */
  readonly severity: Readonly<Record<Severity, string>>;
  /** What is no file is called otherwise than in the code: the command line, standard input. */
  readonly places: Readonly<Record<string, string>>;
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
