/** The CMU Pronouncing Dictionary (Carnegie Mellon University, 0.7b) as it is shipped: `WORD SOUNDS` a line, looked up without reading it all. */

import type { Dictionary } from './pronunciation.js';

export function englishDictionary(text: string): Dictionary {
  const known = new Map<string, string | null>();
  return (word) => {
    const before = known.get(word);
    if (before !== undefined) return before;
    const at = text.indexOf(`\n${word} `);
    const start = at + word.length + 2;
    const found = at < 0 ? null : text.slice(start, text.indexOf('\n', start));
    known.set(word, found);
    return found;
  };
}
