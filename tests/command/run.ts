import { main } from '../../src/command/main.js';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';

/** A cut of one second with nothing wrong in it. */
export const CUT = 'cut 1\ntime 1+0\nA: 1{late}--2..\n';

export interface Ran {
  readonly status: number;
  readonly out: string;
  readonly error: string;
}

/** Runs a command line against a world in memory. What earlier runs printed is left out. */
export async function run(host: MemoryHost, ...argv: readonly string[]): Promise<Ran> {
  const [out, error] = [host.printed().length, host.complaints().length];
  const status = await main(argv, host);
  return { status, out: host.printed().slice(out), error: host.complaints().slice(error) };
}

/** The same against fresh files. */
export function runOn(
  files: Readonly<Record<string, string | Uint8Array>>,
  ...argv: readonly string[]
): Promise<Ran> {
  return run(memoryHost(files), ...argv);
}

/** Names and kinds of all files of a world. */
export function fileNames(host: MemoryHost): string[] {
  return [...host.files.keys()].map((path) => path.replace(/^\/work\//, '')).sort();
}

export function isPdf(bytes: Uint8Array | undefined): boolean {
  return (
    bytes !== undefined &&
    Buffer.from(bytes.subarray(0, 5)).toString() === '%PDF-' &&
    /%%EOF\s*$/.test(Buffer.from(bytes.subarray(-8)).toString())
  );
}
