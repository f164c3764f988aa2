/** What `number` says: what it pinned, what is no longer shown, and what only the animator can tell. */

import type { Reporter } from '../build/reporter.js';
import type { Compiled } from '../episode/compile-cut.js';
import type { Job } from '../episode/find-cuts.js';
import { type Pins, unused } from '../solve/cels-lines.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import { plural } from '../words/number-format.js';
import { choices } from './retimed-passages.js';

/** Nothing is written. */
export interface Dry {
  readonly check?: boolean;
  readonly diff?: boolean;
}

/** Where a passage on paper has more or fewer in-betweens now: how to say which. */
export function questions({ tree, diagnostics }: Compiled, job: Job): string[] {
  const file = job.path === null ? '-' : job.name;
  return diagnostics.flatMap((fault) => {
    const choice = tree && choices(tree, fault);
    if (!choice) return [];
    const { option, words, count } = choice;
    const which = count === 1 ? 'which one is' : `which ${count} are`;
    const each = words.map((word) => `${option} ${word}`);
    const last = each.pop();
    const listed = each.length > 0 ? `${each.join(', ')} or ${last}` : last;
    return [
      `${job.name}: say ${which} ${option === '--new' ? 'new' : 'gone'}: cutwright number ${file} ${listed}`,
    ];
  });
}

/** What is pinned now, and which pinned drawings are not shown. */
export function told(
  solved: SolvedShot,
  pins: readonly Pins[],
  chosen: (level: string) => boolean,
  { check, diff }: Dry,
): string[] {
  const fresh: string[] = [];
  const added: string[] = [];
  for (const { level, before, names } of pins) {
    const cels = names.flatMap((name, i) => (name === '_' ? [] : [{ cel: before + 1 + i, name }]));
    if (before > 0) added.push(...cels.map(({ cel, name }) => `${level}${cel} is ${name}`));
    else fresh.push(`${level}${cels[0]!.cel}${cels.length > 1 ? ` to ${level}${cels.at(-1)!.cel}` : ''}`);
  }
  const not = check || diff ? 'not ' : '';
  const lines: string[] = [];
  if (fresh.length > 0) lines.push(`${not}pinned: ${fresh.join(', ')}`);
  if (added.length > 0) lines.push(`${not ? 'not pinned: ' : ''}${added.join(', ')}`);
  const idle = solved.levels
    .filter(({ name }) => chosen(name))
    .flatMap((level) => unused(level).map(({ cel, drawing }) => `${level.name}${cel} (${drawing})`));
  if (idle.length > 0) lines.push(`${idle.join(', ')} ${idle.length === 1 ? 'is' : 'are'} no longer shown`);
  return lines;
}

export function summary(
  { cuts, changed, failed }: { cuts: number; changed: number; failed: number },
  { check, diff }: Dry,
  reporter: Reporter,
): string {
  const rest = cuts - changed - failed;
  const parts = [
    ...(changed > 0 ? [`${changed} ${check || diff ? 'to be numbered' : 'numbered'}`] : []),
    ...(rest > 0 ? [`${rest} with nothing to add`] : []),
    ...(failed > 0 ? [`${failed} not numbered (${reporter.tally()})`] : []),
  ];
  return `${plural(cuts, 'cut')}: ${parts.join(', ')}`;
}
