import { describe, expect, test } from 'vitest';
import {
  artistsOf,
  cutKey,
  cutNumberOf,
  type Episode,
  noEpisode,
  rowsFault,
} from '../../src/episode/episode.js';
import { rowsFault as faultText } from '../../src/language/catalogue/en/terms-texts.js';
import { parse } from '../../src/language/parse.js';
import { defaults, type Settings } from '../../src/shot/settings.js';

const written = (text: string) => ({ text, span: { file: 'episode.yaml', start: 0, end: 0 } });

test('numbers are the same cut in full width, with zeros before them, in small letters', () => {
  expect(['12', '012', '１２', ' 12 '].map(cutKey)).toEqual(['12', '12', '12', '12']);
  expect(['12a', '12A', '１２ａ'].map(cutKey)).toEqual(['12A', '12A', '12A']);
  expect(['0', '00', '0A', '10'].map(cutKey)).toEqual(['0', '0', '0A', '10']);
});

describe('who draws a cut', () => {
  const episode: Episode = {
    ...noEpisode,
    artists: [
      { name: written('M. Arai'), cuts: [written('012'), written('13')] },
      { name: written('汐見'), cuts: [written('12')] },
    ],
  };

  test('is everybody whom the manifest names for its number, in the order of writing', () => {
    expect(artistsOf(episode, '１２')).toEqual(['M. Arai', '汐見']);
    expect(artistsOf(episode, '13')).toEqual(['M. Arai']);
  });

  test('is nobody for a cut that the manifest does not name', () => {
    expect(artistsOf(episode, '1')).toEqual([]);
  });
});

test('a number is that of the first `cut`, as it is written; none where there is no such line', () => {
  const number = (text: string) => cutNumberOf(parse('c.cut', text).tree);
  expect(number('time zzz\ncut 012\ncut 13\n')).toBe('012');
  expect(number('time 1+0\n')).toBeUndefined();
  expect(number('cut "no number"\n')).toBeUndefined();
  expect(cutNumberOf(null)).toBeUndefined();
});

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
