import { type Canvas, createCanvas } from '@napi-rs/canvas';
import { describe, expect, it } from 'vitest';
import { pictureOf } from '../../src/picture/frame-list.js';
import { blend, type Drawing, fieldOn, paintFrame } from '../../src/picture/frame-painter.js';
import { compileText } from '../compile.js';
import { findMark, registrationDrawing } from './registration-scans.js';
import { scratch } from './scratch-canvas.js';

const SIZE = { width: 254, height: 142 };

function plainSheet(colour: string, paper: boolean, widthMm = 297, heightMm = 210): Drawing<Canvas> {
  const image = createCanvas(30, 20);
  const context = image.getContext('2d');
  context.fillStyle = colour;
  context.fillRect(0, 0, 30, 20);
  return { kind: 'picture', image, widthMm, heightMm, paper, lit: null };
}

/** Paints a frame of a cut; gives colours as numbers, at places from the picture's centre in pixels, y upwards. */
function painted(
  body: string,
  frame: number,
  drawings: Readonly<Record<string, Drawing<Canvas>>>,
  { width, height } = SIZE,
) {
  const cut = pictureOf(compileText(`cut 1\ntime 1+0\n${body}`).solved!);
  const canvas = createCanvas(width, height);
  const context = canvas.getContext('2d');
  paintFrame(context, cut, cut.frames[frame - 1]!, {
    width,
    height,
    family: 'sans-serif',
    scratch: scratch({ width, height }),
    drawing: (level, number) => drawings[`${cut.levels[level]!.name}${number ?? ''}`] ?? null,
  });
  const at = (x: number, y: number): number[] => [
    ...context.getImageData(Math.floor(width / 2 + x), Math.floor(height / 2 - y), 1, 1).data.slice(0, 3),
  ];
  return { at, context, canvas, cut };
}

const A = 'stack BG A\nA: 1..\n';

describe('what lies upon what', () => {
  it('lets paper of a level be seen through, and its lines darken', () => {
    const { at } = painted(A, 1, { BG: plainSheet('#ff8000', true), A1: plainSheet('#fff', true) });
    expect(at(0, 0)).toEqual([255, 128, 0]);
    const dark = painted(A, 1, { BG: plainSheet('#ff8000', true), A1: plainSheet('#808080', true) });
    expect(dark.at(0, 0)[0]).toBeCloseTo(128, -1);
    expect(dark.at(0, 0)[2]).toBe(0);
  });

  it('covers with what was painted and has a transparent ground of its own', () => {
    const { at } = painted(A, 1, {
      BG: plainSheet('#ff8000', true),
      A1: plainSheet('#ffffff', false, 100, 60),
    });
    expect(at(0, 0)).toEqual([255, 255, 255]);
    expect(at(60, 0)).toEqual([255, 128, 0]);
  });

  it('shows a double exposure by its share', () => {
    const body = `${A}expose A 50% 1..1+0\n`;
    const { at } = painted(body, 1, { BG: plainSheet('#fff', true), A1: plainSheet('#000', true) });
    expect(at(0, 0)[0]).toBeGreaterThan(125);
    expect(at(0, 0)[0]).toBeLessThan(130);
  });

  it('repeats a loop along its axis, and nothing else', () => {
    const body = 'stack BG\npull BG left 0.001mm/f 1..1+0 loop 80mm\n';
    const mark = registrationDrawing({ red: { x: 0, y: 0 } }, { widthMm: 80, heightMm: 60, paper: true });
    const { at } = painted(body, 1, { BG: mark });
    for (const x of [-80, 0, 80]) expect(at(x, 0)).toEqual([255, 0, 0]);
    expect(at(0, 60)).toEqual([255, 255, 255]);
  });
});

describe('a mask', () => {
  const BODY = 'stack BG A B C\nlevel C masks A\nA: 1..\nB: 1..\nC: 1:12 x..\n';
  const drawings = {
    BG: plainSheet('#ff8000', true),
    A1: plainSheet('#0000ff', false),
    B1: plainSheet('#00ff00', false, 60, 60),
    C1: plainSheet('#000000', false, 100, 200),
  };

  it('leaves nothing of the levels that it names under its paint, and all of the others; itself it is not seen', () => {
    const { at } = painted(BODY, 1, drawings);
    expect(at(90, 0)).toEqual([0, 0, 255]);
    expect(at(40, 0)).toEqual([255, 128, 0]);
    expect(at(0, 0)).toEqual([0, 255, 0]);
  });

  it('hides nothing on frames on which it has no drawing, or none yet', () => {
    expect(painted(BODY, 13, drawings).at(40, 0)).toEqual([0, 0, 255]);
    const { C1: _, ...undrawn } = drawings;
    expect(painted(BODY, 1, undrawn).at(40, 0)).toEqual([0, 0, 255]);
  });

  it('goes with its own move, and what it hides with its own', () => {
    const moves = 'slide C 60,0 1..12\n';
    expect(painted(`${BODY}${moves}`, 12, drawings).at(40, 0)).toEqual([255, 128, 0]);
    expect(painted(`${BODY}${moves}`, 12, drawings).at(-40, 0)).toEqual([0, 0, 255]);
  });

  it('on paper hides with its ink alone, and lines on paper still let be seen what lies below', () => {
    const ink = plainSheet('#000000', false, 100, 200) as Extract<Drawing<Canvas>, { kind: 'picture' }>;
    const onPaper = { ...(plainSheet('#ffffff', true) as typeof ink), lit: ink.image, widthMm: 100 };
    const grey = { ...drawings, A1: plainSheet('#808080', true), C1: onPaper };
    const { at } = painted(BODY, 1, grey);
    expect(at(40, 0)).toEqual([255, 128, 0]);
    expect(at(90, 0)[0]).toBeCloseTo(128, -1);
    expect(at(90, 0)[2]).toBe(0);
  });
});

describe('the light', () => {
  const white = { BG: plainSheet('#fff', true) };
  it('fades to black and to white', () => {
    expect(painted('fade out 5..9\n', 7, white).at(0, 0)[0]).toBeCloseTo(128, -1);
    expect(painted('fade out 5..9\n', 24, white).at(0, 0)).toEqual([0, 0, 0]);
    expect(painted('fade out white 5..9\n', 24, { BG: plainSheet('#000', true) }).at(0, 0)).toEqual([
      255, 255, 255,
    ]);
  });

  it('of a cut alone goes out in a dissolve; `dissolved` leaves it to the caller, who blends two pictures', () => {
    const { at, context, cut } = painted('overlap out 9\n', 24, white);
    expect(at(0, 0)[0]).toBeCloseTo(128, -1);
    paintFrame(context, cut, cut.frames[23]!, {
      ...SIZE,
      family: 'sans-serif',
      scratch: scratch(SIZE),
      drawing: () => white.BG,
      dissolved: true,
    });
    expect(at(0, 0)).toEqual([255, 255, 255]);
    const other = createCanvas(SIZE.width, SIZE.height);
    const dark = other.getContext('2d');
    dark.fillStyle = '#000';
    dark.fillRect(0, 0, SIZE.width, SIZE.height);
    blend(context, other, 0.25, SIZE);
    expect(at(0, 0)[0]).toBeCloseTo(191, -1);
  });

  it('shines through a drawing that has its light, on those frames only', () => {
    const { kind, image, ...size } = plainSheet('#202020', true) as Extract<
      Drawing<Canvas>,
      { kind: 'picture' }
    >;
    const lit = (plainSheet('#ffe0a0', false) as Extract<Drawing<Canvas>, { kind: 'picture' }>).image;
    const drawings = { BG: plainSheet('#404040', true), A1: { kind, image, ...size, lit } };
    const body = `${A}glow A 5..8\n`;
    expect(painted(body, 6, drawings).at(0, 0)).toEqual([255, 224, 160]);
    expect(painted(body, 9, drawings).at(0, 0)[0]).toBeLessThan(32);
  });
});

describe('the field', () => {
  it('fills a picture that is a pixel off its shape', () => {
    expect(fieldOn({ field: { widthMm: 254, heightMm: 142.875 } }, 254, 142)).toMatchObject({
      left: 0,
      top: 0,
      width: 254,
      height: 142,
    });
  });

  it('stands in the middle of a picture of another shape, with black at its sides', () => {
    const { at } = painted('', 1, { BG: plainSheet('#fff', true) }, { width: 300, height: 142 });
    expect(at(0, 0)).toEqual([255, 255, 255]);
    expect(at(-140, 0)).toEqual([0, 0, 0]);
    expect(at(140, 0)).toEqual([0, 0, 0]);
  });

  it('leaves the canvas as it was', () => {
    const canvas = createCanvas(254, 142);
    const context = canvas.getContext('2d');
    context.setTransform(2, 0, 0, 2, 5, 5);
    const before = { ...context.getTransform() };
    const cut = pictureOf(compileText(`cut 1\ntime 1+0\n${A}`).solved!);
    paintFrame(context, cut, cut.frames[0]!, {
      ...SIZE,
      family: 'sans-serif',
      scratch: scratch(SIZE),
      drawing: () => null,
    });
    expect({ ...context.getTransform() }).toEqual(before);
    expect(context.globalCompositeOperation).toBe('source-over');
  });
});

it('paints a mark where the solver says, within half a pixel', () => {
  const body = 'stack BG A\nA: 1..\nfield P 80% at 20,-10 cw 12\nfix P\n';
  const size = { width: 508, height: 286 };
  const scan = registrationDrawing({ red: { x: 12, y: 15 } }, { paper: true });
  const { context } = painted(body, 1, { A1: scan, BG: plainSheet('#fff', true, 900, 700) }, size);
  // By hand: P turned clockwise by 12 shows its surroundings turned the other way, 1 / 0.8 times as large, 2 pixels a mm.
  const [dx, dy] = [12 - 20, 15 + 10];
  const [cos, sin] = [Math.cos((12 * Math.PI) / 180), Math.sin((12 * Math.PI) / 180)];
  const x = 254 + 2 * (1 / 0.8) * (dx * cos - dy * sin);
  const y = 143 - (286 / 142.875) * (1 / 0.8) * (dx * sin + dy * cos);
  const found = findMark(context, 'red')!;
  expect(Math.hypot(found.x - x, found.y - y)).toBeLessThan(0.5);
});
