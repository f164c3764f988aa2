import { type Convention, FRAMES_A_FOOT } from '../shot/settings.js';

/**
 * What is wrong with a number of rows a page, or null. A western page holds whole feet, a Japanese one whole seconds,
 * so that a heavy rule ends it.
 */
export function rowsFault(rows: number, convention: Convention, fps: number): string | null {
  const unit = convention === 'west' ? FRAMES_A_FOOT : fps;
  const name = convention === 'west' ? `feet of ${FRAMES_A_FOOT} rows` : `seconds of ${fps} rows`;
  const most = Math.max(unit, Math.floor(MOST_ROWS / unit) * unit);
  if (Number.isInteger(rows) && rows >= unit && rows <= most && rows % unit === 0) return null;
  const near = Math.min(most, Math.max(unit, Math.round(rows / unit) * unit));
  return `a page has whole ${name}, ${unit} to ${most}; ${near} would do`;
}

/** More rows than this cannot be told apart on any paper that is offered. */
const MOST_ROWS = 288;
