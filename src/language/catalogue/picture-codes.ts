import type { Entries, None } from './catalogue-entry.js';

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
