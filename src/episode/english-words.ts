/** How English words are pronounced. The dictionary takes time to load, so it is loaded once a process, when a word is first asked for. */

import type { Host } from '../host/host.js';
import { englishDictionary } from '../sound/english-dictionary.js';
import type { Dictionary } from '../sound/pronunciation.js';

/** By where it comes from. */
const loaded = new WeakMap<Host['englishWords'], Dictionary>();

/** Where the dictionary cannot be read, no word is known, so that words are read by their spelling. */
export function dictionaryOf({ englishWords }: Pick<Host, 'englishWords'>): Dictionary {
  return (word) => {
    let dictionary = loaded.get(englishWords);
    if (!dictionary) {
      const words = englishWords();
      dictionary = words.ok ? englishDictionary(words.value) : () => null;
      loaded.set(englishWords, dictionary);
    }
    return dictionary(word);
  };
}
