/** The demo episode in a world in memory. */

import { readdirSync, readFileSync } from 'node:fs';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';

const FOLDER = 'examples/saltmarsh';

export function demoFiles(): Record<string, string> {
  const names = readdirSync(FOLDER, { recursive: true, encoding: 'utf8' });
  const texts = names.filter((name) => /\.(cut|yaml|csv)$/.test(name));
  return Object.fromEntries(texts.map((name) => [name, readFileSync(`${FOLDER}/${name}`, 'utf8')]));
}

/** Its folder is the current one. */
export function demoWorld(change: Readonly<Record<string, string>> = {}): MemoryHost {
  return memoryHost({ ...demoFiles(), ...change });
}
