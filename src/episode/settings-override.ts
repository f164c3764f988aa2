import type { RowsFault } from '../language/catalogue/message-terms.js';
import { mostRows } from '../sheet/sheet-geometry.js';
import { CONVENTIONAL, FRAMES_A_FOOT, type Settings } from '../shot/settings.js';
import type { Episode } from './episode.js';

/**
 * The same episode with some settings overruled (from the command line). The rows that the episode wants hold only as
 * long as they suit the sheet that comes out.
 */
export function overrideSettings(episode: Episode, settings: Partial<Settings>): Episode {
  if (Object.keys(settings).length === 0) return episode;
  const merged = { ...episode.settings, ...byConvention(episode, settings), ...settings };
  if (settings.rows !== undefined || merged.rows === null) return { ...episode, settings: merged };
  const other = merged.convention !== episode.settings.convention;
  const rows = other || rowsFault(merged.rows, merged) !== null ? null : merged.rows;
  return { ...episode, settings: { ...merged, rows } };
}

/**
 * What another convention brings along: its lengths; and where no manifest says how cuts are drawn, its field and paper too.
 * Artwork that an episode has drawn keeps its size on whichever form it is printed.
 */
function byConvention(episode: Episode, { convention }: Partial<Settings>): Partial<Settings> {
  if (convention === undefined || convention === episode.settings.convention) return {};
  const { lengths, ...drawn } = CONVENTIONAL[convention];
  return episode.file === null ? { ...drawn, lengths } : { lengths };
}

/**
 * What is wrong with a number of rows a page, or null. A western page holds whole feet, a Japanese one whole seconds,
 * so that a heavy rule ends it, and no more of them than can be read on the paper.
 */
export function rowsFault(rows: number, settings: Settings): RowsFault | null {
  const { convention, fps, paper } = settings;
  const unit = convention === 'west' ? FRAMES_A_FOOT : fps;
  const most = Math.max(unit, Math.floor(mostRows(settings) / unit) * unit);
  if (Number.isInteger(rows) && rows >= unit && rows <= most && rows % unit === 0) return null;
  const near = Math.min(most, Math.max(unit, Math.round(rows / unit) * unit));
  return { unit: convention === 'west' ? 'feet' : 'seconds', rows: unit, most, near, paper };
}
