#!/usr/bin/env node
/** The oldest Node that the program runs on, as in package.json. Up to here this file has to be read by far older ones. */
const OLDEST = 20;

if (Number.parseInt(process.versions.node, 10) < OLDEST) {
  process.stderr.write(`cutwright needs Node ${OLDEST} or newer; this is Node ${process.versions.node}\n`);
  process.exitCode = 2;
} else {
  run();
}

function run() {
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
}
