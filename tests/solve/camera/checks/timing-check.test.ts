import { describe, expect, it } from 'vitest';
import { messageOf } from '../../../../src/language/message.js';
import type { Move } from '../../../../src/shot/camera/camera-model.js';
import {
  at,
  codes,
  FULL,
  field,
  follow,
  leg,
  level,
  pan,
  pull,
  roll,
  type Scene,
  said,
  scale,
  shake,
  slide,
  solved,
  truck,
  turn,
} from '../build.js';

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
