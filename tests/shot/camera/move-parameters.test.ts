import { describe, expect, test } from 'vitest';
import type { MoveKind } from '../../../src/language/tree-camera.js';
import { evenSteps } from '../../../src/shot/camera/move-parameters.js';
import { bound, during, ease, length, move, number, OPTIONS, span, words } from './nodes.js';

type Said = Omit<Parameters<typeof move>[0], 'kind'>;

/** The parameters of a move of level A or of the camera, over 24 frames. */
function read(kind: MoveKind, said: Said) {
  const levels = kind === 'shake' ? [] : words('A');
  const { camera, codes } = bound([move({ kind, levels, range: during(1, 24), ...said })]);
  return { parameters: camera.moves[0]?.parameters, codes };
}

const right = { form: 'word', word: 'right', span: span() } as const;

describe('parameters are read', () => {
  test('a rate over ramps as the way that it goes', () => {
    const way = { form: 'rate', mm: 2, span: span() } as const;
    const { parameters } = read('pull', { parts: { direction: right, way }, spacing: [ease(6, 6)] });
    expect(parameters).toEqual({
      direction: { degrees: 0, word: 'right' },
      way: { distanceMm: 36, rateMm: 2 },
      loop: null,
    });
  });

  test('one size of a shake as both its sizes, and flags as true where they are said', () => {
    const options = { ...OPTIONS, sideways: span() };
    expect(read('shake', { parts: { size: number(3) }, options }).parameters).toEqual({
      size: { fromMm: 3, toMm: 3 },
      sideways: true,
    });
    expect(read('shake', { parts: { size: number(3), lastSize: number(0) } }).parameters).toEqual({
      size: { fromMm: 3, toMm: 0 },
      sideways: false,
    });
  });

  test('and a move whose parameter cannot be had is left out', () => {
    const whole = read('sway', { parts: { size: number(5), every: length(12) } });
    expect(whole.parameters).toEqual({ size: 5, period: 12, sideways: false });
    expect(read('sway', { parts: { size: number(5) } }).parameters).toBeUndefined();
  });

  test('options without a meaning for the kind are reported, and nothing else of it', () => {
    const options = { ...OPTIONS, log: span(), loop: number(9) };
    const { codes } = read('sway', { parts: { size: number(5), every: length(12) }, options });
    expect(codes.filter((code) => code === 'option-misplaced')).toHaveLength(2);
  });
});

test('a ramp goes as far as half its frames at constant speed; nothing else shortens the way', () => {
  // s = a t² / 2 with v = a t: half of v t.
  expect(evenSteps({ form: 'ease', leave: 6, arrive: 12 }, 24)).toBe(15);
  expect(evenSteps({ form: 'ease', leave: 0, arrive: 0 }, 24)).toBe(24);
  expect(evenSteps({ form: 'linear' }, 24)).toBe(24);
  expect(evenSteps({ form: 'curve', x1: 0.4, y1: 0, x2: 0.6, y2: 1 }, 24)).toBe(24);
});
