/** `cutwright list --since`: the episode now against what it was, counted the same way. */

import { countCuts } from '../build/cut-counts.js';
import type { Reporter } from '../build/reporter.js';
import { UsageError } from '../build/usage-error.js';
import { type CutList, cutList, type ListOf } from '../count/count-episode.js';
import { type CutSince, type EpisodeFigures, type ListSince, listSince } from '../count/list-since.js';
import { cutKey } from '../episode/episode.js';
import type { Found } from '../episode/find-cuts.js';
import type { Host } from '../host/host.js';
import type { TableTexts } from '../language/catalogue/table-entry.js';
import { textsOf } from '../language/message.js';
import type { UserLanguage } from '../language/user-language.js';
import { secondsAndFrames } from '../shot/time-notation.js';
import { pastOf, reportFinding } from './comparison.js';
import { bothLengths, budgetLeft } from './list-table.js';
import { type Column, oneLine, textTable } from './terminal-table.js';

/** `nowList`: as it was counted. `of`: what a list of these cuts is called and allowed. */
export async function countSince(
  host: Host,
  reporter: Reporter,
  revision: string,
  files: readonly string[],
  nowList: CutList,
  of: (found: Found) => ListOf,
): Promise<ListSince> {
  const old = await pastOf(host, revision, files);
  reportFinding(old, reporter);
  if (old.found.jobs.length === 0)
    throw new UsageError('option-value', revision, { variant: 'revision-without-cuts', revision });
  // What was wrong with the cuts before is marked in the table; nobody mends it now.
  const quiet = { report: () => {} };
  const { rows } = await countCuts(old.host, quiet, old.found, {
    language: 'en',
    printer: null,
    strict: false,
  });
  return listSince(cutList(rows, of(old.found)), nowList, cutKey);
}

/** `width`: columns of the terminal, or null: as wide as the words are. Ends with a line end. */
export function terminalSince(
  revision: string,
  since: ListSince,
  width: number | null,
  language: UserLanguage,
): string {
  const { before, now, cuts, unchanged, reordered } = since;
  const { fps } = now;
  const { tables } = textsOf(language);
  const words = tables.since;
  const { heads } = words;
  const at = revision.length > 12 ? `${revision.slice(0, 11)}…` : revision;
  const time = (frames: number | null | undefined): string =>
    frames === undefined ? '' : frames === null ? '?' : secondsAndFrames(frames, fps);
  const number = (count: number | null | undefined): string =>
    count === undefined ? '' : count === null ? '?' : String(count);
  const broken = ({ before: old, now: is }: CutSince): boolean => !(is ?? old)!.sound;
  const columns: Column<CutSince>[] = [
    { head: heads.cut, of: (one) => `${one.cut}${broken(one) ? ' !' : ''}` },
    { head: heads.title, least: 10, spare: 1, of: ({ title }) => oneLine(title) },
    { head: '', of: ({ before: old, now: is }) => (old ? (is ? '' : words.cutGone) : words.cutNew) },
    { head: heads.timeAt(at), right: true, of: (one) => time(one.before?.running) },
    { head: heads.now, right: true, of: (one) => time(one.now?.running) },
    { head: heads.change, right: true, of: ({ change }) => (change === null ? '?' : signed(change, fps)) },
    { head: heads.drawingsAt(at), right: true, of: (one) => number(one.before?.drawings) },
    { head: heads.now, right: true, of: (one) => number(one.now?.drawings) },
  ];
  return [
    ...(cuts.length > 0 ? [...textTable(columns, cuts, width, tables), ''] : []),
    words.differ(cuts.length, unchanged, reordered),
    episodeLine(revision, before, words),
    episodeLine(null, now, words),
    ...(before.untimed + now.untimed > 0 ? [] : [longer(before, now, words)]),
    ...budgetMoved(before, now, words),
    ...(now.unsound + before.unsound > 0 ? [words.unsound] : []),
    '',
  ].join('\n');
}

type SinceTexts = TableTexts['since'];

function episodeLine(revision: string | null, figures: EpisodeFigures, words: SinceTexts): string {
  const { cuts, running, fps, drawings, budget, over, untimed } = figures;
  const left = budgetLeft(over, budget, fps);
  return words.episode(revision, cuts, drawings, bothLengths(running, fps), untimed > 0, left);
}

function budgetMoved(before: EpisodeFigures, now: EpisodeFigures, words: SinceTexts): string[] {
  if (now.budget === null || before.budget === null || now.fps !== before.fps) return [];
  const by = now.budget - before.budget;
  if (by === 0) return [];
  return [words.budget(secondsAndFrames(Math.abs(by), now.fps), by > 0 ? 'larger' : 'smaller')];
}

function longer(before: EpisodeFigures, now: EpisodeFigures, words: SinceTexts): string {
  const by = now.running - Math.round((before.running * now.fps) / before.fps);
  const sense = by === 0 ? 'same' : by > 0 ? 'longer' : 'shorter';
  return words.runs(secondsAndFrames(Math.abs(by), now.fps), sense);
}

/** `+1+12`, `-0+06`; a broken frame is rounded to the nearest. */
function signed(frames: number, fps: number): string {
  const whole = Math.round(frames);
  return whole === 0 ? '' : `${whole > 0 ? '+' : '-'}${secondsAndFrames(Math.abs(whole), fps)}`;
}
