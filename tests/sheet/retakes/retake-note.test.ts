/** The retake note of a cut, as marks. */

import { describe, expect, test } from 'vitest';
import { type RetakeChange, retakePages } from '../../../src/sheet/retakes/retake-note.js';
import { PAPERS, type Settings } from '../../../src/shot/settings.js';
import { boundsOf, lookOf, overlap, said, solvedCut, textsOf } from '../laid.js';

const was = solvedCut('cut 31 "Tram, doors"\ntime 2+0\nA: 1:4-2--3..\nB: x:9 1..\n');
const is = solvedCut('cut 31 "Tram, doors"\ntime 2+0\nA: 1:6-2--3..\nB: x:9 1..\n');

const change = (text: string, more: Partial<RetakeChange> = {}): RetakeChange => ({
  text,
  place: { kind: 'level', level: 'A' },
  rows: { from: 5, to: 12 },
  differs: [],
  camera: null,
  earlierLevel: null,
  ...more,
});
const pagesOf = (changes: readonly RetakeChange[], settings: Partial<Settings> = {}, more = {}) =>
  retakePages({ was, is, changes, against: 'v3', askedBy: '', reason: '', ...more }, lookOf(settings));

describe('a note', () => {
  test('has the head of the cut, what it is against, and each change with its number', () => {
    const [page, ...others] = pagesOf([
      change('key 1 longer'),
      change('shorter', { place: null, rows: null }),
    ]);
    expect(others).toEqual([]);
    expect([page!.label, page!.part]).toEqual(['retake 1', 'note']);
    for (const text of ['Tram, doors', 'Retake note', 'against v3 · 2 changes', 'key 1 longer', 'shorter'])
      expect(said(page!)).toContain(text);
    const captions = ['no.', 'change', 'before', 'after', 'reason', 'answer'];
    for (const text of captions)
      expect(textsOf(page!.marks).filter((one) => one.text === text)).toHaveLength(1);
    expect(textsOf(page!.marks).filter(({ text }) => text === 'asked by')).toHaveLength(2);
  });

  test('says who asked and why beside each change', () => {
    const [page] = pagesOf([change('a'), change('b')], {}, { askedBy: 'R. Esk', reason: 'Lands too late' });
    expect(textsOf(page!.marks).filter(({ text }) => text === 'R. Esk')).toHaveLength(2);
    expect(textsOf(page!.marks).filter(({ text }) => text === 'Lands too late')).toHaveLength(2);
  });

  test('goes on over as many pages as it needs, changes in order, none broken', () => {
    const changes = Array.from({ length: 40 }, (_, i) => change(`change number ${i + 1}`));
    const pages = pagesOf(changes);
    expect(pages.length).toBeGreaterThan(2);
    const order = pages.flatMap(({ marks }) =>
      textsOf(marks).flatMap(({ text }) => /^change number (\d+)$/.exec(text)?.[1] ?? []),
    );
    expect(order).toEqual(changes.map((_, i) => String(i + 1)));
    expect(said(pages[1]!)).toContain(`retake 2 / ${pages.length}`);
  });

  test('is in the words of the form', () => {
    const [page] = pagesOf([change('原画1を2コマ長く')], { labels: 'ja' });
    for (const text of ['リテイク票', 'v3 と比較 · 変更 1 件', '旧', '新', '理由', '指示者', '回答'])
      expect(textsOf(page!.marks).map((one) => one.text)).toContain(text);
  });

  test.each(PAPERS.flatMap((paper) => (['en', 'ja'] as const).map((labels) => ({ paper, labels }))))(
    'on $paper in $labels: no text over another, none off the paper',
    ({ paper, labels }) => {
      const long =
        'the door leaf slides open two frames later and stays open until the end of the cut '.repeat(3);
      const pages = pagesOf(
        [change(long), change('b', { place: { kind: 'level', level: 'B' } })],
        { paper, labels },
        {
          askedBy: 'A name that is quite long for the room',
          reason: 'reason '.repeat(60),
        },
      );
      for (const { marks, widthMm, heightMm } of pages) {
        const bounds = textsOf(marks).map((text) => ({ text: text.text, ...boundsOf(text) }));
        for (const [i, one] of bounds.entries()) {
          expect(
            one.left > 3 && one.right < widthMm - 3 && one.top > 3 && one.bottom < heightMm - 3,
            one.text,
          ).toBe(true);
          for (const other of bounds.slice(i + 1))
            expect(overlap(one, other, 0.3), `${one.text} | ${other.text}`).toBe(false);
        }
      }
    },
  );
});
