import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { processors, startWorker } from '../../src/host/worker-threads.js';

let folder: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'cutwright-worker-'));
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Starts a thread that runs this text; what it says until it ends. */
function started(text: string, act: (say: (message: unknown) => void, stop: () => void) => void) {
  const entry = join(folder, 'worker.cjs');
  writeFileSync(entry, `const { parentPort, workerData } = require('node:worker_threads');\n${text}`);
  const worker = startWorker('check', entry)!;
  const said: unknown[] = [];
  return new Promise<unknown[]>((ended) => {
    worker.listen(
      (message) => void said.push(message),
      () => ended(said),
    );
    act(worker.post, worker.stop);
  });
}

test('a thread is told what to do, and answers', async () => {
  const echo =
    "parentPort.on('message', (one) => { parentPort.postMessage([workerData.command, one]); parentPort.close(); });";
  expect(await started(echo, (post) => post({ places: [1] }))).toEqual([['check', { places: [1] }]]);
});

test.each([
  ['throws', "throw new Error('a fault that was made');"],
  ['says what cannot be copied', 'parentPort.postMessage(() => 1);'],
])('one that %s only ends', { timeout: 60_000 }, async (_, text) => {
  expect(await started(text, () => {})).toEqual([]);
});

test('one that never comes back is stopped', async () => {
  const endless = "parentPort.postMessage('here'); for (;;);";
  expect(await started(endless, (_, stop) => setImmediate(stop))).toEqual(expect.any(Array));
});

test('there is none beside the sources, and at least one processor', () => {
  expect(startWorker('check')).toBe(null);
  expect(processors()).toBeGreaterThan(0);
});
