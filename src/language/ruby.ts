/** Ruby as plain text writes it: how kanji are read stands behind them in 《 》; `｜` before them says where they begin (Aozora Bunko's way). */

const RUBY =
  /(?:[\uff5c|]([^\u300a\u300b\uff5c|]+)|([\u3400-\u9fff\u3005\u3006\u30f6]+))\u300a[^\u300a\u300b]*\u300b/gu;

/** The text as it is printed: without its readings. */
export function withoutRuby(text: string): string {
  return text.includes('《')
    ? text.replace(RUBY, (_, marked: string, kanji: string) => marked ?? kanji)
    : text;
}
