/** What would change in a text, as a unified diff. */

import type { Host } from '../host/host.js';

/** Prints nothing where the texts are the same. `name` is what messages call the file. */
export async function printDiff(host: Host, name: string, before: string, after: string): Promise<void> {
  if (before === after) return;
  const { createTwoFilesPatch, FILE_HEADERS_ONLY } = await import('diff');
  host.out(
    createTwoFilesPatch(`a/${name}`, `b/${name}`, before, after, undefined, undefined, {
      context: 3,
      headerOptions: FILE_HEADERS_ONLY,
    }),
  );
}
