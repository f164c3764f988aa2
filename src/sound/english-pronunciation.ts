/** English words → sounds: out of a dictionary, else by rules of spelling; figures as they are spoken. */

import type { Dictionary, ExpectedSound } from './pronunciation.js';
import { ENGLISH_SOUNDS } from './speech-sounds.js';

/** A word as it is typed: `don't`, `12`, `B4`. */
export function englishWords(
  typed: string,
  dictionary: Dictionary,
): { sounds: ExpectedSound[]; beats: number } {
  const word = typed.normalize('NFKD').replace(/\p{M}/gu, '').replaceAll('’', "'").toLowerCase();
  const sounds: ExpectedSound[] = [];
  let beat = 0;
  for (const part of word.match(/\d[\d.,]*|[a-z'.]+|&|%/g) ?? []) {
    const codes = /\d/.test(part)
      ? figures(part).flatMap((one) => soundsOf(one, dictionary))
      : soundsOf(part, dictionary);
    const placed = syllables(codes, beat);
    sounds.push(...placed.sounds);
    beat = placed.next;
  }
  return { sounds, beats: Math.max(beat, sounds.length > 0 ? 1 : 0) };
}

function soundsOf(word: string, dictionary: Dictionary): string[] {
  if (word === '&') return ['AH0', 'N', 'D'];
  if (word === '%') return ['P', 'ER0', 'S', 'EH1', 'N', 'T'];
  const bare = word.replace(/^[.']+|[.']+$/g, '');
  for (const one of [word, bare, ABBREVIATIONS.get(bare) ?? '']) {
    const known = one === '' ? null : dictionary(one);
    if (known) return known.split(' ');
  }
  const whose = /^(.+)'s?$/.exec(bare);
  if (whose) {
    const own = soundsOf(whose[1]!, dictionary);
    if (!bare.endsWith('s')) return own;
    const last = own.at(-1) ?? '';
    if (/^(S|Z|SH|ZH|CH|JH)$/.test(last)) return [...own, 'IH0', 'Z'];
    return [...own, /^(P|T|K|F|TH)$/.test(last) ? 'S' : 'Z'];
  }
  const letters = bare.replace(/[^a-z]/g, '');
  if (!/[aeiouy]/.test(letters))
    return [...letters].flatMap((letter) => (LETTERS[letter] ?? 'AH0').split(' '));
  return spelt(letters);
}

const ABBREVIATIONS = new Map([
  ['mr', 'mister'],
  ['mrs', 'missus'],
  ['dr', 'doctor'],
  ['st', 'saint'],
  ['vs', 'versus'],
  ['etc', 'etcetera'],
]);

// ---- figures

const ONES =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const TENS = ' ten twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

/** `12` → twelve; `1.5` → one point five; long ones figure by figure. */
export function figures(typed: string): string[] {
  const [whole = '', fraction] = typed
    .replace(/,(?=\d{3})/g, '')
    .replace(/[.,]+$/, '')
    .split(/[.,]/);
  const spoken =
    whole.length > 9 ? [...whole].map((figure) => ONES[Number(figure)]!) : cardinal(Number(whole));
  return fraction ? [...spoken, 'point', ...[...fraction].map((figure) => ONES[Number(figure)]!)] : spoken;
}

function cardinal(number: number): string[] {
  if (number < 20) return [ONES[number]!];
  if (number < 100) return [TENS[Math.floor(number / 10)]!, ...(number % 10 > 0 ? [ONES[number % 10]!] : [])];
  for (const [size, name] of [
    [1_000_000, 'million'],
    [1000, 'thousand'],
    [100, 'hundred'],
  ] as const) {
    if (number < size) continue;
    const rest = number % size;
    return [...cardinal(Math.floor(number / size)), name, ...(rest > 0 ? cardinal(rest) : [])];
  }
  return [];
}

// ---- spelling, where no dictionary has the word

const LETTERS: Readonly<Record<string, string>> = {
  b: 'B IY1',
  c: 'S IY1',
  d: 'D IY1',
  f: 'EH1 F',
  g: 'JH IY1',
  h: 'EY1 CH',
  j: 'JH EY1',
  k: 'K EY1',
  l: 'EH1 L',
  m: 'EH1 M',
  n: 'EH1 N',
  p: 'P IY1',
  q: 'K Y UW1',
  r: 'AA1 R',
  s: 'EH1 S',
  t: 'T IY1',
  v: 'V IY1',
  w: 'D AH1 B AH0 L Y UW0',
  x: 'EH1 K S',
  z: 'Z IY1',
};

/** The first that fits at a place, with what must stand before and behind. Common practice; ours. */
const RULES: readonly (readonly [pattern: RegExp, sounds: string])[] = [
  [/tion/y, 'SH AH0 N'],
  [/sion/y, 'ZH AH0 N'],
  [/ture\b/y, 'CH ER0'],
  [/ough/y, 'AO1'],
  [/augh|augh/y, 'AO1'],
  [/igh/y, 'AY1'],
  [/eigh/y, 'EY1'],
  [/tch|ch/y, 'CH'],
  [/sch|sh/y, 'SH'],
  [/ph/y, 'F'],
  [/th(?=e|a|i|o)/y, 'DH'],
  [/th/y, 'TH'],
  [/wh/y, 'W'],
  [/ck/y, 'K'],
  [/ng(?=$|s)/y, 'NG'],
  [/nk/y, 'NG K'],
  [/qu/y, 'K W'],
  [/(?<=^)kn/y, 'N'],
  [/(?<=^)wr/y, 'R'],
  [/dge/y, 'JH'],
  [/gh/y, ''],
  [/ee|ea|ie(?=.)/y, 'IY1'],
  [/oo/y, 'UW1'],
  [/ou|ow(?=[nld])/y, 'AW1'],
  [/ow/y, 'OW1'],
  [/oa/y, 'OW1'],
  [/oi|oy/y, 'OY1'],
  [/ai|ay|ei|ey/y, 'EY1'],
  [/au|aw/y, 'AO1'],
  [/ew|ue/y, 'UW1'],
  [/ar/y, 'AA1 R'],
  [/or/y, 'AO1 R'],
  [/[eiu]r/y, 'ER0'],
  [/a(?=[^aeiouy]e\b)/y, 'EY1'],
  [/i(?=[^aeiouy]e\b)/y, 'AY1'],
  [/o(?=[^aeiouy]e\b)/y, 'OW1'],
  [/u(?=[^aeiouy]e\b)/y, 'UW1'],
  [/(?<=[a-z]{2})e\b/y, ''],
  [/(?<=[^aeiou])es\b/y, 'Z'],
  [/y(?=[aeiou])/y, 'Y'],
  [/(?<=[^aeiou])y\b/y, 'IY0'],
  [/c(?=[eiy])/y, 'S'],
  [/g(?=[eiy])/y, 'JH'],
  [/o\b/y, 'OW0'],
  [/a\b/y, 'AH0'],
  [/i\b/y, 'IY0'],
  [/(bb|b)/y, 'B'],
  [/(cc|c|kk|k)/y, 'K'],
  [/(dd|d)/y, 'D'],
  [/(ff|f)/y, 'F'],
  [/(gg|g)/y, 'G'],
  [/h/y, 'HH'],
  [/j/y, 'JH'],
  [/(ll|l)/y, 'L'],
  [/(mm|m)/y, 'M'],
  [/(nn|n)/y, 'N'],
  [/(pp|p)/y, 'P'],
  [/q/y, 'K'],
  [/(rr|r)/y, 'R'],
  [/(ss|s)/y, 'S'],
  [/(tt|t)/y, 'T'],
  [/(vv|v)/y, 'V'],
  [/w/y, 'W'],
  [/x/y, 'K S'],
  [/(zz|z)/y, 'Z'],
  [/a/y, 'AE1'],
  [/e/y, 'EH1'],
  [/i|y/y, 'IH1'],
  [/o/y, 'AA1'],
  [/u/y, 'AH1'],
];

export function spelt(letters: string): string[] {
  const sounds: string[] = [];
  for (let at = 0; at < letters.length; ) {
    let step = 1;
    for (const [pattern, spoken] of RULES) {
      pattern.lastIndex = at;
      const found = pattern.exec(letters);
      if (!found || found[0] === '') continue;
      if (spoken !== '') sounds.push(...spoken.split(' '));
      step = found[0].length;
      break;
    }
    at += step;
  }
  return sounds;
}

// ---- syllables and lengths

/** A syllable for each vowel; the consonants before it are its own, as many as follow the vowel before by halves. */
function syllables(codes: readonly string[], first: number): { sounds: ExpectedSound[]; next: number } {
  const vowels = codes.flatMap((code, i) => (/\d$/.test(code) ? [i] : []));
  const beatOf = (i: number): number => {
    if (vowels.length === 0) return 0;
    const at = vowels.findIndex((place) => place >= i);
    if (at < 0) return vowels.length - 1;
    if (at === 0) return 0;
    const from = vowels[at - 1]!;
    return i - from <= Math.floor((vowels[at]! - from - 1) / 2) ? at - 1 : at;
  };
  const sounds = codes.flatMap((code, i): ExpectedSound[] => {
    const name = code.replace(/\d$/, '');
    const sound = ENGLISH_SOUNDS.get(name);
    if (!sound) return [];
    const stressed = code.endsWith('1');
    const { kind, seconds } = sound;
    const length = kind !== 'vowel' || stressed ? seconds : seconds * (code.endsWith('0') ? 0.72 : 0.9);
    return [{ sound: name, kind, seconds: length, beat: first + beatOf(i), stressed }];
  });
  return { sounds, next: first + Math.max(1, vowels.length) };
}
