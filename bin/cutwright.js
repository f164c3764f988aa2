#!/usr/bin/env node
const { existsSync } = require('node:fs');
const { join } = require('node:path');
const { load } = require('./load.js');

const folder = join(__dirname, '../dist');
if (existsSync(folder)) {
  const argv = process.argv.slice(2);
  const { main, nodeHost } = load(folder, argv[0]).program;
  main(argv, nodeHost()).then((status) => {
    process.exitCode = status;
  });
} else {
  process.stderr.write('cutwright is not built yet; in its folder, run: npm run build\n');
  process.exitCode = 2;
}
