import type { Entries } from './catalogue-entry.js';

export interface HandoverMessages {
  readonly 'edit-speeds': {
    readonly cut: string;
    readonly fps: number;
    readonly first: string;
    readonly firstFps: number;
  };
  readonly 'edit-dissolve': /** `out`, `into`: frames of the dissolve at either cut; null where it has none. */
    | {
        readonly variant: 'uneven';
        readonly before: string;
        readonly out: number | null;
        readonly after: string;
        readonly into: number | null;
      }
    | { readonly variant: 'crowded'; readonly cut: string; readonly over: number };
  readonly 'edit-list-limit':
    | { readonly variant: 'speed'; readonly cut: string; readonly fps: number }
    | { readonly variant: 'events'; readonly cut: string; readonly cuts: number; readonly most: number }
    | { readonly variant: 'dissolve'; readonly frames: number; readonly most: number }
    | { readonly variant: 'timecode'; readonly cut: string };
  readonly 'edit-list-long': { readonly cut: string; readonly frames: number; readonly most: number };
  readonly 'pixels-shape': /** mm and pixels; `by`: so many pixels too tall, or too flat where it is below 0. */ {
    readonly cut: string;
    readonly field: { readonly widthMm: number; readonly heightMm: number };
    readonly output: { readonly width: number; readonly height: number };
    readonly by: number;
  };
}

/** Faults of handing an episode over to the cutting room. */
export const handover: Entries<HandoverMessages> = {
  'edit-speeds': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright export cuts/ --edit otio, where one of the cuts says fps 12',
      mended: 'the same without the line fps 12',
    },
  },
  'edit-dissolve': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing:
        'cutwright export cuts/ --edit edl, where cut 1 says overlap out 12 and cut 2 says overlap in 8',
      mended: 'both say 12',
    },
  },
  'edit-list-long': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'cutwright export cuts/ --edit edl, where two cuts dissolve over 300 frames',
      mended: 'cutwright export cuts/ --edit otio',
    },
  },
  'pixels-shape': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'cutwright export c012.cut --pixels, where episode.yaml says output: 1440x1080',
      mended: 'the same with output: 1920x1080',
    },
  },
  'edit-list-limit': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright export cuts/ --edit edl, where the cuts run at 12 frames a second',
      mended: 'cutwright export cuts/ --edit otio',
    },
  },
};
