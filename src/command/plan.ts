/** From the options of `build` to what is to be done, and what does not go together. */

import type { Look } from '../sheet/look.js';
import type { Settings } from '../shot/settings.js';
import type { Choice } from './document.js';
import { LineFault } from './line.js';
import { type LookOptions, looks, type ReportOptions } from './options.js';
import { pageChoice } from './pages.js';
import type { PartName } from './parts.js';
import type { Told } from './press.js';

export interface BuildOptions extends ReportOptions, LookOptions {
  readonly output?: string;
  readonly oneFile?: boolean;
  readonly only?: PartName;
  readonly trueSize?: boolean;
  readonly pages?: string;
  readonly changed?: boolean;
  readonly since?: string;
  readonly markedAgainst?: string;
}

/** With what the pages are compared; those that are the same are not printed. */
export type Against =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'last build' }
  | { readonly kind: 'revision'; readonly rev: string };

export interface Plan {
  readonly options: BuildOptions;
  readonly strict: boolean;
  readonly settings: Partial<Settings>;
  readonly choice: Choice;
  readonly against: Against;
  /** Only the pages that differ, not their whole cuts. */
  readonly pile: boolean;
  /** Which pages of each cut, counted from 1. */
  readonly keep: (page: number) => boolean;
  readonly oneFile: boolean;
  /** What is to be marked as changed on the sheets of a cut. */
  readonly marked: (told: Told) => Look['marked'];
}

/** `--pages changed`. */
const CHANGED = 'changed';

/** Throws LineFault where options do not go together. */
export function planOf(options: BuildOptions, files: readonly string[]): Plan {
  const { changed = false, since, pages, output } = options;
  const compares = changed || since !== undefined;
  if (changed && since !== undefined) {
    throw clash('--changed', '`--changed` and `--since` are two comparisons; give one of them.');
  }
  if (pages === CHANGED && !compares) {
    throw clash(
      CHANGED,
      '`--pages changed` needs something to compare with: `--changed` (the last build) or `--since REV`.',
    );
  }
  if (compares && pages !== undefined && pages !== CHANGED) {
    throw clash(
      pages,
      `\`${changed ? '--changed' : '--since'}\` finds the pages itself; with it, \`--pages\` takes only \`changed\`.`,
    );
  }
  if (changed && output === '-') {
    throw clash('-', '`--changed` compares with the file of the last build; standard output has none.');
  }
  if (since !== undefined && files.includes('-')) {
    throw clash('-', 'Standard input has no revisions; `--since` needs files.');
  }
  checkMarks(options, files);
  return {
    options,
    strict: options.strict === true,
    settings: looks(options),
    choice: { only: options.only, trueSize: options.trueSize },
    against: changed
      ? { kind: 'last build' }
      : since !== undefined
        ? { kind: 'revision', rev: since }
        : { kind: 'nothing' },
    pile: pages === CHANGED,
    keep: pages === undefined || pages === CHANGED ? () => true : pageChoice(pages),
    oneFile: options.oneFile === true,
    marked: () => undefined,
  };
}

/** Marks and the list of what has changed belong to whole sheets of cuts that have a past. */
function checkMarks({ markedAgainst, only = 'sheet', pages }: BuildOptions, files: readonly string[]): void {
  if (markedAgainst === undefined) return;
  if (only !== 'sheet') {
    throw clash(only, `\`--marked-against\` marks the sheets; \`--only ${only}\` prints none.`);
  }
  if (pages === CHANGED) {
    throw clash(
      CHANGED,
      '`--marked-against` prints whole cuts, since their columns make room for the marks; leave out `--pages changed`.',
    );
  }
  if (files.includes('-')) {
    throw clash('-', 'Standard input has no revisions; `--marked-against` needs files.');
  }
}

function clash(word: string, message: string): LineFault {
  return new LineFault('wrong-arguments', word, message);
}
