/** What moves are called. */

import { describe, expect, test } from 'vitest';
import { sentence, telling } from '../../src/compare/change-wording.js';
import { compare } from '../../src/compare/compare-cuts.js';
import { placeNamesOf, round, seenMove, sheetRowsOf } from '../../src/compare/move-pair.js';
import type { Move, MoveKind } from '../../src/shot/camera/camera-model.js';
import { solveCamera } from '../../src/solve/camera/solve-camera.js';
import type { SolvedMove } from '../../src/solve/camera/solved-camera.js';
import { type Changed, KINDS, moveOf, parameterNames } from '../move-samples.js';
import { solved } from './say.js';

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

// ---- whatever differs in a move is told: the cases are made of the table of moves

const CUT = solved('cut 1\ntime 2+0\nstack A B\nlevel A free\nlevel B free\nA: 1..\nB: 1..\n');

function cutWith(kind: MoveKind, changed: Changed) {
  const camera = { ...CUT.shot.camera, moves: [moveOf(kind, changed)] };
  const level = (name: string) => ({
    name,
    span: camera.rest.span,
    homeMm: { xMm: 0, yMm: 0 },
    sizeMm: null,
    timed: true,
    free: true,
    carry: false,
    shown: () => true,
    appears: (frame: number) => frame === 1,
  });
  const context = { length: 48, fps: 24, levels: ['A', 'B'].map(level), settings: CUT.shot.settings };
  return { ...CUT, shot: { ...CUT.shot, camera }, camera: solveCamera(camera, context).solved };
}

function told(kind: MoveKind, changed: Changed) {
  const [old, now] = [cutWith(kind, {}), cutWith(kind, changed)];
  const changes = compare(old, now);
  const sentences = (['en', 'ja'] as const).map((language) =>
    changes.map((change) => sentence(change, telling(now, language))),
  );
  return { changes, sentences };
}

describe.each(KINDS)('%s', (kind) => {
  test('a move is the same as itself', () => {
    expect(told(kind, {}).changes).toEqual([]);
  });

  const names = parameterNames(kind);
  test.each(names.length > 0 ? names : ['on'])('its %s, changed alone, is told, and nothing else', (name) => {
    const { changes, sentences } = told(kind, name === 'on' ? { on: 2 } : { second: [name] });
    expect(changes).toHaveLength(1);
    const [change] = changes as unknown as [{ kind: string; manner?: string; old?: unknown; now?: unknown }];
    if (name === 'way') expect(change).toMatchObject({ kind: 'move-way', rateMm: { old: 3, now: 4 } });
    else {
      expect(change).toMatchObject({ kind: 'move-manner', manner: name });
      expect(change.old).not.toEqual(change.now);
    }
    for (const [one] of sentences) expect(one).not.toMatch(/undefined|NaN|\[object/);
    const [english] = sentences[0]!;
    const [now, was] = english!.split(' (was ');
    expect(now!.endsWith(`: ${was!.slice(0, -1)}`)).toBe(false);
  });

  test('how it is sampled, graduated and timed is told', () => {
    expect(told(kind, { on: 2 }).changes).toMatchObject([{ kind: 'move-manner', manner: 'on' }]);
    expect(told(kind, { graduated: true }).changes).toMatchObject([
      { kind: 'move-manner', manner: 'graduated' },
    ]);
    expect(told(kind, { end: 30 }).changes).toMatchObject([{ kind: 'move-time' }]);
  });
});
