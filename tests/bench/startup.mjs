/** Wall time of `check` and `build` for one cut, against a Node that does nothing: runs take turns, medians are compared. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { median, milliseconds, report } from './measure.mjs';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));

export async function startup(rounds = 25) {
  const program = here('../../bin/cutwright.js');
  const cut = here('../../examples/saltmarsh/cuts/c001.cut');
  const out = mkdtempSync(join(tmpdir(), 'cutwright-bench-'));
  const runs = {
    bare: ['-e', '0'],
    check: [program, 'check', cut],
    build: [program, 'build', cut, '--output', join(out, 'c001.pdf')],
  };
  const took = { bare: [], check: [], build: [] };
  for (let round = 0; round < rounds; round++) {
    for (const [name, args] of Object.entries(runs)) {
      const start = performance.now();
      const { status, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' });
      took[name].push(performance.now() - start);
      if (status !== 0) throw new Error(`${name} gave ${status}: ${stderr}`);
    }
  }
  rmSync(out, { recursive: true });
  const bare = median(took.bare);
  report('bare node', milliseconds(bare));
  for (const [name, most] of [
    ['check', 2.5],
    ['build', 5],
  ]) {
    const own = median(took[name]);
    report(`${name}, one cut`, `${milliseconds(own)}, ${(own / bare).toFixed(2)} × bare node`, `${most} ×`);
  }
}
