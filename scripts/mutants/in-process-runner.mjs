/**
 * Runs the twins of mutated sources in one process. StrykerJS's own runner for vitest starts a worker and loads all sources for each
 * mutant, some three seconds; a mutant is a branch that a global switches on, so that nothing has to be loaded again, and the tests
 * that come through a mutant take some milliseconds.
 */

import { appendFileSync, existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { INSTRUMENTER_CONSTANTS } from '@stryker-mutator/api/core';
import { declareClassPlugin, PluginKind } from '@stryker-mutator/api/plugin';
import {
  DryRunStatus,
  determineHitLimitReached,
  TestStatus,
  toMutantRunResult,
} from '@stryker-mutator/api/test-runner';
import { transform } from 'esbuild';

const state = (globalThis[INSTRUMENTER_CONSTANTS.NAMESPACE] ??= {});

/**
 * Stryker ends a loop that hits its mutant a hundred times as often as all tests together did without it, which takes minutes where
 * tests are many; ten times is a loop without end as well, and is noticed before the time limit ends the process.
 */
const LESS_HITS = 10;

class InProcessRunner {
  tests = new Map();

  capabilities() {
    // A mutant that runs into the time limit has its process ended by Stryker.
    return { reloadEnvironment: true };
  }

  /** The working directory is a copy of the repository whose sources hold the mutants. */
  async init() {
    const functions = resolve('scripts/mutants/test-functions.mjs');
    for (const path of [...sourcesIn('src'), ...sourcesIn('tests')]) await compile(path, functions);
    const { collect } = await import(pathToFileURL(functions).href);
    await import(pathToFileURL(resolve('tests/seed.setup.js')).href);
    for (const path of process.env.MUTANT_TESTS.split(',')) {
      const script = resolve(path.replace(/\.ts$/, '.js'));
      const tests = await collect(path, () => import(pathToFileURL(script).href));
      for (const test of tests) this.tests.set(test.id, test);
    }
  }

  async dryRun() {
    state.activeMutant = undefined;
    const tests = [];
    for (const test of this.tests.values()) {
      state.currentTestId = test.id;
      const result = await outcome(test);
      if (result.status === TestStatus.Success) tests.push(result);
      // It reads the sources as texts, and these are full of mutants. Or it fails without any, as the usual tests will say.
      else console.error(`left out, as it fails before anything is changed: ${test.id}`);
    }
    state.currentTestId = undefined;
    return { status: DryRunStatus.Complete, tests, mutantCoverage: state.mutantCoverage };
  }

  async mutantRun({ activeMutant, testFilter, hitLimit, disableBail }) {
    state.activeMutant = activeMutant.id;
    state.hitCount = hitLimit === undefined ? undefined : 0;
    state.hitLimit = hitLimit && Math.ceil(hitLimit / LESS_HITS);
    const tests = [];
    for (const id of testFilter ?? this.tests.keys()) {
      const result = await outcome(this.tests.get(id));
      tests.push(result);
      if (result.status === TestStatus.Failed && !disableBail) break;
    }
    const timeOut = determineHitLimitReached(state.hitCount, state.hitLimit);
    state.activeMutant = undefined;
    const result = toMutantRunResult(timeOut ?? { status: DryRunStatus.Complete, tests });
    appendFileSync(process.env.MUTANT_LOG, `${JSON.stringify({ ...activeMutant, status: result.status })}\n`);
    return result;
  }
}

async function outcome({ id, name, fileName, run }) {
  const start = performance.now();
  const result = (rest) => ({ id, name, fileName, timeSpentMs: performance.now() - start, ...rest });
  try {
    await run();
    return result({ status: TestStatus.Success });
  } catch (error) {
    return result({ status: TestStatus.Failed, failureMessage: String(error?.stack ?? error) });
  }
}

function sourcesIn(folder) {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts') && !entry.name.endsWith('.d.ts'))
    .map((entry) => join(relative('.', entry.parentPath ?? entry.path), entry.name));
}

/** Writes the script beside its source, where `import './other.js'` looks for it. Once: a process that took too long is followed by another. */
async function compile(path, functions) {
  const script = path.replace(/\.ts$/, '.js');
  if (existsSync(script)) return;
  const { code } = await transform(readFileSync(path, 'utf8'), {
    loader: 'ts',
    format: 'esm',
    target: 'node20',
    define: { CUTWRIGHT_SOURCES: JSON.stringify('mutants') },
  });
  const own = code
    .replaceAll(/from\s*"vitest"/g, `from ${JSON.stringify(pathToFileURL(functions).href)}`)
    .replace(/import \{ version \} from "[^"]*package\.json";/, 'const version = "mutants";');
  writeFileSync(script, own);
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, 'in-process', InProcessRunner)];
