/** Workers without threads: they serve in this one, but get copies of what is sent to them, as threads do. */

import { setImmediate } from 'node:timers';
import { serveCuts } from '../../src/build/cut-worker.js';
import { LOADED } from '../../src/episode/worker-pool.js';
import type { WorkerThread } from '../../src/host/host.js';
import type { MemoryHost } from '../../src/host/memory-host.js';

export interface MemoryWorkers {
  /** What each of them was started for, in their order. */
  readonly commands: string[];
  /** How many answers each of them gave. */
  readonly answers: number[];
  /** How many were stopped. */
  stopped: number;
}

/** Gives a host workers. `mostAnswers`: after so many a worker dies. `deaf`: it hears nothing. */
export function withWorkers(
  host: MemoryHost,
  mostAnswers = Number.POSITIVE_INFINITY,
  { deaf = false } = {},
): MemoryWorkers {
  const workers: MemoryWorkers = { commands: [], answers: [], stopped: 0 };
  host.startWorker = (command): WorkerThread => {
    const own = workers.commands.push(command) - 1;
    workers.answers.push(0);
    let running = true;
    let answer = (_message: unknown): void => {};
    let end = (): void => {};
    const toWorker: ((message: unknown) => void)[] = [];
    serveCuts(host, {
      post(message) {
        const copy = structuredClone(message);
        setImmediate(() => {
          if (!running) return;
          if (copy === LOADED) {
            answer(copy);
            return;
          }
          if (workers.answers[own]! >= mostAnswers) {
            running = false;
            end();
            return;
          }
          workers.answers[own]! += 1;
          answer(copy);
        });
      },
      listen: (onMessage) => void toWorker.push(onMessage),
    });
    return {
      post(message) {
        const copy = structuredClone(message);
        setImmediate(() => running && !deaf && toWorker.forEach((each) => void each(copy)));
      },
      listen(onMessage, onEnd) {
        answer = onMessage;
        end = onEnd;
      },
      stop() {
        running = false;
        workers.stopped += 1;
      },
    };
  };
  return workers;
}
