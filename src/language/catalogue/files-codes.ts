import type { Entries } from './catalogue-entry.js';
import type { NotLent, Takes } from './message-terms.js';

interface MissingFile {
  readonly variant: 'missing';
  readonly file: string;
  /** A file of nearly the same name. */
  readonly guess: string | null;
}

interface UnreadableFile {
  readonly variant: 'unreadable';
  readonly file: string;
  /** As the machine gives it. */
  readonly reason: string;
}

export interface FileMessages {
  readonly 'file-missing':
    | MissingFile
    | { readonly variant: 'nothing'; readonly guess: string | null }
    | { readonly variant: 'folder'; readonly folder: string };
  readonly 'file-unreadable':
    | UnreadableFile
    | { readonly variant: 'folder'; readonly folder: string; readonly reason: string };
  readonly 'file-too-large': /** `bytes`: the limit; where it is that of all files, the file is named. */ {
    readonly file: string | null;
    readonly bytes: number;
  };
  readonly 'wrong-encoding':
    | { readonly variant: 'other'; readonly encoding: string }
    | { readonly variant: 'byte'; readonly place: number; readonly byte: number };
  readonly 'not-marked': { readonly cut: string; readonly against: string };
  readonly 'not-text': /** How many NUL bytes there are. */ { readonly count: number };
  readonly 'no-cuts':
    | { readonly variant: 'folder' | 'manifest-list' | 'manifest-folder' }
    | { readonly variant: 'shared'; readonly for: 'print' | 'list' | 'number' };
  readonly 'pattern-empty': { readonly pattern: string };
  readonly 'cut-twice': /** `compared`: whether it is left out of a comparison. */ {
    readonly cut: string;
    readonly file: string;
    readonly compared: boolean;
  };
  readonly 'episode-syntax': /** `code` and `message`: as the YAML reader gives them. */
    | { readonly variant: 'yaml'; readonly code: string; readonly message: string }
    /** `written`: the entry with a colon and a blank. */
    | { readonly variant: 'no-colon'; readonly written: string }
    | { readonly variant: 'too-deep' | 'no-keys' }
    | { readonly variant: 'no-anchor'; readonly name: string };
  readonly 'episode-key': /** `key`: null where it is none. */
    | { readonly variant: 'unknown'; readonly key: string | null; readonly guess: string | null }
    | { readonly variant: 'twice'; readonly key: string };
  readonly 'episode-value': /** `found`: null where it is no single value. */
    | { readonly variant: 'nothing'; readonly key: string }
    | { readonly variant: 'artists' | 'artist-name' | 'words' }
    | { readonly variant: 'other'; readonly found: string | null; readonly takes: Takes }
    | { readonly variant: 'twice'; readonly found: string }
    /** `orCut`: the number of a cut would do, too. */
    | {
        readonly variant: 'stage';
        readonly found: string;
        readonly stages: readonly string[];
        readonly orCut: boolean;
        readonly guess: string | null;
      }
    | { readonly variant: 'guess'; readonly found: string; readonly guess: string }
    /** An amount; `written`: with a point, or without thousands marked. */
    | { readonly variant: 'comma'; readonly found: string; readonly written: string };
  readonly 'episode-outside': { readonly path: string };
  readonly 'artist-without-cut': { readonly cut: string };
  readonly 'use-missing':
    | { readonly variant: 'too-many'; readonly most: number }
    | MissingFile
    | UnreadableFile;
  readonly 'use-outside': { readonly path: string; readonly inEpisode: boolean };
  readonly 'use-circle': /** The last is the first again. */ { readonly files: readonly string[] };
  readonly 'same-unknown': /** `itself`: it is this cut. */
  { readonly variant: 'itself'; readonly cut: string } | { readonly variant: 'no-cut'; readonly cut: string };
  readonly 'reuse-unknown':
    | { readonly variant: 'not-lent'; readonly reason: NotLent; readonly cut: string; readonly level: string }
    | { readonly variant: 'no-timeline'; readonly cut: string; readonly level: string };
  readonly 'missing-glyph': /** The character as it would be printed. */ { readonly character: string };
  readonly 'text-too-long':
    | { readonly variant: 'one'; readonly characters: number; readonly most: number }
    | { readonly variant: 'all'; readonly most: number };
  readonly 'levels-too-many': { readonly count: number; readonly most: number };
  readonly 'cut-too-large':
    | { readonly variant: 'statement'; readonly characters: number; readonly most: number }
    | { readonly variant: 'pieces'; readonly most: number }
    | { readonly variant: 'statements'; readonly kind: string; readonly most: number }
    | { readonly variant: 'items' | 'legs'; readonly count: number; readonly most: number }
    | {
        readonly variant: 'level-frames';
        readonly levels: number;
        readonly rows: number;
        readonly most: number;
      }
    | { readonly variant: 'move-frames' | 'held-frames'; readonly most: number };
  readonly 'same-output': { readonly other: string; readonly output: string };
  readonly 'output-is-input': { readonly variant: 'read' | 'named'; readonly output: string };
  readonly 'output-unwritable': /** `output`: null for standard output; `reason`: as the machine gives it, null where it was saved meanwhile. */ {
    readonly output: string | null;
    readonly reason: string | null;
  };
}

/** Faults of files and of the episode manifest. */
export const files: Entries<FileMessages> = {
  // ---- reading
  'file-missing': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright build c12.cut, where the folder holds c012.cut only',
      mended: 'cutwright build c012.cut',
    },
  },
  'file-unreadable': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright check c012.cut, where reading the file is not permitted',
      mended: 'give yourself permission to read it, then run the command again',
    },
  },
  'file-too-large': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright check scan.cut, where scan.cut is a picture of 50 MB under a wrong name',
      mended: 'cutwright check c012.cut',
    },
  },
  'wrong-encoding': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'a cut saved as Shift_JIS, Latin-1 or UTF-16',
      mended: 'the same cut saved as UTF-8',
    },
  },
  'not-marked': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'cutwright build c012.cut --marked-against HEAD~1, where the cut of HEAD~1 is too short',
      mended: 'cutwright build c012.cut --marked-against HEAD~2',
    },
  },
  'not-text': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright check c012.cut, where the disk filled up and left NUL bytes in the file',
      mended: 'write the cut again, or take it from the last backup',
    },
  },
  'no-cuts': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright build scenes/, where scenes/ holds pictures only',
      mended: 'cutwright build cuts/',
    },
  },
  'pattern-empty': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'cuts: [ "cut/*.cut" ] in episode.yaml, where the folder is called cuts',
      mended: 'cuts: [ "cuts/*.cut" ]',
    },
  },
  'cut-twice': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'c012.cut and c013.cut both begin with: cut 12',
      mended: 'c013.cut begins with: cut 13',
    },
  },

  // ---- the manifest
  'episode-syntax': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'title: Harbour: Lights',
      mended: 'title: "Harbour: Lights"',
    },
  },
  'episode-key': {
    severity: 'error',
    example: { kind: 'situation', failing: 'papper: A4', mended: 'paper: A4' },
  },
  'episode-value': {
    severity: 'error',
    example: { kind: 'situation', failing: 'fps: fast', mended: 'fps: 24' },
  },
  'episode-outside': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cuts: [ "../other/*.cut" ]',
      mended: 'cuts: [ "cuts/*.cut" ]',
    },
  },
  'artist-without-cut': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'artists: { M. Arai: [112] }, where the episode has the cuts 1 to 20',
      mended: 'artists: { M. Arai: [12] }',
    },
  },

  // ---- use
  'use-missing': {
    severity: 'error',
    example: {
      kind: 'text',
      failing: 'use "hous.cut"\ncut 1\ntime 1+0\nA: walk..\n',
      mended: 'use "house.cut"\ncut 1\ntime 1+0\nA: walk..\n',
      files: { 'house.cut': 'phrase walk = 1--2--\n' },
    },
  },
  'use-outside': {
    severity: 'error',
    example: {
      kind: 'text',
      failing: 'use "../../house.cut"\ncut 1\ntime 1+0\nA: walk..\n',
      mended: 'use "house.cut"\ncut 1\ntime 1+0\nA: walk..\n',
      files: { 'house.cut': 'phrase walk = 1--2--\n' },
    },
  },
  'use-circle': {
    severity: 'error',
    example: {
      kind: 'text',
      failing: 'use "house.cut"\ncut 1\ntime 1+0\nA: walk..\n',
      mended: 'use "street.cut"\ncut 1\ntime 1+0\nA: walk..\n',
      files: {
        'house.cut': 'use "street.cut"\nuse "garden.cut"\n',
        'garden.cut': 'use "house.cut"\n',
        'street.cut': 'phrase walk = 1--2--\n',
      },
    },
  },

  'same-unknown': {
    severity: 'warning',
    example: {
      kind: 'text',
      failing: 'cut 12\ntime 1+0\nsame 12\nA: 1..\n',
      mended: 'cut 12\ntime 1+0\nsame 4\nA: 1..\n',
    },
  },

  'reuse-unknown': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'level C reuse 80/C, in an episode of the cuts 1 to 20',
      mended: 'level C reuse 8/C',
    },
  },

  // ---- printing
  'missing-glyph': {
    severity: 'error',
    example: {
      kind: 'text',
      failing: 'cut 1\ntime 1+0\nmemo "Rain ☔🎬"\nA: 1..\n',
      mended: 'cut 1\ntime 1+0\nmemo "Rain"\nA: 1..\n',
    },
  },
  'text-too-long': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'memo "…", with a whole script pasted into the quotes',
      mended: 'memo "see script p. 12"',
    },
  },
  'levels-too-many': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'a cut with the levels A1 to A300',
      mended: 'the same crowd on the levels A to H',
    },
  },
  'cut-too-large': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'a cut of ten minutes with a hundred levels, or ten thousand memos',
      mended: 'several cuts',
    },
  },
  'same-output': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright build day/c001.cut night/c001.cut --output out/',
      mended: 'cutwright build day/c001.cut --output out/day/ and the same for night',
    },
  },
  'output-is-input': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright build c012.cut --output c012.cut',
      mended: 'cutwright build c012.cut --output c012.pdf',
    },
  },
  'output-unwritable': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright build c012.cut --output /read-only/c012.pdf',
      mended: 'cutwright build c012.cut --output out/c012.pdf',
    },
  },
};
