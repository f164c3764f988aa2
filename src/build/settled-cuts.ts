/** Cuts that need not be compiled: their last print tells that it was made of the same texts, and that nothing was wrong. */

import { createHash } from 'node:crypto';
import { version } from '../../package.json';
import { textsOf } from '../episode/cut-texts.js';
import type { EpisodeCache } from '../episode/episode.js';
import type { Job } from '../episode/find-cuts.js';
import type { Host } from '../host/host.js';
import type { Diagnostic } from '../language/diagnostic.js';
import type { PrintableCut } from './cut-printer.js';
import type { EarlierLookup } from './earlier-print.js';
import type { PartSelection, PrintPlan } from './print-plan.js';

/** A hash of the sources, put in by whoever bundles or tests them. */
declare const CUTWRIGHT_SOURCES: string | undefined;

/** Which program this is: two of one name print the same. */
export const PROGRAM = typeof CUTWRIGHT_SOURCES === 'string' ? `${version} ${CUTWRIGHT_SOURCES}` : version;

/** Of values that JSON can write: equal ones have one, and hardly any others. */
export const shortHash = (all: readonly unknown[]): string =>
  createHash('sha256').update(JSON.stringify(all)).digest('base64url').slice(0, 16);

/** What a record says of the texts, where `hash` is theirs: another program or other parts make another print of them. */
export function recordOfTexts(hash: string, selection: PartSelection): string {
  const { only = null, trueSize = false, parts = null } = selection;
  const all = [PROGRAM, hash, only, trueSize, parts];
  return shortHash(all);
}

/**
 * The number of a cut that needs no look, by the texts that lie on the disk and by what is known of its last print; null: it has to
 * be compiled.
 */
export function settledNumber(
  host: Host,
  job: Job,
  cache: EpisodeCache,
  { selection, changedPagesOnly, markedAgainst }: PrintPlan,
  earlier: EarlierLookup,
): string | null {
  if ('none' in earlier || earlier.texts === null || markedAgainst !== null) return null;
  // What is wrong with the manifest may be an error of every cut.
  if (!earlier.whole(changedPagesOnly) || job.episode.diagnostics.some(isNoHint)) return null;
  const texts = textsOf(host, job, cache);
  return texts !== null && recordOfTexts(texts.hash, selection) === earlier.texts ? texts.number : null;
}

const isNoHint = ({ severity }: Diagnostic): boolean => severity !== 'hint';

/**
 * What a record says of the texts of a cut that has been compiled; null where a later run has to compile it again, because there is a warning to repeat,
 * or because a file was saved while the run went on.
 */
export function textsOfPrint(
  { host, job, compiled, cache }: PrintableCut,
  selection: PartSelection,
): string | null {
  if (compiled.diagnostics.some(isNoHint)) return null;
  const texts = textsOf(host, job, cache);
  if (texts === null) return null;
  const same = [...texts.sources].every(([name, text]) => compiled.sources.get(name) === text);
  return same ? recordOfTexts(texts.hash, selection) : null;
}
