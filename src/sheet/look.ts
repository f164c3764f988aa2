import type { Settings } from '../shot/settings.js';
import type { Metrics } from './marks.js';

/** Numbers of the cuts before and after this one, where they are known. */
export interface Neighbours {
  readonly before?: string;
  readonly after?: string;
}

/** How pages are to look: the choices of the episode or the command line, and what the layout must be told. */
export interface Look {
  /** Convention, labels, paper and rows are taken from here, not from the shot: any mix is allowed. */
  readonly settings: Settings;
  readonly metrics: Metrics;
  /** Printed at the foot of every page: short hash of the text, commit. May be ''. */
  readonly stamp: string;
  /** With whom the cut overlaps. */
  readonly neighbours?: Neighbours;
}
