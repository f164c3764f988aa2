import { describe, expect, test } from 'vitest';
import {
  isConstant,
  neededArtwork,
  needsCameraChart,
} from '../../../src/sheet/camera/needed-camera-chart.js';
import { printedLengths } from '../../../src/sheet/printed-lengths.js';
import { solvedCut } from '../laid.js';

const cut = (statements: string) =>
  solvedCut(`cut 1\ntime 2+0\nlevel BG\nfield A full\nfield B 50%\n${statements}\n`);

describe('a camera chart', () => {
  test.each([
    ['pull BG left 1mm/f 1..2+0', false],
    ['pull BG left 1mm/f 1..1+0\npull BG up 1mm/f 1+1..2+0', false],
    ['pull BG left 90mm 1..2+0 ease 4', true],
    ['pull BG left 90mm 1..2+0 on 2', true],
    ['shake 2mm 1..12', false],
    ['fix B', true],
    ['truck A@1 > B@2+0', true],
  ])('%s: %s', (statements, needed) => {
    expect(needsCameraChart(cut(statements))).toBe(needed);
  });
});

test('a speed is constant where every step is like every other, the first one too', () => {
  const constant = (statement: string) => isConstant(cut(statement).camera.moves[0]!);
  expect(constant('pull BG left 2mm/f 1..2+0')).toBe(true);
  expect(constant('pull BG left 96mm 1..2+0')).toBe(true);
  expect(constant('pull BG left 96mm 1..2+0 ease 2')).toBe(false);
  expect(constant('shake 2mm 1..12')).toBe(false);
});

describe('the artwork that a pulled level needs', () => {
  const size = (statements: string, lengths: 'mm' | 'in' = 'mm') => {
    const solved = solvedCut(`cut 1\ntime 2+0\n${statements}\n`);
    return neededArtwork(solved.shot.levels[0]!, solved, printedLengths({ lengths }));
  };
  // 254 mm of the field, and 47 steps of 2 mm from the first row to the last.
  test('is the field and its way', () => {
    expect(size('level BG\npull BG left 2mm/f 1..2+0')).toBe('348 × 142.88 mm');
    expect(size('level BG\npull BG left 2mm/f 1..2+0', 'in')).toBe('13.701 × 5.625 in');
  });
  test('is not told of a loop, whose length is', () => {
    expect(size('level BG\npull BG left 2mm/f 1..2+0 loop 300mm')).toBe('');
  });
});
