/** Words of all languages: none is printed from anywhere else. */

import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const JAPANESE = /[\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Han}]/u;

/** Files that know Japanese letters for what they are, and print none of their own: how letters turn, where lines may break, how they are spoken. */
const LETTERS = [
  'src/sheet/vertical-text.ts',
  'src/layout/line-breaking.ts',
  'src/sound/japanese-pronunciation.ts',
  'src/shot/statements/bind-mouth.ts',
  'src/language/text-wrap.ts',
];
/** What somebody may type who thinks in Japanese: it is read, and never printed. */
const TYPED = [
  'src/command/stage-guess.ts',
  'src/language/trade-word-faults.ts',
  'src/language/trade-words.ts',
  'src/language/rewordings.ts',
  'src/shot/timeline-slips.ts',
];
/** What the program says to its user, in the user's language; the paper's words are all in src/words. */
const SAID = /\/ja\/|^src\/lsp\/hover-words(-ja)?\.ts$|^src\/preview\/(page-language|page\/player)\.ts$/;
/** Where the user's language is chosen. */
const CHOOSING = [
  'src/language/message.ts',
  'src/language/user-language.ts',
  'src/lsp/hover-words.ts',
  'src/lsp/lsp-diagnostics.ts',
  'src/reference/reference-language.ts',
  'src/preview/page/player.ts',
];
/** Examples of the language in Japanese; they are not printed. */
const EXAMPLES = /^src\/(language\/(catalogue|statements)\/|reference\/|command\/listen\.ts)/;
/** What is spoken has a language of its own, whatever that of the labels is. */
const SPEECH = 'src/sound/';
/** Places of a slide, and sometimes levels, are named by one letter: such a name in an example is no word. */
const NAME = /(?<!\p{L})[アイウエオ](?!\p{L})/gu;

const SOURCES = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .map((file) => `src/${file.replaceAll('\\', '/')}`)
  .filter((file) => file.endsWith('.ts') && !file.startsWith('src/words/'));

/** Lines of a source that hold Japanese letters outside comments. */
const japaneseLines = (file: string): string[] =>
  readFileSync(file, 'utf8')
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/(^|\s)\/\/ .*$/gm, '')
    .split('\n')
    .filter((line) => JAPANESE.test(line.replace(NAME, '')));

test('no source outside src/words holds a Japanese word', () => {
  const found = SOURCES.filter(
    (file) => !EXAMPLES.test(file) && !SAID.test(file) && ![...LETTERS, ...TYPED].includes(file),
  ).flatMap((file) => japaneseLines(file).map((line) => `${file}: ${line.trim()}`));
  expect(found).toEqual([]);
  expect([...LETTERS, ...TYPED].filter((file) => japaneseLines(file).length === 0)).toEqual([]);
  expect(japaneseLines('src/words/ja/forms-ja.ts').join()).toContain('作品名');
});

test('no source outside src/words chooses by language', () => {
  const choosing = SOURCES.filter((file) => /['"]ja['"]/.test(readFileSync(file, 'utf8')));
  expect(choosing.filter((file) => !file.startsWith(SPEECH)).sort()).toEqual([...CHOOSING].sort());
  expect(choosing.some((file) => file.startsWith(SPEECH))).toBe(true);
});
