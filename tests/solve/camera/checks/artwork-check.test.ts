import { describe, expect, it, test } from 'vitest';
import { messageOf } from '../../../../src/language/message.js';
import { withEdits } from '../../../../src/language/statement-reader.js';
import { compileText } from '../../../compile.js';
import { codes, FULL, field, leg, level, pan, pull, said, solved, W } from '../build.js';

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
