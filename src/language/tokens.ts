/**
 * The kinds of token, in the order in which the lexer tries them; the first that matches wins. All patterns read folded text.
 */

import type { Expected, Wanted } from './catalogue/message-terms.js';
import type { TextRange } from './source.js';

export interface TokenType {
  /** Words of the language stand in single quotes. */
  readonly name: string;
  /** What a message calls it. */
  readonly label: Wanted;
  /** What is typed for a sign or a word of the language; null: more than one text is of this kind. */
  readonly text: string | null;
  /** Other kinds that such a token may stand for: `3` is a whole number, and a key. */
  readonly categories: readonly TokenType[];
}

export interface Token extends TextRange {
  /** As folded. */
  readonly image: string;
  readonly type: TokenType;
}

export function isKind({ type }: Token, kind: TokenType): boolean {
  return type === kind || type.categories.includes(kind);
}

/** A kind of token as the lexer tries it. */
export interface LexedKind {
  readonly type: TokenType;
  /** The offset behind the token that begins at `at`, or -1. `ascii`: all up to the next blank is ASCII. */
  readonly end: (text: string, at: number, ascii: boolean) => number;
}

/** By the code of the first character; the last entry is for all characters outside ASCII. */
const BY_FIRST: LexedKind[][] = Array.from({ length: 129 }, () => []);

/** The kinds that may begin with a character. */
export function kindsFrom(code: number): readonly LexedKind[] {
  return BY_FIRST[Math.min(code, 128)]!;
}

/** Source of an expression for what may go on a name. */
const TAIL = '[\\p{L}\\p{M}\\p{Nd}_]';
/** Nothing glued on, except the `x` of an empty level: `3x` is 3, then empty. */
const END = `(?!(?!x(?!${TAIL}))${TAIL})`;
/** Nor may a dot, a plus or a foot mark go on: `1.2.3`, `1+2+3` and `8'` are no numbers. */
const STOP = `${END}(?!\\.\\d|\\.{3}|\\+\\d|')`;
const WHOLE = '\\d{1,9}';
const NUMBER = `${WHOLE}(?:\\.\\d{1,9})?`;
const UNIT = '(?:mm|cm|in)';

const DIGITS = '0123456789';
/** Stands for all characters outside ASCII. */
const BEYOND = '\u0080';
const LETTERS = `ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz${BEYOND}`;
const VISIBLE = String.fromCharCode(...Array.from({ length: 0x80 - 0x20 }, (_, index) => index + 0x21));

interface Kind {
  readonly name: string;
  /** The source of its expression. */
  readonly pattern: string;
  /** What it may start with, so that the lexer need not try everything everywhere; digits if nothing is said. */
  readonly first?: string;
  /** What a message calls it. */
  readonly label: Expected;
  readonly categories?: readonly TokenType[];
}

function add(type: TokenType, first: string, end: LexedKind['end']): TokenType {
  for (const character of first) BY_FIRST[character.charCodeAt(0)]!.push({ type, end });
  return type;
}

function kind({ name, pattern, first = DIGITS, label, categories = [] }: Kind): TokenType {
  const whole = lazily(() => pattern);
  const ascii = lazily(() => inAscii(pattern));
  return add({ name, label, text: null, categories }, first, (text, at, isAscii) => {
    const expression = isAscii ? ascii() : whole();
    expression.lastIndex = at;
    return expression.test(text) ? expression.lastIndex : -1;
  });
}

function lazily(pattern: () => string): () => RegExp {
  let made: RegExp | undefined;
  return () => {
    made ??= new RegExp(pattern(), 'uy');
    return made;
  };
}

/**
 * The same expression for text that is ASCII: the tables of Unicode classes take longer to set up than a cut to read. Classes
 * stand in brackets only.
 */
function inAscii(pattern: string): string {
  return pattern
    .replaceAll('\\p{L}', 'A-Za-z')
    .replaceAll('\\p{M}', '')
    .replaceAll(/\\p\{Nd?\}/g, '0-9');
}

function sign(name: string, text: string): TokenType {
  return add({ name, label: `\`${text}\``, text, categories: [] }, text[0]!, (typed, at) =>
    typed.startsWith(text, at) ? at + text.length : -1,
  );
}

const category = (name: string, label: Expected): TokenType => ({ name, label, text: null, categories: [] });

/** Any name, words of the language included. */
export const Name = category('Name', 'name');
/** A name that may stand for a phrase in a timeline: any but `x` and `on`. */
export const PhraseName = category('PhraseName', 'phrase-name');
/** A key drawing's name. */
export const Key = category('Key', 'key');
/** An in-between's own name. */
export const Between = category('Between', 'between');

export const Text = kind({
  name: 'Text',
  first: `"${BEYOND}`,
  pattern: '"(?:[^"\\\\\\r\\n]|\\\\.)*"|「(?:[^」\\\\\\r\\n]|\\\\.)*」',
  label: 'text',
});
export const UnclosedText = kind({
  name: 'UnclosedText',
  first: `"${BEYOND}`,
  pattern: '["「][^\\r\\n]*',
  label: 'unclosed-text',
});

export const SizeText = kind({
  name: 'Size',
  pattern: `${NUMBER}${UNIT}?x${NUMBER}${UNIT}?${STOP}`,
  label: 'size',
});
export const Rate = kind({
  name: 'Rate',
  pattern: `${NUMBER}${UNIT}/f${STOP}`,
  label: 'rate',
});
export const Length = kind({
  name: 'Length',
  pattern: `${NUMBER}${UNIT}${STOP}`,
  label: 'length',
});
export const Degrees = kind({
  name: 'Degrees',
  pattern: `${NUMBER}deg${STOP}`,
  label: 'degrees',
});
export const Percent = kind({ name: 'Percent', pattern: `${NUMBER}%${STOP}`, label: 'share' });
/** Keys may be called 8F or 2N too. */
export const FieldNumber = kind({
  name: 'FieldNumber',
  pattern: `${WHOLE}F${STOP}`,
  label: 'chart-field',
  categories: [Key],
});
export const ChartStep = kind({
  name: 'ChartStep',
  pattern: `${WHOLE}[NSEW]${STOP}`,
  label: 'chart-step',
  categories: [Key],
});
export const FieldPart = kind({
  name: 'FieldPart',
  pattern: `${NUMBER}F${STOP}`,
  label: 'chart-field-part',
});
export const ChartPart = kind({
  name: 'ChartPart',
  pattern: `${NUMBER}[NSEW]${STOP}`,
  label: 'chart-step-part',
});
/** Keys may be called 3s, in-betweens 1.2s. */
export const WholeSeconds = kind({
  name: 'WholeSeconds',
  pattern: `${WHOLE}s${STOP}`,
  label: 'whole-seconds',
  categories: [Key],
});
export const PartSeconds = kind({
  name: 'PartSeconds',
  pattern: `${WHOLE}\\.\\d{1,9}s${STOP}`,
  label: 'part-seconds',
  categories: [Between],
});
/** Hours, minutes, seconds, frames. */
export const Timecode = kind({
  name: 'Timecode',
  pattern: `\\d{1,2}:\\d{2}:\\d{2}:\\d{2}${STOP}`,
  label: 'timecode',
});
export const Seconds = kind({
  name: 'Seconds',
  pattern: `${WHOLE}\\+${WHOLE}${STOP}`,
  label: 'seconds',
});
export const Feet = kind({
  name: 'Feet',
  pattern: `${WHOLE}'${WHOLE}${STOP}`,
  label: 'feet',
});
export const Fraction = kind({
  name: 'Fraction',
  pattern: `${WHOLE}/${WHOLE}${STOP}`,
  label: 'fraction',
});
export const Decimal = kind({
  name: 'Decimal',
  pattern: `${WHOLE}\\.\\d{1,9}${STOP}`,
  label: 'decimal',
  categories: [Between],
});
export const BetweenName = kind({
  name: 'BetweenName',
  pattern: `${WHOLE}(?:(?![xX])[\\p{L}][\\p{M}]*)?\\.\\d{1,9}[a-wyz]?${STOP}`,
  label: 'between-lettered',
  categories: [Between],
});
export const KeyName = kind({
  name: 'KeyName',
  pattern: `${WHOLE}(?![xX])[\\p{L}][\\p{M}]*${STOP}`,
  label: 'key-lettered',
  categories: [Key],
});
export const Integer = kind({
  name: 'Integer',
  pattern: `${WHOLE}${STOP}`,
  label: 'whole',
  categories: [Key],
});

/** What looks like a number and is none; no rule asks for it, and the message tells its forms apart. */
export const Glued = kind({
  name: 'Glued',
  first: `${DIGITS}.`,
  pattern: `(?:\\d+|\\.\\d+)(?:[\\p{L}\\p{M}\\p{N}_%']|/f(?!${TAIL})|\\+(?=\\d)|\\.(?=\\d)|\\.{3,})*`,
  label: 'glued',
});
/** Three dots or more. */
export const Dots = kind({ name: 'Dots', first: '.', pattern: '\\.{3,}', label: 'dots' });

export const Word = kind({
  name: 'Word',
  first: LETTERS,
  pattern: `[\\p{L}]${TAIL}*`,
  label: 'name',
  categories: [Name, PhraseName],
});

export const DotDot = sign('DotDot', '..');
export const Bounce = sign('Bounce', '<>');
export const Colon = sign('Colon', ':');
export const Dash = sign('Dash', '-');
export const Equals = sign('Equals', '=');
export const Open = sign('Open', '(');
export const Close = sign('Close', ')');
export const OpenBrace = sign('OpenBrace', '{');
export const CloseBrace = sign('CloseBrace', '}');
export const Star = sign('Star', '*');
export const Greater = sign('Greater', '>');
export const At = sign('At', '@');
export const Comma = sign('Comma', ',');
export const Slash = sign('Slash', '/');
export const Plus = sign('Plus', '+');
export const Underscore = sign('Underscore', '_');
/** Anything else: a character that the language has no use for. */
export const Unknown = kind({
  name: 'Unknown',
  first: VISIBLE,
  pattern: '[^\\s]',
  label: 'unknown',
});

const WORDS = new Map<string, TokenType>();

/** The token of a word of the language. It is a name as well: no word is reserved. */
export function word(text: string): TokenType {
  const known = WORDS.get(text);
  if (known) return known;
  const categories = text === 'x' || text === 'on' || text === 'direct' ? [Name] : [Name, PhraseName];
  const made: TokenType = { name: `'${text}'`, label: `\`${text}\``, text, categories };
  WORDS.set(text, made);
  return made;
}

/** Every word that the statements have asked for so far. */
export function languageWords(): ReadonlyMap<string, TokenType> {
  return WORDS;
}
