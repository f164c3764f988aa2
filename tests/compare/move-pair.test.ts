/** Whatever differs in a move is told: the cases are made of the table of moves. */

import { describe, expect, test } from 'vitest';
import { compare } from '../../src/compare/compare-cuts.js';
import { sentence, telling } from '../../src/compare/sentence.js';
import type { MoveKind } from '../../src/shot/camera/camera-model.js';
import { solveCamera } from '../../src/solve/camera/solve-camera.js';
import { type Changed, KINDS, moveOf, parameterNames } from '../move-samples.js';
import { solved } from './say.js';

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
    expect(told(kind, { ticks: true }).changes).toMatchObject([{ kind: 'move-manner', manner: 'ticks' }]);
    expect(told(kind, { end: 30 }).changes).toMatchObject([{ kind: 'move-time' }]);
  });
});
