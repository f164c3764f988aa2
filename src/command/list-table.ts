/** The cut list as a table on a terminal. */

import type { CutList } from '../count/count-episode.js';
import type { CutRow } from '../count/cut-row.js';
import { feetAndFrames, secondsAndFrames } from '../shot/time-notation.js';
import { figure, plural } from '../words/number-format.js';
import { type Column, oneLine, textTable } from './terminal-table.js';

/** `width`: columns of the terminal, or null: as wide as the words are. Ends with a line end. */
export function terminalList(list: CutList, width: number | null): string {
  const { rows, totals, fps, artists } = list;
  const number = (value: number | undefined): string => (value === undefined ? '-' : String(value));
  const columns: Column<CutRow>[] = [
    { head: 'cut', of: ({ cut, sound }) => `${cut}${sound ? '' : ' !'}` },
    { head: 'title', least: 10, of: ({ title }) => oneLine(title), total: 'total' },
    { head: 'scene', least: 5, spare: 6, of: ({ scene }) => oneLine(scene) },
    {
      head: 'time',
      right: true,
      of: ({ counted }) => (counted ? secondsAndFrames(counted.time, counted.fps) : '?'),
      total: secondsAndFrames(totals.time, fps),
    },
    {
      head: 'feet',
      spare: 5,
      right: true,
      of: ({ counted }) => (counted ? feetAndFrames(counted.time) : '?'),
      total: feetAndFrames(totals.time),
    },
    { head: 'levels', right: true, spare: 1, of: ({ counted }) => number(counted?.levels) },
    {
      head: 'keys',
      spare: 8,
      right: true,
      of: ({ counted }) => number(counted?.counts.keys),
      total: String(totals.counts.keys),
    },
    {
      head: 'breakd.',
      spare: 2,
      right: true,
      of: ({ counted }) => number(counted?.counts.breakdowns),
      total: String(totals.counts.breakdowns),
    },
    {
      head: 'in-betw.',
      spare: 7,
      right: true,
      of: ({ counted }) => number(counted?.counts.inbetweens),
      total: String(totals.counts.inbetweens),
    },
    {
      head: 'drawings',
      right: true,
      of: ({ counted }) => number(counted?.counts.drawings),
      total: String(totals.counts.drawings),
    },
    {
      head: 'reused',
      spare: 3,
      right: true,
      of: ({ counted }) => number(counted?.counts.reused),
      total: String(totals.counts.reused),
    },
    { head: 'camera', least: 8, of: ({ counted }) => counted?.moves.join(', ') ?? '' },
    {
      head: 'pages',
      right: true,
      spare: 4,
      of: ({ pages }) => number(pages?.all),
      total: String(totals.pages.all),
    },
    { head: 'artist', least: 8, of: ({ artists: names }) => oneLine(names.join(', ')) },
    { head: 'problems', of: ({ problems }) => problemWords(problems) },
  ];
  const shown = rows.some(({ problems }) => problemWords(problems) !== '') ? columns : columns.slice(0, -1);
  const people: Column<(typeof artists)[number]>[] = [
    { head: 'artist', least: 8, of: ({ name }) => oneLine(name) },
    { head: 'cuts', right: true, of: ({ cuts }) => String(cuts) },
    { head: 'time', right: true, of: ({ running }) => secondsAndFrames(running, fps) },
    { head: 'drawings', right: true, of: ({ drawings }) => String(drawings) },
  ];
  return [
    ...textTable(shown, rows, width),
    '',
    ...summary(list),
    ...(artists.length > 0 ? ['', ...textTable(people, artists, width)] : []),
    '',
  ].join('\n');
}

/** Running time, budget, and what a producer counts; a sentence a line. */
function summary(list: CutList): string[] {
  const { totals, fps, budget } = list;
  const { counts, pages, over } = totals;
  const length = (frames: number): string => `${secondsAndFrames(frames, fps)} (${feetAndFrames(frames)})`;
  const lines = [
    `${plural(totals.cuts, 'cut')}, running time ${length(totals.running)}${againstBudget(over, budget, fps)}`,
  ];
  if (totals.time !== totals.running)
    lines.push(`the times of the cuts come to ${length(totals.time)}; overlaps run once`);
  lines.push(
    `${plural(counts.drawings, 'drawing')}: ${plural(counts.keys, 'key')}, ${plural(counts.breakdowns, 'breakdown')}, ${plural(counts.inbetweens, 'in-between')}; ${counts.reused} reused; ${counts.backgrounds > 0 ? `${plural(counts.backgrounds, 'background')} besides; ` : ''}${figure(totals.drawingsASecond, { decimals: 1, zeros: 'always' })} new ones a second`,
    `${plural(pages.all, 'page')}, ${pages.sheet} of them sheets`,
  );
  if (totals.unsound > 0) {
    const untimed =
      totals.untimed > 0 ? `; the time of ${totals.untimed} is not known and not in the total` : '';
    lines.push(
      `${plural(totals.unsound, 'cut')} with errors (!): counted as far as could be read, not printed${untimed}`,
    );
  }
  if (totals.withoutArtist > 0) lines.push(`${plural(totals.withoutArtist, 'cut')} without an artist`);
  const shared = list.rows.filter(({ artists }) => artists.length > 1).length;
  if (shared > 0)
    lines.push(`${plural(shared, 'cut')} of several artists: counted below for each of them, above once`);
  return lines;
}

/** `; budget 120+0: 7+12 under`. */
export function againstBudget(over: number | null, budget: number | null, fps: number): string {
  if (over === null || budget === null) return '';
  const by =
    over === 0 ? 'to the frame' : `${secondsAndFrames(Math.abs(over), fps)} ${over > 0 ? 'over' : 'under'}`;
  return `; budget ${secondsAndFrames(budget, fps)}: ${by}`;
}

function problemWords({ errors, warnings }: CutRow['problems']): string {
  const parts = [errors > 0 ? plural(errors, 'error') : '', warnings > 0 ? plural(warnings, 'warning') : ''];
  return parts.filter((part) => part !== '').join(', ');
}
