/** What can be wrong with a cut's recording, and with what is written beside it. */

import type { Entries, None } from './catalogue-entry.js';
import type { WaveTrouble } from './message-terms.js';

const HEAD = 'cut 1\ntime 1+0\n';
const BODY = 'A: 1--2..\n';

interface Rows {
  readonly from: number;
  readonly to: number;
}

export interface TrackMessages {
  readonly 'track-missing':
    | { readonly variant: 'missing'; readonly file: string; readonly guess: string | null }
    | { readonly variant: 'unreadable'; readonly file: string; readonly reason: string };
  readonly 'track-outside': { readonly path: string; readonly inEpisode: boolean };
  readonly 'track-unreadable': { readonly file: string } & WaveTrouble;
  readonly 'track-damaged':
    | {
        readonly variant: 'cut-off';
        readonly file: string;
        readonly seconds: number;
        readonly promisedSeconds: number;
      }
    | { readonly variant: 'not-numbers'; readonly file: string; readonly count: number };
  readonly 'track-past-end': { readonly frame: number; readonly rows: number };
  readonly 'timecode-range': { readonly fps: number };
  readonly 'track-start': { readonly seconds: number; readonly startSeconds: number };
  readonly 'track-length':
    | { readonly variant: 'short'; readonly rows: number; readonly last: number }
    | { readonly variant: 'long'; readonly rows: number };
  readonly 'track-silent': None;
  readonly 'voice-unheard': /** `whole`: nothing is heard on any of its rows. */ Rows & {
    readonly whole: boolean;
  };
  readonly 'nothing-to-hear': { readonly variant: 'no-track' | 'no-recording' | 'no-voices' };
  readonly 'line-missing': { readonly speaker: string };
  readonly 'line-doubtful': Rows & { readonly speaker: string };
  readonly 'line-unread': /** Kanji without ruby, or figures among kana. */ { readonly found: string };
  readonly 'sound-unwritten': { readonly stretches: readonly Rows[] };
}

export const track: Entries<TrackMessages> = {
  'track-missing': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'track "sound/c12.wav", where the folder sound holds c012.wav',
      mended: 'track "sound/c012.wav"',
    },
  },
  'track-outside': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'track "/home/nao/c012.wav"',
      mended: 'track "sound/c012.wav"',
    },
  },
  'track-unreadable': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'track "sound/c012.wav", where the file is an MP3 under a wrong name',
      mended: 'the same with the recording saved as a WAV',
    },
  },
  'track-damaged': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'track "sound/c012.wav", where the file was copied only in part',
      mended: 'the same with the whole file',
    },
  },
  'track-past-end': {
    severity: 'error',
    example: {
      kind: 'text',
      failing: `${HEAD}${BODY}track "c1.wav" @2+1\n`,
      mended: `${HEAD}${BODY}track "c1.wav" @13\n`,
    },
  },
  'timecode-range': {
    severity: 'error',
    example: {
      kind: 'text',
      failing: `${HEAD}${BODY}track "reel.wav" from 0:03:12:24\n`,
      mended: `${HEAD}${BODY}track "reel.wav" from 0:03:12:23\n`,
    },
  },
  'track-start': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'track "sound/c012.wav" from 60s, where the recording lasts for one second',
      mended: 'track "sound/c012.wav"',
    },
  },
  'track-length': {
    severity: 'hint',
    example: {
      kind: 'situation',
      failing: 'time 5+0 in a cut whose recording lasts for one second',
      mended: 'time 1+0',
    },
  },
  'track-silent': {
    severity: 'hint',
    example: {
      kind: 'situation',
      failing: 'track "sound/c012.wav", where the recording is that of a microphone that was off',
      mended: 'the same with the right recording',
    },
  },
  'voice-unheard': {
    severity: 'hint',
    example: {
      kind: 'situation',
      failing: 'voice "Nao" 1+1..2+0 "Wait for me!", where she speaks in the third second only',
      mended: 'voice "Nao" 2+1..3+0 "Wait for me!"',
    },
  },
  'sound-unwritten': {
    severity: 'hint',
    example: {
      kind: 'situation',
      failing: 'a recording in which somebody speaks in the third second, where no line is written',
      mended: 'voice "Nao" 2+1..3+0 "Wait for me!"',
    },
  },
  'nothing-to-hear': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright listen c012.cut, where the cut has no track statement',
      mended: 'the same with the line: track "sound/c012.wav"',
    },
  },
  'line-missing': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'cutwright listen c012.cut, where a line was cut out of the recording',
      mended: 'the same without the voice statement, or with the right recording',
    },
  },
  'line-doubtful': {
    severity: 'hint',
    example: {
      kind: 'situation',
      failing: 'cutwright listen c012.cut, where a line is spoken in other words than it is written',
      mended: 'the same with the words that are spoken',
    },
  },
  'line-unread': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'cutwright listen c012.cut, where a line says "海へ行く"',
      mended: '"海《うみ》へ行《い》く"',
    },
  },
};
