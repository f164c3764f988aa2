import { describe, expect, test } from 'vitest';
import { type ExposureRun, notationOf } from '../../src/draft/exposure-runs.js';
import { shortestItems } from '../../src/draft/item-search.js';
import { itemsText } from '../../src/draft/item-text.js';

/** `1*2 1.1*2 x*4`: the runs of a level. */
function runs(text: string): ExposureRun[] {
  return text.split(' ').map((one) => {
    const [name = '', frames] = one.split('*');
    const kind = name === 'x' ? 'empty' : name.includes('.') ? 'inbetween' : 'key';
    return { drawing: name === 'x' ? null : name, kind, frames: Number(frames) };
  });
}
const written = (text: string, on = 2, cycles = true) => {
  const found = runs(text);
  return itemsText(shortestItems(found, notationOf(found), on, cycles), 24);
};
const again = (text: string, times: number) => Array.from({ length: times }, () => text).join(' ');

describe('the shortest items', () => {
  test('say a length where it is not the usual one', () => {
    expect(written('1*2 1.1*2 2*8 x*3 3*2')).toBe('1-2:8 x:3 3');
  });

  test('leave the last open where it is held', () => {
    expect(written('1*2 2*9')).toBe('1 2..');
    expect(written('1*2 2*2')).toBe('1 2');
  });

  test('say another exposure where that is shorter than lengths', () => {
    expect(written('1*3 2*3 3*3 4*3 5*3 6*3')).toBe('on 3 1 2 3 4 5 6');
    expect(written('1*3 2*2')).toBe('1:3 2');
    expect(written('1*3 2*3 3*3', 3)).toBe('1 2 3');
  });

  test('are a cycle where runs come again', () => {
    expect(written(`${again('1*2 1.1*2 2*2 2.1*2', 3)} 3*2`)).toBe('(1-2-)*3 3');
  });

  test('let a cycle run to the end, its last pass cut short', () => {
    expect(written(`${again('1*2 1.1*2 2*2 2.1*2', 3)} 1*2 1.1*1`)).toBe('(1-2-)..');
  });

  test('inside a cycle say the length of the last as well', () => {
    expect(written(`${again('1*2 2*5', 3)} 3*2`)).toBe('(1 2:5)*3 3');
  });

  test('go there and back', () => {
    expect(written(`${again('1*2 2*2 3*2 4*2 3*2 2*2', 3)} 5*2`)).toBe('(1 2 3 4)<>*3 5');
  });

  test('have no cycles where none are wanted', () => {
    expect(written(again('1*2 2*2', 3), 2, false)).toBe('1 2 1 2 1 2');
  });

  test('are none of no runs', () => {
    expect(shortestItems([], { how: [], wraps: [], whole: true }, 2)).toEqual([]);
  });
});

test('what must stand in brackets does, alone', () => {
  const found = runs('1*2 1.1*2 2*2');
  const notation = { how: ['key', 'between', 'key'], wraps: [{ first: 0, end: 2 }], whole: true } as const;
  expect(itemsText(shortestItems(found, notation, 2), 24)).toBe('(1-) 2');
});
