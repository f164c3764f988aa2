#!/usr/bin/env node
import { existsSync } from 'node:fs';

const program = new URL('../dist/cutwright.js', import.meta.url);
if (existsSync(program)) {
  const [{ main }, { nodeHost }] = await Promise.all([import(program), import(new URL('host.js', program))]);
  process.exitCode = await main(process.argv.slice(2), nodeHost());
} else {
  console.error('cutwright is not built yet; in its folder, run: npm run build');
  process.exitCode = 2;
}
