import { expect, test } from 'vitest';
import { track } from '../../../../src/language/catalogue/en/track-texts.js';

test('more places than three are counted', () => {
  const message = track['sound-unwritten'].message as (given: object) => string;
  const stretches = [1, 30, 60, 90, 120].map((from) => ({ from, to: from + 12 }));
  expect(message({ stretches })).toBe(
    'Something is heard on rows 1 to 13, 30 to 42, 60 to 72 and in 2 more places, and nothing is written there.',
  );
});

test('a recording that ends before the sheet begins to be read', () => {
  const { short } = track['track-length'].message as { short: (given: object) => string };
  expect(short({ variant: 'short', rows: 48, last: 0 })).toBe(
    'The recording ends on the first row of the sheet.',
  );
});
