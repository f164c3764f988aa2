/** What a worker does: compiles the cuts that it is told of, prints them where that is wanted, and answers what came of each. */

import { CutCompiler } from '../episode/cut-outcome.js';
import { newEpisodeCache } from '../episode/episode.js';
import {
  claim,
  doneWith,
  LOADED,
  type WorkerAnswer,
  type WorkerOrder,
  type WorkerStart,
} from '../episode/worker-pool.js';
import type { Host, MessagePort } from '../host/host.js';
import { snapshot } from '../host/overlay-host.js';
import { makeOfTask } from './print-task.js';

/** Serves the thread at the other end of `port`, as `WorkerPool` asks. */
export function serveCuts(world: Host, port: MessagePort): void {
  const host = snapshot(world);
  let work = async (_places: readonly number[]): Promise<void> => {};
  let done = Promise.resolve();
  port.post(LOADED);
  port.listen((message) => {
    if (isOrder(message)) {
      done = done.then(() => work(message.places));
      return;
    }
    const { jobs, whole, task, claims } = message as WorkerStart;
    const compiler = new CutCompiler(host, whole, makeOfTask(host, task), newEpisodeCache());
    work = async (places) => {
      for (const place of places) {
        if (!claim(claims, place)) continue;
        const done = await doneWith(compiler, jobs[place]!);
        port.post({ place, done } satisfies WorkerAnswer<unknown>);
      }
    };
  });
}

const isOrder = (message: unknown): message is WorkerOrder => Object.hasOwn(message as object, 'places');
