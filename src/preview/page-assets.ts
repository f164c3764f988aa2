/** The files of the page itself: beside the sources, and beside the bundle. */

import { readFileSync } from 'node:fs';

export interface Asset {
  readonly type: string;
  readonly bytes: Uint8Array;
}

const TYPES: Readonly<Record<string, string>> = {
  html: 'text/html; charset=utf-8',
  css: 'text/css; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
};

/** By their ways. Throws where the installation has lost one. */
export function pageAssets(): ReadonlyMap<string, Asset> {
  const ways = [
    ['', 'live.html'],
    ['live.css', 'live.css'],
    ['live.js', 'live.js'],
  ] as const;
  return new Map(
    ways.map(([way, name]) => {
      const bytes = readFileSync(new URL(`page/${name}`, import.meta.url));
      return [way, { type: TYPES[name.slice(name.lastIndexOf('.') + 1)]!, bytes }];
    }),
  );
}
