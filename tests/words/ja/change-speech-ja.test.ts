/** Dialogue, sound and notes in Japanese. */

import { expect, test } from 'vitest';
import { words } from '../../../src/words/ja/change-speech-ja.js';
import { say, VOICE } from '../sentence-samples.js';

const FRAMES = { from: 7, to: 30 };

test('a line is called by its kind, its speaker and its words', () => {
  expect(say(words, { kind: 'speech-added', frames: FRAMES, ...VOICE })).toBe(
    'セリフ Nao「Wait for me!」 追加：0+7～1+6',
  );
  const music = { words: 'music', speaker: '', text: 'flute' } as const;
  expect(say(words, { kind: 'speech-dropped', frames: FRAMES, ...music })).toBe(
    '音楽「flute」 削除（旧 0+7～1+6）',
  );
});

test('a speaker that is not named is none', () => {
  expect(say(words, { kind: 'speech-speaker', old: 'Nao', now: '', ...VOICE, speaker: '' })).toBe(
    'セリフ「Wait for me!」：話者 なし（旧 Nao）',
  );
});

test('how it is said, and what was said before', () => {
  expect(say(words, { kind: 'speech-manner', old: 'on', now: 'mono', ...VOICE })).toBe(
    'セリフ Nao「Wait for me!」：モノローグ（旧 画面内）',
  );
  expect(say(words, { kind: 'speech-text', old: 'Wait!', now: VOICE.text, ...VOICE })).toBe(
    'セリフ Nao「Wait for me!」 に変更（旧 「Wait!」）',
  );
});

test('a word may be tied to a row, or to none', () => {
  expect(say(words, { kind: 'speech-rows', word: 'me!', row: { old: 25, now: null }, ...VOICE })).toBe(
    'セリフ Nao「Wait for me!」：「me!」 指定なし（旧 1+1）',
  );
});

test('notes are called by their words, and by their row where the words are what changed', () => {
  expect(say(words, { kind: 'note-added', frame: 25, text: '見上げる' })).toBe('指示「見上げる」 追加：1+1');
  expect(say(words, { kind: 'note-dropped', frame: 25, text: '見上げる' })).toBe(
    '指示「見上げる」 削除（旧 1+1）',
  );
  expect(say(words, { kind: 'note-moved', frame: { old: 13, now: 25 }, text: '見上げる' })).toBe(
    '指示「見上げる」 12コマ後ろへ：1+1（旧 0+13）',
  );
  expect(say(words, { kind: 'note-text', frame: 25, old: '見上げる', now: '見る' })).toBe(
    '指示 1+1 変更：「見る」（旧 「見上げる」）',
  );
});
