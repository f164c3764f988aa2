/** Threads of this program that work for the one that was called. */

import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import type { WorkerThread } from './host.js';

/** Beside the bundle; there is none where the sources run unbundled. */
const ENTRY = fileURLToPath(new URL('../bin/worker.js', import.meta.url));

/** Three times what 3,000 cuts take. A thread that needs more ends, and the one that started it does its work. */
const MOST_HEAP_MB = 512;

export const processors = (): number => availableParallelism();

/** Null where none can be started. `command`: whose code it loads. */
export function startWorker(command: string, entry = ENTRY): WorkerThread | null {
  if (!existsSync(entry)) return null;
  // The bundle knows no `import()` of what Node brings.
  const { Worker } = createRequire(import.meta.url)(
    'node:worker_threads',
  ) as typeof import('node:worker_threads');
  const resourceLimits = { maxOldGenerationSizeMb: MOST_HEAP_MB };
  const thread = new Worker(entry, { workerData: { command }, execArgv: [], resourceLimits });
  return {
    post: (message) => thread.postMessage(message),
    listen(onMessage, onEnd) {
      thread.on('message', onMessage);
      thread.on('messageerror', () => void thread.terminate());
      // Told by its end.
      thread.on('error', () => {});
      thread.on('exit', onEnd);
    },
    stop: () => void thread.terminate(),
  };
}
