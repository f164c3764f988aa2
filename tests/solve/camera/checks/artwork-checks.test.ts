import { describe, expect, it, test } from 'vitest';
import { messageOf } from '../../../../src/language/message.js';
import { withEdits } from '../../../../src/language/statement-reader.js';
import type { Field, Move, Spacing } from '../../../../src/shot/camera/camera-model.js';
import { compileText } from '../../../compile.js';
import {
  at,
  codes,
  FULL,
  field,
  H,
  LINEAR,
  leg,
  level,
  pan,
  parametersOf,
  pull,
  type Scene,
  said,
  scale,
  slide,
  solved,
  truck,
  turn,
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

describe('what is said of artwork', () => {
  const paper = { sizeMm: { widthMm: 300, heightMm: 150 }, homeMm: { xMm: 5, yMm: -2 } };

  test('names its own size and centre beside the edge', () => {
    const scene = { levels: [level('BG', paper)], moves: [pan([leg(FULL, 1, field('R', { xMm: 47 }), 48)])] };
    const edge = solved(scene).diagnostics.find(({ code }) => code === 'artwork-edge')!;
    expect(edge.notes).toEqual([{ note: 'artwork', level: 'BG', width: 300, height: 150, x: 5, y: -2 }]);
  });

  test('names the longer side of artwork that nobody paints in one piece', () => {
    const moves = [pull(['BG'], 'left', 6000, 1, 48)];
    const needed = solved({ moves }).solved.artwork.get('BG')!.needed!;
    expect(needed.width).toBeGreaterThan(5000);
    expect(parametersOf({ moves }, 'artwork-long')).toEqual([{ level: 'BG', lengthMm: needed.width }]);
    expect(codes({ moves: [pull(['BG'], 'left', 4000, 1, 48)] })).not.toContain('artwork-long');
  });
});

describe('a loop', () => {
  const looping = (loop: number, way: number, more: Partial<Parameters<typeof level>[1]> = {}): Scene => ({
    levels: [level('BG', more)],
    moves: [pull(['BG'], way, 700, 1, 48, { loop })],
  });

  test('that runs upwards is as long as the field is high', () => {
    expect(parametersOf(looping(120, 90), 'loop-short')).toEqual([
      { variant: 'field', level: 'BG', loopMm: 120, neededMm: H },
    ]);
    expect(parametersOf(looping(150, 90), 'loop-short')).toEqual([]);
  });

  test('is not longer than the side of the paper along which it runs', () => {
    const sizeMm = { widthMm: 400, heightMm: 150 };
    expect(parametersOf(looping(200, 90, { sizeMm }), 'loop-short')).toEqual([
      { variant: 'artwork', level: 'BG', loopMm: 200, paintedMm: 150 },
    ]);
    expect(parametersOf(looping(400, 0, { sizeMm }), 'loop-short')).toEqual([]);
  });

  test('of a level whose size nobody has written is as long as it is typed', () => {
    const settings = { artwork: { widthMm: 300, heightMm: 200 } };
    const scene = { ...looping(900, 0, { timed: true, free: true }), settings };
    expect(solved(scene).solved.artwork.get('BG')!.width).toBe(300);
    expect(codes(scene)).not.toContain('loop-short');
  });

  const pulled = (way: number, from: number, to: number) => pull(['BG'], way, 9, from, to, { loop: 300 });
  const axis = (...moves: Move[]) => solved({ moves }).solved.artwork.get('BG')!.loop?.axis;

  test.each([
    ['is turned away step by step', [turn(['BG'], [leg(0, 1, 90, 4)]), pulled(0, 1, 4)]],
    ['jumps to its other axis', [turn(['BG'], [leg(0, 1, 90, 2)]), pulled(0, 1, 4)]],
    ['is turned on the last frame only', [turn(['BG'], [leg(0, 3, 45, 4)]), pulled(0, 1, 4)]],
  ])('lies along no axis where the level %s', (_, moves) => {
    expect(parametersOf({ moves }, 'loop-askew')).toEqual([{ level: 'BG' }]);
    expect(axis(...moves)).toBeUndefined();
  });

  test('lies as the level and the camera lie while it is pulled, whatever was before', () => {
    expect(axis(turn(['BG'], [leg(0, 1, 90, 2)]), pulled(0, 3, 5))).toBe('y');
    const turned = pan([leg(FULL, 1, field('T', { turnDeg: 90 }), 2)]);
    expect(axis(turned, pulled(0, 3, 5))).toBe('y');
  });

  test('runs against the sense in which turns are counted', () => {
    // Turned 30 degrees clockwise the level's own right side points 30 degrees down: 330 against the clock.
    const down = turn(['BG'], [leg(0, 1, 30, 2)]);
    expect(axis(down, pulled(330, 3, 5))).toBe('x');
    expect(axis(down, pulled(30, 3, 5))).toBeUndefined();
  });

  test('is one: another length or another axis is told with both, and where the first one is', () => {
    const first = pulled(0, 1, 9);
    const two = (second: Move) => ({ moves: [first, second] });
    expect(codes(two(pulled(0, 10, 19)))).not.toContain('loop-two');
    const found = solved(two(pulled(90, 10, 19))).diagnostics.find(({ code }) => code === 'loop-two')!;
    expect(found.parameters).toEqual({
      level: 'BG',
      here: { mm: 300, axis: 'y' },
      there: { mm: 300, axis: 'x' },
    });
    expect(found.notes).toEqual([{ note: 'other-pull', span: first.span }]);
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
    // A side that does keeps its digits: the field is 142.875 high.
    ['level BG size 300x142.875mm', 'level BG size 374x142.875mm'],
    ['level BG size 300x150.123456mm', 'level BG size 374x150.123456mm'],
    ['level BG size 10inx14cm at 30,0', 'level BG size 314x143mm at 30,0'],
  ])('%s is to be painted larger about its centre', (line, wanted) => {
    const text = `cut 1\ntime 2+0\nA: 1..\nlevel A free\n${line}\n${pan}`;
    const after = mended(text, 'artwork-edge')!;
    expect(after).toBe(text.replace(line, wanted));
    expect(codesOf(after)).not.toContain('artwork-edge');
  });

  test('is offered no size that nobody can mean', () => {
    const text =
      'cut 1\ntime 2+0\nA: 1..\nlevel A free\nlevel BG size 300x150mm\npull BG left 60000mm 1..2+0\n';
    expect(mended(text, 'artwork-edge')).toBeNull();
    const shorter = text.replace('60000', '600');
    const { fix } = compileText(shorter).diagnostics.find(({ code }) => code === 'artwork-edge')!;
    expect(fix).toMatchObject({ action: 'paint-on', size: '1454x150mm' });
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
    expect(found.parameters).toEqual({ from: 'full', fromMm: W, to: 'S', toMm: 127 });
    expect(found.fix).toMatchObject({ action: 'write', written: 'truck' });
    expect(other.parameters).toEqual({ from: 'full', to: 'A', widthMm: W });
    // What only a truck can be is no pan.
    for (const more of [{ quick: true }, { ratios: true }]) {
      const only = solved(of(truck([leg(FULL, 1, A, 9)], more))).diagnostics;
      expect(only.find(({ code }) => code === 'truck-one-size')).not.toHaveProperty('fix');
    }
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

describe('a jump of the speed', () => {
  const to = (xMm: number) => field(`to ${xMm}`, { xMm });
  const jumps = (...moves: Move[]) => parametersOf(of(...moves), 'speed-jumps');

  test('is told with the speeds on both sides, also of a leg of one frame', () => {
    const legs = [leg(to(0), 1, to(10), 11), leg(to(10), 11, to(12), 12), leg(to(12), 12, to(13), 13)];
    expect(jumps(pan(legs))).toEqual([
      { frame: 11, field: 'to 10', before: 1, after: 2 },
      { frame: 12, field: 'to 12', before: 2, after: 1 },
    ]);
  });

  test('has a note on speed that goes on', () => {
    const legs = [leg(to(0), 1, to(10), 11), leg(to(10), 11, to(30), 21)];
    const found = solved(of(pan(legs))).diagnostics.find(({ code }) => code === 'speed-jumps')!;
    expect([found.span, found.notes]).toEqual([legs[1]!.span, [{ note: 'even-speed' }]]);
  });

  test('on twos is measured over steps of two frames, as far as there is room for them', () => {
    // The way of a leg that leaves with all its frames grows with the square of the time: it begins at rest.
    const leaving = leg(to(10), 11, to(14), 15, { form: 'ease', leave: 4, arrive: 0 });
    expect(jumps(pan([leg(to(0), 1, to(10), 11), leaving], { on: 2 }))).toEqual([
      { frame: 11, field: 'to 10', before: 1, after: 0 },
    ]);
    const legs = [leg(to(0), 1, to(10), 11), leg(to(10), 11, to(14), 13), leg(to(14), 13, to(15), 14)];
    expect(jumps(pan(legs, { on: 2 }))).toEqual([
      { frame: 11, field: 'to 10', before: 1, after: 2 },
      { frame: 13, field: 'to 14', before: 2, after: 1 },
    ]);
  });

  test('on twos is none where an even move makes its last step in a single frame', () => {
    // 2 mm a frame throughout; a leg of three or five frames has a whole step or two, and one of one frame.
    const even = [leg(to(0), 1, to(6), 4), leg(to(6), 4, to(16), 9), leg(to(16), 9, to(20), 11)];
    expect(jumps(pan(even, { on: 2 }))).toEqual([]);
    const slower = [leg(to(0), 1, to(6), 4), leg(to(6), 4, to(11), 9)];
    expect(jumps(pan(slower, { on: 2 }))).toEqual([{ frame: 4, field: 'to 6', before: 2, after: 1 }]);
  });

  test('on threes is that of the ramp, exactly, whatever is left for the last step', () => {
    // Arrives at rest over ten frames, and goes on at 1 mm a frame.
    const arriving = leg(to(0), 1, to(10), 11, { form: 'ease', leave: 0, arrive: 10 });
    const [found] = jumps(pan([arriving, leg(to(10), 11, to(20), 21)], { on: 3 }));
    expect(found).toMatchObject({ before: expect.closeTo(0, 9), after: expect.closeTo(1, 9) });
  });

  test('of a truck is that of the field’s edge, half of what its width gains', () => {
    const wide = (widthMm: number) => field(`wide ${widthMm}`, { widthMm });
    const legs = [leg(wide(254), 1, wide(154), 11), leg(wide(154), 11, wide(134), 21)];
    expect(jumps(truck(legs))).toEqual([{ frame: 11, field: 'wide 154', before: 5, after: 1 }]);
  });

  test('has no field where a level passes through a place without a name', () => {
    const places = [leg(at(0, 0), 1, at(10, 0), 11), leg(at(10, 0), 11, at(30, 0), 21)];
    expect(jumps(slide(['BG'], places))).toEqual([{ frame: 11, field: null, before: 1, after: 2 }]);
  });

  test('is seen from a quarter of the faster speed on, and from a tenth of a millimetre', () => {
    const found = (mm: number, then: number) =>
      jumps(pan([leg(to(0), 1, to(mm), 11), leg(to(mm), 11, to(mm + then), 21)])).length;
    // 1 and 1.3 mm a frame: 0.3 is less than a quarter of 1.3, and more than one of 1.
    expect(found(10, 13)).toBe(0);
    expect(found(10, 14)).toBe(1);
    expect(found(0.5, 1)).toBe(0);
    expect(found(0.5, 1.6)).toBe(1);
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
      expect(reaches(chart(13, 0, 0))).toEqual([
        ['east', 13],
        ['north', 13],
      ]);
      // 6 lines to the centre, and 6 (cos 30° + 9/16 sin 30°) to the corner; 2, and 6 (16/9 sin 30° + cos 30°).
      const turned = { turnDeg: 30 };
      expect(reaches(chart(6, 6, 0, turned))).toEqual([['east', 12.883652]]);
      expect(reaches(chart(6, 0, 2, turned))).toEqual([['north', 12.529486]]);
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

  it('a scan that is enlarged is told with the pixels that would do, at the field or at the level', () => {
    const rest = field('A', { widthMm: 127 });
    const numbers = { dpi: 200, enough: expect.closeTo(0.96, 9), pixels: 1920 };
    // 1920 px over 127 mm are 384 to the inch.
    const found = (scene: Scene) =>
      solved(scene)
        .diagnostics.filter(({ code }) => code === 'scan-enlarged')
        .map((one) => [one.span, one.parameters, one.notes]);
    const notes = [{ note: 'enough-dpi', dpi: 384 }];
    expect(found({ rest })).toEqual([[rest.span, { level: null, share: 0.5, frame: 1, ...numbers }, notes]]);
    const L = level('L', { free: true });
    const grown = scale(['L'], [leg(1, 1, 2, 9)]);
    const [[span, parameters, more] = []] = found({ levels: [level('BG'), L], moves: [grown] });
    expect(span).not.toEqual(FULL.span);
    expect([parameters, more]).toEqual([{ level: 'L', share: 0.5, frame: 9, ...numbers }, notes]);
  });

  it('a level is not scanned finer while it does not show', () => {
    const hidden = level('BG', { shown: (frame) => frame < 5 });
    const moves = [scale(['BG'], [leg(1, 6, 2, 9)])];
    expect(codes({ levels: [hidden], moves })).not.toContain('scan-enlarged');
    expect(codes({ moves })).toContain('scan-enlarged');
  });
});
