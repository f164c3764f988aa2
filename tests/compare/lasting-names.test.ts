/** Names of drawings that last from one version to the next. */

import { describe, expect, test } from 'vitest';
import { nameBoth } from '../../src/compare/lasting-names.js';
import { edits, SHEET } from './edits.js';
import { levelOf, note } from './say.js';

edits(SHEET, [['2-3:', '2a-3:', 'A: key 2a instead of key 2, from 0+19']]);

test('names of in-betweens change where their key leads to another key too, and that is no difference', () => {
  const head = 'cut 1\ntime 2+0\n';
  expect(note(`${head}A: 1--2 3..`, `${head}A: 1--2 3:20 1-3..`)).toEqual([
    'A: key 3, key 1, A6 (1>3.1) added from 0+9 for 1+0; what follows comes 1+0 later',
  ]);
});

const names = (old: string, now: string) => nameBoth(levelOf(old), levelOf(now));

test('an in-between is named by both its keys, however the text calls it', () => {
  const { old, now } = names('1-2..', '1-2 1-3..');
  expect(old.symbols.get('1.1')).toBe('1>2.1');
  expect([...now.symbols.values()].filter((one) => one.includes('.')).sort()).toEqual(['1>2.1', '1>3.1']);
});

test('in-betweens of the same keys with another count are other drawings', () => {
  const { now } = names('1..', '1-2 1--2..');
  expect([...now.symbols.values()].filter((one) => one.includes('.')).sort()).toEqual([
    '1>2.1',
    '1>2.1/2',
    '1>2.2/2',
  ]);
});

describe('a key that stands wherever another stood', () => {
  const replaced = (old: string, now: string) => [...names(old, now).replaced];

  test('takes its name', () => {
    expect(replaced('1 2 3 2..', '1 9 3 9..')).toEqual([['2', '9']]);
    expect(names('1 2-3..', '1 9-3..').old.symbols.get('2.1')).toBe('9>3.1');
  });

  test('does not take it where the other is still there, or something else stands in one of its places', () => {
    expect(replaced('1 2 3 2..', '1 9 3 2..')).toEqual([]);
    expect(replaced('1 2 3 2..', '1 9 3 8..')).toEqual([]);
    expect(replaced('1 2 3 4..', '1 9 3 9..')).toEqual([]);
  });
});
