/**
 * Mutation tests: `npm run mutants -- src/solve` or `-- src/solve/camera/easing.ts`. Changes the sources one operator at a time, in
 * a copy, and runs their quick twins against each change. Leaves `out/mutants/NAME.json` with every mutant, and prints those that no
 * test notices, then the score of each file. By hand, never part of the tests.
 */

import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

const paths = process.argv.slice(2);
if (paths.length === 0 || paths.some((path) => !path.startsWith('src/') || !existsSync(path))) {
  console.error('npm run mutants -- src/FOLDER or src/FOLDER/FILE.ts …');
  process.exit(2);
}
const name = paths[0].replace(/^src\/|\.ts$/g, '').replaceAll('/', '-');
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
    reporters: ['json', 'progress-append-only'],
    jsonReporter: { fileName: json },
    tempDirName: sandbox,
  }),
);

const { status } = spawnSync('npx', ['stryker', 'run', config], {
  stdio: 'inherit',
  env: { ...process.env, MUTANT_TESTS: paths.flatMap(twinsOf).join(','), MUTANT_LOG: log },
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
  for (const [file, { mutants, source }] of Object.entries(JSON.parse(readFileSync(json, 'utf8')).files)) {
    const lines = source.split('\n');
    // What does not run at all (`Ignored`: static) is no mutant.
    const tried = mutants.filter(({ status }) => noticed.has(status) || /Survived|NoCoverage/.test(status));
    const alive = tried.filter(({ status }) => !noticed.has(status));
    rows.push({ file, tried: tried.length, alive: alive.length });
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
  for (const { file, tried, alive } of [
    ...rows,
    { file: 'in all', tried: sum('tried'), alive: sum('alive') },
  ])
    console.log(
      `${(100 * (1 - alive / Math.max(1, tried))).toFixed(1).padStart(6)} %  ${alive} of ${tried} alive  ${file}`,
    );
}
