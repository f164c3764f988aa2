/** Dialogue, sound and notes. */

import type { SpeechText } from '../../compare/change.js';
import type { ChangeSentences, SentenceFormat } from '../change-sentences.js';
import { later, quoted, range, timed, was } from './change-parts-en.js';

const WORDS = { voice: 'dialogue', sound: 'sound', music: 'music' } as const;
const speech = ({ words, speaker, text }: SpeechText, t: SentenceFormat) =>
  `${WORDS[words]}${speaker ? ` ${speaker}` : ''} ${quoted(text, t)}`;
const MANNERS = { on: 'in picture', off: 'off', mono: 'inner voice' } as const;

export const words = {
  'speech-added': (change, t) => `${speech(change, t)} added: ${range(change.frames, t)}`,
  'speech-dropped': (change, t) => `${speech(change, t)} dropped ${was(range(change.frames, t))}`,
  'speech-time': (change, t) => timed(speech(change, t), change.frames, t),
  'speech-text': (change, t) => `${speech(change, t)} reworded ${was(quoted(change.old, t))}`,
  'speech-speaker': (change, t) =>
    `${speech(change, t)}: said by ${change.now || 'nobody'} ${was(change.old || 'nobody')}`,
  'speech-manner': (change, t) => `${speech(change, t)}: ${MANNERS[change.now]} ${was(MANNERS[change.old])}`,
  'speech-rows': (change, t) => {
    const row = (frame: number | null) => (frame === null ? 'no row of its own' : t.row(frame));
    return `${speech(change, t)}: ${quoted(change.word, t)} on ${row(change.row.now)} ${was(row(change.row.old))}`;
  },
  'note-added': ({ frame, text }, t) => `note ${quoted(text, t)} added on ${t.row(frame)}`,
  'note-dropped': ({ frame, text }, t) => `note ${quoted(text, t)} dropped ${was(`on ${t.row(frame)}`)}`,
  'note-moved': ({ frame, text }, t) =>
    `note ${quoted(text, t)} ${later(frame.now - frame.old, t)}, on ${t.row(frame.now)} ${was(t.row(frame.old))}`,
  'note-text': ({ frame, old, now }, t) =>
    `note on ${t.row(frame)} reworded: ${quoted(now, t)} ${was(quoted(old, t))}`,
} satisfies Partial<ChangeSentences>;
