/** Dialogue, sound and notes in English. */

import { expect, test } from 'vitest';
import { words } from '../../../src/words/en/change-speech-en.js';
import { say, VOICE } from '../sentence-samples.js';

const FRAMES = { from: 7, to: 30 };

test('a line is called by its kind, its speaker and its words', () => {
  expect(say(words, { kind: 'speech-added', frames: FRAMES, ...VOICE })).toBe(
    'dialogue Nao “Wait for me!” added: 0+7 to 1+6',
  );
  const music = { words: 'music', speaker: '', text: 'flute' } as const;
  expect(say(words, { kind: 'speech-dropped', frames: FRAMES, ...music })).toBe(
    'music “flute” dropped (was 0+7 to 1+6)',
  );
});

test('a speaker that is not named is nobody', () => {
  expect(say(words, { kind: 'speech-speaker', old: '', now: 'Nao', ...VOICE })).toBe(
    'dialogue Nao “Wait for me!”: said by Nao (was nobody)',
  );
});

test('how it is said, and what was said before', () => {
  expect(say(words, { kind: 'speech-manner', old: 'on', now: 'off', ...VOICE })).toBe(
    'dialogue Nao “Wait for me!”: off (was in picture)',
  );
  expect(say(words, { kind: 'speech-text', old: 'Wait!', now: VOICE.text, ...VOICE })).toBe(
    'dialogue Nao “Wait for me!” reworded (was “Wait!”)',
  );
});

test('a word may be tied to a row, or to none', () => {
  expect(say(words, { kind: 'speech-rows', word: 'me!', row: { old: null, now: 25 }, ...VOICE })).toBe(
    'dialogue Nao “Wait for me!”: “me!” on 1+1 (was no row of its own)',
  );
});

test('notes are called by their words, and by their row where the words are what changed', () => {
  expect(say(words, { kind: 'note-added', frame: 25, text: 'looks up' })).toBe(
    'note “looks up” added on 1+1',
  );
  expect(say(words, { kind: 'note-dropped', frame: 25, text: 'looks up' })).toBe(
    'note “looks up” dropped (was on 1+1)',
  );
  expect(say(words, { kind: 'note-moved', frame: { old: 25, now: 13 }, text: 'looks up' })).toBe(
    'note “looks up” 12 frames earlier, on 0+13 (was 1+1)',
  );
  expect(say(words, { kind: 'note-text', frame: 25, old: 'looks up', now: 'looks down' })).toBe(
    'note on 1+1 reworded: “looks down” (was “looks up”)',
  );
});
