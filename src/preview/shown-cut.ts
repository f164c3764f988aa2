/** What the live view shows, as it is given by whoever watches. */

import type { Severity } from '../language/diagnostic.js';
import type { Page } from '../sheet/display-list.js';

export interface ShownPage {
  readonly page: Page;
  /** Equal where the same stands on the paper, but for the stamp. */
  readonly hash: string;
}

/** A problem with the lines of the text around it. */
export interface PageProblem {
  readonly severity: Severity;
  readonly code: string;
  readonly message: string;
  readonly notes: readonly string[];
  /** What would mend it; null: nothing is offered. */
  readonly fix: string | null;
  readonly file: string;
  /** Both from 1; null where the file as a whole is meant. */
  readonly line: number | null;
  readonly column: number | null;
  readonly excerpt: readonly { readonly line: number; readonly text: string }[];
}

/** Frames from..to, both included. */
export interface FrameStretch {
  readonly from: number;
  readonly to: number;
}

export interface ShownCut {
  /** Names it in addresses; letters and digits. */
  readonly id: string;
  /** What messages call its file. */
  readonly file: string;
  /** '' where it cannot be read. */
  readonly number: string;
  readonly title: string;
  /** `broken`: its pages are those of the last text that could be printed. */
  readonly state: 'good' | 'broken';
  /** `1 error`, as the terminal says it; '' where there is none. */
  readonly fault: string;
  readonly problems: readonly PageProblem[];
  /** As it stands at the foot of the pages. */
  readonly stamp: string;
  /** Made at the first question. [] where there were none yet. */
  pages(): readonly ShownPage[];
  /** The frames of what stands on a line (from 1) of a file; null: the cut has nothing to do with that file. */
  framesAt(file: string, line: number): readonly FrameStretch[] | null;
}
