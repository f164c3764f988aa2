import { describe, expect, it } from 'vitest';
import type { Mark, Page } from '../../src/sheet/display-list.js';
import { chartPages, neededChartPages } from '../../src/sheet/inbetween-chart-pages.js';
import type { PageLook } from '../../src/sheet/page-look.js';
import { defaults, PAPERS, type Settings } from '../../src/shot/settings.js';
import type { Exposure, SolvedLevel, SolvedPassage, SolvedShot } from '../../src/solve/solved-shot.js';

type Text = Extract<Mark, { kind: 'text' }>;

const metrics = { width: (text: string, sizeMm: number) => text.length * sizeMm * 0.55 };
const look = (settings: Partial<Settings> = {}): PageLook => ({
  settings: { ...defaults, ...settings },
  metrics,
  stamp: '1a2b3c4d',
});

type Way = readonly [from: string, to: string, fractions: readonly number[], chart?: SolvedPassage['chart']];

/** A level whose keys stand for six frames and its in-betweens for two; every second in-between is a breakdown. */
function level(name: string, ways: readonly Way[]): SolvedLevel {
  const passages = ways.map(
    ([from, to, fractions, chart = 'even'], i): SolvedPassage => ({
      from,
      to,
      fractions,
      chart,
      drawings: fractions.map((_, j) => `${from}.${j + 1}`),
      firstFrame: 1 + i,
      span: { file: '', start: 0, end: 0 },
    }),
  );
  const order = [...new Set(passages.flatMap((p) => [p.from, ...p.drawings, p.to]))];
  const kindOf = (drawing: string) =>
    !drawing.includes('.') ? 'key' : drawing.endsWith('.2') ? 'breakdown' : 'inbetween';
  const exposures: Exposure[] = order.flatMap((drawing, i) =>
    Array.from({ length: drawing.includes('.') ? 2 : 6 }, (_, j) => ({
      frame: 0,
      kind: kindOf(drawing),
      drawing,
      cel: i + 1,
      starts: j === 0,
      again: false,
      back: false,
    })),
  );
  return {
    name,
    title: `what ${name} shows`,
    background: false,
    timed: true,
    exposures: exposures.map((exposure, i) => ({ ...exposure, frame: i + 1 })),
    drawings: order.map((drawing, i) => ({
      cel: i + 1,
      drawing,
      kind: kindOf(drawing),
      firstFrame: 1,
      exposedFrames: 2,
      added: false,
      reused: false,
    })),
    passages,
    cycles: [],
    lastCel: order.length,
    missing: [],
    reuse: null,
    inherited: { drawings: [], passages: [] },
  };
}

function solvedOf(...levels: SolvedLevel[]): SolvedShot {
  const nowhere = { file: 'c012.cut', start: 0, end: 0 };
  return {
    shot: {
      cut: '12',
      title: 'Rooftop, dusk',
      settings: defaults,
      fps: 24,
      on: 2,
      numbering: 'sequence',
      time: 120,
      length: 120,
      handles: { head: 0, tail: 0 },
      scene: '',
      take: '',
      artists: [],
      memos: [],
      notes: [],
      spoken: [],
      levels: [],
      spans: { cut: nowhere, time: nowhere },
    },
    levels,
    counts: { keys: 0, breakdowns: 0, inbetweens: 0, drawings: 0, reused: 0, backgrounds: 0 },
    diagnostics: [],
  } as unknown as SolvedShot;
}

const even = (n: number) => Array.from({ length: n }, (_, i) => (i + 1) / (n + 1));
const late = (n: number) => Array.from({ length: n }, (_, i) => 1 - 2 ** -(i + 1));

const texts = (page: Page) => page.marks.filter((mark): mark is Text => mark.kind === 'text');
const axes = (page: Page) =>
  page.marks.filter(
    (mark): mark is Extract<Mark, { kind: 'line' }> =>
      mark.kind === 'line' && mark.x1 === mark.x2 && mark.stroke.ink === 'black' && mark.y2 - mark.y1 > 20,
  );
/** The strokes across a ladder's line, as shares of its length. */
const strokes = (page: Page, axis: Extract<Mark, { kind: 'line' }>) =>
  page.marks
    .filter((mark): mark is Extract<Mark, { kind: 'line' }> => mark.kind === 'line' && mark.y1 === mark.y2)
    .filter((line) => Math.abs((line.x1 + line.x2) / 2 - axis.x1) < 1e-6)
    .filter((line) => line.y1 >= axis.y1 - 1e-6 && line.y1 <= axis.y2 + 1e-6)
    .map((line) => (line.y1 - axis.y1) / (axis.y2 - axis.y1))
    .sort((a, b) => a - b);

describe('chart pages', () => {
  it('are none for a cut with no passage, and for one whose keys have nothing between them', () => {
    expect(chartPages(solvedOf(), look())).toEqual([]);
    expect(chartPages(solvedOf(level('A', [['1', '2', []]])), look())).toEqual([]);
  });

  it('draw a ladder for each passage that has in-betweens', () => {
    const pages = chartPages(
      solvedOf(
        level('A', [
          ['1', '2', even(2)],
          ['2', '3', []],
          ['3', '4', even(1)],
        ]),
        level('B', [['1', '2', even(5)]]),
      ),
      look(),
    );
    expect(pages.flatMap(axes)).toHaveLength(3);
    const printed = pages.flatMap(texts).map((text) => text.text);
    expect(printed).toContain('1 → 2');
    expect(printed).toContain('3 → 4');
    expect(printed).not.toContain('2 → 3');
  });

  it('name keys in the west by their finished numbers, as the key column does', () => {
    const cut = solvedOf(level('A', [['1', '2', even(3)]]));
    const titles = (settings: Partial<Settings>) =>
      texts(chartPages(cut, look(settings))[0]!)
        .map(({ text }) => text)
        .filter((text) => text.includes('→'));
    expect(titles({ convention: 'west' })).toEqual(['1 → 5']);
    expect(titles({})).toEqual(['1 → 2']);
  });

  it('that are needed only say on each page which even passages have no ladder, a level a line', () => {
    const cut = solvedOf(
      level('A', [
        ['1', '2', even(3)],
        ['2', '3', late(2)],
        ['3', '1', even(2)],
      ]),
      level('B', [['1', '2', even(1)]]),
      level(
        'C',
        Array.from({ length: 30 }, (_, i): Way => [`${i + 1}`, `${i + 2}`, late(6)]),
      ),
    );
    const lines = (settings: Partial<Settings>) =>
      neededChartPages(cut, look(settings)).map((page) =>
        texts(page)
          .map(({ text }) => text)
          .filter((text) => /even:|均等：/.test(text)),
      );
    const english = lines({});
    expect(english.length).toBeGreaterThan(1);
    for (const page of english) expect(page).toEqual(['A  even: 1→2 ×3, 3→1 ×2', 'B  even: 1→2 ×1']);
    expect(lines({ labels: 'ja' })[0]).toEqual(['A  均等：1→2 ×3、3→1 ×2', 'B  均等：1→2 ×1']);
    expect(lines({ convention: 'west' })[0]).toEqual(['B  even: 1→3 ×1', 'A  even: 1→5 ×3, 8→1 ×2']);
  });

  it('give the number of even passages alone where naming them would fill half of a page', () => {
    const ways = Array.from({ length: 900 }, (_, i): Way => [`${i + 1}`, `${i + 2}`, even(1)]);
    const [page] = neededChartPages(solvedOf(level('A', [...ways, ['901', '902', late(2)]])), look());
    expect(texts(page!).map(({ text }) => text)).toContain('A  900 even passages without a chart');
  });

  it('put each in-between at its share of the way', () => {
    for (const fractions of [even(4), late(6), [1 / 16, 1 / 8, 7 / 8]]) {
      const [page] = chartPages(solvedOf(level('A', [['1', '2', fractions]])), look());
      const drawn = strokes(page!, axes(page!)[0]!);
      expect(drawn).toHaveLength(fractions.length + 2);
      [0, ...fractions, 1].forEach((way, i) => {
        expect(drawn[i]).toBeCloseTo(way, 6);
      });
    }
  });

  it('print the finished number, the drawing, the way and the frames of each step on one line', () => {
    const [page] = chartPages(solvedOf(level('A', [['1', '2', late(3), 'late']])), look());
    const number = texts(page!).find((text) => text.weight === 'bold' && text.text === '4')!;
    const line = texts(page!)
      .filter((text) => Math.abs(text.y - number.y) < 0.5)
      .sort((a, b) => a.x - b.x);
    expect(line.map((text) => text.text)).toEqual(['4', '1.3', '7/8', '2']);
  });

  it('rings keys and marks breakdowns, each in the way of its convention', () => {
    const cut = solvedOf(level('A', [['1', '2', even(3)]]));
    const [japan] = chartPages(cut, look({ convention: 'japan' }));
    const [west] = chartPages(cut, look({ convention: 'west' }));
    const text = (page: Page, wanted: string) => texts(page).find((mark) => mark.text === wanted)!;
    const ringed = (page: Page, mark: Text) =>
      page.marks.some(
        (ring) =>
          ring.kind === 'circle' && ring.stroke && Math.hypot(ring.x - mark.x, ring.y - mark.y) < mark.sizeMm,
      );
    const brackets = (page: Page) => texts(page).filter((mark) => mark.text === '(1.2)');
    const nameOf = (page: Page) =>
      texts(page).filter((mark) => mark.text === '1' && mark.weight === 'regular')[0]!;
    expect(ringed(japan!, nameOf(japan!))).toBe(true);
    expect(ringed(west!, nameOf(west!))).toBe(false);
    expect(brackets(japan!)).toHaveLength(1);
    expect(brackets(west!)).toHaveLength(0);
    const under = text(west!, '3');
    expect(
      west!.marks.some(
        (mark) =>
          mark.kind === 'line' &&
          mark.y1 === mark.y2 &&
          mark.y1 > under.y &&
          mark.y1 < under.y + 1.5 &&
          mark.x1 < under.x,
      ),
    ).toBe(true);
  });

  it('never print one thing over another, however crowded, and stay on the paper', {
    timeout: 60_000,
  }, () => {
    for (const paper of PAPERS) {
      for (const labels of ['ja', 'en'] as const) {
        const cut = solvedOf(
          level('A', [
            ['1', '2', late(9), 'late'],
            ['2', '3', [0.5, 0.501, 0.502, 0.99]],
            ['3', '123456a', even(40)],
            ['123456a', '5', even(3)],
          ]),
          level('BOOK1', [['1', '2', even(300)]]),
        );
        for (const page of chartPages(cut, look({ paper, labels }))) {
          const boxes = texts(page).map((text) => {
            const width = metrics.width(text.text, text.sizeMm) * (text.squeeze ?? 1);
            const left = text.x - width * { start: 0, middle: 0.5, end: 1 }[text.anchor];
            return {
              left,
              right: left + width,
              top: text.y - text.sizeMm * 0.7,
              bottom: text.y,
              text: text.text,
            };
          });
          for (const box of boxes) {
            expect(box.left).toBeGreaterThan(4);
            expect(box.right).toBeLessThan(page.widthMm - 4);
            expect(box.top).toBeGreaterThan(4);
            expect(box.bottom).toBeLessThan(page.heightMm - 4);
          }
          boxes.sort((a, b) => a.top - b.top);
          for (let i = 0; i < boxes.length; i++) {
            for (let j = i + 1; j < boxes.length; j++) {
              const [a, b] = [boxes[i]!, boxes[j]!];
              if (b.top >= a.bottom) break;
              const over =
                Math.min(a.right, b.right) - Math.max(a.left, b.left) > 0.01 &&
                Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 0.01;
              if (over) expect.fail(`${paper} ${labels}: “${a.text}” over “${b.text}”`);
            }
          }
        }
      }
    }
  });

  it('keep a ladder on one page, and start each page with the name of its level', () => {
    const cut = solvedOf(
      level(
        'A',
        Array.from({ length: 40 }, (_, i): Way => [`${i + 1}`, `${i + 2}`, even(6)]),
      ),
    );
    const pages = chartPages(cut, look());
    expect(pages.length).toBeGreaterThan(2);
    for (const page of pages) {
      expect(texts(page).some((text) => text.text === 'A' && text.weight === 'bold')).toBe(true);
      for (const axis of axes(page)) expect(strokes(page, axis)).toHaveLength(8);
    }
    expect(pages.flatMap(axes)).toHaveLength(40);
  });

  it('cut a ladder that no page can hold into pieces and drop no drawing', () => {
    const pages = chartPages(solvedOf(level('A', [['1', '2', even(1200)]])), look());
    const numbers = new Set(
      pages
        .flatMap(texts)
        .map((text) => /^\(?(1\.\d+)\)?$/.exec(text.text)?.[1])
        .filter(Boolean),
    );
    expect(numbers.size).toBe(1200);
  });

  it('have a bar beside the ladder of a passage that has changed, along its line and clear of it', () => {
    const ways: Way[] = [
      ['1', '2', even(2)],
      ['2', '3', late(3)],
    ];
    const marked = { against: 'HEAD~1', rows: [], lines: [], ladders: [{ level: 'A', from: '2', to: '3' }] };
    const [page] = chartPages(solvedOf(level('A', ways), level('B', ways)), { ...look(), marked });
    const bars = page!.marks.flatMap((mark) => (mark.kind === 'path' && mark.fill === 'black' ? [mark] : []));
    const axis = axes(page!)[1]!;
    expect(bars).toHaveLength(1);
    const xs = bars[0]!.points.map(([x]) => x);
    const ys = bars[0]!.points.map(([, y]) => y);
    expect(Math.max(...xs)).toBeLessThan(axis.x1 - 4);
    expect([Math.min(...ys), Math.max(...ys)]).toEqual([axis.y1, axis.y2]);
  });

  it('says when a drawing of a passage is never shown', () => {
    const whole = level('A', [['1', '2', even(2)]]);
    const cut = solvedOf({
      ...whole,
      drawings: whole.drawings.filter((drawing) => drawing.drawing !== '1.2'),
      exposures: whole.exposures.filter((exposure) => exposure.drawing !== '1.2'),
    });
    const [page] = chartPages(cut, look());
    const name = texts(page!).find((text) => text.text === '1.2')!;
    const line = texts(page!)
      .filter((text) => Math.abs(text.y - name.y) < 0.5)
      .sort((a, b) => a.x - b.x);
    expect(line.map((text) => text.text)).toEqual(['–', '1.2', '2/3', '–']);
  });
});
