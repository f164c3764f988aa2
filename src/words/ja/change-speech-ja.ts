/** Dialogue, sound and notes. */

import type { SpeechText } from '../../compare/change.js';
import type { ChangeSentences, SentenceFormat } from '../change-sentences.js';
import { later, quoted, range, timed, was } from './change-parts-ja.js';

const WORDS = { voice: 'セリフ', sound: 'SE', music: '音楽' } as const;
const speech = ({ words, speaker, text }: SpeechText, t: SentenceFormat) =>
  `${WORDS[words]}${speaker ? ` ${speaker}` : ''}${quoted(text, t)}`;
const MANNERS = { on: '画面内', off: 'OFF', mono: 'モノローグ' } as const;

export const words = {
  'speech-added': (change, t) => `${speech(change, t)} 追加：${range(change.frames, t)}`,
  'speech-dropped': (change, t) => `${speech(change, t)} 削除${was(range(change.frames, t))}`,
  'speech-time': (change, t) => timed(speech(change, t), change.frames, t),
  'speech-text': (change, t) => `${speech(change, t)} に変更${was(quoted(change.old, t))}`,
  'speech-speaker': (change, t) =>
    `${speech(change, t)}：話者 ${change.now || 'なし'}${was(change.old || 'なし')}`,
  'speech-manner': (change, t) => `${speech(change, t)}：${MANNERS[change.now]}${was(MANNERS[change.old])}`,
  'speech-rows': (change, t) => {
    const row = (frame: number | null) => (frame === null ? '指定なし' : t.row(frame));
    return `${speech(change, t)}：${quoted(change.word, t)} ${row(change.row.now)}${was(row(change.row.old))}`;
  },
  'note-added': ({ frame, text }, t) => `指示${quoted(text, t)} 追加：${t.row(frame)}`,
  'note-dropped': ({ frame, text }, t) => `指示${quoted(text, t)} 削除${was(t.row(frame))}`,
  'note-moved': ({ frame, text }, t) =>
    `指示${quoted(text, t)} ${later(frame.now - frame.old, t)}：${t.row(frame.now)}${was(t.row(frame.old))}`,
  'note-text': ({ frame, old, now }, t) =>
    `指示 ${t.row(frame)} 変更：${quoted(now, t)}${was(quoted(old, t))}`,
} satisfies Partial<ChangeSentences>;
