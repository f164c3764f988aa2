/** The picture of an episode: legible on every paper, and true. */

import { describe, expect, test } from 'vitest';
import type { CutList } from '../../../src/count/count-episode.js';
import { listPaper } from '../../../src/sheet/cut-list/cut-list-paper.js';
import type { Mark, Page } from '../../../src/sheet/display-list.js';
import { legendMarks, rhythmPage } from '../../../src/sheet/rhythm/rhythm-page.js';
import { smallestTextMm } from '../../../src/sheet/sheet-geometry.js';
import { PAPERS, type Settings } from '../../../src/shot/settings.js';
import { listOf, row } from '../../count/rows.js';
import { everyMark, offThePaper, textClashes, tooSmall } from '../clashes.js';
import { listOfCuts } from '../cut-list/lists.js';
import { boundsOf, type Line, linesOf, lookOf, overlap, textsOf } from '../laid.js';
import { plainMetrics } from '../plain-metrics.js';

const LOOKS: Pick<Settings, 'paper' | 'convention' | 'labels'>[] = PAPERS.flatMap((paper) =>
  (['japan', 'west'] as const).flatMap((convention) =>
    (['en', 'ja'] as const).map((labels) => ({ paper, convention, labels })),
  ),
);

const lists = [1, 27, 300].map((cuts) => ({ cuts, list: listOfCuts(cuts) }));

/** Black lines along the edges of the paper that run through a text. */
function struck(page: Page): string[] {
  const texts = textsOf(page.marks).map((text) => ({ text: text.text, bounds: boundsOf(text) }));
  const straight = linesOf(page.marks).filter(
    ({ x1, x2, y1, y2, stroke }) => stroke.ink === 'black' && (x1 === x2 || y1 === y2),
  );
  return straight.flatMap((line) => {
    const half = line.stroke.widthMm / 2;
    const bounds = {
      left: Math.min(line.x1, line.x2) - half,
      right: Math.max(line.x1, line.x2) + half,
      top: Math.min(line.y1, line.y2) - half,
      bottom: Math.max(line.y1, line.y2) + half,
    };
    return texts
      .filter((one) => overlap(one.bounds, bounds, 0.02))
      .map(({ text }) => `line at ${line.x1}, ${line.y1} through “${text}”`);
  });
}

function faults(page: Page, paper: Settings['paper']): string[] {
  const { widthMm, heightMm } = page;
  const outside = page.marks
    .flatMap(pointsOf)
    .filter(([x, y]) => !(x > 4 && x < widthMm - 4 && y > 4 && y < heightMm - 4))
    .map(([x, y]) => `a mark at ${x}, ${y}`);
  return [
    ...offThePaper(page),
    ...outside,
    ...tooSmall(page, smallestTextMm(paper)),
    ...textClashes(everyMark(page)),
    ...struck(page),
  ];
}

describe.each(LOOKS)('$paper $convention $labels', (look) => {
  test.each(lists)('print of $cuts cuts is apart, in reach and large enough', ({ list }) => {
    const page = rhythmPage(list, lookOf(look));
    expect(faults(page, look.paper)).toEqual([]);
    expect(page.widthMm).toBeGreaterThan(page.heightMm);
  });
});

test('3,000 cuts, far more than can be named, are still in order', () => {
  expect(faults(rhythmPage(listOfCuts(3000), lookOf({ paper: 'A3' })), 'A3')).toEqual([]);
});

function pointsOf(mark: Mark): (readonly [number, number])[] {
  if (mark.kind === 'line')
    return [
      [mark.x1, mark.y1],
      [mark.x2, mark.y2],
    ];
  if (mark.kind === 'path') return [...mark.points];
  if (mark.kind === 'hatch')
    return [
      [mark.x, mark.y],
      [mark.x + mark.width, mark.y + mark.height],
    ];
  return [];
}

const numbersOn = (page: Page, list: CutList): Set<string> => {
  const known = new Set(list.rows.map(({ cut, sound }) => (sound ? cut : `${cut}!`)));
  return new Set(
    textsOf(page.marks)
      .filter(({ weight }) => weight === 'bold')
      .map(({ text }) => text)
      .filter((text) => known.has(text)),
  );
};

describe('300 cuts of 22 minutes', () => {
  const list = listOfCuts(300);

  test.each(['A3', 'A4'] as const)('most are named on %s, though one in six lasts no second', (paper) => {
    const shown = numbersOn(rhythmPage(list, lookOf({ paper })), list).size;
    expect(shown).toBeGreaterThan(255);
  });
});

test('the longest number stands upright where its cut is short', () => {
  const rows = Array.from({ length: 80 }, (_, i) => row(`${100 + i}A`, { time: i % 2 === 0 ? 18 : 120 }));
  const list = listOf(rows);
  expect(numbersOn(rhythmPage(list, lookOf()), list).size).toBe(80);
});

describe('true to the running time', () => {
  // One strip of 30 seconds.
  const list = listOf(
    [
      row(
        '1',
        {
          time: 120,
          rows: 126,
          handles: { head: 0, tail: 6 },
          overlap: { in: 0, out: 12 },
          rhythm: { moving: [{ from: 25, to: 48 }], spoken: [{ from: 49, to: 96 }], fresh: [1, 1, 1] },
        },
        { scene: '1' },
      ),
      row(
        '2',
        { time: 240, rows: 246, handles: { head: 6, tail: 0 }, overlap: { in: 12, out: 0 } },
        { scene: '1' },
      ),
      row('3', { time: 240 }, { scene: '2', sound: false }),
      row('4', null, { sound: false }),
    ],
    { budget: 560 },
  );
  const page = rhythmPage(list, lookOf());
  const texts = textsOf(page.marks);
  const lines = linesOf(page.marks);
  const upright = (x: number): Line[] =>
    lines.filter(({ x1, x2, stroke }) => x1 === x2 && Math.abs(x1 - x) < 0.01 && stroke.ink === 'black');
  // The ruler's ten and twenty seconds give the scale.
  const at = (clock: string): number => texts.find(({ text }) => text === clock)!.x;
  const secondMm = (at('0:20') - at('0:10')) / 10;
  const x = (frames: number): number => at('0:10') + (frames / 24 - 10) * secondMm;

  test('the ruler is even', () => {
    expect(at('0:14') - at('0:10')).toBeCloseTo(4 * secondMm, 6);
  });

  test('cuts begin where the ones before them end', () => {
    expect(upright(x(360)).length).toBeGreaterThan(0);
    expect(upright(x(600)).length).toBeGreaterThan(0);
  });

  test('an overlap is crossed over its frames, without an edge', () => {
    expect(upright(x(120))).toEqual([]);
    const crossed = lines.filter(
      ({ x1, x2 }) => Math.abs(x1 - x(114)) < 0.01 && Math.abs(x2 - x(126)) < 0.01,
    );
    expect(crossed).toHaveLength(2);
    expect(crossed[0]!.y1).toBeCloseTo(crossed[1]!.y2, 6);
  });

  test('a new scene is marked by a heavier line than a cut, and named', () => {
    const widths = (frames: number) => Math.max(...upright(x(frames)).map(({ stroke }) => stroke.widthMm));
    expect(widths(360)).toBeGreaterThan(widths(0));
    expect(texts.find(({ text }) => text === 'sc. 2')!.x).toBeGreaterThan(x(360));
  });

  test('camera and dialogue lie on their rows', () => {
    const hatches = page.marks.filter((mark) => mark.kind === 'hatch');
    expect(
      hatches.some((hatch) => Math.abs(hatch.x - x(24)) < 0.01 && Math.abs(hatch.width - secondMm) < 0.01),
    ).toBe(true);
    const ruled = lines.filter(
      ({ x1, x2, y1, y2 }) => y1 === y2 && Math.abs(x1 - x(48)) < 0.01 && Math.abs(x2 - x(96)) < 0.01,
    );
    expect(ruled).toHaveLength(3);
  });

  test('three new drawings in the first second stand two steps high, and nothing stands where nothing is new', () => {
    const blocks = page.marks.flatMap((mark) =>
      mark.kind === 'path' && mark.fill === 'grey' && mark.points[0]![1] < 120 ? [mark] : [],
    );
    expect(blocks).toHaveLength(1);
    const [[left, top], , [right, bottom]] = blocks[0]!.points as [
      [number, number],
      unknown,
      [number, number],
    ];
    expect([left, right].map((one) => one.toFixed(2))).toEqual([x(0), x(24)].map((one) => one.toFixed(2)));
    const whole = upright(x(0)).find(({ y1 }) => y1 < top)!;
    expect((bottom - top) / (bottom - whole.y1 - 0.4)).toBeCloseTo(2 / 5, 1);
  });

  test('the end of the budget is a double line at its frame, named', () => {
    expect(upright(x(560) - 0.35).length).toBe(1);
    expect(upright(x(560) + 0.35).length).toBe(1);
    expect(texts.map(({ text }) => text)).toContain('budget ends 23+8');
  });

  test('cuts with errors are marked, and one without a time is named below', () => {
    expect(texts.map(({ text }) => text)).toEqual(
      expect.arrayContaining(['3!', 'Not drawn, time not known: 4']),
    );
  });
});

test('an empty stretch up to the budget is shown where the cuts end before it', () => {
  const rows = Array.from({ length: 10 }, (_, i) => row(String(i + 1), { time: 240 }));
  const near = textsOf(rhythmPage(listOf(rows, { budget: 2700 }), lookOf()).marks).map(({ text }) => text);
  expect(near).toContain('budget ends 112+12');
  // A budget far away would leave most of the page white.
  const far = textsOf(rhythmPage(listOf(rows, { budget: 24_000 }), lookOf()).marks).map(({ text }) => text);
  expect(far.some((text) => text.startsWith('budget ends '))).toBe(false);
});

test('an episode without any known time is still a page', () => {
  const page = rhythmPage(listOf([row('1', null, { sound: false })]), lookOf());
  expect(textsOf(page.marks).map(({ text }) => text)).toContain('Not drawn, time not known: 1');
});

// ---- what the signs of the rhythm page mean

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
    'overlap',
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
