/** What a level shows as runs and cycles. */

import { describe, expect, test } from 'vitest';
import { type ExposureToken, nameBoth, tokensOf } from '../../src/compare/exposure-tokens.js';
import { edits, SHEET } from './edits.js';
import { levelOf, note } from './say.js';

function tokens(timeline: string, { time = '2+0', flat = false } = {}): ExposureToken[] {
  const level = levelOf(timeline, time);
  return tokensOf(nameBoth(level, level).now, flat);
}

const brief = (all: readonly ExposureToken[]) =>
  all.map(({ symbol, seen, start, frames }) => `${symbol || seen.form}@${start}:${frames}`).join(' ');

test('what is shown without a break is one run, emptiness too', () => {
  expect(brief(tokens('1:4 1:2 2:6 x..'))).toBe('1@1:6 2@7:6 empty@13:36');
});

test('an in-between tells between which keys it lies', () => {
  expect(tokens('1-2..')[1]).toMatchObject({
    symbol: '1>2.1',
    seen: { form: 'drawing', drawing: '1.1', kind: 'inbetween', cel: 2, way: { from: '1', to: '2' } },
  });
});

describe('a cycle', () => {
  test('is one token with its first pass', () => {
    const [cycle, after] = tokens('(1-2-)*2 3..');
    expect(cycle).toMatchObject({ seen: { form: 'cycle', first: '1', last: '2' }, start: 1, frames: 16 });
    expect(cycle!.cycle).toMatchObject({ passFrames: 8, times: 2, bounce: false, played: 16 });
    expect(brief(cycle!.cycle!.pass)).toBe('1@1:2 1>2.1@3:2 2@5:2 2>1.1@7:2');
    expect(brief([after!])).toBe('3@17:32');
  });

  test('has the hold of what it ends on, which is not played', () => {
    const [cycle] = tokens('(1-2)*3 2:12 3..');
    expect(cycle).toMatchObject({ frames: 30, cycle: { played: 18 } });
  });

  test('has as much of a pass as there is room for', () => {
    const [cycle] = tokens('(1--2--)..', { time: '0+7' });
    expect(cycle!.cycle).toMatchObject({ passFrames: 12, times: null, played: 7 });
    expect(brief(cycle!.cycle!.pass)).toBe('1@1:2 1>2.1@3:2 1>2.2@5:2 2@7:1');
  });

  test('there and back goes to its furthest key', () => {
    expect(tokens('(1 2 3)<>..')[0]!.seen).toEqual({ form: 'cycle', first: '1', last: '3' });
  });

  test('in a cycle is a token of its pass', () => {
    const [outer] = tokens('((1 2)*2 3)*2 4..');
    expect(brief(outer!.cycle!.pass)).toBe('cycle@1:8 3@9:2');
  });

  test('is written out where that is asked for', () => {
    expect(brief(tokens('(1 2)*2 3..', { flat: true }))).toBe('1@1:2 2@3:2 1@5:2 2@7:2 3@9:40');
  });
});

// ---- names of drawings that last from one version to the next

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
