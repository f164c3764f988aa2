import { describe, expect, it } from 'vitest';
import type { CameraStatement } from '../../../src/language/tree-camera.js';
import { bindText, withLines } from '../bind.js';
import { bound, FULL, field, move, OPTIONS, state, stop, to, word } from './nodes.js';

const pan = (from: string, a: number, end: string, b: number, options = OPTIONS): CameraStatement =>
  move({ kind: 'pan', from: stop(word(from), a), legs: [to(word(end), b)], options });

describe('the camera rests', () => {
  const A = field('A', FULL, { form: 'mm', xMm: 5, yMm: 0 });
  const rest = (...more: CameraStatement[]) => bound([A, ...more]).camera.rest.name;
  it('on the standard field, on that of `fix`, or where its first move starts', () => {
    expect(rest()).toBe('full');
    expect(rest(state({ kind: 'fix', field: word('A') }))).toBe('A');
    expect(rest(pan('full', 24, 'A', 48), pan('A', 1, 'full', 24))).toBe('A');
  });

  it('and `full` is among its fields only where something names it', () => {
    expect(bound([A]).camera.fields.map(({ name }) => name)).toEqual(['A']);
    expect(bound([A, pan('A', 1, 'full', 24)]).camera.fields.map(({ name }) => name)).toEqual(['full', 'A']);
  });
});

describe('fields', () => {
  it('stand in the order of writing, the standard field first, those of used files last', () => {
    const house = 'field Y 50%\nfield X 50%\nfield Z 50%\n';
    const lines = 'field B 60%\nfield A 60%\ntruck Y@1 > B@9 > X@20 > full@30 > A@40\n';
    const { camera } = bindText(`cut 1\ntime 5+0\nA: 1..\n${lines}`, [house]).shot!;
    expect(camera.fields.map(({ name }) => name)).toEqual(['full', 'B', 'A', 'X', 'Y']);
  });
});

it('moves and light stand in the order of their first frames', () => {
  const { camera } = withLines('shake 3mm 40..50', 'pull A up 9mm 1..9', 'glow A 30..40', 'fade in 1..9')
    .shot!;
  expect(camera.moves.map(({ kind }) => kind)).toEqual(['pull', 'shake']);
  expect(camera.light.map(({ kind }) => kind)).toEqual(['fade', 'glow']);
});
