/**
 * An episode from its texts to one file, to a file a cut, and only checked: against zlib alone on the streams of those pages, and
 * against a Node that does nothing. The runs take turns, medians are compared, all in processor time. Run by itself after
 * `npm run build`, or `measureTextToPdf` from another bench.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { deflateSync } from 'node:zlib';
import { writeEpisode } from './generated.mjs';
import { median, report } from './measure.mjs';
import { contents } from './streams.mjs';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const PROGRAM = here('../../bin/cutwright.js');
const PEAK = here('peak.cjs');

/** Seconds of processor time of a Node with these arguments. */
function node(...args) {
  const { status, stderr, output } = spawnSync(process.execPath, ['--require', PEAK, ...args], {
    encoding: 'utf8',
    stdio: ['ignore', 'ignore', 'pipe', 'pipe'],
    maxBuffer: 2 ** 26,
  });
  if (status !== 0) throw new Error(`${args.join(' ')} gave ${status}: ${stderr}`);
  return JSON.parse(output[3]).seconds;
}

/** The same of what is done in this process. */
function inThisProcess(action) {
  const before = process.cpuUsage();
  action();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1e6;
}

export function measureTextToPdf({ cuts = 300, rounds = 3 } = {}) {
  const folder = mkdtempSync(join(tmpdir(), 'cutwright-bench-'));
  try {
    writeEpisode(folder, { cuts });
    const one = join(folder, 'all.pdf');
    const build = (...more) => node(PROGRAM, 'build', folder, ...more);
    build('--one-file', '--output', one);
    const streams = contents(readFileSync(one));
    const runs = {
      bare: () => node('-e', '0'),
      zlib: () => inThisProcess(() => streams.map((stream) => deflateSync(stream).length)),
      check: () => node(PROGRAM, 'check', folder),
      one: () => build('--one-file', '--output', one),
      apart: () => build('--output', join(folder, 'out')),
    };
    const took = Object.fromEntries(Object.keys(runs).map((name) => [name, []]));
    for (let round = 0; round < rounds; round++)
      for (const [name, action] of Object.entries(runs)) took[name].push(action());
    const row = (what, name, against, wanted) => {
      const seconds = median(took[name]);
      const peer = against === 'zlib' ? `zlib alone on its ${streams.length} streams` : 'bare node';
      const ratio = (seconds / median(took[against])).toFixed(1);
      report(`${cuts} cuts, ${what}`, `${seconds.toFixed(2)} s of a processor, ${ratio} × ${peer}`, wanted);
    };
    row('check', 'check', 'bare', '8 ×');
    row('text to one PDF', 'one', 'zlib', '3 ×');
    row('text to a PDF a cut', 'apart', 'zlib', '5 ×');
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) measureTextToPdf();
