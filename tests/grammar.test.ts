/**
 * The reference in grammar/ is true: every example in it is compiled. A fence ```cut holds a whole cut, or statements that
 * are wrapped in a head of `cut 1` and five seconds. After the word `cut` may stand: `time=2+0` for the head,
 * `error=CODE` (or `warning=`, `hint=`) for the one thing that must be said of it, `file=NAME` for a file that the page's
 * other examples use; where a page has nothing but such files, each compiles.
 */

import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compileText, said } from './compile.js';
import { messagesPage } from './messages.js';

const FOLDER = 'grammar';
/** Written out of the catalogue and the parser, and held to them by tests of their own. */
const WRITTEN = ['messages.md', 'syntax.md', 'a-to-z.md'];
const pages = readdirSync(FOLDER).filter((one) => one.endsWith('.md') && !WRITTEN.includes(one));

interface Example {
  readonly line: number;
  readonly text: string;
  readonly words: ReadonlyMap<string, string>;
}

describe.each(pages)('%s', (page) => {
  const all = examples(readFileSync(`${FOLDER}/${page}`, 'utf8'));
  const onlyFiles = all.every(({ words }) => words.has('file'));
  const files = Object.fromEntries(
    all.flatMap(({ words, text }) => (words.has('file') ? [[words.get('file')!, text]] : [])),
  );
  for (const { line, text, words } of all.filter(({ words }) => !words.has('file') || onlyFiles)) {
    const expected = [...words].filter(([word]) => /^(error|warning|hint)$/.test(word));
    const name = expected.map(([word, code]) => ` gives the ${word} ${code}`).join('') || ' holds';
    test(`the example on line ${line}${name}`, () => {
      const { diagnostics, solved } = compileText(whole(text, words.get('time')), files);
      const got = words.has('file') ? [] : diagnostics.map(({ severity, code }) => `${severity}=${code}`);
      expect(got, said(diagnostics).join('\n')).toEqual(expected.map((pair) => pair.join('=')));
      if (!words.has('error')) expect(solved).not.toBeNull();
    });
  }
});

test('the index names every page, and every page has an example', () => {
  const index = readFileSync(`${FOLDER}/README.md`, 'utf8');
  const linked = [...index.matchAll(/^\| \[[^\]]+\]\(([\w-]+\.md)\)/gm)].map(([, page]) => page);
  expect(linked.sort()).toEqual([...pages.filter((one) => one !== 'README.md'), ...WRITTEN].sort());
  for (const page of pages) expect(examples(readFileSync(`${FOLDER}/${page}`, 'utf8')), page).not.toEqual([]);
});

test('the first example has the drawings that the index says', () => {
  const [first] = examples(readFileSync(`${FOLDER}/README.md`, 'utf8'));
  // A: keys 1 to 6; 2 + 1 in-betweens, 1 each way in the cycle. B: keys 1 2, two each way.
  expect(compileText(first!.text).solved!.counts).toMatchObject({ keys: 8, inbetweens: 9, drawings: 17 });
});

test('messages.md is what the catalogue says (UPDATE=1 writes it)', () => {
  const path = `${FOLDER}/messages.md`;
  const page = messagesPage();
  if (process.env.UPDATE === '1') writeFileSync(path, page);
  expect(readFileSync(path, 'utf8')).toBe(page);
});

function examples(markdown: string): Example[] {
  return [...markdown.matchAll(/^```cut(.*)\n([\s\S]*?)^```$/gm)].map((found) => ({
    line: markdown.slice(0, found.index).split('\n').length,
    text: found[2]!,
    words: new Map(
      found[1]!
        .trim()
        .split(/\s+/)
        .filter(Boolean)
        .map((one) => one.split('=') as [string, string]),
    ),
  }));
}

function whole(text: string, time = '5+0'): string {
  const head = [/^cut /m.test(text) ? '' : 'cut 1\n', /^time /m.test(text) ? '' : `time ${time}\n`].join('');
  return head + text;
}
