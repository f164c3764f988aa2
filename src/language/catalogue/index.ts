/** Every code that the program can report, in the order of the stages that report them. */

import { type CameraMessages, camera } from './camera-codes.js';
import type { Entry } from './catalogue-entry.js';
import { type TypingMessages, typing } from './command-codes.js';
import {
  type CutListMessages,
  cutList,
  type EpisodeMessages,
  episode,
  type HandoverMessages,
  handover,
  type PictureMessages,
  picture,
} from './episode-codes.js';
import { type FileMessages, files } from './files-codes.js';
import { type MouthMessages, mouth } from './mouth-codes.js';
import { type ProgressMessages, progress } from './progress-codes.js';
import { type StatementMessages, statements } from './statements-codes.js';
import { type WordMessages, words } from './syntax-codes.js';
import { type TimelineMessages, timelines } from './timelines-codes.js';
import { type TrackMessages, track } from './track-codes.js';
import { type UsageMessages, usage } from './usage-codes.js';

export type { Entry } from './catalogue-entry.js';

/** The parameters of every message. */
export interface Messages
  extends FileMessages,
    UsageMessages,
    HandoverMessages,
    WordMessages,
    StatementMessages,
    TimelineMessages,
    CameraMessages,
    EpisodeMessages,
    TypingMessages,
    CutListMessages,
    ProgressMessages,
    PictureMessages,
    TrackMessages,
    MouthMessages {}

export type Code = keyof Messages;

/** Of warnings and hints: a cut may `accept` them. */
export const acceptableCodes = (): Code[] =>
  (Object.keys(catalogue) as Code[]).filter((code) => catalogue[code].severity !== 'error');

/** A code with its parameters. */
export type Message = { [C in Code]: { readonly code: C; readonly parameters: Messages[C] } }[Code];

export const catalogue: { readonly [C in Code]: Entry } = {
  ...files,
  ...usage,
  ...handover,
  ...words,
  ...statements,
  ...timelines,
  ...camera,
  ...episode,
  ...typing,
  ...cutList,
  ...progress,
  ...picture,
  ...track,
  ...mouth,
};
