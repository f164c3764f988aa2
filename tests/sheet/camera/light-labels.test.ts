/** Light on paper. */

import { describe, expect, test } from 'vitest';
import { tellingOf } from '../../../src/sheet/camera/lane-assignment.js';
import { lightKind } from '../../../src/sheet/camera/light-labels.js';
import type { Neighbours } from '../../../src/sheet/page-look.js';
import { solvedCut } from '../laid.js';

function light(text: string, neighbours?: Neighbours) {
  const { shot } = solvedCut(`cut 1\ntime 4+0\nA: 1..\nB: 1..\n${text}\n`);
  const [one] = shot.camera.light;
  return {
    one: one!,
    kind: lightKind(one!),
    telling: tellingOf(shot, { labels: 'en', convention: 'japan', lengths: 'mm' }, neighbours),
  };
}
const memoOf = (text: string, neighbours?: Neighbours) => {
  const { one, kind, telling } = light(text, neighbours);
  return kind.memo(one, telling);
};

test.each([
  ['fade in 1..12', 'F.I', { form: 'wedge', opens: true }],
  ['fade out 1..12', 'F.O', { form: 'wedge', opens: false }],
  ['fade in white 1..12', 'W.I', { form: 'wedge', opens: true }],
  ['glow A 1..12', 'A light through', { form: 'box' }],
  ['effect "mist" A,B 1..12', 'A,B mist', { form: 'box' }],
  ['effect "mist" 1..12', 'mist', { form: 'box' }],
] as const)('%s', (text, memo, sign) => {
  const { one, kind } = light(text);
  expect(memoOf(text)).toBe(memo);
  expect(kind.sign(one)).toEqual(sign);
});

test('an exposure names its share, or both of them', () => {
  expect(memoOf('expose B 50% 1..12')).toBe('B double exposure 50%');
  expect(memoOf('expose B 50%>20% 1..12')).toBe('B double exposure 50%→20%');
});

describe('an overlap', () => {
  const overlap = 'overlap out 24';

  test('names the cut that it is with, if that is known', () => {
    expect(memoOf(overlap, { after: '2A' })).toBe('O.L 1+0 with c2A');
    expect(memoOf(overlap)).toBe('O.L 1+0 with the next cut');
    expect(memoOf('overlap in 24', { after: '2A' })).toBe('O.L 1+0 with the cut before');
  });

  test('has shorter names for where there is less room', () => {
    const names = (neighbours?: Neighbours) => {
      const { one, kind, telling } = light(overlap, neighbours);
      return kind.names(one, telling);
    };
    expect(names({ after: '2A' })).toEqual(['O.L 1+0 with c2A', 'O.L with c2A', 'O.L 1+0', 'O.L']);
    expect(names()).toEqual(['O.L 1+0', 'O.L']);
  });
});
