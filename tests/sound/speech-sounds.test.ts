import { expect, test } from 'vitest';
import { ENGLISH_SOUNDS, JAPANESE_SOUNDS } from '../../src/sound/speech-sounds.js';

test('all 39 sounds of the CMU dictionary are there', () => {
  const names =
    'AA AE AH AO AW AY B CH D DH EH ER EY F G HH IH IY JH K L M N NG OW OY P R S SH T TH UH UW V W Y Z ZH'.split(
      ' ',
    );
  expect([...ENGLISH_SOUNDS.keys()].sort()).toEqual(names.sort());
});

test('the parts of a sound last as long as the sound, and stops begin with a closure', () => {
  for (const { name, kind, parts, seconds } of [...ENGLISH_SOUNDS.values(), ...JAPANESE_SOUNDS.values()]) {
    expect(
      parts.reduce((sum, { share }) => sum + share, 0),
      name,
    ).toBeCloseTo(1, 6);
    expect(seconds).toBeGreaterThan(0.02);
    if (/stop|affricate/.test(kind)) expect(parts[0]!.name, name).toMatch(/closure$/);
    if (kind === 'vowel')
      expect(
        parts.every(({ formants }) => formants !== null),
        name,
      ).toBe(true);
  }
});
