/** What has become of an episode since a revision, as CSV (a row a cut that differs) and as JSON with both totals. */

import type { ListSince } from '../count/list-since.js';
import { csvLine } from './cut-csv.js';
import { jsonText } from './cut-json.js';

/** Raised when something that is there changes its meaning or goes; additions leave it. */
export const LIST_SINCE_VERSION = 1;

/** Times in frames of the episode; empty where there is no such cut, or where its time is not known. */
const HEADER = ['cut', 'title', 'state', 'runningBefore', 'running', 'change', 'drawingsBefore', 'drawings'];

export function listSinceCsv({ cuts }: ListSince): string {
  const rows = cuts.map(({ cut, title, before, now, change }) => [
    ...[cut, title, before ? (now ? 'changed' : 'gone') : 'new'],
    ...[before?.running ?? null, now?.running ?? null, change === null ? null : thousandth(change)],
    ...[before?.drawings ?? null, now?.drawings ?? null],
  ]);
  return [HEADER, ...rows].map(csvLine).join('');
}

export function listSinceJson(
  revision: string,
  { before, now, cuts, unchanged, reordered }: ListSince,
): string {
  return jsonText({
    ...{ version: LIST_SINCE_VERSION, since: revision, before, now, unchanged, reordered },
    cuts: cuts.map((one) => ({ ...one, change: one.change === null ? null : thousandth(one.change) })),
  });
}

/** A cut at 25 frames a second can last a broken number of frames of 24. */
const thousandth = (frames: number): number => Math.round(frames * 1000) / 1000 + 0;
