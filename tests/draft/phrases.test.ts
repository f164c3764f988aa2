import { describe, expect, test } from 'vitest';
import { sharePhrases } from '../../src/draft/phrases.js';

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
