import { COVERED } from './coverage.generated.js';

/** Starts of the ranges, then their ends, both included and rising: decoded when the first text beyond ASCII is asked for. */
let ranges: { readonly starts: Uint32Array; readonly ends: Uint32Array } | undefined;

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

/** What of a text cannot be printed. A letter with its marks counts as the one character that it is printed as (NFC). */
export function uncovered(text: string): Uncovered[] {
  const found: Uncovered[] = [];
  if (/^[ -~]*$/.test(text)) return found;
  for (const { 0: letter, index } of text.matchAll(/[^\p{M}]\p{M}*|\p{M}+/gsu)) {
    for (const character of letter.normalize('NFC')) {
      if (!covers(character.codePointAt(0)!)) found.push({ character, index });
    }
  }
  return found;
}

/** Pairs in base 36: how far after the last range the next one starts, and how many code points after that it ends. */
function decode(): { starts: Uint32Array; ends: Uint32Array } {
  const numbers = COVERED.split(' ');
  const starts = new Uint32Array(numbers.length);
  const ends = new Uint32Array(numbers.length);
  let at = 0;
  numbers.forEach((pair, i) => {
    const [gap, more = '0'] = pair.split('+');
    starts[i] = at + Number.parseInt(gap!, 36);
    ends[i] = starts[i]! + Number.parseInt(more, 36);
    at = ends[i]!;
  });
  return { starts, ends };
}
