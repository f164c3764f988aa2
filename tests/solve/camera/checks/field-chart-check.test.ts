import { describe, expect, it } from 'vitest';
import type { Field, Move } from '../../../../src/shot/camera/camera-model.js';
import { codes, field, H, leg, level, type Scene, said, scale, solved, W } from '../build.js';

const levels = [level('BG'), level('L', { free: true })];
const of = (...moves: Move[]): Scene => ({ levels, moves });

describe('fields', () => {
  it('so small that the scan is enlarged are named with the percent from which', () => {
    const message = said({ rest: field('A', { widthMm: 127 }) }, 'scan-enlarged')[0]!;
    // 1920 px at 200 dpi are 243.84 mm, 96 % of 254.
    expect(message).toContain('50 % of the standard field');
    expect(message).toContain('from 96 % down');
    expect(codes({ rest: field('A', { widthMm: 244 }) })).not.toContain('scan-enlarged');
    expect(codes({ rest: field('A', { widthMm: 243 }) })).toContain('scan-enlarged');
    expect(said(of(scale(['L'], [leg(1, 1, 2, 9)])), 'scan-enlarged')[0]).toMatch(/^L shows as little/);
  });
});

describe('a field in chart notation', () => {
  // 12 lines on each side of the centre; a step is half a line, W/24 wide and H/24 high, so 8F reaches its 4th step to the side.
  const chart = (F: number, east: number, north: number, more: Partial<Field> = {}) =>
    field('C', {
      notation: 'chart',
      widthMm: (W * F) / 12,
      xMm: (W * east) / 24,
      yMm: (H * north) / 24,
      ...more,
    });
  const off = (one: Field) =>
    solved({ fields: [one] }).diagnostics.find(({ code }) => code === 'field-off-chart')?.parameters;

  it('lies on the chart where |E| + F is not more than its lines', () => {
    expect(off(chart(8, 4, 0))).toBeUndefined();
    expect(off(chart(8, -4, 4))).toBeUndefined();
  });

  it('off it is told with the sides and the lines it reaches', () => {
    const reaches = (one: Field) =>
      (off(one) as { reaches: { lines: number; side: string }[] }).reaches.map(({ lines, side }) => [
        side,
        Math.round(lines * 1e6) / 1e6,
      ]);
    expect(reaches(chart(8, 5, 0))).toEqual([['east', 13]]);
    expect(reaches(chart(8, -6, -5))).toEqual([
      ['west', 14],
      ['south', 13],
    ]);
    expect(reaches(chart(8, 0, 5))).toEqual([['north', 13]]);
  });

  it('that is turned reaches as far as its corners', () => {
    expect(off(chart(12, 0, 0, { turnDeg: 180 }))).toBeUndefined();
    expect(off(chart(12, 0, 0, { turnDeg: 1 }))).toMatchObject({ field: 'C', lines: 12 });
  });

  it('is not asked of fields in other measures', () => {
    expect(off(chart(12, 9, 0, { notation: 'mm' }))).toBeUndefined();
  });
});

it('a scan is enough on every field where its pixels do not reach the standard field', () => {
  const small = { rest: field('A', { widthMm: 20 }) };
  expect(codes({ ...small, settings: { scanDpi: 100 } })).not.toContain('scan-enlarged');
  expect(codes({ ...small, settings: { scanDpi: 200 } })).toContain('scan-enlarged');
});

it('a level is not scanned finer while it does not show', () => {
  const hidden = level('BG', { shown: (frame) => frame < 5 });
  const moves = [scale(['BG'], [leg(1, 6, 2, 9)])];
  expect(codes({ levels: [hidden], moves })).not.toContain('scan-enlarged');
  expect(codes({ moves })).toContain('scan-enlarged');
});
