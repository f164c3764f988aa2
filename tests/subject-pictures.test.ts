/**
 * The pictures of the pages of grammar/: each shows what the last example above it prints. UPDATE=1 writes them. Every page that
 * tells a subject has a picture, of its own or kept by another test.
 */

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compileText } from './compile.js';
import { type Crop, kept, picture } from './pictures.js';

/** Which part of what the example prints, by the name of the picture. */
const PICTURES: Readonly<Record<string, Crop>> = {
  time: { rows: [1, 42] },
  timeline: { rows: [1, 24] },
  charts: 'charts',
  sharing: { rows: [1, 36] },
  cels: { rows: [1, 18] },
  numbering: { rows: [1, 36] },
  light: { rows: [1, 27] },
  words: { rows: [25, 72] },
  levels: 'memo',
  typing: { rows: [1, 24] },
  watching: { rows: [1, 24] },
  show: { rows: [1, 30] },
  starting: 'head',
  recording: { rows: [25, 72] },
  moving: { rows: [1, 12] },
  handover: 'memo',
  episode: 'memo',
  'cut-list': 'memo',
  camera: 'chart',
  printing: 'head',
  json: { rows: [1, 3] },
  'reading-head': 'head',
  'reading-memo': 'memo',
  'reading-columns': { rows: [1, 36] },
  'reading-signs': { rows: [41, 60] },
  'reading-charts': 'charts',
  'reading-chart': 'chart',
};

/** Written out of the sources, or lists of links: pages without a subject to be shown. */
const NONE = ['README.md', 'messages.md', 'glossary.md', 'a-to-z.md'];
const pages = readdirSync('grammar').filter((name) => name.endsWith('.md') && !NONE.includes(name));
const textOf = (page: string) => readFileSync(`grammar/${page}`, 'utf8');

const shown = pages.flatMap((page) => {
  const text = textOf(page);
  const examples = [...text.matchAll(/^```cut([^\n]*)\n([\s\S]*?)^```$/gm)];
  return [...text.matchAll(/\]\(pictures\/pages\/([\w-]+)\.svg\)$/gm)].map((found) => {
    const [, words, example] = examples.findLast(({ index }) => index < found.index)!;
    return { page, words: words!, text: example!, name: found[1]! };
  });
});

describe('the picture', () => {
  test.each(shown)('$name of $page is what the example above it prints', ({ words, text, name }) => {
    const head = [
      /^cut /m.test(text) ? '' : 'cut 1\n',
      /^time /m.test(text) ? '' : `time ${/time=(\S+)/.exec(words)?.[1] ?? '5+0'}\n`,
    ].join('');
    const { solved } = compileText(head + text);
    const [is, should] = kept(`grammar/pictures/pages/${name}.svg`, picture(solved!, PICTURES[name]!));
    expect(is).toBe(should);
  });

  test('of each name is shown once, and there is no other', () => {
    expect(shown.map(({ name }) => name).sort()).toEqual(Object.keys(PICTURES).sort());
    expect(readdirSync('grammar/pictures/pages').sort()).toEqual(
      Object.keys(PICTURES)
        .map((name) => `${name}.svg`)
        .sort(),
    );
  });
});

test('every page of a subject has a picture', () => {
  expect(pages.filter((page) => !/\]\(pictures\//.test(textOf(page)))).toEqual([]);
});
