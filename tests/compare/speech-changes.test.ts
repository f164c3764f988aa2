/** Dialogue, sound, music and notes of two versions. */

import { describe, expect, test } from 'vitest';
import { noteChanges, speechChanges } from '../../src/compare/speech-changes.js';
import { edits, SHEET } from './edits.js';
import { solved } from './say.js';

edits(SHEET, [
  ['1+6..2+20', '1+6..3+8', 'dialogue Nao “Wait for me!” 12 frames longer: 1+6 to 3+8 (was 1+6 to 2+20)'],
  [
    '1+6..2+20 "Wait" @1+14 "for" @1+20',
    '1+18..3+8 "Wait" @2+2 "for" @2+8',
    'dialogue Nao “Wait for me!” 12 frames later: 1+18 to 3+8 (was 1+6 to 2+20)',
  ],
  ['@1+14', '@1+16', 'dialogue Nao “Wait for me!”: “for” on 1+16 (was 1+14)'],
  [
    '@1+14 "for" @1+20 "me!"',
    '@1+16 "for" @1+20 "us!"',
    'dialogue Nao “Wait for us!” reworded (was “Wait for me!”)',
    'dialogue Nao “Wait for us!”: “for” on 1+16 (was 1+14)',
  ],
  [
    '@1+20 "me!"',
    '@1+22 "us, all!"',
    'dialogue Nao “Wait for us, all!” reworded (was “Wait for me!”)',
    'dialogue Nao “Wait for us, all!”: “us, all!” on 1+22 (was 1+20)',
  ],
  ['"me!"', '"us!"', 'dialogue Nao “Wait for us!” reworded (was “Wait for me!”)'],
  ['voice "Nao"', 'voice "Pim"', 'dialogue Pim “Wait for me!”: said by Pim (was Nao)'],
  ['voice "Nao" 1', 'voice "Nao" mono 1', 'dialogue Nao “Wait for me!”: inner voice (was in picture)'],
  ['sound 3+1..3+8 "door slams"\n', '', 'sound “door slams” dropped (was 3+1 to 3+8)'],
  ['music', 'sound 4+1..4+6 "bell"\nmusic', 'sound “bell” added: 4+1 to 4+6'],
  ['3+1..3+8', '3+3..3+10', 'sound “door slams” 2 frames later: 3+3 to 3+10 (was 3+1 to 3+8)'],
  ['music 1..', 'music 2+1..', 'music “flute” begins 2+0 later: 2+1 to 4+24 (was 0+1 to 4+24)'],
  ['note 2+12', 'note 3+12', 'note “looks up” 1+0 later, on 3+12 (was 2+12)'],
  ['looks up', 'looks down', 'note on 2+12 reworded: “looks down” (was “looks up”)'],
  ['note 2', 'note 1+1 "breathes"\nnote 2', 'note “breathes” added on 1+1'],
]);

const cut = (...lines: string[]) => solved(`cut 1\ntime 4+0\nA: 1..\n${lines.join('\n')}\n`);

describe('lines of speech', () => {
  const kinds = (old: string[], now: string[]) =>
    speechChanges(cut(...old), cut(...now)).map(({ kind }) => kind);

  test('that share a third of their words are one, reworded', () => {
    expect(kinds(['voice "Nao" 1..24 "wait for me"'], ['voice "Nao" 1..24 "wait there now"'])).toEqual([
      'speech-text',
    ]);
  });

  test('of a script without blanks are compared by pairs of letters', () => {
    expect(kinds(['voice "Nao" 1..24 "待ってください"'], ['voice "Nao" 1..30 "待ってくれ"'])).toEqual([
      'speech-text',
      'speech-time',
    ]);
  });

  test('that share nothing and stand elsewhere are two', () => {
    expect(kinds(['voice "Nao" 1..24 "wait"'], ['voice "Nao" 3+1..4+0 "rain"'])).toEqual([
      'speech-dropped',
      'speech-added',
    ]);
  });

  test('of another kind are two', () => {
    expect(kinds(['sound 1..24 "bell"'], ['music 1..24 "bell"'])).toEqual(['speech-added', 'speech-dropped']);
  });

  test('that go on to the end do so in a longer cut', () => {
    const long = solved('cut 1\ntime 6+0\nA: 1..\nmusic 1.. "flute"\n');
    expect(speechChanges(cut('music 1.. "flute"'), long)).toEqual([]);
  });

  test('that are dropped mark the rows that the new sheet still has', () => {
    const short = solved('cut 1\ntime 1+0\nA: 1..\n');
    expect(speechChanges(cut('voice "Nao" 13..36 "wait"'), short)[0]!.rows).toEqual({ from: 13, to: 24 });
    expect(speechChanges(cut('voice "Nao" 2+1..3+0 "wait"'), short)[0]!.rows).toBeNull();
  });
});

describe('notes', () => {
  const changes = (old: string[], now: string[]) => noteChanges(cut(...old), cut(...now));

  test('with the same words have moved, on the same row are reworded', () => {
    expect(changes(['note 12 "looks up"'], ['note 30 "looks up"'])).toMatchObject([
      { kind: 'note-moved', frame: { old: 12, now: 30 }, rows: { from: 30, to: 30 } },
    ]);
    expect(changes(['note 12 "looks up"'], ['note 12 "blinks"'])).toMatchObject([
      { kind: 'note-text', frame: 12, old: 'looks up', now: 'blinks' },
    ]);
  });

  test('with other words on another row are two', () => {
    expect(changes(['note 12 "looks up"'], ['note 30 "blinks"']).map(({ kind }) => kind)).toEqual([
      'note-dropped',
      'note-added',
    ]);
  });
});
