import { describe, expect, test } from 'vitest';
import {
  type AlignmentLine,
  alignLines,
  type LineSound,
  SETTINGS,
} from '../../src/sound/forced-alignment.js';
import { templateOf } from '../../src/sound/sound-templates.js';
import { BANDS, type SpeechFeatures } from '../../src/sound/speech-features.js';
import { ENGLISH_SOUNDS } from '../../src/sound/speech-sounds.js';

/** Moments that look just as the sounds do: `AA*12` lasts for 12 steps, `-*20` is silence. */
function moments(spelt: string): SpeechFeatures {
  const all = spelt.split(' ').flatMap((one) => {
    const [name = '', count = '10'] = one.split('*');
    const template = name === '-' ? null : templateOf(ENGLISH_SOUNDS.get(name)!.parts.at(-1)!, 1);
    return Array.from({ length: Number(count) }, () => template);
  });
  const shape = new Float32Array(all.length * BANDS);
  all.forEach((template, i) => void (template && shape.set(template.shape, i * BANDS)));
  return {
    steps: all.length,
    shape,
    loud: Float32Array.from(all, (template) => template?.loud ?? 0),
    voiced: Float32Array.from(all, (template) => template?.voiced ?? 0.2),
  };
}

/** `S IY | M AA`: words divided by bars. */
function line(spelt: string, more: Partial<AlignmentLine> = {}): AlignmentLine {
  const sounds = spelt.split(' | ').flatMap((word, w) =>
    word.split(' ').map((name, i): LineSound => {
      const { parts, seconds } = ENGLISH_SOUNDS.get(name)!;
      return { parts, seconds, word: w, first: i === 0, pause: 'none', last: false };
    }),
  );
  return { sounds, from: 0, to: 10_000, anchors: new Map(), ...more };
}
const starts = (features: SpeechFeatures, ...lines: AlignmentLine[]) =>
  alignLines(features, lines, { ...SETTINGS, tracts: [1] }).map((one) => one.starts);

describe('sounds are found where they are', () => {
  test('one after the other', () => {
    expect(starts(moments('-*20 S*9 IY*12 M*7 AA*14 -*20'), line('S IY M AA'))).toEqual([
      [20, 29, 41, 48, 62],
    ]);
  });

  test('with a pause between words', () => {
    expect(starts(moments('-*20 S*9 IY*12 -*30 M*7 AA*14 -*20'), line('S IY | M AA'))).toEqual([
      [20, 29, 71, 78, 92],
    ]);
  });

  test('slow and quick', () => {
    expect(starts(moments('-*20 S*20 IY*24 M*14 AA*26 -*20'), line('S IY M AA'))).toEqual([
      [20, 40, 64, 78, 104],
    ]);
    expect(starts(moments('-*20 S*5 IY*6 M*4 AA*7 -*20'), line('S IY M AA'))).toEqual([[20, 25, 31, 35, 42]]);
  });

  test('without silence before and behind', () => {
    expect(starts(moments('S*9 IY*12'), line('S IY'))).toEqual([[0, 9, 21]]);
  });
});

describe('lines', () => {
  const both = moments('-*20 S*9 IY*12 M*7 AA*14 -*40 SH*9 UW*12 N*8 EH*12 -*20');

  test('each in its turn', () => {
    expect(starts(both, line('S IY M AA'), line('SH UW N EH'))).toEqual([
      [20, 29, 41, 48, 62],
      [102, 111, 123, 131, 143],
    ]);
  });

  test('one that is not there is left out, first, last or between', () => {
    const lost = line('F AO R F AO R');
    expect(starts(both, lost, line('S IY M AA'), line('SH UW N EH'))[0]).toBeNull();
    expect(starts(both, line('S IY M AA'), lost, line('SH UW N EH'))[1]).toBeNull();
    expect(starts(both, line('S IY M AA'), line('SH UW N EH'), lost)[2]).toBeNull();
    const [first, , last] = starts(both, line('S IY M AA'), lost, line('SH UW N EH'));
    expect([first![0], last![0]]).toEqual([20, 102]);
  });

  test('none of a recording of silence, and nothing of no line', () => {
    expect(starts(moments('-*100'), line('S IY'))).toEqual([null]);
    expect(starts(both)).toEqual([]);
  });
});

describe('what is known', () => {
  const twice = moments('-*20 M*8 AA*12 -*40 M*8 AA*12 -*20');

  test('a sound at a step', () => {
    expect(starts(twice, line('M AA', { anchors: new Map([[0, 80]]) }))).toEqual([[80, 88, 100]]);
  });

  test('where to look', () => {
    expect(starts(twice, line('M AA', { from: 60 }))).toEqual([[80, 88, 100]]);
    expect(starts(twice, line('M AA', { to: 60 }))).toEqual([[20, 28, 40]]);
  });
});

test('a line that looks as expected is nearer than one that does not', () => {
  const here = moments('-*20 S*9 IY*12 M*7 AA*14 -*20');
  const far = (one: AlignmentLine) =>
    alignLines(here, [one], { ...SETTINGS, missing: 1e6, tracts: [1] })[0]!.distance;
  expect(far(line('S IY M AA'))).toBeLessThan(far(line('AA S M IY')) / 2);
});
