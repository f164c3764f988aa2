/** Where a film or its pictures go: as `--output` says, or beside the cut or the manifest. */

import { basename, dirname, extname, join, resolve } from 'node:path';
import { inputsOf, isFolder, oneTarget, overwriting } from '../build/output-targets.js';
import { COMMAND_LINE, UsageError } from '../build/usage-error.js';
import type { Found } from '../episode/find-cuts.js';
import type { Host } from '../host/host.js';
import { FILM_FORMS, type PicturePath } from './film-writers.js';

export type FilmOutput =
  | { readonly kind: 'film'; readonly file: PicturePath; readonly ending: string }
  | { readonly kind: 'pictures'; readonly numbered: NumberedPictures };

export interface NumberedPictures {
  /** What messages call all of them: their folder. */
  readonly folder: string;
  pathOf(number: number): PicturePath;
}

const USUAL_ENDING = '.mp4';
const USUAL_NAME = '%04d.png';

/** Throws UsageError where the name makes no sense for these cuts. */
export function filmOutput(host: Host, found: Found, output: string | undefined): FilmOutput {
  if (output === '-') throw new UsageError('wrong-arguments', output, { variant: 'film-standard-output' });
  if (output === undefined) return film(host, found, usualName(host, found));
  if (output.includes('%')) return pictures(host, output);
  if (isFolder(host, output)) return pictures(host, join(output, USUAL_NAME));
  return film(host, found, output);
}

/** Where the pictures go that stand in for a film: a folder beside it, under its name. */
export function insteadOf({ name }: PicturePath, host: Host): NumberedPictures {
  const folder = name.slice(0, name.length - extname(name).length);
  return numbered(host, join(folder, USUAL_NAME));
}

function usualName(host: Host, found: Found): string {
  const [job] = found.jobs;
  if (found.jobs.length > 1 || found.whole.length > 0 || !job)
    return oneTarget(host, found, undefined, '', USUAL_ENDING).name;
  if (job.path === null) throw new UsageError('wrong-arguments', null, { variant: 'input-nameless' });
  return join(dirname(job.name), `${basename(job.name).replace(/\.cut$/, '')}${USUAL_ENDING}`);
}

function film(host: Host, found: Found, name: string): FilmOutput {
  const ending = extname(name).toLowerCase();
  const path = resolve(host.cwd, name);
  const inputs = inputsOf(host, found);
  const span = { file: COMMAND_LINE, start: 0, end: 0 };
  const refused = overwriting(host, path, name, span, (real) => inputs.has(real));
  if (refused) throw new UsageError(refused.code, name, refused.parameters);
  if (!Object.hasOwn(FILM_FORMS, ending))
    throw new UsageError('option-value', name, {
      variant: 'film-ending',
      endings: Object.keys(FILM_FORMS),
    });
  return { kind: 'film', file: { path, name }, ending };
}

function pictures(host: Host, name: string): FilmOutput {
  // One number with its digits, in the name of the file itself.
  const [, ...more] = name.split('%');
  if (more.length !== 1 || !/%0?[1-9]?d[^%/\\]*\.png$/i.test(name))
    throw new UsageError('option-value', name, { variant: 'picture-names' });
  return { kind: 'pictures', numbered: numbered(host, name) };
}

function numbered(host: Host, pattern: string): NumberedPictures {
  return {
    folder: dirname(pattern),
    pathOf(number) {
      const name = pattern.replace(/%(0?)([1-9]?)d/, (_, zeros: string, digits: string) =>
        zeros ? String(number).padStart(Number(digits || 1), '0') : String(number),
      );
      return { path: resolve(host.cwd, name), name };
    },
  };
}
