import { describe, expect, it, test } from 'vitest';
import type { UsageError } from '../../src/build/usage-error.js';
import { sheetPlace, sheetRange } from '../../src/command/sheet-places.js';

describe('a place on the sheet', () => {
  test.each([
    ['37', 24, 37],
    ['1+12', 24, 36],
    ['1+12', 25, 37],
    ["2'08", 24, 40],
    ['１＋１', 24, 25],
  ])('%s at %i frames a second is frame %i', (text, fps, frame) => {
    expect(sheetPlace('--from', text)!(fps)).toBe(frame);
  });

  test.each(['0', '0+0', '1-2', 'now', '', '1+'])('%j is none', (text) => {
    expect(() => sheetPlace('--to', text)).toThrow(
      expect.objectContaining<Partial<UsageError>>({
        word: text,
        parameters: { variant: 'sheet-place', option: '--to' },
      }),
    );
  });

  it('that was not given is none', () => {
    expect(sheetPlace('--from', undefined)).toBeUndefined();
  });
});

describe('a range', () => {
  it('may be one frame', () => {
    const { from, to } = sheetRange({ from: '5', to: '5' });
    expect([from!(24), to!(24)]).toEqual([5, 5]);
  });

  it('does not end before it begins', () => {
    expect(() => sheetRange({ from: '9', to: '3' })).toThrow();
  });

  it('may be one at some speed: then the sheet decides', () => {
    expect(() => sheetRange({ from: '30', to: '1+12' })).not.toThrow();
  });
});
