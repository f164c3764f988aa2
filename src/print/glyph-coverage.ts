import { COVERED } from './coverage.generated.js';

/** Starts of the ranges, then their ends, both included and rising: decoded when the first text beyond ASCII is asked for. */
let ranges: ReturnType<typeof decode> | undefined;

/** Whether both weights of the shipped font have a glyph for a code point. Needs no font. */
export function covers(codePoint: number): boolean {
  if (codePoint >= 0x20 && codePoint <= 0x7e) return true;
  ranges ??= decode();
  const { starts, ends } = ranges;
  let low = 0;
  let high = starts.length - 1;
  while (low <= high) {
    const middle = (low + high) >> 1;
    if (codePoint < starts[middle]!) high = middle - 1;
    else if (codePoint > ends[middle]!) low = middle + 1;
    else return true;
  }
  return false;
}

/** A character that cannot be printed, and its place in the text (UTF-16). */
export interface Uncovered {
  readonly character: string;
  readonly index: number;
}

/** Latin letters, kana, kanji and full-width forms: no marks are among them, and to say so takes no tables of Unicode classes. */
const WITHOUT_MARKS = /^[\0-\u02ff\u3000-\u3029\u3041-\u3096\u30a0-\u30ff\u4e00-\u9fff\uff01-\uff5e]*$/;

/** What of a text cannot be printed. A letter with its marks counts as the one character that it is printed as (NFC). */
export function uncovered(text: string): Uncovered[] {
  const found: Uncovered[] = [];
  if (/^[ -~]*$/.test(text)) return found;
  const letters = WITHOUT_MARKS.test(text) ? /./gs : /[^\p{M}]\p{M}*|\p{M}+/gsu;
  for (const { 0: letter, index } of text.matchAll(letters)) {
    for (const character of letter.normalize('NFC')) {
      if (!covers(character.codePointAt(0)!)) found.push({ character, index });
    }
  }
  return found;
}

/**
 * Pairs in base 36, `gap+more`: how far after the last range the next one starts, and how many code points after that it ends; 0 where
 * that is not said. Read digit by digit, in a quarter of the time of splitting: a single kanji has a `check` wait for it.
 */
function decode(): { starts: readonly number[]; ends: readonly number[] } {
  const starts: number[] = [];
  const ends: number[] = [];
  let last = 0;
  let gap = -1;
  let number = 0;
  const close = (): void => {
    const start = last + (gap < 0 ? number : gap);
    last = gap < 0 ? start : start + number;
    starts.push(start);
    ends.push(last);
    gap = -1;
    number = 0;
  };
  for (let at = 0; at < COVERED.length; at++) {
    const code = COVERED.charCodeAt(at);
    if (code === SPACE) close();
    else if (code === PLUS) {
      gap = number;
      number = 0;
    } else number = number * 36 + code - (code >= SMALL_A ? SMALL_A - 10 : DIGIT_0);
  }
  close();
  return { starts, ends };
}

const [SPACE, PLUS, DIGIT_0, SMALL_A] = [0x20, 0x2b, 0x30, 0x61];
