import type { Entries, None } from './catalogue-entry.js';
import type { Neighbour } from './message-terms.js';

export interface EpisodeMessages {
  readonly 'overlap-differs': /** Frames. */ {
    readonly neighbour: Neighbour;
    readonly there: number;
    readonly here: number;
  };
  readonly 'overlap-fps': { readonly neighbour: Neighbour; readonly there: number; readonly here: number };
  readonly 'overlap-unanswered': /** The side of the neighbour; the length as it is typed here. */ {
    readonly neighbour: Neighbour;
    readonly way: 'in' | 'out';
    readonly length: string;
  };
  readonly 'overlap-missing': /** The cut that overlaps with this one, and the side of this cut. */ {
    readonly cut: string;
    readonly way: 'in' | 'out';
    readonly frames: number;
  };
  readonly 'overlap-alone': { readonly way: 'in' | 'out' };
  readonly 'overlap-unchecked': { readonly neighbour: Neighbour; readonly why: 'unreadable' | 'errors' };
  readonly 'reuse-circle': { readonly links: readonly string[] };
  readonly 'reuse-nothing': /** Drawings of the two levels. */ {
    readonly level: string;
    readonly here: readonly string[];
    readonly cut: string;
    readonly of: string;
    readonly there: readonly string[];
  };
  readonly 'reuse-twice': /** Numbers that the other cut adds too, through its level `as`; the level `of` the cut that both come from. */ {
    readonly cut: string;
    readonly as: string;
    readonly cels: readonly number[];
    readonly from: string;
    readonly of: string;
  };
}

/** What cuts of one episode have to do with each other. */
export const episode: Entries<EpisodeMessages> = {
  'overlap-differs': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'overlap out 24 at the end of cut 12, and overlap in 12 at the beginning of cut 13',
      mended: 'overlap out 24 at the end of cut 12, and overlap in 24 at the beginning of cut 13',
    },
  },
  'overlap-fps': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cut 12 with fps 12 and overlap out 24, and cut 13 at 24 with overlap in 24',
      mended: 'both cuts without an fps line',
    },
  },
  'overlap-unanswered': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'overlap out 24 in cut 12, and no overlap in cut 13',
      mended: 'overlap out 24 in cut 12, and overlap in 24 in cut 13',
    },
  },
  'overlap-missing': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'cut 13 without an overlap, where cut 12 says: overlap out 24',
      mended: 'cut 13 says: overlap in 24',
    },
  },
  'overlap-alone': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'overlap in 24 in the first cut of the episode',
      mended: 'fade in 1..24',
    },
  },
  'overlap-unchecked': {
    severity: 'hint',
    example: {
      kind: 'situation',
      failing: 'overlap out 24 in cut 12, where cut 13 says: overlap in',
      mended: 'overlap out 24 in cut 12, where cut 13 says: overlap in 24',
    },
  },
  'reuse-circle': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'level C reuse 8/C in cut 9, and level C reuse 9/C in cut 8',
      mended: 'level C reuse 8/C in cut 9, and cut 8 without it',
    },
  },
  'reuse-nothing': {
    severity: 'hint',
    example: {
      kind: 'situation',
      failing: 'level C reuse 8/C and C: 5--6.., where level C of cut 8 shows 1--2',
      mended: 'level C reuse 8/C and C: 1--2..',
    },
  },
  'reuse-twice': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'level C reuse 8/C with a new key in cut 9, and level C reuse 8/C with another one in cut 10',
      mended: 'level C reuse 9/C in cut 10',
    },
  },
};

// ---- what is said of a cut list

export interface CutListMessages {
  readonly 'list-cut-errors': /** `warnings`: only those that count as errors. */ {
    readonly cut: string;
    readonly errors: number;
    readonly warnings: number;
    readonly timed: boolean;
    readonly file: string;
  };
  readonly 'list-over-budget': /** In frames; `untimed`: cuts whose time is not known. */ {
    readonly running: number;
    readonly over: number;
    readonly budget: number;
    readonly fps: number;
    readonly untimed: number;
  };
}

export const cutList: Entries<CutListMessages> = {
  'list-cut-errors': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright list, where c004.cut holds `A: 1--` and ends before its keys do',
      mended: 'A: 1--2..',
    },
  },
  'list-over-budget': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright list --check, with `budget: 120+0` and cuts of 121+12 in all',
      mended: 'the same cuts with `budget: 122+0`',
    },
  },
};

export interface HandoverMessages {
  readonly 'edit-speeds': {
    readonly cut: string;
    readonly fps: number;
    readonly first: string;
    readonly firstFps: number;
  };
  readonly 'edit-overlap': /** `out`, `into`: frames of the overlap at either cut; null where it has none. */
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
    | { readonly variant: 'overlap'; readonly frames: number; readonly most: number }
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
  'edit-overlap': {
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
      failing: 'cutwright export cuts/ --edit edl, where two cuts overlap over 300 frames',
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

export interface PictureMessages {
  readonly 'scan-name': /** `written`: with its braces. */ {
    readonly written: string;
    readonly parts: readonly string[];
  };
  readonly 'scan-outside': { readonly path: string; readonly inEpisode: boolean };
  readonly 'scan-unreadable': /** `others`: so many more drawings of the level that cannot be read either. */ {
    readonly file: string;
    readonly reason: UnreadableScan;
    readonly level: string;
    readonly others: number;
  };
  readonly 'canvas-missing': None;
  readonly 'film-program-missing': /** The folder that has the pictures in its place. */ {
    readonly film: string;
    readonly folder: string;
  };
  readonly 'film-failed': /** `reason`: as the program or the machine gives it. */ {
    readonly film: string;
    readonly reason: string;
  };
}

/** Why a scan cannot be read. */
export type UnreadableScan =
  | { readonly why: 'machine' /** As the machine gives it. */; readonly reason: string }
  | { readonly why: 'format' }
  | { readonly why: 'broken' }
  /** Sides in pixels; `most`, and in all so many million at the most. */
  | {
      readonly why: 'size';
      readonly width: number;
      readonly height: number;
      readonly most: number;
      readonly mostMillions: number;
    };

/** Faults of drawings and of films. */
export const picture: Entries<PictureMessages> = {
  'scan-name': {
    severity: 'error',
    example: {
      kind: 'text',
      failing: 'cut 1\ntime 1+0\nA: 1..\nlevel A picture "nao{nummer}.png"\n',
      mended: 'cut 1\ntime 1+0\nA: 1..\nlevel A picture "nao{number}.png"\n',
    },
  },
  'scan-outside': {
    severity: 'error',
    example: {
      kind: 'text',
      failing: 'cut 1\ntime 1+0\nA: 1..\nlevel A picture "../elsewhere/a1.png"\n',
      mended: 'cut 1\ntime 1+0\nA: 1..\nlevel A picture "a1.png"\n',
    },
  },
  'scan-unreadable': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'cutwright shoot c012.cut, where A1.png is cut off in the middle',
      mended: 'the same with the drawing scanned again',
    },
  },
  'canvas-missing': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright shoot c012.cut, where @napi-rs/canvas was left out when cutwright was installed',
      mended: 'npm install @napi-rs/canvas, then the same',
    },
  },
  'film-program-missing': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'cutwright shoot c012.cut --output c012.mp4, where ffmpeg is not installed',
      mended: 'the same with ffmpeg installed',
    },
  },
  'film-failed': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright shoot c012.cut --output c012.mp4, where the disk is full',
      mended: 'the same with room on the disk',
    },
  },
};
