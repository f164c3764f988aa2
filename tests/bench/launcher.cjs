/**
 * Starts Node again and again and measures it, for a bench that would take long to start anything itself: a process that holds
 * much is slow to fork. Gets `{ runs, rounds }` as JSON, `runs` being lists of arguments by their names; answers on descriptor 3.
 */
const { spawnSync } = require('node:child_process');
const { writeSync } = require('node:fs');
const { join } = require('node:path');

const PEAK = join(__dirname, 'peak.cjs');
const { runs, rounds } = JSON.parse(process.argv[2]);
const stdio = ['ignore', 'ignore', 'pipe', 'pipe'];
const took = {};
for (let round = 0; round < rounds; round++)
  for (const [name, args] of Object.entries(runs)) {
    const start = performance.now();
    const run = spawnSync(process.execPath, ['--require', PEAK, ...args], { stdio, maxBuffer: 2 ** 26 });
    const wall = (performance.now() - start) / 1000;
    const said = run.stderr.toString();
    if (run.status !== 0) throw new Error(`${args.join(' ')} gave ${run.status}: ${said}`);
    took[name] ??= [];
    took[name].push({ wall, said, ...JSON.parse(run.output[3]) });
  }
const answer = Buffer.from(JSON.stringify(took));
for (let sent = 0; sent < answer.length; ) sent += writeSync(3, answer, sent);
