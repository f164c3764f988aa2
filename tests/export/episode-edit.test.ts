import { describe, expect, test } from 'vitest';
import { messageOf } from '../../src/language/message.js';
import { editOfTexts, soundEdit } from './edit.js';

const faults = (cuts: readonly string[], overlap: 'half' | 'full' = 'half') =>
  editOfTexts(cuts, { overlap }).diagnostics.map((one) => `${one.code}: ${messageOf(one, 'en')}`);

describe('an edit', () => {
  test('lays cuts end to end, without their handles', () => {
    const { cuts, frames } = soundEdit(['time 24', 'time 36', 'time 12\noverlap out 8']);
    expect(cuts.map(({ record, source }) => [record, source.from, source.frames])).toEqual([
      [0, 0, 24],
      [24, 0, 36],
      [60, 0, 12],
    ]);
    expect(frames).toBe(72);
  });

  test.each([
    // Times: 60 + 48 + 50 + 12; in full 11 and 24 of them are seen twice.
    ['half', 170],
    ['full', 170 - 11 - 24],
  ] as const)('of overlap: %s runs for %i frames', (overlap, frames) => {
    const cuts = [
      'time 60\noverlap out 11',
      'time 48\noverlap in 11\noverlap out 24',
      'time 50\noverlap in 24',
      'time 12',
    ];
    expect(soundEdit(cuts, { overlap }).frames).toBe(frames);
  });

  test('has its number and title as a name, on one line', () => {
    const { cuts } = soundEdit(['cut 12A "Rooftop,\\n dusk"\ntime 12', 'time 12']);
    expect(cuts.map(({ name }) => name)).toEqual(['12A Rooftop, dusk', '2']);
  });
});

describe('no edit', () => {
  test('is made of cuts of different speeds; each that differs is named', () => {
    expect(faults(['time 12', 'fps 12\ntime 12', 'fps 12\ntime 12'])).toEqual([
      'edit-speeds: Cut 2 runs at 12 frames a second, cut 1 at 24: one edit has one speed.',
      'edit-speeds: Cut 3 runs at 12 frames a second, cut 1 at 24: one edit has one speed.',
    ]);
  });

  test.each([
    ['time 24\noverlap out 8', 'time 24\noverlap in 6', '`overlap out 8`', '`overlap in 6`'],
    ['time 24\noverlap out 8', 'time 24', '`overlap out 8`', 'no `overlap in`'],
    ['time 24', 'time 24\noverlap in 6', 'no `overlap out`', '`overlap in 6`'],
  ])('is made where neighbours disagree: %j and %j', (one, two, before, after) => {
    expect(faults([one, two])).toEqual([
      `edit-overlap: Cut 1 has ${before}, but cut 2, which follows, has ${after}.`,
    ]);
  });

  test('is made where the dissolves of one cut run into each other; where they meet it is', () => {
    const cuts = (time: number) => [
      'time 60\noverlap out 24',
      `time ${time}\noverlap in 24\noverlap out 24`,
      'time 60\noverlap in 24',
    ];
    expect(faults(cuts(24))).toEqual([]);
    expect(faults(cuts(23))[0]).toContain('run into each other by 1 frame');
    // In full the cut is shown between two points that lie in the middles of its dissolves.
    expect(faults(cuts(48), 'full')).toEqual([]);
    expect(faults(cuts(47), 'full')[0]).toContain('by 1 frame');
  });
});
