/** `build --one-file`, read back from the PDF by a reader of its own. */

import { beforeEach, describe, expect, test } from 'vitest';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import { lookInto } from '../command/pdf.js';
import { CUT, fileNames, run } from '../command/run.js';
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
