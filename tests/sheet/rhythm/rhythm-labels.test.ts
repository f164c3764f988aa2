/** Words and figures on the strips. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { listPaper } from '../../../src/sheet/cut-list/cut-list-paper.js';
import { clock, labelOf, nameMarks, rulerMarks, setLabels } from '../../../src/sheet/rhythm/rhythm-labels.js';
import { listOf, row } from '../../count/rows.js';
import { lookOf, textsOf } from '../laid.js';
import { plainMetrics } from '../plain-metrics.js';

describe('cut numbers', () => {
  const room = { end: 100, lineMm: 2, highest: 8, width: (text: string) => text.length * 2 };
  const set = (...xs: number[]) =>
    setLabels(
      xs.map((x, i) => ({ text: `1${i}`, x })),
      room,
    );

  test('lie where their bar is wide enough, stand where it is not, and are left out where they cannot stand', () => {
    expect(set(0, 10, 12.5, 13.5, 30).map(({ text, upwards }) => [text, upwards])).toEqual([
      ['10', false],
      ['11', true],
      ['12', true],
      ['14', false],
    ]);
  });

  test('never lie over one another', () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.integer({ min: 0, max: 990 }), { maxLength: 80 }), (at) => {
        const labels = set(...at.sort((a, b) => a - b).map((one) => one / 10));
        for (const [i, { x, text, upwards }] of labels.slice(0, -1).entries())
          expect(x + (upwards ? 2 : text.length * 2)).toBeLessThanOrEqual(labels[i + 1]!.x + 1e-9);
      }),
    );
  });
});

test('a label that may not stand, and one that would cross a wall, are left out', () => {
  const room = { end: 100, lineMm: 2, highest: 8, width: () => 6 };
  const set = (first: object, second: object) =>
    setLabels(
      [
        { text: 'a', x: 0, ...first },
        { text: 'b', x: 1.5, ...second },
      ],
      room,
    ).map(({ text }) => text);
  expect(set({}, {})).toEqual(['a']);
  expect(set({ across: true }, {})).toEqual(['b']);
  expect(set({}, { walled: true })).toEqual(['b']);
});

test('seconds are told in minutes and seconds', () => {
  expect([0, 59, 60, 725].map(clock)).toEqual(['0:00', '0:59', '1:00', '12:05']);
});

test('a cut with errors is marked', () => {
  expect([labelOf({ cut: '12', sound: true }), labelOf({ cut: '12', sound: false })]).toEqual(['12', '12!']);
});

describe('on the strips', () => {
  const paper = { ...listPaper(lookOf(), false), metrics: plainMetrics };
  // Ten seconds on 100 mm.
  const strips = { frames: 240, count: 2, left: 10, width: 100, top: 20, pitch: 15 };
  const bands = { bar: 4, camera: 8, dialogue: 10, bottom: 12, ruler: 14 };
  const print = { labelMm: 2, smallMm: 1.5, gutterMm: 9 };

  test('a scene is named where it begins, and a cut that goes on below is named again in brackets', () => {
    const list = listOf([
      row('1', { time: 120 }, { scene: '3' }),
      row('2', { time: 240 }, { scene: '3' }),
      row('3', { time: 60 }, { scene: '4' }),
    ]);
    const texts = textsOf(nameMarks(paper, list, strips, bands, print)).map(({ text }) => text);
    expect(texts).toEqual(['1', '2', '(2)', '3', 'sc. 3', 'sc. 4']);
  });

  test('a scene whose name would reach beyond the strip is not named', () => {
    const named = (scene: string) =>
      textsOf(
        nameMarks(
          paper,
          listOf([row('1', { time: 216 }), row('2', { time: 24 }, { scene })]),
          strips,
          bands,
          print,
        ),
      ).filter(({ text }) => text.startsWith('sc.')).length;
    expect([named('4'), named('Boathouse')]).toEqual([1, 0]);
  });

  test('each strip begins with its time, and the ruler counts on', () => {
    const list = listOf([row('1', { time: 480 })]);
    const texts = textsOf(rulerMarks(paper, list, 480, strips, bands, print));
    expect(texts.filter(({ weight }) => weight === 'bold').map(({ text }) => text)).toEqual(['0:00', '0:10']);
    const [second] = texts.filter(({ text }) => text === '0:01');
    expect(second!.x).toBeCloseTo(20);
  });

  test('the end of the budget is named, before its line where there is no room behind it', () => {
    const told = (budget: number) =>
      textsOf(
        rulerMarks(paper, listOf([row('1', { time: 480 })], { budget }), 480, strips, bands, print),
      ).find(({ text }) => text.startsWith('budget'));
    expect(told(120)).toMatchObject({ text: 'budget ends 5+0', x: 61, anchor: 'start' });
    expect(told(238)).toMatchObject({ anchor: 'end' });
    expect(told(481)).toBeUndefined();
  });
});
