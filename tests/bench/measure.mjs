import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const LAUNCHER = fileURLToPath(new URL('launcher.cjs', import.meta.url));

export const median = (values) => [...values].sort((a, b) => a - b)[values.length >> 1];

export const milliseconds = (value) => `${value.toFixed(1)} ms`;

export async function timed(action) {
  const start = performance.now();
  const value = await action();
  return { value, took: performance.now() - start };
}

/**
 * Runs Node with each of these lists of arguments, in turns, from a small process. By their names: what each run took, in seconds of
 * the clock (`wall`) and of a processor (`seconds`), MB at most, what it said. Throws where one fails.
 */
export function runInTurns(runs, rounds = 1) {
  const { status, stderr, output } = spawnSync(
    process.execPath,
    [LAUNCHER, JSON.stringify({ runs, rounds })],
    {
      encoding: 'utf8',
      stdio: ['ignore', 'ignore', 'pipe', 'pipe'],
      maxBuffer: 2 ** 28,
    },
  );
  if (status !== 0) throw new Error(stderr);
  return JSON.parse(output[3]);
}

/** How often the medians of one fit into those of another: `2.31 s, 8.5 × bare node; 3.10 s of a processor, 31.2 ×`. */
export function ratios(took, against, peer) {
  const [wall, seconds] = ['wall', 'seconds'].map((field) => {
    const [own, other] = [took, against].map((runs) => median(runs.map((run) => run[field])));
    return {
      own: own < 1 ? milliseconds(own * 1000) : `${own.toFixed(2)} s`,
      times: (own / other).toFixed(1),
    };
  });
  return `${wall.own}, ${wall.times} × ${peer}; ${seconds.own} of a processor, ${seconds.times} ×`;
}

/** One line of the report; `wanted` is the bound that the project asks for, where there is one. */
export function report(what, figure, wanted = null) {
  console.log(`${what.padEnd(58)} ${figure}${wanted ? `   (wanted: ${wanted})` : ''}`);
}
