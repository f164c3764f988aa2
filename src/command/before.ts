/** What a cut was printed as before: at the last build, or at a revision. */

import type { PrintedPage, PrintRecord } from '../episode/record.js';
import { readRecord } from '../episode/record.js';
import type { Host } from '../host/host.js';
import { privateWords } from '../print/private.js';
import { type Difference, differences } from './changed.js';
import type { Copy, Laid, Press } from './press.js';

/** An earlier print of a cut. */
export interface Before {
  readonly input: string;
  /** Whether it lacks no page. `pile`: pages of an earlier pile count. */
  whole(pile: boolean): boolean;
  pages(): readonly PrintedPage[];
}

/** Or why there is none to compare with, as it is said of a cut's pages: `new`. */
export type Earlier = Before | { readonly none: string };

/** A cut that is to be printed, because it differs. `first`: why there was nothing to compare with. */
export interface Differing {
  readonly laid: Laid;
  readonly difference: Difference;
  readonly first: string | null;
}

/**
 * Null: the cut prints what it did before. Lays nothing out where it is made of the same. `plain`: without what is marked as
 * changed, where that is not to count as a difference.
 */
export function weigh(
  press: Press,
  copy: Copy,
  earlier: Earlier,
  pile: boolean,
  plain = copy,
): Differing | null {
  if ('none' in earlier) {
    const laid = press.lay(copy);
    return { laid, difference: differences([], laid.pages), first: earlier.none };
  }
  if (earlier.input === plain.input && earlier.whole(pile)) return null;
  const laid = press.lay(plain);
  const difference = differences(earlier.pages(), laid.pages);
  const same = difference.pages.length === 0 && difference.gone.length === 0;
  if (same && earlier.whole(pile)) return null;
  return { laid: plain === copy ? laid : press.lay(copy), difference, first: same ? NOT_ALL : null };
}

/** The print of a cut that a record tells of. */
export function recorded({ input, pages }: PrintRecord['cuts'][number]): Before {
  return {
    input,
    whole: (pile) => pages.every(({ hash, here }) => hash !== null && (pile || here)),
    pages: () => pages,
  };
}

const NOT_ALL = 'as the file did not hold all';
export const NOT_PRINTED = 'not printed before';

/** What the file at a path tells of itself; or `none`. */
export function readBack(host: Host, path: string): PrintRecord | { readonly none: string } {
  const words = privateWords((most) => {
    const end = host.readEnd(path, most);
    return end.ok ? end.value : null;
  });
  const record = words === null ? null : readRecord(words);
  if (record) return record;
  return { none: host.kind(path) === 'none' ? NOT_PRINTED : 'as the file there is no print to compare with' };
}
