/** Did-you-mean. */

/** Damerau-Levenshtein distance (optimal string alignment: two swapped neighbours cost 1), or `limit + 1` when it is more than `limit`. */
export function distance(a: readonly string[], b: readonly string[], limit: number): number {
  if (Math.abs(a.length - b.length) > limit) return limit + 1;
  let before: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = above[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      let least = Math.min(change, above[j]! + 1, row[j - 1]! + 1);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        least = Math.min(least, before[j - 2]! + 1);
      }
      row.push(least);
    }
    before = above;
    above = row;
  }
  return Math.min(above[b.length]!, limit + 1);
}

/** Slips allowed for a word of so many characters: guesses for short words would be noise. */
function allowed(length: number): number {
  if (length < 3) return 0;
  return length < 6 ? 1 : 2;
}

/**
 * The candidate that was most likely meant, or undefined where none is near enough. A word that differs in case only is always
 * near. Of two equally near ones the first wins.
 */
export function nearest(word: string, candidates: Iterable<string>): string | undefined {
  const typed = [...word.normalize('NFC').toLowerCase()];
  if (typed.length > 64) return undefined;
  let best: string | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const candidate of candidates) {
    if (candidate === word) continue;
    const meant = [...candidate.normalize('NFC').toLowerCase()];
    const limit = allowed(Math.max(typed.length, meant.length));
    const far = distance(typed, meant, limit);
    if (far <= limit && far < least) {
      best = candidate;
      least = far;
    }
  }
  return best;
}

// ----
// Did-you-mean with an end: a guess looks at every name, and a text with ten thousand slips is not helped by the last of them.

const MOST = 40;

export type Guess = (word: string, names: Iterable<string>) => string | undefined;

export function makeGuess(): Guess {
  let made = 0;
  return (word, names) => (made++ < MOST ? nearest(word, names) : undefined);
}
