/**
 * `describe`, `test`, `expect` and the hooks as the twins use them, without the processes and pages of the usual runner: tests are
 * collected once and then called again and again, in the process that holds the mutated sources.
 */

import {
  ASYMMETRIC_MATCHERS_OBJECT,
  customMatchers,
  GLOBAL_EXPECT,
  getState,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
  setState,
} from '@vitest/expect';
import * as chai from 'chai';

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);

export const expect = (value, message) => {
  setState({ assertionCalls: getState(expect).assertionCalls + 1 }, expect);
  return chai.expect(value, message);
};
Object.assign(expect, chai.expect, globalThis[ASYMMETRIC_MATCHERS_OBJECT]);
setState({ assertionCalls: 0 }, expect);
expect.extend = (matchers) => chai.expect.extend(expect, matchers);
expect.extend(customMatchers);
Object.defineProperty(globalThis, GLOBAL_EXPECT, { value: expect, writable: true, configurable: true });

/** A folder of tests: a file, or what stands in a `describe`. */
class Suite {
  beforeAll = [];
  beforeEach = [];
  afterEach = [];
  prepared = false;
  constructor(name, parent) {
    this.name = name;
    this.parent = parent;
  }
}

let suite;
let collected;

/** Tests of a file, in order: `{ id, name, fileName, run }`; `run` gives the body of the test to a function that calls it. */
export async function collect(fileName, load) {
  suite = new Suite(fileName, null);
  collected = [];
  await load();
  return collected.map(({ name, within, body }, i) => ({
    id: `${fileName}#${i} ${name}`,
    name,
    fileName,
    run: (call) => runTest(within, () => call(body)),
  }));
}

async function runTest(within, body) {
  const path = [];
  for (let one = within; one; one = one.parent) path.unshift(one);
  for (const one of path) {
    if (!one.prepared) for (const hook of one.beforeAll) await hook();
    one.prepared = true;
  }
  for (const one of path) for (const hook of one.beforeEach) await hook();
  try {
    await body();
  } finally {
    for (const one of path) for (const hook of one.afterEach) await hook();
  }
}

const inSuites = (name) => {
  const names = [name];
  for (let one = suite; one?.parent; one = one.parent) names.unshift(one.name);
  return names.join(' › ');
};

const functionOf = (args) => args.find((arg) => typeof arg === 'function');

/** `each` of a function `(name, …, body)`: a row that is an array gives the arguments, anything else is the argument. */
function withEach(define) {
  const each =
    (rows) =>
    (name, ...rest) => {
      rows.forEach((row, i) => {
        const args = Array.isArray(row) ? row : [row];
        define(`${name} [${i}]`, () => functionOf(rest)(...args));
      });
    };
  const nothing = Object.assign(() => {}, { each: () => () => {} });
  return Object.assign(define, {
    each,
    skip: nothing,
    skipIf: (skip) => (skip ? nothing : define),
    runIf: (run) => (run ? define : nothing),
  });
}

export const test = withEach((name, ...rest) => {
  collected.push({ name: inSuites(name), within: suite, body: functionOf(rest) });
});
export const it = test;

export const describe = withEach((name, ...rest) => {
  const outer = suite;
  suite = new Suite(name, outer);
  functionOf(rest)();
  suite = outer;
});

export const beforeAll = (hook) => suite.beforeAll.push(hook);
export const beforeEach = (hook) => suite.beforeEach.push(hook);
export const afterEach = (hook) => suite.afterEach.push(hook);
/** The copy is thrown away as a whole. */
export const afterAll = () => {};
