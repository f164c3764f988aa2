// How texts and questions are cut into terms: words of letters and digits, and of Japanese every sign and every pair of signs, since
// it has no blanks between words. Used when the index is made and by the page that searches in it.

const WORDS = /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}ー]+|[\p{L}\p{N}]+/gu;
const JAPANESE = /^[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}ー]/u;

export function searchTerms(text) {
  return (text.normalize('NFKC').match(WORDS) ?? []).flatMap((word) => {
    if (!JAPANESE.test(word)) return [word];
    const signs = [...word];
    return [...signs, ...signs.slice(1).map((sign, i) => signs[i] + sign)];
  });
}

/** Of the index and of whoever searches in it. */
export const SEARCH = { fields: ['title', 'text'], storeFields: ['title', 'page'], tokenize: searchTerms };
