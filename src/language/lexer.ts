/** A folded text → its statements; one statement → tokens, their offsets counted in the whole text. */

import { type IToken, Lexer } from 'chevrotain';
import { currentWord } from './retired-words.js';
import type { TextRange } from './source.js';
import { Close, Glued, languageWords, lexed, Word } from './tokens.js';

let lexer: Lexer | null = null;

/** `×3` after a group, as a Japanese keyboard types it: the sign of a repeat, not the name of a phrase. */
const TIMES = /^x\d+$/;

/** A lexer of its own; `validate` looks for faults in the kinds themselves, for the tests. */
export function newLexer({ validate = false } = {}): Lexer {
  return new Lexer(lexed(), {
    positionTracking: 'onlyOffset',
    ensureOptimizations: validate,
    skipValidations: !validate,
  });
}

/** Reads `text` from `start` to `end`; every character ends up in a token or in a blank. */
export function tokenize(text: string, start: number, end: number): IToken[] {
  lexer ??= newLexer();
  const { tokens } = lexer.tokenize(text.slice(start, end));
  const words = languageWords();
  let before: IToken | null = null;
  for (const token of tokens) {
    token.startOffset += start;
    token.endOffset = token.startOffset + token.image.length - 1;
    if (token.tokenType === Word) {
      const known = words.get(currentWord(token.image));
      if (known) retype(token, known);
      else if (
        before?.tokenType === Close &&
        before.endOffset! + 1 === token.startOffset &&
        TIMES.test(token.image)
      ) {
        retype(token, Glued);
      }
    }
    before = token;
  }
  return tokens;
}

function retype(token: IToken, to: IToken['tokenType']): void {
  token.tokenType = to;
  token.tokenTypeIdx = to.tokenTypeIdx!;
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
