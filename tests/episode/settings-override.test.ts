import { describe, expect, test } from 'vitest';
import { rowsFault } from '../../src/episode/settings-override.js';
import { rowsFault as faultText } from '../../src/language/catalogue/en/phrases.js';
import { defaults, type Settings } from '../../src/shot/settings.js';

const fault = (rows: number, settings: Partial<Settings> = {}): string | null => {
  const found = rowsFault(rows, { ...defaults, ...settings });
  return found && faultText(found);
};

/** The number of rows that is proposed instead. */
const proposed = (rows: number, settings: Partial<Settings> = {}): number =>
  Number(/; (\d+) would do$/.exec(fault(rows, settings)!)![1]);

describe('rows of a page', () => {
  test.each([
    ['seconds in Japan', 72, {}],
    ['seconds of other rates', 75, { fps: 25 }],
    ['feet in the west', 80, { convention: 'west' }],
    ['one second', 24, {}],
  ] as const)('may be whole %s', (_, rows, settings) => {
    expect(fault(rows, settings)).toBeNull();
  });

  test.each([100, 0, -24, 12, 36.5, Number.NaN, 100_000])('%d is refused', (rows) => {
    expect(fault(rows)).toContain('whole seconds of 24 rows, on A4 from 24 to ');
  });

  test('in the west are told of in feet', () => {
    expect(fault(100, { convention: 'west', paper: 'legal' })).toContain(
      'whole feet of 16 rows, on legal from 16 to ',
    );
  });
});

describe('the number proposed', () => {
  test.each([
    [100, 96],
    [110, 120],
    [35, 24],
    [37, 48],
  ])('for %d is the nearest whole second: %d', (rows, near) => {
    expect(proposed(rows)).toBe(near);
  });

  test.each([
    [90, 96],
    [87, 80],
  ])('in the west for %d the nearest whole foot: %d', (rows, near) => {
    expect(proposed(rows, { convention: 'west' })).toBe(near);
  });

  test('is never less than one second or foot', () => {
    expect(proposed(1)).toBe(24);
    expect(proposed(-500)).toBe(24);
    expect(proposed(3, { convention: 'west' })).toBe(16);
  });

  test('is never more than the paper holds', () => {
    const most = Number(/to (\d+);/.exec(fault(1)!)![1]);
    expect(proposed(100_000)).toBe(most);
    expect(fault(most)).toBeNull();
    expect(fault(most + 24)).not.toBeNull();
  });

  test('is one that is taken', () => {
    for (let rows = 1; rows < 400; rows++) {
      if (fault(rows) !== null) expect(fault(proposed(rows))).toBeNull();
    }
  });
});
