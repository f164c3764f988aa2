/** For commands that write their own input anew: the text as it lies there, and the way back. */

import { deliver, STANDARD_OUTPUT } from '../build/output-targets.js';
import type { Job } from '../episode/find-cuts.js';
import type { Host, Reading } from '../host/host.js';
import { type Diagnostic, diagnose } from '../language/diagnostic.js';

const MARK = [0xef, 0xbb, 0xbf];

/** Standard input may be read once only: a world that remembers it, where `files` name it. */
export async function remembering(host: Host, files: readonly string[]): Promise<Host> {
  if (!files.includes('-')) return host;
  const bytes = await host.standardInput();
  return { ...host, standardInput: async () => bytes };
}

/** A world in which a file (absolute path; null: standard input) says something else. */
export function saying(host: Host, path: string | null, bytes: Uint8Array): Host {
  if (path === null) return { ...host, standardInput: async () => bytes };
  const read = (other: string): Reading<Uint8Array> =>
    other === path ? { ok: true, value: bytes } : host.read(other);
  return { ...host, read };
}

export async function bytesOf(host: Host, { path }: Job): Promise<Uint8Array> {
  if (path === null) return host.standardInput();
  const read = host.read(path);
  return read.ok ? read.value : new Uint8Array();
}

/** Whether a byte-order mark stands before the text. */
export function marked(bytes: Uint8Array): boolean {
  return MARK.every((byte, i) => bytes[i] === byte);
}

/**
 * Writes a text back to where it came from, standard input to standard output; what stands against it, or null. `before`: the bytes
 * that it was made of. A file that somebody has saved since then is left as it is.
 */
export function writeBack(
  host: Host,
  job: Job,
  text: string,
  mark: boolean,
  before: Uint8Array,
): Diagnostic | null {
  const span = { file: job.name, start: 0, end: 0 };
  if (job.path !== null) {
    const now = host.read(job.path);
    if (!now.ok || Buffer.compare(now.value, before) !== 0)
      return diagnose('output-unwritable', span, {
        output: job.name,
        reason: now.ok ? null : now.reason,
      });
  }
  const bytes = Buffer.from((mark ? '\ufeff' : '') + text, 'utf8');
  const target = job.path === null ? STANDARD_OUTPUT : { path: job.path, name: job.name };
  return deliver(host, target, bytes, span);
}

/** Prints nothing where the texts are the same. `name` is what messages call the file. */
export async function printDiff(host: Host, name: string, before: string, after: string): Promise<void> {
  if (before === after) return;
  const { createTwoFilesPatch, FILE_HEADERS_ONLY } = await import('diff');
  host.out(
    createTwoFilesPatch(`a/${name}`, `b/${name}`, before, after, undefined, undefined, {
      context: 3,
      headerOptions: FILE_HEADERS_ONLY,
    }),
  );
}
