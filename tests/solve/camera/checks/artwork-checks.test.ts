import { describe, expect, it, test } from 'vitest';
import { messageOf } from '../../../../src/language/message.js';
import { withEdits } from '../../../../src/language/statement-reader.js';
import type { Field, Move, Spacing } from '../../../../src/shot/camera/camera-model.js';
import { compileText } from '../../../compile.js';
import {
  codes,
  FULL,
  field,
  H,
  LINEAR,
  leg,
  level,
  pan,
  pull,
  type Scene,
  said,
  scale,
  solved,
  truck,
  W,
} from '../build.js';

describe('levels', () => {
  it('show no edge, with the frame, the side, the millimetres and the size that would do', () => {
    const paper = { sizeMm: { widthMm: 300, heightMm: 150 }, homeMm: { xMm: 0, yMm: 0 } };
    const scene = { levels: [level('BG', paper)], moves: [pan([leg(FULL, 1, field('R', { xMm: 47 }), 48)])] };
    // The right half of the paper is 150 mm, the field's 127: 23 mm are free, the camera is 24 mm off on frame 25.
    expect(said(scene, 'artwork-edge')[0]).toBe(
      'The right edge of BG comes into the picture on frame 25, by 1 mm (at worst 24 mm, on frame 48); 301 x 142.88 mm with its centre at 23.5, 0 would do.',
    );
    const free = [level('BG', { ...paper, free: true })];
    expect(codes({ ...scene, levels: free })).not.toContain('artwork-edge');
    const hidden = [level('BG', { ...paper, shown: (frame: number) => frame < 25 })];
    expect(codes({ ...scene, levels: hidden })).not.toContain('artwork-edge');
    expect(codes({ moves: [pull(['BG'], 'left', 6000, 1, 48)] })).toContain('artwork-long');
  });

  it('loop along their length, at least as long as the field, as one loop', () => {
    const loops = (loop: number, way: number, more: Partial<Parameters<typeof level>[1]> = {}) =>
      solved({ levels: [level('BG', more)], moves: [pull(['BG'], way, 700, 1, 48, { loop })] });
    const { solved: s, diagnostics } = loops(420, 0, { sizeMm: { widthMm: 420, heightMm: 150 } });
    expect(s.artwork.get('BG')).toMatchObject({ loop: { lengthMm: 420, axis: 'x' }, edge: null });
    // Shorter would cut the loop, however narrow the field is.
    expect(s.artwork.get('BG')!.needed!.width).toBe(420);
    expect(loops(W / 2, 0).solved.artwork.get('BG')!.needed!.width).toBeCloseTo(W, 10);
    expect(s.artwork.get('BG')!.needed!.x).toBe(0);
    expect(diagnostics.map(({ code }) => code)).not.toContain('loop-short');
    const found = (...args: Parameters<typeof loops>) => loops(...args).diagnostics.map(({ code }) => code);
    const low = loops(420, 0, { sizeMm: { widthMm: 420, heightMm: 120 } });
    const edge = low.diagnostics.find(({ code }) => code === 'artwork-edge')!;
    expect(messageOf(edge, 'en')).toContain('420 x 142.88 mm with its centre at 0, 0 would do');
    expect(found(250, 0)).toContain('loop-short');
    expect(found(420, 0, { sizeMm: { widthMm: 400, heightMm: 150 } })).toContain('loop-short');
    expect(found(420, 90)).not.toContain('loop-askew');
    expect(found(420, 30)).toContain('loop-askew');
    const two = [pull(['BG'], 0, 9, 1, 9, { loop: 300 }), pull(['BG'], 0, 9, 10, 19, { loop: 400 })];
    expect(codes({ moves: two })).toContain('loop-two');
  });
});

/** The text after the edit that a message offers, or null. */
function mended(text: string, code: string, files: Record<string, string> = {}): string | null {
  const found = compileText(text, files).diagnostics.filter((one) => one.code === code);
  expect(found).toHaveLength(1);
  const { fix } = found[0]!;
  if (!fix) return null;
  return withEdits(
    text,
    fix.edits.map(({ span, text: by }) => ({ ...span, text: by })),
  );
}

const codesOf = (text: string) => compileText(text).diagnostics.map(({ code }) => code);

describe('artwork whose edge shows', () => {
  const pan = 'field A full at 60,0\npan full@1 > A@2+0\n';

  test.each([
    // 254 wide, 60 to the right of the home: 2 x (60 + 127).
    ['level BG size 300x150mm', 'level BG size 374x150mm'],
    // The home is where the pan ends: 2 x (127 + 60) again, to the other side.
    ['level BG at 60,0 size 300x150mm', 'level BG at 60,0 size 374x150mm'],
    ['level BG size 300x100mm carry', 'level BG size 300x143mm carry'],
    ['level BG size 10inx14cm at 30,0', 'level BG size 314x143mm at 30,0'],
  ])('%s is to be painted larger about its centre', (line, wanted) => {
    const text = `cut 1\ntime 2+0\nA: 1..\nlevel A free\n${line}\n${pan}`;
    const after = mended(text, 'artwork-edge')!;
    expect(after).toBe(text.replace(line, wanted));
    expect(codesOf(after)).not.toContain('artwork-edge');
  });

  test('is large enough after the edit whatever moves', () => {
    for (const moves of [
      'turn level BG 0@1 > 33@2+0 cw about 20,10',
      'truck level BG 100%@1 > 61%@2+0 about -40,12',
      'field A 120% at 33,-21 cw 17\ntruck full@1 > A@2+0',
      'shake 7mm 1..2+0\npull BG left 31.7mm 1..2+0',
    ]) {
      const text = `cut 1\ntime 2+0\nA: 1..\nlevel A free\nlevel BG size 200x100mm at 3,4\n${moves}\n`;
      expect(codesOf(mended(text, 'artwork-edge')!), moves).not.toContain('artwork-edge');
    }
  });

  test('is left alone where no size is written, or a house file says it', () => {
    expect(mended(`cut 1\ntime 2+0\nA: 1..\n${pan}`, 'artwork-edge')).toBeNull();
    const house = { 'house.cut': 'level BG size 300x150mm\n' };
    const text = `use "house.cut"\ncut 1\ntime 2+0\nstack BG A\nlevel A free\nA: 1..\n${pan}`;
    expect(mended(text, 'artwork-edge', house)).toBeNull();
  });
});

const A = field('A', { xMm: 10 });
const SMALL = field('S', { widthMm: 127 });
const levels = [level('BG'), level('L', { free: true })];
const of = (...moves: Move[]): Scene => ({ levels, moves });

describe('sizes', () => {
  it('stay in a pan and change in a truck; the other word is the fix', () => {
    const panned = pan([leg(FULL, 1, SMALL, 9)]);
    const found = solved(of(panned)).diagnostics.find(({ code }) => code === 'pan-sizes')!;
    expect(found.fix!.edits).toEqual([
      { span: { ...panned.span, end: panned.span.start + 3 }, text: 'truck' },
    ]);
    const trucked = truck([leg(FULL, 1, A, 9)]);
    const other = solved(of(trucked)).diagnostics.find(({ code }) => code === 'truck-one-size')!;
    expect(other.fix!.edits[0]).toMatchObject({ text: 'pan' });
    expect(codes(of(truck([leg(FULL, 1, A, 9), leg(A, 9, SMALL, 20)])))).not.toContain('truck-one-size');
    // 60 % of 254 and 152.4 mm are one size, whatever the digits.
    const percent = field('P', { widthMm: 0.6 * 254 });
    const mm = field('M', { widthMm: 152.4, xMm: 5 });
    expect(codes(of(pan([leg(percent, 1, mm, 20)])))).not.toContain('pan-sizes');
  });
});

describe('speed', () => {
  it('does not jump at a field passed through', () => {
    const legs = (x: number, spacing: Spacing = LINEAR) =>
      pan([leg(FULL, 1, A, 11, spacing), leg(A, 11, field('X', { xMm: 10 + x }), 21, spacing)]);
    expect(codes(of(legs(10)))).not.toContain('speed-jumps');
    expect(said(of(legs(20)), 'speed-jumps')[0]).toContain('1 mm a frame before, 2 after');
    expect(codes(of(legs(-10)))).toContain('speed-jumps');
    expect(codes(of(legs(20, { form: 'ease', leave: 5, arrive: 5 })))).not.toContain('speed-jumps');
  });
});

describe('field chart check', () => {
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
});
