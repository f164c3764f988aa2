/** A change as one sentence of a retake note, in the two languages of a sheet. */

import type { Change, ChangeOf } from './change.js';
import { en } from './en/index.js';
import { ja } from './ja/index.js';
import type { Telling } from './telling.js';

export { type Telling, telling } from './telling.js';

/** One way to say each kind of change. */
export type Sentences = { readonly [K in Change['kind']]: (change: ChangeOf<K>, t: Telling) => string };

/** No full stop at its end; one line. */
export function sentence(change: Change, t: Telling): string {
  const say = (t.language === 'ja' ? ja : en)[change.kind] as (change: Change, t: Telling) => string;
  return say(change, t)
    .replace(/\s*\n\s*/g, ' ')
    .replace(/\p{Cc}/gu, '?');
}
