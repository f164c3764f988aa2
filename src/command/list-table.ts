/** The cut list as a table on a terminal. */

import type { CutList } from '../count/count-episode.js';
import type { CutRow } from '../count/cut-row.js';
import type { RunTexts } from '../language/catalogue/catalogue-entry.js';
import type { BudgetLeft, TableTexts } from '../language/catalogue/table-entry.js';
import { textsOf } from '../language/message.js';
import type { UserLanguage } from '../language/user-language.js';
import { feetAndFrames, secondsAndFrames } from '../shot/time-notation.js';
import { figure } from '../words/number-format.js';
import { type Column, oneLine, textTable } from './terminal-table.js';

/** `width`: columns of the terminal, or null: as wide as the words are. Ends with a line end. */
export function terminalList(list: CutList, width: number | null, language: UserLanguage): string {
  const { rows, totals, fps, artists } = list;
  const { tables, run } = textsOf(language);
  const { heads } = tables.list;
  const number = (value: number | undefined): string => (value === undefined ? '-' : String(value));
  const columns: Column<CutRow>[] = [
    { head: heads.cut, of: ({ cut, sound }) => `${cut}${sound ? '' : ' !'}` },
    { head: heads.title, least: 10, of: ({ title }) => oneLine(title), total: tables.total },
    { head: heads.scene, least: 5, spare: 6, of: ({ scene }) => oneLine(scene) },
    {
      head: heads.time,
      right: true,
      of: ({ counted }) => (counted ? secondsAndFrames(counted.time, counted.fps) : '?'),
      total: secondsAndFrames(totals.time, fps),
    },
    {
      head: heads.feet,
      spare: 5,
      right: true,
      of: ({ counted }) => (counted ? feetAndFrames(counted.time) : '?'),
      total: feetAndFrames(totals.time),
    },
    { head: heads.levels, right: true, spare: 1, of: ({ counted }) => number(counted?.levels) },
    {
      head: heads.keys,
      spare: 8,
      right: true,
      of: ({ counted }) => number(counted?.counts.keys),
      total: String(totals.counts.keys),
    },
    {
      head: heads.breakdowns,
      spare: 2,
      right: true,
      of: ({ counted }) => number(counted?.counts.breakdowns),
      total: String(totals.counts.breakdowns),
    },
    {
      head: heads.inbetweens,
      spare: 7,
      right: true,
      of: ({ counted }) => number(counted?.counts.inbetweens),
      total: String(totals.counts.inbetweens),
    },
    {
      head: heads.drawings,
      right: true,
      of: ({ counted }) => number(counted?.counts.drawings),
      total: String(totals.counts.drawings),
    },
    {
      head: heads.reused,
      spare: 3,
      right: true,
      of: ({ counted }) => number(counted?.counts.reused),
      total: String(totals.counts.reused),
    },
    { head: heads.camera, least: 8, of: ({ counted }) => counted?.moves.join(', ') ?? '' },
    {
      head: heads.pages,
      right: true,
      spare: 4,
      of: ({ pages }) => number(pages?.all),
      total: String(totals.pages.all),
    },
    { head: heads.artist, least: 8, of: ({ artists: names }) => oneLine(names.join(', ')) },
    { head: heads.problems, of: ({ problems }) => problemWords(problems, run) },
  ];
  const shown = rows.some(({ problems }) => problemWords(problems, run) !== '')
    ? columns
    : columns.slice(0, -1);
  const people: Column<(typeof artists)[number]>[] = [
    { head: heads.artist, least: 8, of: ({ name }) => oneLine(name) },
    { head: heads.cuts, right: true, of: ({ cuts }) => String(cuts) },
    { head: heads.time, right: true, of: ({ running }) => secondsAndFrames(running, fps) },
    { head: heads.drawings, right: true, of: ({ drawings }) => String(drawings) },
  ];
  return [
    ...textTable(shown, rows, width, tables),
    '',
    ...summary(list, tables.list),
    ...(artists.length > 0 ? ['', ...textTable(people, artists, width, tables)] : []),
    '',
  ].join('\n');
}

/** Running time, budget, and what a producer counts; a sentence a line. */
function summary(list: CutList, words: TableTexts['list']): string[] {
  const { totals, fps, rows } = list;
  const { counts, pages } = totals;
  const lines = [runningTime(list, words)];
  if (totals.time !== totals.running) lines.push(words.times(bothLengths(totals.time, fps)));
  lines.push(words.drawings(counts, figure(totals.drawingsASecond, { decimals: 1, zeros: 'always' })));
  lines.push(words.pages(pages.all, pages.sheet));
  if (totals.unsound > 0) lines.push(words.unsound(totals.unsound, totals.untimed));
  if (totals.withoutArtist > 0) lines.push(words.withoutArtist(totals.withoutArtist));
  const shared = rows.filter(({ artists }) => artists.length > 1).length;
  if (shared > 0) lines.push(words.shared(shared));
  return lines;
}

/** How long the episode runs, and what is left of its budget. */
export function runningTime({ totals, fps, budget }: CutList, words: TableTexts['list']): string {
  const length = bothLengths(totals.running, fps);
  return words.running(totals.cuts, length, totals.untimed > 0, budgetLeft(totals.over, budget, fps));
}

/** In seconds and frames, and in feet. */
export const bothLengths = (frames: number, fps: number): string =>
  `${secondsAndFrames(frames, fps)} (${feetAndFrames(frames)})`;

/** Null where there is no budget. `over`: frames. */
export function budgetLeft(over: number | null, budget: number | null, fps: number): BudgetLeft | null {
  if (over === null || budget === null) return null;
  const by = over === 0 ? null : { length: secondsAndFrames(Math.abs(over), fps), over: over > 0 };
  return { budget: secondsAndFrames(budget, fps), by };
}

function problemWords({ errors, warnings }: CutRow['problems'], words: RunTexts): string {
  return errors + warnings > 0 ? words.tally(errors, warnings, 0) : '';
}
