/** Texts that nobody typed: noise, words of the language in any order, and examples with a few changes. The same seed, the same texts. */

import { catalogue } from '../../src/language/catalogue/index.js';
import { statementTable } from '../../src/language/statements/statement-table.js';

/** Numbers from 0 to below 1, the same for the same seed (mulberry32, public domain). */
export function randomOf(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

type Random = () => number;
const below = (random: Random, n: number): number => Math.floor(random() * n);
const one = <T>(random: Random, of: readonly T[]): T => of[below(random, of.length)]!;
const some = (random: Random, most: number, make: () => string): string =>
  Array.from({ length: below(random, most + 1) }, make).join('');

const HEAD = 'cut 1\ntime 2+0\n';
const STATEMENTS = statementTable.map(({ example }) => example);
/** Failing and mended examples of messages. */
const EXAMPLES = Object.values(catalogue).flatMap(({ example }) =>
  example.kind === 'text' ? [example.failing, example.mended] : [],
);

const SIGNS = [...'()<>{}[]*/:;=-+.,@#"\'!?_|\\~^%$&…'];
const ODD = [
  ...[
    '\n',
    '\n ',
    '\t',
    '\r\n',
    '\r',
    '\u0000',
    '\u0085',
    '\u00a0',
    '\u00ad',
    '\u200b',
    '\u202e',
    '\u2028',
    '\ufeff',
  ],
  ...[
    '\uffff',
    '\ud83c',
    '\udde9',
    '🇩🇪',
    '👩‍👩‍👧',
    'e\u0301',
    '\u0301',
    '\u3099',
    '\u0958',
    'ع',
    'ı',
    'ﬁ',
    '①',
    'ー',
    '・',
    '。',
  ],
  ...['：', '１', 'ａ', '「', '」', '“', '”', '−', '×', '屋上', 'か゛', '𠮷', '\u{e0100}', '\u1100\u1161'],
];
const NUMBERS = [
  '0',
  '1',
  '2',
  '12',
  '24',
  '0.5',
  '1+0',
  '1+12',
  "2'08",
  '999',
  '99999',
  '1e9',
  '007',
  '-1',
  '50%',
  '3mm',
  '1.2',
  '1>2.1',
];
const NAMES = ['A', 'B', 'BG', 'walk', 'hit', 'F', 'full', 'ア', 'x', 'late', 'cw', '3ع'];
const WORDS = [...new Set(STATEMENTS.join(' ').split(/[\s"]+/))];

const token = (random: Random): string =>
  one(random, [SIGNS, NUMBERS, NAMES, WORDS, WORDS, [' ', ' ', ' ', '\n'], ODD][below(random, 7)]!);

/** A text with a few changes: something left out, doubled, moved or put in. */
export function mutated(random: Random, text: string): string {
  let made = text;
  for (let times = 1 + below(random, 4); times > 0; times--) {
    const at = below(random, made.length + 1);
    const length = below(random, random() < 0.7 ? 3 : 20);
    const piece = made.slice(at, at + length);
    const rest = made.slice(at + length);
    switch (below(random, 5)) {
      case 0:
        made = made.slice(0, at) + rest;
        break;
      case 1:
        made = made.slice(0, at) + piece + piece + rest;
        break;
      case 2: {
        const without = made.slice(0, at) + rest;
        const to = below(random, without.length + 1);
        made = without.slice(0, to) + piece + without.slice(to);
        break;
      }
      default:
        made = made.slice(0, at) + token(random) + made.slice(random() < 0.5 ? at : at + length);
    }
  }
  return made;
}

export type TextKind = 'noise' | 'tokens' | 'statements' | 'mutated' | 'unicode';
export const TEXT_KINDS: readonly TextKind[] = ['noise', 'tokens', 'statements', 'mutated', 'unicode'];

/** `more`: texts of whole cuts that are changed as well. */
export function textOf(random: Random, kind: TextKind, more: readonly string[] = []): string {
  switch (kind) {
    case 'noise':
      return some(random, 200, () => String.fromCharCode(below(random, random() < 0.9 ? 0x80 : 0x10000)));
    case 'tokens':
      return HEAD + some(random, 40, () => token(random) + one(random, ['', ' ', ' ', '\n']));
    case 'statements':
      return `${HEAD}${some(random, 8, () => `${one(random, STATEMENTS)}\n`)}A: 1..\n`;
    case 'mutated':
      return mutated(random, one(random, random() < 0.7 || more.length === 0 ? EXAMPLES : more));
    case 'unicode':
      return (
        HEAD +
        some(random, 6, () => `${mutated(random, one(random, STATEMENTS))}${one(random, ODD)}\n`) +
        'A: 1..\n'
      );
  }
}
