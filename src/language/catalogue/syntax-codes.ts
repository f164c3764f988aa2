/** What can be wrong with the words themselves, before anybody asks what they mean together. */

import type { Entries, None } from './catalogue-entry.js';
import type { Misplaced, Wanted } from './message-terms.js';

const HEAD = 'cut 1\ntime 1+0\n';
const BODY = 'A: 1--2..\n';

export interface WordMessages {
  readonly 'control-character': { readonly character: number };
  readonly 'unclosed-text': { readonly variant: 'text' | 'statement' };
  readonly 'unknown-escape': { readonly pair: string };
  readonly 'unknown-character': { readonly found: string; readonly guess: string | null };
  readonly 'indented-start': None;
  readonly 'indented-statement': /** Found in a statement that cannot be read, or taken for a phrase of the timeline above. */
    | { readonly variant: 'unread'; readonly found: string; readonly statement: string }
    | { readonly variant: 'phrase'; readonly name: string };
  readonly 'statement-start': { readonly found: string };
  readonly 'unknown-word': { readonly found: string; readonly guess: string | null };
  readonly 'word-renamed': /** `word`: as typed; `written`: what the language has now. */ {
    readonly word: string;
    readonly written: string;
  };
  readonly 'trade-word': /** `here`: what it is called, or how it is written. */
    | {
        readonly variant: 'called' | 'drawn' | 'manifest' | 'instead' | 'command' | 'written' | 'towards';
        readonly found: string;
        readonly here: string;
      }
    | { readonly variant: 'left-out' | 'either-end'; readonly found: string };
  readonly 'missing-colon': { readonly found: string };
  readonly 'spaced-number': { readonly parts: 'seconds' | 'feet' | 'unit'; readonly joined: string };
  readonly 'glued-number': { readonly variant: 'feet-alone' | 'glued'; readonly found: string };
  readonly 'number-too-large': { readonly found: string };
  readonly 'stray-dot':
    | { readonly variant: 'too-many' | 'single' }
    | { readonly variant: 'leading'; readonly number: string };
  readonly 'times-sign': { readonly times: string };
  readonly 'missing-quotes': { readonly found: string };
  readonly 'unclosed-group': None;
  readonly 'nested-too-deep': { readonly most: number };
  readonly 'stops-short': {
    readonly statement: string;
    readonly wanted: readonly Wanted[];
    readonly last: string;
  };
  readonly 'does-not-fit':
    | { readonly variant: 'level-meant'; readonly found: string; readonly statement: 'truck' | 'turn' }
    | { readonly variant: 'word-with-colon'; readonly word: string }
    | { readonly variant: 'word-meant'; readonly found: string; readonly guess: string }
    | { readonly variant: 'wanted'; readonly found: string; readonly wanted: readonly Wanted[] }
    | { readonly variant: 'misplaced'; readonly found: string; readonly why: Misplaced }
    | { readonly variant: 'not-shown'; readonly found: string }
    | { readonly variant: 'too-much'; readonly found: string; readonly statement: string };
  readonly 'part-twice': { readonly part: string; readonly of: 'level' | 'move' | 'mouth' };
  readonly 'quick-level': None;
  readonly 'reading-stopped': { readonly most: number };
}

export const words: Entries<WordMessages> = {
  'control-character': {
    severity: 'error',
    example: {
      kind: 'text',
      failing: `${HEAD}memo "Rain\u0007"\n${BODY}`,
      mended: `${HEAD}memo "Rain"\n${BODY}`,
    },
  },
  'unclosed-text': {
    severity: 'error',
    example: { kind: 'text', failing: `${HEAD}memo "Rain\n${BODY}`, mended: `${HEAD}memo "Rain"\n${BODY}` },
  },
  'unknown-escape': {
    severity: 'error',
    safeFix: true,
    example: {
      kind: 'text',
      failing: `${HEAD}memo "Rain \\ wind"\n${BODY}`,
      mended: `${HEAD}memo "Rain \\\\ wind"\n${BODY}`,
    },
  },
  'unknown-character': {
    severity: 'error',
    example: { kind: 'text', failing: `${HEAD}A: [1--2]..\n`, mended: `${HEAD}A: (1--2-)..\n` },
  },
  'indented-start': {
    severity: 'error',
    example: { kind: 'text', failing: `  cut 1\ntime 1+0\n${BODY}`, mended: `${HEAD}${BODY}` },
  },
  'indented-statement': {
    severity: 'error',
    example: { kind: 'text', failing: `cut 1\n  time 1+0\n${BODY}`, mended: `${HEAD}${BODY}` },
  },
  'statement-start': {
    severity: 'error',
    example: { kind: 'text', failing: `${HEAD}A: 1--2\n3..\n`, mended: `${HEAD}A: 1--2\n    3..\n` },
  },
  'unknown-word': {
    severity: 'error',
    example: { kind: 'text', failing: `cut 1\ntmie 1+0\n${BODY}`, mended: `${HEAD}${BODY}` },
  },
  'word-renamed': {
    severity: 'hint',
    safeFix: true,
    example: {
      kind: 'text',
      failing: `${HEAD}A "raft": 1..\nroll A 7mm 1..1+0 every 1+0\n`,
      mended: `${HEAD}A "raft": 1..\nsway A 7mm 1..1+0 every 1+0\n`,
    },
  },
  'trade-word': {
    severity: 'error',
    safeFix: true,
    example: {
      kind: 'text',
      failing: `${HEAD}${BODY}dialogue "Nao" 1..1+0 "Wait!"\n`,
      mended: `${HEAD}${BODY}voice "Nao" 1..1+0 "Wait!"\n`,
    },
  },
  'missing-colon': {
    severity: 'error',
    example: { kind: 'text', failing: `${HEAD}A 1--2..\n`, mended: `${HEAD}${BODY}` },
  },
  'spaced-number': {
    severity: 'error',
    safeFix: true,
    example: { kind: 'text', failing: `cut 1\ntime 1 + 0\n${BODY}`, mended: `${HEAD}${BODY}` },
  },
  'glued-number': {
    severity: 'error',
    example: {
      kind: 'text',
      failing: `${HEAD}level BG size 560x200mmm\n${BODY}`,
      mended: `${HEAD}level BG size 560x200mm\n${BODY}`,
    },
  },
  'number-too-large': {
    severity: 'error',
    example: { kind: 'text', failing: `${HEAD}A: 1--2:10000000000\n`, mended: `${HEAD}${BODY}` },
  },
  'stray-dot': {
    severity: 'error',
    example: { kind: 'text', failing: `${HEAD}A: 1--2...\n`, mended: `${HEAD}${BODY}` },
  },
  'times-sign': {
    severity: 'error',
    safeFix: true,
    example: { kind: 'text', failing: `${HEAD}A: (1-2-)×3\n`, mended: `${HEAD}A: (1-2-)*3\n` },
  },
  'missing-quotes': {
    severity: 'error',
    example: {
      kind: 'text',
      failing: `${HEAD}voice Nao 1+1.. "Wait!"\n${BODY}`,
      mended: `${HEAD}voice "Nao" 1..1+0 "Wait!"\n${BODY}`,
    },
  },
  'unclosed-group': {
    severity: 'error',
    example: { kind: 'text', failing: `${HEAD}A: (1--2-\n`, mended: `${HEAD}A: (1--2-)..\n` },
  },
  'nested-too-deep': {
    severity: 'error',
    example: {
      kind: 'text',
      failing: `${HEAD}A: ${'('.repeat(60)}1${')'.repeat(60)}..\n`,
      mended: `${HEAD}A: ((1))..\n`,
    },
  },
  'stops-short': {
    severity: 'error',
    example: { kind: 'text', failing: `cut 1\ntime\n${BODY}`, mended: `${HEAD}${BODY}` },
  },
  'does-not-fit': {
    severity: 'error',
    example: { kind: 'text', failing: `cut 1\ntime 60%\n${BODY}`, mended: `${HEAD}${BODY}` },
  },
  'part-twice': {
    severity: 'error',
    example: {
      kind: 'text',
      failing: `${HEAD}level BG size 560x200mm size 600x200mm\n${BODY}`,
      mended: `${HEAD}level BG size 600x200mm\n${BODY}`,
    },
  },
  'quick-level': {
    severity: 'error',
    example: {
      kind: 'text',
      failing: `${HEAD}${BODY}truck quick level A 100%@1 > 140%@1+0\n`,
      mended: `${HEAD}${BODY}truck level A 100%@1 > 140%@1+0\n`,
    },
  },
  'reading-stopped': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'a text with more than a thousand statements that cannot be read',
      mended: 'the first ones mended, or the right file named',
    },
  },
};
