import { describe, expect, test } from 'vitest';
import { printPdf } from '../../src/print/pdf.js';
import { cameraChartPages } from '../../src/sheet/camera-pages/camera-chart.js';
import { overlayPages } from '../../src/sheet/camera-pages/field-overlay.js';
import { moveTablePages } from '../../src/sheet/camera-pages/move-table.js';
import { stripPages } from '../../src/sheet/camera-pages/scale-strip.js';
import type { Mark, Page } from '../../src/sheet/display-list.js';
import { PAPERS, type Settings } from '../../src/shot/settings.js';
import { rowName } from '../../src/shot/time-notation.js';
import type { SolvedMove } from '../../src/solve/camera/solved-camera.js';
import type { SolvedShot } from '../../src/solve/solved-shot.js';
import { compileText, said } from '../compile.js';
import { testFonts } from '../fonts.js';
import { openPrinted, type Paper } from '../pdf.js';
import {
  chartProblems,
  crossesOn,
  fieldsOn,
  near,
  type Place,
  ratio,
  rulersOn,
  type Station,
  stripProblems,
  type Truth,
  tableRows,
} from './camera-pages.js';

const PAN = `cut 12 "Harbour"
time 5+0
stack BG A
level BG size 560x200mm at 120,0
level A size 300x200mm
field A full
field B 100% at 240,20
field C 60% at 40,-12
A: 1:36 2:24 3..
pan A@1+1 > B@5+0 ease 12 graduated carry A
`;

const TRUCK = `cut 13
time 5+0
level BG size 400x300mm
level A
field A full
field B 50% at 40,20 cw 5
truck A@1 > B@2+0
slide A ア(0,0)@36 > エ(-120,10)@5+0 ease 12
turn level A 0@1 > 30@2+0 cw about 0,0
`;

const LEFT = `cut 14
time 12+0
level BG
pull BG left 700mm 1..12+0 ease 24 48 graduated
`;

const UP = `cut 15
time 5+0
stack BG A
level A
A: 1:60 2..
level BG
slide A (0,0)@1 > (0,180)@5+0 ease 24 48
`;

const HAND = `cut 18
time 1+0
level BG
field A full
field B 200mm at 12,-6
truck A@1 > B@13 steps 1 3 5 6*6 5 3 1
`;

const ENDLESS = `cut 16
time 60+0
level BG
pull BG left 10000mm 1..60+0 graduated
`;

const ZOOM = `cut 17
time 3+0
level BG
field A full
field B 50% at 20,10
truck A@1 > B@3+0 ease 12 graduated
`;

type Layout = (solved: SolvedShot, look: Parameters<typeof stripPages>[1]) => Page[];

function solve(text: string): SolvedShot {
  const { solved, diagnostics } = compileText(text);
  expect(said(diagnostics).filter((one) => one.startsWith('error'))).toEqual([]);
  return solved!;
}

/** `lie` changes the pages before they are printed. */
async function printed(
  solved: SolvedShot,
  layout: Layout,
  settings: Partial<Settings> = {},
  lie: (mark: Mark) => Mark | null = (mark) => mark,
): Promise<Paper[]> {
  const pages = layout(solved, {
    settings: { ...solved.shot.settings, ...settings },
    metrics: testFonts().metrics,
    stamp: '1a2b3c4d',
  }).map((page) => ({
    ...page,
    marks: page.marks.flatMap((mark) => lie(mark) ?? []),
  }));
  const document = { title: 'Read back', language: 'en', author: '', pages, bookmarks: [], trueSize: true };
  return (await openPrinted(await printPdf(document, testFonts()))).pages as Paper[];
}

/** What chart and strip must say of the first move, from the solver's figures. */
function truthOf(solved: SolvedShot, { west = false, carried = '' } = {}): Truth {
  const [{ move, graduations }] = solved.camera.moves as [SolvedShot['camera']['moves'][number]];
  const keys = new Map<number, string>();
  for (const { frame, kind, starts, drawing, cel } of solved.levels.find(({ name }) => name === carried)
    ?.exposures ?? [])
    if (kind === 'key' && starts && frame >= graduations[0]!.frame)
      keys.set(frame, String(west ? cel : drawing));
  return {
    stations: graduations.map(({ frame, number, x, y }): Station => ({ frame, count: number, x, y })),
    row: (frame) => rowName(frame, west ? 16 : 24, west),
    keys,
    counted: move.graduated || move.legs.some(({ spacing }) => spacing.form === 'steps'),
  };
}

/** The way of that corner of the field which goes farthest. */
function cornerWay(solved: SolvedShot): Place[] {
  const { heightMm, widthMm } = solved.shot.settings.field;
  const { graduations } = solved.camera.moves[0]!;
  const ways = [
    [1, 1],
    [1, -1],
    [-1, -1],
    [-1, 1],
  ].map(([sx, sy]) =>
    graduations.map(({ x, y, value }) => ({
      x: x + (sx! * value!) / 2,
      y: y + (sy! * value! * heightMm) / widthMm / 2,
    })),
  );
  const long = ([first, ...rest]: Place[]) =>
    Math.hypot(rest.at(-1)!.x - first!.x, rest.at(-1)!.y - first!.y);
  return ways.reduce((a, b) => (long(b) > long(a) + 0.01 ? b : a));
}

const distances = (places: readonly Place[]) =>
  places.map(({ x, y }) => Math.hypot(x - places[0]!.x, y - places[0]!.y));

const isText = (mark: Mark, text: RegExp): mark is Extract<Mark, { kind: 'text' }> =>
  mark.kind === 'text' && text.test(mark.text);

/** What a print may get wrong; each must be told. */
const LIES: Readonly<Record<string, (mark: Mark) => Mark | null>> = {
  'a row that is one later': (mark) =>
    isText(mark, /^2\+12$/) && mark.weight === 'regular' ? { ...mark, text: '2+13' } : mark,
  'a count that is one too many': (mark) =>
    isText(mark, /^24$/) && mark.weight === 'regular' ? { ...mark, text: '25' } : mark,
  'strokes that stand a tenth of a millimetre off': (mark) =>
    mark.kind === 'line' && mark.stroke.ink === 'black' && mark.stroke.widthMm <= 0.15
      ? { ...mark, x1: mark.x1 + 0.1, x2: mark.x2 + 0.1, y1: mark.y1 + 0.1, y2: mark.y2 + 0.1 }
      : mark,
  'the number of another key': (mark) => (isText(mark, /^2$/) ? { ...mark, text: '3' } : mark),
  'rings that are lost': (mark) =>
    mark.kind === 'circle' && mark.fill !== 'black' && mark.r < 3 ? null : mark,
};

describe('camera chart', () => {
  test.each(PAPERS)(
    'fields and graduations times the ratio are the millimetres of the solver on %s',
    async (paper) => {
      const solved = solve(PAN);
      const [page] = await printed(solved, cameraChartPages, { paper });
      const n = ratio(page!);
      const { field } = solved.shot.settings;
      const found = fieldsOn(page!);
      expect(found).toHaveLength(3);
      const middle = (one: (typeof found)[number]) => ({
        x: one.x + one.width / 2,
        y: one.y + one.height / 2,
      });
      const origin = middle(found[0]!);
      solved.camera.fields.forEach(({ field: wanted }, i) => {
        const got = found[i]!;
        expect(near(got.width * n, wanted.widthMm, 0.05)).toBe(true);
        expect(near(got.height * n, (wanted.widthMm * field.heightMm) / field.widthMm, 0.05)).toBe(true);
        expect(near((middle(got).x - origin.x) * n, wanted.xMm, 0.05)).toBe(true);
        expect(near((origin.y - middle(got).y) * n, wanted.yMm, 0.05)).toBe(true);
      });
      expect(chartProblems(page!, truthOf(solved, { carried: 'A' }))).toEqual([]);
      // The field that no frame uses has a cross over each corner, and nowhere else.
      const unused = found[2]!;
      const corners = [unused.x, unused.x + unused.width].flatMap((x) =>
        [unused.y, unused.y + unused.height].map((y) => ({ x, y })),
      );
      const crosses = crossesOn(page!);
      expect(crosses).toHaveLength(4);
      for (const at of crosses)
        expect(corners.some(({ x, y }) => Math.hypot(x - at.x, y - at.y) < 0.03)).toBe(true);
    },
  );

  test('rows by the foot, keys by their final numbers in the west', async () => {
    const solved = solve(PAN);
    const [page] = await printed(solved, cameraChartPages, { convention: 'west', lengths: 'in' });
    expect(chartProblems(page!, truthOf(solved, { west: true, carried: 'A' }))).toEqual([]);
  });

  test.each(Object.entries(LIES))('%s is found', async (_, lie) => {
    const solved = solve(PAN);
    const [page] = await printed(solved, cameraChartPages, { paper: 'A3' }, lie);
    expect(chartProblems(page!, truthOf(solved, { carried: 'A' }))).not.toEqual([]);
  });

  test('a truck is graduated along a corner, not at the centre', async () => {
    for (const text of [ZOOM, HAND]) await check(solve(text));
  });

  async function check(solved: SolvedShot): Promise<void> {
    const [page] = await printed(solved, cameraChartPages);
    const truth = truthOf(solved);
    const stations = cornerWay(solved).map((place, i) => ({ ...truth.stations[i]!, ...place }));
    expect(chartProblems(page!, { ...truth, stations })).toEqual([]);
    expect(chartProblems(page!, truth)).not.toEqual([]);
  }

  test('a pan and a truck at once: the strokes of both ways, and what each field is for', async () => {
    const solved = solve(`cut 19
time 3+0
level BG
field A full
field B full at 60,20
field C 200mm
pan A@1 > B@3+0 ease 12
truck A@13 > C@2+0 graduated
`);
    const [page] = await printed(solved, cameraChartPages);
    // By the formulas, not by the solver: the centre with 12 frames of ease at both ends of 71 steps, the width evenly in 35 steps.
    const v = 1 / (71 - 12);
    const share = (i: number) =>
      i < 12 ? (v * i * i) / 24 : i <= 59 ? v * (i - 6) : 1 - (v * (71 - i) ** 2) / 24;
    const centre = (frame: number): Place => ({ x: 60 * share(frame - 1), y: 20 * share(frame - 1) });
    const corner = (frame: number): Place => {
      const half = (254 - ((254 - 200) * (frame - 13)) / 35) / 2;
      return { x: centre(frame).x - half, y: centre(frame).y - (half * 142.875) / 254 };
    };
    const frames = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, i) => from + i);
    const places = [...frames(1, 72).map(centre), ...frames(13, 48).map(corner)];
    const n = ratio(page!);
    const [standard] = fieldsOn(page!);
    const middle = { x: standard!.x + standard!.width / 2, y: standard!.y + standard!.height / 2 };
    const strokes = page!.lines
      .filter(({ pen, x1, y1, x2, y2 }) => {
        const long = Math.hypot(x2 - x1, y2 - y1);
        return near(pen.widthMm, 0.15, 0.01) && (near(long, 2.6, 0.01) || near(long, 1.6, 0.01));
      })
      .map(({ x1, y1, x2, y2 }) => ({
        x: ((x1 + x2) / 2 - middle.x) * n,
        y: (middle.y - (y1 + y2) / 2) * n,
      }));
    expect(strokes.length).toBeGreaterThan(60);
    const off = (at: Place) => Math.min(...places.map(({ x, y }) => Math.hypot(x - at.x, y - at.y)));
    expect(Math.max(...strokes.map(off))).toBeLessThan(0.1);
    const texts = page!.texts.map(({ text }) => text);
    expect(texts).toContain('B (centre only)');
    expect(texts).toContain('C (width only)');
    expect(texts.filter((text) => /^width [AC] /.test(text))).toEqual([
      'width A 0+13 (13)',
      'width C 1+24 (48)',
    ]);
    expect(texts).toContain('camera on row 2+24');
    expect(crossesOn(page!)).toEqual([]);
  });

  test('a curved way is drawn as its curve, its graduations so far along it as the ease says', async () => {
    const solved = solve(`cut 20
time 3+0
level BG
field A full
field B full at 60,45
field C full at 120,0
pan A@1 > B > C@3+0 curved ease 24 graduated
`);
    // The parabola through the three centres; its length from the left by many chords.
    const y = (x: number) => 45 - (45 * (x - 60) ** 2) / 60 ** 2;
    const parts = 12_000;
    const sums = [0];
    for (let i = 1; i <= parts; i++) {
      const [a, b] = [((i - 1) * 120) / parts, (i * 120) / parts];
      sums.push(sums[i - 1]! + Math.hypot(b - a, y(b) - y(a)));
    }
    const v = 1 / (71 - 24);
    const share = (i: number) =>
      i < 24 ? (v * i * i) / 48 : i <= 47 ? v * (i - 12) : 1 - (v * (71 - i) ** 2) / 48;
    const stations = Array.from({ length: 72 }, (_, count): Station => {
      const wanted = share(count) * sums.at(-1)!;
      const x = (sums.findIndex((sum) => sum >= wanted - 1e-9) * 120) / parts;
      return { frame: count + 1, count, x, y: y(x) };
    });
    for (const settings of [{}, { paper: 'A3', labels: 'ja' }] as const) {
      const [page] = await printed(solved, cameraChartPages, settings);
      expect(chartProblems(page!, { ...truthOf(solved), stations })).toEqual([]);
      const n = ratio(page!);
      const [standard] = fieldsOn(page!);
      const middle = { x: standard!.x + standard!.width / 2, y: standard!.y + standard!.height / 2 };
      const drawn = page!.shapes.filter(
        ({ pen, closed, points }) =>
          !closed && pen?.ink === '#000000' && near(pen.widthMm, 0.3, 0.001) && points.length > 2,
      );
      expect(drawn).toHaveLength(1);
      const along = drawn[0]!.points.map(([x, down]) => ({
        x: (x - middle.x) * n,
        y: (middle.y - down) * n,
      }));
      // Many short chords, all of them on the parabola; with straight legs they would be two long ones.
      expect(along.length).toBeGreaterThan(90);
      for (const one of along) expect(near(one.y, y(one.x), 0.1)).toBe(true);
    }
  });

  test('a field that a pull brings nothing to is used where the camera stands on it', async () => {
    for (const fix of ['', 'fix full\n']) {
      const [page] = await printed(
        solve(`cut 1\ntime 4+0\nlevel BG\nfield A full\npull BG left 100mm 1..4+0 ease 12\n${fix}`),
        cameraChartPages,
      );
      expect(crossesOn(page!)).toEqual([]);
    }
  });

  test('a cut whose camera stays has no camera pages', () => {
    const solved = solve('cut 1\ntime 2+0\nlevel BG\n');
    const look = { settings: solved.shot.settings, metrics: testFonts().metrics, stamp: '' };
    for (const layout of [cameraChartPages, moveTablePages, stripPages, overlayPages])
      expect(layout(solved, look)).toEqual([]);
  });

  // Sizes of the holes: common practice (1/4 in round, 1/2 by 1/8 in flat, 4 in apart); from the field's centre to the
  // middle hole 104.775 mm: recommended layout paper of Japan's producers' association.
  test('peg holes stand at their published distances where they are asked for', async () => {
    const solved = solve(TRUCK);
    const [page] = await printed(solved, cameraChartPages, { pegs: 'flat-round-flat' });
    const n = ratio(page!);
    const [standard] = fieldsOn(page!);
    const middle = { x: standard!.x + standard!.width / 2, y: standard!.y + standard!.height / 2 };
    const hole = page!.circles.find(({ r, fill }) => fill === null && near(r * 2 * n, 6.35, 0.05))!;
    expect((hole.x - middle.x) * n).toBeCloseTo(0, 1);
    expect(Math.abs((middle.y - hole.y) * n - 104.775)).toBeLessThanOrEqual(0.05);
    const flats = page!.rectangles.filter(
      ({ width, height }) => near(width * n, 12.7, 0.05) && near(height * n, 3.175, 0.05),
    );
    expect(flats.map(({ x, width }) => (x + width / 2 - hole.x) * n).map((mm) => mm.toFixed(1))).toEqual([
      '-101.6',
      '101.6',
    ]);
    const [without] = await printed(solved, cameraChartPages);
    expect(without!.rectangles.some(({ width, height }) => near(width / height, 4, 0.01))).toBe(false);
  });
});

/** Figures of a table, with as many decimals as its neighbours. */
const figures = (value: number, decimals: number) => value.toFixed(decimals).replace(/^-(0\.0+)$/, '$1');
const signed = (text: string) => (text.startsWith('-') || !/[1-9]/.test(text) ? text : `+${text}`);

function tableProblems(papers: readonly Paper[], solved: SolvedShot, lengths: 'mm' | 'in'): string[] {
  const seen = new Map<number, string[]>();
  for (const { from, to, cells } of papers.flatMap(tableRows))
    for (let frame = from; frame <= to; frame++) seen.set(frame, [...(seen.get(frame) ?? []), ...cells]);
  const { frames, placement, moves } = solved.camera;
  const length = (mm: number) => (lengths === 'in' ? figures(mm / 25.4, 3) : figures(mm, 2));
  const [truck, slide, turn] = (['truck', 'slide', 'turn'] as const).map(
    (kind) => moves.find(({ move }) => move.kind === kind)!,
  ) as [SolvedMove, SolvedMove, SolvedMove];
  return frames.flatMap((f, i) => {
    const a = placement.get('A')![i]!;
    const before = frames[i - 1];
    const onTruck = before && f.frame > truck.start && f.frame <= truck.end;
    const turned = turn.graduations[f.frame - turn.start];
    const step = slide.graduations[f.frame - slide.start];
    const wanted = [
      ...[length(f.x), length(f.y), length(f.width), figures(f.percent, 1), figures(f.rotation, 2)],
      ...(onTruck
        ? [signed(length(f.width - before.width)), signed(figures((f.width / before.width - 1) * 100, 2))]
        : []),
      ...[length(a.x), length(a.y), figures(a.rotation, 2)],
      ...(step && f.frame > slide.start ? [length(step.stepMm)] : []),
      ...(turned && f.frame > turn.start
        ? [signed(figures(turned.value! - turn.graduations[i - turn.start]!.value!, 2))]
        : []),
    ];
    const got = seen.get(f.frame) ?? [];
    return JSON.stringify(got) === JSON.stringify(wanted) ? [] : [`frame ${f.frame}: ${got} for ${wanted}`];
  });
}

describe('move table', () => {
  test.each([
    ['japan', 'ja', 'A4', 'mm'],
    ['west', 'en', 'letter', 'in'],
    ['japan', 'en', 'B5', 'mm'],
  ] as const)(
    'gives the figures of the solver (%s, %s, %s, %s)',
    async (convention, labels, paper, lengths) => {
      const solved = solve(
        TRUCK.replace('A@1 > B@2+0', 'A@1 > B@2+0 ease 12').replace('30@2+0 cw', '30@2+0 cw ease 8'),
      );
      const papers = await printed(solved, moveTablePages, { convention, labels, paper, lengths });
      expect(tableProblems(papers, solved, lengths)).toEqual([]);
      const lie = (mark: Mark) => (isText(mark, /^127\.00$|^5\.000$/) ? { ...mark, text: '127.01' } : mark);
      const wrong = await printed(solved, moveTablePages, { convention, labels, paper, lengths }, lie);
      expect(tableProblems(wrong, solved, lengths)).not.toEqual([]);
    },
  );
});

describe('scale strip', () => {
  test.each([
    ['a pan', PAN, 'A4', 'A', false],
    ['a pan on small paper', PAN, 'B5', 'A', false],
    ['a pull leftward in pieces', LEFT, 'A4', '', false],
    ['a pull in pieces on large paper', LEFT, 'A3', '', false],
    ['a slide upward', UP, 'A4', 'A', true],
    ['a slide upward in pieces', UP, 'B5', 'A', true],
  ] as const)(
    'graduations, rows, counts and keys of %s are true',
    async (_, text, paper, carried, upright) => {
      const solved = solve(text);
      const papers = await printed(solved, stripPages, { paper });
      const truth = truthOf(solved, { carried });
      const wanted = distances(truth.stations);
      const rulers = papers.flatMap((page) => rulersOn(page, upright));
      expect(stripProblems(rulers, truth, wanted)).toEqual([]);
      expect(rulers.flatMap(({ rows }) => rows).length).toBeGreaterThan(5);
    },
  );

  test('in inches', async () => {
    const solved = solve(PAN);
    const papers = await printed(solved, stripPages, { lengths: 'in' });
    const truth = truthOf(solved, { carried: 'A' });
    const rulers = papers.flatMap((page) => rulersOn(page, false, 25.4));
    expect(stripProblems(rulers, truth, distances(truth.stations))).toEqual([]);
  });

  test('a truck has the strip of a corner', async () => {
    for (const solved of [ZOOM, HAND].map(solve)) {
      const papers = await printed(solved, stripPages);
      const rulers = papers.flatMap((page) => rulersOn(page, false));
      expect(stripProblems(rulers, truthOf(solved), distances(cornerWay(solved)))).toEqual([]);
    }
  });

  test.each(Object.entries(LIES))('%s is found', async (_, lie) => {
    const solved = solve(PAN);
    const papers = await printed(solved, stripPages, {}, lie);
    const truth = truthOf(solved, { carried: 'A' });
    const rulers = papers.flatMap((page) => rulersOn(page, false));
    expect(stripProblems(rulers, truth, distances(truth.stations))).not.toEqual([]);
  });

  test('the last piece does not ask for a next one', async () => {
    const papers = await printed(solve(LEFT), stripPages);
    const titles = papers.flatMap(({ texts }) => texts).filter(({ text }) => /piece \d of \d/.test(text));
    expect(titles.length).toBeGreaterThan(2);
    const asks = titles.map(({ text }) => text.includes('lay the next piece on'));
    expect(asks).toEqual(titles.map((_, i) => i < titles.length - 1));
  });

  test('a strip ten metres long is cut short, and says so', async () => {
    const papers = await printed(solve(ENDLESS), stripPages);
    expect(papers.length).toBeLessThan(12);
    for (const page of papers)
      expect(page.texts.some(({ text }) => text.includes('5000 mm of 10000 mm'))).toBe(true);
  });
});

/** Ends of the fields' lines on an overlay, joined to the other pages by the cut marks and the 10 mm that pages share. */
function stitched(page: Paper): [number, number][] {
  const title = page.texts.find(({ text }) => /^column \d/.test(text))!.text;
  const [column, , row] = [...title.matchAll(/\d+/g)].map(Number);
  const marks = page.lines.filter(
    ({ pen, x1, x2, y1, y2 }) =>
      near(pen.widthMm, 0.12, 0.005) && near(y1, y2, 1e-3) && near(Math.abs(x2 - x1), 2, 0.01),
  );
  expect(marks).toHaveLength(4);
  const left = Math.min(...marks.map(({ x1, x2 }) => Math.max(x1, x2))) + 0.5;
  const right = Math.max(...marks.map(({ x1, x2 }) => Math.min(x1, x2))) - 0.5;
  const top = Math.min(...marks.map(({ y1 }) => y1));
  const bottom = Math.max(...marks.map(({ y1 }) => y1));
  const dx = (column! - 1) * (right - left - 10) - left;
  const dy = (row! - 1) * (bottom - top - 10) - top;
  return page.lines
    .filter(({ pen }) => pen.ink === '#000000' && near(pen.widthMm, 0.3, 0.01))
    .flatMap(({ x1, y1, x2, y2 }): [number, number][] => [
      [x1 + dx, y1 + dy],
      [x2 + dx, y2 + dy],
    ]);
}

describe('true size', () => {
  test.each(['A4', 'A3', 'letter', 'B5'] as const)(
    'fields of the overlay are true to 0.02 mm on %s',
    async (paper) => {
      const solved = solve(TRUCK);
      const papers = await printed(solved, overlayPages, { paper });
      if (paper === 'B5') expect(papers.length).toBeGreaterThan(1);
      const points = papers.flatMap(stitched);
      // The standard field's upper left corner is the origin of what is stitched.
      const left = Math.min(...points.map(([x]) => x));
      const top = Math.min(...points.map(([, y]) => y));
      const { widthMm, heightMm } = solved.shot.settings.field;
      const turn = (5 * Math.PI) / 180;
      for (const [sx, sy] of [
        [-1, -1],
        [1, -1],
        [1, 1],
        [-1, 1],
      ] as const) {
        const x = (sx * widthMm) / 2;
        const y = (sy * heightMm) / 2;
        // B: half the size, turned 5 degrees clockwise about 40, 20 (y down here).
        const corners = [
          [x, y],
          [
            40 + (x * Math.cos(turn) - y * Math.sin(turn)) / 2,
            -20 + (x * Math.sin(turn) + y * Math.cos(turn)) / 2,
          ],
        ];
        for (const [cx, cy] of corners) {
          const off = Math.min(
            ...points.map(([px, py]) =>
              Math.hypot(px - left - widthMm / 2 - cx!, py - top - heightMm / 2 - cy!),
            ),
          );
          expect(off).toBeLessThanOrEqual(0.02);
        }
      }
    },
  );

  test('every page has its rule of 100 mm', async () => {
    const solved = solve(PAN);
    const papers = [...(await printed(solved, stripPages)), ...(await printed(solved, overlayPages))];
    expect(papers.length).toBeGreaterThan(2);
    for (const page of papers) {
      const rules = page.lines.filter(({ x1, x2, y1, y2 }) => near(y1, y2, 1e-3) && near(x2 - x1, 100, 0.02));
      expect(rules).toHaveLength(1);
      expect(page.texts.some(({ text }) => text.includes('100 %'))).toBe(true);
    }
  });
});
