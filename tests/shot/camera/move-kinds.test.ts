import { describe, expect, test } from 'vitest';
import type { Move } from '../../../src/shot/camera/camera-model.js';
import {
  endOf,
  fieldLegs,
  givenOf,
  goingAlong,
  growthOf,
  kindOf,
  movesOf,
  parametersOf,
  rests,
  rowsOf,
  sharing,
  startOf,
} from '../../../src/shot/camera/move-kinds.js';
import { KINDS, moveOf, parameterNames } from '../../move-samples.js';
import * as build from '../../solve/camera/build.js';

const { field, leg, pan, truck, pull, follow, scale, sway, shake } = build;

describe('when a move runs', () => {
  test('one with `@` has the row that it stands on; a range has moved on its first row', () => {
    const [standing, moving] = [pan([leg(field('P'), 13, field('Q'), 48)]), sway(['A'], 5, 13, 48, 12)];
    expect([rests(standing), rowsOf(standing)]).toEqual([true, { from: 13, to: 48 }]);
    expect([rests(moving), rowsOf(moving)]).toEqual([false, { from: 13, to: 48 }]);
    expect([startOf(standing), endOf(standing)]).toEqual([13, 48]);
    expect([startOf(moving), endOf(moving)]).toEqual([12, 48]);
  });

  test('from the first leg to the last', () => {
    const [a, b] = [field('P'), field('Q')];
    expect(rowsOf(pan([leg(a, 1, b, 24), leg(b, 24, a, 40)]))).toEqual({ from: 1, to: 40 });
  });
});

describe('what a move has', () => {
  test.each(KINDS)('%s: every parameter of the table, in its order, with its form', (kind) => {
    const given = parametersOf(moveOf(kind));
    expect(given.map(({ name }) => name)).toEqual(parameterNames(kind));
    for (const { form, parameter, value } of given) {
      expect(parameter.form).toBe(form);
      expect(value).toBeDefined();
    }
  });

  test('a value by its form; none of a kind that has no such parameter', () => {
    expect(givenOf(shake(4, 1, 1, 24), 'swing')).toEqual({ fromMm: 4, toMm: 1 });
    expect(givenOf(sway(['A'], 5, 1, 24, 12), 'swing')).toBeUndefined();
    expect(givenOf(pull(['A'], 'left', 9, 1, 9), 'loop')).toBeNull();
  });

  test('levels that go along are those of a follow, and those that are carried', () => {
    expect(goingAlong(follow(['A'], 'left', 9, 1, 9))).toEqual(['A']);
    expect(goingAlong(pan([leg(field('P'), 1, field('Q'), 9)], { carry: ['B'] }))).toEqual(['B']);
    expect(goingAlong(pull(['A'], 'left', 9, 1, 9))).toEqual([]);
  });

  test('only trucks grow: by mm of width, and by shares of a level', () => {
    const [wide, narrow] = [field('P'), field('Q', { widthMm: 200 })];
    expect(growthOf(truck([leg(wide, 1, narrow, 9), leg(narrow, 9, wide, 19)]))).toEqual([54, -54]);
    expect(growthOf(scale(['A'], [leg(1, 1, 1.5, 9)]))).toEqual([0.5]);
    expect(growthOf(pan([leg(wide, 1, narrow, 9)]))).toEqual([]);
  });

  test('fields stand at the ends of legs of pans and trucks', () => {
    const moves = [pan([leg(field('P'), 1, field('Q'), 9)]), pull(['A'], 'left', 9, 1, 9)];
    expect(moves.map((move) => fieldLegs(move).length)).toEqual([1, 0]);
    expect(movesOf(moves, 'pull')).toEqual([moves[1]]);
  });
});

describe('the table', () => {
  test('what drives the same alone is solved in one phase', () => {
    const phases = new Map<string, Set<number>>();
    for (const kind of KINDS) {
      const { quantity, phase } = kindOf({ kind });
      phases.set(quantity, (phases.get(quantity) ?? new Set()).add(phase));
    }
    for (const [, found] of phases) expect(found.size).toBe(1);
  });

  test('each kind has a sign', () => {
    for (const kind of KINDS) {
      const { sign } = kindOf({ kind });
      expect(sign(moveOf(kind).parameters).form).toMatch(/^(line|zigzag|wave)$/);
    }
  });
});

test('a truck that runs with a pan or a follow gives the width for all of its time, and they the centre', () => {
  const timed = (kind: 'pan' | 'truck' | 'follow' | 'shake', start: number, end: number) => {
    const move = moveOf(kind);
    return { ...move, legs: [{ ...move.legs[0]!, start, end }] } as Move;
  };
  const gives = (...moves: Move[]) => sharing(moves).map((move) => move.gives);
  expect(gives(timed('pan', 1, 24), timed('truck', 23, 48))).toEqual(['centre', 'width']);
  expect(gives(timed('pan', 1, 24), timed('truck', 24, 48))).toEqual([null, null]);
  expect(gives(timed('truck', 1, 48), timed('follow', 2, 3), timed('pan', 48, 60))).toEqual([
    'width',
    'centre',
    null,
  ]);
  expect(gives(timed('truck', 1, 48), timed('shake', 2, 30))).toEqual([null, null]);
});
