import { describe, expect, test } from 'vitest';
import { ItemTiming } from '../../../src/language/format/item-frames.js';
import { parse } from '../../../src/language/parse.js';

/** Frames before each item of the timeline A; an item that has none is left out. */
function framesBefore(items: string, lines = '', speed = { fps: 24, on: 2 }): [string, number][] {
  const text = `A: ${items}\n${lines}\n`;
  const { statements } = parse('this.cut', text).tree;
  const [timeline] = statements;
  if (timeline?.kind !== 'timeline') throw new Error('no timeline');
  const found = new ItemTiming(statements, speed).before(timeline.items);
  return timeline.items.flatMap(({ span }): [string, number][] => {
    const frames = found.get(span.start);
    return frames === undefined ? [] : [[text.slice(span.start, span.end), frames]];
  });
}
const last = (...of: Parameters<typeof framesBefore>) => framesBefore(...of).at(-1);

describe('frames before an item', () => {
  test('are those of the items before it', () => {
    expect(framesBefore('1:3 - 2:1+0 x')).toEqual([
      ['1:3', 0],
      ['-', 3],
      ['2:1+0', 5],
      ['x', 29],
    ]);
  });

  test.each([
    ['(1 2)*3 9', 12],
    ['(1 2):7 9', 7],
    ['(1--2)<> 9', 12],
    ['(on 3 1 2 on 2)<> 9', 6],
    ['((1)*2 2)*2 9', 12],
    ['(on 3 1 2)*2 9', 12],
    ["1:1'04 9", 20],
    ['on 3 1 9', 3],
  ])('%s: the last has %d', (items, frames) => {
    expect(last(items)?.[1]).toBe(frames);
  });

  test('go by what the cut says, else by the episode', () => {
    expect(last('1:1+0 9', '', { fps: 30, on: 2 })).toEqual(['9', 30]);
    expect(last('1:1+0 9', 'fps 12', { fps: 30, on: 2 })).toEqual(['9', 12]);
    expect(last('1 9', '', { fps: 24, on: 3 })).toEqual(['9', 3]);
    expect(last('1 9', 'on 4', { fps: 24, on: 3 })).toEqual(['9', 4]);
  });

  test('are known again behind an @', () => {
    expect(framesBefore('1.. @25 2')).toEqual([
      ['1..', 0],
      ['@25', 24],
      ['2', 24],
    ]);
    expect(last('1 @hit+1 2', 'mark hit 1+0')).toEqual(['2', 24]);
  });

  test('are not known behind what goes on, or by names that stand elsewhere', () => {
    expect(framesBefore('1.. 2')).toEqual([['1..', 0]]);
    expect(framesBefore('walk 2')).toEqual([['walk', 0]]);
    expect(framesBefore('1 @hit 2')).toEqual([['1', 0]]);
    expect(last('walk:8 2')).toEqual(['2', 8]);
  });

  test('are those of phrases that the text has', () => {
    expect(last('walk*2 9', 'phrase walk = 1--2')).toEqual(['9', 16]);
  });

  test('are not looked for in circles', () => {
    expect(framesBefore('a 9', 'phrase a = a')).toEqual([['a', 0]]);
    expect(framesBefore('1 @m 9', 'mark m m+1')).toEqual([['1', 0]]);
  });
});
