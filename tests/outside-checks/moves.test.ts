import fc from 'fast-check';
import {
  applyToPoint,
  compose,
  inverse,
  type Matrix,
  rotateDEG,
  scale as scaling,
  translate,
} from 'transformation-matrix';
import { describe, expect, it } from 'vitest';
import { SAFE_FROM, STROBES_OVER } from '../../src/solve/camera/checks/speed-checks.js';
import * as build from '../solve/camera/build.js';

const { field, leg, pan, truck, pull, scale, turn, slide, solved, level, at, W } = build;
const SMALL = { settings: { field: { widthMm: 12, heightMm: 6.75 }, scanDpi: 10000 } };
/** Of a chart in inches. */
const inches = (name: string, width: number, x = 0) => field(name, { widthMm: width, xMm: x });

describe('steps of a move', () => {
  it('are 48 mm over 24 frames: 2 mm on the first frame, 48 on the last', () => {
    // B. Salt, Movements in Animation (1976) ch. V; 48 mm a second = 2 mm a frame: S. Frazier, Japanese Animation Camera Work.
    const { solved: s } = solved({ length: 24, moves: [pull(['BG'], 'right', 48, 1, 24)] });
    const x = s.placement.get('BG')!.map((p) => p.x);
    expect(x[0]).toBeCloseTo(2, 12);
    expect(x[23]).toBe(48);
  });
});

describe('a curved pan', () => {
  const [a, b, c] = [field('A'), field('B', { xMm: 80, yMm: 60 }), field('C', { xMm: 160 })];
  /** Height of the parabola through the three centres, and its length to x by Simpson's rule. */
  const parabola = (x: number) => 60 - (60 * (x - 80) ** 2) / 80 ** 2;
  const lengthTo = (x: number) => {
    const slope = (at: number) => Math.hypot(1, (-120 * (at - 80)) / 80 ** 2);
    const n = 2000;
    let sum = slope(0) + slope(x);
    for (let i = 1; i < n; i++) sum += (i % 2 ? 4 : 2) * slope((x * i) / n);
    return (sum * x) / n / 3;
  };

  it('has gone along it what the ease says, and passes a field without a frame', () => {
    const through = { ...leg(a, 1, c, 101, { form: 'ease', leave: 40, arrive: 20 } as const), passing: [b] };
    const { frames, moves } = solved({ length: 101, moves: [pan([through], { curved: true })] }).solved;
    const v = 1 / (100 - 30);
    const share = (i: number) => {
      if (i <= 40) return (v * i * i) / 80;
      return i <= 80 ? v * (i - 20) : 1 - (v * (100 - i) ** 2) / 40;
    };
    const whole = lengthTo(160);
    for (const { frame, x, y } of frames) {
      expect(y).toBeCloseTo(parabola(x), 6);
      expect(lengthTo(x)).toBeCloseTo(whole * share(frame - 1), 6);
    }
    const [move] = moves;
    expect(move!.wayMm).toBeCloseTo(whole, 6);
    expect(move!.graduations.reduce((sum, { stepMm }) => sum + stepMm, 0)).toBeCloseTo(whole, 6);
  });

  it('is on each field on its frame', () => {
    const legs = [leg(a, 1, b, 31), leg(b, 31, c, 41)];
    const { frames } = solved({ length: 48, moves: [pan(legs, { curved: true })] }).solved;
    expect([frames[30], frames[40], frames[47]]).toMatchObject([
      { x: 80, y: 60 },
      { x: 160, y: 0 },
      { x: 160, y: 0 },
    ]);
    for (const { frame, x } of frames.slice(0, 31))
      expect(lengthTo(x)).toBeCloseTo((lengthTo(80) * (frame - 1)) / 30, 6);
  });

  it('has graduations by hand that add up to its length', () => {
    const steps = (mm: number) => {
      const spacing = { form: 'steps', mm: Array.from({ length: 10 }, () => mm / 10) } as const;
      return build.codes({
        moves: [pan([{ ...leg(a, 1, c, 11, spacing), passing: [b] }], { curved: true })],
      });
    };
    expect(steps(lengthTo(160))).not.toContain('steps-sum');
    expect(steps(160)).toContain('steps-sum');
  });
});

describe('a pan and a truck at once', () => {
  const a = field('A', { widthMm: 254 });
  const b = field('B', { widthMm: 200, xMm: 90, yMm: -30 });
  const ease = { form: 'ease', leave: 20, arrive: 10 } as const;

  it('have the centre of the one and the width of the other on every frame', () => {
    const moves = [pan([leg(a, 1, b, 61, ease)]), truck([leg(a, 11, b, 51)], { ratios: true })];
    const { frames } = solved({ length: 72, moves }).solved;
    // Constant acceleration over 20 steps, then speed v = 1/(60 - 15), then deceleration over 10: areas under the speed, by hand.
    const share = (i: number) => {
      if (i <= 20) return (i * i) / 40 / 45;
      return i <= 50 ? (10 + (i - 20)) / 45 : 1 - (60 - i) ** 2 / 20 / 45;
    };
    for (const { frame, x, y, width } of frames) {
      const p = frame >= 61 ? 1 : share(frame - 1);
      const t = Math.min(1, Math.max(0, (frame - 11) / 40));
      expect(x).toBeCloseTo(90 * p, 9);
      expect(y).toBeCloseTo(-30 * p, 9);
      expect(width).toBeCloseTo(254 * Math.exp(t * Math.log(200 / 254)), 9);
    }
  });

  it('leave a followed level where it is in the picture, but for its size', () => {
    const moves = [
      build.follow(['A'], 'left', 60, 1, 40),
      truck([leg(a, 5, field('C', { widthMm: 220 }), 35)]),
    ];
    const { placement, frames } = solved({ length: 48, levels: [level('BG'), level('A')], moves }).solved;
    for (const { screenX, screenY } of placement.get('A')!) expect([screenX, screenY]).toEqual([0, 0]);
    // 1.5 mm a frame on the artwork; on screen as much larger as the field is smaller.
    for (const { frame, width } of frames)
      expect(placement.get('BG')![frame - 1]!.screenX).toBeCloseTo(
        (Math.min(frame, 40) * 1.5 * W) / width,
        9,
      );
  });
});

describe('trucks', () => {
  it('with graduations by hand have the widths that adding up gives, and keep their point still', () => {
    // Sums on paper: 300, then 2, 4, 9, 4, 1 mm less on each frame.
    const mm = [2, 4, 9, 4, 1];
    const [a, b] = [field('A', { widthMm: 300 }), field('B', { widthMm: 280, xMm: 15, yMm: -5 })];
    const there = truck([leg(a, 1, b, 6, { form: 'steps', mm })]);
    const { frames } = solved({ length: 6, moves: [there] }).solved;
    expect(frames.map(({ width }) => width)).toEqual([300, 298, 294, 285, 281, 280]);
    // The centre has gone the share of its way that the width has: (2 + 4) / 20 of (15, -5) on frame 3.
    expect([frames[2]!.x, frames[2]!.y]).toEqual([expect.closeTo(4.5, 12), expect.closeTo(-1.5, 12)]);
    const back = truck([leg(b, 1, a, 6, { form: 'steps', mm })]);
    const out = solved({ length: 6, moves: [back] }).solved.frames.map(({ width }) => width);
    expect(out).toEqual([280, 282, 286, 295, 299, 300].map((wanted) => expect.closeTo(wanted, 10)));
  });

  it('linear from 12F to 6F in 24 grow the picture 2.128 % on the first step and 4.167 % on the last', () => {
    // B. Salt, as above; computed.
    const move = truck([leg(inches('A', 12), 1, inches('B', 6), 25)]);
    const { solved: s } = solved({ ...SMALL, length: 25, moves: [move] });
    const w = s.frames.map((f) => f.width);
    expect((w[0]! / w[1]! - 1) * 100).toBeCloseTo(2.128, 3);
    expect((w[23]! / w[24]! - 1) * 100).toBeCloseTo(4.167, 3);
  });

  it('by equal ratios pass the computed widths', () => {
    // Computed two ways.
    const move = truck([leg(inches('A', 12), 1, inches('B', 6), 25)], { ratios: true });
    const w = solved({ ...SMALL, length: 25, moves: [move] }).solved.frames.map((f) => f.width);
    expect(w[6]).toBeCloseTo(10.090757, 6);
    expect(w[12]).toBeCloseTo(8.485281, 6);
    expect(w[18]).toBeCloseTo(7.135243, 6);
    expect(w[11]! / w[10]!).toBeCloseTo(0.97153194, 8);
    const deep = truck([leg(inches('A', 12), 1, inches('B', 4), 49)], { ratios: true });
    const frames = solved({ ...SMALL, length: 49, moves: [deep] }).solved.frames;
    expect(frames[24]!.width).toBeCloseTo(6.928203, 6);
  });

  it('with a pan keep the point (c₁w₀ - c₀w₁)/(w₀ - w₁) still: centre 0 to 3 E, 12F to 6F: 6', () => {
    // Computed two ways; on a chart an E step is half a line, so 3 E lie 1.5 in from the centre and 6 E at 3 in.
    const move = truck([leg(inches('A', 12), 1, inches('B', 6, 1.5), 25)], { ratios: true });
    const frames = solved({ ...SMALL, length: 25, moves: [move] }).solved.frames;
    const steps = frames.map((f) => f.x * 2);
    expect(steps[12]).toBeCloseTo(1.757359, 6);
    for (const f of frames) expect((3 - f.x) / f.width).toBeCloseTo(3 / 12, 12);
  });
});

describe('speed', () => {
  it('strobes over 0.1 in a frame on a 12 in field and is a zip pan from 0.25 in', () => {
    // Drawn-animation rule attributed to T. White.
    expect(STROBES_OVER).toBeCloseTo(0.1 / 12, 15);
    expect(SAFE_FROM).toBeCloseTo(0.25 / 12, 15);
    const codes = (mm: number) =>
      build
        .codes({ length: 10, moves: [pull(['BG'], 'right', mm * 10, 1, 10)] })
        .filter((c) => c !== 'artwork-edge');
    expect(codes(W / 120)).toEqual(['judder']);
    expect(codes(W / 119.9)).toEqual(['strobing']);
    expect(codes(W / 48.1)).toEqual(['strobing']);
    expect(codes(W / 48)).toEqual([]);
  });

  it('judders over 1.5119 mm a frame on the 254 mm field at 24: a full width in under seven seconds', () => {
    // red.com panning speed; the figure computed.
    const codes = (mm: number) => build.codes({ length: 10, moves: [pull(['BG'], 'right', mm * 10, 1, 10)] });
    expect(codes(1.5119)).toEqual([]);
    expect(codes(1.512)).toEqual(['judder']);
  });
});

describe('placement', () => {
  // Reference: npm transformation-matrix. Its angles are counter-clockwise, ours clockwise.
  const number = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
  const size = fc.double({ min: 0.2, max: 3, noNaN: true });

  const cases = fc.record({
    home: fc.tuple(number(200), number(200)),
    about: fc.tuple(number(200), number(200)),
    hinge: fc.tuple(number(200), number(200)),
    to: fc.tuple(number(300), number(300)),
    scale: fc.tuple(size, size),
    degrees: fc.tuple(number(400), number(400)),
    camera: fc.record({
      x: number(200),
      y: number(200),
      width: fc.double({ min: 40, max: 400, noNaN: true }),
      turn: number(400),
    }),
    q: fc.tuple(number(200), number(200)),
    frame: fc.integer({ min: 1, max: 25 }),
  });

  it('of a level that is scaled, turned and slid at once is that of the same affine matrices', () => {
    fc.assert(
      fc.property(cases, (c) => {
        const [homeX, homeY] = c.home;
        const A = level('A', { homeMm: { xMm: homeX, yMm: homeY }, free: true });
        const view = field('V', {
          xMm: c.camera.x,
          yMm: c.camera.y,
          widthMm: c.camera.width,
          turnDeg: c.camera.turn,
        });
        const { solved: s } = solved({
          length: 25,
          levels: [A],
          rest: view,
          moves: [
            scale(['A'], [leg(c.scale[0], 1, c.scale[1], 25)], { xMm: c.about[0], yMm: c.about[1] }),
            turn(['A'], [leg(c.degrees[0], 1, c.degrees[1], 25)], { xMm: c.hinge[0], yMm: c.hinge[1] }),
            slide(['A'], [leg(at(0, 0), 1, at(c.to[0], c.to[1]), 25)]),
          ],
        });
        const p = (c.frame - 1) / 24;
        const k = c.scale[0] + (c.scale[1] - c.scale[0]) * p;
        const degrees = c.degrees[0] + (c.degrees[1] - c.degrees[0]) * p;
        // A turn that has not begun turns about where the scale at rest has put its point: the pivot of the start is frozen.
        const scaled = (s0: number) =>
          compose(translate(...c.about), scaling(s0), translate(-c.about[0], -c.about[1]));
        const hingeAt = applyToPoint(scaled(k), c.hinge);
        const hingeFirst = applyToPoint(scaled(c.scale[0]), c.hinge);
        const rotation = (d: number, [x, y]: readonly [number, number]) =>
          compose(translate(x, y), rotateDEG(-d), translate(-x, -y));
        // From the angle at rest about the first pivot, on to the angle now about the pivot now.
        const first = rotation(c.degrees[0], hingeFirst as [number, number]);
        const carried = applyToPoint(first, hingeAt) as [number, number];
        const turned = compose(rotation(degrees - c.degrees[0], carried), first);
        const whole: Matrix = compose(translate(c.to[0] * p, c.to[1] * p), turned, scaled(k));
        const expected = applyToPoint(whole, [homeX + c.q[0], homeY + c.q[1]]) as number[];

        const place = s.placement.get('A')![c.frame - 1]!;
        const own = compose(
          translate(homeX + place.x, homeY + place.y),
          rotateDEG(-place.rotation),
          scaling(place.scale),
        );
        const got = applyToPoint(own, c.q as [number, number]) as number[];
        expect(got[0]).toBeCloseTo(expected[0]!, 7);
        expect(got[1]).toBeCloseTo(expected[1]!, 7);

        const seen = inverse(
          compose(translate(c.camera.x, c.camera.y), rotateDEG(-c.camera.turn), scaling(c.camera.width / W)),
        );
        const screen = applyToPoint(seen, [place.x, place.y]) as number[];
        expect(place.screenX).toBeCloseTo(screen[0]!, 7);
        expect(place.screenY).toBeCloseTo(screen[1]!, 7);
      }),
      { numRuns: 1000 },
    );
  });

  it('of a level fixed to the camera leaves it at its place in the picture', () => {
    fc.assert(
      fc.property(cases, (c) => {
        const [homeX, homeY] = c.home;
        const from = field('P', { widthMm: 300 });
        const to = field('Q', {
          xMm: c.camera.x,
          yMm: c.camera.y,
          widthMm: c.camera.width,
          turnDeg: c.camera.turn,
        });
        const { solved: s } = solved({
          length: 25,
          levels: [level('A', { homeMm: { xMm: homeX, yMm: homeY }, carry: true })],
          moves: [truck([leg(from, 1, to, 25)])],
        });
        const f = s.frames[c.frame - 1]!;
        const place = s.placement.get('A')![c.frame - 1]!;
        const seen = inverse(compose(translate(f.x, f.y), rotateDEG(-f.rotation), scaling(f.width / W)));
        const own = compose(
          translate(homeX + place.x, homeY + place.y),
          rotateDEG(-place.rotation),
          scaling(place.scale),
        );
        const got = applyToPoint(compose(seen, own), c.q as [number, number]) as number[];
        expect(got[0]).toBeCloseTo(homeX + c.q[0], 7);
        expect(got[1]).toBeCloseTo(homeY + c.q[1], 7);
      }),
      { numRuns: 300 },
    );
  });
});

describe('a truck past a turned field', () => {
  it('turns the camera clockwise on the artwork, so that the picture turns the other way', () => {
    const { solved: s } = solved({
      rest: field('A', { turnDeg: 90 }),
      levels: [level('A', { free: true })],
      moves: [slide(['A'], [leg(at(10, 0), 1, at(10, 0), 2)])],
    });
    // What lies to the right on the artwork lies upwards of a camera that is turned to look with its right side down.
    expect(s.placement.get('A')![0]).toMatchObject({ screenX: 0, screenY: 10 });
  });
});

describe('pans', () => {
  it('stand exactly on their fields on the frames that the text names', () => {
    const A = field('A', { xMm: 0.1, yMm: -7.3 });
    const B = field('B', { xMm: 180.7, yMm: 33.1 });
    const { solved: s } = solved({
      length: 120,
      moves: [pan([leg(A, 25, B, 120, { form: 'ease', leave: 6, arrive: 12 })])],
    });
    expect(s.frames[0]).toMatchObject({ x: 0.1, y: -7.3 });
    expect(s.frames[24]).toMatchObject({ x: 0.1, y: -7.3 });
    expect(s.frames[119]).toMatchObject({ x: 180.7, y: 33.1 });
  });
});
