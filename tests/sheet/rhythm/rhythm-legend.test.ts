/** What the signs of the rhythm page mean. */

import { expect, test } from 'vitest';
import { listPaper } from '../../../src/sheet/cut-list/cut-list-paper.js';
import { legendMarks } from '../../../src/sheet/rhythm/rhythm-legend.js';
import { listOf, row } from '../../count/rows.js';
import { lookOf, textsOf } from '../laid.js';
import { plainMetrics } from '../plain-metrics.js';

const paper = { ...listPaper(lookOf(), false), metrics: plainMetrics };
const legend = (list: ReturnType<typeof listOf>, width = 1000) =>
  legendMarks(paper, list, { x: 10, y: 20, width }, 2);
const texts = (list: ReturnType<typeof listOf>) => textsOf(legend(list).marks).map(({ text }) => text);

const sound = listOf([row('1', { time: 24 })]);

test('steps of density are named up to the highest', () => {
  expect(texts(sound)).toEqual([
    'camera or level moves',
    'dialogue',
    'new drawings a second:',
    '≤ 2',
    '≤ 4',
    '≤ 8',
    '≤ 12',
    '> 12',
    'dissolve',
    'new scene',
  ]);
});

test('budget and cuts with errors are explained where there are such', () => {
  const list = listOf([row('1', { time: 24 }, { sound: false })], { budget: 48 });
  expect(texts(list).slice(-3)).toEqual(['budget ends', '12!', 'cut with errors']);
});

test('entries that find no room go on on the next line', () => {
  const [one, more] = [legend(sound), legend(sound, 60)];
  expect(one.height).toBeCloseTo(3.6);
  expect(more.height).toBeGreaterThan(3.6);
  for (const { x, text } of textsOf(more.marks)) expect(x + text.length).toBeLessThanOrEqual(70);
});

test('cuts that cannot be drawn are named, in four lines at most', () => {
  const unknown = (count: number) => listOf(Array.from({ length: count }, (_, i) => row(`${i + 1}`, null)));
  expect(texts(unknown(2)).at(-1)).toBe('Not drawn, time not known: 1, 2');
  const many = textsOf(legend(unknown(400), 100).marks).map(({ text }) => text);
  expect(many.at(-1)).toBe('…');
  expect(many.filter((text) => /^\d+, /.test(text) || text.startsWith('Not'))).toHaveLength(3);
});
