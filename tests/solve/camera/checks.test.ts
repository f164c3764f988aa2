import { describe, expect, it } from 'vitest';
import { messageOf, noteOf } from '../../../src/language/message.js';
import type { Field, Move, Spacing } from '../../../src/shot/camera.js';
import * as build from './build.js';

const {
  at,
  codes,
  field,
  follow,
  FULL,
  leg,
  level,
  pan,
  pull,
  roll,
  said,
  scale,
  shake,
  slide,
  solved,
  truck,
  turn,
  W,
} = build;

const A = field('A', { xMm: 10 });
const B = field('B', { xMm: 20 });
const SMALL = field('S', { widthMm: 127 });
const levels = [level('BG'), level('L', { free: true })];
const of = (...moves: Move[]): build.Scene => ({ levels, moves });
const spaced = (spacing: Spacing, end = 24) => pan([leg(FULL, 1, A, end, spacing)]);
const quick = (frame: number, share: number, end = 24) =>
  truck([leg(FULL, 1, SMALL, end, { form: 'fair', mark: 'ア', frame, share })], { quick: true });

describe('times of moves', () => {
  it('may touch but not overlap, and both places are named', () => {
    const first = pan([leg(FULL, 1, A, 24)]);
    expect(codes(of(first, pan([leg(A, 24, B, 48)])))).not.toContain('moves-overlap');
    const late = pan([leg(A, 23, B, 48)]);
    const found = solved(of(first, late)).diagnostics.find(({ code }) => code === 'moves-overlap')!;
    expect(messageOf(found, 'en')).toBe('Two moves of the camera run at once, from frame 24 to frame 24.');
    expect([found.span, found.notes[0]!.span]).toEqual([late.span, first.span]);
    // What overlaps cannot have arrived: one error is enough.
    expect(codes(of(first, late))).not.toContain('move-jumps');
  });

  it('matter for each thing alone', () => {
    expect(
      codes(
        of(
          pan([leg(FULL, 1, A, 24)]),
          shake(1, 1, 1, 24),
          slide(['L'], [leg(at(0, 0), 1, at(9, 0), 24)]),
          slide(['BG'], [leg(at(0, 0), 1, at(9, 0), 24)]),
          turn(['L'], [leg(0, 1, 9, 24)]),
          scale(['L'], [leg(1, 1, 2, 24)]),
          roll(['L'], 3, 1, 24, 12),
          pull(['L'], 'up', 3, 1, 24),
          pull(['L'], 'left', 3, 1, 24),
        ),
      ),
    ).not.toContain('moves-overlap');
    expect(codes(of(follow(['L'], 'left', 9, 1, 24), pan([leg(FULL, 20, A, 30)])))).toContain(
      'moves-overlap',
    );
    expect(codes(of(shake(1, 1, 1, 24), shake(1, 1, 24, 30)))).toContain('moves-overlap');
    expect(codes(of(roll(['L'], 1, 1, 24, 12), roll(['L'], 1, 24, 35, 12)))).toContain('moves-overlap');
    expect(
      said(of(turn(['L'], [leg(0, 1, 9, 24)]), turn(['L'], [leg(9, 20, 0, 30)])), 'moves-overlap')[0],
    ).toBe('Two turns of L run at once, from frame 21 to frame 24.');
  });

  it('end on the sheet, run forwards, and quick trucks are quick', () => {
    expect(said(of(pull(['BG'], 'up', 1, 1, 49)), 'move-past-end')[0]).toContain('ends on frame 49');
    expect(codes(of(pull(['BG'], 'up', 1, 1, 48)))).not.toContain('move-past-end');
    expect(codes(of(pan([leg(FULL, 24, A, 24)])))).toEqual(['move-backwards']);
    expect(codes({ ...of(quick(24, 0.6, 50)), length: 50 })).toContain('quick-long');
    expect(codes({ ...of(quick(24, 0.6, 49)), length: 50 })).not.toContain('quick-long');
  });
});

describe('places of moves', () => {
  it('begin where the last of their kind ended', () => {
    const jumps = (...moves: Move[]) => codes(of(...moves)).includes('move-jumps');
    expect(jumps(pan([leg(FULL, 1, A, 9)]), pan([leg(B, 12, A, 20)]))).toBe(true);
    expect(jumps(pan([leg(FULL, 1, A, 9)]), pan([leg(A, 12, B, 20)]))).toBe(false);
    const slides = (x: number) => slide(['L'], [leg(at(x, 0), 12, at(9, 0), 24)]);
    const first = slide(['L'], [leg(at(0, 0), 1, at(5, 0), 9)]);
    expect(jumps(first, slides(5))).toBe(false);
    expect(jumps(first, slides(6))).toBe(true);
    expect(jumps(turn(['L'], [leg(0, 1, 30, 9)]), turn(['L'], [leg(31, 9, 60, 20)]))).toBe(true);
    expect(jumps(scale(['L'], [leg(1, 1, 2, 9)]), scale(['L'], [leg(1.9, 9, 1, 20)]))).toBe(true);
    expect(jumps(scale(['L'], [leg(1, 1, 2, 9)]), scale(['L'], [leg(2, 9, 1, 20)]))).toBe(false);
  });

  it('begin where the camera was told to rest', () => {
    const scene = { ...of(pan([leg(FULL, 1, A, 9)])), rest: B };
    const found = solved(scene).diagnostics.find(({ code }) => code === 'move-jumps')!;
    expect(messageOf(found, 'en')).toContain(
      'starts from field full, but the camera is 254 mm wide at 20, 0',
    );
    expect(found.notes[0]!.span).toEqual(B.span);
  });
});

describe('spacing', () => {
  it('has ramps that fit into the steps', () => {
    expect(codes(of(spaced({ form: 'ease', leave: 12, arrive: 11 })))).not.toContain('ramps-long');
    expect(said(of(spaced({ form: 'ease', leave: 12, arrive: 12 })), 'ramps-long')[0]).toContain('23 steps');
    expect(codes(of(spaced({ form: 'ease', leave: -1, arrive: 12 })))).toContain('ramps-long');
  });

  it('has curves whose time runs from 0 to 1', () => {
    const curve = (x1: number, y1: number, x2: number, y2: number) =>
      codes(of(spaced({ form: 'curve', x1, y1, x2, y2 })));
    expect(curve(0, -3, 1, 3)).not.toContain('curve-range');
    expect(curve(1.1, 0, 0.5, 1)).toContain('curve-range');
    expect(curve(0.1, 0, -0.1, 1)).toContain('curve-range');
    expect(curve(0.1, Number.POSITIVE_INFINITY, 0.1, 1)).toContain('curve-range');
  });

  it('has as many graduations as steps, that add up within 0.05 mm', () => {
    const steps = (...mm: number[]) =>
      codes(of(spaced({ form: 'steps', mm }, 4))).filter((code) => code.startsWith('steps'));
    expect(steps(2, 3, 5)).toEqual([]);
    expect(steps(2, 3, 5.05)).toEqual([]);
    expect(steps(2, 3, 5.06)).toEqual(['steps-sum']);
    expect(steps(5, 5)).toEqual(['steps-count']);
    expect(codes(of(truck([leg(FULL, 1, SMALL, 3, { form: 'steps', mm: [1, 1] })])))).toContain(
      'steps-without-way',
    );
  });

  it('has a fairing mark inside its move, before which enough is done', () => {
    expect(said(of(quick(24, 0.6)), 'fairing-outside')[0]).toContain('on frame 2 to 23');
    expect(said(of(quick(1, 0.6, 3)), 'fairing-outside')[0]).toMatch(/on frame 2\.$/);
    expect(said(of(quick(2, 0.6, 2)), 'fairing-outside')[0]).toContain(
      'this one arrives on the frame after it leaves: give it more frames',
    );
    expect(codes(of(quick(6, 1)))).toContain('fairing-share');
    expect(codes(of(quick(6, 0)))).toContain('fairing-share');
    // p T = .6 · 23 = 13.8: the mark could be on frame 14, or have 19/23 = 82.6 % done on frame 20.
    expect(said(of(quick(20, 0.6)), 'fairing-slow')[0]).toContain('frame 14 or earlier, or have 82.7 %');
    expect(codes(of(quick(14, 0.6)))).not.toContain('fairing-slow');
    expect(codes(of(quick(15, 0.6)))).toContain('fairing-slow');
    expect(codes(of(quick(20, 0.827)))).not.toContain('fairing-slow');
  });

  it('has a cushion that is no stop', () => {
    // k = .17 · 18/.15 = 20.4; 1 - .005^(1/20.4) = .2287 of 18 frames after frame 6: 10.1.
    expect(said(of(quick(6, 0.85)), 'cushion-short')[0]).toContain(
      'on frame 11, before half of its 18 frames',
    );
    expect(codes(of(quick(6, 0.55)))).not.toContain('cushion-short');
  });

  it('does not jump at a field passed through', () => {
    const legs = (x: number, spacing: Spacing = build.LINEAR) =>
      pan([leg(FULL, 1, A, 11, spacing), leg(A, 11, field('X', { xMm: 10 + x }), 21, spacing)]);
    expect(codes(of(legs(10)))).not.toContain('speed-jumps');
    expect(said(of(legs(20)), 'speed-jumps')[0]).toContain('1 mm a frame before, 2 after');
    expect(codes(of(legs(-10)))).toContain('speed-jumps');
    expect(codes(of(legs(20, { form: 'ease', leave: 5, arrive: 5 })))).not.toContain('speed-jumps');
  });
});

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

describe('levels', () => {
  it('fixed to the camera cannot be carried or followed as well', () => {
    const fixed = [level('L', { carry: true })];
    expect(codes({ levels: fixed, moves: [follow(['L'], 'left', 9, 1, 9)] })).toContain('carried-level');
    expect(codes({ levels: fixed, moves: [pan([leg(FULL, 1, A, 9)], { carry: ['L'] })] })).toContain(
      'carried-level',
    );
    expect(codes({ levels: fixed, moves: [pull(['L'], 'left', 9, 1, 9)] })).not.toContain('carried-level');
  });

  it('pulled twice along one line at once are hinted at', () => {
    expect(codes(of(pull(['L'], 'left', 9, 1, 9), pull(['L'], 'right', 3, 9, 12)))).toContain('pulls-along');
    expect(codes(of(pull(['L'], 'left', 9, 1, 9), pull(['L'], 'up', 3, 9, 12)))).not.toContain('pulls-along');
    expect(codes(of(pull(['L'], 'left', 9, 1, 9), pull(['L'], 'left', 3, 10, 12)))).not.toContain(
      'pulls-along',
    );
  });

  it('sway back to rest', () => {
    expect(said(of(roll(['L'], 5, 1, 30, 24)), 'sway-unrest')[0]).toContain('36 frames');
    expect(codes(of(roll(['L'], 5, 1, 36, 24)))).not.toContain('sway-unrest');
  });

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
    expect(s.artwork.get('BG')!.needed!.width).toBeCloseTo(build.W, 10);
    expect(s.artwork.get('BG')!.needed!.x).toBe(0);
    expect(diagnostics.map(({ code }) => code)).not.toContain('loop-short');
    const found = (...args: Parameters<typeof loops>) => loops(...args).diagnostics.map(({ code }) => code);
    expect(found(250, 0)).toContain('loop-short');
    expect(found(420, 0, { sizeMm: { widthMm: 400, heightMm: 150 } })).toContain('loop-short');
    expect(found(420, 90)).not.toContain('loop-askew');
    expect(found(420, 30)).toContain('loop-askew');
    const two = [pull(['BG'], 0, 9, 1, 9, { loop: 300 }), pull(['BG'], 0, 9, 10, 19, { loop: 400 })];
    expect(codes({ moves: two })).toContain('loop-two');
  });
});

describe('speed', () => {
  it('names the frames that strobe, and what would be safe', () => {
    const { diagnostics } = solved(of(pull(['BG'], 'right', 72, 3, 26)));
    const found = diagnostics.find(({ code }) => code === 'strobing')!;
    expect(messageOf(found, 'en')).toContain(
      'On frames 3-26 the picture passes at up to 3 mm a frame, 1/85 of',
    );
    expect(noteOf(found.notes[0]!, 'en')).toContain('Up to 2.12 mm a frame it is safe, and from 5.29 mm');
    expect(diagnostics.map(({ code }) => code)).not.toContain('judder');
  });

  // Drawn-animation rule attributed to T. White, joshuanava.biz/drawn-animation (fc-utk, info-sfn): in a pan with a truck the
  // outer edges strobe first, though the centre keeps within 0.1 in.
  it('of a truck is that of the fastest point of the picture', () => {
    const of24 = (to: Partial<Field>) => ({
      moves: [truck([leg(FULL, 1, field('T', to), 25)])],
    });
    // To half the width about the right edge: on the last step the left edge passes by the whole change of the width,
    // 1/48 of the full width, from a field that is 1/2 + 1/48 of it: 1/25. On the first ones it strobes.
    const about = of24({ widthMm: W / 2, xMm: W / 4 });
    const found = solved(about).diagnostics.find(({ code }) => code === 'strobing');
    expect(found).toBeUndefined();
    // 10 % smaller and a fifth of a width to the right in 48 frames: the centre passes at 1/240 of the full width, the left
    // edge at (1/5 + 1/20) / 48 of it, 1/192; a wider way strobes at the edge alone.
    const slow = (xMm: number) => ({
      length: 49,
      moves: [truck([leg(FULL, 1, field('T', { widthMm: W * 0.9, xMm }), 49)])],
    });
    expect(codes(slow(W / 5))).not.toContain('strobing');
    // The centre at 0.37/48 = 1/130, under the limit; the left edge at (0.37 + 0.05)/48 = 1/114 of the full width.
    const edge = solved(slow(0.37 * W)).diagnostics.find(({ code }) => code === 'strobing')!;
    expect(messageOf(edge, 'en')).toContain('the edge of the picture passes at up to');
    expect(codes(slow(0.3 * W))).not.toContain('strobing');
  });

  it('is what camera and levels do together', () => {
    const moving = (away: number) => ({
      levels: [level('A')],
      moves: [
        pan([leg(FULL, 1, field('T', { xMm: 72 }), 25)]),
        pull(['A'], away > 0 ? 'right' : 'left', Math.abs(away), 2, 25),
      ],
    });
    // 3 mm a frame strobe; together with a level that goes along nothing passes, against it twice as much does.
    expect(codes(moving(72)).filter((code) => code === 'strobing')).toEqual([]);
    const found = solved(moving(-24)).diagnostics.find(({ code }) => code === 'strobing')!;
    expect(messageOf(found, 'en')).toContain('at up to 4 mm a frame');
  });

  it('is nothing where every level is carried', () => {
    const carried = pan([leg(FULL, 1, field('T', { xMm: 72 }), 25)], { carry: ['A'] });
    expect(codes({ levels: [level('A')], moves: [carried] })).not.toContain('strobing');
    expect(codes({ levels: [level('BG'), level('A')], moves: [carried] })).toContain('strobing');
  });

  it('on twos is that of the whole step', () => {
    // 1.5 mm a frame is under the limit; on twos 3 mm are seen at once.
    const on = (frames: number) => of(pull(['BG'], 'right', 36, 1, 24, { on: frames }));
    expect(codes(on(1))).not.toContain('strobing');
    expect(codes(on(2))).toContain('strobing');
  });

  it('counts on the field that the camera has then', () => {
    const close = { ...of(pull(['BG'], 'right', 24, 1, 24)), rest: field('C', { widthMm: 100 }) };
    expect(codes(close)).toContain('strobing');
    expect(codes(of(pull(['BG'], 'right', 24, 1, 24)))).not.toContain('strobing');
  });
});
