/** `check` and `build` of one cut, against a Node that does nothing: runs take turns, medians are compared. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { median, milliseconds, ratios, report, runInTurns } from './measure.mjs';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));

export function startup(rounds = 25) {
  const program = here('../../bin/cutwright.js');
  const cut = here('../../examples/saltmarsh/cuts/c001.cut');
  const out = mkdtempSync(join(tmpdir(), 'cutwright-bench-'));
  const { bare, check, build } = runInTurns(
    {
      bare: ['-e', '0'],
      check: [program, 'check', cut],
      build: [program, 'build', cut, '--output', join(out, 'c001.pdf')],
    },
    rounds,
  );
  rmSync(out, { recursive: true });
  report('bare node', milliseconds(1000 * median(bare.map(({ wall }) => wall))));
  report('check, one cut', ratios(check, bare, 'bare node'), '1.9 ×');
  report('build, one cut', ratios(build, bare, 'bare node'), '2.8 ×');
}

if (process.argv[1] === fileURLToPath(import.meta.url)) startup();
