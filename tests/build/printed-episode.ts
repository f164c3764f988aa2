/** A small episode that has been printed once, for tests of what the next build does. */

import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import { CUT, type Ran, run } from '../command/run.js';

/** Thirteen seconds: three pages of sheet and one of charts. Key 4 stands on the third page. */
export const longCut = (cut: number, more = ''): string =>
  `cut ${cut}\ntime 13+0\nA: 1{late}--2:6+0 3:6+0 4..\nB: (1{late}--2--)..\n${more}`;

export const FILES = {
  'e/episode.yaml': 'title: Ferry\nepisode: 3\n',
  'e/2.cut': longCut(2),
  'e/10.cut': CUT.replace('cut 1', 'cut 10'),
  'e/11.cut': CUT.replace('cut 1', 'cut 11'),
};

let printed: ReadonlyMap<string, Uint8Array> | undefined;

/** A world of its own with the cuts of `FILES` and their prints in `out`; they are printed at the first call only. */
export async function printedEpisode(): Promise<PrintedEpisode> {
  const host = memoryHost(FILES);
  const episode = new PrintedEpisode(host);
  if (printed === undefined) {
    await episode.build();
    printed = new Map(host.files);
  }
  for (const [path, bytes] of printed) host.files.set(path, bytes);
  return episode;
}

export class PrintedEpisode {
  constructor(readonly host: MemoryHost) {}

  /** Paths are from the folder of the episode’s folder: `e/2.cut`, `out/2.pdf`. */
  set(path: string, text: string): void {
    this.host.files.set(`/work/${path}`, Buffer.from(text));
  }

  delete(path: string): void {
    this.host.files.delete(`/work/${path}`);
  }

  bytes(path: string): Uint8Array | undefined {
    return this.host.files.get(`/work/${path}`);
  }

  build(...argv: readonly string[]): Promise<Ran> {
    return run(this.host, 'build', 'e', '-o', 'out', ...argv);
  }

  /** The files that something writes. */
  async written(act: () => Promise<unknown>): Promise<string[]> {
    const before = new Map(this.host.files);
    await act();
    return [...this.host.files]
      .filter(([path, bytes]) => before.get(path) !== bytes)
      .map(([path]) => path.slice(6));
  }
}
