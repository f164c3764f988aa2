import { expect, it } from 'vitest';
import { lightOfInk } from '../../src/picture/lit-drawing.js';

function lit(...rgba: [number, number, number, number]): number[] {
  const pixels = Uint8ClampedArray.from(rgba);
  lightOfInk(pixels);
  return [...pixels];
}

it('makes ink light, paper nothing, and grey half of it', () => {
  expect(lit(0, 0, 0, 255)).toEqual([255, 243, 200, 255]);
  expect(lit(255, 255, 255, 255)[3]).toBe(0);
  expect(lit(128, 128, 128, 255)[3]).toBe(127);
});

it('leaves dark what is transparent', () => {
  expect(lit(0, 0, 0, 0)[3]).toBe(0);
  expect(lit(0, 0, 0, 100)[3]).toBe(100);
});
