/** The files of the page itself, by their ways. */

const TYPES = {
  html: 'text/html; charset=utf-8',
  css: 'text/css; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
} as const;

export interface Asset {
  readonly type: string;
  readonly bytes: Uint8Array;
}

const WAYS = { '': 'live.html', 'live.css': 'live.css', 'live.js': 'live.js' } as const;

export type PageFile = (typeof WAYS)[keyof typeof WAYS];

/** `read` throws where the installation has lost one. */
export function pageAssets(read: (name: PageFile) => Uint8Array): ReadonlyMap<string, Asset> {
  return new Map(
    Object.entries(WAYS).map(([way, name]) => {
      const ending = name.slice(name.lastIndexOf('.') + 1) as keyof typeof TYPES;
      return [way, { type: TYPES[ending], bytes: read(name) }];
    }),
  );
}
