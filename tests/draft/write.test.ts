import { describe, expect, test } from 'vitest';
import type { Length, Piece } from '../../src/draft/items.js';
import type { Typed } from '../../src/draft/runs.js';
import { framesText, itemsText } from '../../src/draft/write.js';

function item(drawing: string | null, how: Typed, length: Length = 'on', breakdown = false): Piece {
  const kind = drawing === null ? 'empty' : how === 'key' ? 'key' : breakdown ? 'breakdown' : 'inbetween';
  return { kind: 'item', run: { drawing, kind, frames: 2 }, how, length };
}
const key = (name: string, length?: Length) => item(name, 'key', length);
const dash = (length?: Length) => item('1.1', 'between', length);
const text = (...pieces: Piece[]) => itemsText(pieces, 24);

describe('items as text', () => {
  test('dashes stand close to their keys, keys apart from each other', () => {
    expect(text(key('1'), dash(), dash(), key('2'), key('3'))).toBe('1--2 3');
  });

  test('a breakdown is its own sign', () => {
    expect(text(key('1'), item('1.1', 'between', 'on', true), key('2'))).toBe('1=2');
  });

  test('lengths stand behind, a hold to the end as two dots', () => {
    expect(text(key('1', 4), dash(3), key('2', 'open'))).toBe('1:4-:3 2..');
  });

  test('a dash keeps off two dots', () => {
    expect(text(key('1', 'open'), dash())).toBe('1.. -');
  });

  test('an empty level is an x, a reference its name without the count', () => {
    expect(text(item(null, 'empty', 6), item('1>3.2/4', 'reference'))).toBe('x:6 1>3.2');
  });

  test('another exposure is said before what it holds for', () => {
    expect(text({ kind: 'on', frames: 3 }, key('1'))).toBe('on 3 1');
  });

  test.each([
    [{ times: 1 }, false, '(1-2)'],
    [{ times: 3 }, false, '(1-2)*3'],
    [{ times: 3 }, true, '(1-2)<>*3'],
    ['open', false, '(1-2)..'],
  ] as const)('a group, %j', (repeat, bounce, wanted) => {
    expect(text({ kind: 'group', body: [key('1'), dash(), key('2')], bounce, repeat })).toBe(wanted);
  });
});

test.each([
  [23, '23'],
  [24, '1+0'],
  [30, '1+6'],
])('%d frames: %s', (frames, wanted) => {
  expect(framesText(frames, 24)).toBe(wanted);
});
