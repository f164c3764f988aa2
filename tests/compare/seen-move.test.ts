/** What moves are called. */

import { expect, test } from 'vitest';
import { placeNamesOf, round, seenMove, sheetRowsOf } from '../../src/compare/seen-move.js';
import type { Move, MoveKind } from '../../src/shot/camera/camera-model.js';
import type { SolvedMove } from '../../src/solve/camera/solved-camera.js';
import { moveOf } from '../move-samples.js';

test.each<[MoveKind, readonly string[]]>([
  ['pan', ['P', 'Q']],
  ['slide', ['ア', 'イ']],
  ['levelTruck', ['100%', '140%']],
  ['turn', ['0°', '90°']],
  ['pull', []],
  ['shake', []],
])('the places of a %s', (kind, places) => {
  expect(placeNamesOf(moveOf(kind))).toEqual(places);
});

test('a place without a mark is called by where it is', () => {
  const slide = moveOf('slide');
  const legs = [{ ...slide.legs[0]!, to: { label: '', xMm: -120.00004, yMm: 2.5 } }];
  expect(placeNamesOf({ ...slide, legs } as Move)).toEqual(['ア', '-120,2.5']);
});

test('a truck goes in or out, one that does both neither', () => {
  const truck = moveOf('truck');
  const [leg] = truck.legs;
  const back = { ...leg, from: leg!.to, to: leg!.from };
  const senseOf = (...legs: unknown[]) => seenMove({ ...truck, legs } as Move).sense;
  // P is 254 mm wide, Q 200.
  expect([senseOf(leg), senseOf(back), senseOf(leg, back)]).toEqual(['in', 'out', null]);
  expect(seenMove(moveOf('pull')).sense).toBeNull();
});

test('a truck may be quick', () => {
  expect(seenMove(moveOf('truck')).quick).toBe(false);
  expect(seenMove(moveOf('truck', { second: ['quick'] })).quick).toBe(true);
});

test('rows are those that the move is written with: both ends of a way between places, all of a range', () => {
  const rows = (move: Move) => sheetRowsOf({ move } as SolvedMove);
  expect(rows(moveOf('pan', { end: 30 }))).toEqual({ from: 1, to: 30 });
  expect(rows(moveOf('pull', { end: 30 }))).toEqual({ from: 1, to: 30 });
});

test('numbers have three decimals at most', () => {
  expect([round(2.54), round(1 / 3), round(-0.0001)]).toEqual(['2.54', '0.333', '0']);
});
