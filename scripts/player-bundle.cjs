const { join } = require('node:path');

const root = join(__dirname, '..');
let made = null;

/** The player of the live view for browsers, as one module: for what is shipped, and for sources that run unbundled. */
exports.playerBundle = function playerBundle() {
  made ??= require('esbuild').buildSync({
    absWorkingDir: root,
    entryPoints: ['src/preview/page/player.ts'],
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
