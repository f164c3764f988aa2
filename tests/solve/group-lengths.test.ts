import { describe, expect, test } from 'vitest';
import type { Group, Leaf, ShotItem } from '../../src/shot/shot.js';
import {
  lastLeaf,
  lastOfPass,
  leafAt,
  natural,
  onceThrough,
  passFrames,
} from '../../src/solve/group-lengths.js';
import { bindText } from '../shot/bind.js';

/** The items of a timeline; the sheet is longer than any of them. */
function items(text: string): readonly ShotItem[] {
  const { shot } = bindText(`cut 1\ntime 100+0\nA: ${text}\n`);
  return shot!.levels.find(({ name }) => name === 'A')!.timeline!.items;
}
const group = (text: string): Group => {
  const [only] = items(text);
  if (only?.kind !== 'group') throw new Error('no group');
  return only;
};
const nameOf = (leaf: Leaf): string => (leaf.kind === 'key' ? leaf.name : leaf.kind);

describe('frames once through', () => {
  test.each([
    ['1:3 2:4', 7],
    ['1--2', 8],
    ['1:3 @10 2:4', 7],
    ['(1 2)*3', 12],
    ['(1:2 2:3):9', 9],
    ['((1:1 2:1)*2 3:1)*2', 10],
  ])('%s: %d', (text, frames) => {
    expect(onceThrough(items(text))).toBe(frames);
  });

  test('of more passes than any sheet has are counted, not played', () => {
    expect(onceThrough(items('((((1)*9999)*9999)*9999)*9999'))).toBe(1e15);
  });
});

describe('frames of a pass', () => {
  test.each([
    ['(1:2 2:3 3:4)*2', 9],
    // There, and back without the two ends.
    ['(1:2 2:3 3:4)<>*2', 12],
    ['(1:2 2:3)<>*2', 5],
    ['(1:2)<>*2', 2],
  ])('%s: %d', (text, frames) => {
    expect(passFrames(group(text))).toBe(frames);
  });
});

test('an open group lasts one pass by itself', () => {
  expect(natural(group('(1:2 2:3)..'))).toBe(5);
});

describe('what is seen some frames into the items', () => {
  const seen = (text: string, frames: number): string =>
    Array.from({ length: frames }, (_, i) => nameOf(leafAt(items(text), i).leaf)).join('');

  test.each([
    ['1:2 2:3', 5, '11222'],
    ['(1:1 2:2)*2', 6, '122122'],
    ['(1:1 2:2 3:1)<>*2', 12, '122322122322'],
    ['(1:2 2:2):3', 3, '112'],
  ])('%s', (text, frames, drawings) => {
    expect(seen(text, frames)).toBe(drawings);
  });

  test('with where it starts and how long it is seen', () => {
    expect(leafAt(items('1:2 (2:3 3:4)*2'), 10)).toMatchObject({ start: 9, frames: 3 });
    expect(leafAt(items('1:2 (2:3 3:4):5'), 6)).toMatchObject({ start: 5, frames: 2 });
  });
});

test.each([
  ['(1:2 2:3)*2', '2'],
  ['(1:2 2:3 3:1)<>*2', '2'],
  ['(1:2 2:3):4', '2'],
  ['(1:2 2:3):6', '1'],
])('%s shows last %s', (text, drawing) => {
  expect(nameOf(lastLeaf(group(text)).leaf)).toBe(drawing);
});

describe('what a way there and back ends on', () => {
  test('is the second drawing of the way', () => {
    expect(nameOf(lastOfPass(group('(1:2 2:3 3:1)<>*2'))!)).toBe('2');
  });

  test('passes over references', () => {
    expect(nameOf(lastOfPass(group('(1:2 1.1:2 2:3)<>*2'))!)).toBe('2');
  });
});
