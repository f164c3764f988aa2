import { describe, expect, it, test } from 'vitest';
import { explained } from '../../../explained.js';
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
    expect(missed(B, field('C', { xMm: 40, widthMm: 250, turnDeg: 3 }))).toEqual([
      'On frame 90 the camera is not turned, and field `C` is turned by 3° clockwise: the pan gives the turn.',
    ]);
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

describe('a pan and a truck that share the camera, in full', () => {
  test.each<[string, string, string[]]>([
    [
      'a truck that carries beside a pan',
      'time 2+0\nA: 1..\nlevel A free\nlevel BG free\nfield P full at 8,0\nfield T 98%\npan full@1 > P@24\ntruck full@1 > T@24 carry A',
      [
        'error «truck full@1 > T@24 carry A» The pan gives the centre here, and this truck only the width: it has nothing to carry levels along with. Write `carry` behind a pan.',
        ' + «pan full@1 > P@24» The other one.',
      ],
    ],
    [
      'a pan whose field has another width',
      'time 2+0\nlevel BG free\nfield P 98% at 2,0\nfield T 97% at 2,0\npan full@1 > P@24\ntruck full@1 > T@40',
      [
        'warning «full@1 > P@24» On frame 1+16 (40) the camera is 246.38 mm wide, and not 248.92 mm as field `P` is: the truck gives the width.',
        ' + «truck full@1 > T@40» The other one.',
      ],
    ],
    [
      'a truck whose field has another centre',
      'time 2+0\nlevel BG free\nfield P full at 2,0\nfield T 97% at 3,0\npan full@1 > P@24\ntruck full@1 > T@20',
      [
        'warning «full@1 > T@20» On frame 24 the camera stands at 2, 0, and not on field `T` at 3, 0: the pan gives the centre.',
        ' + «pan full@1 > P@24» The other one.',
      ],
    ],
    [
      'a truck whose field stands higher',
      'time 2+0\nlevel BG free\nfield P full at 0,2\nfield T 97% at 0,3\npan full@1 > P@24\ntruck full@1 > T@20',
      [
        'warning «full@1 > T@20» On frame 24 the camera stands at 0, 2, and not on field `T` at 0, 3: the pan gives the centre.',
        ' + «pan full@1 > P@24» The other one.',
      ],
    ],
    [
      'a truck whose field is turned',
      'time 2+0\nlevel BG free\nfield P full at 2,0\nfield T 97% at 2,0 cw 5\npan full@1 > P@24\ntruck full@1 > T@20',
      [
        'warning «full@1 > T@20» On frame 24 the camera is not turned, and field `T` is turned by 5° clockwise: the pan gives the turn.',
        ' + «pan full@1 > P@24» The other one.',
      ],
    ],
    [
      'a truck whose field is a hair off',
      'time 2+0\nlevel BG free\nfield P full at 2,0\nfield T 97% at 2.05,0\npan full@1 > P@24\ntruck full@1 > T@20',
      [],
    ],
    [
      'a truck that begins where the pan ends',
      'time 2+0\nlevel BG free\nfield P full at 2,0\nfield T 97% at 8,0\npan full@1 > P@24\ntruck P@24 > T@48',
      [],
    ],
    [
      'a truck past the end of the sheet',
      'time 1+0\nlevel BG free\nfield P full at 2,0\nfield T 97% at 3,0\npan full@1 > P@24\ntruck full@1 > T@30',
      [
        'error «truck full@1 > T@30» This move ends on frame 1+6 (30), past the end of the sheet, which has 24 rows.',
        'warning «full@1 > T@30» On frame 1+6 (30) the camera stands at 2, 0, and not on field `T` at 3, 0: the pan gives the centre.',
        ' + «pan full@1 > P@24» The other one.',
      ],
    ],
  ])('%s', (_, lines, said) => expect(explained(`cut 1\n${lines}\n`)).toEqual(said));
});
