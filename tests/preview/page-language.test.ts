import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { PAGE_TEXTS, pageInLanguage } from '../../src/preview/page-language.js';
import { englishIn } from '../japanese-text.js';

const html = readFileSync('src/preview/page/live.html', 'utf8');
const inJapanese = pageInLanguage(html, 'ja');

/** What a reader of the page reads or hears, but for keys and signs. */
const textsOf = (page: string): string[] =>
  [...page.matchAll(/ (?:title|aria-label|placeholder)="([^"]+)"|>([^<>\n]+)</g)].map(
    ([, attribute, text]) => attribute ?? text!,
  );

test('every text of the page has a Japanese one, and nothing else is in the table', () => {
  const words = textsOf(html).filter(
    (one) => /[a-z]{2}/.test(one) && !['cutwright', 'space'].includes(one) && !/^Ctrl/.test(one),
  );
  expect([...new Set(words)].filter((one) => PAGE_TEXTS[one] === undefined && !/^Esc$/.test(one))).toEqual(
    [],
  );
  expect(Object.keys(PAGE_TEXTS).filter((one) => !textsOf(html).includes(one))).toEqual([]);
});

test('in Japanese it says so, and has no English word left but names of keys', () => {
  expect(inJapanese).toContain('<html lang="ja">');
  for (const text of textsOf(inJapanese))
    expect(englishIn(text, 'cutwright space Esc Ctrl'), text).toEqual([]);
});

test('tags, addresses and ids stay', () => {
  const bare = (page: string) =>
    page
      .replace(/ (title|aria-label|placeholder)="[^"]*"/g, '')
      .replace(/>[^<>\n]+</g, '><')
      .replace(/lang="\w+"/, '');
  expect(bare(inJapanese)).toBe(bare(html));
  expect(pageInLanguage(html, 'en')).toBe(html);
});
