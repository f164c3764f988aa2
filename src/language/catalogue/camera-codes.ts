import type { MoveKind } from '../tree-camera.js';
import type { Entries, Entry, None } from './catalogue-entry.js';
import type { FieldQuantity, NumberBounds, Quantity } from './message-terms.js';

/** A cut of two seconds with these lines. */
const cut = (failing: string, mended: string): Entry['example'] => ({
  kind: 'text',
  failing: `cut 1\ntime 2+0\n${failing}\n`,
  mended: `cut 1\ntime 2+0\n${mended}\n`,
});

/** Along which side of the artwork. */
interface LoopWay {
  readonly mm: number;
  readonly axis: 'x' | 'y';
}

export interface CameraMessages {
  readonly 'unknown-field': { readonly name: string; readonly guess: string | null };
  readonly 'field-full': None;
  readonly 'field-measures': /** `percent`: whether this one is given in percent, and the other in lines of the field chart, or the other way round. */ {
    readonly field: string;
    readonly other: string;
    readonly percent: boolean;
  };
  readonly 'level-repeated': { readonly level: string };
  readonly 'option-misplaced': { readonly option: string; readonly move: MoveKind };
  readonly 'spacing-twice': None;
  readonly 'fairing-misplaced': None;
  readonly 'quick-without-fairing': None;
  readonly 'turn-sense': None;
  readonly 'exposure-range': /** Percent. */ { readonly exposure: number };
  readonly 'overlap-short': None;
  readonly 'overlap-long':
    | { readonly variant: 'cut' }
    | { readonly variant: 'sheet'; readonly frames: number; readonly rows: number };
  readonly 'number-senseless':
    | {
        readonly variant: 'field';
        readonly quantity: FieldQuantity;
        readonly field: string;
        readonly value: number;
        readonly bounds: NumberBounds;
      }
    | {
        readonly variant: 'move';
        readonly quantity: Quantity;
        readonly value: number;
        readonly bounds: NumberBounds;
      };
  readonly 'size-vanishes': /** `level`: null for the field. */ {
    readonly level: string | null;
    readonly frame: number;
  };
  readonly 'move-backwards': { readonly start: number; readonly end: number };
  readonly 'move-past-end': { readonly light: boolean; readonly end: number; readonly rows: number };
  readonly 'moves-overlap': /** `level`: null for moves of the camera. */ {
    readonly move: MoveKind;
    readonly level: string | null;
    readonly from: number;
    readonly to: number;
  };
  readonly 'move-jumps':
    | {
        readonly variant: 'camera';
        readonly frame: number;
        readonly move: 'pan' | 'truck';
        readonly field: string;
        /** Where the camera is. */
        readonly widthMm: number;
        readonly xMm: number;
        readonly yMm: number;
        readonly turnDeg: number;
      }
    | {
        readonly variant: 'level';
        readonly frame: number;
        readonly level: string;
        readonly of: 'scale' | 'angle';
        readonly starts: number;
        readonly is: number;
      }
    | {
        readonly variant: 'slide';
        readonly frame: number;
        readonly level: string;
        readonly starts: { readonly x: number; readonly y: number };
        readonly ended: { readonly x: number; readonly y: number };
      };
  readonly 'quick-long': { readonly frames: number; readonly fps: number };
  readonly 'ease-long': /** The frames of both ends of the ease, and those of the leg. */ {
    readonly leave: number;
    readonly arrive: number;
    readonly steps: number;
  };
  readonly 'curve-range': {
    readonly x1: number;
    readonly y1: number;
    readonly x2: number;
    readonly y2: number;
  };
  readonly 'steps-without-distance': None;
  readonly 'steps-count': {
    readonly graduations: number;
    readonly steps: number;
    readonly start: number;
    readonly end: number;
  };
  readonly 'steps-by-ratios': None;
  readonly 'steps-sum': /** `of`: what the graduations are mm of. */ {
    readonly of: 'way' | 'width';
    readonly sumMm: number;
    readonly wayMm: number;
    readonly withinMm: number;
  };
  readonly 'fairing-share': { readonly mark: string; readonly share: number };
  readonly 'fairing-outside': /** The frames on which it may stand: none where the last is before the first. */ {
    readonly mark: string;
    readonly frame: number;
    readonly first: number;
    readonly last: number;
  };
  readonly 'fairing-slow': /** `latest`: the last frame on which so much may be done; null where there is none. `least`: percent to be done. */ {
    readonly mark: string;
    readonly share: number;
    readonly frame: number;
    readonly latest: number | null;
    readonly least: number;
  };
  readonly 'fairing-short': /** `still`: the frame on which it looks as good as still; `frames`: of the fairing. */ {
    readonly mark: string;
    readonly still: number;
    readonly frames: number;
  };
  readonly 'place-passed': None;
  readonly 'curve-straight': None;
  readonly 'carry-width': /** Of a truck that gives the width alone; `partner`: the move that gives the centre. */ {
    readonly partner: MoveKind;
  };
  readonly 'field-missed': /** On `frame` the camera has not the width, the centre or the turn of the field, which `partner` gives. */
    | {
        readonly variant: 'width';
        readonly field: string;
        readonly frame: number;
        readonly partner: MoveKind;
        readonly widthMm: number;
        readonly wantedMm: number;
      }
    | {
        readonly variant: 'centre';
        readonly field: string;
        readonly frame: number;
        readonly partner: MoveKind;
        readonly at: { readonly x: number; readonly y: number };
        readonly wanted: { readonly x: number; readonly y: number };
      }
    | {
        readonly variant: 'turn';
        readonly field: string;
        readonly frame: number;
        readonly partner: MoveKind;
        /** Clockwise. */
        readonly turnDeg: number;
        readonly wantedDeg: number;
      };
  readonly 'pan-sizes': {
    readonly from: string;
    readonly fromMm: number;
    readonly to: string;
    readonly toMm: number;
  };
  readonly 'truck-one-size': { readonly from: string; readonly to: string; readonly widthMm: number };
  readonly 'speed-jumps': /** `field`: null for a mark without a name; speeds in mm a frame. */ {
    readonly frame: number;
    readonly field: string | null;
    readonly before: number;
    readonly after: number;
  };
  readonly 'carried-level': { readonly level: string };
  readonly 'pulls-along': { readonly level: string };
  readonly 'sway-unrest': /** `frames`: so many would end at rest. */ {
    readonly offMm: number;
    readonly frame: number;
    readonly levels: readonly string[];
    readonly frames: number;
  };
  readonly 'field-off-chart': /** How far it reaches over the edge, in lines, and to which sides. */ {
    readonly field: string;
    readonly lines: number;
    readonly reaches: readonly {
      readonly lines: number;
      readonly side: 'north' | 'south' | 'east' | 'west';
    }[];
  };
  readonly 'scan-enlarged': /** `level`: null where it is the field; shares of the standard field. */ {
    readonly level: string | null;
    readonly share: number;
    readonly frame: number;
    readonly dpi: number;
    readonly enough: number;
    readonly pixels: number;
  };
  readonly strobing: /** `edge`: it is the fastest point; `fraction`: of the field’s width a frame, as one over it. */ {
    readonly frames: readonly number[];
    readonly edge: boolean;
    readonly mm: number;
    readonly fraction: number;
  };
  readonly judder: {
    readonly frames: readonly number[];
    readonly seconds: number;
    readonly least: number;
  };
  readonly 'artwork-edge': /** `needed`: the artwork that would do. */ {
    readonly level: string;
    readonly side: 'left' | 'right' | 'top' | 'bottom';
    readonly frame: number;
    readonly byMm: number;
    readonly worstFrame: number;
    readonly worstMm: number;
    readonly needed: {
      readonly width: number;
      readonly height: number;
      readonly x: number;
      readonly y: number;
    };
  };
  readonly 'artwork-long': { readonly level: string; readonly lengthMm: number };
  readonly 'loop-short':
    | {
        readonly variant: 'field';
        readonly level: string;
        readonly loopMm: number;
        readonly neededMm: number;
      }
    | {
        readonly variant: 'artwork';
        readonly level: string;
        readonly loopMm: number;
        readonly paintedMm: number;
      };
  readonly 'loop-askew': { readonly level: string };
  readonly 'loop-two': { readonly level: string; readonly here: LoopWay; readonly there: LoopWay };
  readonly 'fade-short': None;
  /** mm on the standard field. */
  readonly 'iris-outside': { readonly xMm: number; readonly yMm: number };
  readonly 'light-overlaps': /** `levels`: of exposures; null for fades and overlaps. */ {
    readonly levels: readonly string[] | null;
    readonly from: number;
    readonly to: number;
  };
  readonly flashes: { readonly count: number; readonly from: number; readonly to: number };
  readonly 'flash-unmeasured': /** `count`: in the worst second. */ { readonly count: number };
}

/** Camera, level moves and light. */
export const camera: Entries<CameraMessages> = {
  'unknown-field': {
    severity: 'error',
    example: cut('field A 60%\nfix B', 'field A 60%\nfix A'),
  },
  'field-full': {
    severity: 'error',
    example: cut('field full 60%\nfix full', 'field A 60%\nfix A'),
  },
  'field-measures': {
    severity: 'hint',
    example: cut('field A 60%\nfield B 8F\ntruck A@1 > B@24', 'field A 7F\nfield B 8F\ntruck A@1 > B@24'),
  },
  'level-repeated': {
    severity: 'warning',
    example: cut('A: 1..\nB: 1..\nglow A,A 1..12', 'A: 1..\nB: 1..\nglow A,B 1..12'),
  },
  'option-misplaced': {
    severity: 'error',
    example: cut(
      'field A full at 10,0\npan full@1 > A@24 loop 300mm',
      'field A full at 10,0\npan full@1 > A@24',
    ),
  },
  'spacing-twice': {
    severity: 'error',
    example: cut(
      'field A full at 10,0\npan full@1 > A@24 ease 4 curve 0.4 0 0.6 1',
      'field A full at 10,0\npan full@1 > A@24 ease 4',
    ),
  },
  'fairing-misplaced': {
    severity: 'error',
    example: cut(
      'field A 60%\ntruck full@1 > A@24 fair ア@10 60%',
      'field A 60%\ntruck quick full@1 > A@24 fair ア@10 60%',
    ),
  },
  'quick-without-fairing': {
    severity: 'error',
    example: cut(
      'field A 60%\ntruck quick full@1 > A@24',
      'field A 60%\ntruck quick full@1 > A@24 fair ア@10 60%',
    ),
  },
  'turn-sense': {
    severity: 'error',
    example: cut('A: 1..\nturn level A 0@1 > 90@24', 'A: 1..\nturn level A 0@1 > 90@24 cw'),
  },
  'exposure-range': {
    severity: 'error',
    example: cut('A: 1..\nexpose A 120% 1..24', 'A: 1..\nexpose A 100% 1..24'),
  },
  'overlap-short': {
    severity: 'error',
    example: cut('A: 1..\noverlap out 1', 'A: 1..\noverlap out 12'),
  },
  'overlap-long': {
    severity: 'error',
    example: cut('A: 1..\noverlap out 5+0', 'A: 1..\noverlap out 1+0'),
  },
  'number-senseless': {
    severity: 'error',
    example: cut('field A 0% at 10,0\nfix A', 'field A 60% at 10,0\nfix A'),
  },
  'size-vanishes': {
    severity: 'error',
    example: cut(
      'field A 10%\ntruck full@1 > A@48 curve 0.3 0 0.6 3',
      'field A 10%\ntruck full@1 > A@48 curve 0.3 0 0.6 1',
    ),
  },
  'move-backwards': {
    severity: 'error',
    example: cut('field A full at 40,0\npan full@24 > A@12', 'field A full at 40,0\npan full@12 > A@24'),
  },
  'move-past-end': {
    severity: 'error',
    example: cut('pull BG right 1mm/f 1..3+0', 'pull BG right 1mm/f 1..2+0'),
  },
  'moves-overlap': {
    severity: 'error',
    example: cut(
      'field A full at 10,0\nfield B full at 20,0\npan full@1 > A@24\npan A@20 > B@48',
      'field A full at 10,0\nfield B full at 20,0\npan full@1 > A@24\npan A@24 > B@48',
    ),
  },
  'move-jumps': {
    severity: 'error',
    example: cut(
      'field A full at 10,0\nfield B full at 20,0\npan full@1 > A@12\npan B@24 > full@48',
      'field A full at 10,0\nfield B full at 20,0\npan full@1 > A@12\npan A@24 > B@48',
    ),
  },
  'quick-long': {
    severity: 'warning',
    example: {
      kind: 'text',
      failing: 'cut 1\ntime 4+0\nfield A 60%\ntruck quick full@1 > A@4+0 fair ア@24 60%\n',
      mended: 'cut 1\ntime 4+0\nfield A 60%\ntruck quick full@1 > A@24 fair ア@10 60%\n',
    },
  },
  'ease-long': {
    severity: 'error',
    example: cut(
      'field A full at 10,0\npan full@1 > A@24 ease 12 12',
      'field A full at 10,0\npan full@1 > A@24 ease 12 11',
    ),
  },
  'curve-range': {
    severity: 'error',
    example: cut(
      'field A full at 10,0\npan full@1 > A@24 curve 1.2 0 0.6 1',
      'field A full at 10,0\npan full@1 > A@24 curve 0.9 0 0.6 1',
    ),
  },
  'steps-without-distance': {
    severity: 'error',
    example: cut(
      'level A free\nA: 1..\ntruck level A 100%@1 > 80%@3 steps 10 10',
      'level A free\nA: 1..\ntruck level A 100%@1 > 80%@3 ease 1',
    ),
  },
  'steps-count': {
    severity: 'error',
    example: cut(
      'field A full at 10,0\npan full@1 > A@5 steps 1 4 5',
      'field A full at 10,0\npan full@1 > A@5 steps 1 4 4 1',
    ),
  },
  'steps-by-ratios': {
    severity: 'error',
    example: cut(
      'field A 244mm\ntruck full@1 > A@4 steps 2 5 3 log',
      'field A 244mm\ntruck full@1 > A@4 steps 2 5 3',
    ),
  },
  'steps-sum': {
    severity: 'error',
    example: cut(
      'field A full at 10,0\npan full@1 > A@4 steps 1 4 4',
      'field A full at 10,0\npan full@1 > A@4 steps 2 4 4',
    ),
  },
  'fairing-share': {
    severity: 'error',
    example: cut(
      'field A 60%\ntruck quick full@1 > A@24 fair ア@10 100%',
      'field A 60%\ntruck quick full@1 > A@24 fair ア@10 60%',
    ),
  },
  'fairing-outside': {
    severity: 'error',
    example: cut(
      'field A 60%\ntruck quick full@1 > A@24 fair ア@30 60%',
      'field A 60%\ntruck quick full@1 > A@24 fair ア@10 60%',
    ),
  },
  'fairing-slow': {
    severity: 'error',
    example: cut(
      'field A 60%\ntruck quick full@1 > A@24 fair ア@20 60%',
      'field A 60%\ntruck quick full@1 > A@24 fair ア@10 60%',
    ),
  },
  'fairing-short': {
    severity: 'warning',
    example: cut(
      'field A 60%\ntruck quick full@1 > A@24 fair ア@6 85%',
      'field A 60%\ntruck quick full@1 > A@24 fair ア@6 55%',
    ),
  },
  'place-passed': {
    severity: 'error',
    example: cut(
      'field P full at 6,0\nfield Q full at 6,6\npan full@1 > P > Q@24',
      'field P full at 6,0\nfield Q full at 6,6\npan full@1 > P > Q@24 curved',
    ),
  },
  'curve-straight': {
    severity: 'error',
    example: cut('field P full at 8,0\npan full@1 > P@24 curved', 'field P full at 8,0\npan full@1 > P@24'),
  },
  'carry-width': {
    severity: 'error',
    example: cut(
      'level A free\nA: 1..\nfield P full at 8,0\nfield T 98%\npan full@1 > P@24\ntruck full@1 > T@24 carry A',
      'level A free\nA: 1..\nfield P full at 8,0\nfield T 98%\npan full@1 > P@24 carry A\ntruck full@1 > T@24',
    ),
  },
  'field-missed': {
    severity: 'warning',
    example: cut(
      'field P 98% at 2,0\nfield T 99% at 2,0\npan full@1 > P@24\ntruck full@1 > T@24',
      'field P 98% at 2,0\npan full@1 > P@24 ease 8\ntruck full@1 > P@24',
    ),
  },
  'pan-sizes': {
    severity: 'error',
    example: cut('field A 60%\npan full@1 > A@24', 'field A 60%\ntruck full@1 > A@24'),
  },
  'truck-one-size': {
    severity: 'error',
    example: cut('field A full at 10,0\ntruck full@1 > A@24', 'field A full at 10,0\npan full@1 > A@24'),
  },
  'speed-jumps': {
    severity: 'hint',
    example: cut(
      'field A full at 2,0\nfield B full at 40,0\npan full@1 > A@24 > B@48',
      'field A full at 20,0\nfield B full at 40.87,0\npan full@1 > A@24 > B@48',
    ),
  },
  'carried-level': {
    severity: 'error',
    example: cut('B: 1..\nlevel B carry\nfollow B left 1mm/f 1..24', 'B: 1..\nfollow B left 1mm/f 1..24'),
  },
  'pulls-along': {
    severity: 'hint',
    example: cut('pull BG right 0.5mm/f 1..24\npull BG right 0.2mm/f 1..24', 'pull BG right 0.7mm/f 1..24'),
  },
  'sway-unrest': {
    severity: 'warning',
    example: cut('A: 1..\nsway A 5mm 1..30 every 1+0', 'A: 1..\nsway A 5mm 1..36 every 1+0'),
  },
  'field-off-chart': {
    severity: 'warning',
    example: cut(
      'field A 8F at 5E\nfix A\nlevel BG size 400x210mm',
      'field A 8F at 3E\nfix A\nlevel BG size 400x210mm',
    ),
  },
  'scan-enlarged': {
    severity: 'hint',
    example: cut('field A 60%\nfix A', 'field A 98%\nfix A'),
  },
  strobing: {
    severity: 'warning',
    example: cut(
      'level BG size 400x142.875mm at -73,0\npull BG right 3mm/f 1..2+0',
      'level BG size 400x142.875mm at -73,0\npull BG right 1mm/f 1..2+0',
    ),
  },
  judder: {
    severity: 'hint',
    example: cut(
      'level BG size 400x142.875mm at -73,0\npull BG right 2mm/f 1..2+0',
      'level BG size 400x142.875mm at -73,0\npull BG right 1mm/f 1..2+0',
    ),
  },
  'artwork-edge': {
    severity: 'warning',
    example: cut(
      'level BG size 300x150mm\nfield A full at 60,0\npan full@1 > A@2+0',
      'level BG size 380x150mm at 30,0\nfield A full at 60,0\npan full@1 > A@2+0',
    ),
  },
  'artwork-long': {
    severity: 'warning',
    example: cut('pull BG right 300mm/f 1..2+0', 'pull BG right 300mm/f 1..2+0 loop 600mm'),
  },
  'loop-short': {
    severity: 'warning',
    example: cut('pull BG right 1mm/f 1..2+0 loop 200mm', 'pull BG right 1mm/f 1..2+0 loop 300mm'),
  },
  'loop-askew': {
    severity: 'error',
    example: cut('pull BG 30deg 1mm/f 1..2+0 loop 300mm', 'pull BG right 1mm/f 1..2+0 loop 300mm'),
  },
  'loop-two': {
    severity: 'error',
    example: cut(
      'pull BG right 1mm/f 1..24 loop 300mm\npull BG right 2mm/f 25..48 loop 400mm',
      'pull BG right 1mm/f 1..24 loop 300mm\npull BG right 2mm/f 25..48 loop 300mm',
    ),
  },
  'iris-outside': {
    severity: 'warning',
    example: cut('iris in 1..24 at 400,-10', 'iris in 1..24 at 40,-10'),
  },
  'fade-short': {
    severity: 'error',
    example: cut('fade in 1..1', 'fade in 1..12'),
  },
  'light-overlaps': {
    severity: 'error',
    example: cut('fade in 1..24\nfade out 20..48', 'fade in 1..24\nfade out 25..48'),
  },
  flashes: {
    severity: 'warning',
    example: cut(
      'glow A 1..2\nglow A 5..6\nglow A 9..10\nglow A 13..14\nA: 1..',
      'glow A 1..2\nglow A 13..14\nA: 1..',
    ),
  },
  'flash-unmeasured': {
    severity: 'hint',
    example: cut('glow A 1..2\nA: 1..', 'A: 1..'),
  },
};
