import { describe, expect, it } from 'vitest';
import { clockwise, counterClockwise, turnOf } from '../../../src/solve/camera/plane-turns.js';

describe('a turn', () => {
  it.each([
    [0, 1, 0],
    [90, 0, 1],
    [180, -1, 0],
    [270, 0, -1],
    [360, 1, 0],
    [-90, 0, -1],
    [-720, 1, 0],
  ])('by %d degrees is exact', (degrees, cos, sin) => {
    expect(turnOf(degrees)).toEqual({ cos, sin });
  });

  it.each([0.125, 30, 45, 89.5])('by %d + 180 degrees has exactly the opposite signs', (degrees) => {
    const { cos, sin } = turnOf(degrees);
    expect(turnOf(degrees + 180)).toEqual({ cos: -cos, sin: -sin });
    expect(cos).toBeCloseTo(Math.cos((degrees * Math.PI) / 180), 15);
    expect(sin).toBeCloseTo(Math.sin((degrees * Math.PI) / 180), 15);
  });

  it('takes right to below, up to right; and back', () => {
    const quarter = turnOf(90);
    expect(clockwise(quarter, 1, 0)).toEqual({ x: 0, y: -1 });
    expect(clockwise(quarter, 0, 1)).toEqual({ x: 1, y: 0 });
    expect(counterClockwise(quarter, 0, -1)).toEqual({ x: 1, y: 0 });
  });

  it('back of a turn is where one was', () => {
    const t = turnOf(33);
    const { x, y } = clockwise(t, 7, -11);
    const back = counterClockwise(t, x, y);
    expect(back.x).toBeCloseTo(7, 13);
    expect(back.y).toBeCloseTo(-11, 13);
  });
});
