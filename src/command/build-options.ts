/** From the options of `build` to what is to be done, and what does not go together. */

import type { BuildTool } from '../build/build-file.js';
import { type Extent, type PartName, type PrintPlan, pageRange } from '../build/print-plan.js';
import type { Shard } from '../build/shard.js';
import { UsageError } from '../build/usage-error.js';
import type { Messages } from '../language/catalogue/index.js';
import type { CoversAPage } from '../sheet/cover/shared-cover-page.js';
import { type JobsOption, type LookOptions, looks, type ReportOptions } from './command-options.js';

export interface BuildOptions extends ReportOptions, LookOptions, JobsOption {
  readonly output?: string;
  readonly oneFile?: boolean;
  readonly only?: PartName;
  readonly up?: `${CoversAPage}`;
  readonly trueSize?: boolean;
  readonly parts?: Extent;
  readonly pages?: string;
  readonly changed?: boolean;
  readonly since?: string;
  readonly markedAgainst?: string;
  readonly plan?: BuildTool;
  readonly shard?: string;
}

/** `--pages changed`. */
const CHANGED = 'changed';

/** Throws UsageError where options do not go together. */
export function printPlanOf(options: BuildOptions, files: readonly string[]): PrintPlan {
  const { changed = false, since, pages, output } = options;
  const compares = changed || since !== undefined;
  if (changed && since !== undefined) {
    throw clash('--changed', { variant: 'two-comparisons' });
  }
  if (pages === CHANGED && !compares) {
    throw clash(CHANGED, { variant: 'pages-changed-alone' });
  }
  if (compares && pages !== undefined && pages !== CHANGED) {
    throw clash(pages, { variant: 'pages-found', option: changed ? '--changed' : '--since' });
  }
  if (changed && output === '-') {
    throw clash('-', { variant: 'changed-standard-output' });
  }
  if (since !== undefined && files.includes('-')) {
    throw clash('-', { variant: 'input-revisions', option: '--since' });
  }
  checkMarks(options, files);
  checkSharedPages(options);
  return {
    output,
    strict: options.strict === true,
    settings: looks(options),
    selection: { only: options.only, trueSize: options.trueSize, parts: options.parts },
    against: changed
      ? { kind: 'last build' }
      : since !== undefined
        ? { kind: 'revision', rev: since }
        : { kind: 'nothing' },
    changedPagesOnly: pages === CHANGED,
    pages: pages === undefined || pages === CHANGED ? null : { range: pages, includes: pageRange(pages) },
    oneFile: options.oneFile === true,
    coversAPage: options.up === undefined ? null : (Number(options.up) as CoversAPage),
    markedAgainst: options.markedAgainst ?? null,
    threads: options.jobs ?? null,
  };
}

/** Marks and the list of what has changed belong to whole sheets of cuts that have a past. */
function checkMarks({ markedAgainst, only = 'sheet', pages }: BuildOptions, files: readonly string[]): void {
  if (markedAgainst === undefined) return;
  if (only !== 'sheet') {
    throw clash(only, { variant: 'marks-without-sheet', part: only });
  }
  if (pages === CHANGED) {
    throw clash(CHANGED, { variant: 'marks-changed-pages' });
  }
  if (files.includes('-')) {
    throw clash('-', { variant: 'input-revisions', option: '--marked-against' });
  }
}

/** Only covers share pages, and such a page cannot be told apart by cut. */
function checkSharedPages({ up, only, changed, since, pages, shard }: BuildOptions): void {
  if (up === undefined) return;
  if (only !== 'cover') throw clash(only ?? '--up', { variant: 'up-without-cover' });
  const others = { '--changed': changed, '--since': since, '--pages': pages, '--shard': shard };
  for (const [other, given] of Object.entries(others)) {
    if (given) throw clash(other, { variant: 'not-together', one: '--up', other });
  }
}

/** Throws UsageError where `--plan` stands beside what no rule for one cut at a time can do. */
export function checkPlanOptions(options: BuildOptions, files: readonly string[]): void {
  const { oneFile, changed, since, markedAgainst, pages, shard, only, up, output } = options;
  const others: readonly (readonly [unknown, string])[] = [
    [oneFile, '--one-file'],
    [changed, '--changed'],
    [since, '--since'],
    [markedAgainst, '--marked-against'],
    [pages, '--pages'],
    [shard, '--shard'],
    [only, '--only'],
    [up, '--up'],
    [output === '-', '--output -'],
    [files.includes('-'), '-'],
  ];
  for (const [given, other] of others) {
    if (given) throw clash(other.split(' ').at(-1)!, { variant: 'not-together', one: '--plan', other });
  }
}

/** `2/8`; null: no `--shard`. Throws UsageError for what is no part of so many. */
export function shardOption({ shard, oneFile }: BuildOptions): Shard | null {
  if (shard === undefined) return null;
  if (oneFile) throw clash('--one-file', { variant: 'not-together', one: '--shard', other: '--one-file' });
  const [, index, count] = (/^(\d{1,4})\/(\d{1,4})$/.exec(shard) ?? []).map(Number);
  if (index === undefined || count === undefined || index < 1 || index > count)
    throw new UsageError('option-value', shard, { variant: 'shard' });
  return { index, count };
}

function clash(word: string, parameters: Messages['wrong-arguments']): UsageError {
  return new UsageError('wrong-arguments', word, parameters);
}
