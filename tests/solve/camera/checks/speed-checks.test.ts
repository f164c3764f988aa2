import { describe, expect, it, test } from 'vitest';
import { messageOf, noteOf } from '../../../../src/language/message.js';
import { withEdits } from '../../../../src/language/statement-reader.js';
import type { Field, Move, Spacing } from '../../../../src/shot/camera/camera-model.js';
import { asSeen } from '../../../../src/solve/camera/checks/speed-checks.js';
import { compileText } from '../../../compile.js';
import { explained } from '../../../explained.js';
import {
  codes,
  FULL,
  field,
  leg,
  level,
  pan,
  parametersOf,
  pull,
  type Scene,
  said,
  scale,
  solved,
  truck,
  W,
} from '../build.js';

const A = field('A', { xMm: 10 });
const SMALL = field('S', { widthMm: 127 });
const levels = [level('BG'), level('L', { free: true })];
const of = (...moves: Move[]): Scene => ({ levels, moves });
const spaced = (spacing: Spacing, end = 24) => pan([leg(FULL, 1, A, end, spacing)]);
const quick = (frame: number, share: number, end = 24) =>
  truck([leg(FULL, 1, SMALL, end, { form: 'fair', mark: 'ア', frame, share })], { quick: true });

describe('spacing', () => {
  it('has ramps that fit into the steps', () => {
    expect(codes(of(spaced({ form: 'ease', leave: 12, arrive: 11 })))).not.toContain('ease-long');
    expect(said(of(spaced({ form: 'ease', leave: 12, arrive: 12 })), 'ease-long')[0]).toContain('23 steps');
    expect(codes(of(spaced({ form: 'ease', leave: -1, arrive: 12 })))).toContain('ease-long');
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
    const byHand = { form: 'steps', mm: [1, 1] } as const;
    expect(codes(of(scale(['A'], [leg(1, 1, 1.02, 3, byHand)])))).toContain('steps-without-distance');
  });

  it('has graduations of a truck that add up to the difference of the widths', () => {
    const [wide, narrow] = [field('A', { widthMm: 250 }), field('B', { widthMm: 240, xMm: 30 })];
    const steps = (from: Field, to: Field, ...mm: number[]) =>
      said(of(truck([leg(from, 1, to, 4, { form: 'steps', mm })])), 'steps-sum');
    expect(steps(wide, narrow, 2, 5, 3.05)).toEqual([]);
    expect(steps(narrow, wide, 2, 5, 3)).toEqual([]);
    expect(steps(wide, narrow, 2, 5, 4)[0]).toContain('add up to 11 mm, but the width changes by 10 mm');
    expect(steps(narrow, wide, -2, -5, -3)).toHaveLength(1);
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
    expect(said(of(quick(6, 0.85)), 'fairing-short')[0]).toContain(
      'on frame 11, before half of its 18 frames',
    );
    expect(codes(of(quick(6, 0.55)))).not.toContain('fairing-short');
  });
});

describe('what is said of spacing', () => {
  it('has the numbers that are typed, and those that are wanted', () => {
    expect(
      parametersOf(of(spaced({ form: 'curve', x1: 1.1, y1: 0, x2: 0.5, y2: 1 })), 'curve-range'),
    ).toEqual([{ x1: 1.1, y1: 0, x2: 0.5, y2: 1 }]);
    const steps = of(spaced({ form: 'steps', mm: [5, 6] }, 4));
    expect(parametersOf(steps, 'steps-count')).toEqual([{ graduations: 2, steps: 3, start: 1, end: 4 }]);
    expect(parametersOf(steps, 'steps-sum')).toMatchObject([{ sumMm: 11, wayMm: 10, withinMm: 0.05 }]);
    expect(parametersOf(of(quick(6, 1)), 'fairing-share')).toEqual([{ mark: 'ア', share: 1 }]);
  });

  it('names no frame for a mark that can stand nowhere', () => {
    // 0.02 of 23 steps are less than one; 0.05 of them are one, the frame after the first.
    expect(parametersOf(of(quick(20, 0.02)), 'fairing-slow')).toMatchObject([{ latest: null, share: 0.02 }]);
    expect(parametersOf(of(quick(20, 0.05)), 'fairing-slow')).toMatchObject([{ latest: 2 }]);
  });

  it('asks for no more than an even move does', () => {
    // Half of 20 steps in 10 frames, from frame 1 on: the move is even.
    expect(codes(of(quick(11, 0.5, 21)))).not.toContain('fairing-slow');
    // 15 of 20 steps are exactly 75 %.
    expect(parametersOf(of(quick(16, 0.5, 21)), 'fairing-slow')).toMatchObject([{ latest: 11, least: 75 }]);
  });

  it('says how much faster a cushion begins than it would go on evenly', () => {
    const found = solved(of(quick(6, 0.85))).diagnostics.find(({ code }) => code === 'fairing-short')!;
    // (0.85 / 5) / (0.15 / 18).
    expect(found.notes).toEqual([{ note: 'fairing-speed', power: expect.closeTo(20.4, 9) }]);
  });
});

describe('strobing check', () => {
  const levels = [level('BG'), level('L', { free: true })];
  const of = (...moves: Move[]): Scene => ({ levels, moves });

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
});

it('sees a move on twos as its whole steps', () => {
  expect([...asSeen(Float64Array.of(0, 2, 0, 2, 0, 2, 0, 0))]).toEqual([0, 2, 2, 2, 2, 2, 0, 0]);
});

it('sees two moves with a rest between them as two', () => {
  expect([...asSeen(Float64Array.of(0, 1, 0, 0, 0, 0, 0, 1))]).toEqual([0, 1, 0, 0, 0, 0, 0, 1]);
});

test.each([
  ['full at 20,0', 'full at 10,0'],
  ['full at 0,-20', 'full at 0,-10'],
])('graduations of a pan that miss its field at %s offer where they end', (place, mended) => {
  const text = `cut 1\ntime 1+0\nA: 1..\nfield B ${place}\npan full@1 > B@5 steps 1 2 3 4\n`;
  const found = compileText(text).diagnostics.find(({ code }) => code === 'steps-sum')!;
  const edits = found.fix!.edits.map(({ span, text: written }) => ({ ...span, text: written }));
  const after = withEdits(text, edits);
  expect(after).toContain(`field B ${mended}\n`);
  expect(compileText(after).diagnostics.map(({ code }) => code)).not.toContain('steps-sum');
});

describe('the limits of both bands', () => {
  const passing = (share: number, frames: number) =>
    codes(of(pull(['BG'], 'right', share * W * frames, 1, frames)));
  const told = (share: number, frames = 24) =>
    passing(share, frames).filter((code) => code === 'strobing' || code === 'judder');

  test('a full width in seven seconds is slow enough, 1/120 of it a frame does not strobe, 1/48 is safe again', () => {
    expect(told(1 / (7 * 24))).toEqual([]);
    expect(told(1.001 / (7 * 24))).toEqual(['judder']);
    expect(told(1 / 120)).toEqual(['judder']);
    expect(told(1.001 / 120)).toEqual(['strobing']);
    expect(told(0.999 / 48)).toEqual(['strobing']);
    expect(told(1 / 48)).toEqual([]);
  });

  test('a band passed through in less than a quarter of a second is let be', () => {
    // Six frames of 24 a second strobe, five between two zip pans do not.
    const between = (frames: number) =>
      codes(
        of(
          pan([
            leg(FULL, 1, field('P', { xMm: W }), 11),
            leg(field('P', { xMm: W }), 11, field('Q', { xMm: W * (1 + frames / 60) }), 11 + frames),
            leg(
              field('Q', { xMm: W * (1 + frames / 60) }),
              11 + frames,
              field('R', { xMm: W * (2 + frames / 60) }),
              21 + frames,
            ),
          ]),
        ),
      );
    expect(between(5)).not.toContain('strobing');
    expect(between(6)).toContain('strobing');
  });

  test('the fastest frame is the one that is told', () => {
    const legs = [
      leg(FULL, 1, field('P', { xMm: 30 }), 11),
      leg(field('P', { xMm: 30 }), 11, field('Q', { xMm: 70 }), 21),
    ];
    const back = [
      leg(FULL, 1, field('P', { xMm: 40 }), 11),
      leg(field('P', { xMm: 40 }), 11, field('Q', { xMm: 70 }), 21),
    ];
    for (const each of [legs, back])
      expect(parametersOf(of(pan(each)), 'strobing')).toMatchObject([
        { frames: Array.from({ length: 20 }, (_, i) => i + 2), mm: expect.closeTo(4, 9), fraction: 64 },
      ]);
  });
});

test('a hold of three frames is still one movement, one of four is a rest', () => {
  expect([...asSeen(Float64Array.of(0, 1, 0, 0, 0, 2))]).toEqual([0, 1, 1, 1, 1, 2]);
  expect([...asSeen(Float64Array.of(0, 1, 0, 0, 0, 0, 2))]).toEqual([0, 1, 0, 0, 0, 0, 2]);
  expect([...asSeen(Float64Array.of(0, 0, 0, 2, 1))]).toEqual([0, 0, 0, 2, 1]);
});

test('what is seen leaves what was measured as it was', () => {
  const measured = Float64Array.of(0, 1, 0, 2);
  asSeen(measured);
  expect([...measured]).toEqual([0, 1, 0, 2]);
});

describe('graduations that do not add up, in full', () => {
  test.each<[string, string, string[]]>([
    [
      'a truck whose graduations come short is to end wider',
      'time 1+0\nfield A 300mm\nfield B 250mm at 5,5\ntruck A@1 > B@5 steps 10 10 10 10',
      [
        'error «A@1 > B@5 steps 10 10 10 10» The graduations add up to 40 mm, but the width changes by 50 mm; they must agree within 0.05 mm.',
        ' > make field B 260mm wide: «250mm» → «260mm»',
      ],
    ],
    [
      'one that widens is to end narrower',
      'time 1+0\nfield A 250mm\nfield B 300mm\ntruck A@1 > B@5 steps 10 10 10 10',
      [
        'error «A@1 > B@5 steps 10 10 10 10» The graduations add up to 40 mm, but the width changes by 50 mm; they must agree within 0.05 mm.',
        ' > make field B 290mm wide: «300mm» → «290mm»',
      ],
    ],
    [
      'one whose width stays is to end wider',
      'time 1+0\nfield A 300mm\nfield B 300mm at 5,0\ntruck A@1 > B@3 steps 20 30',
      [
        'error «truck A@1 > B@3 steps 20 30» Fields A and B are both 300 mm wide: where the size stays it is a pan.',
        ' > write `pan`: «truck» → «pan»',
        'error «A@1 > B@3 steps 20 30» The graduations add up to 50 mm, but the width changes by 0 mm; they must agree within 0.05 mm.',
        ' > make field B 350mm wide: «300mm» → «350mm»',
      ],
    ],
    [
      'a pan is to end on its straight way',
      'time 1+0\nfield A full at 10,20\nfield B full at 20,40\npan A@1 > B@6 steps 5 6 7 8 9',
      [
        'error «A@1 > B@6 steps 5 6 7 8 9» The graduations add up to 35 mm, but the distance is 22.36 mm; they must agree within 0.05 mm.',
        ' > put field B at 25.652,51.305, where the graduations end: «20,40» → «25.652,51.305»',
      ],
    ],
    [
      'a field without a place is given one',
      'time 1+0\nfield A full at 10,20\nfield B full\npan A@1 > B@4 steps 5 6 7',
      [
        'error «A@1 > B@4 steps 5 6 7» The graduations add up to 18 mm, but the distance is 22.36 mm; they must agree within 0.05 mm.',
        ' > put field B at 1.95,3.9, where the graduations end: «» → « at 1.95,3.9»',
      ],
    ],
    [
      'a pan to where it is has no way to go on',
      'time 1+0\nfield A full at 10,20\nfield B full at 10,20\npan A@1 > B@4 steps 5 6 7',
      [
        'error «A@1 > B@4 steps 5 6 7» The graduations add up to 18 mm, but the distance is 0 mm; they must agree within 0.05 mm.',
      ],
    ],
    [
      'on a curve the way is not known to the text',
      'time 1+0\nfield A full at 10,0\nfield B full at 20,0\nfield C full at 30,10\npan A@1 > B > C@4 steps 5 6 7 curved',
      [
        'error «A@1 > B > C@4 steps 5 6 7» The graduations add up to 18 mm, but the distance is 24.63 mm; they must agree within 0.05 mm.',
      ],
    ],
    [
      'a level has no field to be put elsewhere',
      'time 1+0\nlevel BG free\nslide BG (0,0)@1 > (10,0)@4 steps 1 2 3',
      [
        'error «(0,0)@1 > (10,0)@4 steps 1 2 3» The graduations add up to 6 mm, but the distance is 10 mm; they must agree within 0.05 mm.',
      ],
    ],
  ])('%s', (_, lines, said) => expect(explained(`cut 1\n${lines}\n`)).toEqual(said));
});

describe('judder, in full', () => {
  test.each<[string, string, string[]]>([
    [
      'of a pull names its frames, how long a width takes, and the limit',
      'time 2+0\nlevel BG free\npull BG right 1.7mm/f 1..48',
      [
        "hint «pull BG right 1.7mm/f 1..48» On frames 0+1 to 1+24 (1 to 48) the picture passes a full width in 6.23 seconds; in less than 7 it can judder (a camera maker's panning guide).",
        ' + 1.51 mm a frame is the limit on this field.',
      ],
    ],
    [
      'of a pan counts from the frame after it leaves',
      'time 2+0\nlevel BG free\nfield A full at 80,0\npan full@1 > A@48',
      [
        "hint «pan full@1 > A@48» On frames 0+2 to 1+24 (2 to 48) the picture passes a full width in 6.22 seconds; in less than 7 it can judder (a camera maker's panning guide).",
        ' + 1.51 mm a frame is the limit on this field.',
      ],
    ],
    [
      'is not said of a truck, whose points pass at different speeds',
      'time 2+0\nlevel BG free\nfield A 98% at 48,0\ntruck full@1 > A@40',
      [],
    ],
    [
      'is not said where it strobes already',
      'time 2+0\nlevel BG free\npull BG right 3mm/f 1..24\npull BG right 1.7mm/f 25..48',
      [
        "warning «pull BG right 3mm/f 1..24» On frames 1-24 the picture passes at up to 3 mm a frame, 1/85 of the field's width: between 1/120 and 1/48 it probably strobes.",
        ' + Up to 2.12 mm a frame it is safe, and from 5.29 mm it is a zip pan (0.1 in and 0.25 in on a 12 in field).',
        "hint «pull BG right 1.7mm/f 25..48» On frames 1+1 to 1+24 (25 to 48) the picture passes a full width in 6.23 seconds; in less than 7 it can judder (a camera maker's panning guide).",
        ' + 1.51 mm a frame is the limit on this field.',
      ],
    ],
  ])('%s', (_, lines, said) => expect(explained(`cut 1\n${lines}\n`)).toEqual(said));
});

describe('strobing, in full', () => {
  test.each<[string, string, string[]]>([
    [
      'a level is seen by itself',
      'time 2+0\nA: 1..\nlevel A free\npull A right 4mm/f 1..24',
      [
        "warning «pull A right 4mm/f 1..24» On frames 1-24 the picture passes at up to 4 mm a frame, 1/64 of the field's width: between 1/120 and 1/48 it probably strobes.",
        ' + Up to 2.12 mm a frame it is safe, and from 5.29 mm it is a zip pan (0.1 in and 0.25 in on a 12 in field).',
      ],
    ],
    [
      'a level that is not there passes nothing',
      'time 2+0\nA: 1.. @13 x..\nlevel A free\npull A right 4mm/f 1..24',
      [
        "warning «pull A right 4mm/f 1..24» On frames 1-12 the picture passes at up to 4 mm a frame, 1/64 of the field's width: between 1/120 and 1/48 it probably strobes.",
        ' + Up to 2.12 mm a frame it is safe, and from 5.29 mm it is a zip pan (0.1 in and 0.25 in on a 12 in field).',
      ],
    ],
    [
      'a zip pan passes the band in a few frames',
      'time 2+0\nA: 1..\nlevel A free\npull A right 8mm/f 1..24 ease 3 3',
      [],
    ],
    [
      'a slow ramp stays in it, once on each side',
      'time 2+0\nA: 1..\nlevel A free\npull A right 8mm/f 1..48 ease 24',
      [
        "warning «pull A right 8mm/f 1..48 ease 24» On frames 7 to 16, frames 1+9 to 1+18 (33 to 42) the picture passes at up to 5.17 mm a frame, 1/49 of the field's width: between 1/120 and 1/48 it probably strobes.",
        ' + Up to 2.12 mm a frame it is safe, and from 5.29 mm it is a zip pan (0.1 in and 0.25 in on a 12 in field).',
      ],
    ],
    [
      'a move shorter than a quarter of a second counts as a whole',
      'time 2+0\nA: 1..\nlevel A free\npull A right 4mm/f 46..48',
      [
        "warning «pull A right 4mm/f 46..48» On frames 1+22 to 1+24 (46 to 48) the picture passes at up to 4 mm a frame, 1/64 of the field's width: between 1/120 and 1/48 it probably strobes.",
        ' + Up to 2.12 mm a frame it is safe, and from 5.29 mm it is a zip pan (0.1 in and 0.25 in on a 12 in field).',
      ],
    ],
    [
      'what lies behind the sheet is not seen',
      'time 2+0\nA: 1..\nlevel A free\npull A right 4mm/f 46..60',
      [
        'error «pull A right 4mm/f 46..60» This move ends on frame 2+12 (60), past the end of the sheet, which has 48 rows.',
        "warning «pull A right 4mm/f 46..60» On frames 1+22 to 1+24 (46 to 48) the picture passes at up to 4 mm a frame, 1/64 of the field's width: between 1/120 and 1/48 it probably strobes.",
        ' + Up to 2.12 mm a frame it is safe, and from 5.29 mm it is a zip pan (0.1 in and 0.25 in on a 12 in field).',
      ],
    ],
    [
      'a frame is told of the camera, not again of a level',
      'time 2+0\nA: 1..\nlevel A free\nlevel BG free\nfield P full at 96,0\npan full@1 > P@25\npull A up 4mm/f 2..48',
      [
        "warning «pull A up 4mm/f 2..48» On frames 1+2 to 1+24 (26 to 48) the picture passes at up to 4 mm a frame, 1/63 of the field's width: between 1/120 and 1/48 it probably strobes.",
        ' + Up to 2.12 mm a frame it is safe, and from 5.29 mm it is a zip pan (0.1 in and 0.25 in on a 12 in field).',
      ],
    ],
    [
      'a carried level passes by its own way only',
      'time 2+0\nA: 1..\nlevel A free carry\nlevel BG free\npull A up 4mm/f 2..48\npull A left 3mm/f 2..48',
      [
        "warning «pull A up 4mm/f 2..48» On frames 0+2 to 1+24 (2 to 48) the picture passes at up to 5 mm a frame, 1/51 of the field's width: between 1/120 and 1/48 it probably strobes.",
        ' + Up to 2.12 mm a frame it is safe, and from 5.29 mm it is a zip pan (0.1 in and 0.25 in on a 12 in field).',
      ],
    ],
    [
      'a pan up and a pull down go together',
      'time 2+0\nA: 1..\nlevel A free\nlevel BG free\nfield P full at 0,96\npan full@1 > P@25 carry BG\npull A up 4mm/f 2..25',
      [],
    ],
    [
      'a turned camera takes the way of the level with it',
      'time 2+0\nA: 1..\nlevel A free\nlevel BG free\nfield P full cw 90\nfix P\npull A up 4mm/f 2..25',
      [
        "warning «pull A up 4mm/f 2..25» On frames 0+2 to 1+1 (2 to 25) the picture passes at up to 4 mm a frame, 1/64 of the field's width: between 1/120 and 1/48 it probably strobes.",
        ' + Up to 2.12 mm a frame it is safe, and from 5.29 mm it is a zip pan (0.1 in and 0.25 in on a 12 in field).',
      ],
    ],
    [
      'a truck about a point at the side',
      'time 2+0\nlevel BG free\nfield P 97% at 0,40\ntruck full@1 > P@25',
      [],
    ],
    [
      'a truck that turns passes fastest at a corner',
      'time 2+0\nlevel BG free\nfield P 97% at 2,0 cw 30\ntruck full@1 > P@25',
      [
        "warning «truck full@1 > P@25» On frames 0+2 to 1+1 (2 to 25) the edge of the picture passes at up to 3.16 mm a frame, 1/78 of the field's width: between 1/120 and 1/48 it probably strobes.",
        ' + Up to 2.05 mm a frame it is safe, and from 5.13 mm it is a zip pan (0.1 in and 0.25 in on a 12 in field).',
      ],
    ],
  ])('%s', (_, lines, said) => expect(explained(`cut 1\n${lines}\n`)).toEqual(said));
});
