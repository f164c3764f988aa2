/** An episode as the live view's player gets it: its cuts in story order with their dissolves, by the same rules as a film of it. */

import { editOf, type Handed } from '../export/episode-edit.js';
import { messageOf, runTexts } from '../language/message.js';
import type { UserLanguage } from '../language/user-language.js';
import type { EpisodePlay } from '../preview/play-data.js';

export interface EpisodeCut {
  readonly id: string;
  readonly handed: Handed;
  /** Light flashes in it; something is heard. */
  readonly flashes: boolean;
  readonly heard: boolean;
}

/** There is at least one cut. `leftOut`: how many others there are, which cannot be shown. */
export function episodePlayOf(
  cuts: readonly EpisodeCut[],
  leftOut: number,
  language: UserLanguage,
): EpisodePlay {
  const { edit, diagnostics } = editOf(cuts.map(({ handed }) => handed));
  if (!edit)
    return {
      fps: cuts[0]!.handed.shot.fps,
      frames: 0,
      cuts: [],
      word: diagnostics
        .map((one) => messageOf(one, language))
        .slice(0, 1)
        .join(''),
    };
  return {
    fps: edit.fps,
    frames: edit.frames,
    cuts: edit.cuts.map(({ source, record, dissolve }, i) => ({
      id: cuts[i]!.id,
      flashes: cuts[i]!.flashes,
      heard: cuts[i]!.heard,
      source,
      record,
      dissolve: dissolve && { before: dissolve.before, after: dissolve.after },
    })),
    word: leftOut === 0 ? '' : runTexts(language).leftOutOfFilm(leftOut),
  };
}
