import { describe, expect, it } from 'vitest';
import { messageOf } from '../../../../src/language/message.js';
import type { Move } from '../../../../src/shot/camera/camera-model.js';
import {
  at,
  codes,
  expectSound,
  FULL,
  field,
  follow,
  leg,
  level,
  pan,
  parametersOf,
  pull,
  type Scene,
  said,
  scale,
  shake,
  slide,
  solved,
  sway,
  truck,
  turn,
} from '../build.js';

const NAN = Number.NaN;
const levels = [level('L')];

describe('numbers that make no sense', () => {
  const cases: [string, Move][] = [
    ['a field without width', pan([leg(FULL, 1, field('Z', { widthMm: 0 }), 9)])],
    ['a field with a negative width', truck([leg(FULL, 1, field('Z', { widthMm: -9 }), 9)])],
    ['a field nowhere', pan([leg(FULL, 1, field('Z', { xMm: NAN }), 9)])],
    ['a field turned without end', pan([leg(FULL, 1, field('Z', { turnDeg: Number.POSITIVE_INFINITY }), 9)])],
    ['a pull of no length', pull(['L'], 'left', NAN, 1, 9)],
    ['a pull of kilometres', pull(['L'], 'left', 1e9, 1, 9)],
    ['a pull nowhere', pull(['L'], NAN, 9, 1, 9)],
    ['a loop of nothing', pull(['L'], 'left', 9, 1, 9, { loop: 0 })],
    ['a follow of kilometres', follow(['L'], 'left', 1e9, 1, 9)],
    ['a slide to nowhere', slide(['L'], [leg(at(0, 0), 1, at(NAN, 0), 9)])],
    ['a level scaled to nothing', scale(['L'], [leg(1, 1, 0, 9)])],
    ['a level scaled below nothing', scale(['L'], [leg(-1, 1, 1, 9)])],
    ['a level scaled about nowhere', scale(['L'], [leg(1, 1, 2, 9)], { xMm: NAN, yMm: 0 })],
    ['a turn without end', turn(['L'], [leg(0, 1, Number.POSITIVE_INFINITY, 9)])],
    ['a shake of no size', shake(NAN, 0, 1, 9)],
    ['a sway in no time', sway(['L'], 5, 1, 9, 0)],
    ['a sampling of no frames', pull(['L'], 'left', 9, 1, 9, { on: 0 })],
  ];
  it.each(cases)('%s is reported and left out', (_, move) => {
    const { solved: s, diagnostics } = solved({ levels, moves: [move] });
    expect(diagnostics.map(({ code }) => code)).toContain('number-senseless');
    expect(s.moves).toEqual([]);
    expectSound(s);
  });

  const lengths = { bounds: 'length' } as const;
  const turns = { bounds: 'degrees' } as const;
  const FAR = 1e9;
  it.each<[Move, object]>([
    [pull(['L'], FAR, 9, 1, 9), { quantity: 'direction', ...turns }],
    [pull(['L'], 'left', FAR, 1, 9), { quantity: 'way', ...lengths }],
    [pull(['L'], 'left', 9, 1, 9, { loop: FAR }), { quantity: 'loop', bounds: 'size' }],
    [slide(['L'], [leg(at(0, 0), 1, at(FAR, 0), 9)]), { quantity: 'place-x', ...lengths }],
    [slide(['L'], [leg(at(0, 0), 1, at(0, FAR), 9)]), { quantity: 'place-y', ...lengths }],
    [scale(['L'], [leg(1, 1, FAR, 9)]), { quantity: 'scale', bounds: 'scale' }],
    [scale(['L'], [leg(1, 1, 2, 9)], { xMm: FAR, yMm: 0 }), { quantity: 'point-x', ...lengths }],
    [scale(['L'], [leg(1, 1, 2, 9)], { xMm: 0, yMm: FAR }), { quantity: 'point-y', ...lengths }],
    [turn(['L'], [leg(0, 1, FAR, 9)]), { quantity: 'turn', ...turns }],
    [shake(FAR, 3, 1, 9), { quantity: 'swing', ...lengths }],
    [shake(3, FAR, 1, 9), { quantity: 'last-swing', ...lengths }],
    [pull(['L'], 'left', 9, 1, 9, { on: -FAR }), { quantity: 'on', value: -FAR, bounds: 'frames' }],
  ])('is named with its bounds: %#', (move, wanted) => {
    expect(parametersOf({ levels, moves: [move] }, 'number-senseless')).toEqual([
      { variant: 'move', value: FAR, ...wanted },
    ]);
  });

  it.each(['x', 'y', 'turn', 'width'] as const)('is named with its field: %s', (quantity) => {
    const key = { x: 'xMm', y: 'yMm', turn: 'turnDeg', width: 'widthMm' }[quantity];
    const Z = field('Z', { [key]: FAR });
    const bounds = { x: 'length', y: 'length', turn: 'degrees', width: 'size' }[quantity];
    expect(parametersOf({ moves: [pan([leg(FULL, 1, Z, 9)])] }, 'number-senseless')).toEqual([
      { variant: 'field', field: 'Z', quantity, value: FAR, bounds },
    ]);
  });

  it('a leg that arrives before it leaves is told with both frames', () => {
    const moves = [pan([leg(FULL, 24, field('A', { xMm: 10 }), 20)])];
    expect(parametersOf({ moves }, 'move-backwards')).toEqual([{ start: 24, end: 20 }]);
  });

  it('a move of which one leg runs backwards is left out whole', () => {
    const [A, B] = [field('A', { xMm: 10 }), field('B', { xMm: 20 })];
    const moves = [pan([leg(FULL, 1, A, 9), leg(A, 9, B, 5)])];
    expect(solved({ moves }).solved.moves).toEqual([]);
  });

  it('a leg that arrives on the frame it leaves from is reported and left out', () => {
    const { solved: s, diagnostics } = solved({ moves: [pan([leg(FULL, 24, field('A', { xMm: 10 }), 24)])] });
    expect(diagnostics.map(({ code }) => code)).toEqual(['move-backwards']);
    expect(s.moves).toEqual([]);
  });

  it('of a field are reported once, and every move that uses it is left out without another word', () => {
    const Z = field('Z', { widthMm: 0 });
    const moves = [pan([leg(FULL, 1, Z, 9)]), pan([leg(Z, 9, FULL, 20)])];
    const { solved: s, diagnostics } = solved({ moves });
    expect(diagnostics.map(({ code, span }) => [code, span])).toEqual([['number-senseless', Z.span]]);
    expect(s.moves).toEqual([]);
  });
});

describe('bounds', () => {
  const senseless = (scene: Scene) => codes(scene).includes('number-senseless');
  it.each([
    ['a scale', 0.01, 0.0099, (value: number) => scale(['L'], [leg(1, 1, value, 9)])],
    ['a scale', 100, 100.1, (value: number) => scale(['L'], [leg(1, 1, value, 9)])],
    ['a way, in mm', 100_000, 100_001, (value: number) => pull(['L'], 'left', value, 1, 9)],
    ['a way backwards', -100_000, -100_001, (value: number) => pull(['L'], 'left', value, 1, 9)],
    ['degrees', 360_000, 360_001, (value: number) => turn(['L'], [leg(0, 1, value, 9)])],
    ['a period, in frames', 1, 0.9, (value: number) => sway(['L'], 5, 1, 9, value)],
    ['a long loop', 100_000, 100_001, (value: number) => pull(['L'], 'left', 9, 1, 9, { loop: value })],
    ['a loop, in mm', 0.01, 0.009, (value: number) => pull(['L'], 'left', 9, 1, 9, { loop: value })],
  ])('%s: %d is inside, %d outside', (_, inside, outside, move) => {
    expect(senseless({ levels, moves: [move(inside)] })).toBe(false);
    expect(senseless({ levels, moves: [move(outside)] })).toBe(true);
  });

  it('a shake may grow from nothing or die away, but it has to swing', () => {
    expect(senseless({ moves: [shake(0, 3, 1, 9)] })).toBe(false);
    expect(senseless({ moves: [shake(3, 0, 1, 9)] })).toBe(false);
    expect(senseless({ moves: [shake(0, 0, 1, 9)] })).toBe(true);
  });
});

describe('timing check', () => {
  const A = field('A', { xMm: 10 });
  const B = field('B', { xMm: 20 });
  const SMALL = field('S', { widthMm: 127 });
  const levels = [level('BG'), level('L', { free: true })];
  const of = (...moves: Move[]): Scene => ({ levels, moves });
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

    it('of a truck and a pan may overlap; of two trucks or two pans beside them not', () => {
      const small = field('S', { widthMm: 250 });
      const smaller = field('T', { widthMm: 246 });
      const wide = truck([leg(FULL, 1, small, 30)]);
      const count = (...moves: Move[]) =>
        codes(of(...moves)).filter((code) => code === 'moves-overlap').length;
      expect(count(wide, pan([leg(FULL, 10, A, 20)]), pan([leg(A, 20, FULL, 40)]))).toBe(0);
      expect(count(wide, pan([leg(FULL, 10, A, 20)]), pan([leg(FULL, 15, A, 40)]))).toBe(1);
      expect(count(wide, truck([leg(small, 29, smaller, 40)]))).toBe(1);
      expect(count(wide, truck([leg(small, 29, smaller, 40)]), pan([leg(FULL, 10, A, 20)]))).toBe(1);
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
            sway(['L'], 3, 1, 24, 12),
            pull(['L'], 'up', 3, 1, 24),
            pull(['L'], 'left', 3, 1, 24),
          ),
        ),
      ).not.toContain('moves-overlap');
      expect(codes(of(follow(['L'], 'left', 9, 1, 24), pan([leg(FULL, 20, A, 30)])))).toContain(
        'moves-overlap',
      );
      expect(codes(of(shake(1, 1, 1, 24), shake(1, 1, 24, 30)))).toContain('moves-overlap');
      expect(codes(of(sway(['L'], 1, 1, 24, 12), sway(['L'], 1, 24, 35, 12)))).toContain('moves-overlap');
      expect(
        said(of(turn(['L'], [leg(0, 1, 9, 24)]), turn(['L'], [leg(9, 20, 0, 30)])), 'moves-overlap')[0],
      ).toBe('Two turns of L run at once, from frame 21 to frame 24.');
    });

    it('are compared with the move that ends last', () => {
      const shakes = (...rows: [number, number][]) => rows.map(([from, to]) => shake(1, 1, from, to));
      const notes = (moves: Move[]) =>
        solved(of(...moves))
          .diagnostics.filter(({ code }) => code === 'moves-overlap')
          .map((one) => one.notes);
      const [long, short, third] = shakes([1, 40], [10, 20], [30, 35]);
      const other = (move: Move) => [{ note: 'other-one', span: move.span }];
      expect(notes([long!, short!, third!])).toEqual([other(long!), other(long!)]);
      const [first, second, last] = shakes([1, 10], [11, 20], [15, 30]);
      expect(notes([first!, second!, last!])).toEqual([other(second!)]);
    });

    it('overlap on each level for itself', () => {
      const both = (from: number, to: number) => slide(['L', 'BG'], [leg(at(0, 0), from, at(0, 0), to)]);
      expect(parametersOf(of(both(1, 20), both(10, 30)), 'moves-overlap')).toEqual([
        { move: 'slide', level: 'L', from: 11, to: 20 },
        { move: 'slide', level: 'BG', from: 11, to: 20 },
      ]);
    });

    it('of trucks that are not quick may be long', () => {
      const slow = { length: 200, moves: [truck([leg(FULL, 1, SMALL, 200)])] };
      expect(codes(slow)).not.toContain('quick-long');
    });

    it('are told with their numbers', () => {
      expect(parametersOf(of(pull(['BG'], 'up', 1, 1, 49)), 'move-past-end')).toEqual([
        { light: false, end: 49, rows: 48 },
      ]);
      expect(parametersOf({ ...of(quick(24, 0.6, 50)), length: 50 }, 'quick-long')).toEqual([
        { frames: 49, fps: 24 },
      ]);
    });

    it('end on the sheet, run forwards, and quick trucks are quick', () => {
      expect(said(of(pull(['BG'], 'up', 1, 1, 49)), 'move-past-end')[0]).toContain('ends on frame 49');
      expect(codes(of(pull(['BG'], 'up', 1, 1, 48)))).not.toContain('move-past-end');
      expect(codes(of(pan([leg(FULL, 24, A, 24)])))).toEqual(['move-backwards']);
      expect(codes({ ...of(quick(24, 0.6, 50)), length: 50 })).toContain('quick-long');
      expect(codes({ ...of(quick(24, 0.6, 49)), length: 50 })).not.toContain('quick-long');
    });
  });
});

describe('level check', () => {
  const A = field('A', { xMm: 10 });
  const levels = [level('BG'), level('L', { free: true })];
  const of = (...moves: Move[]): Scene => ({ levels, moves });

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
      expect(codes(of(pull(['L'], 'left', 9, 1, 9), pull(['L'], 'right', 3, 9, 12)))).toContain(
        'pulls-along',
      );
      expect(codes(of(pull(['L'], 'left', 9, 1, 9), pull(['L'], 'up', 3, 9, 12)))).not.toContain(
        'pulls-along',
      );
      expect(codes(of(pull(['L'], 'left', 9, 1, 9), pull(['L'], 'left', 3, 10, 12)))).not.toContain(
        'pulls-along',
      );
    });

    it('fixed to the camera are found by their names, and told with their place', () => {
      const fixed = level('L', { carry: true });
      const found = (name: string) => {
        const scene = { levels: [level('BG'), fixed], moves: [follow([name], 'left', 9, 1, 9)] };
        return solved(scene).diagnostics.filter(({ code }) => code === 'carried-level');
      };
      expect(found('L').map(({ parameters, notes }) => [parameters, notes])).toEqual([
        [{ level: 'L' }, [{ note: 'named-here', level: 'L', span: fixed.span }]],
      ]);
      expect(found('BG')).toEqual([]);
      expect(found('nobody')).toEqual([]);
    });

    it('pulled along one line at any angle are told, each level once, with the other pull', () => {
      const along = (...moves: Move[]) =>
        solved(of(...moves))
          .diagnostics.filter(({ code }) => code === 'pulls-along')
          .map(({ parameters, notes }) => [parameters, notes]);
      const other = (move: Move) => [{ note: 'other-pull', span: move.span }];
      const first = pull(['L'], 30, 9, 1, 20);
      expect(along(first, pull(['L'], 30, 3, 10, 15))).toEqual([[{ level: 'L' }, other(first)]]);
      expect(along(first, pull(['L'], 210, 3, 10, 15))).toEqual([[{ level: 'L' }, other(first)]]);
      expect(along(first, pull(['L'], 150, 3, 10, 15))).toEqual([]);
      // A hair beside the line is the line, on both sides of it.
      const left = pull(['L'], 180, 9, 1, 20);
      expect(along(left, pull(['L'], 359.9999999, 3, 10, 15))).toHaveLength(1);
      const second = pull(['BG'], 30, 9, 1, 20);
      expect(along(first, second, pull(['L', 'BG'], 30, 3, 10, 15))).toEqual([
        [{ level: 'L' }, other(first)],
        [{ level: 'BG' }, other(second)],
      ]);
    });

    it('left askew by a sway are told with how far, when, and how long it should be', () => {
      // 30 frames are a period and a quarter of 24: there it is furthest out. Three halves of a period are 36.
      const [found] = parametersOf(of(sway(['L'], 5, 1, 30, 24)), 'sway-unrest');
      expect(found).toEqual({ offMm: expect.closeTo(5, 9), frame: 30, levels: ['L'], frames: 36 });
      expect(parametersOf(of(sway(['L'], 5, 11, 13, 24)), 'sway-unrest')).toMatchObject([
        { frame: 13, frames: 12 },
      ]);
    });

    it('sway back to rest', () => {
      expect(said(of(sway(['L'], 5, 1, 30, 24)), 'sway-unrest')[0]).toContain('36 frames');
      expect(codes(of(sway(['L'], 5, 1, 36, 24)))).not.toContain('sway-unrest');
    });
  });
});
