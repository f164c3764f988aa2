/** Another program that is given bytes on its standard input. */

import { spawn } from 'node:child_process';

export interface RunningProgram {
  /** Waits until all of it is taken; the bytes may be used again then. False: the program does not listen any more. */
  write(bytes: Uint8Array): Promise<boolean>;
  /** Ends its input and waits for its end: the status that it leaves with (null: it was killed), and the end of what it says on standard error. */
  finish(): Promise<{ readonly status: number | null; readonly said: string }>;
  /** Ends it at once. */
  stop(): Promise<void>;
}

/** Of what it says so much is kept. */
const SAID_BYTES = 8192;

/** Null where there is no such program. */
export function startProgram(name: string, args: readonly string[]): Promise<RunningProgram | null> {
  return new Promise((resolve) => {
    const child = spawn(name, args, { stdio: ['pipe', 'ignore', 'pipe'] });
    const ended = new Promise<number | null>((done) => {
      child.once('close', done);
      child.once('error', () => done(null));
    });
    let said = '';
    child.stderr.on('data', (bytes: Buffer) => {
      said = (said + bytes.toString('utf8')).slice(-SAID_BYTES);
    });
    // What it does not take any more is told by its end.
    child.stdin.on('error', () => {});
    child.once('error', () => resolve(null));
    child.once('spawn', () =>
      resolve({
        async write(bytes) {
          if (!child.stdin.writable) return false;
          const taken = new Promise<boolean>((done) => child.stdin.write(bytes, (error) => done(!error)));
          return Promise.race([taken, ended.then(() => false)]);
        },
        async finish() {
          child.stdin.end();
          return { status: await ended, said };
        },
        async stop() {
          child.kill('SIGKILL');
          await ended;
        },
      }),
    );
  });
}
