/**
 * Expressions for the pieces of the language as they are typed: every character stands for its full-width twins too, as
 * src/language/lexer.ts folds them, and numbers end where those of src/language/tokens.ts do. For Oniguruma, which editors use.
 */

const KANA = '\\p{Hiragana}\\p{Katakana}';
/** The long-vowel marks, which are letters straight after kana and dashes elsewhere. */
const LONG = '[ーｰ]';
const LETTER = `(?:[${KANA}]${LONG}*|[\\p{L}×&&[^ーｰ${KANA}]])`;
const TAIL = `(?:[${KANA}]${LONG}*|[\\p{L}\\p{M}\\p{Nd}_＿×&&[^ーｰ${KANA}]])`;
/** What would go on a name or number that ends here. */
export const MORE = `(?:[\\p{L}\\p{M}\\p{Nd}_＿×&&[^ーｰ]]|(?<=[${KANA}])${LONG})`;
export const NAME = `${LETTER}${TAIL}*`;

const TWINS: Readonly<Record<string, string>> = {
  '-': '\\-－−–—ーｰ',
  '.': '.．。',
  ',': ',，、',
  '/': '/／・',
  x: 'xｘ×',
  "'": "'’＇",
};
/** A class with a character and all that means the same. */
export function any(character: string): string {
  const code = character.charCodeAt(0);
  const plain = /[[\]\\^&-]/.test(character) ? `\\${character}` : character;
  return `[${TWINS[character] ?? plain + String.fromCharCode(code + 0xfee0)}]`;
}
export const spelt = (word: string): string => [...word].map(any).join('');
const oneOf = (words: readonly string[]): string => `(?:${words.map(spelt).join('|')})`;
export const word = (...words: string[]): string => `${oneOf(words)}(?!${MORE})`;

export const DIGIT = '[0-9０-９]';
export const X = any('x');
export const DOT = any('.');
export const STOP = `(?!(?!${X}(?!${MORE}))${MORE})(?!${DOT}${DIGIT}|${DOT}{3}|${any('+')}${DIGIT}|${any("'")})`;
export const WHOLE = `${DIGIT}{1,9}`;
export const NUMBER = `${WHOLE}(?:${DOT}${DIGIT}{1,9})?`;
export const UNIT = oneOf(['mm', 'cm', 'in']);
export const FRAME = any('f');
export const INTEGER = `${WHOLE}${STOP}`;
/** A whole number that begins no share and no fraction. */
export const ALONE = `${WHOLE}(?!${any('%')}${STOP}|${any('/')}${WHOLE}${STOP})${STOP}`;
export const SECONDS = `${WHOLE}${any('+')}${WHOLE}${STOP}`;
export const FEET = `${WHOLE}${any("'")}${WHOLE}${STOP}`;
export const TIMECODE = `${DIGIT}{1,2}(?:${any(':')}${DIGIT}{2}){3}${STOP}`;
export const KEY_LETTER = `(?![xXｘＸ×])[\\p{L}&&[^ーｰ]]`;
export const BETWEEN = `${WHOLE}(?:${KEY_LETTER})?${DOT}${DIGIT}{1,9}[a-wyzａ-ｗｙｚ]?${STOP}`;
export const FIELD_KEY = `${WHOLE}${'[FNSEWＦＮＳＥＷ]'}${STOP}`;
export const GLUED =
  `(?:${DIGIT}+|${DOT}${DIGIT}+)` +
  `(?:[\\p{L}\\p{M}\\p{N}_＿×%％'’＇&&[^ーｰ]]|(?<=[${KANA}])${LONG}|${any('/')}${FRAME}(?!${MORE})|${any('+')}(?=${DIGIT})|${DOT}(?=${DIGIT})|${DOT}{3,})*`;

/** A line that a statement starts on. */
export const START = '^(?=[^\\s#＃])';

interface Quotes {
  readonly id: string;
  readonly open: string;
  readonly close: string;
}
export const QUOTES: readonly Quotes[] = [
  { id: 'double', open: '"', close: '["]' },
  { id: 'double', open: '[“”＂]', close: '[“”＂"]' },
  { id: 'other', open: '[「｢]', close: '[」｣]' },
];
/** Taken whole or not at all: a text that nothing closes is not tried again from behind. */
export const body = ({ close }: Quotes): string => `(?:[^\\\\${close.slice(1)}++|\\\\.)*+`;
export const TEXT = `(?:${QUOTES.map((one) => one.open + body(one) + one.close).join('|')})`;
