/** Fields, moves and light in English. */

import { describe, expect, test } from 'vitest';
import type { Spacing } from '../../../src/compare/change.js';
import { cameraIn } from '../../../src/words/en/change-camera-en.js';
import { JAPAN_TERMS, WEST_TERMS } from '../../../src/words/en/forms-en.js';
import { light, MOVE, moveTime, SAME_SPEED, say } from '../sentence-samples.js';

const camera = cameraIn(JAPAN_TERMS);
const told = (body: Parameters<typeof say>[1]) => say(camera, body);
const FRAMES = { from: 1, to: 24 };

describe('a field', () => {
  test('is larger or smaller, in percent and in millimetres', () => {
    const resized = (old: number, now: number, percent: { old: number; now: number }) =>
      told({ kind: 'field-resized', field: 'C', old, now, percent });
    expect(resized(152.4, 127, { old: 60, now: 50 })).toBe(
      'field C smaller: 50%, 127 mm (was 60%, 152.4 mm)',
    );
    expect(resized(127, 152.4, { old: 50, now: 60 })).toBe('field C larger: 60%, 152.4 mm (was 50%, 127 mm)');
  });

  test('turns clockwise or counter-clockwise', () => {
    expect(told({ kind: 'field-turned', field: 'C', old: 5, now: 8 })).toBe(
      'field C turned 3° clockwise: 8° (was 5°)',
    );
    expect(told({ kind: 'field-turned', field: 'C', old: 5, now: -1.5 })).toBe(
      'field C turned 6.5° counter-clockwise: -1.5° (was 5°)',
    );
  });

  test('comes with its width and its place, moves by its sides', () => {
    expect(told({ kind: 'field-added', field: 'D', widthMm: 127, xMm: 20, yMm: 0 })).toBe(
      'field D added: 127 mm wide at 20,0',
    );
    const [old, now] = [
      { xMm: 110, yMm: 0 },
      { xMm: 100, yMm: 3 },
    ];
    expect(told({ kind: 'field-moved', field: 'B', by: { xMm: -10, yMm: 3 }, old, now })).toBe(
      'field B 10 mm left, 3 mm up: at 100,3 (was 110,0)',
    );
  });
});

describe('the time of a move', () => {
  const faster = { largestStepMm: { old: 4, now: 6.25 } };
  const later = { old: FRAMES, now: { from: 13, to: 36 } };

  test('later as a whole', () => {
    expect(told(moveTime({ frames: later }))).toBe('PAN A→B 12 frames later: 0+13 to 1+12 (was 0+1 to 0+24)');
  });

  test('a later begin, with the speed that this makes', () => {
    expect(told(moveTime({ frames: { old: FRAMES, now: { from: 13, to: 24 } }, ...faster }))).toBe(
      'PAN A→B begins 12 frames later: 0+13 to 0+24 (was 0+1 to 0+24), faster: largest step 6.25 mm/f (was 4)',
    );
  });

  test('a step that differs by less than is seen is the same', () => {
    const hair = { largestStepMm: { old: 4, now: 4.004 } };
    expect(told(moveTime({ frames: later, ...hair }))).not.toContain('largest step');
  });

  test('longer, or both ends otherwise', () => {
    expect(told(moveTime({ frames: { old: FRAMES, now: { from: 1, to: 36 } } }))).toBe(
      'PAN A→B 12 frames longer: 0+1 to 1+12 (was 0+1 to 0+24)',
    );
  });

  test('of a place on the way is told with that place alone', () => {
    const stops = { old: [1, 12, 24], now: [1, 16, 24] };
    expect(told(moveTime({ places: ['A', 'B', 'C'], stops }))).toBe('PAN A→B→C: B on 0+16 (was 0+12)');
  });
});

describe('the way of a move', () => {
  const way = (old: number | null, now: number | null) =>
    told({
      kind: 'move-way',
      distanceMm: { old: 144, now: 192 },
      rateMm: { old, now },
      ...SAME_SPEED,
      ...MOVE,
    });

  test('said as a speed is faster or slower', () => {
    expect(way(3, 4)).toBe('PAN A→B faster: 4 mm/f (was 3 mm/f), 192 mm (was 144 mm) in all');
    expect(way(4, 3)).toContain('slower: 3 mm/f (was 4 mm/f)');
  });

  test('said as a distance is that', () => {
    expect(way(null, null)).toBe('PAN A→B 192 mm (was 144 mm)');
    expect(way(3, null)).toBe('PAN A→B 192 mm (was 144 mm)');
  });
});

test('another route says its time only where that differs', () => {
  const route = { kind: 'move-route', old: ['A', 'C'], now: ['A', 'B'], ...SAME_SPEED, ...MOVE } as const;
  expect(told({ ...route, frames: { old: FRAMES, now: FRAMES } })).toBe('PAN A→B (was A→C)');
  expect(told({ ...route, frames: { old: FRAMES, now: { from: 1, to: 12 } } })).toBe(
    'PAN A→B (was A→C): 0+1 to 0+12 (was 0+1 to 0+24)',
  );
});

test.each<[Spacing, string]>([
  [{ form: 'linear' }, 'even speed'],
  [{ form: 'ease', leave: 6, arrive: 12 }, 'ease 6/12'],
  [{ form: 'curve', x1: 0.42, y1: 0, x2: 0.58, y2: 1 }, 'curve 0.42 0 0.58 1'],
  [{ form: 'steps', mm: [1, 2, 3] }, 'graduations by hand 1 2 3'],
  [{ form: 'fair', mark: 'ア', frame: 6, share: 0.85 }, 'fairing ア on 0+6 with 85%'],
])('a spacing: %o', (now, text) => {
  const change = { kind: 'move-spacing', leg: 0, now, old: { form: 'linear' } } as const;
  expect(told({ ...change, ...SAME_SPEED, ...MOVE })).toBe(`PAN A→B: ${text} (was even speed)`);
});

test('the spacing of one leg of several says which', () => {
  const change = { kind: 'move-spacing', leg: 1, now: { form: 'linear' }, old: { form: 'linear' } } as const;
  expect(told({ ...change, ...SAME_SPEED, ...MOVE, places: ['A', 'B', 'C'] })).toMatch(/^PAN A→B→C, B→C: /);
});

test.each([
  ['kind', 'truck', 'pan', 'PAN (was truck)'],
  ['graduated', false, true, 'graduated frame by frame (was not graduated)'],
  ['on', 1, 2, 'on 2s (was on 1s)'],
  ['levels', '', 'A', 'level A (was no level)'],
  ['size', '3', '5', 'size 5 (was size 3)'],
] as const)('the manner of a move: %s', (manner, old, now, text) => {
  expect(told({ kind: 'move-manner', manner, old, now, ...MOVE })).toBe(`PAN A→B: ${text}`);
});

test.each([
  [light({ light: 'fade', way: 'in' }), 'F.I'],
  [light({ light: 'fade', way: 'out', white: true }), 'W.O'],
  [light({ light: 'overlap', way: 'in' }), 'O.L with the cut before'],
  [light({ light: 'overlap', way: 'out' }), 'O.L with the next cut'],
  [light({ light: 'expose', levels: ['A', 'B'] }), 'A,B double exposure'],
  [light({ light: 'glow', levels: ['C'] }), 'C glow'],
  [light({ light: 'effect', text: 'mist' }), 'effect “mist”'],
  [light({ light: 'effect', text: 'mist', levels: ['A'] }), 'effect “mist” on A'],
])('light is called by its kind: %o', (seen, name) => {
  expect(told({ kind: 'light-added', frames: FRAMES, ...seen })).toBe(`${name} added: 0+1 to 0+24`);
});

test('an overlap of a western form is with a scene', () => {
  const seen = light({ light: 'overlap', way: 'out' });
  expect(say(cameraIn(WEST_TERMS), { kind: 'light-dropped', frames: FRAMES, ...seen })).toBe(
    'O.L with the next scene dropped (was 0+1 to 0+24)',
  );
});

test.each([
  [light({ light: 'fade', way: 'in', white: true }), 'white', false, true, 'W.I: white (was black)'],
  [light({ light: 'overlap', way: 'in' }), 'length', 12, 24, 'O.L with the cut before: 1+0 (was 0+12)'],
  [
    light({ light: 'expose', levels: ['B'] }),
    'shares',
    '50%',
    '40%>60%',
    'B double exposure: 40% to 60% (was 50%)',
  ],
  // What the name says already is not said again.
  [light({ light: 'glow', levels: ['B'] }), 'levels', 'C', 'B', 'B glow (was level C)'],
  [light({ light: 'effect', text: 'mist' }), 'text', 'haze', 'mist', 'effect “mist” (was “haze”)'],
] as const)('the manner of light: %o %s', (seen, manner, old, now, sentence) => {
  expect(told({ kind: 'light-manner', manner, old, now, ...seen })).toBe(sentence);
});
