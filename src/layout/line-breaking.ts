/** Where lines of text may break, in any script that a sheet is written in. The unit of widths is the measure's own. */

export type TextMeasure = (text: string) => number;

/** Characters that may not begin a line of Japanese. */
const NOT_FIRST = new Set([
  ...'、。，．・：；？！’”）〕］｝〉》」』】ーぁぃぅぇぉっゃゅょゎァィゥェォッャュョヮヵヶ々〜…‥,.!?)]}',
]);
/** Characters that may not end a line. */
const NOT_LAST = new Set([...'（〔［｛〈《「『【([{‘“']);

/** True for characters between which a line may break: kana, kanji and their signs. */
export function isWide(character: string): boolean {
  const code = character.codePointAt(0)!;
  return (
    (code >= 0x2e80 && code <= 0x9fff) ||
    (code >= 0xf900 && code <= 0xfaff) ||
    (code >= 0xff00 && code <= 0xff60) ||
    (code >= 0x20000 && code <= 0x3ffff)
  );
}

/** Splits a text into pieces between which lines may break; a piece keeps the blanks behind it. */
function pieces(text: string): string[] {
  const out: string[] = [];
  let piece = '';
  for (const character of text) {
    const last = piece.at(-1) ?? '';
    const breaks =
      piece !== '' &&
      ((last === ' ' && character !== ' ') ||
        ((isWide(character) || isWide(last)) &&
          !NOT_FIRST.has(character) &&
          !NOT_LAST.has(last) &&
          character !== ' '));
    if (breaks) {
      out.push(piece);
      piece = '';
    }
    piece += character;
  }
  if (piece !== '') out.push(piece);
  return out;
}

/** Breaks a text into lines no wider than `width`; words that are wider than a line are cut. Line breaks of the text are kept. */
export function brokenLines(text: string, width: number, measure: TextMeasure): string[] {
  if (!text.includes('\n')) {
    const whole = text.trimEnd();
    if (measure(whole) <= width) return [whole];
  }
  const lines: string[] = [];
  for (const paragraph of text.split('\n')) {
    const whole = paragraph.trimEnd();
    if (measure(whole) <= width) {
      lines.push(whole);
      continue;
    }
    let current = '';
    for (const piece of pieces(paragraph)) {
      if (measure((current + piece).trimEnd()) <= width) {
        current += piece;
        continue;
      }
      if (current.trimEnd() !== '') lines.push(current.trimEnd());
      current = '';
      for (const character of piece) {
        if (current !== '' && measure((current + character).trimEnd()) > width) {
          lines.push(current);
          current = '';
        }
        current += character;
      }
    }
    lines.push(current.trimEnd());
  }
  return lines;
}

/** The width of the widest; 0 of none. */
export function widest(texts: Iterable<string>, measure: TextMeasure): number {
  let most = 0;
  for (const text of texts) most = Math.max(most, measure(text));
  return most;
}
