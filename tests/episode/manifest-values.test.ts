import { describe, expect, test } from 'vitest';
import { dpi, pixels, runningTime, sizeMm, whole } from '../../src/episode/manifest-values.js';

const value = <T>(read: { ok: boolean } & ({ value: T } | object)): T | null =>
  'value' in read ? (read.value as T) : null;
const size = (text: string, least = 10, most = 2000) => {
  const found = value(sizeMm(text, least, most));
  return found && [found.widthMm, found.heightMm];
};

describe('a size', () => {
  test.each([
    ['254mm x 142.875mm', [254, 142.875]],
    ['254x142.875mm', [254, 142.875]],
    ['254mm x 142.875', [254, 142.875]],
    ['254 × 142.875', [254, 142.875]],
    // 25.4 mm are an inch (ISO 80000-3).
    ['10in x 5in', [254, 127]],
    ['10in x 127mm', [254, 127]],
    ['25.4cm x 12.7cm', [254, 127]],
    ['２５４ｍｍ　ｘ　１２７ｍｍ', [254, 127]],
  ])('%s', (text, sides) => {
    const found = size(text)!;
    expect(found[0]).toBeCloseTo(sides[0]!, 9);
    expect(found[1]).toBeCloseTo(sides[1]!, 9);
  });

  test.each(['', '254', '254mm', 'a x b', '254mm y 142mm', '-254 x 142', '254pt x 142pt', '254 x 142 x 3'])(
    '%j is none',
    (text) => {
      expect(size(text)).toBeNull();
    },
  );

  test('may be as small and as large as the limits, and no further', () => {
    expect(size('10 x 2000')).toEqual([10, 2000]);
    expect([size('9.9 x 100'), size('100 x 2000.1')]).toEqual([null, null]);
    expect(sizeMm('1x1', 10, 2000)).toEqual({ ok: false, takes: { value: 'size', least: 10, most: 2000 } });
  });
});

test('pixels are two whole numbers from 16 to 32768', () => {
  expect(value(pixels('1920x1080'))).toEqual({ width: 1920, height: 1080 });
  expect(value(pixels('16 × 32768'))).toEqual({ width: 16, height: 32768 });
  for (const text of ['15x1080', '1920x32769', '1920', '1920.5x1080', ''])
    expect(value(pixels(text))).toBeNull();
});

test('a resolution is a number from 10 to 10000, with or without its unit', () => {
  expect([dpi('200dpi'), dpi('200'), dpi('300.5 dpi')].map(value)).toEqual([200, 200, 300.5]);
  expect([dpi('10'), dpi('10000')].map(value)).toEqual([10, 10000]);
  for (const text of ['9.9', '10001', 'dpi', '200 ppi', '']) expect(value(dpi(text))).toBeNull();
});

describe('a running time', () => {
  const frames = (text: string, fps = 24) => value(runningTime(text, fps, 16));

  test('is seconds and frames, feet and frames, or frames', () => {
    expect([frames('10+12'), frames("10'08"), frames('10’08'), frames('252')]).toEqual([252, 168, 168, 252]);
    expect(frames('10+12', 25)).toBe(262);
  });

  test('is at least a frame and at most ten hours', () => {
    expect([frames('1'), frames('36000+0')]).toEqual([1, 864000]);
    expect([frames('0+0'), frames('36000+1')]).toEqual([null, null]);
  });

  test.each(['', '10+', '+12', '10:12', '1.5+0', 'ten'])('%j is none', (text) => {
    expect(frames(text)).toBeNull();
  });
});

test('a whole number lies within its limits', () => {
  expect([whole('1', 1, 8), whole('8', 1, 8), whole('８', 1, 8)].map(value)).toEqual([1, 8, 8]);
  for (const text of ['0', '9', '1.5', '-1', '1e0', '']) expect(value(whole(text, 1, 8))).toBeNull();
});
