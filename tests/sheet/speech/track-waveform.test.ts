import { describe, expect, test } from 'vitest';
import type { Mark } from '../../../src/sheet/display-list.js';
import { sheetPages } from '../../../src/sheet/exposure-sheet.js';
import type { Settings } from '../../../src/shot/settings.js';
import { compileText } from '../../compile.js';
import { tone, wave } from '../../sound/wave-writer.js';
import { lookOf } from '../laid.js';

type Tint = Extract<Mark, { kind: 'tint' }>;

function pageOf(line: string, samples: Float32Array, settings: Partial<Settings> = {}) {
  const { solved } = compileText(`cut 1\ntime 2+0\nA: 1..\n${line}\n`, {
    'a.wav': wave(samples, { rate: 4000 }),
  });
  const [page] = sheetPages(solved!, lookOf(settings));
  const tints = page!.marks.filter((mark): mark is Tint => mark.kind === 'tint');
  const top = (frame: number) => page!.rows.find((row) => row.frame === frame)!.y;
  return { page: page!, tints, top };
}

describe.each(['japan', 'west'] as const)('the waveform on a form of %s', (convention) => {
  test('stands on the rows on which it is heard, about one middle', () => {
    const { tints, top } = pageOf('track "a.wav"', tone(2, 0.5, 1, 4000), { convention, labels: 'en' });
    expect(Math.min(...tints.map(({ y }) => y))).toBeCloseTo(top(13), 6);
    expect(Math.max(...tints.map(({ y, height }) => y + height))).toBeCloseTo(top(25), 6);
    expect(new Set(tints.map(({ x, width }) => (x + width / 2).toFixed(6))).size).toBe(1);
  });

  test('is seen on the rows of handles: their tone leaves its column out', () => {
    const overlap = 'overlap in 1+0\ntrack "a.wav"';
    const { tints, top } = pageOf(overlap, tone(2, 0, 2, 4000), { convention, labels: 'en' });
    // Twelve rows; the waveform of an even tone is one bar that is longer.
    const tones = tints.filter(({ height }) => Math.abs(height - (top(13) - top(1))) < 1e-6);
    const waves = tints.filter((one) => !tones.includes(one) && one.y < top(12));
    expect(tones.length).toBe(2);
    expect(waves.length).toBeGreaterThan(0);
    for (const one of waves)
      for (const tone of tones)
        expect(one.x >= tone.x + tone.width || one.x + one.width <= tone.x).toBe(true);
  });

  test('is wider where it is louder, and nothing is drawn of silence', () => {
    const samples = tone(2, 0, 2, 4000).map((one, i) => (i < 2000 ? 0 : i < 4000 ? one * 0.1 : one));
    const { tints, top } = pageOf('track "a.wav"', samples, { convention, labels: 'en' });
    const widthAt = (frame: number) => {
      const y = top(frame) + 0.4;
      return tints.find((one) => one.y <= y && one.y + one.height > y)?.width ?? 0;
    };
    expect(widthAt(6)).toBe(0);
    expect(widthAt(18)).toBeGreaterThan(1);
    expect(widthAt(36)).toBeGreaterThan(3 * widthAt(18));
  });
});

test('a cut without a recording, or with a silent one, has none', () => {
  expect(pageOf('', tone(2)).tints).toEqual([]);
  expect(pageOf('track "b.wav"', tone(2)).tints).toEqual([]);
  expect(pageOf('track "a.wav"', tone(2, 0, 0, 4000)).tints).toEqual([]);
});

test('a steady tone is few marks', () => {
  expect(pageOf('track "a.wav"', tone(2, 0, 2, 4000)).tints.length).toBeLessThan(12);
});
