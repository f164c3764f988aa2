import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { printSvg } from '../../src/print/svg.js';
import type { Mark } from '../../src/sheet/display-list.js';
import { testFonts } from '../fonts.js';
import { line, PEN, page, RULED, text } from './documents.js';

const svg = (marks: readonly Mark[], more = {}) => printSvg(page(marks), more);
const HATCH = { kind: 'hatch', x: 10, y: 20, width: 30, height: 15, gapMm: 2, stroke: PEN } as const;

/** Numbers of every `M… L…` of the path that holds the strokes of a hatch. */
function strokes(made: string): [number, number, number, number][] {
  const path = /d="((?:M[-\d. ]+L[-\d. ]+)+)"/.exec(made)?.[1] ?? '';
  return [...path.matchAll(/M([-\d.]+) ([-\d.]+)L([-\d.]+) ([-\d.]+)/g)].map(
    ([, ...all]) => all.map(Number) as [number, number, number, number],
  );
}

describe('a page as SVG', () => {
  test('is as large as the paper, in mm, and white', () => {
    const made = svg([]);
    expect(made).toContain('width="210mm" height="297mm" viewBox="0 0 210 297"');
    expect(made).toContain('<rect x="0" y="0" width="210" height="297" fill="#ffffff"/>');
  });

  test('or as a part of it', () => {
    expect(svg([], { crop: { x: 10, y: 20, width: 30, height: 40 } })).toContain(
      'width="30mm" height="40mm" viewBox="10 20 30 40"',
    );
  });

  test('holds the form below the marks, and tints below both', () => {
    const tint: Mark = { kind: 'tint', x: 1, y: 2, width: 3, height: 4 };
    const made = printSvg(page([line(0, 0, 1, 1), tint], { form: RULED }));
    const [at, form, mark] = ['<rect x="1" y="2"', 'M10 20L200 20', 'M0 0L1 1'].map((one) =>
      made.indexOf(one),
    );
    expect(at).toBeGreaterThan(0);
    expect(at).toBeLessThan(form!);
    expect(form).toBeLessThan(mark!);
  });

  test('writes each kind of mark', () => {
    const marks: Mark[] = [
      line(1, 2, 3, 4, { ink: 'form', widthMm: 0.1, dash: [1, 0.5] }),
      { kind: 'circle', x: 5, y: 6, r: 2, stroke: PEN, fill: 'paper' },
      {
        kind: 'path',
        points: [
          [0, 0],
          [1, 0],
          [1, 1],
        ],
        closed: true,
        stroke: null,
        fill: 'black',
      },
      {
        kind: 'curve',
        points: [
          [0, 0],
          [1, 2],
          [3, 4],
          [5, 6],
        ],
        stroke: PEN,
      },
      text('Pim', { anchor: 'middle', turn: 90, squeeze: 0.8, weight: 'bold', ink: 'grey' }),
    ];
    const made = svg(marks);
    for (const one of [
      'd="M1 2L3 4" fill="none" stroke="#9e856b" stroke-width="0.1" stroke-dasharray="1 0.5"',
      'cx="5" cy="6" r="2" fill="#ffffff" stroke="#000000"',
      'd="M0 0L1 0 1 1Z" fill="#000000"/>',
      'd="M0 0C1 2 3 4 5 6" fill="none"',
      'transform="translate(50 60) rotate(90) scale(0.8 1)" font-size="4" font-weight="700" text-anchor="middle" fill="#4d4d4d">Pim</text>',
    ])
      expect(made).toContain(one);
  });

  test('leaves out what cannot be drawn, and never a number that SVG cannot read', () => {
    const made = svg([
      text(''),
      { kind: 'path', points: [], closed: true, stroke: PEN, fill: null },
      { ...HATCH, gapMm: 0 },
      { ...HATCH, width: 0 },
      line(1e-9, -1e-9, 1e-7, 123456.78949),
    ]);
    expect(made).not.toMatch(/<text|d=""|NaN|Infinity|\de-\d|"-0[ "]| -0[ "]/);
    expect(made).toContain('M0 0L0 123456.789');
  });

  test('keeps blanks that the paper has', () => {
    expect(svg([text('60 %  254 mm')])).toContain('<text xml:space="preserve" ');
    expect(svg([text('60 % 254 mm')])).not.toContain('xml:space');
  });

  test('sets a text to its width on paper where whoever looks may lack the font', () => {
    const { metrics } = testFonts();
    const width = metrics.width('Pim', 4, 'regular');
    expect(svg([text('Pim')], { metrics })).toContain(`textLength="${Number(width.toFixed(3))}"`);
  });

  test('has an unseen rectangle for each row where it is asked for', () => {
    const rows = [{ frame: 25, x: 1, y: 2, width: 3, height: 4, columns: [] }];
    const made = printSvg(page([], { rows }), { rows: true });
    expect(made).toContain(
      '<rect class="row" data-frame="25" x="1" y="2" width="3" height="4" fill="none"/>',
    );
    expect(printSvg(page([], { rows }))).not.toContain('data-frame');
  });

  test('says nothing in a style where it must not', () => {
    expect(svg([text('Pim')])).toContain(' style="');
    expect(svg([text('Pim')], { styled: false })).not.toContain('style=');
  });
});

test('texts and families never become markup', () => {
  const markup =
    /^<svg [^<>]*>\n<g [^<>]*>\n<rect [^<>]*\/>\n(?:<text [^<>]*>[^<>]*<\/text>\n)?<\/g>\n<\/svg>\n$/;
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), fc.string(), (content, fontFamily) => {
      const made = svg([text(content)], { fontFamily });
      expect(made.replace(/\n(?=[^<]*<\/text>)/g, ' ')).toMatch(markup);
      expect(made).not.toMatch(/&(?!amp;|lt;|gt;|quot;)/);
    }),
  );
});

test('a hatch stays in its rectangle, at its distance, in step with every other one', () => {
  const size = fc.double({ min: 0.5, max: 80, noNaN: true });
  fc.assert(
    fc.property(
      size,
      size,
      size,
      size,
      fc.double({ min: 0.5, max: 5, noNaN: true }),
      (x, y, width, height, gapMm) => {
        const all = strokes(svg([{ ...HATCH, x, y, width, height, gapMm }]));
        for (const [x1, y1, x2, y2] of all) {
          for (const one of [x1, x2]) expect(one >= x - 0.001 && one <= x + width + 0.001).toBe(true);
          for (const one of [y1, y2]) expect(one >= y - 0.001 && one <= y + height + 0.001).toBe(true);
          // Rises to the right at 45°: x + y is one number, a whole number of steps.
          expect(Math.abs(x1 + y1 - (x2 + y2))).toBeLessThan(0.003);
          const step = (x1 + y1) / (gapMm * Math.SQRT2);
          expect(Math.abs(step - Math.round(step)) * gapMm).toBeLessThan(0.003);
        }
        expect(Math.abs(all.length - (width + height) / (gapMm * Math.SQRT2))).toBeLessThanOrEqual(1);
      },
    ),
    { numRuns: 60 },
  );
});
