/** `build --only cover --up 4`, read back from the PDF. */

import { describe, expect, test } from 'vitest';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import { coverPlaces } from '../../src/sheet/cover/shared-cover-page.js';
import { fileNames, run } from '../command/run.js';
import { openPrinted, type Paper } from '../pdf.js';

const cut = (number: number): string => `cut ${number} "Pier ${number}"\ntime 1+0\nA: 1--2..\n`;
const cuts = (from: number, to: number): Record<string, string> =>
  Object.fromEntries(Array.from({ length: to - from + 1 }, (_, i) => [`e/${from + i}.cut`, cut(from + i)]));
const MANIFEST = 'title: Ferry\n';
const PDF = 'e/e-covers.pdf';

const build = (host: MemoryHost, ...argv: string[]) => run(host, 'build', 'e', '--only', 'cover', ...argv);
const printed = (host: MemoryHost, name = PDF) => openPrinted(host.files.get(`/work/${name}`)!);

/** The numbers of the covers in their places: each is the largest print of its cover. */
function numbersOf({ texts }: Paper, paper: 'A4' | 'letter', count: 2 | 4 | 8): (string | null)[] {
  const bold = texts.filter(({ text, weight }) => weight === 'bold' && /^\d+$/.test(text));
  return coverPlaces(paper, count).map(({ x, y, width, height }) => {
    const here = bold.filter(
      (one) => one.x >= x && one.endX <= x + width && one.y >= y && one.y <= y + height,
    );
    return here.map(({ text }) => text).join() || null;
  });
}

describe.each(['A4', 'letter'] as const)('on %s', (paper) => {
  test.each([
    [
      '2',
      'en',
      [
        [101, 102],
        [103, 104],
        [105, 106],
        [107, 108],
        [109, null],
      ],
    ],
    [
      '4',
      'ja',
      [
        [101, 102, 103, 104],
        [105, 106, 107, 108],
        [109, null, null, null],
      ],
    ],
    [
      '8',
      'en',
      [
        [101, 102, 103, 104, 105, 106, 107, 108],
        [109, ...Array(7).fill(null)],
      ],
    ],
    [
      '8',
      'ja',
      [
        [101, 102, 103, 104, 105, 106, 107, 108],
        [109, ...Array(7).fill(null)],
      ],
    ],
  ] as const)('%s covers a page in %s: each cut once, in order', async (up, labels, expected) => {
    const host = memoryHost({ 'e/episode.yaml': MANIFEST, ...cuts(101, 109) });
    const { status, error } = await build(host, '--up', up, '--paper', paper, '--labels', labels);
    expect([status, error]).toEqual([0, `wrote ${PDF}: ${expected.length} pages\n`]);
    const { pages, language } = await printed(host);
    expect(language).toBe(labels);
    expect(pages.map((page) => numbersOf(page, paper, Number(up) as 2))).toEqual(
      expected.map((page) => page.map((number: number | null) => number && String(number))),
    );
    const said = pages.flatMap(({ texts }) => texts.map(({ text }) => text));
    const pier = labels === 'en' ? '“Pier 105”' : '「Pier 105」';
    expect(said.filter((text) => text === pier)).toHaveLength(1);
  });
});

test('pages are labelled by their first and last cut, and each cut has its bookmark', async () => {
  const host = memoryHost({ 'e/episode.yaml': MANIFEST, ...cuts(1, 5) });
  await build(host, '--up', '4');
  const { labels, outline, title } = await printed(host);
  expect([title, labels]).toEqual(['Ferry', ['1–4', '5']]);
  expect(outline.map((one) => [one.title, one.page])).toEqual([
    ['Cut 1 Pier 1', 0],
    ['Cut 2 Pier 2', 0],
    ['Cut 3 Pier 3', 0],
    ['Cut 4 Pier 4', 0],
    ['Cut 5 Pier 5', 1],
  ]);
});

test('shows what the table of the episode knows of each cut', async () => {
  const host = memoryHost({
    'e/episode.yaml': 'stages: [layout, key]\n',
    'e/progress.csv': 'cut,stage,state,date,person,note\n2,layout,done,2027-03-06,H. Tarn,\n',
    ...cuts(1, 3),
  });
  await build(host, '--up', '4');
  const [page] = (await printed(host)).pages;
  const names = page!.texts.filter(({ text }) => text === 'H. Tarn');
  const { x, width } = coverPlaces('A4', 4)[1]!;
  expect(names.map((one) => one.x > x && one.endX < x + width)).toEqual([true]);
});

test('a cut with an error leaves no gap, and is named', async () => {
  const host = memoryHost({
    'e/episode.yaml': MANIFEST,
    ...cuts(101, 104),
    'e/102.cut': 'cut 102\ntime 1+0\nA: 1\n',
  });
  const { status, error } = await build(host, '--up', '4');
  expect([status, error]).toEqual([1, expect.stringMatching(/not printed: cut 102/)]);
  const { pages } = await printed(host);
  expect(pages.map((page) => numbersOf(page, 'A4', 4))).toEqual([['101', '103', '104', null]]);
});

test('an episode on other paper begins a page', async () => {
  const host = memoryHost({
    'e/episode.yaml': MANIFEST,
    ...cuts(101, 101),
    'f/episode.yaml': 'paper: letter\n',
    'f/201.cut': cut(201),
  });
  await run(host, 'build', 'e', 'f', '--only', 'cover', '--up', '2', '-o', 'all.pdf');
  const { pages } = await printed(host, 'all.pdf');
  expect(pages.map(({ heightMm }) => Math.round(heightMm))).toEqual([297, 279]);
});

test('a file that cannot be opened is said once, and each cut of a page is named', async () => {
  const host = memoryHost({ 'e/episode.yaml': MANIFEST, ...cuts(1, 5) });
  host.locked.add('/work/out.pdf');
  const { status, error } = await build(host, '--up', '2', '-o', 'out.pdf');
  expect(status).toBe(2);
  expect(error.match(/output-unwritable/g)).toHaveLength(1);
  expect(error).toContain(
    `not printed: ${[1, 2, 3, 4, 5].map((number) => `cut ${number} (not written)`).join(', ')}`,
  );
  expect(fileNames(host).filter((name) => name.endsWith('.pdf'))).toEqual([]);
});

test('a full disk leaves the file that was there', async () => {
  const host = memoryHost({ 'e/episode.yaml': MANIFEST, ...cuts(1, 3), 'out.pdf': 'old' });
  host.room = 100;
  const { status, error } = await build(host, '--up', '2', '-o', 'out.pdf');
  expect([status, error]).toEqual([2, expect.stringContaining('the disk is full')]);
  expect(Buffer.from(host.files.get('/work/out.pdf')!).toString()).toBe('old');
});

test('what such a file holds counts as no print of a cut', async () => {
  const host = memoryHost({ 'e/episode.yaml': MANIFEST, ...cuts(1, 2) });
  await build(host, '--up', '2', '-o', 'all.pdf');
  const { error } = await build(host, '--one-file', '--changed', '-o', 'all.pdf');
  expect(error).toContain('wrote all.pdf: 2 pages');
});

test.each([
  [['--changed'], '--changed'],
  [['--since', 'HEAD'], '--since'],
  [['--pages', '1'], '--pages'],
  [['--shard', '1/2'], '--shard'],
])('%j does not go together with shared pages', async (argv, option) => {
  const host = memoryHost({ 'e/episode.yaml': MANIFEST, ...cuts(1, 2) });
  const { status, error } = await build(host, '--up', '2', ...argv);
  expect([status, error]).toEqual([
    2,
    expect.stringContaining(`\`--up\` and \`${option}\` do not go together`),
  ]);
  expect(fileNames(host).filter((name) => name.endsWith('.pdf'))).toEqual([]);
});
