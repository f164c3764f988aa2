/** A folded text → its statements; one statement → tokens, their offsets counted in the whole text. */

import { currentWord } from './retired-words.js';
import type { TextRange } from './source.js';
import { Close, Glued, Integer, kindsFrom, languageWords, type Token, Word } from './tokens.js';

/** `×3` after a group, as a Japanese keyboard types it: the sign of a repeat, not the name of a phrase. */
const TIMES = /^x\d+$/;
const ASCII = /^[\0-\x7f]*$/;
const SPACE = /\s/;
const [ZERO, NINE, DOT, COLON] = [0x30, 0x39, 0x2e, 0x3a];
/** Digits of the longest whole number. */
const MOST_DIGITS = 9;
/** ASCII that goes on with no kind of token that begins with digits, whatever follows; the dot and the colon are looked at further. */
const ENDS_DIGITS = Array.from({ length: 0x80 }, (_, code) => !/[\w./'+%:]/.test(String.fromCharCode(code)));

/** Reads `text` from `start` to `end`; every character ends up in a token, or is a blank or no character for texts. */
export function tokenize(text: string, start: number, end: number): Token[] {
  const piece = text.slice(start, end);
  const allAscii = ASCII.test(piece);
  const words = languageWords();
  const tokens: Token[] = [];
  let before: Token | null = null;
  // Up to where the text is known to be ASCII, or not to be.
  let known = allAscii ? piece.length : 0;
  let ascii = allAscii;
  for (let at = 0; at < piece.length; ) {
    const code = piece.charCodeAt(at);
    if (code <= 0x20 || (code > 0x7f && SPACE.test(piece[at]!))) {
      at++;
      continue;
    }
    if (at >= known) {
      known = runEnd(piece, at);
      ascii = ASCII.test(piece.slice(at, known));
    }
    let type = Integer;
    let last = code >= ZERO && code <= NINE ? wholeNumberEnd(piece, at) : -1;
    if (last < 0) {
      for (const kind of kindsFrom(code)) {
        last = kind.end(piece, at, ascii);
        type = kind.type;
        if (last >= 0) break;
      }
    }
    const image = piece.slice(at, last);
    if (type === Word) {
      const meant = words.get(currentWord(image));
      if (meant) type = meant;
      else if (before?.type === Close && before.end === start + at && TIMES.test(image)) type = Glued;
    }
    const token: Token = { image, start: start + at, end: start + last, type };
    tokens.push(token);
    before = token;
    at = last;
  }
  return tokens;
}

/** The next blank: no expression that asks for a Unicode class looks further. */
function runEnd(text: string, at: number): number {
  for (let end = at; end < text.length; end++) {
    const code = text.charCodeAt(end);
    if (code === 0x20 || code === 0x0a || code === 0x0d || code === 0x09) return end;
  }
  return text.length;
}

/** The offset behind a whole number, where it certainly is one; -1: all kinds that begin with digits must be tried. */
function wholeNumberEnd(text: string, at: number): number {
  let end = at + 1;
  let code = text.charCodeAt(end);
  for (; code >= ZERO && code <= NINE; code = text.charCodeAt(end)) end++;
  if (end - at > MOST_DIGITS) return -1;
  if (end === text.length || ENDS_DIGITS[code]) return end;
  // `1..` but neither `1.2` nor `1...`; `1:12` but no timecode.
  if (code === DOT) return text.charCodeAt(end + 1) === DOT && text.charCodeAt(end + 2) !== DOT ? end : -1;
  return code === COLON && text.charCodeAt(end + 3) !== COLON ? end : -1;
}

// ---- Cuts a folded text into statements before anything is read, so that a broken one never harms the next

export interface StatementRanges {
  /** Each from its first character to the last one before the next statement, trailing blanks left out. */
  readonly statements: readonly TextRange[];
  /** Indented lines at the top of the text, with no statement to go on with. */
  readonly stray: TextRange | null;
}

/** A statement starts at column 1 and runs until the next line that does; blank lines end nothing (comments are blanks by now). */
export function splitStatements(folded: string): StatementRanges {
  const starts: number[] = [];
  for (let at = 0; at < folded.length; at = lineEnd(folded, at) + 1) {
    if (!/\s/.test(folded[at]!)) starts.push(at);
  }
  const trimmed = (start: number, end: number): TextRange => {
    let last = end;
    while (last > start && /\s/.test(folded[last - 1]!)) last--;
    return { start, end: last };
  };
  const head = starts[0] ?? folded.length;
  const first = folded.slice(0, head).search(/\S/);
  return {
    statements: starts.map((start, index) => trimmed(start, starts[index + 1] ?? folded.length)),
    stray: first < 0 ? null : trimmed(first, head),
  };
}

// ----
// What a Japanese keyboard types means its ASCII twin. Folding goes one to one in UTF-16 units, so that every offset of the
// folded text is an offset of the typed one. Quoted text is kept as typed, apart from its opening and closing quotes;
// comments become blanks.

export interface FoldedText {
  /** As long as the typed text. */
  readonly text: string;
  /** Each comment from its `#` to the end of its line. */
  readonly comments: readonly TextRange[];
  /** Runs of characters that no text may hold (NUL, other controls, halves of characters, what Unicode gives to no character). */
  readonly controls: readonly TextRange[];
}

const KANA = /[\p{Script=Hiragana}\p{Script=Katakana}ーｰ]/u;
const CONTROL =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\ufeff\ufdd0-\ufdef\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;
const LINE_END = /[\n\r]/g;
const NOTABLE = /[#"\u0080-\uffff]/g;
const BLANK = /\p{Zs}/u;
const CURLY_QUOTES = '“”＂';

const TWINS = new Map<string, string>([
  ['−', '-'],
  ['–', '-'],
  ['—', '-'],
  ['。', '.'],
  ['、', ','],
  ['・', '/'],
  ['×', 'x'],
  ['’', "'"],
  ['｢', '「'],
  ['｣', '」'],
  ['“', '"'],
  ['”', '"'],
]);

/** The twin of a character outside quoted text, or the character itself; `before` is what the one before it became. */
function twin(character: string, before: string): string {
  const code = character.charCodeAt(0);
  if (code < 0x80) return character;
  if (code >= 0xff01 && code <= 0xff5e) return String.fromCharCode(code - 0xfee0);
  if (character === 'ー' || character === 'ｰ') return KANA.test(before) ? character : '-';
  return TWINS.get(character) ?? (BLANK.test(character) ? ' ' : character);
}

const isLineEnd = (character: string): boolean => character === '\n' || character === '\r';

function lineEnd(text: string, from: number): number {
  LINE_END.lastIndex = from;
  return LINE_END.exec(text)?.index ?? text.length;
}

/** The offset of the quote that closes the text opened at `open`, or -1 where its line ends first. */
function closingQuote(text: string, open: number): number {
  const opener = text[open]!;
  let closers = `${CURLY_QUOTES}"`;
  if (opener === '"') closers = '"';
  else if (opener === '「' || opener === '｢') closers = '」｣';
  for (let at = open + 1; at < text.length; at++) {
    const character = text[at]!;
    if (isLineEnd(character)) return -1;
    if (character === '\\') {
      if (at + 1 < text.length && !isLineEnd(text[at + 1]!)) at++;
    } else if (closers.includes(character)) return at;
  }
  return -1;
}

function runs(text: string): TextRange[] {
  const found: { start: number; end: number }[] = [];
  for (const { index } of text.matchAll(CONTROL)) {
    const last = found.at(-1);
    if (last && last.end === index) last.end = index + 1;
    else found.push({ start: index, end: index + 1 });
  }
  return found;
}

/** Whether a text holds any character that none may hold. */
export function hasControls(text: string): boolean {
  return text.search(CONTROL) >= 0;
}

/** Folds a text whose byte-order mark is already gone. */
export function foldCharacters(typed: string): FoldedText {
  const controls = runs(typed);
  const text = controls.length > 0 ? typed.replace(CONTROL, ' ') : typed;
  const comments: TextRange[] = [];
  const out: string[] = [];
  let kept = 0;
  let at = 0;
  let before = '';
  const put = (replacement: string, start: number, end: number): void => {
    out.push(text.slice(kept, start), replacement);
    kept = end;
  };
  while (at < text.length) {
    // Between these nothing has a twin, and nothing begins.
    NOTABLE.lastIndex = at;
    const next = NOTABLE.exec(text)?.index ?? text.length;
    if (next > at) before = text[next - 1]!;
    at = next;
    if (at === text.length) break;
    const folded = twin(text[at]!, before);
    before = folded;
    if (folded === '#') {
      const end = lineEnd(text, at);
      comments.push({ start: at, end });
      put(' '.repeat(end - at), at, end);
      at = end;
    } else if (folded === '"' || folded === '「') {
      const close = closingQuote(text, at);
      if (folded !== text[at]) put(folded, at, at + 1);
      if (close < 0) {
        at = lineEnd(text, at);
      } else {
        const closing = folded === '"' ? '"' : '」';
        if (text[close] !== closing) put(closing, close, close + 1);
        at = close + 1;
      }
    } else {
      if (folded !== text[at]) put(folded, at, at + 1);
      at++;
    }
  }
  out.push(text.slice(kept));
  return { text: out.join(''), comments, controls };
}
