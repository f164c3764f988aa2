/**
 * Runs the twins of mutated sources in one process. StrykerJS's own runner for vitest starts a worker and loads all sources for each
 * mutant, some three seconds; a mutant is a branch that a global switches on, so that nothing has to be loaded again, and the tests
 * that come through a mutant take some milliseconds.
 */

import { appendFileSync, existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { Script } from 'node:vm';
import { INSTRUMENTER_CONSTANTS } from '@stryker-mutator/api/core';
import { declareClassPlugin, PluginKind } from '@stryker-mutator/api/plugin';
import {
  DryRunStatus,
  determineHitLimitReached,
  TestStatus,
  toMutantRunResult,
} from '@stryker-mutator/api/test-runner';
import { transform } from 'esbuild';
import { sampleOf } from './sample.mjs';

const state = (globalThis[INSTRUMENTER_CONSTANTS.NAMESPACE] ??= {});

/**
 * Stryker ends a loop that hits its mutant a hundred times as often as all tests together did without it, which takes minutes where
 * tests are many; ten times is a loop without end as well, and is noticed before the time limit ends the process.
 */
const LESS_HITS = 10;

/**
 * A loop without end that never comes through its mutant again is ended by V8, which leaves the process and all that it has loaded as
 * they are. It has this long, and ten times what the test took without a mutant: the machine may be busy.
 */
const LEAST_MS = 1000;

class InProcessRunner {
  /** Fast ones first, once it is known which these are: the first that fails is the last that runs. */
  tests = new Map();

  capabilities() {
    // A mutant that runs into the time limit has its process ended by Stryker.
    return { reloadEnvironment: true };
  }

  /** The working directory is a copy of the repository whose sources hold the mutants. */
  async init() {
    const functions = resolve('scripts/mutants/test-functions.mjs');
    const count = Number(process.env.MUTANT_SAMPLE);
    if (count > 0) this.sample = sampleOf(sourcesIn('src').map(idsIn), count, process.env.MUTANT_SEED);
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
      if (result.timeSpentMs > Number(process.env.MUTANT_WITHIN || Infinity))
        console.error(`left out, as it takes ${Math.round(result.timeSpentMs)} ms: ${test.id}`);
      else if (result.status === TestStatus.Success) tests.push(result);
      // It reads the sources as texts, and these are full of mutants. Or it fails without any, as the usual tests will say.
      else console.error(`left out, as it fails before anything is changed: ${test.id}`);
    }
    state.currentTestId = undefined;
    this.ms = new Map(tests.map(({ id, timeSpentMs }) => [id, timeSpentMs]));
    return { status: DryRunStatus.Complete, tests, mutantCoverage: state.mutantCoverage };
  }

  async mutantRun({ activeMutant, testFilter, hitLimit, disableBail }) {
    // The report leaves it out.
    if (this.sample && !this.sample.has(activeMutant.id))
      return toMutantRunResult({ status: DryRunStatus.Complete, tests: [] });
    state.activeMutant = activeMutant.id;
    state.hitCount = hitLimit === undefined ? undefined : 0;
    state.hitLimit = hitLimit && Math.ceil(hitLimit / LESS_HITS);
    const tests = [];
    const took = (id) => this.ms?.get(id) ?? 0;
    const ids = [...(testFilter ?? this.tests.keys())].sort((a, b) => took(a) - took(b));
    let timeOut;
    for (const id of ids) {
      const result = await outcome(this.tests.get(id), LEAST_MS + Math.ceil(10 * took(id)));
      if (result === 'endless') timeOut = { status: DryRunStatus.Timeout, reason: 'endless' };
      else tests.push(result);
      if (result === 'endless' || (result.status === TestStatus.Failed && !disableBail)) break;
    }
    timeOut ??= determineHitLimitReached(state.hitCount, state.hitLimit);
    state.activeMutant = undefined;
    const result = toMutantRunResult(timeOut ?? { status: DryRunStatus.Complete, tests });
    appendFileSync(process.env.MUTANT_LOG, `${JSON.stringify({ ...activeMutant, status: result.status })}\n`);
    return result;
  }
}

const call = new Script('globalThis.bodyOfTest()');

async function outcome({ id, name, fileName, run }, timeout) {
  const start = performance.now();
  const result = (rest) => ({ id, name, fileName, timeSpentMs: performance.now() - start, ...rest });
  const within = (body) => {
    globalThis.bodyOfTest = body;
    return call.runInThisContext({ timeout });
  };
  try {
    await run(within);
    return result({ status: TestStatus.Success });
  } catch (error) {
    if (error?.code === 'ERR_SCRIPT_EXECUTION_TIMEOUT') return 'endless';
    return result({ status: TestStatus.Failed, failureMessage: String(error?.stack ?? error) });
  }
}

function sourcesIn(folder) {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts') && !entry.name.endsWith('.d.ts'))
    .map((entry) => join(relative('.', entry.parentPath ?? entry.path), entry.name));
}

/** Every mutant of a source, in order: a number in a string, with which the code asks whether it is the one. */
function idsIn(path) {
  const found = readFileSync(path, 'utf8').matchAll(/stryMutAct_\w+\("(\d+)"\)/g);
  const ids = [...new Set([...found].map(([, id]) => id))];
  return [path.replaceAll('\\', '/'), ids.sort((a, b) => Number(a) - Number(b))];
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
