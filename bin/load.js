const { readFileSync } = require('node:fs');
const { join } = require('node:path');
const vm = require('node:vm');

/** What these commands run is compiled ahead in `print.cache`; for all others `read.cache` is enough, and quicker to load. */
const PRINTING = new Set(['build', 'blank', 'watch']);

/**
 * Runs the bundle in a folder and gives what it exports, with its script. Beside it lie V8's own code caches, made by the build
 * after a check and after a print: what is compiled there need not be compiled again, which halves the start. V8 refuses a
 * cache that another version of Node has made, and compiles as usual.
 */
exports.load = (folder, command) => {
  const filename = join(folder, 'cutwright.cjs');
  const source = readFileSync(filename, 'latin1');
  let cachedData;
  try {
    cachedData = readFileSync(join(folder, PRINTING.has(command) ? 'print.cache' : 'read.cache'));
  } catch {}
  const script = new vm.Script(`(function (exports, require, module, __filename) {${source}\n})`, {
    filename,
    cachedData,
  });
  const bundle = { exports: {} };
  script.runInThisContext()(bundle.exports, require, bundle, filename);
  return { script, program: bundle.exports };
};
