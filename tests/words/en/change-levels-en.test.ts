/** The cut as a whole and its levels in English. */

import { expect, test } from 'vitest';
import { levelsIn } from '../../../src/words/en/change-levels-en.js';
import { JAPAN_TERMS, WEST_TERMS } from '../../../src/words/en/terms-en.js';
import { say } from '../sentence-samples.js';

const japan = levelsIn(JAPAN_TERMS);
const west = levelsIn(WEST_TERMS);

test('what was not written is none, an artist nobody', () => {
  expect(say(japan, { kind: 'take', old: '', now: '2' })).toBe('take 2 (was none)');
  expect(say(japan, { kind: 'title', old: 'Quay', now: '' })).toBe('title none (was “Quay”)');
  expect(say(japan, { kind: 'artist', old: [], now: ['M. Arai', 'L. Quoy'] })).toBe(
    'artist M. Arai, L. Quoy (was nobody)',
  );
});

test('a cut has grown or shrunk; a western form calls it a scene', () => {
  expect(say(japan, { kind: 'time', old: 120, now: 108 })).toBe('cut 12 frames shorter: 4+12 (was 5+0)');
  expect(say(west, { kind: 'time', old: 96, now: 120 })).toBe('scene 1+0 longer: 5+0 (was 4+0)');
  expect(say(west, { kind: 'scene', old: '3', now: '4' })).toBe('sequence 4 (was 3)');
});

test('a memo is added, dropped or reworded', () => {
  expect(say(japan, { kind: 'memo', old: null, now: 'No rain.' })).toBe('memo added: “No rain.”');
  expect(say(japan, { kind: 'memo', old: 'No rain.', now: null })).toBe('memo dropped: “No rain.”');
  expect(say(japan, { kind: 'memo', old: 'Rain.', now: 'No rain.' })).toBe(
    'memo reworded: “No rain.” (was “Rain.”)',
  );
});

test('handles are told by both ends', () => {
  expect(say(japan, { kind: 'handles', old: { head: 0, tail: 0 }, now: { head: 12, tail: 24 } })).toBe(
    'handles: 0+12 before, 1+0 after the cut (was 0+0, 0+0)',
  );
});

test('a level that comes lies above another or at the bottom, with its drawings if it has any', () => {
  const added = { kind: 'level-added', level: 'C', title: 'smoke', drawings: 1, above: 'A' } as const;
  expect(say(japan, added)).toBe('level C “smoke” added, above A: 1 drawing');
  expect(say(japan, { ...added, title: '', drawings: 0, above: null })).toBe('level C added, at the bottom');
});

test('a level that goes is told with its drawings if it had any', () => {
  const dropped = { kind: 'level-dropped', level: 'C', title: '', drawings: 5 } as const;
  expect(say(japan, dropped)).toBe('level C dropped: 5 drawings');
  expect(say(japan, { ...dropped, drawings: 0 })).toBe('level C dropped');
});

test.each([
  ['free', true, 'A: its edges may show'],
  ['free', false, 'A: its edges must not show'],
  ['carry', true, 'A: fixed to the camera'],
  ['carry', false, 'A: no longer fixed to the camera'],
  ['flash', true, 'A: its appearing is a flash'],
  ['flash', false, 'A: no flash any more'],
] as const)('the manner of a level: %s %s', (manner, now, sentence) => {
  expect(say(japan, { kind: 'level-manner', level: 'A', manner, now })).toBe(sentence);
});

test('reuse names cut and level, or ends', () => {
  const reuse = { kind: 'reuse', level: 'C', old: null, now: { cut: '8', level: 'A' } } as const;
  expect(say(japan, reuse)).toBe('C: reuse of cut 8, level A (was none)');
  expect(say(west, { ...reuse, old: reuse.now, now: null })).toBe('C: no reuse (was scene 8, level A)');
});

test('artwork lies elsewhere by its sides, or has another size', () => {
  const [old, now] = [
    { xMm: 130, yMm: 0 },
    { xMm: 130, yMm: 5 },
  ];
  expect(say(japan, { kind: 'artwork-home', level: 'BG', old, now })).toBe(
    'BG: artwork 5 mm up, at 130,5 (was 130,0)',
  );
  expect(
    say(japan, { kind: 'artwork-size', level: 'BG', old: null, now: { widthMm: 560, heightMm: 200 } }),
  ).toBe('BG: artwork 560 x 200 mm (was the usual sheet)');
});

test('a timeline comes or goes', () => {
  expect(say(japan, { kind: 'level-timed', level: 'A', now: true })).toBe('A: has a timeline now');
  expect(say(japan, { kind: 'level-timed', level: 'A', now: false })).toBe(
    'A: no timeline any more, simply there',
  );
});
