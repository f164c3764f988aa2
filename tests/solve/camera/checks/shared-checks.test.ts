import { describe, expect, it } from 'vitest';
import { codes, FULL, field, follow, leg, level, pan, type Scene, said, truck } from '../build.js';

const levels = [level('BG'), level('A', { free: true })];
const of = (...moves: NonNullable<Scene['moves']>): Scene => ({ length: 96, levels, moves });
const B = field('B', { xMm: 40, widthMm: 250 });

describe('a truck beside a pan', () => {
  it('carries nothing, since it has no centre', () => {
    const carrying = truck([leg(FULL, 1, B, 90)], { carry: ['A'] });
    expect(codes(of(carrying))).not.toContain('carry-width');
    expect(said(of(pan([leg(FULL, 1, B, 90)]), carrying), 'carry-width')).toHaveLength(1);
    expect(
      codes(of(pan([leg(FULL, 1, B, 40)]), truck([leg(B, 40, FULL, 90)], { carry: ['A'] }))),
    ).not.toContain('carry-width');
  });

  it('has to bring the camera to the fields that the moves name, when both have arrived', () => {
    const missed = (to: ReturnType<typeof field>, size: ReturnType<typeof field>) =>
      said(of(pan([leg(FULL, 1, to, 90)]), truck([leg(FULL, 20, size, 60)])), 'field-missed');
    expect(missed(B, B)).toEqual([]);
    // Another width than that of the pan's own field, and a centre that the truck's field has not.
    expect(missed(B, field('C', { widthMm: 240 }))).toEqual([
      'On frame 90 the camera is 240 mm wide, and not 250 mm as field `B` is: the truck gives the width.',
    ]);
    expect(missed(B, field('C', { xMm: 30, widthMm: 250 }))).toEqual([
      'On frame 90 the camera stands at 40, 0, and not on field `C` at 30, 0: the pan gives the centre.',
    ]);
    expect(missed(B, field('C', { xMm: 40, widthMm: 250, turnDeg: 3 }))).toHaveLength(1);
    // Where its fields say nothing of what the other gives, nothing is missed.
    expect(missed(field('P', { xMm: 40 }), field('C', { widthMm: 240 }))).toEqual([]);
  });

  it('may stand beside a follow, which names no field', () => {
    const moves = [
      follow(['A'], 'left', 40, 1, 60),
      truck([leg(FULL, 10, field('C', { widthMm: 250 }), 50)]),
    ];
    expect(codes(of(...moves)).filter((code) => /moves-overlap|field-missed|move-jumps/.test(code))).toEqual(
      [],
    );
  });
});
