import { describe, expect, test } from 'vitest';
import type { RunNotation } from '../../src/draft/exposure-runs.js';
import type { DraftItem, DraftLength } from '../../src/draft/item-search.js';
import { framesText, itemsText, sharePhrases } from '../../src/draft/item-text.js';

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
