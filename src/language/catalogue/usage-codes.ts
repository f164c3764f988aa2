import type { Entries } from './catalogue-entry.js';
import type { Message } from './index.js';
import type { PrintedPart, RowsFault } from './message-terms.js';

/** What an option takes, and what it got; `option` with its dashes, as everywhere here. */
type OptionValue =
  // ---- of any option
  | { readonly variant: 'no-value' | 'value-missing'; readonly option: string }
  | {
      readonly variant: 'choice';
      readonly option: string;
      readonly words: readonly string[];
      readonly guess: string | null;
    }
  | { readonly variant: 'whole'; readonly option: string; readonly least: number; readonly most: number }
  | { readonly variant: 'count'; readonly option: string; readonly most: number }
  // ---- how and what is printed
  | { readonly variant: 'rows-number' | 'page-range' | 'output-empty' }
  | { readonly variant: 'rows'; readonly rows: string; readonly fault: RowsFault }
  | { readonly variant: 'part-empty'; readonly part: PrintedPart; readonly cuts: number }
  | { readonly variant: 'pages-empty'; readonly pages: string; readonly cuts: number }
  | { readonly variant: 'list-ending' }
  // ---- revisions; `reason`: as git or the machine gives it
  | {
      readonly variant: 'revision';
      readonly option: string;
      readonly revision: string;
      readonly reason: string;
    }
  | { readonly variant: 'pdf-ending' }
  | { readonly variant: 'revision-without-cuts'; readonly revision: string }
  | { readonly variant: 'compared-revision'; readonly revision: string; readonly reason: string }
  // ---- what is shown
  | { readonly variant: 'sheet-place'; readonly option: string }
  | { readonly variant: 'to-before-from'; readonly from: string; readonly to: string }
  | {
      readonly variant: 'from-behind-end';
      readonly from: string;
      readonly sheets: number;
      readonly frames: number;
    }
  | { readonly variant: 'home-missing' }
  // ---- films
  | { readonly variant: 'film-ending'; readonly endings: readonly string[] }
  | { readonly variant: 'picture-names' }
  | { readonly variant: 'picture-size'; readonly least: number; readonly most: number }
  | {
      readonly variant: 'level-not-shown' | 'level-not-numbered';
      readonly level: string;
      readonly guess: string | null;
    }
  // ---- edits
  | { readonly variant: 'start-time' }
  | { readonly variant: 'start-frames'; readonly fps: number }
  // ---- numbers of drawings
  | { readonly variant: 'inbetween-name'; readonly option: string }
  | { readonly variant: 'new-without-letter'; readonly example: string }
  | { readonly variant: 'not-pinned'; readonly level: string }
  | { readonly variant: 'not-in-cels'; readonly level: string; readonly drawing: string }
  | { readonly variant: 'drawing-not-shown' }
  | {
      readonly variant: 'still-shown';
      readonly word: string;
      readonly level: string;
      readonly from: string;
      readonly to: string;
    }
  // ---- new cuts; `fault`: what would be wrong with the cut
  | { readonly variant: 'cut-number' | 'cut-file-name' | 'new-levels' }
  | { readonly variant: 'new-time' | 'new-cut'; readonly fault: Message }
  | { readonly variant: 'like-unknown'; readonly cut: string; readonly guess: string | null }
  | { readonly variant: 'like-nothing'; readonly file: string }
  // ---- progress
  | {
      readonly variant: 'progress-word';
      readonly what: 'stage' | 'state';
      readonly found: string;
      readonly words: readonly string[];
      readonly guess: string | null;
    }
  | { readonly variant: 'day'; readonly option: string }
  // ---- others
  | { readonly variant: 'shell'; readonly shells: readonly string[]; readonly guess: string | null }
  | { readonly variant: 'port' | 'shard' }
  | { readonly variant: 'jobs'; readonly most: number };

/** What is missing, too much, or does not go together. */
type WrongArguments =
  // ---- of any command
  | { readonly variant: 'missing'; readonly command: string; readonly argument: string }
  | { readonly variant: 'too-many' | 'no-episode'; readonly command: string }
  /** As the library says it that reads the command line. */
  | { readonly variant: 'library'; readonly message: string }
  | { readonly variant: 'needs-output'; readonly option: string }
  | { readonly variant: 'not-together'; readonly one: string; readonly other: string }
  // ---- outputs
  | { readonly variant: 'one-output'; readonly cuts: number; readonly standardOutput: boolean }
  | { readonly variant: 'one-json'; readonly cuts: number }
  | { readonly variant: 'output-nameless'; readonly ending: string }
  | { readonly variant: 'input-nameless' | 'film-standard-output' }
  // ---- comparing with what was printed or committed
  | { readonly variant: 'two-comparisons' | 'pages-changed-alone' | 'changed-standard-output' }
  | { readonly variant: 'pages-found'; readonly option: string }
  | { readonly variant: 'input-revisions'; readonly option: string }
  | { readonly variant: 'marks-without-sheet'; readonly part: PrintedPart }
  | { readonly variant: 'marks-changed-pages' | 'plan-folder' | 'up-without-cover' }
  | { readonly variant: 'plan-name'; readonly tool: string; readonly file: string }
  // ---- `compare`
  | { readonly variant: 'versions-missing' | 'versions-three' | 'versions-both-input' | 'input-past' }
  | { readonly variant: 'bare-revision'; readonly revision: string }
  | { readonly variant: 'version-unreadable'; readonly version: string; readonly reason: string }
  | { readonly variant: 'version-without-cut'; readonly version: string; readonly cut: string }
  | { readonly variant: 'version-shared' | 'git-words' }
  // ---- `list`, `export`; an episode without a manifest: null
  | { readonly variant: 'list-episodes'; readonly manifests: readonly (string | null)[] }
  | { readonly variant: 'edit-episodes'; readonly episodes: number }
  | { readonly variant: 'only-without-pdf' | 'start-without-edit' }
  // ---- `new`
  | { readonly variant: 'new-what'; readonly guess: string | null }
  | { readonly variant: 'new-cut-option'; readonly option: string }
  | { readonly variant: 'new-cut-number' | 'table-without-number' }
  | { readonly variant: 'table-one-file' | 'table-one-number'; readonly cuts: number }
  // ---- `progress`
  | { readonly variant: 'progress-words'; readonly states: readonly string[] }
  | { readonly variant: 'progress-option'; readonly option: string }
  // ---- others
  | { readonly variant: 'retimed-several' | 'watch-input' | 'watch-output' | 'lsp-terminal' }
  | { readonly variant: 'explain-unknown'; readonly word: string; readonly guess: string | null };

export interface UsageMessages {
  readonly 'unknown-command':
    | { readonly variant: 'guess'; readonly name: string; readonly guess: string }
    | { readonly variant: 'file'; readonly name: string }
    | { readonly variant: 'none'; readonly name: string; readonly commands: readonly string[] };
  readonly 'unknown-option':
    | {
        readonly variant: 'of-command';
        readonly command: string;
        readonly option: string;
        readonly guess: string | null;
      }
    | { readonly variant: 'before-command'; readonly option: string };
  readonly 'option-value': OptionValue;
  readonly 'wrong-arguments': WrongArguments;
  readonly 'internal-fault': /** `error`: as the program threw it. */ {
    readonly onCut: boolean;
    readonly error: string;
  };
}

/** Wrong use of the command line, and faults of the program itself. */
export const usage: Entries<UsageMessages> = {
  'unknown-command': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright biuld c012.cut',
      mended: 'cutwright build c012.cut',
    },
  },
  'unknown-option': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright build c012.cut --papper A4',
      mended: 'cutwright build c012.cut --paper A4',
    },
  },
  'option-value': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright build c012.cut --paper A9',
      mended: 'cutwright build c012.cut --paper A4',
    },
  },
  'wrong-arguments': {
    severity: 'error',
    example: { kind: 'situation', failing: 'cutwright build', mended: 'cutwright build c012.cut' },
  },
  'internal-fault': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'a cut that makes the program fall over',
      mended: 'any other cut',
    },
  },
};
