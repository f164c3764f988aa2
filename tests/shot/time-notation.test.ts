import { describe, expect, test } from 'vitest';
import {
  FRAMES_A_FOOT_16,
  feetAndFrames,
  feetText,
  inFrames,
  rowName,
  secondsAndFrames,
  secondsText,
  splitFeet,
  splitSeconds,
  timecode,
} from '../../src/shot/time-notation.js';

describe('a number of frames', () => {
  test('is seconds and frames', () => {
    expect(splitSeconds(132, 24)).toEqual({ seconds: 5, frames: 12 });
    expect(splitSeconds(120, 24)).toEqual({ seconds: 5, frames: 0 });
    expect([secondsText(100, 24), secondsAndFrames(100, 24)]).toEqual(['4+04', '4+4']);
    expect([secondsText(0, 24), secondsAndFrames(0, 24)]).toEqual(['0+00', '0+0']);
  });

  test('is feet and frames, of 16 frames on 35 mm film and 40 on 16 mm', () => {
    expect(splitFeet(132)).toEqual({ feet: 8, frames: 4 });
    expect(splitFeet(132, FRAMES_A_FOOT_16)).toEqual({ feet: 3, frames: 12 });
    expect([feetText(100), feetAndFrames(100)]).toEqual(['6-04', "6'04"]);
    expect(feetText(100, FRAMES_A_FOOT_16)).toBe('2-20');
  });

  test.each([-1, 1.5, Number.NaN, Number.POSITIVE_INFINITY])('is not %d', (frames) => {
    expect(() => splitSeconds(frames, 24)).toThrow(RangeError);
    expect(() => splitFeet(frames)).toThrow(RangeError);
    expect(() => timecode(frames, 24)).toThrow(RangeError);
  });

  test('is told with its word', () => {
    expect([inFrames(0), inFrames(1), inFrames(8)]).toEqual(['0 frames', '1 frame', '8 frames']);
  });
});

describe('the name of a row', () => {
  test.each([
    [1, '0+1'],
    [24, '0+24'],
    [25, '1+1'],
    [120, '4+24'],
  ])('%i is %s in the second that it lies in', (frame, name) => {
    expect(rowName(frame, 24, false)).toBe(name);
  });

  test('in feet has two digits of frames', () => {
    expect([rowName(16, 16, true), rowName(17, 16, true)]).toEqual(["0'16", "1'01"]);
  });
});

describe('a timecode', () => {
  test('counts from 0', () => {
    expect(timecode(0, 24)).toBe('00:00:00:00');
    expect(timecode(100, 24)).toBe('00:00:04:04');
    expect(timecode(24 * 3600 + 24 * 61, 24)).toBe('01:01:01:00');
  });

  // SMPTE ST 12-1: the first two numbers of each minute are left out, but not of each tenth.
  test.each([
    [1799, '00:00:59;29'],
    [1800, '00:01:00;02'],
    [17981, '00:09:59;29'],
    [17982, '00:10:00;00'],
  ])('of %i frames with dropped numbers is %s', (frames, text) => {
    expect(timecode(frames, 30, true)).toBe(text);
  });

  test('at twice the speed drops four numbers', () => {
    expect(timecode(3600, 60, true)).toBe('00:01:00;04');
  });

  test('drops numbers at 30 and 60 only', () => {
    expect(() => timecode(0, 24, true)).toThrow(RangeError);
  });
});
