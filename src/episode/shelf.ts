import type { Diagnostic } from '../language/diagnostic.js';
import type { Tree } from '../language/tree.js';
import type { SolvedLevel } from '../solve/solved.js';

/** What the cuts of one run share, so that it is read and solved once. Grows with what is shared, not with the cuts. */
export interface Shelf {
  /** Used files by real path. */
  readonly files: Map<
    string,
    { readonly text: string; readonly tree: Tree; readonly diagnostics: readonly Diagnostic[] }
  >;
  /** For an episode's folder: where its cuts lie, by their numbers. */
  readonly cuts: Map<string, ReadonlyMap<string, string>>;
  /** Levels that other cuts reuse, by `path` and level; or why there is none. */
  readonly levels: Map<string, Lent>;
}

/** A level of another cut, with the text that it came from. */
export type Lent = { readonly level: SolvedLevel; readonly digest: string } | { readonly reason: string };

export function newShelf(): Shelf {
  return { files: new Map(), cuts: new Map(), levels: new Map() };
}
