import { describe, expect, it } from 'vitest';
import type { Move } from '../../../../src/shot/camera/camera-model.js';
import {
  at,
  codes,
  expectSound,
  FULL,
  field,
  follow,
  leg,
  level,
  pan,
  pull,
  roll,
  type Scene,
  scale,
  shake,
  slide,
  solved,
  truck,
  turn,
} from '../build.js';

const NAN = Number.NaN;
const levels = [level('L')];

describe('numbers that make no sense', () => {
  const cases: [string, Move][] = [
    ['a field without width', pan([leg(FULL, 1, field('Z', { widthMm: 0 }), 9)])],
    ['a field with a negative width', truck([leg(FULL, 1, field('Z', { widthMm: -9 }), 9)])],
    ['a field nowhere', pan([leg(FULL, 1, field('Z', { xMm: NAN }), 9)])],
    ['a field turned without end', pan([leg(FULL, 1, field('Z', { turnDeg: Number.POSITIVE_INFINITY }), 9)])],
    ['a pull of no length', pull(['L'], 'left', NAN, 1, 9)],
    ['a pull of kilometres', pull(['L'], 'left', 1e9, 1, 9)],
    ['a pull nowhere', pull(['L'], NAN, 9, 1, 9)],
    ['a loop of nothing', pull(['L'], 'left', 9, 1, 9, { loop: 0 })],
    ['a follow of kilometres', follow(['L'], 'left', 1e9, 1, 9)],
    ['a slide to nowhere', slide(['L'], [leg(at(0, 0), 1, at(NAN, 0), 9)])],
    ['a level scaled to nothing', scale(['L'], [leg(1, 1, 0, 9)])],
    ['a level scaled below nothing', scale(['L'], [leg(-1, 1, 1, 9)])],
    ['a level scaled about nowhere', scale(['L'], [leg(1, 1, 2, 9)], { xMm: NAN, yMm: 0 })],
    ['a turn without end', turn(['L'], [leg(0, 1, Number.POSITIVE_INFINITY, 9)])],
    ['a shake of no size', shake(NAN, 0, 1, 9)],
    ['a sway in no time', roll(['L'], 5, 1, 9, 0)],
    ['a sampling of no frames', pull(['L'], 'left', 9, 1, 9, { on: 0 })],
  ];
  it.each(cases)('%s is reported and left out', (_, move) => {
    const { solved: s, diagnostics } = solved({ levels, moves: [move] });
    expect(diagnostics.map(({ code }) => code)).toContain('number-senseless');
    expect(s.moves).toEqual([]);
    expectSound(s);
  });

  it('a leg that arrives on the frame it leaves from is reported and left out', () => {
    const { solved: s, diagnostics } = solved({ moves: [pan([leg(FULL, 24, field('A', { xMm: 10 }), 24)])] });
    expect(diagnostics.map(({ code }) => code)).toEqual(['move-backwards']);
    expect(s.moves).toEqual([]);
  });

  it('of a field are reported once, and every move that uses it is left out without another word', () => {
    const Z = field('Z', { widthMm: 0 });
    const moves = [pan([leg(FULL, 1, Z, 9)]), pan([leg(Z, 9, FULL, 20)])];
    const { solved: s, diagnostics } = solved({ moves });
    expect(diagnostics.map(({ code, span }) => [code, span])).toEqual([['number-senseless', Z.span]]);
    expect(s.moves).toEqual([]);
  });
});

describe('bounds', () => {
  const senseless = (scene: Scene) => codes(scene).includes('number-senseless');
  it.each([
    ['a scale', 0.01, 0.0099, (value: number) => scale(['L'], [leg(1, 1, value, 9)])],
    ['a scale', 100, 100.1, (value: number) => scale(['L'], [leg(1, 1, value, 9)])],
    ['a way, in mm', 100_000, 100_001, (value: number) => pull(['L'], 'left', value, 1, 9)],
    ['a way backwards', -100_000, -100_001, (value: number) => pull(['L'], 'left', value, 1, 9)],
    ['degrees', 360_000, 360_001, (value: number) => turn(['L'], [leg(0, 1, value, 9)])],
    ['a period, in frames', 1, 0.9, (value: number) => roll(['L'], 5, 1, 9, value)],
    ['a loop, in mm', 0.01, 0.009, (value: number) => pull(['L'], 'left', 9, 1, 9, { loop: value })],
  ])('%s: %d is inside, %d outside', (_, inside, outside, move) => {
    expect(senseless({ levels, moves: [move(inside)] })).toBe(false);
    expect(senseless({ levels, moves: [move(outside)] })).toBe(true);
  });

  it('a shake may grow from nothing or die away, but it has to swing', () => {
    expect(senseless({ moves: [shake(0, 3, 1, 9)] })).toBe(false);
    expect(senseless({ moves: [shake(3, 0, 1, 9)] })).toBe(false);
    expect(senseless({ moves: [shake(0, 0, 1, 9)] })).toBe(true);
  });
});
