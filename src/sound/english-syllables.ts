/**
 * Where a word may be cut: its spelling, divided into as many syllables as are spoken. Rules of division as in English hyphenation:
 * a consonant between two vowels goes with the second, of several the last one, with an l or r behind it; common practice.
 */

/** Letters that stand for one consonant, or are begun together. */
const TOGETHER =
  /(?:ch|gh|kn|ph|sh|th|wh|wr|b[lr]|c[lr]|d[rw]|f[lr]|g[lr]|k[lr]|p[lr]|qu|s[kptw](?=$)|t[rw]|thr|shr|chr)$/;
/** Two vowels that are hardly ever one, then those that often are. */
const APART = [/ao|eo|ia|io|iu|ua|uo|yi|ya|ye|yo/, /ea|ie|ue|ui|oe|ei|oi|ae|eu/] as const;

interface Letters {
  readonly start: number;
  readonly end: number;
}

/**
 * UTF-16 offsets at which the syllables of a word begin, the first at 0; that one alone where its spelling does not show so many
 * as are spoken.
 */
export function syllableStarts(word: string, spoken: number): number[] {
  const letters = word.split('').map(bare).join('');
  if (spoken < 2 || !/^[a-z'’]+$/.test(letters)) return [0];
  const known = COMPOUNDS.get(letters);
  if (known?.length === spoken) return [...known];
  const written = [vowelsOf(letters, false), vowelsOf(letters, true)];
  // Behind a vowel and a consonant the last e is silent, even where the number would be right with it: create, anyone.
  const silent = /[aeiouy][^aeiouy]e$/.test(letters) && written[0]!.length === spoken;
  const tries = [...(silent ? written.map((vowels) => vowels.slice(0, -1)) : []), ...written];
  for (const one of tries) {
    const vowels = asMany(one, letters, spoken);
    if (vowels)
      return vowels.map(({ start }, i) => (i === 0 ? 0 : onset(letters, vowels[i - 1]!.end, start)));
  }
  return [0];
}

/** Words that are cut between the two that they are made of. */
const COMPOUNDS: ReadonlyMap<string, readonly number[]> = new Map([
  ['someone', [0, 4]],
  ['everyone', [0, 3, 5]],
]);

/** A letter without its accents, one for one. */
const bare = (letter: string): string => letter.normalize('NFD')[0]!.toLowerCase();

/** The u of qu is a consonant, and so is a y before a vowel, unless it `isVowel` as in anyone. */
function vowelsOf(letters: string, isVowel: boolean): Letters[] {
  const vowel = `(?:(?<!q)u|[aeio]|y${isVowel ? '' : '(?![aeiou])'})`;
  return [...letters.matchAll(new RegExp(`${vowel}+`, 'g'))].map(({ 0: found, index }) => ({
    start: index,
    end: index + found.length,
  }));
}

/** Without what is silent where there are too many, divided where there are too few; null: neither will do. */
function asMany(vowels: readonly Letters[], letters: string, spoken: number): readonly Letters[] | null {
  if (vowels.length === spoken) return vowels;
  if (vowels.length > spoken) {
    const silent = silentE(vowels, letters);
    return silent < 0 ? null : asMany(vowels.toSpliced(silent, 1), letters, spoken);
  }
  for (const pairs of APART)
    for (const [i, { start, end }] of vowels.entries()) {
      const pair = pairs.exec(letters.slice(start, end));
      if (!pair) continue;
      const cut = start + pair.index + 1;
      return asMany(vowels.toSpliced(i, 1, { start, end: cut }, { start: cut, end }), letters, spoken);
    }
  return null;
}

/** The e that is least likely to be heard: at the end, in `-es` and `-ed`, then between consonants. */
function silentE(vowels: readonly Letters[], letters: string): number {
  const e = vowels.map(({ start, end }, i) => i > 0 && end - start === 1 && letters[start] === 'e');
  const last = e.length - 1;
  if (e[last] && /^(?:[sd]|['’]s)?$/.test(letters.slice(vowels[last]!.end))) return last;
  return e.findIndex((one, i) => one && i < last);
}

/** Where the syllable of the vowel at `next` begins, behind one that ends at `end`. */
function onset(letters: string, end: number, next: number): number {
  const silent = letters.lastIndexOf('e', next - 1);
  if (silent >= end && silent < next - 1) return silent + 1;
  const between = letters.slice(end, next);
  if (between.length < 2) return between === 'x' ? next : end;
  if (between === 'ck') return next;
  const together = TOGETHER.exec(between)?.[0].length ?? 1;
  return next - together;
}
