/** Light and effects of two versions. */

import { expect, test } from 'vitest';
import { lightChanges } from '../../src/compare/light-changes.js';
import { CAMERA, edits } from './edits.js';
import { solved } from './say.js';

edits(CAMERA, [
  ['fade in 1..12', 'fade in 1..24', 'F.I 12 frames longer: 0+1 to 0+24 (was 0+1 to 0+12)'],
  ['fade in 1..12\n', '', 'F.I dropped (was 0+1 to 0+12)'],
  ['fade in 1..12', 'fade in white 1..12', 'W.I: white (was black)'],
  ['B 50%', 'B 40%', 'B double exposure: 40% (was 50%)'],
  ['glow C', 'glow B,C', 'B,C light through (was level C)'],
  ['heat haze', 'mist', 'effect “mist” on A,B (was “heat haze”)'],
  ['fade in 1..12', 'fade in 1..12\noverlap out 24', 'O.L with the next cut added: 4+13 to 5+12'],
]);

const cut = (lines: readonly string[], time = '4+0') =>
  solved(`cut 1\ntime ${time}\nA: 1..\nB: 1..\n${lines.join('\n')}\n`);
const told = (old: string[], now: string[], levels: ReadonlyMap<string, string> = new Map()) =>
  lightChanges(cut(old), cut(now), levels).map((change) => [
    change.kind,
    'manner' in change ? change.manner : null,
  ]);

test('a fade in and a fade out are two', () => {
  expect(told(['fade in 1..12'], ['fade out 1..12'])).toEqual([
    ['light-added', null],
    ['light-dropped', null],
  ]);
});

test('light that comes, goes or moves has its rows', () => {
  expect(lightChanges(cut([]), cut(['fade in 1..12']), new Map())).toMatchObject([
    {
      kind: 'light-added',
      frames: { from: 1, to: 12 },
      rows: { from: 1, to: 12 },
      place: { kind: 'camera' },
    },
  ]);
});

test('an exposure is told by both its shares', () => {
  expect(
    lightChanges(cut(['expose A 50% 1..24']), cut(['expose A 40%>60.5% 1..24']), new Map()),
  ).toMatchObject([{ kind: 'light-manner', manner: 'shares', old: '50%', now: '40%>60.5%' }]);
});

test('levels are compared by what they are called now', () => {
  const [old, now] = [['glow A 1..24'], ['glow B 1..24']];
  expect(told(old, now)).toEqual([['light-manner', 'levels']]);
  expect(told(old, now, new Map([['A', 'B']]))).toEqual([]);
});

test('light to the end of the cut stays so in a longer one, but a fade is at another time', () => {
  const longer = (...lines: string[]) =>
    lightChanges(
      cut(lines),
      cut(
        lines.map((line) => line.replace('4+0', '5+0')),
        '5+0',
      ),
      new Map(),
    ).map(({ kind }) => kind);
  expect(longer('glow A 2+1..4+0')).toEqual([]);
  expect(longer('expose A 50% 2+1..4+0')).toEqual([]);
  expect(longer('expose A 50%>60% 2+1..4+0')).toEqual(['light-time']);
  expect(longer('fade out 2+1..4+0')).toEqual(['light-time']);
});

test('another text of an effect at another time is another effect', () => {
  expect(told(['effect "mist" A 1..24'], ['effect "haze" A 1..24'])).toEqual([['light-manner', 'text']]);
  expect(told(['effect "mist" A 1..12'], ['effect "haze" A 3+1..3+24'])).toEqual([
    ['light-dropped', null],
    ['light-added', null],
  ]);
});
