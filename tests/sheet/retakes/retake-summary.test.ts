/** The summary of an episode's retakes, as marks. */

import { expect, test } from 'vitest';
import { retakeSummaryPages, type SummaryRow } from '../../../src/sheet/retakes/retake-summary.js';
import { lookOf, said, textsOf } from '../laid.js';

const row = (cut: string, more: Partial<SummaryRow> = {}): SummaryRow => ({
  cut,
  title: `Gulls ${cut}`,
  time: '3+0',
  where: 'A, camera',
  changes: 2,
  ...more,
});

test('has a row a cut, in order, with its figures', () => {
  const rows = [row('4', { time: '3+0 → 3+6' }), row('11A', { where: 'new cut', changes: 0, title: '' })];
  const [page, ...others] = retakeSummaryPages({ work: 'Tide 7', against: 'take-1', rows }, lookOf());
  expect(others).toEqual([]);
  const texts = textsOf(page!.marks).map(({ text }) => text);
  for (const text of [
    'Retakes  Tide 7',
    'against take-1 · 2 cuts',
    '3+0 → 3+6',
    'Gulls 4',
    'A, camera',
    '2',
    'new cut',
  ])
    expect(texts).toContain(text);
  const y = (text: string) => textsOf(page!.marks).find((one) => one.text === text)!.y;
  expect(y('11A')).toBeGreaterThan(y('4'));
  // A cut without a note has no number of changes.
  expect(texts.filter((text) => text === '0')).toEqual([]);
});

test('goes on over pages, each with its number', () => {
  const rows = Array.from({ length: 90 }, (_, i) => row(String(i + 1)));
  const pages = retakeSummaryPages({ work: '', against: 'v1', rows }, lookOf({ labels: 'ja' }));
  expect(pages.length).toBeGreaterThan(2);
  const cuts = pages.flatMap(({ marks }) =>
    textsOf(marks).flatMap(({ text, weight }) => (/^\d+$/.test(text) && weight === 'bold' ? [text] : [])),
  );
  expect(cuts).toEqual(rows.map(({ cut }) => cut));
  expect(said(pages[0]!)).toContain('リテイク一覧');
});

test('breaks a long title and a long list of places inside their columns', () => {
  const [page] = retakeSummaryPages(
    {
      work: 'w',
      against: 'v1',
      rows: [row('1', { title: 'long title '.repeat(20), where: 'A, B, C, '.repeat(20) })],
    },
    lookOf({ paper: 'B5' }),
  );
  const titles = textsOf(page!.marks).filter(({ text }) => text.startsWith('long'));
  expect(titles.length).toBeGreaterThan(2);
  expect(new Set(titles.map(({ x }) => x)).size).toBe(1);
});
