import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { printPdf } from '../../src/print/pdf.js';
import type { Mark } from '../../src/sheet/display-list.js';
import { testFonts } from '../fonts.js';
import { openPrinted, type Paper } from '../pdf.js';
import { document, line, PEN, page, RULED, THIN, text } from './documents.js';

/** A place on paper is right within a hundredth of a millimetre. */
const PLACE = 0.01;

async function printed(marks: readonly Mark[], more: Parameters<typeof page>[1] = {}): Promise<Paper> {
  const bytes = await printPdf(document([page(marks, more)]), testFonts());
  return (await openPrinted(bytes)).pages[0]!;
}

function near(found: Record<string, unknown>, wanted: Record<string, number>): void {
  for (const [name, value] of Object.entries(wanted)) {
    expect(Math.abs((found[name] as number) - value), `${name}: ${found[name]} for ${value}`).toBeLessThan(
      PLACE,
    );
  }
}

describe('marks read back from the file', () => {
  // ISO 216 and JIS P 0138.
  test.each([
    [210, 297],
    [297, 420],
    [257, 364],
    [215.9, 355.6],
  ])('paper of %d × %d mm', async (widthMm, heightMm) => {
    near({ ...(await printed([], { widthMm, heightMm })) }, { widthMm, heightMm });
  });

  test('a line with its stroke', async () => {
    const dashed = { ink: 'form', widthMm: 0.25, dash: [2, 1] } as const;
    const { lines } = await printed([line(10, 20, 200.5, 280.25), line(1, 2, 3, 4, dashed)]);
    expect(lines).toHaveLength(2);
    near({ ...lines[0]! }, { x1: 10, y1: 20, x2: 200.5, y2: 280.25 });
    expect(lines[0]!.pen.ink).toBe('#000000');
    near({ ...lines[1]!.pen }, { widthMm: 0.25 });
    near({ ...lines[1]!.pen.dash }, { 0: 2, 1: 1 });
    expect(lines[1]!.pen.ink).not.toBe('#000000');
  });

  test('a stroke without a dash after one with it', async () => {
    const { lines } = await printed([line(1, 2, 3, 4, { ...PEN, dash: [2, 1] }), line(1, 9, 3, 9)]);
    expect(lines.map(({ pen }) => pen.dash.length)).toEqual([2, 0]);
  });

  test('circles, open, filled and blank', async () => {
    const { circles } = await printed([
      { kind: 'circle', x: 100, y: 50, r: 2, stroke: PEN, fill: null },
      { kind: 'circle', x: 20, y: 30, r: 0.7, stroke: null, fill: 'black' },
      { kind: 'circle', x: 20, y: 40, r: 0.7, stroke: PEN, fill: 'paper' },
    ]);
    near({ ...circles[0]! }, { x: 100, y: 50, r: 2 });
    near({ ...circles[1]! }, { x: 20, y: 30, r: 0.7 });
    expect(circles.map(({ pen, fill }) => [pen !== null, fill])).toEqual([
      [true, null],
      [false, '#000000'],
      [true, '#ffffff'],
    ]);
  });

  test('rectangles, other paths and curves', async () => {
    const paper = await printed([
      {
        kind: 'path',
        points: [
          [10, 20],
          [30, 20],
          [30, 25],
          [10, 25],
        ],
        closed: true,
        stroke: PEN,
        fill: null,
      },
      {
        kind: 'path',
        points: [
          [10, 20],
          [30, 21],
          [30, 25],
        ],
        closed: false,
        stroke: PEN,
        fill: null,
      },
      {
        kind: 'curve',
        points: [
          [50, 100],
          [60, 100],
          [50, 120],
          [60, 120],
        ],
        stroke: PEN,
      },
    ]);
    near({ ...paper.rectangles[0]! }, { x: 10, y: 20, width: 20, height: 5 });
    expect(paper.shapes[0]!.closed).toBe(false);
    near({ ...paper.shapes[0]!.points[1]! }, { 0: 30, 1: 21 });
    near({ ...paper.curves[0]!.points[2] }, { 0: 50, 1: 120 });
  });

  test('a hatch is clipped, and its strokes stay inside', async () => {
    const { hatches, lines } = await printed([
      { kind: 'hatch', x: 20, y: 200, width: 60, height: 30, gapMm: 2, stroke: THIN },
      line(0, 0, 1, 1),
    ]);
    expect(lines).toHaveLength(1);
    const [hatch] = hatches;
    near({ ...hatch! }, { x: 20, y: 200, width: 60, height: 30 });
    // The strokes' distance from each other is the gap: (60 + 30) / √2 of the way across, one each 2 mm.
    expect(Math.abs(hatch!.lines.length - 90 / Math.SQRT2 / 2)).toBeLessThan(1);
    for (const { x1, y1, x2, y2 } of hatch!.lines) {
      for (const x of [x1, x2]) expect(x > 20 - PLACE && x < 80 + PLACE).toBe(true);
      for (const y of [y1, y2]) expect(y > 200 - PLACE && y < 230 + PLACE).toBe(true);
    }
  });

  test('tints lie below the form and all other marks', async () => {
    const bytes = await printPdf(
      document([
        page([line(1, 1, 9, 9), { kind: 'tint', x: 10, y: 20, width: 100, height: 20 }], { form: RULED }),
      ]),
      testFonts(),
    );
    const { pages } = await openPrinted(bytes);
    near({ ...pages[0]!.rectangles[0]! }, { x: 10, y: 20, width: 100, height: 20 });
    expect(pages[0]!.order.slice(0, 2)).toEqual(['rectangles', 'lines']);
  });

  test('the form stands on the page as its marks say, and is known as the form', async () => {
    const { lines } = await printed([line(0, 0, 5, 5)], { form: RULED });
    expect(lines.filter((one) => one.form)).toHaveLength(145);
    near(
      { ...lines.filter((one) => one.form).at(-1)! },
      { x1: 10, y1: 20 + 144 * 1.8, x2: 200, y2: 20 + 144 * 1.8 },
    );
    expect(lines.filter((one) => !one.form)).toHaveLength(1);
  });

  test.each([
    'Wait for me!',
    '5 + 0',
    'フェアリング ア→エ、屋上の夕暮れ。',
    '𠮷野',
    '＼○×△',
    'a-b\u00adc\u2010d\u2011e',
    '～〜',
    'ﬁ fi',
    'か\u3099'.normalize('NFC'),
  ])('text comes back as it was written: %s', async (written) => {
    const { texts } = await printed([text(written), text(written, { weight: 'bold', y: 90 })]);
    expect(texts.map((one) => one.text)).toEqual([written, written]);
    expect(texts.map((one) => one.weight)).toEqual(['regular', 'bold']);
  });

  test('a letter and its mark are set as one', async () => {
    expect((await printed([text('か\u3099')])).texts[0]!.text).toBe('が');
  });

  test('text stands where its anchor, turn and squeeze put it', async () => {
    const place = fc.record({
      text: fc.constantFrom('12', 'Nao', 'BOOK1', '原画', 'Wait for me!'),
      x: fc.double({ min: 0, max: 420, noNaN: true }),
      y: fc.double({ min: 0, max: 420, noNaN: true }),
      sizeMm: fc.double({ min: 1.5, max: 12, noNaN: true }),
      weight: fc.constantFrom('regular' as const, 'bold' as const),
      anchor: fc.constantFrom('start' as const, 'middle' as const, 'end' as const),
      turn: fc.constantFrom(0, 90, 180, 270, 17, -45),
      squeeze: fc.constantFrom(1, 0.8, 0.5),
    });
    const share = { start: 0, middle: 0.5, end: 1 };
    await fc.assert(
      fc.asyncProperty(fc.array(place, { minLength: 1, maxLength: 20 }), async (places) => {
        const { texts } = await printed(
          places.map((one) => text(one.text, one)),
          { widthMm: 420, heightMm: 420 },
        );
        places.forEach(({ x, y, sizeMm, weight, anchor, turn, squeeze, ...one }, i) => {
          const found = texts[i]!;
          const width = testFonts().metrics.width(one.text, sizeMm, weight) * squeeze;
          const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
          const [before, after] = [width * share[anchor], width * (1 - share[anchor])];
          expect(found.text).toBe(one.text);
          near(
            { ...found },
            {
              x: x - before * cos,
              y: y - before * sin,
              endX: x + after * cos,
              endY: y + after * sin,
              sizeMm,
              squeeze,
            },
          );
          expect(Math.abs(((found.angle - turn + 540) % 360) - 180)).toBeLessThan(0.01);
        });
      }),
      { numRuns: 25 },
    );
  });
});
