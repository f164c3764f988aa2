import { expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { run } from '../command/run.js';
import { openPrinted } from '../pdf.js';

const CUT = 'cut 1 "Pier"\ntime 1+0\nA: 1--2..\n';
const HEAD = 'cut,stage,date,person\n';

async function printed(table: string, manifest = 'title: Ferry\n', ...argv: readonly string[]) {
  const host = memoryHost({ 'episode.yaml': manifest, 'c1.cut': CUT, 'progress.csv': table });
  const { status, error } = await run(host, 'progress', '-o', 'p.pdf', '--date', '2027-03-20', ...argv);
  expect([status, error]).toEqual([0, 'wrote p.pdf: 1 page\n']);
  return openPrinted(host.files.get('/work/p.pdf')!);
}

test('is named for the work and the day', async () => {
  const { title, outline, language } = await printed(HEAD);
  expect([title, outline.map((one) => one.title), language]).toEqual([
    'Ferry · Progress · 2027-03-20',
    ['Progress'],
    'en',
  ]);
  expect((await printed(HEAD, 'title: Ferry\n', '--labels', 'ja')).title).toBe('Ferry · 進行表 · 2027-03-20');
  expect((await printed(HEAD, '')).title).toBe('Progress · 2027-03-20');
});

test('says who did what, read back from the PDF', async () => {
  const { pages } = await printed(`${HEAD}1,layout,2027-03-09,L. Quoy\n`);
  const said = pages[0]!.texts.map(({ text }) => text);
  expect(said).toEqual(expect.arrayContaining(['Pier', '03-09', 'L. Quoy', '2027-03-20']));
});

test('a name with characters that cannot be printed is printed with their mark', async () => {
  const { pages } = await printed(`${HEAD}1,layout,2027-03-09,"Quoy 🎬"\n`);
  expect(pages[0]!.texts.map(({ text }) => text)).toContain('Quoy 〓');
});
