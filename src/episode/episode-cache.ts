import type { NotLent } from '../language/catalogue/message-terms.js';
import type { Diagnostic } from '../language/diagnostic.js';
import type { Tree } from '../language/tree.js';
import type { SolvedLevel } from '../solve/solved-shot.js';
import type { EpisodeTexts } from './cut-texts.js';
import type { Episode } from './episode.js';
import type { StoryOrder } from './story.js';

/** What the cuts of one run share, so that it is read and solved once. Grows with what is shared, not with the cuts. */
export interface EpisodeCache {
  /** Used files by real path. */
  readonly files: Map<
    string,
    { readonly text: string; readonly tree: Tree; readonly diagnostics: readonly Diagnostic[] }
  >;
  /** The cuts of an episode in story order, by the episode's folder. */
  readonly stories: Map<string, StoryOrder>;
  /** Levels that other cuts reuse, by `path` and level; or why there is none. */
  readonly levels: Map<string, BorrowedLevel>;
  /** What a cut hangs on, by episode. */
  readonly texts: Map<Episode, EpisodeTexts>;
}

/** A level of another cut, with the text that it came from; or why there is none, and whether levels that reuse each other are why. */
export type BorrowedLevel =
  | { readonly level: SolvedLevel; readonly digest: string }
  | { readonly reason: NotLent; readonly round?: boolean };

export function newEpisodeCache(): EpisodeCache {
  return { files: new Map(), stories: new Map(), levels: new Map(), texts: new Map() };
}
