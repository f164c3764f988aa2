import type { Entries } from './catalogue-entry.js';

export interface PictureMessages {
  readonly 'scan-name': /** `written`: with its braces. */ {
    readonly written: string;
    readonly parts: readonly string[];
  };
  readonly 'scan-outside': { readonly path: string; readonly inEpisode: boolean };
}

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
};
