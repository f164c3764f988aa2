/** Did-you-mean with an end: a guess looks at every name, and a text with ten thousand slips is not helped by the last of them. */

import { nearest } from '../language/suggest.js';

const MOST = 40;

export type Guess = (word: string, names: Iterable<string>) => string | undefined;

export function makeGuess(): Guess {
  let made = 0;
  return (word, names) => (made++ < MOST ? nearest(word, names) : undefined);
}
