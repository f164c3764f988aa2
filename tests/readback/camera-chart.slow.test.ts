import { describe, expect, test } from 'vitest';
import { printPdf } from '../../src/print/pdf.js';
import { cameraChartPages } from '../../src/sheet/camera-chart.js';
import type { Page } from '../../src/sheet/marks.js';
import { moveTablePages } from '../../src/sheet/move-table.js';
import { overlayPages } from '../../src/sheet/overlay.js';
import { stripPages } from '../../src/sheet/strip.js';
import type { Settings } from '../../src/shot/settings.js';
import type { SolvedShot } from '../../src/solve/solved.js';
import { compileText, said } from '../compile.js';
import { testFonts } from '../fonts.js';
import { openPrinted, type Paper, type PaperLine } from '../pdf.js';

const PAN = `cut 12 "Harbour"
time 5+0
level BG size 560x200mm at 120,0
level A size 300x200mm
field A full
field B 100% at 240,20
field C 60% at 40,-12
pan A@1+1 > B@5+0 ease 12 ticks carry A
`;

const TRUCK = `cut 13
time 5+0
level BG size 400x300mm
level A
field A full
field B 50% at 40,20 cw 5
truck A@1 > B@2+0
slide A ア(0,0)@36 > エ(-120,10)@5+0
turn level A 0@1 > 30@2+0 cw about 0,0
`;

const LONG = `cut 14
time 20+0
level BG
pull BG left 700mm 1..20+0 ease 24 48 ticks
`;

const ENDLESS = `cut 15
time 60+0
level BG
pull BG left 10000mm 1..60+0 ticks
`;

type Layout = (solved: SolvedShot, look: Parameters<typeof stripPages>[1]) => Page[];

function solve(text: string): SolvedShot {
  const { solved, diagnostics } = compileText(text);
  expect(said(diagnostics).filter((one) => one.startsWith('error'))).toEqual([]);
  return solved!;
}

async function printed(
  solved: SolvedShot,
  layout: Layout,
  settings: Partial<Settings> = {},
): Promise<Paper[]> {
  const pages = layout(solved, {
    settings: { ...solved.shot.settings, ...settings },
    metrics: testFonts().metrics,
    stamp: '1a2b3c4d',
  });
  const document = { title: 'Read back', language: 'en', author: '', pages, bookmarks: [], trueSize: true };
  return (await openPrinted(await printPdf(document, testFonts()))).pages as Paper[];
}

const near = (value: number, wanted: number, by: number) => Math.abs(value - wanted) <= by;
const BLACK = '#000000';

/** The n of the printed `1:n`. */
function ratio(paper: Paper): number {
  return Number(/1:([\d.]+)/.exec(paper.texts.find(({ text }) => /1:[\d.]+/.test(text))!.text)![1]);
}

/** Fields: rectangles in the heavy black line. */
const heavy = (paper: Paper) =>
  paper.rectangles.filter(({ pen }) => pen?.ink === BLACK && near(pen.widthMm, 0.4, 0.01));

describe('camera chart', () => {
  test.each(['A4', 'A3', 'B4', 'B5', 'letter', 'legal', 'tabloid'] as const)(
    'fields and graduations times the ratio are the millimetres of the solver on %s',
    async (paper) => {
      const solved = solve(PAN);
      const [page] = await printed(solved, cameraChartPages, { paper });
      const n = ratio(page!);
      const { field } = solved.shot.settings;
      const found = heavy(page!).map(({ x, y, width, height }) => ({
        x: x + width / 2,
        y: y + height / 2,
        width: width * n,
        height: height * n,
      }));
      expect(found).toHaveLength(3);
      const origin = found[0]!;
      solved.camera.fields.forEach(({ field: wanted }, i) => {
        const got = found[i]!;
        expect(Math.abs(got.width - wanted.widthMm)).toBeLessThanOrEqual(0.05);
        expect(Math.abs(got.height - (wanted.widthMm * field.heightMm) / field.widthMm)).toBeLessThanOrEqual(
          0.05,
        );
        expect(Math.abs((got.x - origin.x) * n - wanted.xMm)).toBeLessThanOrEqual(0.05);
        expect(Math.abs((origin.y - got.y) * n - wanted.yMm)).toBeLessThanOrEqual(0.05);
      });
      const strokes = page!.lines.filter(
        ({ pen, x1, y1, x2, y2 }) =>
          pen.ink === BLACK && near(pen.widthMm, 0.15, 0.01) && near(Math.hypot(x2 - x1, y2 - y1), 2.6, 0.01),
      );
      const { graduations } = solved.camera.moves[0]!;
      const places = strokes.map(({ x1, y1, x2, y2 }) => [
        ((x1 + x2) / 2 - origin.x) * n,
        (origin.y - (y1 + y2) / 2) * n,
      ]);
      expect(places.length).toBeGreaterThan(50);
      for (const [x, y] of places) {
        const off = Math.min(...graduations.map((g) => Math.hypot(g.x - x!, g.y - y!)));
        expect(off).toBeLessThanOrEqual(0.05);
      }
      // None is left out but where strokes would touch one another or a ring.
      for (const { x, y, r } of page!.circles)
        if (near(r, 0.8, 0.01)) places.push([(x - origin.x) * n, (origin.y - y) * n]);
      for (const g of graduations.slice(1, -1)) {
        const off = Math.min(...places.map(([x, y]) => Math.hypot(g.x - x!, g.y - y!)));
        expect(off / n).toBeLessThan(0.46);
      }
      // The unused field is crossed out from corner to corner.
      const diagonal = Math.hypot(152.4, 152.4 * (field.heightMm / field.widthMm));
      const crosses = page!.lines.filter(({ x1, y1, x2, y2 }) =>
        near(Math.hypot(x2 - x1, y2 - y1) * n, diagonal, 0.05),
      );
      expect(crosses).toHaveLength(2);
    },
  );

  test('a truck whose centre stays has its graduations along a corner', async () => {
    const solved = solve(`cut 3
time 2+0
level BG
field A full
field B 50%
truck A@1 > B@2+0 ticks
`);
    const [page] = await printed(solved, cameraChartPages);
    const n = ratio(page!);
    const [a] = heavy(page!);
    const middle = { x: a!.x + a!.width / 2, y: a!.y + a!.height / 2 };
    const places = page!.lines
      .filter(
        ({ pen, x1, y1, x2, y2 }) =>
          near(pen.widthMm, 0.15, 0.01) && near(Math.hypot(x2 - x1, y2 - y1), 2.6, 0.01),
      )
      .map(({ x1, y1, x2, y2 }) => [((x1 + x2) / 2 - middle.x) * n, (middle.y - (y1 + y2) / 2) * n] as const);
    expect(places.length).toBeGreaterThan(20);
    const { frames } = solved.camera;
    const { widthMm, heightMm } = solved.shot.settings.field;
    for (const [x, y] of places) {
      const off = frames.map(({ width }) => Math.hypot(x - width / 2, y - (width * heightMm) / widthMm / 2));
      expect(Math.min(...off)).toBeLessThanOrEqual(0.05);
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
    const [page] = await printed(solved, cameraChartPages, { pegs: 'acme' });
    const n = ratio(page!);
    const [standard] = heavy(page!);
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

const figures = (value: number) => value.toFixed(2).replace(/^-0\.00$/, '0.00');

/** The table's lines: those that begin with a frame and a time. */
function tableRows(paper: Paper): string[][] {
  const rows = new Map<string, { x: number; text: string }[]>();
  for (const { text, endX, y } of paper.texts) {
    const key = y.toFixed(1);
    rows.set(key, [...(rows.get(key) ?? []), { x: endX, text }]);
  }
  return [...rows.values()]
    .map((row) => row.sort((a, b) => a.x - b.x).map(({ text }) => text))
    .filter((row) => row.length > 4 && /^\d+(-\d+)?$/.test(row[0]!) && /^\d+[+']\d+$/.test(row[1]!));
}

describe('move table', () => {
  test.each([
    ['japan', 'ja', 'A4'],
    ['west', 'en', 'letter'],
    ['japan', 'en', 'B5'],
  ] as const)(
    'gives the figures of the solver to two decimals (%s, %s, %s)',
    async (convention, labels, paper) => {
      const solved = solve(TRUCK);
      const papers = await printed(solved, moveTablePages, { convention, labels, paper });
      const { frames, placement } = solved.camera;
      const seen = new Map<number, string[]>();
      for (const page of papers)
        for (const [frameCell, , ...cells] of tableRows(page)) {
          const [from, to = from] = frameCell!.split('-').map(Number);
          for (let f = from!; f <= to!; f++) seen.set(f, [...(seen.get(f) ?? []), ...cells]);
        }
      expect([...seen.keys()].sort((a, b) => a - b)).toEqual(frames.map(({ frame }) => frame));
      frames.forEach((f, i) => {
        const before = frames[i - 1] ?? f;
        const a = placement.get('A')![i]!;
        const wanted = [
          ...[f.x, f.y, f.width, f.percent, f.field, f.rotation, Math.hypot(f.x - before.x, f.y - before.y)],
          ...[a.x, a.y, a.rotation],
        ];
        expect(seen.get(f.frame), `frame ${f.frame}`).toEqual(wanted.map(figures));
      });
    },
  );
});

const upright = ({ x1, x2, y1, y2 }: PaperLine, mm: number) =>
  near(x1, x2, 1e-6) && near(Math.abs(y2 - y1), mm, 0.01);

/** Strokes of graduations, in mm of the strip by its own ruler and figures. */
function strokesOf(paper: Paper): number[] {
  const bases = new Map<string, PaperLine[]>();
  const strokes = paper.lines.filter(
    (each) => each.pen.ink === BLACK && (upright(each, 3) || upright(each, 4.4)),
  );
  for (const each of strokes) {
    const base = Math.max(each.y1, each.y2).toFixed(1);
    bases.set(base, [...(bases.get(base) ?? []), each]);
  }
  return [...bases].flatMap(([base, own]) => {
    const below = (y: number) => near(y, Number(base) + 4.2, 2);
    const number = paper.texts.find(({ text, y }) => /^\d+0$/.test(text) && below(y))!;
    const middle = (number.x + number.endX) / 2;
    const ruler = paper.lines.filter(
      (each) => upright(each, 2.4) && near(Math.min(each.y1, each.y2), Number(base), 0.2),
    );
    const at = ruler.reduce((a, b) => (Math.abs(b.x1 - middle) < Math.abs(a.x1 - middle) ? b : a));
    expect(Math.abs(at.x1 - middle)).toBeLessThan(0.3);
    return own.map(({ x1 }) => x1 - at.x1 + Number(number.text));
  });
}

describe('scale strip', () => {
  test.each([
    ['a pan', PAN, 'A4'],
    ['a pan on small paper', PAN, 'B5'],
    ['a pull in pieces', LONG, 'A4'],
    ['a pull in pieces on large paper', LONG, 'A3'],
  ] as const)('the graduations of %s are true to 0.02 mm', async (_, text, paper) => {
    const solved = solve(text);
    const papers = await printed(solved, stripPages, { paper });
    const found = papers.flatMap(strokesOf).sort((a, b) => a - b);
    const { graduations, wayMm } = solved.camera.moves[0]!;
    const [first] = graduations;
    const wanted = graduations.map((g) => Math.hypot(g.x - first!.x, g.y - first!.y));
    for (const mm of wanted)
      expect(Math.min(...found.map((each) => Math.abs(each - mm)))).toBeLessThanOrEqual(0.02);
    for (const each of found)
      expect(Math.min(...wanted.map((mm) => Math.abs(each - mm)))).toBeLessThanOrEqual(0.02);
    expect(found.at(-1)).toBeCloseTo(wayMm, 1);
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
    .filter(({ pen }) => pen.ink === BLACK && near(pen.widthMm, 0.3, 0.01))
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
