/** What a level shows as runs and cycles. */

import { describe, expect, test } from 'vitest';
import { type ExposureToken, tokensOf } from '../../src/compare/exposure-tokens.js';
import { nameBoth } from '../../src/compare/lasting-names.js';
import { levelOf } from './say.js';

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
