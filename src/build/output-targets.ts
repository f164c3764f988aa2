/** Where a command writes: beside the cut, to a file, into a folder, or to standard output. */

import { basename, dirname, extname, join, normalize, relative, resolve } from 'node:path';
import type { Found, Job } from '../episode/find-cuts.js';
import { type Host, type Reading, reasonOf } from '../host/host.js';
import { type Diagnostic, diagnose } from '../language/diagnostic.js';
import { UsageError } from './usage-error.js';

/** Null path: standard output. */
export interface Target {
  readonly path: string | null;
  /** What messages call it. */
  readonly name: string;
}

export const STANDARD_OUTPUT: Target = { path: null, name: 'standard output' };

/**
 * Says for each job where its output goes, or what stands against it. `output` is what `--output` says; without it
 * `fallback` decides: beside the cut, or to standard output. Throws UsageError where the command line makes no sense.
 */
export class Targets {
  private readonly byJob = new Map<Job, Target>();
  private readonly rivals = new Map<string, Job[]>();
  private readonly inputs: ReadonlySet<string>;
  private readonly reals = new Map<string, string>();

  constructor(
    private readonly host: Host,
    found: Found,
    output: string | undefined,
    ending: string,
    fallback: 'beside' | 'standard' = 'beside',
  ) {
    const { jobs } = found;
    this.inputs = inputsOf(host, found);
    const single = output !== undefined && (output === '-' || !isFolder(host, output));
    if (single && jobs.length > 1) {
      throw new UsageError('wrong-arguments', output, {
        variant: 'one-output',
        cuts: jobs.length,
        standardOutput: output === '-',
      });
    }
    for (const job of jobs) this.byJob.set(job, this.choose(job, output, ending, fallback, single));
    for (const [job, { path }] of this.byJob) {
      if (path === null) continue;
      const real = host.real(path);
      this.reals.set(path, real);
      this.rivals.set(real, [...(this.rivals.get(real) ?? []), job]);
    }
  }

  of(job: Job): Target {
    return this.byJob.get(job)!;
  }

  /** Folders that are written to; canonical. */
  folders(): readonly string[] {
    return [...new Set([...this.reals.values()].map((real) => dirname(real)))];
  }

  /** What forbids writing a job's output; `used`: names of further files that were read for it. */
  refusal(job: Job, used: Iterable<string> = []): Diagnostic | null {
    const { path, name } = this.of(job);
    if (path === null) return null;
    const span = spanOf(job);
    const read = new Set([...used].map((one) => this.host.real(resolve(this.host.cwd, one))));
    return (
      this.rivalry(job) ??
      overwriting(this.host, path, name, span, (real) => this.inputs.has(real) || read.has(real))
    );
  }

  /** What forbids it because of another cut. */
  rivalry(job: Job): Diagnostic | null {
    const { path, name } = this.of(job);
    const rivals = (path !== null && this.rivals.get(this.reals.get(path)!)) || [];
    const other = rivals.find((one) => one !== job);
    if (!other) return null;
    return diagnose('same-output', spanOf(job), { other: other.name, output: name });
  }

  private choose(
    job: Job,
    output: string | undefined,
    ending: string,
    fallback: 'beside' | 'standard',
    single: boolean,
  ): Target {
    if (output === '-') return STANDARD_OUTPUT;
    if (output === undefined) {
      if (fallback === 'standard' || job.path === null) return STANDARD_OUTPUT;
      return target(this.host, join(dirname(job.name), stem(job) + ending));
    }
    if (single) return target(this.host, output);
    if (job.path === null) {
      throw new UsageError('wrong-arguments', output, { variant: 'input-nameless' });
    }
    return target(this.host, join(output, stem(job) + ending));
  }
}

/**
 * Where one file for all cuts goes: as `--output` says, or beside the manifest under the name of its folder, with `more` and the
 * ending behind it.
 */
export function oneTarget(
  host: Host,
  found: Found,
  output: string | undefined,
  more = '',
  ending = '.pdf',
): Target {
  if (output === '-') return STANDARD_OUTPUT;
  if (output !== undefined && !isFolder(host, output)) return target(host, output);
  const [whole] = found.whole;
  const own = found.whole.length === 1 && found.jobs.every(({ episode }) => episode === whole);
  if (!whole || !own) {
    throw new UsageError('wrong-arguments', output ?? (ending === '.pdf' ? '--one-file' : null), {
      variant: 'output-nameless',
      ending,
    });
  }
  const manifest = basename(whole.file!).replace(/\.ya?ml$/, '');
  const stem = manifest === 'episode' ? basename(resolve(host.cwd, whole.folder!)) || manifest : manifest;
  return target(host, join(output ?? dirname(whole.file!), `${stem}${more}${ending}`));
}

export const spanOf = ({ name }: Job): Diagnostic['span'] => ({ file: name, start: 0, end: 0 });

function target(host: Host, name: string): Target {
  return { path: resolve(host.cwd, name), name: normalize(name) };
}

/** Real paths of what a run reads: its cuts and manifests. */
export function inputsOf(host: Host, { jobs, episodes }: Found): ReadonlySet<string> {
  const cuts = jobs.flatMap(({ path }) => path ?? []);
  const manifests = episodes.map(({ file }) => resolve(host.cwd, file!));
  return new Set([...cuts, ...manifests].map((path) => host.real(path)));
}

/** Refuses to write over a text: one that was read, or anything with the name of one. */
export function overwriting(
  host: Host,
  path: string,
  name: string,
  span: Diagnostic['span'],
  isInput: (real: string) => boolean = () => false,
): Diagnostic | null {
  if (isInput(host.real(path))) return diagnose('output-is-input', span, { variant: 'read', output: name });
  if (/\.(cut|ya?ml)$/i.test(path))
    return diagnose('output-is-input', span, { variant: 'named', output: name });
  return null;
}

/** Writes bytes to their target; what stands against it, or null. */
export function deliver(
  host: Host,
  target: Target,
  bytes: Uint8Array,
  span: Diagnostic['span'],
): Diagnostic | null {
  return refusalOf(
    target.path === null ? printBytes(host, bytes) : host.write(target.path, bytes),
    target,
    span,
  );
}

/** The same while the caller goes on; see `Host.writeLater`. */
export async function deliverLater(
  host: Host,
  target: Target,
  bytes: Uint8Array,
  span: Diagnostic['span'],
): Promise<Diagnostic | null> {
  const written = target.path === null ? printBytes(host, bytes) : await host.writeLater(target.path, bytes);
  return refusalOf(written, target, span);
}

function refusalOf(
  written: Reading<null>,
  { path, name }: Target,
  span: Diagnostic['span'],
): Diagnostic | null {
  if (written.ok) return null;
  return diagnose('output-unwritable', span, { output: path === null ? null : name, reason: written.reason });
}

/** Writes to standard output, which may stand for a file on a full disk. */
export function printBytes(host: Host, bytes: Uint8Array): Reading<null> {
  try {
    host.out(bytes);
    return { ok: true, value: null };
  } catch (fault) {
    return { ok: false, reason: reasonOf(fault) };
  }
}

/**
 * A folder that is there, or a name that can only be one: a name without an ending is a folder to be made. Throws UsageError for
 * no name at all, which a variable of a shell that is not set leaves.
 */
export function isFolder(host: Host, output: string): boolean {
  if (output === '') throw new UsageError('option-value', output, { variant: 'output-empty' });
  const kind = host.kind(resolve(host.cwd, output));
  if (kind !== 'none') return kind === 'folder';
  return /[/\\]$/.test(output) || extname(output) === '';
}

function stem(job: Job): string {
  return basename(job.name).replace(/\.cut$/, '');
}

/** The folder that all targets share, as a person would say it; null where there are several. */
export function sharedFolder(host: Host, targets: readonly Target[]): string | null {
  const folders = new Set(targets.map(({ path }) => (path === null ? '' : dirname(path))));
  if (folders.size !== 1) return null;
  const [folder] = folders;
  return folder ? relative(host.cwd, folder) || '.' : null;
}
