import { expect, test } from 'vitest';
import { messageOf } from '../../../../src/language/message.js';

test('more places than three are counted', () => {
  const stretches = [1, 30, 60, 90, 120].map((from) => ({ from, to: from + 12 }));
  expect(messageOf({ code: 'sound-unwritten', parameters: { stretches } }, 'en')).toBe(
    'Something is heard on rows 1 to 13, 30 to 42, 60 to 72 and in 2 more places, and nothing is written there.',
  );
});

test('a recording that ends at once', () => {
  const parameters = { variant: 'short', rows: 48, last: 0 } as const;
  expect(messageOf({ code: 'track-length', parameters }, 'en')).toBe(
    'The recording ends on the first row of the sheet.',
  );
});
