/**
 * Kana → morae → sounds. One mora each: a kana, with a small ゃゅょ or small vowel joined to the one before; っ, ん and ー count one
 * (Tokyo University of Foreign Studies, coelang.tufs.ac.jp, 拍).
 */

import type { ExpectedSound, SpokenWord } from './pronunciation.js';
import { JAPANESE_SOUNDS } from './speech-sounds.js';

export const isJapanese = (text: string): boolean =>
  /[\u3040-\u30ff\u3400-\u9fff\u3005\u3006\u300a\uff66-\uff9f]/u.test(text);

/** What is read of one run without blanks; `at`: its place in the text. */
export function japanesePhrases(
  typed: string,
  at: number,
): {
  words: Omit<SpokenWord, 'language' | 'pause'>[];
  unread: { start: number; end: number; text: string }[];
} {
  const { kana, unread } = readings(typed, at);
  if (kana.length === 0) return { words: [], unread };
  const morae = moraeOf(kana);
  const sounds = morae.flatMap((mora, beat): ExpectedSound[] =>
    mora.sounds.map((name) => {
      const { kind, seconds } = JAPANESE_SOUNDS.get(name)!;
      return { sound: name, kind, seconds: mora.long ? LONG_SECONDS : seconds, beat, stressed: false };
    }),
  );
  const word = {
    start: at,
    end: at + typed.length,
    sounds,
    beats: morae.length,
    beatStarts: morae.map(({ start }) => start),
  };
  return { words: [word], unread };
}

/** A vowel that ー makes longer goes on for a mora. */
const LONG_SECONDS = 0.12;

interface Kana {
  readonly character: string;
  readonly start: number;
}

const KANJI = /[\u3400-\u9fff\u3005\u3006\u30f6]/u;

/** The kana of a run, each with its place: of kanji those of the ruby behind them. */
function readings(
  text: string,
  at: number,
): { kana: Kana[]; unread: { start: number; end: number; text: string }[] } {
  // Between kanji, は and へ are the particles; of one length with what was typed.
  const typed = text.replace(/(?<=\u300b)[\u306f\u3078](?=[\u3400-\u9fff\uff5c|])/gu, (one) =>
    one === 'は' ? 'わ' : 'え',
  );
  const kana: Kana[] = [];
  const unread: { start: number; end: number; text: string }[] = [];
  const ruby =
    /(?:[\uff5c|]([^\u300a\u300b\uff5c|]+)|([\u3400-\u9fff\u3005\u3006\u30f6]+))\u300a([^\u300a\u300b]*)\u300b/gu;
  let from = 0;
  const plain = (text: string, start: number): void => {
    let lost = '';
    let lostAt = 0;
    const close = (): void => {
      if (lost !== '') unread.push({ start: at + lostAt, end: at + lostAt + lost.length, text: lost });
      lost = '';
    };
    let offset = start;
    for (const [character] of text.matchAll(/.[\u3099\u309a\uff9e\uff9f]?/gsu)) {
      if (KANJI.test(character) || /[\p{N}\p{Script=Latin}]/u.test(character)) {
        if (lost === '') lostAt = offset;
        lost += character;
      } else {
        close();
        for (const one of hiragana(character)) kana.push({ character: one, start: at + offset });
      }
      offset += character.length;
    }
    close();
  };
  for (const match of typed.matchAll(ruby)) {
    plain(typed.slice(from, match.index), from);
    for (const one of hiragana(match[3]!)) kana.push({ character: one, start: at + match.index });
    from = match.index + match[0].length;
  }
  plain(typed.slice(from), from);
  return { kana: particles(kana), unread };
}

/** Half-width forms and katakana as hiragana; what is no kana is dropped. */
function hiragana(text: string): string[] {
  return [...text.normalize('NFKC').normalize('NFC')].flatMap((character) => {
    if (character === 'ー') return [character];
    const code = character.codePointAt(0)!;
    if (code >= 0x30a1 && code <= 0x30f4) return [String.fromCodePoint(code - 0x60)];
    return code >= 0x3041 && code <= 0x3096 ? [character] : [];
  });
}

/** は and へ at the end of a phrase are the particles, read as わ and え. */
function particles(kana: Kana[]): Kana[] {
  const last = kana.at(-1);
  if (!last || kana.length < 2) return kana;
  const read = last.character === 'は' ? 'わ' : last.character === 'へ' ? 'え' : last.character;
  return [...kana.slice(0, -1), { ...last, character: read }];
}

interface Mora {
  readonly sounds: readonly string[];
  readonly start: number;
  /** ー, or a vowel that is the one before again. */
  readonly long: boolean;
}

const ROWS: readonly (readonly [consonant: string, kana: string])[] = [
  ['', 'あいうえお'],
  ['k', 'かきくけこ'],
  ['g', 'がぎぐげご'],
  ['s', 'さ すせそ'],
  ['z', 'ざ ずぜぞ'],
  ['t', 'た  てと'],
  ['d', 'だ  でど'],
  ['n', 'なにぬねの'],
  ['h', 'はひ へほ'],
  ['b', 'ばびぶべぼ'],
  ['p', 'ぱぴぷぺぽ'],
  ['m', 'まみむめも'],
  ['r', 'らりるれろ'],
  ['w', 'わゐ ゑ '],
];
const VOWELS = 'aiueo';
const PLAIN = new Map<string, readonly string[]>([
  ['し', ['sh', 'i']],
  ['じ', ['j', 'i']],
  ['ち', ['ch', 'i']],
  ['ぢ', ['j', 'i']],
  ['つ', ['ts', 'u']],
  ['づ', ['z', 'u']],
  ['ふ', ['f', 'u']],
  ['や', ['y', 'a']],
  ['ゆ', ['y', 'u']],
  ['よ', ['y', 'o']],
  ['を', ['o']],
  ['ゔ', ['b', 'u']],
  ['ん', ['N']],
  ['っ', ['q']],
]);
for (const [consonant, kana] of ROWS)
  [...kana].forEach((one, i) => {
    if (one !== ' ') PLAIN.set(one, consonant === '' ? [VOWELS[i]!] : [consonant, VOWELS[i]!]);
  });

const SMALL = new Map([
  ['ゃ', 'ya'],
  ['ゅ', 'yu'],
  ['ょ', 'yo'],
  ['ぁ', 'a'],
  ['ぃ', 'i'],
  ['ぅ', 'u'],
  ['ぇ', 'e'],
  ['ぉ', 'o'],
  ['ゎ', 'a'],
]);
/** Consonants that are palatal already: しゃ is sh a. */
const PALATAL = new Set(['sh', 'j', 'ch', 'y']);

export function moraeOf(kana: readonly { readonly character: string; readonly start: number }[]): Mora[] {
  const morae: Mora[] = [];
  for (const { character, start } of kana) {
    const before = morae.at(-1);
    const small = SMALL.get(character);
    if (small !== undefined) {
      const vowel = small.at(-1)!;
      const [consonant] = before && before.sounds.length === 2 ? before.sounds : [];
      if (consonant === undefined || before === undefined) {
        // うぃ, ヴァ and a small vowel on its own.
        const onset = before?.sounds[0] === 'u' && !before.long ? ['w'] : [];
        if (onset.length > 0) morae.pop();
        morae.push({
          sounds: [...onset, vowel],
          start: onset.length > 0 ? before!.start : start,
          long: false,
        });
        continue;
      }
      const glide = small.length === 2 && !PALATAL.has(consonant) ? ['y'] : [];
      morae[morae.length - 1] = { ...before, sounds: [consonant, ...glide, vowel] };
      continue;
    }
    const vowelBefore = before?.sounds.at(-1) ?? '';
    if (character === 'ー') {
      if (VOWELS.includes(vowelBefore) && vowelBefore !== '')
        morae.push({ sounds: [vowelBefore], start, long: true });
      continue;
    }
    const sounds = PLAIN.get(character);
    if (sounds) morae.push({ sounds, start, long: false });
  }
  return morae;
}
