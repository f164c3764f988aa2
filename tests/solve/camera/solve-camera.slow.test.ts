import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { messageOf } from '../../../src/language/message.js';
import type { Move, Spacing } from '../../../src/shot/camera/camera-model.js';
import {
  at,
  expectSound,
  field,
  follow,
  leg,
  level,
  pan,
  pull,
  scale,
  shake,
  slide,
  solved,
  sway,
  truck,
  turn,
} from './build.js';

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
    ranged.map(([size, period, a, b]) => sway(['L'], size, a, b, period)),
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
