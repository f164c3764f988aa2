import { describe, expect, test } from 'vitest';
import { edlText, reelsOf } from '../../src/export/edit-decision-list.js';
import { messageOf } from '../../src/language/message.js';
import { soundEdit } from './edit.js';

const list = (cuts: readonly string[], start = 0) => edlText(soundEdit(cuts), start);
const lines = (cuts: readonly string[], start = 0) => list(cuts, start).text!.split('\r\n');
const faults = (cuts: readonly string[], start = 0) => {
  const { text, diagnostics } = list(cuts, start);
  expect(text === null).toBe(diagnostics.length > 0);
  return diagnostics.map((one) => `${one.code}: ${messageOf(one, 'en')}`);
};

describe('an edit list', () => {
  test('has a line for each cut and a remark with its name', () => {
    expect(lines(['cut 1 "Salt marsh"\ntime 1+12', 'time 1+0'], 24)).toEqual([
      'TITLE: ',
      'FCM: NON-DROP FRAME',
      '',
      '001  C1       V     C        00:00:00:00 00:00:01:12 00:00:01:00 00:00:02:12',
      '* FROM CLIP NAME: 1 Salt marsh',
      '002  C2       V     C        00:00:00:00 00:00:01:00 00:00:02:12 00:00:03:12',
      '* FROM CLIP NAME: 2',
      '',
    ]);
  });

  test('has an overlap as two lines of one number', () => {
    expect(lines(['time 2+0\noverlap out 12', 'time 2+0\noverlap in 12']).slice(3)).toEqual([
      '001  C1       V     C        00:00:00:00 00:00:01:18 00:00:00:00 00:00:01:18',
      '* FROM CLIP NAME: 1',
      '002  C1       V     C        00:00:01:18 00:00:01:18 00:00:01:18 00:00:01:18',
      '002  C2       V     D    012 00:00:00:00 00:00:02:06 00:00:01:18 00:00:04:00',
      '* FROM CLIP NAME: 1',
      '* TO CLIP NAME: 2',
      '',
    ]);
  });

  test('tells of fades, which are in the picture', () => {
    const text = lines(['time 2+0\nfade in 1..12\nfade out white 37..48']).join('\n');
    expect(text).toContain(
      '* COMMENT: FADE IN FROM BLACK ON FRAMES 1 TO 12 OF THE SHEET, DONE IN THE PICTURE',
    );
    expect(text).toContain(
      '* COMMENT: FADE OUT TO WHITE ON FRAMES 37 TO 48 OF THE SHEET, DONE IN THE PICTURE',
    );
  });

  test('a title cannot make a line of its own', () => {
    const text = lines(['cut 1 "a\\n002  BL       V     C"\ntime 12']);
    expect(text.filter((line) => line.startsWith('002'))).toEqual([]);
  });
});

describe('what it cannot hold is an error', () => {
  test('other speeds', () => {
    expect(faults(['fps 12\ntime 12'])).toEqual([
      'edit-list-limit: An edit list counts 24, 25 or 30 frames a second, but cut 1 runs at 12.',
    ]);
    for (const fps of [24, 25, 30]) expect(faults([`fps ${fps}\ntime 12`])).toEqual([]);
  });

  test('more than 999 cuts', () => {
    const cuts = Array.from({ length: 1000 }, () => 'time 12');
    expect(faults(cuts.slice(1))).toEqual([]);
    expect(faults(cuts)[0]).toMatch(/^edit-list-limit: .* 999 events .* these are 1000 cuts: cut 1000 is/);
  });

  test('an overlap of more than three digits', () => {
    const cuts = (length: number) => [
      `time 100+0\noverlap out ${length}`,
      `time 100+0\noverlap in ${length}`,
    ];
    expect(list(cuts(999)).text).not.toBeNull();
    expect(faults(cuts(1000))[0]).toContain('overlaps of 999 frames at most');
  });

  test('an overlap of more than 255 frames is written, with a warning', () => {
    // From memory: the longest overlap that manuals of edit controllers name, one byte.
    const cuts = (length: number) => [
      `time 100+0\noverlap out ${length}`,
      `time 100+0\noverlap in ${length}`,
    ];
    expect(list(cuts(255)).diagnostics).toEqual([]);
    const { text, diagnostics } = list(cuts(256));
    expect(text).toContain('D    256');
    expect(diagnostics).toMatchObject([{ code: 'edit-list-long', severity: 'warning' }]);
  });

  test('a record past 24 hours', () => {
    const day = 24 * 3600 * 24;
    expect(faults(['time 1+0', 'time 1+0'], day - 49)).toEqual([]);
    expect(faults(['time 1+0', 'time 1+0'], day - 47)[0]).toContain('cut 2 would run past that');
  });
});

describe('the reel of a cut', () => {
  test.each([
    ['12', 'C12'],
    ['12a', 'C12A'],
    ['4-B', 'C4B'],
    ['１２', 'C12'],
    ['夜', 'C'],
    ['123456789', 'C3456789'],
  ])('%s: %s', (cut, reel) => {
    expect(reelsOf([cut])).toEqual([reel]);
  });

  test('is of one cut only', () => {
    expect(reelsOf(['4-B', '4B', '4 B'])).toEqual(['C4B', 'C4BX2', 'C4BX3']);
  });

  test('stays within eight characters where a number is added', () => {
    const reels = reelsOf(Array.from({ length: 12 }, () => '123456789'));
    expect(reels.slice(0, 2)).toEqual(['C3456789', 'C34567X2']);
    expect(reels.at(-1)).toBe('C3456X12');
    expect(new Set(reels).size).toBe(12);
  });
});
