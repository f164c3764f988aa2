/**
 * Whole episodes as the program's own processes: a full build, a build with nothing changed, and one after an edit of one cut;
 * time and peak memory, and what ten times the cuts cost. Run by itself (after `npm run build`), or `measureEpisodes` from
 * another bench.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { writeEpisode } from './generated.mjs';
import { ratios, report, runInTurns } from './measure.mjs';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const PROGRAM = here('../../bin/cutwright.js');

const run = (args) => runInTurns({ own: [PROGRAM, ...args] }).own[0];

/** Lets a cut's first level begin two frames later. */
function edit(path) {
  const text = readFileSync(path, 'utf8');
  const edited = text.replace(/^(A .*: )(.*)$/m, '$1x:2 $2');
  if (edited === text) throw new Error(`${path} has no level A`);
  writeFileSync(path, edited);
}

function measure(folder, cuts) {
  const episode = writeEpisode(folder, { cuts });
  const out = join(folder, 'out');
  const build = ['build', folder, '--output', out];
  const again = [...build, '--changed'];
  const full = run(build);
  const nothing = run(again);
  // One that lends nothing, so that it alone is printed again.
  const lenders = new Set(episode.cuts.flatMap(({ reuses }) => reuses.map(({ cut }) => cut)));
  const plain = episode.cuts.find(
    ({ number, text }, i) => i > cuts / 2 && !lenders.has(number) && /^A .*: \d/m.test(text),
  );
  edit(join(folder, plain.file));
  const one = run(again);
  return { full, nothing, one };
}

const WHAT = {
  full: 'full build',
  nothing: 'build --changed, nothing changed',
  one: 'build --changed, one cut edited',
};

function tell(cuts, figures) {
  for (const [name, { wall, seconds, peakMb, said }] of Object.entries(figures)) {
    const pages = said.match(/(\d+) pages?/)?.[1];
    const share =
      name === 'full'
        ? `${pages} pages`
        : `${((100 * seconds) / figures.full.seconds).toFixed(0)} % of the full build`;
    report(
      `${cuts} cuts, ${WHAT[name]}`,
      `${wall.toFixed(2)} s, ${seconds.toFixed(2)} s of a processor, ${share}, at most ${peakMb.toFixed(0)} MB`,
    );
  }
}

/** `many`: also 3,000 cuts, some two minutes more. */
export function measureEpisodes({ many = true } = {}) {
  const work = mkdtempSync(join(tmpdir(), 'cutwright-bench-'));
  try {
    const few = measure(join(work, 'few'), 300);
    tell(300, few);
    report(
      '300 cuts, build --changed, nothing changed',
      ratios([few.nothing], runInTurns({ bare: ['-e', '0'] }, 7).bare, 'bare node'),
      '4 ×',
    );
    if (!many) return;
    const lots = measure(join(work, 'lots'), 3000);
    tell(3000, lots);
    for (const name of Object.keys(few)) {
      const time = lots[name].seconds / few[name].seconds;
      const memory = lots[name].peakMb / few[name].peakMb;
      report(
        `ten times the cuts, ${WHAT[name]}`,
        `${time.toFixed(1)} × the time, ${memory.toFixed(2)} × the memory`,
        '10 ×, hardly more',
      );
    }
  } finally {
    rmSync(work, { recursive: true, force: true });
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  measureEpisodes({ many: !process.argv.includes('--quick') });
}
