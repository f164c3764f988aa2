/** `cutwright list --since`: the episode now against what it was, counted the same way. */

import { countCuts } from '../build/cut-counts.js';
import type { Reporter } from '../build/reporter.js';
import { UsageError } from '../build/usage-error.js';
import { type CutList, cutList, type ListOf } from '../count/count-episode.js';
import { type CutSince, type EpisodeFigures, type ListSince, listSince } from '../count/list-since.js';
import { cutKey } from '../episode/episode.js';
import type { Found } from '../episode/find-cuts.js';
import type { Host } from '../host/host.js';
import { feetAndFrames, secondsAndFrames } from '../shot/time-notation.js';
import { plural } from '../words/number-format.js';
import { pastOf, reportFinding } from './comparison.js';
import { againstBudget } from './list-table.js';
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
export function terminalSince(revision: string, since: ListSince, width: number | null): string {
  const { before, now, cuts, unchanged, reordered } = since;
  const { fps } = now;
  const at = revision.length > 12 ? `${revision.slice(0, 11)}…` : revision;
  const time = (frames: number | null | undefined): string =>
    frames === undefined ? '' : frames === null ? '?' : secondsAndFrames(frames, fps);
  const number = (count: number | null | undefined): string =>
    count === undefined ? '' : count === null ? '?' : String(count);
  const broken = ({ before: old, now: is }: CutSince): boolean => !(is ?? old)!.sound;
  const columns: Column<CutSince>[] = [
    { head: 'cut', of: (one) => `${one.cut}${broken(one) ? ' !' : ''}` },
    { head: 'title', least: 10, spare: 1, of: ({ title }) => oneLine(title) },
    { head: '', of: ({ before: old, now: is }) => (old ? (is ? '' : 'gone') : 'new') },
    { head: `time at ${at}`, right: true, of: (one) => time(one.before?.running) },
    { head: 'now', right: true, of: (one) => time(one.now?.running) },
    { head: 'change', right: true, of: ({ change }) => (change === null ? '?' : signed(change, fps)) },
    { head: `drawings at ${at}`, right: true, of: (one) => number(one.before?.drawings) },
    { head: 'now', right: true, of: (one) => number(one.now?.drawings) },
  ];
  const others = unchanged > 0 ? `; ${plural(unchanged, 'cut')} unchanged` : '';
  return [
    ...(cuts.length > 0 ? [...textTable(columns, cuts, width), ''] : []),
    `${cuts.length === 0 ? 'no cut differs' : `${plural(cuts.length, 'cut')} ${cuts.length === 1 ? 'differs' : 'differ'}`}${others}${reordered ? '; the cuts stand in another order' : ''}`,
    `${revision}: ${episodeLine(before)}`,
    `now: ${episodeLine(now)}`,
    ...(before.untimed + now.untimed > 0
      ? []
      : [`it runs ${longer(now.running - Math.round((before.running * fps) / before.fps), fps)}`]),
    ...budgetMoved(before, now),
    ...(now.unsound + before.unsound > 0
      ? ['cuts with errors (!) are counted as far as they could be read']
      : []),
    '',
  ].join('\n');
}

const episodeLine = ({ cuts, running, fps, drawings, budget, over, untimed }: EpisodeFigures): string =>
  `${plural(cuts, 'cut')}, ${plural(drawings, 'drawing')}, running time ${untimed > 0 ? 'at least ' : ''}${secondsAndFrames(running, fps)} (${feetAndFrames(running)})${againstBudget(over, budget, fps)}`;

function budgetMoved(before: EpisodeFigures, now: EpisodeFigures): string[] {
  if (now.budget === null || before.budget === null || now.fps !== before.fps) return [];
  const by = now.budget - before.budget;
  if (by === 0) return [];
  return [`the budget is ${secondsAndFrames(Math.abs(by), now.fps)} ${by > 0 ? 'larger' : 'smaller'}`];
}

function longer(frames: number, fps: number): string {
  if (frames === 0) return 'as long as before';
  return `${secondsAndFrames(Math.abs(frames), fps)} ${frames > 0 ? 'longer' : 'shorter'}`;
}

/** `+1+12`, `-0+06`; a broken frame is rounded to the nearest. */
function signed(frames: number, fps: number): string {
  const whole = Math.round(frames);
  return whole === 0 ? '' : `${whole > 0 ? '+' : '-'}${secondsAndFrames(Math.abs(whole), fps)}`;
}
