import { expect, test } from 'vitest';
import { asLength, asPosition, between, lasting, listed, millimetres } from '../../src/lsp/hover-wording.js';

test('a duration is told in frames, and in seconds and frames', () => {
  expect(lasting(48, 24)).toBe('48 frames (2+0)');
  expect(lasting(1, 24)).toBe('1 frame (0+1)');
  expect(lasting(30, 25)).toBe('30 frames (1+5)');
});

test('one frame is not a stretch of frames', () => {
  expect(between(25, 48)).toBe('frames 25–48');
  expect(between(25, 25)).toBe('frame 25');
});

// 16 frames of 35 mm film are a foot (common practice).
test('a length is told in frames, seconds and feet', () => {
  expect(asLength(24, 24)).toBe("24 frames = 1+0 = 1'08 of 35 mm film");
});

test('a position is told as its rows, and as the length up to it', () => {
  expect(asPosition(25, 24)).toBe(
    "frame 25: row 1+1, or 1'09 in feet; up to here 25 frames = 1+1 = 1'09 of 35 mm film",
  );
});

test('millimetres are rounded to two decimals', () => {
  expect(millimetres(142.875)).toBe('142.88 mm');
  expect(millimetres(254)).toBe('254 mm');
});

test('a long list is cut short, and says how many are left out', () => {
  expect(listed(['a', 'b', 'c'], 3)).toBe('a, b, c');
  expect(listed(['a', 'b', 'c', 'd'], 3)).toBe('a, b, c and 1 more');
  expect(listed([])).toBe('');
});
