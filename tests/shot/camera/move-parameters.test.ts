import { describe, expect, test } from 'vitest';
import type { MoveKind } from '../../../src/language/tree-camera.js';
import { bySteps, evenSteps } from '../../../src/shot/camera/move-parameters.js';
import { withLines } from '../bind.js';
import { bound, during, ease, length, move, number, OPTIONS, span, stop, to, words } from './nodes.js';

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

describe('the spacing of a leg', () => {
  const spacing = (behind: string, move = 'pull BG right 1mm/f 1..24') =>
    withLines('field F 98%', `${move} ${behind}`).shot!.camera.moves[0]?.legs[0]?.spacing;

  test('is even where nothing is said', () => expect(spacing('')).toEqual({ form: 'linear' }));

  test('leaves and arrives over so many frames', () => {
    expect(spacing('ease 4 6')).toEqual({ form: 'ease', leave: 4, arrive: 6 });
    expect(spacing('ease 4')).toEqual({ form: 'ease', leave: 4, arrive: 4 });
  });

  test('goes along a curve', () => {
    expect(spacing('curve 0.1 -0.2 0.3 1.4')).toEqual({ form: 'curve', x1: 0.1, y1: -0.2, x2: 0.3, y2: 1.4 });
  });

  test('is graduated by hand, each step as often as is said', () => {
    expect(spacing('steps 1 2*3 0.5')).toEqual({ form: 'steps', mm: [1, 2, 2, 2, 0.5] });
  });

  test('has a fairing mark, on a quick truck only', () => {
    const truck = 'truck quick full@1 > F@24';
    expect(spacing('fair X@9 58%', truck)).toEqual({ form: 'fair', mark: 'X', frame: 9, share: 0.58 });
    expect(spacing('fair X@9 58%', 'truck full@1 > F@24')).toEqual({ form: 'linear' });
    expect(spacing('fair X@nowhere 58%', truck)).toBeUndefined();
  });

  test('said twice is the first one', () => {
    expect(spacing('ease 4 curve 0.1 0 0.1 1')).toEqual({ form: 'ease', leave: 4, arrive: 4 });
  });
});

test('more graduations than any sheet has rows are cut off', () => {
  const steps = (...times: number[]) =>
    bySteps({
      form: 'steps',
      span: span(),
      steps: times.map((one) => ({ mm: number(1), times: one })),
    } as never);
  expect(steps(99_999, 5)).toHaveLength(100_000);
  expect(steps(1e12)).toHaveLength(100_000);
});

test('a quick truck needs its mark on one leg only, and a move without it is no quick one', () => {
  const codes = (line: string) => withLines('field F 98%', 'field G 97%', line).codes;
  expect(codes('truck quick full@1 > F@24 fair X@9 58% > G@48')).not.toContain('error quick-without-fairing');
  expect(codes('truck quick full@1 > F@24')).toContain('error quick-without-fairing');
  const graduated = (line: string) => withLines(line).shot!.camera.moves[0]!.graduated;
  expect(graduated('pull BG right 1mm/f 1..24 graduated')).toBe(true);
  expect(graduated('pull BG right 1mm/f 1..24')).toBe(false);
});

const degrees = (value: number) => ({ label: null, value, span: span() });

test.each([
  ['cw', [0, 90], 'cw', true],
  ['ccw', [0, 90], 'ccw', true],
  ['ccw', [0, -90], 'cw', true],
  ['cw', [0, 48, 40], 'cw', false],
  ['ccw', [0, 48, 40], 'ccw', false],
  ['cw', [0, -48, -40], 'ccw', false],
  ['cw', [0, -20, 5], 'cw', false],
  ['ccw', [0, -20, 5], 'cw', false],
  ['cw', [-20, 10], 'cw', false],
  ['ccw', [0, 0], 'cw', true],
] as const)('angles typed %s through %j is told %s', (typed, [first, ...others], positive, onward) => {
  const { parameters } = read('turn', {
    range: null,
    from: stop(degrees(first), 1),
    legs: others.map((angle, i) => to(degrees(angle), 12 * (i + 1))),
    options: { ...OPTIONS, sense: { sense: typed, span: span() } },
  });
  expect((parameters as { sense: unknown }).sense).toEqual({ positive, onward });
});
