import { describe, expect, it } from 'vitest';
import { defaults } from '../../src/shot/settings.js';
import { checkChart } from '../../src/solve/camera/checks/artwork-checks.js';
import { FULL, field, solved } from '../solve/camera/build.js';

const INCH = 25.4;
/** A field of a chart, as its notation has it: F lines wide, E and N steps of half a line away. */
function chartField(lines: number, east: number, north: number, settings = defaults) {
  const { widthMm, heightMm } = settings.field;
  return field('A', {
    widthMm: (widthMm * lines) / settings.fields,
    xMm: (east * widthMm) / (2 * settings.fields),
    yMm: (north * heightMm) / (2 * settings.fields),
    notation: 'chart',
  });
}

const WIDE_12 = { ...defaults, field: { widthMm: 12 * INCH, heightMm: 6.75 * INCH } };
const FIRST = { rest: FULL };

function first(rest: typeof FULL, settings = defaults) {
  return solved({ ...FIRST, rest, settings }).solved.frames[0]!;
}

describe('fields', () => {
  it('give the field number in inches on a 12 in field: 12F is 304.8 mm, 7F 177.8 mm', () => {
    // Field number = width in inches: animationpost.co.uk doping pages.
    const twelve = first(field('full', { widthMm: 304.8 }), WIDE_12);
    const seven = first(field('A', { widthMm: 177.8 }), WIDE_12);
    expect(twelve.field).toBeCloseTo(12, 12);
    expect(seven.field).toBeCloseTo(7, 12);
  });

  it('stand 8F at 2N 3E of a 16:9 12-field chart with their centre 38.1 mm east, 14.2875 mm north', () => {
    // Half an inch a step E/W, .28125 in a step N/S at 16:9: common practice, computed from 12 x 6.75 in.
    const frame = first(chartField(8, 3, 2, WIDE_12), WIDE_12);
    expect(frame.x).toBeCloseTo(38.1, 12);
    expect(frame.y).toBeCloseTo(14.2875, 12);
    expect(frame.width).toBeCloseTo(8 * INCH, 12);
  });

  it('fit the chart while |E| + F and |N| + F are at most its lines: 8F 3E does, 8F 5E does not', () => {
    // Computed from the chart's geometry, two ways agreeing (common practice gives no source).
    const check = (east: number, north: number) => {
      const found: string[] = [];
      checkChart([chartField(8, east, north, WIDE_12)], WIDE_12, ({ code }) => found.push(code));
      return found;
    };
    expect(check(3, 0)).toEqual([]);
    expect(check(4, -4)).toEqual([]);
    expect(check(5, 0)).toEqual(['field-off-chart']);
    expect(check(0, -5)).toEqual(['field-off-chart']);
  });

  it('are 127 mm wide at 50 % of the Japanese standard field, and 71.4375 mm high', () => {
    // Recommended 16:9 layout paper of Japan's producers' association: 254 x 142.875 mm.
    expect(defaults.field).toEqual({ widthMm: 10 * INCH, heightMm: 5.625 * INCH });
    const { solved: half } = solved({ rest: field('A', { widthMm: 127 }) });
    expect(half.frames[0]!.percent).toBe(50);
    expect(half.artwork.get('BG')!.needed).toEqual({ width: 127, height: 71.4375, x: 0, y: 0 });
  });

  it('agree in percent, field number and millimetres', () => {
    for (let width = 20; width <= 300; width += 7.3) {
      const frame = first(field('A', { widthMm: width }));
      expect((frame.percent / 100) * defaults.field.widthMm).toBeCloseTo(frame.width, 10);
      expect((frame.field / defaults.fields) * defaults.field.widthMm).toBeCloseTo(frame.width, 10);
    }
  });
});
