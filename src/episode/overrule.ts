import type { Settings } from '../shot/settings.js';
import type { Episode } from './episode.js';
import { rowsFault } from './rows.js';

/**
 * The same episode with some settings overruled (from the command line). The rows that the episode wants hold only as
 * long as they suit the sheet that comes out.
 */
export function overrule(episode: Episode, settings: Partial<Settings>): Episode {
  if (Object.keys(settings).length === 0) return episode;
  const merged = { ...episode.settings, ...settings };
  if (settings.rows !== undefined || merged.rows === null) return { ...episode, settings: merged };
  const other = merged.convention !== episode.settings.convention;
  const rows = other || rowsFault(merged.rows, merged) !== null ? null : merged.rows;
  return { ...episode, settings: { ...merged, rows } };
}
