import { createCanvas } from '@napi-rs/canvas';
import { describe, expect, it } from 'vitest';
import type { Canvas2D } from '../../src/picture/canvas-2d.js';
import { pictureOf } from '../../src/picture/frame-list.js';
import { type Drawing, paintFrame } from '../../src/picture/frame-painter.js';
import { compileText } from '../compile.js';

const SIZE = { width: 508, height: 286 };

interface Written {
  readonly text: string;
  /** Of its font, and where it stands from the centre of the picture, pixels. */
  readonly size: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/** A canvas that notes what is written on it. */
function noted(body: string, frame: number, drawing: Drawing<never> | null = null) {
  const context = createCanvas(SIZE.width, SIZE.height).getContext('2d');
  const written: Written[] = [];
  const rows: number[] = [];
  const spy = new Proxy(context, {
    get(target, key) {
      const value = Reflect.get(target, key);
      if (typeof value !== 'function') return value;
      return (...args: unknown[]) => {
        const { a, d, e, f } = target.getTransform();
        if (key === 'fillText') {
          const [text, x, y] = args as [string, number, number];
          const size = Number(/([\d.]+)px/.exec(target.font)![1]) * a;
          const width = target.measureText(text).width * a;
          written.push({ text, size, x: a * x + e - SIZE.width / 2, y: d * y + f - SIZE.height / 2, width });
        }
        if (key === 'moveTo') rows.push(Number(args[0]));
        return value.apply(target, args);
      };
    },
    set: (target, key, value) => Reflect.set(target, key, value),
  }) as unknown as Canvas2D<never>;
  const cut = pictureOf(compileText(`cut 1\ntime 1+0\n${body}`).solved!);
  paintFrame(spy, cut, cut.frames[frame - 1]!, {
    ...SIZE,
    family: 'sans-serif',
    scratch: () => ({ context: spy, image: undefined as never }),
    drawing: () => drawing,
  });
  return { written, rows, context };
}

const named = ({ written }: { written: readonly Written[] }, text: string): Written =>
  written.find((one) => one.text === text)!;

describe('a drawing that does not exist yet', () => {
  it('is a sheet with the level and the number that the sheet says', () => {
    const body = 'stack BG A\nA: 1:12 2..\n';
    expect(noted(body, 12).written.map(({ text }) => text)).toContain('A1');
    expect(noted(body, 13).written.map(({ text }) => text)).toContain('A2');
  });

  it('has a number as large as fits', () => {
    const alone = named(noted('stack BG A\nA: 1..\n', 1), 'A1');
    // Capitals are 0.73 of the size high: a little more than half of the field is filled.
    expect(alone.size * 0.73).toBeCloseTo(SIZE.height * 0.55, -1);
    const long = named(noted('stack BG LONGNAME\nLONGNAME: 1..\n', 1), 'LONGNAME1');
    expect(long.width).toBeLessThan(SIZE.width * 0.92);
    expect(long.width).toBeGreaterThan(SIZE.width * 0.8);
  });

  it('leaves the other levels room beside it', () => {
    const drawn = noted('stack BG A B C\nA: 1..\nB: 1..\nC: 1..\n', 1);
    const [a, b, c] = ['A1', 'B1', 'C1'].map((text) => named(drawn, text)) as [Written, Written, Written];
    expect(a.x + a.width / 2).toBeLessThan(b.x - b.width / 2);
    expect(b.x + b.width / 2).toBeLessThan(c.x - c.width / 2);
    expect(b.x).toBeCloseTo(0, 5);
  });

  it('moves with the level', () => {
    const body = 'stack BG A\nA: 1..\nslide A ア(0,0)@1 > イ(-50,20)@1+0\n';
    const [first, last] = [named(noted(body, 1), 'A1'), named(noted(body, 24), 'A1')];
    expect(last.x - first.x).toBeCloseTo(-100, 5);
    expect(last.y - first.y).toBeCloseTo(-40 * (286 / 285.75), 5);
  });

  it('says of a file that cannot be read which one it is', () => {
    const { written } = noted('stack BG A\nA: 1..\n', 1, { kind: 'unreadable', fault: 'A1.png' });
    expect(written.filter(({ text }) => text === 'A1.png')).toHaveLength(2);
  });

  it('is light where light shines through it', () => {
    const glowing = noted('stack BG A\nA: 1..\nglow A 1..1+0\n', 1).context;
    const plain = noted('stack BG A\nA: 1..\n', 1).context;
    const warm = (context: typeof plain) => {
      const { data } = context.getImageData(0, 0, SIZE.width, SIZE.height);
      let count = 0;
      for (let i = 0; i < data.length; i += 4)
        if (data[i] === 255 && data[i + 1] === 251 && data[i + 2] === 224) count++;
      return count;
    };
    expect(warm(plain)).toBe(0);
    expect(warm(glowing)).toBeGreaterThan(1000);
  });
});

describe('a background that does not exist yet', () => {
  it('has a grid with the millimetres of its artwork', () => {
    const texts = noted('stack BG\n', 1).written.map(({ text }) => text);
    expect(texts).toContain('BG');
    expect(texts).toContain('0, 0');
    expect(texts).toContain('-100, 50');
  });

  it('counts them along a loop from its beginning', () => {
    const texts = noted('stack BG\npull BG left 0.001mm/f 1..1+0 loop 80mm\n', 1).written.map(
      ({ text }) => text,
    );
    expect(texts).toContain('20, 0');
    expect(texts).not.toContain('100, 0');
  });

  it('has no more lines than can be seen, however far the camera is', () => {
    const far = noted('stack BG\nfield F 40000mm at 0,0\nfix F\n', 1);
    expect(far.rows.length).toBeLessThan(500);
  });
});
