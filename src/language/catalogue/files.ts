import type { Entries, Sentence } from './entry.js';

export interface FileMessages {
  readonly 'file-missing': Sentence;
  readonly 'file-unreadable': Sentence;
  readonly 'file-too-large': Sentence;
  readonly 'wrong-encoding': Sentence;
  readonly 'not-marked': Sentence;
  readonly 'not-text': Sentence;
  readonly 'no-cuts': Sentence;
  readonly 'pattern-empty': Sentence;
  readonly 'cut-twice': Sentence;
  readonly 'episode-syntax': Sentence;
  readonly 'episode-key': Sentence;
  readonly 'episode-value': Sentence;
  readonly 'episode-outside': Sentence;
  readonly 'artist-without-cut': Sentence;
  readonly 'use-missing': Sentence;
  readonly 'use-outside': Sentence;
  readonly 'use-circle': Sentence;
  readonly 'reuse-unknown': Sentence;
  readonly 'missing-glyph': Sentence;
  readonly 'text-too-long': Sentence;
  readonly 'levels-too-many': Sentence;
  readonly 'same-output': Sentence;
  readonly 'output-is-input': Sentence;
  readonly 'output-unwritable': Sentence;
  readonly 'unknown-command': Sentence;
  readonly 'unknown-option': Sentence;
  readonly 'option-value': Sentence;
  readonly 'wrong-arguments': Sentence;
  readonly 'internal-fault': Sentence;
}

/** Faults of files, of the episode manifest and of the command line. */
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

  // ---- the command line
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
