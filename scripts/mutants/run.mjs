/**
 * Mutation tests: `npm run mutants -- src/solve` or `-- src/solve/camera/easing.ts`. Changes the sources one operator at a time, in
 * a copy, and runs their quick twins against each change. Leaves `out/mutants/NAME.json` with every mutant, and prints those that no
 * test notices, then the score of each file. By hand, never part of the tests.
 *
 * Quick twins of a file are its own test; of a folder, all quick tests of the folder that mirrors it and of those below it, so that
 * a source may be tested through its neighbours. The golden cuts are left out: they notice nearly every change of a number, but not
 * what is right, and a test named for a behaviour is what is wanted.
 *
 * - `--sample N` tries N mutants of all, in each file in proportion, the same ones each time, and says the standard error of the score.
 * - `--seed S` chooses others: once tests have been written for what survived, only another sample tells how well the rest does.
 * - `--tests src/FOLDER` runs the twins of that folder too, so that files score as they do within it.
 * - `--within MS` leaves out tests that take longer, where a folder's tests build whole episodes: the true score is no lower.
 */

import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { sampleOf } from './sample.mjs';

const { values, positionals: paths } = parseArgs({
  options: {
    sample: { type: 'string' },
    seed: { type: 'string', default: '1' },
    tests: { type: 'string' },
    within: { type: 'string' },
  },
  allowPositionals: true,
});
const sampled = values.sample === undefined ? null : Number(values.sample);
const unknown = paths.filter((path) => !path.startsWith('src/') || !existsSync(path));
if (paths.length === 0 || unknown.length > 0 || (sampled !== null && !(sampled >= 1))) {
  console.error('npm run mutants -- [OPTIONS] src/FOLDER or src/FOLDER/FILE.ts …; the options stand in scripts/mutants/run.mjs');
  process.exit(2);
}
const name = `${paths[0].replace(/^src\/|\.ts$/g, '').replaceAll('/', '-')}${sampled ? '-sample' : ''}`;
const folder = join('out', 'mutants');
const json = join(folder, `${name}.json`);
const config = join(folder, `${name}.config.json`);
const sandbox = join(folder, `${name}.sandbox`);

/** Each mutant that was tried, a line each, as the run goes on. */
const log = resolve(folder, `${name}.jsonl`);

mkdirSync(folder, { recursive: true });
rmSync(log, { force: true });
writeFileSync(
  config,
  JSON.stringify({
    mutate: paths.map((path) => (statSync(path).isDirectory() ? `${path}/**/*.ts` : path)),
    testRunner: 'in-process',
    plugins: ['./scripts/mutants/in-process-runner.mjs'],
    // What runs while a module is loaded (tables, regular expressions of a module) cannot be switched on later.
    ignoreStatic: true,
    coverageAnalysis: 'perTest',
    ignorePatterns: ['/out', '/dist', '/types', '/grammar/pictures'],
    concurrency: 1,
    timeoutMS: 6_000,
    dryRunTimeoutMinutes: 20,
    // The progress would count as tried what a sample leaves out.
    reporters: sampled ? ['json'] : ['json', 'progress-append-only'],
    jsonReporter: { fileName: json },
    tempDirName: sandbox,
  }),
);

const { status } = spawnSync('npx', ['stryker', 'run', config], {
  stdio: 'inherit',
  env: {
    ...process.env,
    MUTANT_TESTS: [...new Set([...paths, values.tests ?? []].flat().flatMap(twinsOf))].join(','),
    MUTANT_LOG: log,
    MUTANT_SAMPLE: sampled ?? '',
    MUTANT_SEED: values.seed,
    MUTANT_WITHIN: values.within ?? '',
  },
});
rmSync(sandbox, { recursive: true, force: true });
if (status !== 0) process.exit(status ?? 1);
report();

/** Quick tests of a folder and those below it, or of one file. */
function twinsOf(path) {
  const twin = path.replace(/^src/, 'tests');
  if (!statSync(path).isDirectory()) return [twin.replace(/\.ts$/, '.test.ts')].filter(existsSync);
  return readdirSync(twin, { recursive: true })
    .filter((file) => file.endsWith('.test.ts') && !file.endsWith('.slow.test.ts'))
    .map((file) => `${twin}/${file.replaceAll('\\', '/')}`);
}

function report() {
  const noticed = new Set(['Killed', 'Timeout']);
  const rows = [];
  const files = Object.entries(JSON.parse(readFileSync(json, 'utf8')).files);
  const ids = files.map(([file, { mutants }]) => [
    file,
    mutants.map(({ id }) => id).sort((a, b) => Number(a) - Number(b)),
  ]);
  const sample = sampled && sampleOf(ids, sampled, values.seed);
  for (const [file, { mutants, source }] of files) {
    const lines = source.split('\n');
    // What does not run at all (`Ignored`: static) is no mutant.
    const all = mutants.filter(({ status }) => noticed.has(status) || /Survived|NoCoverage/.test(status));
    const tried = all.filter(({ id }) => !sample || sample.has(id));
    const alive = tried.filter(({ status }) => !noticed.has(status));
    rows.push({ file, all: all.length, tried: tried.length, alive: alive.length });
    for (const { location, replacement, status } of alive) {
      const { start, end } = location;
      const end1 = start.line === end.line ? end.column - 1 : undefined;
      const text = lines[start.line - 1].slice(start.column - 1, end1);
      console.log(
        `${file}:${start.line}:${start.column} ${status}: ${text} → ${replacement.replaceAll(/\s+/g, ' ').slice(0, 90)}`,
      );
    }
  }
  const sum = (key) => rows.reduce((all, row) => all + row[key], 0);
  rows.sort((a, b) => b.alive - a.alive);
  const total = { file: 'in all', all: sum('all'), tried: sum('tried'), alive: sum('alive') };
  for (const { file, all, tried, alive } of [...rows, total]) {
    const share = alive / Math.max(1, tried);
    const error = 100 * Math.sqrt((share * (1 - share) * (1 - tried / all)) / Math.max(1, tried));
    console.log(
      `${(100 * (1 - share)).toFixed(1).padStart(6)} %${tried < all ? ` ± ${error.toFixed(1)}` : ''}`,
      ` ${alive} of ${tried} alive${tried < all ? `, a sample of ${all}` : ''}  ${file}`,
    );
  }
}
