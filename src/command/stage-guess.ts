/** What was meant by a word that is no stage of an episode, or no state: its printed name, or another word of the trade (common practice). */

import { nearest } from '../language/suggest.js';
import { LABELS } from '../words/labels.js';
import { wordsOf } from '../words/words.js';

const STAGES: Readonly<Record<string, readonly string[]>> = {
  layout: ['lo', 'l/o'],
  key: ['第一原画', '一原', 'keys', 'genga'],
  'second-key': ['二原', '2原'],
  supervisor: ['作画監督'],
  'in-between': ['中割り', '中割', 'inbetweens', 'douga'],
  'in-between-check': ['動画検査'],
  finish: ['仕上げ', '彩色', 'paint', 'ink'],
  background: ['美術', 'bg'],
};

const STATES: Readonly<Record<string, readonly string[]>> = {
  done: ['完了', '済み', '終了', '終わり', '完成', 'アップ', 'up', 'ok', 'finished', 'complete'],
  started: ['開始', '着手', '作業', 'begun', 'wip'],
  retake: ['リテーク', 'redo', 'rt'],
};

/** One of `words`, or null. */
export function guessedWord<T extends string>(
  what: 'stage' | 'state',
  typed: string,
  words: readonly T[],
): T | null {
  const plain = (text: string): string => text.normalize('NFKC').trim().toLowerCase();
  const others = what === 'stage' ? STAGES : STATES;
  const printed = LABELS.map((labels) => wordsOf({ labels, convention: 'japan' }).progress).map(
    (one): Readonly<Record<string, string>> => (what === 'stage' ? one.stages : one.states),
  );
  const named = words.find((word) =>
    [...printed.map((names) => names[word] ?? word), ...(others[word] ?? [])]
      .map(plain)
      .includes(plain(typed)),
  );
  const near = nearest(typed, words);
  return named ?? words.find((word) => word === near) ?? null;
}
