import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { messageOf } from '../../../src/language/message.js';
import type { Move, Spacing } from '../../../src/shot/camera.js';
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
  scale,
  shake,
  slide,
  solved,
  truck,
  turn,
} = build;
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
    ['a sway in no time', roll(['L'], 5, 1, 9, 0)],
    ['a sampling of no frames', pull(['L'], 'left', 9, 1, 9, { on: 0 })],
  ];
  it.each(cases)('%s is reported and left out', (_, move) => {
    const { solved: s, diagnostics } = solved({ levels, moves: [move] });
    expect(diagnostics.map(({ code }) => code)).toContain('number-senseless');
    expect(s.moves).toEqual([]);
    expectSound(s);
  });

  it('leave the camera on the standard field where its rest makes no sense', () => {
    const { solved: s } = solved({ rest: field('Z', { widthMm: NAN }) });
    expect(s.frames[0]!.width).toBe(254);
  });

  it('do not shrink a field to nothing by a curve', () => {
    const small = field('S', { widthMm: 25 });
    const curve: Spacing = { form: 'curve', x1: 0.3, y1: 0, x2: 0.6, y2: 3 };
    const scene = { moves: [truck([leg(FULL, 1, small, 24, curve)])] };
    expect(codes(scene)).toContain('size-vanishes');
    expectSound(solved(scene).solved);
    expect(codes({ levels, moves: [scale(['L'], [leg(1, 1, 0.1, 24, curve)])] })).toContain('size-vanishes');
  });
});

describe('random cameras', () => {
  const wild = fc.oneof(fc.double(), fc.integer({ min: -9, max: 60 }), fc.constantFrom(0, 1, -1, 360, 1e12));
  const frame = fc.oneof(fc.integer({ min: -2, max: 60 }), fc.constantFrom(1, 24, 48, 1e12));
  const spacing: fc.Arbitrary<Spacing> = fc.oneof(
    fc.constant<Spacing>({ form: 'linear' }),
    fc.record({ form: fc.constant('ease' as const), leave: wild, arrive: wild }),
    fc.record({ form: fc.constant('curve' as const), x1: wild, y1: wild, x2: wild, y2: wild }),
    fc.record({ form: fc.constant('steps' as const), mm: fc.array(wild, { maxLength: 5 }) }),
    fc.record({ form: fc.constant('fair' as const), mark: fc.constant('ア'), frame, share: wild }),
  );
  const fields = fc.record({ xMm: wild, yMm: wild, widthMm: wild, turnDeg: wild }).map((f) => field('F', f));
  const legs = <P>(value: fc.Arbitrary<P>) =>
    fc
      .array(fc.tuple(value, frame, spacing), { minLength: 2, maxLength: 4 })
      .map((stops) =>
        stops.slice(1).map(([to, end, how], i) => leg(stops[i]![0], stops[i]![1], to, end, how)),
      );
  const places = fc.tuple(wild, wild).map(([x, y]) => at(x, y));
  const about = fc.option(fc.record({ xMm: wild, yMm: wild }));
  const ranged = fc.tuple(wild, wild, frame, frame, spacing, wild);
  const move: fc.Arbitrary<Move> = fc.oneof(
    legs(fields).map((all) => pan(all, { carry: ['L'] })),
    fc.tuple(legs(fields), fc.boolean()).map(([all, log]) => truck(all, { ratios: log })),
    ranged.map(([way, mm, a, b, s, loopMm]) => pull(['L', 'L'], way, mm, a, b, { spacing: s, loop: loopMm })),
    ranged.map(([way, mm, a, b, s]) => follow(['L', 'M'], way, mm, a, b, { spacing: s })),
    legs(places).map((all) => slide(['L', 'M'], all)),
    fc.tuple(legs(wild), about, fc.boolean()).map(([all, q, log]) => scale(['L'], all, q, { ratios: log })),
    fc.tuple(legs(wild), about).map(([all, q]) => turn(['L'], all, q)),
    ranged.map(([from, to, a, b]) => shake(from, to, a, b)),
    ranged.map(([size, period, a, b]) => roll(['L'], size, a, b, period)),
  );

  it('never crash, never hang, and never make a number that is none', () => {
    fc.assert(
      fc.property(fc.array(move, { maxLength: 5 }), fc.array(fields, { maxLength: 2 }), (moves, extra) => {
        const all = [level('L', { homeMm: { xMm: 9, yMm: 8 } }), level('M', { carry: true })];
        const { solved: s, diagnostics } = solved({ levels: all, moves, fields: extra });
        expectSound(s);
        for (const one of diagnostics) expect(messageOf(one, 'en')).not.toMatch(/undefined|object/);
      }),
      { numRuns: 3000 },
    );
  });
});

function expectSound(value: unknown): void {
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new Error(`a number is ${value}`);
    return;
  }
  if (value instanceof Map) for (const each of value.values()) expectSound(each);
  else if (value !== null && typeof value === 'object') {
    // What was typed is given back as it was.
    for (const [key, each] of Object.entries(value)) if (key !== 'move' && key !== 'field') expectSound(each);
  }
}
