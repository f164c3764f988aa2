import type { Entries } from './catalogue-entry.js';
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
  readonly 'overlap-missing': /** The cut that dissolves with this one, and the side of this cut. */ {
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
