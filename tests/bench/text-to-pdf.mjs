/**
 * An episode from its texts to one file, to a file a cut, and only checked: against zlib alone on the streams of those pages, and
 * against a Node that does nothing. The runs take turns, medians are compared, by the clock (which is what is wanted) and in processor time. Run
 * by itself after `npm run build`, or `measureTextToPdf` from another bench.
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { deflateSync } from 'node:zlib';
import { writeEpisode } from './generated.mjs';
import { ratios, report, runInTurns } from './measure.mjs';
import { contents } from './streams.mjs';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const PROGRAM = here('../../bin/cutwright.js');

/** What is done in this process took. */
function inThisProcess(action) {
  const [start, before] = [performance.now(), process.cpuUsage()];
  action();
  const { user, system } = process.cpuUsage(before);
  return { wall: (performance.now() - start) / 1000, seconds: (user + system) / 1e6 };
}

/** `threads`: as `--jobs` has it; undefined: as the program chooses. */
export function measureTextToPdf({ cuts = 300, rounds = 3, threads } = {}) {
  const folder = mkdtempSync(join(tmpdir(), 'cutwright-bench-'));
  try {
    writeEpisode(folder, { cuts });
    const file = join(folder, 'all.pdf');
    const more = threads === undefined ? [] : ['--jobs', `${threads}`];
    const runs = {
      bare: ['-e', '0'],
      check: [PROGRAM, 'check', folder, ...more],
      one: [PROGRAM, 'build', folder, '--one-file', '--output', file, ...more],
      apart: [PROGRAM, 'build', folder, '--output', join(folder, 'out'), ...more],
    };
    runInTurns({ one: runs.one });
    const streams = contents(readFileSync(file));
    const took = { bare: [], zlib: [], check: [], one: [], apart: [] };
    for (let round = 0; round < rounds; round++) {
      took.zlib.push(inThisProcess(() => streams.map((stream) => deflateSync(stream).length)));
      for (const [name, all] of Object.entries(runInTurns(runs))) took[name].push(...all);
    }
    const zlib = `zlib alone on its ${streams.length} streams`;
    report(`${cuts} cuts, check`, ratios(took.check, took.bare, 'bare node'), '8 ×');
    report(`${cuts} cuts, text to one PDF`, ratios(took.one, took.zlib, zlib), '3 ×');
    report(`${cuts} cuts, text to a PDF a cut`, ratios(took.apart, took.zlib, zlib), '5 ×');
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) measureTextToPdf({ threads: process.argv[2] });
