/** Stands in for the program that makes films: it keeps what it is given. */

import type { MemoryHost } from '../../src/host/memory-host.js';
import type { RunningProgram } from '../../src/host/running-program.js';

export interface GivenFilm {
  args: readonly string[];
  /** Raw frames, RGBA. */
  frames: Uint8Array[];
  /** The file with the sound, as it was when the film was begun. */
  sound: Uint8Array | null;
  stopped: boolean;
}

/**
 * Installs it in a world; the film file then holds the number of its frames. `fails`: after so many frames it ends, and says this.
 */
export function installFilmProgram(
  host: MemoryHost,
  fails: { readonly after: number; readonly said: string } | null = null,
): GivenFilm {
  const given: GivenFilm = { args: [], frames: [], sound: null, stopped: false };
  host.programs.set('ffmpeg', (args): RunningProgram => {
    given.args = args;
    given.frames = [];
    const sound = args[args.lastIndexOf('-i') + 1]!;
    given.sound = sound === 'pipe:0' ? null : (host.files.get(sound) ?? null);
    return {
      async write(bytes) {
        if (fails && given.frames.length >= fails.after) return false;
        given.frames.push(Uint8Array.from(bytes));
        return true;
      },
      async finish() {
        if (fails) return { status: 1, said: fails.said };
        host.files.set(args.at(-1)!, Buffer.from(`film of ${given.frames.length} frames`));
        return { status: 0, said: '' };
      },
      async stop() {
        given.stopped = true;
      },
    };
  });
  return given;
}
