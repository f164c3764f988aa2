/** Lists of what is shown, by names of a language. */

import type { SeenThing, Shown } from '../compare/change.js';

/** What one thing, and a run of in-betweens, are called in a language. */
export interface Naming {
  one(it: SeenThing): string;
  /** An in-between by the keys that it lies between. */
  full(it: Extract<SeenThing, { form: 'drawing' }>): string;
  betweens(count: number): string;
  /** So many things that their ends must do. */
  ends(first: string, last: string, count: number): string;
  readonly comma: string;
}

const MOST_NAMED = 6;

/** The things of a list by name; where there are far too many, its ends. */
export function listOf(shown: readonly Shown[], naming: Naming): string {
  return listed(
    shown.map(({ seen }) => naming.one(seen)),
    shown.length,
    naming,
  );
}

/**
 * Two lists of which one stands in the other's place: in-betweens by their count, which is what differs; where that is the same,
 * by name, and two of one name by the keys that they lead to.
 */
export function listsOf(
  now: readonly Shown[],
  old: readonly Shown[],
  naming: Naming,
): [now: string, old: string] {
  const counted = [now, old].map((shown) => {
    const names: string[] = [];
    let betweens = 0;
    for (const seen of [...shown.map((one) => one.seen), null]) {
      if (seen?.form === 'drawing' && seen.kind !== 'key') {
        betweens += 1;
        continue;
      }
      if (betweens > 0) names.push(naming.betweens(betweens));
      betweens = 0;
      if (seen) names.push(naming.one(seen));
    }
    return listed(names, shown.length, naming);
  }) as [string, string];
  if (counted[0] !== counted[1]) return counted;
  const full = (shown: readonly Shown[], others: readonly Shown[]) => {
    const twins = new Set(others.map(({ seen }) => naming.one(seen)));
    const names = shown.map(({ seen }) =>
      seen.form === 'drawing' && seen.way && twins.has(naming.one(seen))
        ? naming.full(seen)
        : naming.one(seen),
    );
    return listed(names, shown.length, naming);
  };
  return [full(now, old), full(old, now)];
}

function listed(names: readonly string[], count: number, { comma, ends }: Naming): string {
  return names.length > MOST_NAMED ? ends(names[0]!, names.at(-1)!, count) : names.join(comma);
}
