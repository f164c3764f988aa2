/**
 * Rates of speech. Japanese: 320 to 360 morae a minute are felt as close to ideal in slow, clear speech: Prafiyanto, Nose, Chiba, Ito,
 * "Analysis of preferred speaking rate and pause in spoken easy Japanese for non-native listeners", Acoust. Sci. & Tech. 39:92 (2018).
 * English articulation about five syllables a second: Jacewicz, Fox, Wei, "Between-speaker and within-speaker variation in speech
 * tempo of American English", J. Acoust. Soc. Am. 128:839 (2010). Morae: TUFS, coelang.tufs.ac.jp, 拍.
 */

import { describe, expect, test } from 'vitest';
import { FASTEST, lineLength } from '../../src/shot/line-length.js';
import type { Spoken } from '../../src/shot/shot.js';

const span = { file: 'c.cut', start: 0, end: 0 };
const line = (reading: string, kind: Spoken['kind'] = 'voice'): Spoken => ({
  kind,
  speaker: 'Nao',
  manner: 'on',
  frames: { from: 1, to: 24 },
  open: false,
  parts: [{ text: reading, reading, frame: null, span }],
  span,
});

describe('how long a line wants to be', () => {
  test.each([
    ['とうきょう', 4],
    ['コンピューター', 6],
    ['きって、きって', 6],
    ['行《い》くから', 4],
  ])('%s is %d morae', (text, count) => {
    expect(lineLength(line(text), 24)).toMatchObject({ unit: 'mora', count });
  });

  test('Japanese at a pace that is felt as ideal: 320 to 360 morae a minute', () => {
    const { count, wantedFrames } = lineLength(line('いろはにほへとちりぬるをわかよたれそつねならむ'), 24)!;
    const aMinute = (count * 60 * 24) / wantedFrames;
    expect(aMinute).toBeGreaterThanOrEqual(320);
    expect(aMinute).toBeLessThanOrEqual(361);
  });

  test('English at about five syllables a second', () => {
    const { unit, count, wantedFrames } = lineLength(line('the red ship went down to the sea'), 24)!;
    expect([unit, count]).toEqual(['syllable', 8]);
    expect((count * 24) / wantedFrames).toBeCloseTo(5, 0);
  });

  test('pauses inside a line take time, one behind it none', () => {
    const wanted = (text: string) => lineLength(line(text), 24)!.wantedFrames;
    expect(wanted('ああ、ああ')).toBeGreaterThan(wanted('ああああ'));
    expect(wanted('ああああ。')).toBe(wanted('ああああ'));
  });

  test('the limits lie above both', () => {
    expect(FASTEST.mora).toBeGreaterThan(360 / 60);
    expect(FASTEST.syllable).toBeGreaterThan(5);
  });

  test('a line in both languages is counted in morae', () => {
    expect(lineLength(line('OK、すぐ行《い》く'), 24)).toMatchObject({ unit: 'mora' });
  });

  test('a dictionary counts more exactly than spelling', () => {
    const syllables = (dictionary?: (word: string) => string | null) =>
      lineLength(line('somebody rings'), 24, dictionary)!.count;
    const words = new Map([
      ['somebody', 'S AH1 M B AA2 D IY0'],
      ['rings', 'R IH1 NG Z'],
    ]);
    expect(syllables((word) => words.get(word) ?? null)).toBe(4);
  });

  test.each(['ええ', 'Oh!', '♪ ラララ、ラララ', 'SE ざわざわざわ', '…', '行くから'])(
    'nothing is said of %s',
    (text) => {
      expect(lineLength(line(text), 24)).toBeNull();
    },
  );

  test('nor of sounds and music', () => {
    expect(lineLength(line('ごうごうごう', 'sound'), 24)).toBeNull();
  });
});
