import { describe, expect, test } from 'vitest';
import { type ExposureRun, notationOf, type RunNotation } from '../../src/draft/exposure-runs.js';
import {
  type DraftItem,
  type DraftLength,
  framesText,
  itemsText,
  sharePhrases,
  shortestItems,
} from '../../src/draft/item-search.js';

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

function item(
  drawing: string | null,
  how: RunNotation,
  length: DraftLength = 'on',
  breakdown = false,
): DraftItem {
  const kind = drawing === null ? 'empty' : how === 'key' ? 'key' : breakdown ? 'breakdown' : 'inbetween';
  return { kind: 'item', run: { drawing, kind, frames: 2 }, how, length };
}
const key = (name: string, length?: DraftLength) => item(name, 'key', length);
const dash = (length?: DraftLength) => item('1.1', 'between', length);
const text = (...pieces: DraftItem[]) => itemsText(pieces, 24);

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

const LONG = '1:4--2:6=3--4:2 5:7-6';
const shared = (levels: Record<string, string>) => sharePhrases(new Map(Object.entries(levels)));

describe('a cycle that stands in several places', () => {
  test('becomes a phrase, and the levels play it', () => {
    const { phrases, items } = shared({ A: `(${LONG})*3 5..`, B: `6:2 (${LONG})..`, C: `(${LONG})<>*2 6..` });
    expect(phrases).toEqual([`phrase cycle1 = ${LONG}`]);
    expect([...items]).toEqual([
      ['A', 'cycle1*3 5..'],
      ['B', '6:2 cycle1..'],
      ['C', 'cycle1<>*2 6..'],
    ]);
  });

  test('is left where a phrase would not make the text shorter', () => {
    expect(shared({ A: '(1-2)*3', B: '(1-2)*4' })).toEqual({ phrases: [], items: new Map() });
    expect(shared({ A: `(${LONG})*3` }).phrases).toEqual([]);
  });

  test('leaves the levels alone that do not play it', () => {
    const { items } = shared({ A: `(${LONG})*3`, B: '1..', C: `(${LONG})*2` });
    expect([...items.keys()]).toEqual(['A', 'C']);
  });
});

test('the phrase that saves most is the first, and there are six at most', () => {
  const bodies = Array.from({ length: 8 }, (_, i) => `${LONG}-${'7-'.repeat(i + 1)}8`);
  const text = bodies.map((body) => `(${body})*2`).join(' ');
  const { phrases, items } = shared({ A: text, B: text });
  expect(phrases).toHaveLength(6);
  expect(phrases[0]).toBe(`phrase cycle1 = ${bodies[7]}`);
  expect(items.get('A')).toContain(`(${bodies[0]})*2`);
});
