import { describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { type Code, catalogue } from '../../src/language/catalogue/index.js';
import { loadMessages } from '../../src/language/message.js';
import { displayWidth } from '../../src/language/source.js';
import { plainList, plainPage, plainWord } from '../../src/reference/explain-text.js';
import { pages } from '../../src/reference/ja/statement-pages-ja.js';
import { loadReference, pageIn, referenceWords } from '../../src/reference/reference-language.js';
import { statementPages } from '../../src/reference/statement-pages.js';
import { run } from '../command/run.js';
import { englishIn } from '../japanese-text.js';

await loadMessages('ja');
await loadReference('ja');

const names = Object.keys(statementPages);

test('both languages have the same pages', () => {
  expect(Object.keys(pages).sort()).toEqual([...names].sort());
});

describe.each(names)('the page of %s', (name) => {
  const english = statementPages[name]!;
  const japanese = pages[name]!;

  test('says as much in Japanese', () => {
    expect(japanese.parts).toHaveLength(english.parts.length);
    expect(japanese.examples).toHaveLength(english.examples.length);
    expect(japanese.text.split('\n\n')).toHaveLength(english.text.split('\n\n').length);
  });

  test('has no English word outside of code', () => {
    const typed = JSON.stringify([
      english.parts.map(([written]) => written),
      english.examples.map(({ text, files }) => [text, files]),
    ]);
    for (const text of [japanese.title, japanese.text, ...japanese.parts, ...japanese.examples])
      expect(englishIn(text, typed), text).toEqual([]);
  });

  test('fits the terminal', () => {
    for (const line of plainPage(name, 'ja').split('\n'))
      expect(displayWidth(line), line).toBeLessThanOrEqual(80);
  });
});

test('the page is that of the catalogue in English, and its code stays in Japanese', () => {
  expect(pageIn('pan', 'en')).toBe(statementPages.pan);
  const page = pageIn('pan', 'ja');
  expect(page.parts.map(([written]) => written)).toEqual(
    statementPages.pan!.parts.map(([written]) => written),
  );
  expect(page.examples.map(({ text }) => text)).toEqual(statementPages.pan!.examples.map(({ text }) => text));
  expect(page.codes).toBe(statementPages.pan!.codes);
});

test('every capital of the syntax has a meaning in Japanese', () => {
  for (const [name, meaning] of Object.entries(referenceWords('ja').placeholders))
    expect(englishIn(meaning, JSON.stringify(referenceWords('en').placeholders)), name).toEqual([]);
});

test('words inside statements, and the list of statements', () => {
  expect(plainWord('carry', 'ja')).toMatch(/^carry：行の中の言葉\n\nlevel の中：\n/);
  expect(plainList('ja')).toContain('カメラの位置（FIX）');
});

describe('situations', () => {
  const told = (Object.keys(catalogue) as Code[]).filter(
    (code) => catalogue[code].example.kind === 'situation',
  );
  const { situations } = referenceWords('ja');

  test.each(told)('%s is told without English words', (code) => {
    const { failing, mended } = catalogue[code].example;
    const texts = situations[code] ?? [failing, mended];
    // Commands and lines of a text are the same in every language.
    const isCode = (text: string) =>
      /^(cutwright [a-z]+|\w+: |[a-z]+ "|\d+,|level [A-Z])/.test(text) && !/, (where|in|while) /.test(text);
    // So are names of files, revisions and encodings.
    const plain = (text: string) => text.replace(/[\w@./~-]*[./~_@-][\w./~-]*/g, ' ');
    for (const text of texts) if (!isCode(text)) expect(englishIn(plain(text), ''), text).toEqual([]);
  });

  test('of codes that are no situations nothing is told', () => {
    expect(Object.keys(situations).filter((code) => !told.includes(code as Code))).toEqual([]);
  });
});

test('explain answers in the language of the user', async () => {
  const host = memoryHost();
  host.variables.set('LANG', 'ja_JP.UTF-8');
  const page = await run(host, 'explain', 'pan');
  expect(page.out).toMatch(/^pan: フレームからフレームへのカメラの移動（PAN）\n/);
  const code = await run(host, 'explain', 'timeline-short');
  expect(code.out).toMatch(/^timeline-short（誤り）：尺より短いタイムライン\n/);
  expect(code.out).toContain('\nこう書くと出ます：\n');
  const list = await run(host, 'explain');
  expect(list.out).toMatch(/^timeline-short +誤り {5}尺より短いタイムライン$/m);
});
