/** Frames in feet, seconds and timecode, against published tables and an independent library. */

import Timecode from 'smpte-timecode';
import { describe, expect, test } from 'vitest';
import { FRAMES_A_FOOT } from '../../src/shot/settings.js';
import {
  FRAMES_A_FOOT_16,
  feetText,
  secondsAndFrames,
  secondsText,
  splitFeet,
  timecode,
} from '../../src/shot/time-notation.js';
import { solveText } from '../solve/shown.js';

/** Rows of a cut whose time is written so. */
function rows(time: string, more = ''): number {
  return solveText(`cut 1\ntime ${time}\n${more}\nA: 1..\n`).solved.shot.length;
}

describe('feet and frames', () => {
  // Sources: liquisearch, 35 mm film technical specifications (16 frames a foot, 90 ft a minute at 24 fps); Filmfuß (de wiki
  // mirror) for 16 mm (40 frames a foot, 36 ft a minute).
  test.each([
    [100, '6-04', '2-20'],
    [72, '4-08', '1-32'],
    [144, '9-00', '3-24'],
    [1440, '90-00', '36-00'],
  ])('%i frames are %s of 35 mm and %s of 16 mm', (frames, feet35, feet16) => {
    expect(feetText(frames)).toBe(feet35);
    expect(feetText(frames, FRAMES_A_FOOT_16)).toBe(feet16);
  });

  test('1000 feet of 35 mm are 16,000 frames', () => {
    expect(1000 * FRAMES_A_FOOT).toBe(16_000);
    expect(splitFeet(16_000)).toEqual({ feet: 1000, frames: 0 });
  });

  test('a cut may be written in feet', () => {
    expect(rows("6'04")).toBe(100);
    expect(rows("4'08")).toBe(72);
    expect(rows("9'00")).toBe(144);
    // The language's own example: 8 feet 4 frames.
    expect(rows("8'04")).toBe(132);
  });
});

describe('seconds and frames', () => {
  // Source: kotoluna-08, 2022-07-05.
  test.each([
    [100, '4+04'],
    [144, '6+00'],
  ])('%i frames are %s', (frames, text) => {
    expect(secondsText(frames, 24)).toBe(text);
    expect(rows(text)).toBe(frames);
  });

  test('what is written is read back as the same length, at any speed', () => {
    for (const fps of [12, 24, 25, 30, 60]) {
      for (let frames = 1; frames < 3 * fps; frames += 7)
        expect(rows(secondsAndFrames(frames, fps), `fps ${fps}`)).toBe(frames);
    }
  });

  test('frames beyond a second carry over: 5+24 is 6+0', () => {
    expect(rows('5+24')).toBe(rows('6+0'));
  });
});

describe('drop-frame timecode', () => {
  // Sources: andrewduncan.ws, Timecodes; dilettantesdictionary, drop-frame: the counting rule of SMPTE ST 12-1.
  test.each([
    [1799, '00:00:59;29'],
    [1800, '00:01:00;02'],
    [17_981, '00:09:59;29'],
    [17_982, '00:10:00;00'],
    [107_892, '01:00:00;00'],
    [1_084_319, '10:03:00;05'],
  ])('frame %i is %s', (frame, text) => {
    expect(timecode(frame, 30, true)).toBe(text);
  });

  // Independent reference: npm smpte-timecode.
  test('is that of an independent library, minute by minute through more than an hour', () => {
    for (let minute = 0; minute < 70; minute++) {
      for (const near of [-2, -1, 0, 1, 2, 3, 900]) {
        const frame = Math.max(0, minute * 1798 + near);
        expect(timecode(frame, 30, true)).toBe(Timecode(frame, 29.97, true).toString());
        expect(timecode(frame * 2, 60, true)).toBe(Timecode(frame * 2, 59.94, true).toString());
      }
    }
  });

  test('without dropping is that of the library too', () => {
    for (let frame = 0; frame < 200_000; frame += 997) {
      for (const fps of [24, 25, 30])
        expect(timecode(frame, fps)).toBe(Timecode(frame, fps, false).toString());
    }
  });

  test('is refused where nothing is dropped', () => {
    expect(() => timecode(1, 24, true)).toThrow(RangeError);
    expect(() => timecode(-1, 24)).toThrow(RangeError);
  });
});
