/** Where words or characters stand that are set one below the other, each as near as there is room to the row on which it is spoken. */

export interface WantedPlace {
  /** Where its top is wanted, mm down the page; never above that of the one before. */
  readonly top: number;
  readonly height: number;
}

/** The top of each, in order: where it is wanted, else below the one before, and none past `end`. Null where they have no room. */
export function placesDown(wanted: readonly WantedPlace[], end: number): number[] | null {
  const tops: number[] = [];
  let free = -Infinity;
  for (const { top, height } of wanted) {
    tops.push(Math.max(top, free));
    free = tops.at(-1)! + height;
  }
  let below = end;
  for (let i = wanted.length - 1; i >= 0; i--) {
    tops[i] = Math.min(tops[i]!, below - wanted[i]!.height);
    below = tops[i]!;
  }
  return wanted.length > 0 && tops[0]! < wanted[0]!.top - 1e-9 ? null : tops;
}
