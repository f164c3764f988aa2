/** What is played: one cut, or an episode. Pure. */

import { editOrder, type FilmOrder, sheetOrder } from '../../picture/film-order.js';
import type { CutPlayAnswer, EpisodePlay } from '../play-data.js';

export interface Film {
  readonly order: FilmOrder;
  /** The cuts by their places in the order. */
  readonly ids: readonly string[];
  readonly flashing: ReadonlySet<string>;
  /** Whether anything is heard. */
  readonly heard: boolean;
}

export function filmOfCut({ id, picture, caution, sound }: CutPlayAnswer): Film {
  const length = picture.runs.reduce((sum, [, rows]) => sum + rows, 0);
  return {
    order: sheetOrder({ fps: picture.fps, length }),
    ids: [id],
    flashing: new Set(caution ? [id] : []),
    heard: sound !== null,
  };
}

export function filmOfEpisode(episode: EpisodePlay): Film {
  const { cuts } = episode;
  return {
    order: editOrder(episode),
    ids: cuts.map(({ id }) => id),
    flashing: new Set(cuts.filter(({ flashes }) => flashes).map(({ id }) => id)),
    heard: cuts.some(({ heard }) => heard),
  };
}

/** A row of a cut's sheet. */
export interface FilmRow {
  readonly id: string;
  readonly row: number;
}

/** The cut in whose time a frame of the film lies, and the row of its sheet. */
export function rowOf({ order, ids }: Film, frame: number): FilmRow {
  const { own } = order.at(frame);
  return { id: ids[own.cut]!, row: own.row };
}

/** The frame of the film that shows a row in the cut's own time, or the nearest one of that cut; null: the cut is not in it. */
export function frameOfRow({ order, ids }: Film, { id, row }: FilmRow): number | null {
  const part = order.parts[ids.indexOf(id)];
  if (!part) return null;
  const { before, frames, rowsBefore } = part;
  return before + Math.min(frames, Math.max(1, row - rowsBefore));
}

/** The cuts of which something is seen on a frame; in a dissolve there are two. */
export function seenOn({ order, ids }: Film, frame: number): string[] {
  const { shown, incoming } = order.at(frame);
  return [shown, ...(incoming ? [incoming] : [])].map(({ cut }) => ids[cut]!);
}
