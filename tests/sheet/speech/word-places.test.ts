/** The sheet and the mouth say the same of when a word is spoken. Morae: TUFS, coelang.tufs.ac.jp, 拍. */

import { describe, expect, test } from 'vitest';
import { frameAt, readStretches, rowAt } from '../../../src/sheet/speech/word-places.js';
import { lineStretches } from '../../../src/shot/mouth/line-sounds.js';
import { mouthSounds } from '../../../src/shot/mouth/mouth-sounds.js';
import { solvedCut } from '../laid.js';

const lineOf = (voice: string) =>
  solvedCut(`cut 1\ntime 6+0\nA: 1..\nvoice "Sora" ${voice}\n`).shot.spoken[0]!;
const read = (voice: string) => readStretches(lineOf(voice), 24, mouthSounds());
const heard = (voice: string) =>
  lineStretches(lineOf(voice), 24, mouthSounds())!.flatMap(({ sounds }) => sounds);

describe('the places of words', () => {
  test('of kanji are those of their reading: what follows stands where the mouth says it', () => {
    const voice = '7..46 "先《さき》にいくよ"';
    const [stretch] = read(voice);
    expect(stretch!.text).toBe('先にいくよ');
    expect(stretch!.places!.map(({ offset }) => offset)).toEqual([0, 0, 1, 2, 3, 4]);
    // The vowel of く is the only u, and of よ the only o.
    const [ku, yo] = ['u', 'o'].map((shown) => heard(voice).findIndex((sound) => sound.shown === shown));
    expect(frameAt(stretch!, 3)).toBe(heard(voice)[ku! - 1]!.start);
    expect(frameAt(stretch!, 4)).toBe(heard(voice)[yo! - 1]!.start);
    expect(rowAt(stretch!, 3)).toBe(Math.floor(heard(voice)[ku! - 1]!.start));
  });

  test('of two kanji with one reading lie between its beginning and its end', () => {
    const [stretch] = read('1..30 "今日《きょう》は"');
    expect(stretch!.places!.map(({ offset }) => offset)).toEqual([0, 0, 2]);
    expect(frameAt(stretch!, 1)).toBeCloseTo((1 + frameAt(stretch!, 2)) / 2, 9);
  });

  test('begin anew at each tie, and count in the words of their stretch', () => {
    const [first, second] = read('1..48 "Wait for  me" @25 "no" "Never"');
    expect([first!.text, second!.text]).toEqual(['Wait for me', 'no Never']);
    expect(first!.places!.map(({ offset }) => offset)).toEqual([0, 5, 9]);
    expect(second!.places!.map(({ offset }) => offset)).toEqual([0, 3, 5]);
    expect([rowAt(first!, 0), rowAt(second!, 0)]).toEqual([1, 25]);
    expect(frameAt(first!, 'Wait for me'.length)).toBe(25);
  });

  test('leave room for pauses', () => {
    const [stretch] = read('1..48 "いや、いや"');
    const gaps = [1, 3, 4].map((offset) => frameAt(stretch!, offset));
    expect(gaps[1]! - gaps[0]!).toBeGreaterThan(2 * (gaps[2]! - gaps[1]!));
  });

  test('of a line that goes on over the end of the cut are at their own pace', () => {
    const [stretch] = read('1.. "Never again"');
    expect(rowAt(stretch!, 6)).toBeLessThan(24);
  });

  test('are not known where a kanji has no reading', () => {
    expect(read('1..24 "先に"')[0]!.places).toBeNull();
  });
});

test('a row lies in its stretch, whatever stands at the end of the text', () => {
  const [stretch] = read('1..24 "Wait!"');
  expect(rowAt(stretch!, 5)).toBe(24);
});
