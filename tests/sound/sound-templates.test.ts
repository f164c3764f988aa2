import { describe, expect, test } from 'vitest';
import { distances, learned, SILENCE, templateOf } from '../../src/sound/sound-templates.js';
import { BANDS, type SpeechFeatures } from '../../src/sound/speech-features.js';
import { ENGLISH_SOUNDS } from '../../src/sound/speech-sounds.js';

const part = (name: string) => ENGLISH_SOUNDS.get(name)!.parts.at(-1)!;
const template = (name: string) => templateOf(part(name), 1);

/** One moment that looks just as a template. */
function moment({ shape, loud, voiced }: ReturnType<typeof template>): SpeechFeatures {
  return {
    steps: 1,
    shape: Float32Array.from(shape),
    loud: Float32Array.of(loud),
    voiced: Float32Array.of(voiced),
  };
}

describe('a moment', () => {
  test.each(['IY', 'AA', 'UW', 'S', 'SH', 'M'])('that looks like %s is nearest to it', (name) => {
    const here = moment(template(name));
    const far = ['IY', 'AA', 'UW', 'S', 'SH', 'M'].map((one) => ({
      one,
      far: distances(here, template(one))[0]!,
    }));
    expect(far.sort((a, b) => a.far - b.far)[0]!.one).toBe(name);
    expect(distances(here, template(name))[0]).toBeCloseTo(0, 6);
  });

  test('of silence is far from a vowel, and one of a vowel far from silence', () => {
    const silent = { ...moment(template('AA')), loud: Float32Array.of(0), voiced: Float32Array.of(0.2) };
    expect(distances(silent, SILENCE)[0]).toBeLessThan(0.5);
    expect(distances(silent, template('AA'))[0]).toBeGreaterThan(3);
    expect(distances(moment(template('AA')), SILENCE)[0]).toBeGreaterThan(3);
  });
});

test('a template that has learned is nearer to what it has seen', () => {
  const seen = moment(template('EH'));
  const first = template('AE');
  const later = learned(first, seen, [0], 0.5);
  expect(distances(seen, later)[0]).toBeLessThan(distances(seen, first)[0]! / 2);
  expect(learned(first, seen, [], 5)).toBe(first);
  expect(later.shape).toHaveLength(BANDS);
});

test('a shorter vocal tract lifts the formants', () => {
  const peak = (tract: number) => {
    const { shape } = templateOf(ENGLISH_SOUNDS.get('IY')!.parts[0]!, tract);
    const upper = shape.subarray(8);
    return upper.indexOf(Math.max(...upper));
  };
  expect(peak(1.25)).toBeGreaterThan(peak(1));
});
