import fc from 'fast-check';
import { expect, test } from 'vitest';
import { labelsIn } from '../../../src/sheet/camera-pages/chart-labels.js';
import type { Pt } from '../../../src/sheet/display-list.js';
import { linesOf, textsOf } from '../laid.js';
import { plainMetrics } from '../plain-metrics.js';

const page = { x: 0, y: 0, width: 100, height: 60 };
/** Four characters of 2 mm are 4 mm wide. */
const label = (text: string, ...places: Pt[]) => ({ text, sizeMm: 2, places });

test('a text stands at the first place that is free', () => {
  const labels = labelsIn(page, plainMetrics);
  expect(labels.put(label('abcd', [50, 30], [50, 40]))).toBe(true);
  expect(labels.put(label('efgh', [53, 30], [60, 30]))).toBe(true);
  // 4 mm and 0.4 mm on either side: at 54.9 they do not touch.
  expect(labels.put(label('ijkl', [45.1, 30]))).toBe(true);
  expect(textsOf(labels.marks).map(({ text, x }) => [text, x])).toEqual([
    ['abcd', 50],
    ['efgh', 60],
    ['ijkl', 45.1],
  ]);
});

test('it is not set where it would cover another one, or leave the drawing', () => {
  const labels = labelsIn(page, plainMetrics);
  labels.put(label('abcd', [50, 30]));
  expect(labels.put(label('efgh', [53, 31]))).toBe(false);
  expect(labels.put(label('efgh', [1, 30], [99, 30], [50, 0.5], [50, 59.5]))).toBe(false);
  expect(textsOf(labels.marks)).toHaveLength(1);
});

test('it keeps off lines; where none of its places does, it stands on the fewest, on white', () => {
  const labels = labelsIn(page, plainMetrics);
  labels.avoid([0, 30, 100, 30]);
  labels.avoid([50, 0, 50, 60]);
  labels.put(label('abcd', [50, 30], [20, 30], [20, 20]));
  labels.put(label('efgh', [50, 30], [80, 30]));
  expect(labels.marks.map(({ kind }) => kind)).toEqual(['text', 'path', 'text']);
  expect(textsOf(labels.marks).map(({ x }) => x)).toEqual([20, 80]);
  expect(labels.marks[1]).toMatchObject({ fill: 'paper' });
});

test('what must be set stands away where it has to, with a thin line from its place', () => {
  const labels = labelsIn(page, plainMetrics);
  labels.put(label('abcd', [50, 30]));
  expect(labels.put({ ...label('efgh', [50, 30]), must: true })).toBe(true);
  const [, away] = textsOf(labels.marks);
  const [leader] = linesOf(labels.marks);
  expect([leader!.x1, leader!.y1]).toEqual([50, 30]);
  expect(Math.hypot(away!.x - 50, leader!.y2 - 30)).toBeLessThan(6);
});

test('a leader goes to what is named, but only from further away than it says', () => {
  const ring = { sizeMm: 2, ringed: true, leader: { to: [50, 30] as Pt, beyondMm: 7 } };
  const labels = labelsIn(page, plainMetrics);
  labels.put({ ...ring, text: '1', places: [[50, 24]] });
  expect(linesOf(labels.marks)).toEqual([]);
  labels.put({ ...ring, text: '2', places: [[50, 38]] });
  expect(linesOf(labels.marks)).toMatchObject([{ x1: 50, y1: 30, x2: 50, y2: 38 }]);
});

test('a leader runs through no other label where there is a place that keeps it clear', () => {
  const labels = labelsIn(page, plainMetrics);
  labels.put(label('abcd', [50, 24]));
  const leader = { to: [50, 30] as Pt, beyondMm: 7 };
  labels.put({
    sizeMm: 2,
    ringed: true,
    leader,
    text: '1',
    places: [
      [50, 18],
      [50, 42],
    ],
  });
  expect(linesOf(labels.marks)).toMatchObject([{ x2: 50, y2: 42 }]);
  // And later labels keep off it.
  labels.put(label('efgh', [50, 36], [60, 36]));
  expect(textsOf(labels.marks).at(-1)!.x).toBe(60);
});

test('further places are looked at only where a leader would run through a label', () => {
  const at = (taken: boolean): number => {
    const labels = labelsIn(page, plainMetrics);
    labels.avoid([0, 20, 100, 20]);
    if (taken) labels.put(label('abcd', [50, 24]));
    const leader = { to: [50, 30] as Pt, beyondMm: 7 };
    labels.put({ sizeMm: 2, ringed: true, leader, text: '1', places: [[50, 20]], otherwise: [[58, 22.5]] });
    return textsOf(labels.marks).at(-1)!.x;
  };
  expect([at(false), at(true)]).toEqual([50, 58]);
});

test('a ring holds its text', () => {
  for (const text of ['1', '10', '100a']) {
    const labels = labelsIn(page, plainMetrics);
    labels.put({ ...label(text, [50, 30]), ringed: true });
    const [ring] = labels.marks;
    if (ring?.kind !== 'circle') throw new Error('no ring');
    // Half a figure is 1 mm wide; its corners are as high as two thirds of the print.
    expect(ring.r).toBeGreaterThanOrEqual(Math.hypot(text.length / 2, 0.7) - 0.2);
    expect([ring.x, ring.y]).toEqual([50, 30]);
  }
});

test('whatever is set, nothing covers anything, and all of it stands in the drawing', () => {
  const at = fc.tuple(fc.integer({ min: -5, max: 105 }), fc.integer({ min: -5, max: 65 }));
  const any = fc.record({
    text: fc.constantFrom('1', 'ab', 'abcdef'),
    places: fc.array(at, { minLength: 1, maxLength: 3 }),
    ringed: fc.boolean(),
    must: fc.boolean(),
  });
  fc.assert(
    fc.property(fc.array(any, { maxLength: 25 }), (all) => {
      const labels = labelsIn(page, plainMetrics);
      const set = all.filter((one) => labels.put({ ...one, sizeMm: 2 }));
      const texts = textsOf(labels.marks);
      expect(texts.map(({ text }) => text)).toEqual(set.map(({ text }) => text));
      const rings = labels.marks.filter((mark) => mark.kind === 'circle');
      let ring = 0;
      const boxes = texts.map(({ x, text, sizeMm, y }, i) => {
        const r = set[i]!.ringed ? rings[ring++]!.r : null;
        // The baseline is 0.35 of the size below the middle, within a tenth of a mm.
        const half = r === null ? [(text.length * sizeMm) / 4, sizeMm * 0.35] : [r, r];
        return { x, y: r === null ? y - sizeMm * 0.36 : rings[ring - 1]!.y, w: half[0]!, h: half[1]! };
      });
      boxes.forEach((a, i) => {
        expect(a.x - a.w >= 0 && a.x + a.w <= 100 && a.y - a.h >= 0 && a.y + a.h <= 60).toBe(true);
        for (const b of boxes.slice(i + 1))
          expect(Math.abs(a.x - b.x) >= a.w + b.w - 1e-6 || Math.abs(a.y - b.y) >= a.h + b.h - 1e-6).toBe(
            true,
          );
      });
    }),
    { numRuns: 200 },
  );
});
