import { describe, expect, it, test } from 'vitest';
import type { Move, Spacing } from '../../../src/shot/camera/camera-model.js';
import { explained } from '../../explained.js';
import {
  codes,
  expectSound,
  FULL,
  field,
  leg,
  level,
  pan,
  pull,
  type Scene,
  scale,
  shake,
  solved,
  truck,
} from './build.js';

describe('the camera', () => {
  it('rests where it was told to, and is fixed without a move of its own', () => {
    const C = field('C', { xMm: 12, widthMm: 127 });
    const { solved: s } = solved({ length: 3, rest: C, moves: [pull(['BG'], 'left', 3, 1, 3)] });
    expect(s.frames.map(({ x, percent }) => [x, percent])).toEqual([
      [12, 50],
      [12, 50],
      [12, 50],
    ]);
    expect(s.fixed).toBe(true);
    expect(solved({ moves: [shake(3, 3, 1, 4)] }).solved.fixed).toBe(false);
  });
  it('leave the camera on the standard field where its rest makes no sense', () => {
    const { solved: s } = solved({ rest: field('Z', { widthMm: Number.NaN }) });
    expect(s.frames[0]!.width).toBe(254);
  });
});

describe('sizes', () => {
  const levels = [level('L')];

  it('do not shrink a field to nothing by a curve', () => {
    const small = field('S', { widthMm: 25 });
    const curve: Spacing = { form: 'curve', x1: 0.3, y1: 0, x2: 0.6, y2: 3 };
    const scene = { moves: [truck([leg(FULL, 1, small, 24, curve)])] };
    expect(codes(scene)).toContain('size-vanishes');
    expectSound(solved(scene).solved);
    expect(codes({ levels, moves: [scale(['L'], [leg(1, 1, 0.1, 24, curve)])] })).toContain('size-vanishes');
  });
  it('that would vanish are held at a hundredth, and the move under way is named', () => {
    const small = field('S', { widthMm: 25 });
    const curve: Spacing = { form: 'curve', x1: 0.3, y1: 0, x2: 0.6, y2: 3 };
    const moves = [pan([leg(FULL, 1, FULL, 5)]), truck([leg(FULL, 5, small, 29, curve)])];
    const { solved: s, diagnostics } = solved({ moves });
    expect(Math.min(...s.frames.map(({ width }) => width))).toBe(0.01);
    expect(diagnostics.find(({ code }) => code === 'size-vanishes')!.span).toEqual(moves[1]!.span);
  });
});

describe('what is solved', () => {
  it('has the moves in the order of their starts, however they are written', () => {
    const late = pull(['BG'], 'left', 9, 10, 20);
    const early = pull(['BG'], 'up', 9, 1, 5);
    expect(solved({ moves: [late, early] }).solved.moves.map(({ move }) => move)).toEqual([early, late]);
  });

  it('solves what depends on others after them: a pull to the left of a camera that turns later', () => {
    // On its first frame the camera has turned by 90 degrees: left on screen is up on the artwork.
    const turned = field('T', { turnDeg: 90 });
    const moves = [pull(['BG'], 'left', 8, 9, 9), pan([leg(FULL, 1, turned, 9)])];
    expect(solved({ length: 9, moves }).solved.placement.get('BG')![8]).toMatchObject({ x: 0, y: 8 });
  });

  it('says of each field whether the camera stands on it on some frame, whatever brought it there', () => {
    const [A, B] = [field('A', { xMm: 9 }), field('B', { xMm: 20 })];
    const used = (scene: Scene) => {
      const { fields, standardUsed } = solved({ length: 9, fields: [A, B], ...scene }).solved;
      return [...fields.map(({ used }) => used), standardUsed];
    };
    expect(used({ moves: [pan([leg(FULL, 1, A, 9)])] })).toEqual([true, false, true]);
    expect(used({ rest: B })).toEqual([false, true, false]);
    // On its way to 18 mm it stands on A on frame 5, which it does on no frame where it arrives on an even one.
    const far = field('F', { xMm: 18 });
    expect(used({ moves: [pan([leg(FULL, 1, far, 9)])] })).toEqual([true, false, true]);
    expect(used({ moves: [pan([leg(FULL, 1, far, 8)])] })).toEqual([false, false, true]);
  });

  it('names the field that the camera goes to where the scan is enlarged', () => {
    const small = field('S', { widthMm: 100 });
    const found = (moves: readonly Move[], rest = FULL) =>
      solved({ moves, rest }).diagnostics.find(({ code }) => code === 'scan-enlarged')!.span;
    expect(found([truck([leg(FULL, 1, small, 9)])])).toEqual(small.span);
    expect(found([truck([leg(small, 1, FULL, 9)])], small)).toEqual(small.span);
    expect(found([], small)).toEqual(small.span);
  });

  it('names the move that scales a level where its scan is enlarged', () => {
    const scaled = scale(['BG'], [leg(1, 1, 2, 9)]);
    const { diagnostics } = solved({ moves: [scaled] });
    expect(diagnostics.find(({ code }) => code === 'scan-enlarged')!.span).toEqual(scaled.span);
  });
});

describe('a camera or level that cannot go so, in full', () => {
  test.each<[string, string, string[]]>([
    [
      'a level that is scaled to nothing',
      'time 1+0\nA: 1..\nlevel A free\ntruck level A 100%@1 > 0%@24',
      ['error «100%@1 > 0%@24» The scale (1 is 100 %) is 0; it must be between 1 % and 10000 %.'],
    ],
    [
      'a curve that takes a level through nothing',
      'time 1+0\nA: 1..\nlevel A free\ntruck level A 100%@1 > 20%@24 curve 0.3 0 0.6 2',
      [
        'warning «A» A would have to be painted 25.4 m long; is a `loop` missing, or a speed mistyped?',
        'error «truck level A 100%@1 > 20%@24 curve 0.3 0 0.6 2» A shrinks to nothing on frame 17; the curve swings too far past its end.',
      ],
    ],
    [
      'a curve that takes the camera through nothing',
      'time 1+0\nlevel BG free\nfield T 20mm\ntruck full@1 > T@24 curve 0.3 0 0.6 2',
      [
        'hint «field T 20mm» The field is 0 % of the standard field on frame 14: scanned at 200 dpi it is enlarged from 96 % down, to fill 1920 pixels.',
        ' + 4876800 dpi would be enough.',
        'error «truck full@1 > T@24 curve 0.3 0 0.6 2» The field shrinks to nothing on frame 14; the curve swings too far past its end.',
      ],
    ],
    ['a field that nothing goes to', 'time 1+0\nfield P 98%\nfield Q 97%', []],
    [
      'a field that a curve passes',
      'time 2+0\nlevel BG free\nfield P full at 2,0\nfield Q full at 4,4\npan full@1 > P > Q@48 curved',
      [],
    ],
    [
      'moves of a level that run at once',
      'time 1+0\nA: 1..\nlevel A free\nslide A (0,0)@1 > (5,0)@12\nslide A (5,0)@10 > (8,0)@24',
      [
        'error «slide A (5,0)@10 > (8,0)@24» Two slides of A run at once, from frame 11 to frame 12.',
        ' + «slide A (0,0)@1 > (5,0)@12» The other one.',
      ],
    ],
    [
      'a level that jumps between two moves',
      'time 1+0\nA: 1..\nlevel A free\nslide A (0,0)@1 > (5,0)@12\nslide A (8,0)@14 > (9,0)@24',
      [
        'error «(8,0)@14 > (9,0)@24» A would jump on frame 14: this slide starts at 8, 0, but its last slide ended at 5, 0.',
        ' + «slide A (0,0)@1 > (5,0)@12» The slide before.',
      ],
    ],
    [
      "a level's scale that jumps",
      'time 1+0\nA: 1..\nlevel A free\ntruck level A 100%@1 > 95%@12\ntruck level A 90%@13 > 92%@24',
      [
        'error «90%@13 > 92%@24» A would jump on frame 13: this move starts from 90 %, but A is at 95 %.',
        ' + «truck level A 100%@1 > 95%@12» The move before ends there.',
      ],
    ],
    [
      "a level's turn that jumps",
      'time 1+0\nA: 1..\nlevel A free\nturn level A 0@1 > 5@12 cw\nturn level A 7@13 > 9@24 cw',
      [
        'error «7@13 > 9@24» A would jump on frame 13: this move starts from 7°, but A is at 5°.',
        ' + «turn level A 0@1 > 5@12 cw» The move before ends there.',
      ],
    ],
    [
      'a camera that jumps',
      'time 1+0\nlevel BG free\nfield P full at 2,0\nfield Q full at 3,0\nfield R full at 4,0\npan full@1 > P@12\npan Q@13 > R@24',
      [
        'error «Q@13 > R@24» The camera would jump on frame 13: this pan starts from field Q, but the camera is 254 mm wide at 2, 0.',
        ' + «pan full@1 > P@12» The move before ends there.',
      ],
    ],
    [
      'a camera that jumps in size',
      'time 1+0\nlevel BG free\nfield P 98%\nfield Q 97%\nfield R 96%\ntruck full@1 > P@12\ntruck Q@13 > R@24',
      [
        'error «Q@13 > R@24» The camera would jump on frame 13: this truck starts from field Q, but the camera is 248.92 mm wide at 0, 0.',
        ' + «truck full@1 > P@12» The move before ends there.',
      ],
    ],
    [
      'a camera that jumps in turn',
      'time 1+0\nlevel BG free\nfield P 98% cw 3\nfield Q 98% cw 5\nfield R 97% cw 6\ntruck full@1 > P@12\ntruck Q@13 > R@24',
      [
        'error «Q@13 > R@24» The camera would jump on frame 13: this truck starts from field Q, but the camera is 248.92 mm wide at 0, 0 turned 3°.',
        ' + «truck full@1 > P@12» The move before ends there.',
      ],
    ],
    [
      'a first move that does not start at the fixed field',
      'time 1+0\nlevel BG free\nfield P full at 2,0\nfield Q full at 4,0\nfix P\npan full@5 > Q@24',
      [
        'error «full@5 > Q@24» The camera would jump on frame 5: this pan starts from field full, but the camera is 254 mm wide at 2, 0.',
        ' + «field P full at 2,0» The camera rests there.',
      ],
    ],
  ])('%s', (_, lines, said) => expect(explained(`cut 1\n${lines}\n`)).toEqual(said));
});
