/** Ruby as plain text writes it: how kanji are read stands behind them in 《 》; `｜` before them says where they begin (Aozora Bunko's way). */

const RUBY = /(?:[｜|]([^《》｜|]+)|([\u3400-\u9fff々〆ヶ]+))《[^《》]*》/gu;

/** The text as it is printed: without its readings. */
export function withoutRuby(text: string): string {
  return text.includes('《')
    ? text.replace(RUBY, (_, marked: string, kanji: string) => marked ?? kanji)
    : text;
}
