/** Edits that might mend a fault are tried before they are offered, so that what is offered is valid. */

import type { Action, Fix } from './diagnostic.js';
import type { Range } from './normal.js';
import { applied, readsUpTo, type Source } from './read.js';

export type Candidate = Action & { readonly edits: readonly (Range & { readonly text: string })[] };

/** Characters that may be read again for the sake of fixes in one text; a text with more faults than that gets fewer fixes. */
const BUDGET = 4_000_000;

export class Mender {
  #left = BUDGET;

  constructor(readonly source: Source) {}

  /**
   * The first candidate that makes the stretch readable; failing that, the first after which the fault at `fault` is gone
   * and another one stands behind it.
   */
  choose(candidates: readonly Candidate[], within: Range, fault: Range): Candidate | undefined {
    let better: Candidate | undefined;
    for (const candidate of candidates) {
      this.#left -= within.end - within.start;
      if (this.#left < 0) return better;
      const text = this.source.text.slice(within.start, within.end);
      const edits = candidate.edits.map((edit) => ({
        ...edit,
        start: edit.start - within.start,
        end: edit.end - within.start,
      }));
      const mended = applied(text, edits);
      const reads = readsUpTo(mended);
      if (reads >= mended.length) return candidate;
      const growth = mended.length - text.length;
      if (!better && fault.end > fault.start && reads >= fault.end - within.start + growth)
        better = candidate;
    }
    return better;
  }

  fix(candidate: Candidate | undefined): Fix | undefined {
    if (!candidate) return undefined;
    const { file } = this.source;
    return {
      ...candidate,
      edits: candidate.edits.map(({ start, end, text }) => ({ span: { file, start, end }, text })),
    };
  }
}
