/** What may stand behind moves: said once, used by the page of every move that it has a meaning for. */

import type { Code } from '../../language/catalogue/index.js';
import type { MoveWord } from '../../language/tree-camera.js';
import type { StatementPage } from '../statement-pages.js';

type Part = StatementPage['parts'][number];

const BEHIND = {
  ease: [
    'ease 6 12',
    'gathers speed over 6 frames, loses it over the last 12; `ease 12` is both ends. Default: the same speed throughout',
  ],
  curve: ['curve 0.42 0 0.58 1', 'spread along a cubic Bézier, as CSS Easing has it'],
  steps: [
    'steps 1 2 4*3 2 1',
    'graduations by hand in mm, one for each step; `4*3` is 4 mm three times. They add up to the distance within 0.05 mm; those of a truck to the difference of the two widths',
  ],
  fair: [
    'fair ウ@8 60%',
    'of a quick truck: the fairing mark ウ, its frame, and the share of the way done there. From there the fairing slows it to a stop',
  ],
  graduated: [
    'graduated',
    'written frame by frame: numbered graduations on the layout and in the camera column',
  ],
  on: ['on 2', 'the move is sampled on twos, threes …. Default: every frame'],
  log: ['log', 'the size changes by equal ratios, which looks like constant speed. Default: evenly in mm'],
  carry: ['carry A,B', 'these levels go with the camera, and keep what they have gained'],
  about: ['about 10,20', 'the point that stays, mm on the artwork. Default: the artwork’s centre'],
  cw: ['cw', 'clockwise'],
  ccw: ['ccw', 'counter-clockwise'],
  loop: ['loop 420mm', 'the artwork is painted as a loop of this length'],
  curved: [
    'curved',
    'one smooth way through all places, instead of straight ones. A place without a frame (`A@1 > B > C@5+0`) is passed when the way gets there',
  ],
  sideways: ['sideways', 'to the right first. Default: up first'],
} satisfies Record<string, Part>;

function moveParts(...names: readonly (keyof typeof BEHIND)[]): Part[] {
  return names.map((name) => BEHIND[name] as Part);
}

/** Of every move. */
const MOVES: readonly Code[] = [
  'option-misplaced',
  'part-twice',
  'move-past-end',
  'moves-overlap',
  'fairing-misplaced',
];
/** Of what goes from place to place. */
const LEGS: readonly Code[] = [
  'move-backwards',
  'move-jumps',
  'spacing-twice',
  'ease-long',
  'curve-range',
  'speed-jumps',
];
const WAY: readonly Code[] = ['spacing-twice', 'ease-long', 'curve-range', 'steps-count', 'steps-sum'];
const PASSING: readonly Code[] = ['strobing', 'judder'];
const PAPER: readonly Code[] = ['artwork-edge', 'artwork-long'];

const LEG: Part = ['> C@5+0', 'a further leg; what follows a leg is that leg’s'];
const DIRECTION: Part = [
  'left, right, up, down, 30deg',
  'where to, on the screen of the move’s first frame; degrees are counter-clockwise from right',
];
const FAR: Part = [
  '0.8mm/f, 64mm',
  'so much a frame, or the whole distance; mm on the artwork. Rate × frames = distance',
];
const DURING: Part = ['1..5+0', 'the frames that have moved, the first one too'];

export const movePages: { readonly [W in MoveWord]: StatementPage } = {
  pan: {
    title: 'the camera from field to field',
    text: 'The sizes are equal; else it is a truck. While a truck runs at the same time, the pan gives the centre and the truck the width. `A@1+1 > B@5+0` is on A on frame 25, on B on frame 120, at rest before and after. Whatever is not carried passes the other way on screen. The camera column prints its sign over its rows, the camera chart the fields with an arrow between.',
    parts: [
      ['A@1+1 > B@5+0', 'exactly on field A on that frame, exactly on B on this one'],
      LEG,
      [
        'A@1 > B right steps 1 2 4*3',
        'the graduations are the move: B is a new field, A moved that way by their sum, one graduation a frame, so the last frame follows from their number. Later moves start from B',
      ],
      [
        'left, right, up, down, 30deg',
        'where such graduations lead; degrees are counter-clockwise from the right of A',
      ],
      ...moveParts('ease', 'curve', 'steps', 'curved', 'graduated', 'on', 'carry'),
    ],
    examples: [
      {
        text: 'stack BG A\nlevel BG size 560x200mm at 90,0\nlevel A free\nA: 1..\nfield B full at 90,0\npan full@1 > B@5+0 ease 12\n',
        says: '90 mm to the right in five seconds, with a soft start and a soft stop.',
      },
      {
        text: 'A "Pim": (1--2--)..\nfield B full at 90,0\npan full@1 > B@5+0 ease 12 carry A\n',
        says: 'A follow pan: Pim goes with the camera.',
      },
      {
        text: 'A: 1..\nlevel A free\nfield B full at 40,20\nfield C full at 80,0\npan full@1 > B > C@5+0 curved ease 18\n',
        says: 'Over the roof in one curve: B is passed when the way gets there.',
      },
      {
        text: 'A: 1..\nlevel A free\npan full@1 > B right steps 1 2 4 8*10 4 2 1 graduated\n',
        says: 'Drawn by hand: 94 mm to the right in 16 steps, on B on frame 17.',
      },
    ],
    codes: [
      ...MOVES,
      ...LEGS,
      'steps-count',
      'steps-sum',
      'pan-sizes',
      'place-passed',
      'curve-straight',
      'field-missed',
      'unknown-field',
      'name-twice',
      'field-full',
      'carried-level',
      'level-repeated',
      'unknown-level',
      ...PASSING,
      ...PAPER,
    ],
    see: ['truck', 'field', 'pull', 'follow'],
    subject: 'camera.md#pan',
  },
  truck: {
    title: 'the camera in or out, or the size of a level',
    text: 'Between fields of different sizes: T.U. or T.B., as the sizes say. The width runs evenly in time; where the centre moves too, it runs with the width, so that one point of the picture stays still. While a pan or a follow runs at the same time, the truck gives only the width, and the other move the centre.\n\n`truck quick` runs at constant speed to the fairing mark and then slows to a stop. `truck level A` changes the size of a level instead: shares of its size stand before the `@` then.',
    parts: [
      ['A@1 > B@3+0', 'exactly on field A on that frame, exactly on B on this one'],
      ['quick', 'a quick truck; it needs its `fair`'],
      ['level A,B', 'the size of these levels; the camera stays'],
      ['100%@1 > 140%@3+0', 'with `level`: the size on that frame, the size on this one'],
      ['ア(100%)@1 > イ(140%)@3+0', 'with `level`: the same, with marks that stand on the layout'],
      LEG,
      ...moveParts('ease', 'curve', 'steps', 'fair', 'log', 'graduated', 'on'),
      ['carry A,B', 'these levels go with the camera, and keep what they have gained; not with `level`'],
      ['about 10,20', 'with `level`: the point that stays, mm on the artwork. Default: the artwork’s centre'],
    ],
    examples: [
      {
        text: 'A: 1..\nfield B 96% at 4,-2\ntruck full@1 > B@3+0 ease 12\n',
        says: 'A slow T.U. in three seconds.',
      },
      {
        text: 'A: 1..\nfield B 96%\ntruck quick full@1 > B@20 fair ウ@8 60% graduated\n',
        says: 'A quick truck: 60 % of the way by frame 8.',
      },
      {
        text: 'A: 1..\nfield B 244mm\ntruck full@1 > B@9 steps 0.5 1 1.5 2*2 1.5 1 0.5\n',
        says: 'Graduations by hand: 10 mm narrower in eight steps. The camera column has their numbers and each step of the width.',
      },
      {
        text: 'level A free\nA: 1..\ntruck level A 100%@1 > 70%@3+0 about 10,20\n',
        says: 'Level A shrinks about a point of it.',
      },
      {
        text: 'A: 1..\nfield B 97% at 3,1\npan full@1 > B@4+0 ease 12\ntruck full@1+1 > B@3+0 log\n',
        says: 'The pan gives the centre, the truck the width: both end on B.',
      },
    ],
    codes: [
      ...MOVES,
      ...LEGS,
      'truck-one-size',
      'carry-width',
      'field-missed',
      'quick-level',
      'quick-without-fairing',
      'quick-long',
      'size-vanishes',
      'steps-without-distance',
      'steps-by-ratios',
      'steps-count',
      'steps-sum',
      'fairing-share',
      'fairing-outside',
      'fairing-slow',
      'fairing-short',
      'unknown-field',
      'scan-enlarged',
      'carried-level',
      ...PASSING,
      ...PAPER,
    ],
    see: ['pan', 'field', 'turn'],
    subject: 'camera.md#truck',
  },
  pull: {
    title: 'levels under a camera that stays',
    text: 'The artwork is pulled under the camera. The camera column prints the level, the direction and the rate over its rows.',
    parts: [
      ['BG, A,B', 'the levels'],
      DIRECTION,
      FAR,
      DURING,
      ...moveParts('ease', 'curve', 'steps', 'loop', 'graduated', 'on'),
    ],
    examples: [
      {
        text: 'A "feather": (1--2--)..\npull BG up 1.2mm/f 1..5+0 loop 300mm\n',
        says: 'A feather falls: the looped background goes up, 1.2 mm a frame.',
      },
      {
        text: 'A: 1..\nlevel BG size 420x220mm at 30,0\npull BG left 64mm 1+1..4+0 ease 8\n',
        says: 'By its whole distance; it starts and stops softly.',
      },
    ],
    codes: [
      ...MOVES,
      ...WAY,
      'pulls-along',
      'loop-short',
      'loop-askew',
      'loop-two',
      'unknown-level',
      'level-repeated',
      'range-backwards',
      ...PASSING,
      ...PAPER,
    ],
    see: ['follow', 'pan', 'slide', 'level'],
    subject: 'camera.md#pull',
  },
  follow: {
    title: 'camera and levels together over a background that stays',
    text: 'Camera and levels go the same way. `follow A left` and `pull BG right` by the same way give the same picture, where A and BG are the whole stack.',
    parts: [
      ['A, A,B', 'the levels that go with the camera'],
      DIRECTION,
      FAR,
      DURING,
      ...moveParts('ease', 'curve', 'steps', 'graduated', 'on'),
    ],
    examples: [
      {
        text: 'A: (1--2--)..\nlevel BG size 560x220mm at 60,0\nfollow A right 0.9mm/f 1..5+0\n',
        says: 'A walks to the right, the camera with it.',
      },
      {
        text: 'A "balloon": 1..\nlevel BG size 297x400mm at 0,60\nfollow A up 45mm 1+1..4+0 ease 10\n',
        says: 'A balloon rises: the whole distance.',
      },
    ],
    codes: [
      ...MOVES,
      ...WAY,
      'carried-level',
      'unknown-level',
      'level-repeated',
      'range-backwards',
      ...PASSING,
      ...PAPER,
    ],
    see: ['pull', 'pan'],
    subject: 'camera.md#follow',
  },
  slide: {
    title: 'levels along marked places',
    text: 'Places are counted from the level’s home, mm to the right and up. The marks stand on the layout and in the camera column.',
    parts: [
      ['A, A,B', 'the levels'],
      [
        'ア(0,0)@1 > イ(35,-20)@4+0',
        'at that place on that frame, at this one on this; the names of the marks may be left out',
      ],
      ['> (0,40)@7+0', 'a further leg; what follows a leg is that leg’s'],
      ...moveParts('ease', 'curve', 'steps', 'curved', 'graduated', 'on'),
    ],
    examples: [
      {
        text: 'level A free\nA "leaf": 1..\nslide A ア(0,0)@1 > イ(18,-40)@2+12 ease 10\n',
        says: 'A leaf, 18 mm to the right and 40 mm down.',
      },
      {
        text: 'level A free\nA: 1..\nslide A (0,0)@1 > (20,0)@2+0 ease 12 > (20,10)@3+0 ease 12\n',
        says: 'Two legs without names.',
      },
    ],
    codes: [
      ...MOVES,
      ...LEGS,
      'steps-count',
      'place-passed',
      'curve-straight',
      'steps-sum',
      'unknown-level',
      'level-repeated',
      ...PASSING,
      ...PAPER,
    ],
    see: ['pull', 'sway', 'truck', 'turn'],
    subject: 'camera.md#slide',
  },
  turn: {
    title: 'the rotation of levels',
    text: 'Degrees on one frame, degrees on another; from 350 to 10 goes back through the numbers. Which way is positive must be said: `cw` or `ccw`.',
    parts: [
      ['level A,B', 'the levels'],
      ['0@1 > 360@2+0', 'degrees on that frame, degrees on this one; `-30` is the other way'],
      ['ア(0)@1 > イ(-30)@2+0', 'the same, with marks that stand on the layout'],
      ['> 0@3+0', 'a further leg; what follows a leg is that leg’s'],
      ...moveParts('cw', 'ccw', 'about', 'ease', 'curve', 'graduated', 'on'),
    ],
    examples: [
      {
        text: 'level A free\nA "wheel": 1..\nturn level A 0@1 > 360@2+0 cw about 0,0\n',
        says: 'Once round, clockwise.',
      },
      {
        text: 'level A free\nA "sign": 1..\nturn level A 0@1+1 > 30@1+12 ccw ease 4 > 0@2+12 ease 4\n',
        says: 'There and back.',
      },
      {
        text: 'level A free\nA "gate": 1..\nturn level A ア(0)@1 > イ(-40)@1+12 > ウ(-35)@2+0 cw about -60,0\n',
        says: 'Open with a rebound: ア, イ and ウ are marked on the layout.',
      },
    ],
    codes: [
      ...MOVES,
      ...LEGS,
      'turn-sense',
      'steps-without-distance',
      'unknown-level',
      'level-repeated',
      ...PASSING,
      ...PAPER,
    ],
    see: ['truck', 'slide', 'sway'],
    subject: 'camera.md#truck-level-turn-level',
  },
  shake: {
    title: 'camera shake',
    text: 'The picture goes up first, then down, one swing a frame, and is back at rest after the range.',
    parts: [
      ['3mm', 'how far from rest, mm on the artwork'],
      ['4mm>0mm', 'from one size to another: it dies away'],
      ['1+1..1+12', 'its frames'],
      ...moveParts('sideways'),
      ['on 2', 'each swing takes two frames. Default: one'],
    ],
    examples: [
      { text: 'A: 1..\nshake 4mm>0mm 1+1..1+12\n', says: 'Dies away in half a second.' },
      { text: 'A: 1..\nshake 3mm 3+1..3+12 on 2 sideways\n', says: 'Left and right on twos.' },
    ],
    codes: [...MOVES, 'range-backwards', 'number-senseless', ...PAPER],
    see: ['sway', 'pan'],
    subject: 'camera.md#shake',
  },
  sway: {
    title: 'the sway of levels',
    text: 'Such as a boat’s: up first, then down, along a sine. A sway that ends away from rest is a warning.',
    parts: [
      ['A, A,B', 'the levels'],
      ['5mm', 'how far from rest, mm on the artwork'],
      ['1..3+0', 'its frames'],
      ['every 1+12', 'how long one whole sway lasts'],
      ...moveParts('sideways', 'on'),
    ],
    examples: [
      { text: 'A "boat": 1..\nsway A 5mm 1..3+0 every 1+12\n', says: 'Two whole sways.' },
      {
        text: 'A "lamp": 1..\nsway A 3mm 1..4+0 every 2+0 on 2 sideways\n',
        says: 'To the right and left, on twos.',
      },
    ],
    codes: [
      ...MOVES,
      'sway-unrest',
      'number-senseless',
      'unknown-level',
      'level-repeated',
      'range-backwards',
      ...PAPER,
    ],
    see: ['shake', 'slide', 'turn'],
    subject: 'camera.md#sway',
  },
};
