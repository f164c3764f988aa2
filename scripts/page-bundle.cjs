const { join } = require('node:path');

const root = join(__dirname, '..');
let made = null;

/** What the live view's page takes from typed sources, as one module for browsers: for what is shipped, and for sources that run unbundled. */
exports.pageBundle = function pageBundle() {
  made ??= require('esbuild').buildSync({
    absWorkingDir: root,
    entryPoints: ['src/preview/page/page-modules.ts'],
    bundle: true,
    write: false,
    platform: 'browser',
    format: 'esm',
    target: 'es2022',
    minify: true,
    tsconfigRaw: {},
    logLevel: 'warning',
  }).outputFiles[0].contents;
  return made;
};
