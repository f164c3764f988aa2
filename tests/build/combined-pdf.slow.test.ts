/** `build --one-file`: one PDF for the printer. */

import { beforeEach, describe, expect, test } from 'vitest';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import { lookInto } from '../command/pdf.js';
import { CUT, fileNames, isPdf, run } from '../command/run.js';
import { faults } from '../qpdf.js';

const short = (cut: string) => CUT.replace('cut 1', `cut ${cut}`);
/** Two pages of sheet, one of charts. */
const long = (cut: string) => `cut ${cut} "Rooftop"\ntime 7+0\nartist "M. Arai"\nA: 1{late}--2:6+0 3..\n`;
const BROKEN = 'cut 10\ntime 1+0\nA: 1\n';

const FILES = {
  'saltmarsh/episode.yaml': 'title: Ferry\nepisode: 3\nlabels: en\n',
  'saltmarsh/2.cut': long('2'),
  'saltmarsh/10.cut': short('10'),
  'saltmarsh/12A.cut': short('12A'),
  'saltmarsh/12.cut': short('12'),
};
const PDF = 'saltmarsh/saltmarsh.pdf';

let host: MemoryHost;
const set = (name: string, text: string) => void host.files.set(`/work/saltmarsh/${name}`, Buffer.from(text));
const bytes = (name = PDF) => host.files.get(`/work/${name}`);
const build = (...argv: string[]) => run(host, 'build', 'saltmarsh', '--one-file', ...argv);
const labels = async (name = PDF) => (await lookInto(bytes(name)!)).labels;

const ALL = [
  '2/1',
  '2/2',
  '2/charts 1',
  '10/1',
  '10/charts 1',
  '12/1',
  '12/charts 1',
  '12A/1',
  '12A/charts 1',
];

beforeEach(() => {
  host = memoryHost(FILES);
});

describe('the file', () => {
  test('holds every cut in story order, labelled by cut and page', async () => {
    expect(await build()).toEqual({ status: 0, out: '', error: 'wrote saltmarsh/saltmarsh.pdf: 9 pages\n' });
    expect(await labels()).toEqual(ALL);
    expect(fileNames(host).filter((name) => name.endsWith('.pdf'))).toEqual([PDF]);
    expect(await faults(bytes()!)).toEqual([]);
  });

  test('has bookmarks by cut and part, the title of the episode and its artists', async () => {
    await build();
    const { outline, title, author, language } = await lookInto(bytes()!);
    expect({ title, author, language }).toEqual({ title: 'Ferry 3', author: 'M. Arai', language: 'en' });
    expect(outline.map((one) => [one.title, one.page])).toEqual([
      ['Cut 2 Rooftop', 0],
      ['Cut 10', 3],
      ['Cut 12', 5],
      ['Cut 12A', 7],
    ]);
    expect(outline[0]!.children).toEqual([
      { title: 'Sheet', page: 0, children: [] },
      { title: 'In-between charts', page: 2, children: [] },
    ]);
  });

  test('prints on every page what the file of the cut prints', async () => {
    await build();
    await run(host, 'build', 'saltmarsh', '-o', 'out');
    const one = await lookInto(bytes()!);
    const apart = await Promise.all(
      ['2', '10', '12', '12A'].map((cut) => lookInto(bytes(`out/${cut}.pdf`)!)),
    );
    expect(one.texts).toEqual(apart.flatMap(({ texts }) => texts));
    expect(one.sizes).toEqual(apart.flatMap(({ sizes }) => sizes));
  });

  test('is the same bytes at another time and in another place', async () => {
    await build();
    const elsewhere = memoryHost();
    for (const [name, text] of Object.entries(FILES)) elsewhere.files.set(`/mnt/${name}`, Buffer.from(text));
    elsewhere.clock = new Date('2040-01-01');
    await run(elsewhere, 'build', '/mnt/saltmarsh', '--one-file');
    expect(Buffer.from(elsewhere.files.get(`/mnt/${PDF}`)!).equals(bytes()!)).toBe(true);
  });

  test('holds chosen parts and pages', async () => {
    await build('--only', 'charts');
    expect(await labels()).toEqual(ALL.filter((label) => label.includes('charts')));
    await build('--pages', '2');
    expect(await labels()).toEqual(['2/2', '10/charts 1', '12/charts 1', '12A/charts 1']);
    expect(await build('--pages', '9')).toMatchObject({
      status: 2,
      error: expect.stringContaining('chooses no page'),
    });
  });

  test('one broken cut costs only its own pages', async () => {
    set('10.cut', BROKEN);
    const { status, error } = await build();
    expect(status).toBe(1);
    expect(error).toMatch(/\nwrote saltmarsh\/saltmarsh\.pdf: 7 pages\nnot printed: cut 10 \(1 error\)\n$/);
    expect(await labels()).toEqual(ALL.filter((label) => !label.startsWith('10/')));
  });

  test('a fault of the program in one cut costs only that cut', async () => {
    set('episode.yaml', `${FILES['saltmarsh/episode.yaml']}cuts: ["*.cut", "dusk/*.cut"]\n`);
    set('dusk/10.cut', short('10'));
    host.files.delete('/work/saltmarsh/10.cut');
    // Asked for the stamp of the cuts of each folder.
    host.commit = (folder) => {
      if (folder.endsWith('dusk')) throw new Error('a fault that was made');
      return undefined;
    };
    const { status, error } = await build();
    expect(status).toBe(2);
    expect(error).toMatch(/wrote saltmarsh.* 7 pages\nnot printed: cut 10 \(fault of the program\)\n$/);
    expect(await labels()).toEqual(ALL.filter((label) => !label.startsWith('10/')));
  });

  test('where every cut is broken the last good one stays', async () => {
    await build();
    const before = bytes();
    set('episode.yaml', 'papper: A4\n');
    const { status, error } = await build();
    expect(status).toBe(1);
    expect(error).toContain('not printed: cut 2 (see saltmarsh/episode.yaml), cut 10 (see');
    expect(bytes()).toBe(before);
  });
});

describe('where it goes', () => {
  test.each([
    [['-o', 'all.pdf'], 'all.pdf'],
    [['-o', 'out'], 'out/saltmarsh.pdf'],
    [[], PDF],
  ])('%s', async (argv, name) => {
    expect((await build(...argv)).status).toBe(0);
    expect(isPdf(bytes(name))).toBe(true);
  });

  test('under the name of a manifest that has one of its own', async () => {
    set('ep07.yaml', 'title: Ferry\n');
    await run(host, 'build', 'saltmarsh/ep07.yaml', '--one-file');
    expect(isPdf(bytes('saltmarsh/ep07.pdf'))).toBe(true);
  });

  test('to standard output, whole or not at all', async () => {
    const { status, error } = await build('-o', '-');
    expect([status, error]).toEqual([0, 'wrote 9 pages to standard output\n']);
    expect(isPdf(host.printedBytes())).toBe(true);
  });

  test('some cuts need a name', async () => {
    const files = ['saltmarsh/2.cut', 'saltmarsh/10.cut', '--one-file'];
    const { status, error } = await run(host, 'build', ...files);
    expect([status, error]).toEqual([2, expect.stringContaining('give `--output` one')]);
    expect((await run(host, 'build', ...files, '-o', 'two.pdf')).error).toBe('wrote two.pdf: 5 pages\n');
    expect(await labels('two.pdf')).toEqual(ALL.slice(0, 5));
  });

  test.each([['saltmarsh/2.cut'], ['saltmarsh/episode.yaml'], ['other.yaml'], ['saltmarsh/house.txt']])(
    'not over a text: %s',
    async (output) => {
      set('house.txt', 'phrase p = 1{late}--2\n');
      set('12.cut', `use "house.txt"\n${short('12')}`);
      const before = new Map(host.files);
      const { status, error } = await build('-o', output);
      expect([status, error]).toEqual([2, expect.stringContaining('output-is-input')]);
      expect(new Map(host.files)).toEqual(before);
    },
  );

  test('a full disk leaves the last good one', async () => {
    await build();
    const before = bytes();
    host.room = 1000;
    const { status, error } = await build();
    expect(status).toBe(2);
    expect(error.match(/cannot be written: the disk is full/g)).toHaveLength(1);
    expect(bytes()).toBe(before);
  });

  test('a locked folder: said once, not for every cut', async () => {
    host.locked.add('/work/locked');
    const { status, error } = await build('-o', 'locked/all.pdf');
    expect(status).toBe(2);
    expect(error.match(/^Error: /gm)).toHaveLength(1);
    expect(error).toContain('not printed: cut 2 (not written), cut 10 (not written)');
  });
});

describe('--changed', () => {
  const again = (...argv: string[]) => build('--changed', ...argv);
  beforeEach(() => build());

  test('writes nothing where nothing has changed', async () => {
    const before = bytes();
    set('2.cut', `# as before\n${long('2')}`);
    expect(await again()).toEqual({ status: 0, out: '', error: '4 cuts unchanged\n' });
    expect(bytes()).toBe(before);
  });

  test('lists what has changed, and writes the whole', async () => {
    set('2.cut', long('2').replace('3..', '2a..'));
    expect((await again()).error).toBe('cut 2: page 2 of 3\nwrote saltmarsh/saltmarsh.pdf: 9 pages\n');
    expect(await labels()).toEqual(ALL);
    expect((await again()).error).toBe('4 cuts unchanged\n');
  });

  test('with --pages changed prints the changedPagesOnly, and knows the rest', async () => {
    set('2.cut', long('2').replace('3..', '2a..'));
    const { error } = await again('--pages', 'changed');
    expect(error).toBe('cut 2: page 2 of 3\nwrote saltmarsh/saltmarsh.pdf: 1 page\n3 cuts unchanged\n');
    expect(await labels()).toEqual(['2/2']);
    expect((await again('--pages', 'changed')).error).toBe('4 cuts unchanged\n');
    set('12.cut', short('12').replace('1{late}--2', '1{late}-2'));
    expect((await again('--pages', 'changed')).error).toContain('cut 12: pages 1-2 of 2 (1, charts 1)\n');
    expect(await labels()).toEqual(['12/1', '12/charts 1']);
    await again();
    expect(await labels()).toEqual(ALL);
  });

  test('a cut that is gone, a new one, another order', async () => {
    host.files.delete('/work/saltmarsh/10.cut');
    expect((await again()).error).toBe(
      'cut 10: no cut of the episode any more\nwrote saltmarsh/saltmarsh.pdf: 7 pages\n',
    );
    set('10.cut', short('10'));
    expect((await again()).error).toContain('cut 10: all 2 pages, new\nwrote');
    set('episode.yaml', `${FILES['saltmarsh/episode.yaml']}cuts: [12.cut, "*.cut"]\n`);
    expect((await again()).error).toContain('the cuts stand in another order\nwrote');
    expect((await labels()).slice(0, 2)).toEqual(['12/1', '12/charts 1']);
  });

  test('a cut with errors keeps its record: mended, it is not new', async () => {
    set('10.cut', BROKEN);
    expect((await again()).error).toMatch(/3 cuts unchanged\nnot printed: cut 10 \(1 error\)\n$/);
    expect(await labels()).toEqual(ALL);
    set('2.cut', long('2').replace('3..', '2a..'));
    await again();
    expect(await labels()).toEqual(ALL.filter((label) => !label.startsWith('10/')));
    set('10.cut', short('10'));
    const { error } = await again();
    expect(error).toContain('cut 10: all 2 pages, as the file did not hold all\nwrote');
    expect(await labels()).toEqual(ALL);
  });

  test('a file cut short is printed anew', async () => {
    host.files.set(`/work/${PDF}`, bytes()!.subarray(0, -9));
    const { error } = await again();
    expect(error).toContain('cut 2: all 3 pages, as the file there is no print to compare with\n');
    expect(error).toContain('wrote saltmarsh/saltmarsh.pdf: 9 pages\n');
  });

  test('two cuts of one number are two', async () => {
    set('12b.cut', short('12'));
    await build();
    expect((await again()).error).toMatch(/5 cuts unchanged\n$/);
    set('12b.cut', short('12').replace('1{late}--2', '1{late}-2'));
    const { error } = await again();
    expect(error.match(/^cut 12: .*$/gm)).toEqual(['cut 12: pages 1-2 of 2 (1, charts 1)']);
    expect(error).toContain('wrote saltmarsh/saltmarsh.pdf: 11 pages\n');
  });
});
